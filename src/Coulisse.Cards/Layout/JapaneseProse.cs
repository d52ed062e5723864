using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>The foods of a Japanese sentence: "豚バラ肉150gを鍋で2分炒め、大根200gとにんじん1本を入れて". The name stands before its amount, back to a comma, a bracket or the particle of what came before; minutes, guests and moulds weigh nothing.</summary>
internal static class JapaneseProse
{
    private const int LongestName = 14;
    private const int LongestUnit = 6;
    private static readonly WordList Kit = new("鍋", "型", "ボウル", "フライパン", "皿", "容器", "バット", "天板", "ラップ", "紙", "袋", "瓶", "串", "カップ", "等分", "全体", "約", "残り");
    private static readonly System.Buffers.SearchValues<char> Seams = System.Buffers.SearchValues.Create("をにでへはが");
    private const string Ends = "、。,（）()「」・:： 　";
    private const string Particles = "はがをにでへともやか";

    /// <summary>"豚バラ肉 150g" for each amount of the sentence.</summary>
    public static List<string> Foods(string s)
    {
        List<string> found = [];
        int from = 0;
        for (int i = 1; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || char.IsAsciiDigit(s[i - 1]) || s[i - 1] is '.' or '/' or '-' or '~')
            {
                continue;
            }

            int spoon = Spoon(s, i);
            if (Clock.At(s, i, "ja") is not null || Amount(s, spoon, i) is not var (end, counted) || Named(s, from, spoon, counted) is not { } name)
            {
                continue;
            }

            found.Add($"{name} {s[spoon..end]}");
            from = end;
            i = Math.Max(i, end - 1);
        }

        return found;
    }

    /// <summary>Where the amount at a place ends, and whether it counts; null when none stands there. A particle right behind the unit ("150gを") is cut off before it is read.</summary>
    private static (int End, bool Counted)? Amount(string s, int from, int figure)
    {
        if (Numbers.Range(s, figure, "ja") is not { InWords: false } n)
        {
            return null;
        }

        if (from < figure)
        {
            return (n.End, false);
        }

        for (int end = Math.Min(s.Length, n.End + LongestUnit); end > n.End; end--)
        {
            string told = s[n.End..end];
            if (Lexicon.LongestUnit(told, 0, "ja", out int whole) is { Kind: "mass" or "volume" or "spoon" or "cup" or "count" or "word" or "container" } unit && whole == told.Length)
            {
                return (end, unit.Kind is not ("mass" or "volume"));
            }
        }

        return null;
    }

    /// <summary>Where "大さじ4" begins whose figure stands at a place.</summary>
    private static int Spoon(string s, int at)
    {
        foreach (string spoon in (ReadOnlySpan<string>)["大さじ", "小さじ", "カップ"])
        {
            if (at >= spoon.Length && s.AsSpan(at - spoon.Length, spoon.Length).SequenceEqual(spoon))
            {
                return at - spoon.Length;
            }
        }

        return at;
    }

    /// <summary>The name that ends at a place; null where none does. What is counted may be a pot.</summary>
    private static string? Named(string s, int from, int at, bool counted)
    {
        int begin = at;
        while (begin > from && at - begin < LongestName && !Ends.Contains(s[begin - 1], StringComparison.Ordinal) && !char.IsAsciiDigit(s[begin - 1]))
        {
            begin--;
        }

        if (begin > 0 && char.IsAsciiDigit(s[begin - 1]))
        {
            // "1個30gに": how heavy one is
            return null;
        }

        string whole = s[begin..at];
        for (int k = 0; k < whole.Length; k++)
        {
            // The longest end of the words that is a food: "鍋に水" is water.
            if (FoodIds.Match(whole[k..], "ja") is not null && (k == 0 || Particles.Contains(whole[k - 1], StringComparison.Ordinal) || !Places.IsJapanese(whole[k - 1])))
            {
                return whole[k..];
            }
        }

        int particle = whole.AsSpan().LastIndexOfAny(Seams);
        string last = whole[(particle + 1)..].TrimStart('と');
        return last.Length > 0 && last.AsSpan().ContainsAnyExceptInRange('\u3041', '\u309F') && !(counted && Kit.In(last)) ? last : null;
    }
}
