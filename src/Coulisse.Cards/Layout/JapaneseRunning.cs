using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A Japanese card in one breath: 材料 and 作り方 stand in the running text ("肉じゃが 材料(4人分)じゃがいも4個、牛肉200g 作り方 じゃがいもを切る。20分煮る。"). Cut into the lines another card would have: name, list, steps.</summary>
internal static class JapaneseRunning
{
    private const string Listed = "材料";
    private const int Shortest = 12;
    private const int LongestBracket = 20;
    private static readonly string[] Methods = ["作り方", "つくり方", "作りかた", "調理手順", "手順"];

    /// <summary>The lines with such lines cut; the same list where none stands.</summary>
    public static List<RawLine> Cut(List<RawLine> lines, string lang)
    {
        List<RawLine>? cut = null;
        for (int i = 0; lang == "ja" && i < lines.Count; i++)
        {
            List<string>? pieces = Running(lines[i].Text) ? Pieces(Folding.Line(lines[i].Text)) : null;
            if (pieces is null)
            {
                cut?.Add(lines[i]);
                continue;
            }

            cut ??= [.. lines.Take(i)];
            cut.AddRange(pieces.Select(p => lines[i] with { Text = p }));
        }

        return cut ?? lines;
    }

    private static bool Running(string s) => s.Length >= Shortest && s[0] is not ('|' or '#') && (s.Contains(Listed, StringComparison.Ordinal) || s[0] is '作' or 'つ' or '調' or '手' or '【' or '■' or '●');

    private static List<string>? Pieces(string s)
    {
        int at = s.IndexOf(Listed, StringComparison.Ordinal);
        if (at < 0)
        {
            return Method(s, 0, out int opens, out int told) && opens < 2 && s.IndexOf('。', told) > 0 ? ["作り方", .. Steps(s[told..])] : null;
        }

        if (at > 0 && s[at - 1] is '原' or '具' or '新' or '全')
        {
            return null;
        }

        string name = s[..at].Trimmed(" :：。、【】《》「」『』〈〉■●◆◇-・");
        string heading = Listed + Bracket(s, at + Listed.Length, out int from);
        bool method = Method(s, from, out int begins, out int work);
        int stop = s.IndexOf('。', from);
        int end = method && (stop < 0 || begins <= stop + 1) ? begins : stop < 0 ? s.Length : stop;
        List<string> foods = Foods(s[from..end]);
        if (foods.Count < 2 || foods.Count(f => Looks.Amounted(f, "ja")) * 3 < foods.Count * 2)
        {
            return null;
        }

        List<string> lines = [.. name.Length > 0 ? [name] : Array.Empty<string>(), heading, .. foods.SelectMany(Grouped)];
        string rest = method ? s[work..] : s[Math.Min(s.Length, end + 1)..].Trim();
        if (rest.Length > 0)
        {
            lines.Add("作り方");
            lines.AddRange(Steps(rest));
        }

        return lines;
    }

    /// <summary>"(4人分)", "4人分" or nothing behind the word; <paramref name="from"/> is where the list begins.</summary>
    private static string Bracket(string s, int at, out int from)
    {
        from = at;
        string told = "";
        if (from < s.Length && s[from] == '(' && s.IndexOf(')', from) is var close && close > 0 && close - from < LongestBracket)
        {
            told = s[from..(close + 1)];
            from = close + 1;
        }
        else if (from < s.Length && char.IsAsciiDigit(s[from]) && s.IndexOf('分', from) is var share && share > 0 && share - from < 6)
        {
            told = $"({s[from..(share + 1)]})";
            from = share + 1;
        }

        while (from < s.Length && s[from] is ' ' or ':' or '】' or '》' or '」' or 'は' or '、' or '-' or '・')
        {
            from++;
        }

        return told;
    }

    /// <summary>Where the word over the method stands, and where its text begins; false where a particle makes it a word of a sentence ("作り方を変える").</summary>
    private static bool Method(string s, int from, out int begins, out int work)
    {
        foreach (string w in Methods)
        {
            begins = s.IndexOf(w, from, StringComparison.Ordinal);
            work = begins + w.Length;
            if (begins < 0 || work >= s.Length || s[work] is 'を' or 'が' or 'の' or 'に' or 'で' or 'と' or 'も')
            {
                continue;
            }

            while (work < s.Length && s[work] is ' ' or ':' or '】' or '》' or '」' or 'は' or '、' or '-')
            {
                work++;
            }

            // "【作り方】", "■作り方"
            begins -= begins > from && s[begins - 1] is '【' or '《' or '「' or '■' or '●' or '◆' ? 1 : 0;
            return work < s.Length;
        }

        begins = work = -1;
        return false;
    }

    /// <summary>The foods between commas outside brackets; where there is no comma, between gaps or dots.</summary>
    private static List<string> Foods(string list)
    {
        list = list.Trimmed(" 。、");
        list = list.EndsWith("です", StringComparison.Ordinal) ? list[..^2] : list;
        string signs = list.AsSpan().IndexOfAny('、', ',') > 0 ? "、," : !list.Contains(' ') ? "・/" : " ";
        List<string> foods = [];
        int depth = 0;
        int start = 0;
        for (int i = 0; i <= list.Length; i++)
        {
            depth += i < list.Length ? list[i] is '(' ? 1 : list[i] is ')' && depth > 0 ? -1 : 0 : 0;
            if (i < list.Length && (depth > 0 || !signs.Contains(list[i]) || list[i] == '/' && i > 0 && char.IsAsciiDigit(list[i - 1]) && i + 1 < list.Length && char.IsAsciiDigit(list[i + 1])))
            {
                continue;
            }

            if (list[start..i].Trim() is { Length: > 0 } food)
            {
                foods.Add(food);
            }

            start = i + 1;
        }

        return foods;
    }

    /// <summary>"A(醤油大さじ2、みりん大さじ2)": what goes in together under one letter, each on its own line; any other food as an item.</summary>
    private static IEnumerable<string> Grouped(string food)
    {
        if (food.Length < 4 || food[1] != '(' || food[^1] != ')' || JapaneseGroups.Alone(food[..1]) is not { } letter)
        {
            return ["・" + food];
        }

        return Foods(food[2..^1]).Select(f => $"{letter} {f}");
    }

    /// <summary>The steps by their numbers, or a sentence each.</summary>
    private static List<string> Steps(string s)
    {
        List<string> steps = [];
        bool ringed = s.AsSpan().Count('②') > 0 && s.AsSpan().IndexOf('①') is >= 0 and < 3;
        int start = 0;
        for (int i = 0; i <= s.Length; i++)
        {
            bool ends = i == s.Length || (ringed ? i > start && s[i] is >= '①' and <= '⑳' : s[i] == '。');
            if (!ends)
            {
                continue;
            }

            int to = i < s.Length && !ringed ? i + 1 : i;
            if (s[start..to].Trim().TrimStart('。') is { Length: > 1 } step)
            {
                steps.Add(System.FormattableString.Invariant($"{steps.Count + 1}. {step.TrimStart('①', '②', '③', '④', '⑤', '⑥', '⑦', '⑧', '⑨', '⑩', '⑪', '⑫', '⑬', '⑭', '⑮', '⑯', '⑰', '⑱', '⑲', '⑳', ' ')}"));
            }

            start = to;
        }

        return steps;
    }
}
