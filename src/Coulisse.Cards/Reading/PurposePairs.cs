using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"burro e farina per la teglia", "2 huevos y pan rallado para rebozar": two foods everybody knows for one purpose, as one name known by nobody; an amount in front is of the first. Without a purpose "400 g peas and carrots" may be one thing out of a bag and stays one.</summary>
internal static class PurposePairs
{
    private const int Longest = 90;

    /// <summary>The two foods, each with the purpose; null for any other line.</summary>
    public static List<string>? Of(string s, string lang)
    {
        string and = Conjunction.Spaced(lang);
        int joint = s.Length > Longest || lang == "ja" ? -1 : s.IndexOf(and, StringComparison.OrdinalIgnoreCase);
        if (joint < 2 || s.Contains('(') || s.Contains(','))
        {
            return null;
        }

        int behind = joint + and.Length;
        for (int gap = s.IndexOf(' ', behind); gap > behind; gap = s.IndexOf(' ', gap + 1))
        {
            if (!Uses.Begins(s[(gap + 1)..], lang))
            {
                continue;
            }

            int first = Amounts.At(s, 0, lang) is { Number.InWords: false } m ? PartReader.Of(s, Places.Skip(s, m.End), lang) : 0;
            string right = s[behind..gap];
            string purpose = s[(gap + 1)..];
            return first < joint && Joins.Named(s[first..joint], lang) && Joins.Named(right, lang) && FoodIds.Match(s[first..gap], lang) is null ? [$"{s[..joint]}, {purpose}", $"{right}, {purpose}"] : null;
        }

        return null;
    }
}
