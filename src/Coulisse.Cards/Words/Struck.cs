namespace Coulisse.Cards.Words;

/// <summary>Words struck through ("~~100 g~~ 120 g flour"): shown as written, never read.</summary>
internal static class Struck
{
    private const int Longest = 300;
    private const char Held = '\uE000';

    /// <summary>True when a text may hold struck words.</summary>
    public static bool In(string s) => At(s, 0, out _) >= 0;

    /// <summary>The text without its struck words.</summary>
    public static string Out(string s)
    {
        System.Text.StringBuilder b = new(s.Length);
        int from = 0;
        while (At(s, from, out int end) is var at and >= 0)
        {
            b.Append(s, from, at - from).Append(' ');
            from = end;
        }

        return b.Append(s, from, s.Length - from).ToString();
    }

    /// <summary>The folded text with its struck words and their marks, as it is shown and written back.</summary>
    public static string Shown(string s) => Folding.Line(s.Replace("~~", Held.ToString(), StringComparison.Ordinal)).Replace(Held.ToString(), "~~", StringComparison.Ordinal);

    private static int At(string s, int from, out int end)
    {
        end = from;
        int open = s.IndexOf("~~", from, StringComparison.Ordinal);
        int close = open < 0 ? -1 : s.IndexOf("~~", open + 2, Math.Min(Longest, s.Length - open - 2), StringComparison.Ordinal);
        if (close < open + 3)
        {
            return -1;
        }

        end = close + 2;
        return open;
    }
}
