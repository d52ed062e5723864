using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Views.Charts;

/// <summary>Lying bars: shares that make up a whole, or steps that add up to a sum.</summary>
public static class Bars
{
    private const double Width = 720;
    private const double Names = 190;
    private const double Lane = 34;

    /// <summary>One bar of shares.</summary>
    /// <param name="Name">Whose.</param>
    /// <param name="Shares">Shares in percent, in the order of the heads.</param>
    public sealed record Bar(string Name, ImmutableArray<double> Shares);

    /// <summary>Shares of a whole, each kind by its hatch, with a key above.</summary>
    public static string Shares(string title, IReadOnlyList<string> kinds, IReadOnlyList<Bar> bars)
    {
        double height = 40 + (bars.Count * Lane);
        Ink ink = new(Width, height, title);
        double key = Names;
        for (int i = 0; i < kinds.Count; i++)
        {
            ink.Box(key, 4, 18, 14, i).Text(key + 24, 16, kinds[i]);
            key += 40 + (kinds[i].Length * 7.2);
        }

        for (int n = 0; n < bars.Count; n++)
        {
            double y = 30 + (n * Lane);
            ink.Text(Names - 10, y + 16, Short(bars[n].Name), "end");
            double x = Names;
            for (int i = 0; i < kinds.Count; i++)
            {
                double w = Math.Max(0, bars[n].Shares[i]) / 100 * (Width - Names - 4);
                ink.Box(x, y, w, Lane - 12, i);
                x += w;
            }
        }

        return ink.Svg;
    }

    /// <summary>Steps that add up: each begins where the one before ended, the sum stands last.</summary>
    public static string Waterfall(string title, IReadOnlyList<(string Name, double Value, string Words)> steps, string sum)
    {
        double total = steps.Sum(s => s.Value);
        double height = 12 + ((steps.Count + 1) * Lane);
        double scale = (Width - Names - 90) / Math.Max(total, 1e-9);
        Ink ink = new(Width, height, title);
        double x = Names;
        for (int n = 0; n < steps.Count; n++)
        {
            double y = 6 + (n * Lane);
            double w = steps[n].Value * scale;
            ink.Text(Names - 10, y + 16, Short(steps[n].Name), "end").Box(x, y, Math.Max(w, 1), Lane - 12, 1).Line(x + w, y, x + w, y + Lane, 1, "2 2").Text(x + w + 8, y + 16, steps[n].Words);
            x += w;
        }

        double last = 6 + (steps.Count * Lane);
        return ink.Text(Names - 10, last + 16, "in all", "end", 13, 640).Box(Names, last, total * scale, Lane - 12, 0).Text(Names + (total * scale) + 8, last + 16, sum, "start", 13, 640).Svg;
    }

    private static string Short(string name) => name.Length <= 26 ? name : string.Create(CultureInfo.InvariantCulture, $"{name[..25]}…");
}
