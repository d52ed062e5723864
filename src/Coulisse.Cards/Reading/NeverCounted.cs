using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>Foods nobody counts: water, salt, sugars, flours, fats, milk. A bare figure beside one is a weight whose unit was left out, and is asked.</summary>
internal static class NeverCounted
{
    private const double Many = 100;
    private const double Fatty = 70;
    private const double Sweet = 60;
    private const double Salty = 20_000;

    /// <summary>True when a food of our table is poured or spooned and never counted, or is wet, has no piece and is told by the hundred ("300 cream").</summary>
    public static bool Is(FoodMatch? match, double amount = 0)
    {
        if (match is null || FoodTable.Default.Find(match.Id) is not { } food || food.Units.Keys.Any(k => k is "piece" or "fruit" or "large" or "slice" or "square"))
        {
            return false;
        }

        Composition c = food.Composition;
        return amount >= Many && c.Water > 50 || food.Id is "water" || food.Class == "flour" || c.Fat >= Fatty || c.Sugars >= Sweet && c.Water < 40 || c.SodiumMilligrams >= Salty || food.Class == "milk" && c.Water > 60;
    }

    private static readonly Words.WordList Pourable = new("vinegar", "cornflour", "cornstarch", "caster", "yeast", "stock", "pectin", "stabiliser", "stabilizer", "semolina", "polenta", "icing sugar", "vinaigre", "maïzena", "levure", "fécule", "stabilisateur", "stab", "semoule", "Essig", "Speisestärke", "Stärke", "Hefe", "Grieß", "vinagre", "maicena", "levadura", "sémola", "aceto", "maizena", "lievito", "fecola", "semolino");

    /// <summary>Poured or weighed by its name, where the table names no food: "vinegar", "white wine vinegar", "vinaigre de cidre". "Vinegar crisps" are counted.</summary>
    internal static bool Poured(string food, string lang)
    {
        int space = food.IndexOf(' ');
        string head = lang is "fr" or "es" or "it" && space > 0 ? food[..space] : food[(food.LastIndexOf(' ') + 1)..];
        return food.Length > 3 && char.IsLetter(food[0]) && head.Length > 3 && Pourable.In(head);
    }

    /// <summary>Takes grams for a bare figure beside such a food; the question stays.</summary>
    /// <param name="d">The line's food, named where foods are named.</param>
    /// <param name="ids">Named it; null where foods are left unnamed, and this one alone is looked up.</param>
    /// <param name="lang">Language code.</param>
    public static void Weigh(Draft d, FoodIds? ids, string lang)
    {
        if (d is not { Unit: null, Amount: >= 2, AmountMax: null, Grams: null, Second: null, Grade: null, Repaired: false } || !Is(ids is null ? new FoodIds(lang).Of(ref d.Food) : d.Known, d.Amount ?? 0) && !(d.Food.Length < 30 && Poured(d.Food, lang)))
        {
            return;
        }

        d.Unit = Words.Lexicon.Unit("g", "en");
        d.Bare = true;
    }
}
