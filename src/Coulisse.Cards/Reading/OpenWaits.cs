using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Waits told without a figure: "cool completely", "auskühlen lassen", "far raffreddare". Their length is not known and not guessed here.</summary>
internal static class OpenWaits
{
    private const int Near = 28;

    private static readonly string[] Words =
    [
        "cool completely", "cooled completely", "completely cool", "completely cold", "leave to cool", "let cool", "let it cool", "allow to cool", "cool to room temperature", "cool in the liquid", "cool in the tin", "cool in its liquid",
        "refroidir complètement", "laisser refroidir", "auskühlen", "vollständig abkühlen", "abkühlen lassen", "erkalten lassen", "dejar enfriar", "enfriar del todo", "enfriar completamente", "lasciar raffreddare", "lasciare raffreddare", "far raffreddare", "raffreddare del tutto",
        "冷まし", "冷ます", "冷めてから", "粗熱が取れたら",
    ];

    // Most sentences have none of them: one pass over their words says so.
    private static readonly Beginnings First = new(Words);

    /// <summary>The words of such a wait; null when the sentence has none, or tells its length beside it.</summary>
    public static string? In(string s, List<StepTime> times)
    {
        // The closures below are made only for a sentence that has one.
        return First.MayIn(s) ? Found(s, times) : null;
    }

    private static string? Found(string s, List<StepTime> times)
    {
        foreach (string w in Words)
        {
            int at = Places.FindWord(s, w);
            if (at < 0)
            {
                continue;
            }

            int end = at + w.Length;
            if (end < s.Length && s[end] is 'た' or 'だ')
            {
                // "冷ました だし": what was cooled before is no wait here.
                continue;
            }

            string beside = s[Math.Max(0, at - 12)..Math.Min(s.Length, end + Near)];
            int stop = s.AsSpan(at).IndexOfAny(".;") is var e and >= 0 ? at + e : s.Length;
            return times.Exists(t => t.Words.Length > 0 && s.IndexOf(t.Words, StringComparison.Ordinal) is var told && told >= at - 12 && told < Math.Min(stop, end + Near)) || beside.Contains('°') ? null : w;
        }

        return null;
    }
}
