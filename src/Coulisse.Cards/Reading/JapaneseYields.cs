using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"4人分", "カレー 20食", "28枚分": how a Japanese card counts what it makes.</summary>
internal static class JapaneseYields
{
    private static readonly System.Buffers.SearchValues<char> Range = System.Buffers.SearchValues.Create("0123456789~〜～-");
    private static readonly string[] Counted = ["名様分", "名様", "名分", "人分", "人前", "個分", "枚分", "本分", "台分", "杯分", "皿分"];

    /// <summary>The yield such words tell; null for any other.</summary>
    public static CardYield? In(string s, Span span)
    {
        if (s.IndexOf('食') is > 0 and var meals && char.IsAsciiDigit(s[meals - 1]) && (meals + 1 == s.Length || s[meals + 1] is ' ' or '分' or ')' or '、') && !s.Contains('日'))
        {
            // "カレー 20食": meals of a canteen; "1日3食" is how often one eats
            int first = meals;
            while (first > 0 && char.IsAsciiDigit(s[first - 1]))
            {
                first--;
            }

            if (meals - first < 5)
            {
                return new CardYield(double.Parse(s.AsSpan(first, meals - first), System.Globalization.CultureInfo.InvariantCulture), "portions", s, span);
            }
        }

        if (s.IndexOf('型') is > 0 and var form && form + 2 < s.Length && char.IsAsciiDigit(s[form + 1]))
        {
            // "15cm丸型1台": how many of that tin
            int end = form + 1;
            while (end < s.Length && char.IsAsciiDigit(s[end]))
            {
                end++;
            }

            if (end < s.Length && end - form < 4 && s[end] is '台' or '個' or '本')
            {
                return new CardYield(double.Parse(s.AsSpan(form + 1, end - form - 1), System.Globalization.CultureInfo.InvariantCulture), s[end..(end + 1)], s, span);
            }
        }

        if (s.IndexOf('斤') is > 1 and var loaf && char.IsAsciiDigit(s[loaf - 1]) && (loaf + 1 == s.Length || s[loaf + 1] is ' ' or '(' or '（' or '分'))
        {
            // "食パン 1斤(手ごね)"
            int first = loaf - 1;
            while (first > 0 && char.IsAsciiDigit(s[first - 1]))
            {
                first--;
            }

            if (loaf - first < 4 && (first == 0 || s[first - 1] is not '.'))
            {
                return new CardYield(double.Parse(s.AsSpan(first, loaf - first), System.Globalization.CultureInfo.InvariantCulture), "斤", s, span);
            }
        }

        foreach (string w in s.AsSpan().ContainsAny('分', '前') ? Counted : [])
        {
            int at = s.IndexOf(w, StringComparison.Ordinal);
            int from = at;
            while (from > 0 && char.IsAsciiDigit(s[from - 1]))
            {
                from--;
            }

            if (from > 1 && from < at && s[from - 1] is '~' or '〜' or '～' or '-' && char.IsAsciiDigit(s[from - 2]) && Numbers.Range(s, Start(s, from - 2), "ja") is { Max: not null } range && range.End == at)
            {
                // "4~5人前"
                return new CardYield(range.Min, w[0] is '人' or '皿' ? "portions" : w[..1], s, span) { AmountMax = range.Max };
            }

            if (at > 0 && from < at && at - from < 4)
            {
                return new CardYield(double.Parse(s.AsSpan(from, at - from), System.Globalization.CultureInfo.InvariantCulture), w[0] is '人' or '皿' ? "portions" : w[..1], s, span);
            }
        }

        return null;
    }

    /// <summary>True for words that tell for how many it is and nothing else: "4~5人前", "2人分".</summary>
    public static bool Only(string s) => KanjiAmounts.Plain(s) is var plain && !ReferenceEquals(plain, s) ? Only(plain) : s.Length is > 2 and < 10 && char.IsAsciiDigit(s[0]) && (s.EndsWith("人分", StringComparison.Ordinal) || s.EndsWith("人前", StringComparison.Ordinal)) && s.AsSpan(0, s.Length - 2).IndexOfAnyExcept(Range) < 0;

    private static int Start(string s, int at)
    {
        while (at > 0 && char.IsAsciiDigit(s[at - 1]))
        {
            at--;
        }

        return at;
    }
}
