using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"juice of 1 orange and 2 lemons": one part of several foods, each with its own count. Read as one food the lemons would be lost.</summary>
internal static class SharedPart
{
    private const int Longest = 90;

    /// <summary>The line said once for each food; null for any other line.</summary>
    public static List<string>? Parts(string s, string lang)
    {
        if (s.Length is < 12 or > Longest || lang == "ja" || Lexicon.Longest("part", s, 0, 5, lang, out int part) is null)
        {
            return null;
        }

        int of = PartReader.Of(s, Places.Skip(s, part), lang);
        if (of <= part || Amounts.At(s, of, lang) is not { Unit: null or { Kind: "count" } } first)
        {
            return null;
        }

        if (Measured(s, of, first, lang) is { } measured)
        {
            return measured;
        }

        string and = Conjunction.Spaced(lang);
        int joint = s.IndexOf(and, first.End, StringComparison.OrdinalIgnoreCase);
        int behind = joint + and.Length;
        if (joint < 0 || behind >= s.Length || Amounts.At(s, behind, lang) is not { Unit: null or { Kind: "count" } } second || second.End + 2 >= s.Length || !char.IsLetter(s[^1]) || s.AsSpan(behind).Contains(','))
        {
            return null;
        }

        return FoodIds.Match(s[Places.Skip(s, second.End)..], lang) is not null ? [s[..joint], s[..of] + s[behind..]] : null;
    }

    /// <summary>"zest of 1 lemon and 30 ml juice": the other part of the same fruit, by measure; it is named with the fruit.</summary>
    private static List<string>? Measured(string s, int of, Measure first, string lang)
    {
        foreach (string and in (ReadOnlySpan<string>)[", plus ", " plus ", " + ", ", and ", Conjunction.Spaced(lang)])
        {
            int joint = s.IndexOf(and, first.End, StringComparison.OrdinalIgnoreCase);
            int behind = joint + and.Length;
            if (joint < 0 || behind >= s.Length || !char.IsAsciiDigit(s[behind]) || Amounts.At(s, behind, lang) is not { Unit.Kind: "mass" or "volume" or "spoon" or "cup" } m)
            {
                continue;
            }

            int name = PartReader.Of(s, Places.Skip(s, m.End), lang);
            string fruit = s[Places.Skip(s, first.End)..joint].TrimmedEnd(" ,");
            if (Lexicon.Longest("part", s, name, 2, lang, out int end) is not null && end >= s.Length && fruit.Length > 2 && lang != "de")
            {
                string joined = lang == "en" ? $"{s[behind..name]}{(fruit[^1] == 's' ? fruit[..^1] : fruit)} {s[name..]}" : $"{s[behind..]} {(lang == "it" ? "di" : "de")} {fruit}";
                return [s[..of] + s[of..joint].TrimmedEnd(" ,"), joined];
            }
        }

        return null;
    }
}
