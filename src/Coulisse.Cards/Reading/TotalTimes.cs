using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Total cooking time: 2 hours." among the steps: what the others come to, and no time of its own. "Simmer for a total of 2 hours" is one.</summary>
internal static class TotalTimes
{
    private static readonly string[] Heads = ["total cooking time", "total time", "total cook time", "total prep time", "total baking time", "total roasting time", "overall time", "cooking time in all", "temps total", "temps de cuisson total", "durée totale", "cuisson totale", "gesamtzeit", "gesamte kochzeit", "gesamte garzeit", "gesamtgarzeit", "gesamtkochzeit", "gesamtdauer", "tiempo total", "tempo totale", "合計時間", "所要時間"];
    private static readonly Beginnings Begin = new(Heads);
    private const int Longest = 60;

    /// <summary>True for a step that says only that: a remark beside the method.</summary>
    public static bool Whole(Step step) =>
        step is { Times.IsEmpty: true, Storage.IsEmpty: true, Text.Length: > 8 and < Longest } && Begin.May(step.Text, 0) && step.Text.AsSpan().ContainsAnyInRange('0', '9') && step.Text.AsSpan(0, step.Text.Length - 1).IndexOfAny(".;") < 0
        && Array.Exists(Heads, h => step.Text.StartsWith(h, StringComparison.OrdinalIgnoreCase) && step.Text.AsSpan(h.Length).TrimStart() is [':' or '=' or (>= '0' and <= '9'), ..]);

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
