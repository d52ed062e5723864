using System.CommandLine;
using System.Text;
using Coulisse.Flows.Fits;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse fit: what fits on, in or out of what. Sizes are millimetres. Every kind of fit is a subcommand made from its fields.</summary>
internal static class FitCommand
{
    public static Command Create()
    {
        Command command = new("fit", "What fits, what falls away, and what comes out even next to it.\n" + string.Join('\n', FitFlow.Kinds.Select((k, i) => (i == 0 ? "Example: " : "         ") + "coulisse " + k.Example)));
        foreach (FitKind kind in FitFlow.Kinds)
        {
            command.Subcommands.Add(Sub(kind));
        }

        return command;
    }

    private static Command Sub(FitKind kind)
    {
        Command sub = new(kind.Name, $"{kind.What}.\nExample: coulisse {kind.Example}");
        Dictionary<string, Func<ParseResult, string?>> given = new(StringComparer.Ordinal);
        foreach (FitField field in kind.Fields)
        {
            given[field.Name] = Read(sub, field);
        }

        Option<bool> json = new("--json") { Description = "One JSON document" };
        Option<bool> svg = new("--svg") { Description = "The drawing to scale, as SVG" };
        sub.Options.Add(json);
        sub.Options.Add(svg);
        sub.SetAction(parsed => FitFlow.Of(kind, given.ToDictionary(g => g.Key, g => g.Value(parsed) ?? "")).Match(
            answer => Give(kind, answer, parsed.GetValue(json), parsed.GetValue(svg)),
            problems => Input.Fail("fit " + kind.Name, problems) is var exit && problems.Any(p => p.Code == "FIT001") ? Exit.Usage : exit));
        return sub;
    }

    private static Func<ParseResult, string?> Read(Command sub, FitField field)
    {
        string label = field.Label + (field.Default.Length > 0 ? $" [{field.Default}]" : "");
        if (field.Needed && field.Input == FitInput.Tin)
        {
            Argument<string[]> words = new(field.Name.ToUpperInvariant()) { Description = label, Arity = ArgumentArity.OneOrMore };
            sub.Arguments.Add(words);
            return parsed => string.Join(' ', parsed.GetRequiredValue(words));
        }

        if (field.Needed)
        {
            Argument<string> argument = new(field.Name.ToUpperInvariant()) { Description = label };
            sub.Arguments.Add(argument);
            return parsed => parsed.GetRequiredValue(argument);
        }

        if (field.Input == FitInput.Flag)
        {
            Option<bool> flag = new("--" + field.Name) { Description = label };
            sub.Options.Add(flag);
            return parsed => parsed.GetValue(flag) ? "yes" : "";
        }

        Option<string?> option = new("--" + field.Name) { Description = label };
        sub.Options.Add(option);
        return parsed => parsed.GetValue(option);
    }

    private static int Give(FitKind kind, FitAnswer answer, bool json, bool svg)
    {
        if (json)
        {
            Dictionary<string, object?> document = new(StringComparer.Ordinal) { ["schema"] = $"coulisse/fit-{kind.Name}/1" };
            foreach ((string key, object? value) in answer.Figures)
            {
                document[key] = value;
            }

            document["comesOutEven"] = answer.Even.Select(e => new { of = e.Of, asked = e.Even.Asked, exactly = Of(e.Even.Exactly), smaller = Of(e.Even.Smaller), larger = Of(e.Even.Larger), says = e.Says });
            return Input.Json(document);
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine(svg ? SvgDrawing.Write(answer.Drawing) : string.Join('\n', answer.Says.Where(s => s.Length > 0).Concat(answer.Even.Select(e => e.Says))));
        return Exit.Done;
    }

    private static object? Of(EvenAmount? even) => even is { } e ? new { e.Units, e.Amount } : null;
}
