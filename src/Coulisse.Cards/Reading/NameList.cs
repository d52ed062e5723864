using System.Buffers;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Foods in one line without any amount: "Salz, Pfeffer, Muskat", "Aceite, sal y pimienta". Only names that the food table knows part; "butter, softened" is one food.</summary>
internal static class NameList
{
    private static readonly SearchValues<char> Marks = SearchValues.Create("(:;0123456789");
    private const int MostNames = 6;
    private const int LongestLine = 90;

    /// <summary>The names; null when the line is no such list.</summary>
    public static List<string>? Of(string s, string lang)
    {
        if (s.Length > LongestLine || s.IndexOf(',') < 2 || s.AsSpan().ContainsAny(Marks) || lang == "ja")
        {
            return null;
        }

        string and = lang switch { "fr" => " et ", "de" => " und ", "es" => " y ", "it" => " e ", _ => " and " };
        string[] names = s.Replace(and, ", ", StringComparison.OrdinalIgnoreCase).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (names.Length is < 2 or > MostNames)
        {
            return null;
        }

        int known = 0;
        foreach (string name in names)
        {
            bool food = FoodIds.Match(name, lang) is not null;
            known += food ? 1 : 0;
            if (!food && (FoodWords.IsPreparation(name, lang) || Uses.Begins(name, lang) || Lexicon.Longest("use", name, 0, 3, lang, out _) is not null || Lexicon.Longest("optional", name, 0, 3, lang, out _) is not null || Amounts.At(name, 0, lang) is not null))
            {
                return null;
            }
        }

        // One name of three or more may be unknown ("aceite", of whatever seed).
        return known >= Math.Max(2, names.Length - 1) && names[0].Count(c => c == ' ') < 2 ? [.. names] : null;
    }
}
