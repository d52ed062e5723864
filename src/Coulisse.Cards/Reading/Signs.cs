using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A minus before an amount: no card takes less than nothing. A hyphen that marks an item is none: "-5 g salt" is an item of 5 g.</summary>
internal static class Signs
{
    /// <summary>True when the line's amount carries a sign: a true minus, or a hyphen behind the mark of the item ("- -5 g salt"), or one right before the figure behind the food ("salt -5 g", "salt: -5 g").</summary>
    public static bool Minus(string raw)
    {
        ReadOnlySpan<char> s = raw.AsSpan().TrimStart();
        if (Figure(s, '\u2212'))
        {
            return true;
        }

        if (s.Length > 1 && s[0] is '-' or '*' or '•' or '+' or '–' or '·' && s[1] is ' ' or '\t')
        {
            s = s[1..].TrimStart();
            if (Figure(s, '-') || Figure(s, '\u2212'))
            {
                return true;
            }
        }

        // Behind a food: only at the end of the line, with its unit, and never in a range or a temperature.
        int at = Math.Max(raw.LastIndexOf(" -", StringComparison.Ordinal), raw.LastIndexOf(" \u2212", StringComparison.Ordinal));
        return at > 1 && char.IsLetter(raw[at - 1]) | raw[at - 1] == ':' && Figure(raw.AsSpan(at + 1), raw[at + 1]) && raw.Length - at < 14 && !raw.Contains('°') && Amounts.At(raw, at + 2, "en") is { Unit.Kind: "mass" or "volume" or "spoon" or "cup" } m && m.End >= raw.TrimmedEnd(" .,").Length;
    }

    private static bool Figure(ReadOnlySpan<char> s, char sign) => s.Length > 1 && s[0] == sign && char.IsAsciiDigit(s[1]);
}
