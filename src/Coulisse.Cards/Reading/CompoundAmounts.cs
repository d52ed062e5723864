using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>One amount told in two units.</summary>
internal static class CompoundAmounts
{
    /// <summary>"1 lb 4 oz", "2 kg 500 g": one amount told in two units.</summary>
    public static int Take(string s, int i, string lang, Draft d)
    {
        int j = Places.Skip(s, i);
        if (d.Unit is { Unit: "lb" or "kg" or "l", Base: { } big } && j < s.Length && char.IsAsciiDigit(s[j]) && Amounts.At(s, j, lang) is { } m && m.Unit is { Base: { } small } && m.Unit.Kind == d.Unit.Kind && small < big)
        {
            d.Amount += m.Number.Min * small / big;
            return m.End;
        }

        // "1 kg 500 de pommes", "1 kg 200 g": grams behind kilos need no unit
        if (lang is "fr" or "es" or "it" && d.Unit is { Unit: "kg" } && j + 3 < s.Length && Numbers.Single(s, j, lang) is { InWords: false, Min: >= 100 and < 1000 } grams && grams.End - j == 3 && s[grams.End] == ' ' && Lexicon.LongestUnit(s, grams.End + 1, lang, out _) is null)
        {
            d.Amount += grams.Min / 1000;
            return grams.End;
        }

        return i;
    }

    /// <summary>A measure at a place, both units of it: "2 lb 3 oz".</summary>
    public static Measure? At(string s, int i, string lang)
    {
        if (Amounts.At(s, i, lang) is not { } m)
        {
            return null;
        }

        int j = Places.Skip(s, m.End);
        return m is { Unit: { Unit: "lb" or "kg" or "l", Base: { } big, Kind: { } kind }, Number.Max: null } && j < s.Length && char.IsAsciiDigit(s[j]) && Amounts.At(s, j, lang) is { Unit: { Base: { } small } unit, Number.Max: null } more && unit.Kind == kind && small < big
            ? m with { Number = m.Number with { Min = m.Number.Min + (more.Number.Min * small / big) }, End = more.End }
            : AddedSpoons.At(s, m, lang);
    }
}
