using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Occasions;

/// <summary>Reads how long the way between two places takes: "Carrying from the back to the stage takes 3 min", "The way from back to stage is 2 min, one way".</summary>
internal static class SheetWays
{
    private const double LongestWay = 240; // min

    /// <summary>The way a sentence tells of; null when it tells of none.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="line">Sheet line.</param>
    public static SheetWay? Of(string s, int line)
    {
        int from = s.IndexOf(" from ", StringComparison.OrdinalIgnoreCase);
        int to = from < 0 ? -1 : s.IndexOf(" to ", from + 5, StringComparison.OrdinalIgnoreCase);
        if (to < 0 || !Places.HasAny(s, "carry", "carrying", "way", "walk") || Minutes(s) is not { } minutes)
        {
            return null;
        }

        string start = Bare(s[(from + 6)..to]);
        string end = Bare(s[(to + 4)..]);
        return start.Length == 0 || end.Length == 0 || !char.IsLetter(start[0]) || !char.IsLetter(end[0]) ? null : new SheetWay(start, end, minutes, Places.HasAny(s, "one way", "one-way"), line);
    }

    // A place is one word, without its article.
    private static string Bare(string words)
    {
        string[] all = words.Split([' ', ',', ';', '.', ':'], StringSplitOptions.RemoveEmptyEntries);
        int at = all.Length > 1 && all[0].Equals("the", StringComparison.OrdinalIgnoreCase) ? 1 : 0;
        return all.Length > at ? all[at] : "";
    }

    private static double? Minutes(string s)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || s[i - 1] == ' ') && Clock.At(s, i, "en") is { Min: > 0 and <= LongestWay } t)
            {
                return t.Min;
            }
        }

        return null;
    }
}
