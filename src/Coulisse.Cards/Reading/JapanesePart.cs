using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Japanese lines: food and amount in either order, spoon words before the figure, counters behind it.</summary>
internal static class JapanesePart
{
    /// <summary>True when the part is written in Japanese.</summary>
    public static bool Reads(string s)
    {
        foreach (char c in s)
        {
            if (Places.IsJapanese(c))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"しょうゆ 大さじ2": a name, a spoon or cup and its figure, and nothing behind them but a bracket.</summary>
    public static bool Spooned(string s)
    {
        foreach (string w in Uses)
        {
            if (s.Length > w.Length + 1 && s.Length < 30 && s.EndsWith(w, StringComparison.Ordinal) && s[^(w.Length + 1)] is ' ' or '…' or ':' or '・')
            {
                // "粗塩 少々"
                return true;
            }
        }

        foreach (string w in Spoons)
        {
            int at = s.IndexOf(w, StringComparison.Ordinal);
            if (at > 0 && s[^1] != '。' && Numbers.Range(s, Places.Skip(s, at + w.Length), "ja") is { } n && (n.End >= s.Length || s[n.End] is ' ' or '(' or '強' or '弱' or '杯' or '半' or '~'))
            {
                return true;
            }
        }

        return false;
    }

    private static readonly string[] Uses = ["適量", "適宜", "少々", "お好みで", "お好み", "好みで", "お好みの量", "少量", "たっぷり", "好きなだけ"];
    private static readonly string[] Spoons = ["大さじ", "小さじ", "大匙", "小匙", "おおさじ", "こさじ", "カップ"];

    /// <summary>The part's reading.</summary>
    public static Draft Read(string s, bool why)
    {
        Draft d = new(why);
        List<string> brackets = [];
        s = JapaneseSizes.Out(s, out string? sized);
        if (sized is not null)
        {
            d.Graded(sized);
        }

        s = Brackets.Take(s, brackets);
        s = JapaneseShares.Take(Whole(s), d);
        s = d.Percent is null ? Amount(s, d) : s;
        s = Words(s, d);
        int size = s.IndexOf("サイズ", StringComparison.Ordinal);
        if (size > 0)
        {
            int b = s.LastIndexOf(' ', size - 1);
            d.Graded(s[(b + 1)..size]);
            s = (s[..Math.Max(b, 0)] + s[(size + 3)..]).Trim();
        }

        d.Food = Marked(s).Trim(' ', '、', '。', ':', '-', '…', '・', '/', '=', '.').Replace("  ", " ", StringComparison.Ordinal);
        if (d.Unit?.Unit == "tin" && d.Food.EndsWith('缶'))
        {
            d.Food = d.Food[..^1];
        }

        int purpose = d.Food.IndexOf('用');
        if (purpose is > 0 and < 5 && purpose + 1 < d.Food.Length && d.Amount is null)
        {
            // "飾り用ミント"
            d.Use = d.Use is null ? d.Food[..(purpose + 1)] : d.Food[..(purpose + 1)] + "; " + d.Use;
            d.Food = d.Food[(purpose + 1)..].TrimmedStart("の ");
        }

        if (d.Food.IndexOf(':') is > 1 and < 8 and var colon && FoodIds.Match(d.Food[(colon + 1)..].Trim(), "ja") is not null)
        {
            // "カラメル:グラニュー糖 60g": what it is for, and the food
            d.Use = d.Use is null ? d.Food[..colon] : d.Food[..colon] + "; " + d.Use;
            d.Food = d.Food[(colon + 1)..].Trim();
        }

        if (d.Food.EndsWith('の') || d.Food.EndsWith('を'))
        {
            d.Food = d.Food[..^1];
        }

        foreach (string or in (ReadOnlySpan<string>)["または", "又は", "もしくは"])
        {
            if (d.Food.IndexOf(or, StringComparison.Ordinal) is > 0 and var at && at + or.Length < d.Food.Length)
            {
                d.Alternative ??= d.Food[(at + or.Length)..].Trim();
                d.Food = d.Food[..at].Trim();
            }
        }

        Counter(d);
        foreach (string b in brackets)
        {
            Brackets.Read(b, "ja", d);
        }

        Alternatives.Complete(d, "ja");
        d.Tokens?.Add(new ReadToken(d.Food, "food", d.Food));
        return d;
    }

    /// <summary>"A 醤油", "☆砂糖": the mark of a group before the food.</summary>
    private static string Marked(string s)
    {
        if (s.Length > 3 && s[0] == '【' && s.IndexOf('】') is > 0 and < 4 and var close)
        {
            s = s[(close + 1)..].TrimStart();
        }

        return s.Length > 2 && s[0] is >= 'A' and <= 'E' or >= 'a' and <= 'e' && (s[1] is ' ' or '.' or ':' or '|') ? s[2..] : s.TrimmedStart("☆★◎●○◇◆△▲▽▼※■□♪|ⒶⒷⓐⓑ");
    }

    /// <summary>枚 counts flat things: a sheet of gelatine, a slice of bread, a leaf, and of meat or fish a piece; かけ of ginger is a thumb.</summary>
    private static void Counter(Draft d)
    {
        bool Of(params ReadOnlySpan<string> words)
        {
            foreach (string w in words)
            {
                if (d.Food.Contains(w, StringComparison.Ordinal))
                {
                    return true;
                }
            }

            return false;
        }

        if (d.Unit?.Unit == "sheet" && !Of("ゼラチン", "のり", "海苔", "皮", "シート", "パイ", "湯葉", "昆布"))
        {
            d.Unit = Of("パン", "ハム", "ベーコン", "チーズ") ? Lexicon.Unit("slice", "en") : Of("葉", "大葉", "しそ", "ローリエ", "レタス") ? Lexicon.Unit("leaf", "en") : null;
        }
        else if (d.Unit?.Unit == "clove" && Of("しょうが", "生姜", "ショウガ"))
        {
            d.Unit = Lexicon.Unit("thumb", "en");
        }
    }

    private static string Whole(string s) => s.StartsWith('約') ? s[1..] : s;

    private static string Amount(string s, Draft d)
    {
        // spoon or cup word, then the figure
        foreach (string w in Spoons)
        {
            int at = s.IndexOf(w, StringComparison.Ordinal);
            if (at < 0)
            {
                continue;
            }

            int i = at + w.Length;
            if (s.AsSpan(i).StartsWith("山盛り"))
            {
                d.Fill = "heaped";
                i += 3;
            }
            else if (s.AsSpan(i).StartsWith("すりきり"))
            {
                d.Fill = "level";
                i += 4;
            }

            i = Places.Skip(s, i);
            if (Numbers.Range(s, i, "ja") is { } n && !(w == "カップ" && at > 0 && char.IsAsciiDigit(s[at - 1])))
            {
                Set(d, n, Lexicon.Unit(w, "ja"));
                int end = n.End < s.Length && s[n.End] is '杯' ? n.End + 1 : n.End;
                return s[..at] + " " + Behind(s[end..], d, at > 0);
            }
        }

        if (ShortSpoon(s, d) is { } spooned)
        {
            return spooned;
        }

        for (int i = 0; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) && Numbers.Vulgar(s[i]) == 0 || i > 0 && (char.IsAsciiLetter(s[i - 1]) || char.IsAsciiDigit(s[i - 1])))
            {
                continue;
            }

            if (Numbers.Range(s, i, "ja") is not { } n)
            {
                continue;
            }

            int j = Places.Skip(s, n.End);
            if (j < s.Length && s[j] == '%')
            {
                i = j;
                continue;
            }

            if (Unit(s, j, out int end) is { Kind: "length" } && end < s.Length && s[end] == '角' && s.AsSpan(end + 1).IndexOfAnyInRange('0', '9') is 0 or 1)
            {
                // "昆布 10cm角1枚": how large the piece is
                d.Graded(s[i..(end + 1)]);
                s = s[..i].TrimEnd() + " " + s[(end + 1)..].TrimStart();
                i = s.AsSpan(0, Math.Min(i, s.Length)).TrimEnd().Length;
                continue;
            }

            if (Unit(s, j, out end) is { } unit)
            {
                Set(d, n, unit);
                string before = s[..i].TrimEnd();
                if (before.EndsWith('約'))
                {
                    before = before[..^1];
                }

                if (before.EndsWith("正味", StringComparison.Ordinal))
                {
                    d.Prepare("正味");
                    before = before[..^2];
                }

                if (before.Length > 2 && before[^1] is '大' or '中' or '小' && before[^2] == ' ')
                {
                    // "にんじん 中1本"
                    d.Graded(before[^1..]);
                    before = before[..^2];
                }

                return before + " " + Behind(s[end..], d, before.Length > 0);
            }

            if (n.End >= s.Length && i > 0)
            {
                Set(d, n, null);
                return s[..i];
            }
        }

        return s;
    }

