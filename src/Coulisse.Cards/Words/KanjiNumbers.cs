namespace Coulisse.Cards.Words;

/// <summary>Numbers in written Japanese numerals, in tens ("八十五", "三百", "千二百") or digit by digit ("一八〇").</summary>
internal static class KanjiNumbers
{
    private const string Digits = "〇一二三四五六七八九";
    private const int Longest = 8;
    private static readonly System.Buffers.SearchValues<char> All = System.Buffers.SearchValues.Create(Digits + "十百千");

    /// <summary>True for such a numeral.</summary>
    public static bool Is(char c) => All.Contains(c);

    /// <summary>True where any such numeral stands in the text: nearly every line has none.</summary>
    public static bool In(ReadOnlySpan<char> s) => s.IndexOfAny(All) >= 0;

    /// <summary>The next such numeral from a place on; -1 when there is none.</summary>
    public static int Next(string s, int from) => from >= s.Length || s.AsSpan(from).IndexOfAny(All) is not (>= 0 and var at) ? -1 : from + at;

    /// <summary>The number that begins at a place, below ten thousand; null where none does.</summary>
    public static double? At(string s, int at, out int end)
    {
        (double all, double open, int digits) = (0, 0, 0);
        end = at;
        for (; end < s.Length && end - at < Longest && All.Contains(s[end]); end++)
        {
            if (Digits.IndexOf(s[end]) is >= 0 and var digit)
            {
                open = digits > 0 ? (open * 10) + digit : digit;
                digits++;
            }
            else
            {
                all += Math.Max(open, digits > 0 ? 0 : 1) * (s[end] switch { '十' => 10, '百' => 100, _ => 1000 });
                (open, digits) = (0, 0);
            }
        }

        return all + open is > 0 and < 10_000 and var number ? number : null;
    }
}
