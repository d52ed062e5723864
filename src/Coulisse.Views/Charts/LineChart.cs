using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Views.Charts;

/// <summary>Lines over one axis, with limits drawn across. Each line is named where it ends.</summary>
public static class LineChart
{
    private const double Width = 720;
    private const double Height = 380;
    private const double Left = 52;
    private const double Right = 150;
    private const double Top = 18;
    private const double Bottom = 44;

    /// <summary>A line.</summary>
    /// <param name="Name">Name at its end.</param>
    /// <param name="Points">Points, x rising.</param>
    public sealed record Line(string Name, ImmutableArray<(double X, double Y)> Points);

    /// <summary>A limit across the chart.</summary>
    /// <param name="Name">What it is.</param>
    /// <param name="At">Where.</param>
    public sealed record Limit(string Name, double At);

    /// <summary>Draws the lines.</summary>
    /// <param name="title">What is shown.</param>
    /// <param name="x">Name of the axis to the right.</param>
    /// <param name="y">Name of the axis upwards.</param>
    /// <param name="lines">Lines, at least one with two points.</param>
    /// <param name="limits">Limits across.</param>
    /// <param name="marks">Moments that are marked, upright.</param>
    public static string Draw(string title, string x, string y, IReadOnlyList<Line> lines, IReadOnlyList<Limit> limits, IReadOnlyList<Limit> marks)
    {
        double x0 = lines.Min(l => l.Points[0].X);
        double x1 = Math.Max(lines.Max(l => l.Points[^1].X), marks.Select(m => m.At).DefaultIfEmpty(x0).Max());
        double low = Math.Min(lines.Min(l => l.Points.Min(p => p.Y)), limits.Select(l => l.At).DefaultIfEmpty(double.MaxValue).Min());
        double high = Math.Max(lines.Max(l => l.Points.Max(p => p.Y)), limits.Select(l => l.At).DefaultIfEmpty(double.MinValue).Max());
        (double yStep, double xStep) = (Step(high - low, 6), Step(x1 - x0, 8));
        (low, high) = (Math.Floor(low / yStep) * yStep, Math.Ceiling((high + (yStep * 0.05)) / yStep) * yStep);
        double X(double v) => Left + ((v - x0) / Math.Max(x1 - x0, 1e-9) * (Width - Left - Right));
        double Y(double v) => Height - Bottom - ((v - low) / Math.Max(high - low, 1e-9) * (Height - Top - Bottom));
        Ink ink = new(Width, Height, title);
        for (double v = low; v <= high + (yStep / 2); v += yStep)
        {
            ink.Line(Left, Y(v), Width - Right, Y(v), 1, "", 0.15).Text(Left - 8, Y(v) + 4, N(v), "end");
        }

        for (double v = Math.Ceiling(x0 / xStep) * xStep; v <= x1 + 1e-9; v += xStep)
        {
            ink.Line(X(v), Height - Bottom, X(v), Height - Bottom + 5).Text(X(v), Height - Bottom + 19, N(v), "middle");
        }

        ink.Line(Left, Height - Bottom, Width - Right, Height - Bottom).Text(Width - Right, Height - 6, x, "end").Text(6, 12, y);
        foreach (Limit m in marks)
        {
            ink.Line(X(m.At), Top, X(m.At), Height - Bottom, 1.5, "3 3").Text(X(m.At) + 4, Top + 10, m.Name);
        }

        List<(double At, string Name, int Weight)> names = [];
        foreach (Limit l in limits)
        {
            ink.Line(Left, Y(l.At), Width - Right, Y(l.At), 2.5, "12 3");
            names.Add((Y(l.At), l.Name, 640));
        }

        for (int i = 0; i < lines.Count; i++)
        {
            ink.Path(Thin(lines[i].Points).Select(p => (X(p.X), Y(p.Y))), 2, Ink.Dashes[i % Ink.Dashes.Length]);
            names.Add((Y(lines[i].Points[^1].Y), lines[i].Name, 400));
        }

        // names that would lie over each other move apart
        double last = double.MinValue;
        foreach ((double at, string name, int weight) in names.OrderBy(n => n.At))
        {
            last = Math.Max(at + 4, last + 15);
            ink.Text(Width - Right + 8, Math.Min(last, Height - 8), name, "start", 13, weight);
        }

        return ink.Svg;
    }

    // A line shows no more than some hundreds of points; a probe gives thousands.
    private static IEnumerable<(double X, double Y)> Thin(ImmutableArray<(double X, double Y)> points)
    {
        int every = Math.Max(1, points.Length / 400);
        return points.Where((_, i) => i % every == 0 || i == points.Length - 1);
    }

    private static double Step(double span, int ticks)
    {
        double raw = Math.Max(span, 1e-6) / ticks;
        double size = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        return size * ((raw / size) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 });
    }

    private static string N(double v) => Math.Round(v, 6).ToString("0.######", CultureInfo.InvariantCulture).Replace('-', '−');
}
