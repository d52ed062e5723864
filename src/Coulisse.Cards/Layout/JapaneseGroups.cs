namespace Coulisse.Cards.Layout;

/// <summary>Seasonings that go in together carry one letter or star before each line ("A 醤油 大さじ2", "☆酒 大さじ1", "A｜だし", under it "｜みりん"), and the method takes them by it. Such a line is a food, and never a name.</summary>
internal static class JapaneseGroups
{
    private const string Stars = "☆★◎◇◆△▲▽▼♪※";

    /// <summary>These mark items of any list as well, and are no group's.</summary>
    private const string Bullets = "●○□■";

    /// <summary>End of such a mark at the front; 0 when none stands there.</summary>
    /// <param name="s">The line.</param>
    /// <param name="mark">The letter or the star; empty for a bar alone, which goes on with the mark before.</param>
    public static int Mark(string s, out string mark)
    {
        mark = "";
        if (s.Length < 3)
        {
            return 0;
        }

        int i = 0;
        if (s[0] is '|' or '｜')
        {
            i = 1;
        }
        else if (Stars.Contains(s[0]) || Bullets.Contains(s[0]))
        {
            mark = s[..1];
            i = 1;
        }
        else if (s[0] is '(' or '（' or '[' or '【' or '〔' && Letter(s[1]) && s[2] is ')' or '）' or ']' or '】' or '〕')
        {
            mark = Plain(s[1]);
            i = 3;
        }
        else if (Letter(s[0]) && s[1] is ' ' or '\u3000' or '|' or '｜' or '.' or '．' or ':' or '：' or '・' or '…')
        {
            mark = Plain(s[0]);
            i = 2;
        }

        while (i > 0 && i < s.Length && s[i] is ' ' or '\u3000' or '|' or '｜')
        {
            i++;
        }

        return i < s.Length ? i : 0;
    }

    /// <summary>The group of a line; <paramref name="last"/> is that of the line before.</summary>
    public static string? Group(string s, string? last) => Mark(s, out string mark) == 0 || Bullets.Contains(s[0]) ? null : mark.Length > 0 ? mark : last;

    /// <summary>True for a marked line with a food and its amount; a row of a table has more bars than one.</summary>
    public static bool Line(string s) =>
        s[^1] is not ('。' or '|' or '｜') && Mark(s, out _) is > 0 and var end && s.AsSpan(end).IndexOfAny('|', '｜') < 0 && Words.Folding.Line(s.AsSpan(end)) is { Length: > 1 } food && Looks.Amounted(food, "ja");

    /// <summary>"(A)", "【B】": the letter of the lines under it; null for any other line.</summary>
    public static string? Alone(string s) =>
        s.Length == 1 && Letter(s[0]) ? Plain(s[0]) : s.Length is 3 or 4 && s[0] is '(' or '（' or '[' or '【' or '〔' && Letter(s[1]) && s[2] is ')' or '）' or ']' or '】' or '〕' && (s.Length == 3 || s[3] is ':' or '：') ? Plain(s[1]) : null;

    private static bool Letter(char c) => c is >= 'A' and <= 'H' or >= 'Ａ' and <= 'Ｈ' or >= 'a' and <= 'e' or >= 'ａ' and <= 'ｅ';

    private static string Plain(char c) => (c >= 'ａ' ? (char)(c - 'ａ' + 'A') : c >= 'Ａ' ? (char)(c - 'Ａ' + 'A') : char.ToUpperInvariant(c)).ToString();
}
