using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The size of an egg between its name and its count: "卵(M) 3個", "卵 M2個", "卵L1個". It is a grade, and hides no count.</summary>
internal static class JapaneseSizes
{
    private const string Letters = "SML";

    /// <summary>True for a food, its size and its count.</summary>
    public static bool Told(string s) => Out(s, out string? size) is { Length: > 2 } unsized && size is not null && Layout.Looks.Amounted(unsized, "ja");

    /// <summary>The line without it; the same string when it has none.</summary>
    public static string Out(string s, out string? size)
    {
        size = null;
        for (int i = s.AsSpan().IndexOfAny(Letters); i > 0; i = s.AsSpan(i + 1).IndexOfAny(Letters) is var next and >= 0 ? i + 1 + next : -1)
        {
            int end = i + 1;
            while (end < s.Length && Letters.Contains(s[end]) && end - i < 2)
            {
                end++;
            }

            if (end >= s.Length)
            {
                return s;
            }

            string behind = s[end..];
            if (s[i - 1] == '(' && i > 1 && (behind[0] == ')' || behind.StartsWith("サイズ)", StringComparison.Ordinal)) && behind.IndexOf(')') is var close && behind.AsSpan(close + 1).TrimStart() is { IsEmpty: false } count && char.IsAsciiDigit(count[0]))
            {
                size = s[i..end];
                return $"{s[..(i - 1)].TrimEnd()} {behind[(close + 1)..].TrimStart()}";
            }

            if (char.IsAsciiDigit(behind[0]) && (s[i - 1] == ' ' || Places.IsJapanese(s[i - 1])))
            {
                size = s[i..end];
                return $"{s[..i].TrimEnd()} {behind}";
            }
        }

        return s;
    }
}
