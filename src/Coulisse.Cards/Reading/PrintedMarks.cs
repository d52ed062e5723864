using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"200°C/gas 8", "220/gas 4": degrees and a mark told for one oven that do not go together.</summary>
/// <remarks>Charts differ by up to 10 °C, an oven with a fan is set up to 20 °C lower; what lies further apart is remarked.</remarks>
internal static class PrintedMarks
{
    private const double MostApart = 15;
    private const double FanLower = 20;

    /// <summary>A remark for each such pair.</summary>
    public static IEnumerable<Remark> Of(Dish dish)
    {
        foreach (Step s in dish.Language is "en" ? dish.Components.SelectMany(c => c.Steps) : [])
        {
            for (int i = s.Text.AsSpan().IndexOfAny('g', 'G'); i >= 0 && i < s.Text.Length; i++)
            {
                if (s.Text[i] is 'g' or 'G' && (i == 0 || !char.IsLetterOrDigit(s.Text[i - 1])) && GasMarks.At(s.Text, i, dish.Language, out int end) is { } mark)
                {
                    if (Clash(s, i, end, mark) is { } clash)
                    {
                        yield return clash;
                    }

                    i = end - 1;
                }
            }
        }
    }

    // Apart from the loop: what it remembers for its question is made only where a mark stands.
    private static Remark? Clash(Step s, int from, int end, double mark) =>
        Beside(s, from, end) is { } degrees && !degrees.Exists(t => Math.Abs(t.Celsius - mark) <= MostApart || t.Fan == true && Math.Abs(t.Celsius + FanLower - mark) <= MostApart)
            ? new Remark(s.Span.Line, "temperatures clash", string.Create(CultureInfo.InvariantCulture, $"{s.Text[from..end]} is about {mark:0} °C and {degrees[0].Words} is {degrees[0].Celsius:0} °C: “{s.Text}”."))
            : null;

    /// <summary>The degrees that stand with the mark, joined by strokes or brackets; null when none do.</summary>
    private static List<StepTemperature>? Beside(Step s, int from, int to)
    {
        List<StepTemperature> beside = [];
        foreach (StepTemperature t in s.Temperatures)
        {
            int at = t.Of == TemperatureOf.Oven && t.Words.Length > 0 && char.IsAsciiDigit(t.Words[0]) ? s.Text.IndexOf(t.Words, StringComparison.Ordinal) : -1;
            if (at >= 0 && (at + t.Words.Length <= from ? Joined(s.Text[(at + t.Words.Length)..from]) : at >= to && Joined(s.Text[to..at])))
            {
                beside.Add(t);
            }
        }

        return beside.Count > 0 ? beside : null;
    }

    /// <summary>True where nothing but strokes, brackets, other figures and the word for a fan stands between.</summary>
    private static bool Joined(string between)
    {
        bool joint = false;
        for (int i = 0; i < between.Length; i++)
        {
            char c = between[i];
            joint |= c is '/' or '(' or ',' or '|' or '=';
            if (char.IsLetter(c))
            {
                int end = Places.WordEnd(between, i);
                if (!(between[i..end] is "C" or "c" or "F" or "f" || Array.Exists(Heat.Fans, f => between.AsSpan(i, end - i).Equals(f, StringComparison.OrdinalIgnoreCase))))
                {
                    return false;
                }

                i = end - 1;
            }
            else if (!(char.IsAsciiDigit(c) || c is '/' or '(' or ')' or ',' or '|' or '=' or ' ' or '°' or '.'))
            {
                return false;
            }
        }

        return joint;
    }
}
