using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A count of several signs behind a food everybody knows: "Zitronen 2-3", "onions 1 1/2", "cebollas 2 a 3". Its last figure alone is another count, and what is left is no food.</summary>
internal static class CountBehind
{
    private const double Most = 36;

    /// <summary>Takes a range or a mixed number off the end; null for any other line.</summary>
    public static string? Take(string s, string lang, Draft d) =>
        At(s) is var at and > 0 && s.AsSpan(at).IndexOfAnyExceptInRange('0', '9') >= 0 && Of(s, at, lang) is { } n && n.End == s.Length ? Set(s, at, n, d) : null;

    /// <summary>The count that begins at a place; null where it is none or the food before it is not counted.</summary>
    public static Numeral? Of(string s, int at, string lang)
    {
        string food = Food(s, at);
        return s[at] == '0' || food.Length < 3 || !char.IsLetter(food[^1]) || Numbers.Range(s, at, lang) is not { InWords: false, Repaired: false, Spaced: false, Grouped: false, Min: > 0 } n || (n.Max ?? n.Min) > Most || n.Max < n.Min || n.Min * 4 % 1 != 0
            || BackAmount.Typed(food) || FoodIds.Match(food, lang) is not { } match || NeverCounted.Is(match, n.Min) || NeverCounted.Poured(food, lang) ? null : n;
    }

    /// <summary>Gives the draft its count and leaves the food.</summary>
    public static string Set(string s, int at, Numeral n, Draft d)
    {
        d.Amount = n.Min;
        d.AmountMax = n.Max;
        d.Tokens?.Add(new ReadToken(s[at..n.End], "amount", s[at..n.End]));
        return Food(s, at);
    }

    /// <summary>Where the first figure stands that is no part of a word; -1 without one.</summary>
    public static int At(string s)
    {
        for (int i = 3; i < s.Length; i++)
        {
            if (s[i - 1] == ' ' && (char.IsAsciiDigit(s[i]) || Numbers.Vulgar(s[i]) > 0))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The food before a place.</summary>
    private static string Food(string s, int at) => s[..at].TrimmedEnd(" ,:-");
}
