namespace Coulisse.Cards.Words;

/// <summary>Dots that lead the eye from a food to its amount: "Flour ........ 500 g ........ 100 %".</summary>
internal static class Leaders
{
    private const int Fewest = 3;

    /// <summary>True when dots lead from words to something behind them.</summary>
    public static bool In(string s) => At(s, 0, out int end) > 0 && end < s.Length;

    /// <summary>The line with a colon for the first run of dots and a comma for every further one; the same string when it has none.</summary>
    public static string Plain(string s)
    {
        if (!In(s))
        {
            return s;
        }

        System.Text.StringBuilder b = new(s.Length);
        int from = 0;
        for (int n = 0; At(s, from, out int end) is var at and > 0 && end < s.Length; n++)
        {
            b.Append(s.AsSpan(from, at - from).TrimEnd()).Append(n == 0 ? ": " : ", ");
            from = Places.Skip(s, end);
        }

        return b.Append(s.AsSpan(from)).ToString();
    }

    /// <summary>Where a run of dots begins behind a place; -1 when none does.</summary>
    private static int At(string s, int from, out int end)
    {
        for (int i = from; i < s.Length; i++)
        {
            int e = i;
            while (e < s.Length && s[e] is '.' or '…' or '·')
            {
                e++;
            }

            if (e - i >= Fewest || e > i && s[i] == '…')
            {
                end = e;
                return i;
            }

            i = Math.Max(i, e - 1);
        }

        end = from;
        return -1;
    }
}
