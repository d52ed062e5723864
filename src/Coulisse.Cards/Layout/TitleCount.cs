using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"8 fishcakes" right under "SMOKED HADDOCK FISHCAKES": how many of what the title names are made, and no food of the list. "4 onions" under "ONION SOUP" are bought.</summary>
internal static class TitleCount
{
    private const int Longest = 40;
    private const int Shortest = 4;
    private const int Compound = 5;

    /// <summary>The yield such a line tells; null for any other.</summary>
    public static CardYield? Of(string title, string s, Span span, string lang)
    {
        if (s.Length > Longest || s.Length < Shortest || !(char.IsAsciiDigit(s[0]) || Lexicon.Longest("num", s, 0, 1, lang, out _) is not null) || Numbers.Range(s, 0, lang) is not { Min: > 1 } n || Amounts.At(s, 0, lang) is { Unit: not null })
        {
            return null;
        }

        return Noun(s, n) is { } noun && FoodIds.Match(noun, lang) is null && Named(title, noun)
            ? new CardYield(n.Min, "pieces", s, span) { AmountMax = n.Max }
            : null;
    }

    /// <summary>"2 Strudel" behind "Apfelstrudel - ", "30 tacos" behind "Tacos de cochinita · ": a count of what the title names, and nothing else; null for any other words.</summary>
    public static (Numeral Amount, string Unit)? Tail(string title, string clause, string lang)
    {
        int at = title.IndexOf(clause, StringComparison.Ordinal);
        if (at < Shortest || clause.Length is < Shortest or > Longest || !char.IsAsciiDigit(clause[0]) || Numbers.Range(clause, 0, lang) is not { Min: > 1 } n || Amounts.At(clause, 0, lang) is { Unit: not null })
        {
            return null;
        }

        return Noun(clause, n) is { } noun && Named(title[..at], noun) && (FoodIds.Match(noun, lang) is null || Whole(title[..at], noun)) ? (n, "pieces") : null;
    }

    /// <summary>What is counted, in a few plain words; null for more or other.</summary>
    private static string? Noun(string s, Numeral n) =>
        s[Places.Skip(s, n.End)..].TrimEnd('.', ' ') is { Length: >= Shortest } noun && noun.Count(' ') < 3 && noun.All(c => char.IsLetter(c) || c is ' ' or '-') ? noun : null;

    /// <summary>"CROISSANTS · 40 croissants": of a food everybody knows only where the title names nothing else; "Egg curry · 12 eggs" are bought.</summary>
    private static bool Whole(string title, string noun) => title.Trimmed(" -·|/,;:(").Count(' ') == noun.Count(' ');

    /// <summary>True when every word of the noun is one of the title, in one or in many.</summary>
    private static bool Named(string title, string noun)
    {
        string[] words = Folding.Key(title).Split([' ', ',', '-', '(', ')', '.', ':', '/'], StringSplitOptions.RemoveEmptyEntries);
        return Array.TrueForAll(Folding.Key(noun).Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries), part => Array.Exists(words, w => Same(w, part)));
    }

    /// <summary>"fishcakes" and "fishcake", "torta" and "torte": all but the last letters, which tell how many.</summary>
    private static bool Same(string a, string b)
    {
        if (b.Length > Compound && a.EndsWith(b, StringComparison.Ordinal))
        {
            // "Apfelstrudel"
            return true;
        }

        int common = a.AsSpan().CommonPrefixLength(b);
        return common >= 3 && a.Length - common <= 2 && b.Length - common <= 2;
    }
}
