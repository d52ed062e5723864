using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Matter.Shapes;

namespace Coulisse.Views.Papers;

/// <summary>The empty plate with its clock face, to scale, when the card says how wide it is; the numbers of steps stand at the hours they name.</summary>
public static partial class PlateDrawing
{
    /// <summary>The drawing; null when the card states no plate width.</summary>
    public static Drawing? Of(Dish dish, Component? assembly)
    {
        string text = string.Join('\n', dish.Yields.Select(y => y.Text).Concat(dish.Notes.Select(n => n.Text)).Concat(dish.Unread.Select(n => n.Text)).Concat(assembly?.Notes.Select(n => n.Text) ?? []).Append(assembly?.Name ?? ""));
        Match wide = PlateWidth().Match(text);
        if (!wide.Success || !double.TryParse(wide.Groups["mm"].Value, CultureInfo.InvariantCulture, out double across) || across is < 50 or > 600)
        {
            return null;
        }

        double r = across / 2;
        List<Mark> marks = [new CircleMark(r, r, r, Ink.Outline), new CircleMark(r, r, r * 0.75, Ink.Guide)];
        for (int h = 1; h <= 12; h++)
        {
            (double x, double y) = At(r, r * 0.9, h);
            marks.Add(new TextMark(x, y + 1.3, h.ToString(CultureInfo.InvariantCulture), 3.6, Ink.Guide));
        }

        int n = 0;
        foreach (Step step in assembly?.Steps ?? [])
        {
            n++;
            double[] hours = Hours(step.Text);
            double out_ = Distance().Match(step.Text) is { Success: true } d && double.TryParse(d.Groups["mm"].Value, CultureInfo.InvariantCulture, out double mm) && mm < r ? mm : r * 0.5;
            foreach (double hour in hours)
            {
                (double x, double y) = At(r, out_, hour);
                marks.Add(new CircleMark(x, y, 3.4, Ink.Piece));
                marks.Add(new TextMark(x, y + 1.3, n.ToString(CultureInfo.InvariantCulture), 3.6, Ink.Piece));
            }
        }

        return new Drawing(string.Create(CultureInfo.InvariantCulture, $"Plate {across:0.#} mm across, clock face; a number is the step that puts something there"), across, across, [.. marks]);
    }

    /// <summary>Hours of the clock face that a step names: "at 12, 1 and 7 o'clock", "from 8 to 11 o'clock" (both ends), "half past nine".</summary>
    internal static double[] Hours(string text)
    {
        List<double> hours = [];
        foreach (Match m in OClock().Matches(text))
        {
            hours.AddRange(Number().Matches(m.Value).Select(x => double.Parse(x.Value, CultureInfo.InvariantCulture)).Where(h => h is >= 1 and <= 12));
        }

        string[] words = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
        foreach (Match m in HalfPast().Matches(text))
        {
            int at = Array.IndexOf(words, m.Groups["hour"].Value.ToLowerInvariant());
            hours.AddRange(at >= 0 ? [at + 1.5] : []);
        }

        return [.. hours.Distinct()];
    }

    private static (double X, double Y) At(double centre, double distance, double hour)
    {
        double angle = hour / 12 * 2 * Math.PI;
        return (centre + (distance * Math.Sin(angle)), centre - (distance * Math.Cos(angle)));
    }

    [GeneratedRegex(@"(?<mm>\d{2,3}(\.\d+)?) mm plates?", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex PlateWidth();

    [GeneratedRegex(@"(?<mm>\d{1,3}) mm from the (middle|centre)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Distance();

    [GeneratedRegex(@"(\d{1,2}(, | and | to )?)+ ?o['’]clock", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex OClock();

    [GeneratedRegex(@"half past (?<hour>\w+)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex HalfPast();

    [GeneratedRegex(@"\d{1,2}", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Number();
}
