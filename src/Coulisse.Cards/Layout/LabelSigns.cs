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
