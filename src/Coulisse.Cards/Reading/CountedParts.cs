using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"8 mint leaves", "2 lime wedges", "4 tranches": what is counted stands behind the food. The name stays as written; the unit says which part is meant, so that four leaves never weigh four heads.</summary>
internal static class CountedParts
{
    private static readonly string[] Own = ["bay", "curry", "lime", "makrut", "vine", "fig", "banana", "gelatine", "gelatin", "pandan", "tea", "filo", "phyllo", "lasagne", "lasagna", "perilla", "shiso", "cinnamon", "vanilla", "fish", "bread", "pastry", "stock", "bouillon", "gold", "silver"];

    /// <summary>What has ribs and is no meat: "8 beef short ribs" are counted as they are.</summary>
    private static readonly string[] Ribbed = ["celery", "chard", "rhubarb", "cardoon", "fennel"];

    /// <summary>Sets the unit of a count whose food ends in a part.</summary>
    public static void Name(Draft d, string lang)
    {
        if (d.Unit?.Unit == "sheet" && lang is "es" or "it" && !Places.HasAny(d.Food, "gelatina", "colla", "colapez", "pasta", "hojaldre", "sfoglia", "fillo", "filo", "alga", "nori", "arroz", "riso", "obulato", "papel", "carta"))
        {
            // "1 hoja de laurel", "4 foglie di salvia": a sheet only of what is rolled or set.
            d.Unit = Lexicon.Unit("leaf", "en");
        }

        if (d.Unit is not null || d.Amount is null)
        {
            return;
        }

        if (lang == "de" && (d.Food is "Knoblauchzehe" or "Knoblauchzehen" or "Zehe" or "Zehen"))
        {
            d.Unit = Lexicon.Unit("zehe", "de");
            d.Food = "Knoblauch";
        }

        if (lang != "en")
        {
            return;
        }

        int space = d.Food.LastIndexOf(' ');
        if (space <= 0)
        {
            return;
        }

        if (Lexicon.LongestUnit(d.Food, space + 1, lang, out int end) is { Kind: "count" } unit && end >= d.Food.Length
            && unit.Unit is "leaf" or "slice" or "wedge" or "cube" or "strand" or "sprig" or "stalk" or "spear" or "floret" or "segment" or "strip" or "stem" or "chunk" or "ring" or "rasher" && !(unit.Unit is "leaf" or "stick" && Places.HasAny(d.Food[..space], Own))
            && !(unit.Unit == "stalk" && d.Food[space + 1] is 'r' or 'R' && !Places.HasAny(d.Food, Ribbed)))
        {
            d.Unit = unit;
            d.Tokens?.Add(new ReadToken(d.Food[(space + 1)..], "unit", unit.Unit));
        }
    }
}