    /// <summary>"しょうゆ 大1", "塩…小1/2": the spoons in one letter, never before a counter ("にんじん 大1本").</summary>
    private static string? ShortSpoon(string s, Draft d)
    {
        for (int i = 0; i + 1 < s.Length; i++)
        {
            if (s[i] is not ('大' or '小') || i > 0 && s[i - 1] is not (' ' or '…' or '・' or '、' or ':' or '/' or '各') || Numbers.Range(s, i + 1, "ja") is not { InWords: false } n || n.End < s.Length && s[n.End] is not (' ' or '(' or '強' or '弱' or '、'))
            {
                continue;
            }

            Set(d, n, Lexicon.Unit(s[i] == '大' ? "大さじ" : "小さじ", "ja"));
            return s[..i] + " " + Behind(s[n.End..], d, i > 0);
        }

        return null;
    }

    /// <summary>What stands behind the amount: 分 of a counter, 強 and 弱 for a little more or less, and after a space how it is cut.</summary>
    private static string Behind(string tail, Draft d, bool foodBefore)
    {
        string t = tail.TrimStart('分');
        if (t.StartsWith('半') && d.Amount is { } whole && whole % 1 == 0 && (t.Length == 1 || t[1] is ' ' or '('))
        {
            // "牛乳 1カップ半"
            d.Amount = whole + 0.5;
            t = t[1..];
        }

        foreach (string about in (ReadOnlySpan<string>)["程度", "くらい", "ぐらい", "ほど", "前後", "以上"])
        {
            t = t.StartsWith(about, StringComparison.Ordinal) ? t[about.Length..] : t;
        }

        if (t.Length > 0 && t[0] is '強' or '弱' && (t.Length == 1 || t[1] == ' '))
        {
            d.Fill = t[0] == '強' ? "generous" : "scant";
            t = t[1..];
        }

        if (foodBefore && t.Length > 1 && t[0] == ' ' && Places.IsJapanese(t[1]) && Lexicon.Unit(t.AsSpan(1), "ja") is null && !t.Contains("または", StringComparison.Ordinal) && !t.Contains("又は", StringComparison.Ordinal) && t.AsSpan().IndexOfAnyInRange('0', '9') < 0)
        {
            d.Prepare(t);
            return "";
        }

        return t;
    }

