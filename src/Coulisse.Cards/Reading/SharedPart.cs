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

        string and = Conjunction.Spaced(lang);
        int joint = s.IndexOf(and, first.End, StringComparison.OrdinalIgnoreCase);
        int behind = joint + and.Length;
        if (joint < 0 || behind >= s.Length || Amounts.At(s, behind, lang) is not { Unit: null or { Kind: "count" } } second || second.End + 2 >= s.Length || !char.IsLetter(s[^1]) || s.AsSpan(behind).Contains(','))
        {
            return null;
        }

        return FoodIds.Match(s[Places.Skip(s, second.End)..], lang) is not null ? [s[..joint], s[..of] + s[behind..]] : null;
    }
}
