using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"8 fishcakes" right under "SMOKED HADDOCK FISHCAKES": how many of what the title names are made, and no food of the list. "4 onions" under "ONION SOUP" are bought.</summary>
internal static class TitleCount
{
    private const int Longest = 40;
    private const int Shortest = 4;

    /// <summary>The yield such a line tells; null for any other.</summary>
    public static CardYield? Of(string title, string s, Span span, string lang)
    {
        if (s.Length > Longest || s.Length < Shortest || !(char.IsAsciiDigit(s[0]) || Lexicon.Longest("num", s, 0, 1, lang, out _) is not null) || Numbers.Range(s, 0, lang) is not { Min: > 1 } n || Amounts.At(s, 0, lang) is { Unit: not null })
        {
            return null;
        }

        string noun = s[Places.Skip(s, n.End)..].TrimEnd('.', ' ');
        return noun.Length >= Shortest && noun.Count(' ') < 3 && noun.All(c => char.IsLetter(c) || c is ' ' or '-') && FoodIds.Match(noun, lang) is null && Named(title, noun)
            ? new CardYield(n.Min, "pieces", s, span) { AmountMax = n.Max }
            : null;
    }

    /// <summary>True when every word of the noun is one of the title, in one or in many.</summary>
    private static bool Named(string title, string noun)
    {
        string[] words = Folding.Key(title).Split([' ', ',', '-', '(', ')', '.', ':', '/'], StringSplitOptions.RemoveEmptyEntries);
        return Array.TrueForAll(Folding.Key(noun).Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries), part => Array.Exists(words, w => Same(w, part)));
    }

    /// <summary>"fishcakes" and "fishcake", "torta" and "torte": all but the last letters, which tell how many.</summary>
    private static bool Same(string a, string b)
    {
        int common = a.AsSpan().CommonPrefixLength(b);
        return common >= 3 && a.Length - common <= 2 && b.Length - common <= 2;
    }
}