    /// <summary>The unit or counter at a place; null when none stands there.</summary>
    internal static UnitWord? Unit(string s, int at, out int end)
    {
        int latin = at;
        while (latin < s.Length && (char.IsAsciiLetter(s[latin]) || s[latin] == '.'))
        {
            latin++;
        }

        if (latin > at)
        {
            end = latin;
            Span<char> key = stackalloc char[32];
            int n = latin - at > 12 ? -1 : Folding.Key(s.AsSpan(at, latin - at), key);
            return n > 0 ? Lexicon.Unit(key[..n], "ja") : null;
        }

        for (int length = Math.Min(6, s.Length - at); length > 0; length--)
        {
            if (Lexicon.Unit(s.AsSpan(at, length), "ja") is { } unit && Places.IsJapanese(s[at]))
            {
                end = at + length;
                return unit;
            }
        }

        end = at;
        return null;
    }

    private static void Set(Draft d, Numeral n, UnitWord? unit)
    {
        d.Amount = n.Min;
        d.AmountMax = n.Max;
        d.Unit = unit;
        d.Repaired = n.Repaired;
        d.Tokens?.Add(new ReadToken(System.FormattableString.Invariant($"{n.Min}"), "amount", System.FormattableString.Invariant($"{n.Min} {unit?.Unit}")));
    }

    private static string Words(string s, Draft d)
    {
        foreach ((string word, string unit, double n) in (ReadOnlySpan<(string, string, double)>)[("ひとつまみ", "pinch", 1), ("一つまみ", "pinch", 1), ("ひとかけ", "clove", 1), ("ひとつかみ", "handful", 1), ("一つかみ", "handful", 1), ("ひと握り", "handful", 1), ("半分", "piece", 0.5), ("半個", "piece", 0.5)])
        {
            int at = s.IndexOf(word, StringComparison.Ordinal);
            if (at >= 0 && d.Amount is null)
            {
                d.Amount = n;
                d.Unit = unit == "piece" ? null : Lexicon.Unit(unit, "en");
                return (s[..at] + " " + s[(at + word.Length)..]).Trim();
            }
        }

        int half = d.Amount is null ? s.IndexOf('半') : -1;
        if (half > 0 && s[half - 1] == ' ' && half + 1 < s.Length && Unit(s, half + 1, out int counted) is { } counter && counted >= s.Length)
        {
            // "豆腐 半丁"
            d.Amount = 0.5;
            d.Unit = counter;
            return s[..half].TrimEnd();
        }

        foreach (string w in Uses)
        {
            int at = s.IndexOf(w, StringComparison.Ordinal);
            if (at >= 0)
            {
                d.Use = w is "適量" or "適宜" ? "as needed" : w;
                d.Optional |= w.Contains("好み", StringComparison.Ordinal);
                return (s[..at] + " " + s[(at + w.Length)..]).Trim(' ', '~');
            }
        }

        return s;
    }
}
