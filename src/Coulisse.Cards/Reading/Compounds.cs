using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Saitenwürste", "saucisses de Francfort": a kind of a food everybody knows, by the word that says what it is: in German the end of the noun, in the languages of the south the first word.</summary>
internal static class Compounds
{
    private const int ShortestHead = 4;

    // Sold by the piece under hundreds of names, and in no table as themselves.
    private static readonly string[] German = ["würste", "würsten", "würstchen", "wurst", "brötchen", "semmeln", "semmel", "brezeln", "knödel", "knödeln", "klöße", "klößen", "filets", "filet", "schnitzel", "koteletts", "keulen", "brüste"];
    private static readonly WordList Heads = new("saucisse", "saucisses", "boudins", "filets", "côtelettes", "escalopes", "cuisses", "salchicha", "salchichas", "chorizos", "filetes", "chuletas", "muslos", "salsiccia", "salsicce", "wurstel", "filetti", "cosce", "costolette");

    /// <summary>True for such a kind.</summary>
    public static bool Known(string food, string lang)
    {
        if (lang == "de")
        {
            return food.Length > ShortestHead && char.IsUpper(food[0]) && !food.Contains(' ') && (Array.Exists(German, g => food.EndsWith(g, StringComparison.OrdinalIgnoreCase)) || Ends(food));
        }

        return lang is "fr" or "es" or "it" && food.Length > ShortestHead && Heads.In(food[..Places.WordEnd(food, 0)]);
    }

    /// <summary>A German compound that ends with a food of the table: "Babykarotten".</summary>
    private static bool Ends(string noun)
    {
        for (int at = 4; at + ShortestHead < noun.Length; at++)
        {
            if (FoodIds.Match(char.ToUpperInvariant(noun[at]) + noun[(at + 1)..], "de") is { Confidence: >= 0.99 })
            {
                return true;
            }
        }

        return false;
    }
}
