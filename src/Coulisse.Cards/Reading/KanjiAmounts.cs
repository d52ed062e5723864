using System.Globalization;
using System.Text;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"白身すり身 三百グラム", "醤油 大さじ三", "蛤 十二個", "六人前", "八十五度の湯": amounts, guests and degrees in written numerals, told in figures for the reader behind. Names keep theirs: "三つ葉", "一番出汁", "八丁味噌", "三温糖"; how often is none ("二度揚げ", "三度に分ける").</summary>
internal static class KanjiAmounts
{
    private const int Longest = 240;
    private const string Before = " …・:：約各(（~〜、/";
    private const string BehindUnit = " ()（）分強弱半、程ほくぐ位前~〜/";
    private const string BehindSpoon = " ()（）強弱杯半と、/";
    private const double LeastHeat = 30;
    private static readonly string[] Spoons = ["大さじ", "小さじ", "大匙", "小匙", "おおさじ", "こさじ", "カップ"];
    private static readonly string[] Eaters = ["人前", "人分", "名分", "名様分", "人様分", "皿分"];
    private static readonly string[] Bounds = ["以下", "以上", "まで", "前後", "に冷", "程度", "くらい"];

    /// <summary>The line with such amounts in figures; the same string where it has none.</summary>
    public static string Plain(string s)
    {
        if (s.Length > Longest || !KanjiNumbers.In(s))
        {
            return s;
        }

        StringBuilder? told = null;
        int copied = 0;
        for (int i = KanjiNumbers.Next(s, 0); i >= 0;)
        {
            if (KanjiNumbers.At(s, i, out int end) is not { } n)
            {
                i = KanjiNumbers.Next(s, Math.Max(end, i + 1));
                continue;
            }

            double? most = null;
            if (end + 1 < s.Length && s[end] is '、' or '~' or '〜' or '-' && KanjiNumbers.At(s, end + 1, out int upper) is { } high && high > n)
            {
                (most, end) = (high, upper);
            }

            if (Counts(s, i, end))
            {
                told ??= new StringBuilder(s.Length + 4);
                told.Append(s, copied, i - copied).Append(CultureInfo.InvariantCulture, $"{n}");
                _ = most is { } m ? told.Append(CultureInfo.InvariantCulture, $"~{m}") : told;
                copied = end;
            }

            i = KanjiNumbers.Next(s, end);
        }

        return told is null ? s : told.Append(s, copied, s.Length - copied).ToString();
    }

    /// <summary>True for a line of a list whose amount is written so: no figure in it says that it is one.</summary>
    public static bool Item(string s) =>
        s.Length < 60 && KanjiNumbers.In(s) && Folding.Line(s) is { Length: > 2 } body && body[^1] != '。' && body.AsSpan().IndexOfAnyInRange('0', '9') < 0 && Marks.ListNumber(s, 0) == 0 && Plain(body) is var plain && !ReferenceEquals(plain, body) && Layout.Looks.Amounted(plain, "ja") && !Layout.Looks.Statement(plain, "ja");

    /// <summary>The sentence with its degrees in figures, each as long as it was written where that can be; the same string where it has none.</summary>
    public static string Degrees(string s)
    {
        if (s.IndexOf('度') < 1 || !KanjiNumbers.In(s))
        {
            return s;
        }

        StringBuilder? told = null;
        int copied = 0;
        for (int i = KanjiNumbers.Next(s, 0); i >= 0;)
        {
            if (KanjiNumbers.At(s, i, out int end) is { } n && end < s.Length && s[end] == '度' && (n >= LeastHeat || n >= 2 && Places.Begins(s.AsSpan(end + 1), Bounds)))
            {
                told ??= new StringBuilder(s.Length + 4);
                string figure = n.ToString(CultureInfo.InvariantCulture);
                told.Append(s, copied, i - copied).Append(figure.PadRight(end - i));
                copied = end;
            }

            i = KanjiNumbers.Next(s, Math.Max(end, i + 1));
        }

        return told is null ? s : told.Append(s, copied, s.Length - copied).ToString();
    }

    /// <summary>The words as they stand on the card, of words in figures.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="figures">The same in figures.</param>
    /// <param name="words">Words of it in figures.</param>
    public static string Written(string s, string figures, string words) => figures.Length == s.Length && figures.IndexOf(words, StringComparison.Ordinal) is >= 0 and var at ? s.Substring(at, words.Length) : words;

    /// <summary>True where what stands around a numeral says that it counts or weighs.</summary>
    private static bool Counts(string s, int at, int end)
    {
        if (Places.Begins(s.AsSpan(end), Eaters))
        {
            return true;
        }

        foreach (string w in Spoons)
        {
            if (s.AsSpan(0, at).EndsWith(w, StringComparison.Ordinal))
            {
                return end == s.Length || BehindSpoon.Contains(s[end]);
            }
        }

        return at > 0 && Before.Contains(s[at - 1]) && JapanesePart.Unit(s, end, out int behind) is not null && behind > end && (behind == s.Length || BehindUnit.Contains(s[behind]));
    }
}
