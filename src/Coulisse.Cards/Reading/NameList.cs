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

        if (names.Length == 2 && known == 1 && !told && Strange(names, lang))
        {
            return [.. names];
        }

        // One name of three or more may be unknown ("aceite", of whatever seed); beside salt and one more all others, where they are to taste.
        return (known >= Math.Max(2, names.Length - 1) || told && known >= 2 && Joins.IsSalt(names[0])) && names[0].Count(c => c == ' ') < 2 ? [.. names[..^1], tail is null ? names[^1] : names[^1] + ", " + tail] : null;
    }

    // Words for many foods: what stands behind says which is meant ("herbs, parsley").
    private static readonly WordList Kinds = new("herb", "herbs", "spice", "spices", "cheese", "fish", "meat", "vegetables", "veg", "fruit", "fruits", "seeds", "berries", "mushrooms", "oil", "vinegar", "nuts", "pasta", "beans", "peppers", "chillies", "garnish", "topping", "toppings", "decoration", "herbes", "épices", "fromage", "poisson", "viande", "légumes", "huile", "graines", "noix", "garniture", "décor", "Kräuter", "Gewürze", "Käse", "Fisch", "Fleisch", "Gemüse", "Obst", "Öl", "Nüsse", "Samen", "Deko", "Garnitur", "hierbas", "especias", "queso", "pescado", "carne", "verduras", "fruta", "aceite", "semillas", "erbe", "spezie", "formaggio", "pesce", "verdure", "frutta", "olio", "semi");

    /// <summary>"olives, almonds": a first name the table does not have, plain and short, before one it has surely. The second is a food of its own, and may carry an allergen: what is done to the first it never is.</summary>
    private static bool Strange(string[] names, string lang) =>
        names[0].Length > 2 && names[0].AsSpan().Count(' ') < 2 && char.IsLetter(names[0][0]) && !Joins.Named(names[0], lang) && !Kinds.In(names[0]) && FoodIds.Match(names[1], lang) is { Confidence: >= 0.95 } && !FoodWords.IsPreparation(names[1], lang) && Lexicon.Longest("heading", names[0], 0, 3, lang, out _) is null && !Uses.Begins(names[0], lang);

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
