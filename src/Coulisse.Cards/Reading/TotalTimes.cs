using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Total cooking time: 2 hours." among the steps: what the others come to, and no time of its own. "Simmer for a total of 2 hours" is one.</summary>
internal static class TotalTimes
{
    private static readonly string[] Heads = ["total cooking time", "total time", "total cook time", "total prep time", "total baking time", "total roasting time", "overall time", "cooking time in all", "temps total", "temps de cuisson total", "durée totale", "cuisson totale", "gesamtzeit", "gesamte kochzeit", "gesamte garzeit", "gesamtgarzeit", "gesamtkochzeit", "gesamtdauer", "tiempo total", "tempo totale", "合計時間", "所要時間"];
    private static readonly Beginnings Begin = new(Heads);
    private const int Longest = 60;
    // "1 min each side, 3 min in all": near enough, as what lies between is counted too.
    private const double Least = 0.75;
    private const double Most = 1.1;

    /// <summary>True for a step that says only that: a remark beside the method.</summary>
    public static bool Whole(Step step) =>
        step is { Times.IsEmpty: true, Storage.IsEmpty: true, Text.Length: > 8 and < Longest } && Begin.May(step.Text, 0) && step.Text.AsSpan().ContainsAnyInRange('0', '9') && step.Text.AsSpan(0, step.Text.Length - 1).IndexOfAny(".;") < 0
        && Array.Exists(Heads, h => step.Text.StartsWith(h, StringComparison.OrdinalIgnoreCase) && step.Text.AsSpan(h.Length).TrimStart() is [':' or '=' or (>= '0' and <= '9'), ..]);

    private static readonly string[] Behind = ["altogether", "in all", "in total", "all told", "in der summe", "insgesamt", "en tout", "au total", "en total", "in tutto", "in totale"];

    /// <summary>"15 min at 220 °C and 30 min at 180 °C, 45 min altogether": what the times before it come to.</summary>
    /// <param name="tail">What stands behind the time, lower case.</param>
    /// <param name="minutes">The time.</param>
    /// <param name="times">The times before it.</param>
    public static bool Sums(string tail, double minutes, List<StepTime> times)
    {
        if (times.Count == 0 || !Places.Begins(tail, Behind))
        {
            return false;
        }

        double told = 0;
        foreach (StepTime t in times)
        {
            told += (t.MinutesMin ?? t.MinutesMax ?? 0) * t.Repeats;
        }

        return told >= minutes * Least && told <= minutes * Most;
    }

    /// <summary>True where the sentence opens with such words and a colon or the time right behind them.</summary>
    /// <param name="clause">The sentence.</param>
    /// <param name="before">What stands before the time, lower case.</param>
    public static bool Is(string clause, string before)
    {
        string head = before.TrimEnd(' ', ':', '=', '~');
        foreach (string w in (ReadOnlySpan<string>)[" about", " ca.", " approx.", " approximately", " environ", " etwa", " circa", " unos", " is"])
        {
            head = head.EndsWith(w, StringComparison.Ordinal) ? head[..^w.Length].TrimEnd(' ', ':') : head;
        }

        return Places.Ends(head, Heads) && Array.Exists(Heads, h => clause.AsSpan().TrimStart().StartsWith(h, StringComparison.OrdinalIgnoreCase));
    }
}
