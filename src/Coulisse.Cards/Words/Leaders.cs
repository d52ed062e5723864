namespace Coulisse.Cards.Words;

/// <summary>Dots that lead the eye from a food to its amount: "Flour ........ 500 g ........ 100 %".</summary>
internal static class Leaders
{
    private const int Fewest = 3;
    private const int Sentence = 40;

    /// <summary>True when dots lead from words to something behind them.</summary>
    public static bool In(string s) => At(s, 0, out int end) is var at and > 0 && end < s.Length && !Trails(s, at, end);

    /// <summary>"Bouillir le lait... cuire 3 min après ébullition.": three dots at the end of words and words behind them, in a line that ends like a sentence, lead to no amount.</summary>
    private static bool Trails(string s, int at, int end) =>
        s.Length > Sentence && s[^1] == '.' && end - at <= Fewest && char.IsLetter(s[at - 1]) && s[end] == ' ' && end + 1 < s.Length && char.IsLetter(s[end + 1]);

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
