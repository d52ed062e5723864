using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"2 x 16 cm rings", "3 × 20 cm Formen": how many, how wide, and of what; the figure of the width counts nothing.</summary>
internal static class SizedForms
{
    /// <summary>The yield told so at a place; null for any other.</summary>
    public static CardYield? At(string s, int at, Span span, string lang)
    {
        if (Numbers.Single(s, at, lang) is not { InWords: false, Min: > 0 and < 200 } n || Places.Skip(s, n.End) is var sign && (sign >= s.Length || s[sign] is not ('x' or '×' or 'X')))
        {
            return null;
        }

        int wide = Places.Skip(s, sign + 1);
        if (Amounts.At(s, wide, lang) is not { Unit.Kind: "length" } m)
        {
            return null;
        }

        int noun = Places.Skip(s, m.End < s.Length && s[m.End] == '-' ? m.End + 1 : m.End);
        int end = Places.WordEnd(s, Math.Min(noun, s.Length));
        return end > noun && YieldWords.Form(s[noun..end]) ? new CardYield(n.Min, s[noun..end].ToLowerInvariant(), s, span) : null;
    }
}
