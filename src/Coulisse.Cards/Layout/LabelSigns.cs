using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>The name of a part before its list on one line, told by another sign than a colon: "Stuffing - 200 g breadcrumbs, 2 apples", "The stew. 1.2 kg beef chuck, in large cubes; 800 g onions, sliced".</summary>
internal static class LabelSigns
{
    private const int LongestName = 40;
    private const int MostWords = 4;

    /// <summary>The line with a colon for that sign; the same string for any other line.</summary>
    public static string Coloned(string s, string lang)
    {
        int dash = s.IndexOf(" - ", StringComparison.Ordinal);
        if (dash is > 2 and < LongestName && Names(s.AsSpan(0, dash)) && Lists(s[(dash + 3)..], ", ", lang))
        {
            return string.Concat(s.AsSpan(0, dash), ": ", s.AsSpan(dash + 3));
        }

        int stop = s.IndexOf(". ", StringComparison.Ordinal);
        return stop is > 2 and < LongestName && Names(s.AsSpan(0, stop)) && Lists(s[(stop + 2)..], "; ", lang) ? string.Concat(s.AsSpan(0, stop), ": ", s.AsSpan(stop + 2)) : s;
    }

    /// <summary>Where the sentence of a list ends; the stop of "1 Pck. Hefe" ends none. -1 when it goes to the end of the line.</summary>
    public static int Stop(string s, int from, string lang)
    {
        if (lang == "ja")
        {
            return s.IndexOf('。', from);
        }

        int stop = s.IndexOf(". ", from, StringComparison.Ordinal);
        while (stop > 0 && Shortened(s, stop, lang))
        {
            stop = s.IndexOf(". ", stop + 1, StringComparison.Ordinal);
        }

        return stop;
    }

    /// <summary>True for a line whose own colon stands before its list: "Masa: 500 g harina, 10 g sal" has its name, and the line over it is the title.</summary>
    public static bool Named(string s) => s.AsSpan().IndexOfAny(':', '：') is > 0 and < LongestName and var colon && char.IsLetter(s[0]) && s.AsSpan(0, colon).IndexOfAnyInRange('0', '9') < 0 && s.AsSpan(0, colon).IndexOf(',') < 0;

    /// <summary>A figure, and on it a word of measure written short: no sentence ends there unless work opens behind it.</summary>
    private static bool Shortened(string s, int stop, string lang)
    {
        int word = stop;
        while (word > 0 && char.IsLetter(s[word - 1]))
        {
            word--;
        }

        return stop - word is > 0 and < 6 && word > 1 && s[word - 1] == ' ' && char.IsAsciiDigit(s[word - 2]) && Lexicon.LongestUnit(s, word, lang, out int end) is { Kind: not ("mass" or "volume") } && end >= stop && !Looks.Opens(s[(stop + 2)..], lang);
    }

    private static bool Names(ReadOnlySpan<char> s) => char.IsUpper(s[0]) && s.Count(' ') < MostWords && s.IndexOfAnyInRange('0', '9') < 0 && s.IndexOfAny(",:;()") < 0;

    /// <summary>True where at least two pieces stand, and all of them but one open with an amount and go on with a word.</summary>
    private static bool Lists(string s, string sign, string lang)
    {
        if (s.Length < 8 || !char.IsAsciiDigit(s[0]) || !s.Contains(sign, StringComparison.Ordinal))
        {
            return false;
        }

        string[] pieces = s.TrimEnd('.').Split(sign, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        int told = pieces.Count(p => Amounts.At(p, 0, lang) is { } m && Places.Skip(p, m.End) is var food && food < p.Length && char.IsLetter(p[food]));
        return told > 1 && told >= pieces.Length - 1;
    }
}
