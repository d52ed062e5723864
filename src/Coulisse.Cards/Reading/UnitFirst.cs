using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The unit before the figure, at the end of the line, as Italian cards print it: "latte intero ml 250", "farina \"00\" g 500".</summary>
internal static class UnitFirst
{
    /// <summary>Takes the amount off the end; the line itself when it has none.</summary>
    public static string Take(string s, string lang, Draft d)
    {
        if (lang is not ("it" or "es" or "fr") || s.Length < 5 || !char.IsAsciiDigit(s[^1]))
        {
            return s;
        }

        int figure = s.LastIndexOf(' ') + 1;
        int unit = figure > 2 ? s.LastIndexOf(' ', figure - 2) + 1 : 0;
        if (unit < 2 || s[unit..(figure - 1)].TrimEnd('.').ToLowerInvariant() is not ("g" or "gr" or "kg" or "ml" or "cl" or "dl" or "l" or "lt") || Numbers.Single(s, figure, lang) is not { InWords: false } n || n.End != s.Length)
        {
            return s;
        }

        d.Amount = n.Min;
        d.Unit = Lexicon.LongestUnit(s, unit, lang, out _);
        d.Tokens?.Add(new ReadToken(s[unit..], "amount", System.FormattableString.Invariant($"{n.Min} {d.Unit?.Unit}")));
        return s[..unit].TrimEnd(' ', ',', ':');
    }
}
