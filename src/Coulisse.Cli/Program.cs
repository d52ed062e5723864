using System.CommandLine;
using Coulisse.Cli;
using Coulisse.Cli.Commands;

RootCommand root = new("Coulisse: the wings. The working bench of a chef.");
foreach (Command command in All.For(args.Length > 0 ? args[0] : null))
{
    root.Subcommands.Add(command);
}

ParseResult parsed = root.Parse(args);
int code = await parsed.InvokeAsync();
return parsed.Errors.Count > 0 ? Exit.Usage : code;
