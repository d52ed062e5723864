using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Yields in the letters of a kitchen's notes: "creme brulee cafe 12p", "arroz con leche 15 rac", "brioche 60 st", "focaccia x3 trays". Each letter only in the language it is written in: "12p" is money in English, and "2 racks" are meat.</summary>
internal static class ShortYields
{
    private const int LongestTitle = 80;
    private const double Most = 2000;

    private static readonly (string Lang, string[] Guests, string[] Pieces)[] Words =
    [
        ("en", ["ptn", "ptns", "port", "ports", "cov", "covs", "pax", "px"], []),
        ("fr", ["p", "pp", "pers", "port", "ports", "couv", "cvts", "pax"], ["pc", "pcs", "pce", "pces"]),
        ("de", ["port", "ptn", "pers", "pax"], ["st", "stk", "stck"]),
        ("es", ["rac", "racs", "pax", "px", "pers", "com"], ["ud", "uds", "pz", "pzs"]),
        ("it", ["porz", "pers", "cop", "pax"], ["pz", "pzz"]),
    ];

    /// <summary>The yield a title ends with; null for any other.</summary>
    public static CardYield? OfTitle(string title, Span span, string lang)
    {
        if (title.Length is < 4 or > LongestTitle || !char.IsLetter(title[^1]) || title.AsSpan().LastIndexOfAnyInRange('0', '9') is not (> 2 and var last))
        {
            return null;
        }

        int from = last;
        while (from > 0 && char.IsAsciiDigit(title[from - 1]))
        {
            from--;
        }

        bool times = from > 2 && title[from - 1] is 'x' or '×' && title[from - 2] == ' ';
        return times || from > 0 && title[from - 1] == ' ' ? At(title, from, span, lang, times) : null;
    }

    /// <summary>The yield that a figure and letters to the end of the words tell; null for any other.</summary>
    /// <param name="s">The words.</param>
    /// <param name="at">Where the figure stands.</param>
    /// <param name="span">Where they stand.</param>
    /// <param name="lang">Language.</param>
    /// <param name="times">True behind the sign of times, where a tray or a loaf may be counted so.</param>
    public static CardYield? At(string s, int at, Span span, string lang, bool times = false)
    {
        if (at >= s.Length || !char.IsAsciiDigit(s[at]) || Numbers.Single(s, at, lang) is not { InWords: false, Min: >= 1 and <= Most } n || n.Min % 1 != 0)
        {
            return null;
        }

        int from = Places.Skip(s, n.End);
        ReadOnlySpan<char> noun = s.AsSpan(from).TrimEnd(" .");
        if (noun.Length is 0 or > 12)
        {
            return null;
        }

        if (times && YieldWords.Form(noun.ToString()))
        {
            return new CardYield(n.Min, noun.ToString().ToLowerInvariant(), s, span);
        }

        foreach ((string own, string[] guests, string[] pieces) in Words)
        {
            if (own == lang)
            {
                bool fed = Is(noun, guests) && (noun.Length > 1 || from == n.End);
                return fed || Is(noun, pieces) ? new CardYield(n.Min, fed ? "portions" : "pieces", s, span) : null;
            }
        }

        return null;
    }

    private static bool Is(ReadOnlySpan<char> noun, string[] words)
    {
        foreach (string w in words)
        {
            if (noun.Equals(w, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
