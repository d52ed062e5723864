using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A share behind its food: "岩塩 肉の2.5%", "塩 2%". A cream of 35% is a grade.</summary>
internal static class JapaneseShares
{
    private static readonly string[] Dosed = ["塩", "砂糖", "グラニュー糖", "酵母", "イースト", "胡椒", "こしょう", "コショウ", "麹", "寒天", "ゼラチン", "ペクチン", "キサンタンガム", "亜硝酸ナトリウム"];

    /// <summary>Takes it; the same string when the line has none.</summary>
    public static string Take(string s, Draft d)
    {
        int gap = s.Length > 3 && s[^1] == '%' ? s.LastIndexOf(' ') : -1;
        if (gap < 1)
        {
            return s;
        }

        string food = s[..gap].Trim();
        int of = s.IndexOf('の', gap);
        int figure = of > gap ? of + 1 : gap + 1;
        if (food.AsSpan().IndexOfAnyInRange('0', '9') >= 0 || of < 0 && !Array.Exists(Dosed, w => food.EndsWith(w, StringComparison.Ordinal)) || Numbers.Range(s, figure, "ja") is not { InWords: false } n || n.End != s.Length - 1)
        {
            return s;
        }

        d.Percent = n.Min;
        d.PercentOf = of > gap ? s[(gap + 1)..of].Replace("重量", "", StringComparison.Ordinal).Replace("総量", "", StringComparison.Ordinal) : null;
        d.Tokens?.Add(new ReadToken(s[(gap + 1)..], "share", System.FormattableString.Invariant($"{n.Min} %")));
        return food;
    }
}
