using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A word cut by a hyphen at the edge of a column, inside an item that opens with its amount: "1,5 l de bouillon de vo-" and "laille". "Hasel-" and "und Walnüsse" are two words.</summary>
internal static class PartedWords
{
    private const int LongestRest = 60;
    private static readonly WordSet Ands = new(anyCase: false, "und", "oder", "and", "or", "et", "ou", "y", "o", "e", "ed", "bzw.");

    /// <summary>True where the next line holds the rest of such a word: small letters, and no amount of its own.</summary>
    public static bool Goes(string a, string b) =>
        a[^1] == '-' && a.Length > 4 && char.IsAsciiDigit(a[0]) && char.IsLetter(a[^2]) && a.Contains(' ') && char.IsLower(b[0]) && b.Length < LongestRest && b.AsSpan().IndexOfAnyInRange('0', '9') < 0;

    /// <summary>True for a rest that opens with an "and": the hyphen before it stands for a word, and stays.</summary>
    public static bool Both(string b) => b.IndexOf(' ') is > 0 and < 6 and var end && Ands.Contains(b.AsSpan(0, end));
}
