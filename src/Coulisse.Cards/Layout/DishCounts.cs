using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"Zwei Suppen auf einer Karte", "Two soups", "Trois sauces" over a card: a title that counts the dishes on it, and neither a food nor a yield.</summary>
internal static class DishCounts
{
    private const int Longest = 60;

    private static readonly WordSet Dishes = new(anyCase: true,
        "soups", "sauces", "dressings", "salads", "dips", "breads", "doughs", "cakes", "tarts", "desserts", "dishes", "recipes", "sides", "starters", "stews", "curries", "stocks", "broths", "butters", "jams", "chutneys", "relishes", "marinades", "vinaigrettes", "purees", "creams", "ways",
        "soupes", "potages", "salades", "pains", "pâtes", "gâteaux", "tartes", "plats", "recettes", "entrées", "garnitures", "fonds", "bouillons", "beurres", "confitures", "purées", "crèmes", "façons",
        "suppen", "saucen", "soßen", "salate", "brote", "teige", "kuchen", "torten", "gerichte", "rezepte", "beilagen", "vorspeisen", "eintöpfe", "fonds", "brühen", "marinaden", "cremes", "chutneys", "dips",
        "sopas", "salsas", "ensaladas", "panes", "masas", "tartas", "postres", "platos", "recetas", "guarniciones", "entrantes", "guisos", "caldos", "cremas", "vinagretas", "maneras",
        "zuppe", "salse", "sughi", "insalate", "pani", "impasti", "torte", "dolci", "piatti", "ricette", "contorni", "antipasti", "brodi", "creme", "marmellate", "modi");

    /// <summary>True for the first line of a card, alone over the rest of it.</summary>
    public static bool Is(List<RawLine> lines, int i, string body, string lang)
    {
        if (i > 0 || body.Length is < 5 or > Longest || lines.Count < 3 || lines[1].Block == lines[0].Block || body.AsSpan().IndexOfAny(",;.") >= 0
            || Numbers.Range(body, 0, lang) is not { Max: null, Min: >= 2 and < 13 } n || n.Min % 1 != 0)
        {
            return false;
        }

        int noun = Places.Skip(body, n.End);
        return noun > n.End && noun < body.Length && Dishes.Contains(body.AsSpan(noun, Places.WordEnd(body, noun) - noun));
    }
}
