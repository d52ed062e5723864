using System.CommandLine;

RootCommand root = new("Coulisse: the wings. The working bench of a chef.");
return await root.Parse(args).InvokeAsync();
