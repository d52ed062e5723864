using System.CommandLine;
using System.Globalization;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>What the kinds of coulisse fit share: sizes in millimetres, the answer as JSON, drawing or line, refusals of the shapes.</summary>
internal static class FitParts
{
    public static readonly Option<bool> Json = new("--json") { Description = "One JSON document" };
    public static readonly Option<bool> Svg = new("--svg") { Description = "The drawing to scale, as SVG" };
    public static readonly Option<double> Density = new("--density") { Description = "g/mL", DefaultValueFactory = _ => 1 };

    public static int Guard(Func<int> fit)
    {
        try
        {
            return fit();
        }
        catch (ArgumentOutOfRangeException e)
        {
            // The message of the shapes is written for the person; only .NET's tail of names and values is cut.
            return Input.Fail(Exit.Problems, e.Message.Split(" (Parameter", StringSplitOptions.None)[0]);
        }
    }

    public static int Give(ParseResult parsed, object document, string text, Drawing? drawing)
    {
        if (parsed.GetValue(Json))
        {
            return Input.Json(document);
        }

        Console.Out.WriteLine(drawing is not null && parsed.GetValue(Svg) ? SvgDrawing.Write(drawing) : text);
        return Exit.Done;
    }

    /// <summary>"330x220x18" as numbers, each more than 0; null when it is not that.</summary>
    public static double[]? Sizes(string text)
    {
        string[] parts = text.ToLowerInvariant().Replace("mm", "", StringComparison.Ordinal).Split('x', '×');
        double[] sizes = [.. parts.Select(p => double.TryParse(p.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double v) ? v : double.NaN)];
        return sizes.Any(s => !(s > 0)) ? null : sizes;
    }

    public static Length Mm(double mm) => Length.FromMillimetres(mm);
}
