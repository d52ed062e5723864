using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"1 tsp each cumin and coriander seeds", "½ tsp each: salt, pepper", "塩・こしょう 各少々": one amount, several foods.</summary>
internal static class EachOf
{
    private const int MostFoods = 8;

    /// <summary>One line of its own for each food; null when the line does not share an amount out.</summary>
    public static List<string>? Parts(string s, string lang)
    {
        if (lang == "ja")
        {
            if (SaltAndPepper(s) is { } pair)
            {
                return pair;
            }

            int share = s.IndexOf('各');
            return share > 1 && s.Length - share < 14 && s.AsSpan(0, share).IndexOfAny('・', '、', '，') > 0
                ? Japanese(s, share) : null;
        }

        if (lang == "de" && Opened(s) is { } opened)
        {
            return opened;
        }

        (int at, string each) = s.Length > 0 && (char.IsAsciiDigit(s[0]) || Numbers.Vulgar(s[0]) > 0 || lang == "en" && char.IsLetter(s[0])) ? Each(s, lang) : (-1, "");
        if (at is < 2 or > 24)
        {
            return null;
        }

        if (Amounts.At(s, 0, lang) is not { Unit: not null } m)
        {
            // "handful each of mint and coriander": the word of a measure means one.
            if (lang != "en" || Lexicon.LongestUnit(s, 0, lang, out int one) is not { Kind: "word" } word || !FrontMarks.MeansOne(s, one, word, lang))
            {
                return null;
            }

            m = new Measure(new Numeral(1, null, 0), word, null, null, one);
        }

        // "200g/7oz each butter and sugar"
        int told = m.End < s.Length && s[m.End] == '/' && Amounts.At(s, m.End + 1, lang) is { Unit: not null } second ? second.End : m.End;
        if (Places.Skip(s, told) != at)
        {
            return null;
        }

        int from = at + each.Length;
        while (from < s.Length && s[from] is ' ' or ':' or ',')
        {
            from++;
        }

        from = Places.WordAt(s, from, "of") ? Places.Skip(s, from + 2) : from;
        return Foods(s, s[..m.End], from, lang);
    }

    private static readonly string[] French = ["chacun de", "chacune de", "de chaque", "de chacun", "chaque"];
    private static readonly string[] German = ["von je", "je", "jeweils"];
    private static readonly string[] Spanish = ["cada uno de", "de cada uno", "de cada"];
    private static readonly string[] Italian = ["ciascuno di", "di ciascuno", "di ciascuna", "di ogni"];
    private static readonly string[] English = ["of each", "each"];

    /// <summary>Where the word stands that shares the amount out.</summary>
    private static (int At, string Each) Each(string s, string lang)
    {
        foreach (string each in lang switch { "fr" => French, "de" => German, "es" => Spanish, "it" => Italian, _ => English })
        {
            if (Places.FindWord(s, each) is var at and >= 0)
            {
                return (at, each);
            }
        }

        return (-1, "");
    }

    /// <summary>One part for each food behind a place; what is done to all of them stands behind the last.</summary>
    private static List<string>? Foods(string s, string amount, int from, string lang)
    {
        string[] foods = [.. s[from..].Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase).Replace(" & ", ", ", StringComparison.Ordinal).Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Take(MostFoods)];
        if (lang == "en" && foods.Length > 1)
        {
            // "each of cumin and coriander seeds"
            foods = GroundSpices.Spread(Headed(foods));
        }

        string done = "";
        if (foods.Length > 2 && Prepared(foods[^1], lang))
        {
            (done, foods) = (", " + foods[^1], foods[..^1]);
        }

        return foods.Length > 1 && s.IndexOf('(', from) < 0 ? Shared(amount, foods.Select(f => f + done)) : null;
    }

    /// <summary>"je 1 TL Kümmel und Koriander": the German word opens the line.</summary>
    private static List<string>? Opened(string s) =>
        s.StartsWith("je ", StringComparison.OrdinalIgnoreCase) && Amounts.At(s, 3, "de") is { Unit: not null } m && Places.Skip(s, m.End) is var from && from < s.Length && char.IsLetter(s[from]) ? Foods(s, s[3..m.End], from, "de") : null;

    /// <summary>True for words of work alone: "brunoise", "finely chopped".</summary>
    private static bool Prepared(string w, string lang)
    {
        for (int i = 0; i < w.Length; i = Places.Skip(w, i))
        {
            if (Lexicon.Longest("prep", w, i, 3, lang, out i) is null)
            {
                return false;
            }
        }

        return w.Length > 0;
    }

    private static string[] Headed(string[] foods) => [.. foods.Select(f => SharedHead.Of(f, foods[^1]))];

    private static List<string> Shared(string amount, IEnumerable<string> foods) => [.. foods.Select(f => $"{amount} {f}")];

    private static List<string> Japanese(string s, int share) => [.. s[..share].Split(['・', '、', '，'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Take(MostFoods).Select(f => $"{f} {s[(share + 1)..]}")];

    /// <summary>"塩・こしょう 少々", "塩こしょう 適量": two foods, as everywhere.</summary>
    private static List<string>? SaltAndPepper(string s)
    {
        if (s.Length < 3 || s[0] != '塩' || s.Contains('各') || s.AsSpan().IndexOfAnyInRange('0', '9') >= 0)
        {
            return null;
        }

        string rest = s[1..].TrimmedStart("・、， &/と");
        foreach (string pepper in (ReadOnlySpan<string>)["粗びき黒こしょう", "粗挽き黒こしょう", "黒こしょう", "黒胡椒", "こしょう", "コショウ", "胡椒"])
        {
            if (rest.StartsWith(pepper, StringComparison.Ordinal))
            {
                string tail = rest[pepper.Length..].TrimmedStart("…・: ");
                return [$"塩 {tail}".TrimEnd(), $"{pepper} {tail}".TrimEnd()];
            }
        }

        return null;
    }
}
