using System.Globalization;

namespace Coulisse.Cards.Words;

/// <summary>Words of two letters or more that are written with a capital, as names of places are.</summary>
internal static class Capitals
{
    /// <summary>Those words of a text in their order. Made by hand: a pattern would be set up for every card that has a title.</summary>
    public static IEnumerable<string> In(string s)
    {
        int i = 0;
        while (i < s.Length)
        {
            if (!Letter(s[i]))
            {
                i++;
                continue;
            }

            int end = i;
            while (end < s.Length && Letter(s[end]))
            {
                end++;
            }

            if (end - i > 1 && char.IsUpper(s[i]))
            {
                yield return s[i..end];
            }

            i = end;
        }
    }

    private static bool Letter(char c) => char.IsAsciiLetterOrDigit(c) || char.GetUnicodeCategory(c) is UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.TitlecaseLetter or UnicodeCategory.ModifierLetter
        or UnicodeCategory.OtherLetter or UnicodeCategory.NonSpacingMark or UnicodeCategory.DecimalDigitNumber or UnicodeCategory.ConnectorPunctuation;
}
