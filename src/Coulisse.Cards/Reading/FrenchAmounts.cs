using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Amounts as French hands write them: "1kg2" and "1L5" with the unit where the comma stands, "1.500 kg" with a point for it.</summary>
internal static class FrenchAmounts
{
    private const int MostDigits = 3;
    private const double Thousand = 1000;

    /// <summary>"1kg2", "2l5", "1kg250": the unit between the whole and its part; null for any other.</summary>
    public static Measure? Between(string s, Numeral number, int at)
    {
        int letters = at + 1 < s.Length && s[at] is 'k' or 'K' && s[at + 1] is 'g' or 'G' ? 2 : at < s.Length && s[at] is 'l' or 'L' ? 1 : 0;
        if (letters == 0 || number is not { Max: null, InWords: false, Min: >= 1 and < 100 } || number.Min % 1 != 0)
        {
            return null;
        }

        int from = at + letters;
        int end = from;
        while (end < s.Length && char.IsAsciiDigit(s[end]))
        {
            end++;
        }

        if (end == from || end - from > MostDigits || end < s.Length && char.IsLetterOrDigit(s[end]) || Lexicon.Unit(letters == 2 ? "kg" : "l", "en") is not { } unit)
        {
            return null;
        }

        double part = int.Parse(s.AsSpan(from, end - from), CultureInfo.InvariantCulture) / Math.Pow(10, end - from);
        return new Measure(number with { Min = number.Min + part, End = end }, unit, null, null, end);
    }

    /// <summary>"1.500 kg", "1.500 l" where a point groups thousands: kilograms and litres of a card are no thousands, and the point is the comma. "1.500 g" stays what it is.</summary>
    public static Numeral Pointed(string s, Numeral number, UnitWord unit, string lang) =>
        number is { Grouped: true, Max: null, Min: >= Thousand and < 100 * Thousand } && unit is { Kind: "mass" or "volume", Base: Thousand } && lang is "fr" or "es" or "it" or "de" && number.End > 4 && s[number.End - 4] == '.'
            ? number with { Min = number.Min / Thousand, Grouped = false }
            : number;
}
