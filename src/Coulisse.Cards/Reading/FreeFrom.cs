using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"no nuts", "sans noix", "ohne Nüsse und Ei", "ナッツなし": a line of a list that says what is not in it. It names no food; read as one it would be bought. "No-salt butter" and "no-knead dough" are foods.</summary>
internal static class FreeFrom
{
    private const int Longest = 60;
    private static readonly string[] Nos = ["no ", "without ", "free from ", "sans ", "pas de ", "ohne ", "kein ", "keine ", "keinen ", "sin ", "senza ", "niente "];
    private static readonly string[] Behind = ["なし", "抜き", "不使用"];
    private static readonly Beginnings FirstOfNos = new(Nos);

    // Groups a kitchen leaves out by one word, beside the foods of the table.
    private static readonly WordList Groups = new("nuts", "nut", "gluten", "dairy", "lactose", "meat", "fish", "shellfish", "alcohol", "seeds", "soy", "noix", "fruits à coque", "lactose", "alcool", "viande", "poisson", "Nüsse", "Nüssen", "Gluten", "Laktose", "Alkohol", "Fleisch", "Fisch", "frutos secos", "nueces", "lactosa", "alcohol", "carne", "pescado", "noci", "frutta a guscio", "glutine", "lattosio", "alcol", "pesce", "ナッツ", "グルテン", "乳製品", "アルコール");

    /// <summary>True for such a line.</summary>
    public static bool Is(string s, string lang)
    {
        if (s.Length is < 4 or > Longest || s.AsSpan().IndexOfAnyInRange('0', '9') >= 0)
        {
            return false;
        }

        if (lang == "ja")
        {
            return Array.Find(Behind, b => s.EndsWith(b, StringComparison.Ordinal)) is { } end && s.Length > end.Length && Named(s[..^end.Length], lang);
        }

        if (!FirstOfNos.May(s, 0) || Opening(s) is not { } no)
        {
            return false;
        }

        foreach (string piece in s[no..].Replace(Conjunction.Spaced(lang), ",", StringComparison.OrdinalIgnoreCase).Replace(" or ", ",", StringComparison.OrdinalIgnoreCase).Split([',', '/', '&', '!', '.'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (!Named(Opening(piece) is { } again ? piece[again..] : piece, lang))
            {
                return false;
            }
        }

        return true;
    }

    private static int? Opening(string s)
    {
        foreach (string no in Nos)
        {
            if (s.StartsWith(no, StringComparison.OrdinalIgnoreCase) && s.Length > no.Length + 1)
            {
                return no.Length;
            }
        }

        return null;
    }

    private static bool Named(string food, string lang) => food.Length > 1 && (Groups.In(food) && food.AsSpan().Count(' ') < 2 || FoodIds.Match(food, lang) is { Confidence: >= 0.95 });
}
