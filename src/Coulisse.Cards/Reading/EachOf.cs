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
            int share = s.IndexOf('各');
            return share > 1 && s.Length - share < 14 && s.AsSpan(0, share).IndexOfAny('・', '、', '，') > 0
                ? [.. s[..share].Split(['・', '、', '，'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Take(MostFoods).Select(f => $"{f} {s[(share + 1)..]}")] : null;
        }

        string each = lang switch { "fr" => "chacun de", "de" => "je", "es" => "cada uno de", "it" => "ciascuno di", _ => "each" };
        int at = Places.FindWord(s, each);
        if (at is < 2 or > 24 || !(char.IsAsciiDigit(s[0]) || Numbers.Vulgar(s[0]) > 0 || lang == "en" && char.IsLetter(s[0])) || Amounts.At(s, 0, lang) is not { Unit: not null } m || Places.Skip(s, m.End) != at)
        {
            return null;
        }

        int from = at + each.Length;
        while (from < s.Length && s[from] is ' ' or ':' or ',')
        {
            from++;
        }

        from = Places.WordAt(s, from, "of") ? Places.Skip(s, from + 2) : from;
        string[] foods = [.. s[from..].Replace($" {And(lang)} ", ", ", StringComparison.OrdinalIgnoreCase).Replace(" & ", ", ", StringComparison.Ordinal).Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Take(MostFoods)];
        if (lang == "en" && foods.Length > 1)
        {
            // "each of cumin and coriander seeds"
            foods = [.. foods.Select(f => SharedHead.Of(f, foods[^1]))];
        }

        return foods.Length > 1 && s.IndexOf('(', from) < 0 ? [.. foods.Select(f => $"{s[..m.End]} {f}")] : null;
    }

    private static string And(string lang) => lang switch { "fr" => "et", "de" => "und", "es" => "y", "it" => "e", _ => "and" };
}
