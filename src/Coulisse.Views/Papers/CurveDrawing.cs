using System.Globalization;
using Coulisse.Matter.Shapes;

namespace Coulisse.Views.Papers;

/// <summary>Curves of temperature against minutes on 170 × 90 mm: one drawn full, one broken, limits as thin lines with their figures.</summary>
public static class CurveDrawing
{
    private const double Left = 14;
    private const double Wide = 152;
    private const double Top = 4;
    private const double High = 74;

    /// <summary>Draws.</summary>
    /// <param name="title">What is shown; also for those who cannot see it.</param>
    /// <param name="full">Measured: minute and °C, minutes rising, two points or more.</param>
    /// <param name="broken">Predicted; empty for none.</param>
    /// <param name="limits">Limits, °C.</param>
    public static Drawing Of(string title, IReadOnlyList<(double Minute, double Celsius)> full, IReadOnlyList<(double Minute, double Celsius)> broken, IReadOnlyList<double> limits)
    {
        double end = Math.Max(1e-9, full.Concat(broken).Max(p => p.Minute));
        double stepX = Step(end);
        double lowest = full.Concat(broken).Min(p => p.Celsius);
        double highest = Math.Max(full.Concat(broken).Max(p => p.Celsius), limits.DefaultIfEmpty(double.MinValue).Max());
        lowest = Math.Min(lowest, limits.DefaultIfEmpty(double.MaxValue).Min());
        double stepY = Step(Math.Max(1, highest - lowest));
        double from = Math.Floor(lowest / stepY) * stepY;
        double to = Math.Max(from + stepY, Math.Ceiling(highest / stepY) * stepY);
        double X(double minute) => Left + (minute / end * Wide);
        double Y(double celsius) => Top + ((to - celsius) / (to - from) * High);
        List<Mark> marks = [new RectMark(Left, Top, Wide, High, Ink.Outline)];
        for (double t = from; t <= to + 1e-9; t += stepY)
        {
            marks.Add(new LineMark(Left - 1.5, Y(t), Left, Y(t), Ink.Outline));
            marks.Add(new TextMark(Left - 7, Y(t) + 1, Figure(t), 3, Ink.Outline));
        }

        for (double m = 0; m <= end + 1e-9; m += stepX)
        {
            marks.Add(new LineMark(X(m), Top + High, X(m), Top + High + 1.5, Ink.Outline));
            marks.Add(new TextMark(X(m), Top + High + 5, Figure(m), 3, Ink.Outline));
        }

        marks.Add(new TextMark(Left + (Wide / 2), Top + High + 10, "minutes; °C at the left", 3, Ink.Outline));
        foreach (double limit in limits)
        {
            marks.Add(new LineMark(Left, Y(limit), Left + Wide, Y(limit), Ink.Guide));
            marks.Add(new TextMark(Left + Wide - 8, Y(limit) - 1, Figure(limit) + " °C", 3, Ink.Outline));
        }

        if (broken.Count > 1)
        {
            marks.Add(new PolygonMark([.. Thin(broken).Select(p => new DrawnPoint(X(p.Minute), Y(p.Celsius)))], false, Ink.Guide));
        }

        IReadOnlyList<(double Minute, double Celsius)> points = Thin(full);
        marks.AddRange(points.Zip(points.Skip(1), (a, b) => (Mark)new LineMark(X(a.Minute), Y(a.Celsius), X(b.Minute), Y(b.Celsius), Ink.Outline)));
        return new Drawing(title, Left + Wide + 4, Top + High + 12, [.. marks]);
    }

    // A printed line shows no more than some hundreds of points.
    private static IReadOnlyList<(double Minute, double Celsius)> Thin(IReadOnlyList<(double Minute, double Celsius)> points)
    {
        int every = Math.Max(1, points.Count / 400);
        return [.. points.Where((_, i) => i % every == 0 || i == points.Count - 1)];
    }

    private static double Step(double span)
    {
        double rough = span / 6;
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return (rough / power) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 } * power;
    }

    private static string Figure(double v) => v.ToString("0.##", CultureInfo.InvariantCulture).Replace('-', '−');
}
