using System.CommandLine;
using System.Globalization;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat: core, hold, cool, pan, bath, dry, oven, probe, freeze.</summary>
internal static class HeatCommand
{
    internal static readonly Option<bool> Json = new("--json") { Description = "One JSON document on standard output" };

    public static Command Create()
    {
        Command command = new("heat", "How heat goes through it.\nExample: coulisse heat core --shape slab --size 20mm --start 5 --medium 82 --until 80 --organism salmonella");
        command.Subcommands.Add(HeatCore.Create());
        command.Subcommands.Add(HeatHold.Create());
        command.Subcommands.Add(HeatCool.Create());
        command.Subcommands.Add(HeatPan.Create());
        command.Subcommands.Add(HeatBath.Create());
        command.Subcommands.Add(HeatDry.Create());
        command.Subcommands.Add(HeatOven.Create());
        command.Subcommands.Add(HeatProbe.Create());
        command.Subcommands.Add(HeatFreeze.Create());
        command.Subcommands.Add(HeatMix.Create());
        return command;
    }

    /// <summary>Runs an answer and turns what lies outside the model into a problem, not a crash.</summary>
    internal static int Answer(ParseResult parsed, Func<(object Document, string Text)> work)
    {
        try
        {
            (object document, string text) = work();
            if (parsed.GetValue(Json))
            {
                return Input.Json(document);
            }

            Console.Out.WriteLine(text);
            return Exit.Done;
        }
        catch (ArgumentException e)
        {
            // the message of the model is written for the person; only .NET's tail of names and values is cut
            return Input.Fail(Exit.Problems, e.Message.Split(" (Parameter", StringSplitOptions.None)[0].Split(Environment.NewLine)[0]);
        }
    }

    /// <summary>"20mm", "30x60x90 mm", "2cm": full sizes in millimetres.</summary>
    internal static double[] Sizes(string text)
    {
        string t = text.Trim().ToLowerInvariant();
        double factor = t.EndsWith("cm", StringComparison.Ordinal) ? 10 : 1;
        string figures = t.Replace("mm", "", StringComparison.Ordinal).Replace("cm", "", StringComparison.Ordinal).Replace("×", "x", StringComparison.Ordinal);
        double[] sizes = [.. figures.Split('x').Select(w => double.TryParse(w.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out double v) ? v * factor : double.NaN)];
        return sizes.Any(s => !double.IsFinite(s)) ? throw new ArgumentException($"\"{text}\" is no size; write 20mm or 30x60x90mm.") : sizes;
    }

    internal static double R(double v) => Math.Round(v, 2, MidpointRounding.AwayFromZero);

    /// <summary>A figure as the house prints it: a true minus, no zeros at the end.</summary>
    internal static string F(double v) => v.ToString("0.##", CultureInfo.InvariantCulture).Replace('-', '−');
}
