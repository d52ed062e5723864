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

        string and = Conjunction.Spaced(lang);
        string[] names = s.Replace(and, ", ", StringComparison.OrdinalIgnoreCase).Replace(" & ", ", ", StringComparison.Ordinal).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        // "salt, pepper and sumac, to taste": what is said of the last, and no name
        string? tail = names.Length > 2 && (Uses.Begins(names[^1], lang) || Lexicon.Longest("use", names[^1], 0, 3, lang, out int whole) is not null && whole >= names[^1].Length) ? names[^1] : null;
        names = tail is null ? names : names[..^1];
        names = lang == "en" ? GroundSpices.Spread(names) : names;
        bool told = tail is not null;
        if (names.Length is < 2 or > MostNames)
        {
            return null;
        }

        int known = 0;
        for (int i = 0; i < names.Length; i++)
        {
            // "soy sauce, rice vinegar to taste": what is said of the last is no part of its name.
            string name = i == names.Length - 1 ? WithoutUse(names[i], lang).TrimEnd(' ', '-', '–') : names[i];
            told |= i == names.Length - 1 && name.Length < names[i].Length;
            name = Little(name, lang);
            bool food = Joins.Named(name, lang);
            known += food ? 1 : 0;
            if (!food && (FoodWords.IsPreparation(name, lang) || Uses.Begins(name, lang) || Lexicon.Longest("use", name, 0, 3, lang, out _) is not null || Lexicon.Longest("optional", name, 0, 3, lang, out _) is not null || Amounts.At(name, 0, lang) is not null))
            {
                return null;
            }
        }

        // One name of three or more may be unknown ("aceite", of whatever seed); beside salt and one more all others, where they are to taste.
        return (known >= Math.Max(2, names.Length - 1) || told && known >= 2 && Joins.IsSalt(names[0])) && names[0].Count(c => c == ' ') < 2 ? [.. names[..^1], tail is null ? names[^1] : names[^1] + ", " + tail] : null;
    }

    /// <summary>"a little nutmeg", "etwas Muskat", "un peu de muscade": the name behind words that tell no figure.</summary>
    private static string Little(string name, string lang) =>
        Lexicon.Longest("use", name, 0, 3, lang, out int end) is not null && end < name.Length && Places.Skip(name, end) is var from && FoodIds.Match(name[PartReader.Of(name, from, lang)..], lang) is not null ? name[PartReader.Of(name, from, lang)..] : name;

    private static string WithoutUse(string name, string lang)
    {
        for (int at = name.IndexOf(' '); at > 0; at = name.IndexOf(' ', at + 1))
        {
            if (Lexicon.Longest("use", name, at + 1, 3, lang, out int end) is not null && end >= name.Length || Uses.Begins(name[(at + 1)..], lang) && FoodIds.Match(name[..at], lang) is not null)
            {
                return name[..at];
            }
        }

        return name;
    }
}
