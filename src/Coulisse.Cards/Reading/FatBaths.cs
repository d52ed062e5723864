using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"In Butterschmalz bei 170 Grad backen", "cuire dans la graisse à 85 °C": a heat of the fat a food cooks in. The verbs are those of an oven too, so that it would be set for nothing. "In Öl wenden und bei 200 Grad backen" is an oven.</summary>
internal static class FatBaths
{
    private const double Fries = 120;
    private static readonly string[] Fats = ["oil", "fat", "lard", "dripping", "tallow", "ghee", "shortening", "fryer", "huile", "graisse", "friture", "saindoux", "friteuse", "fett", "öl", "schmalz", "butterschmalz", "schweineschmalz", "gänseschmalz", "frittierfett", "pflanzenfett", "pflanzenöl", "sonnenblumenöl", "rapsöl", "frittieröl", "fritteuse", "aceite", "manteca", "grasa", "freidora", "olio", "strutto", "grasso", "friggitrice"];
    private static readonly string[] Ins = ["in", "into", "im", "dans", "en", "nel", "nella", "nello"];
    // Between the fat and its heat.
    private static readonly string[] Smalls = ["schwimmend", "at", "of", "to", "heated", "hot", "about", "à", "a", "chaude", "chaud", "chauffée", "bei", "auf", "von", "heißem", "heißes", "ca.", "etwa", "caliente", "calda", "caldo", "bollente", "circa", "unos", "environ"];
    private static readonly string[] Ofs = ["de", "di", "d'", "del", "della", "da"];
    private static readonly string[] Behinds = [" oil", " hot oil", " fat", " hot fat", " heißem öl", " heißem fett", " öl", " fett"];

    private static readonly WordList Coated = new("wenden", "mischen", "vermengen", "bestreichen", "einreiben", "beträufeln", "marinieren", "schwenken");

    /// <summary>True where the fat is only on the food: "in Öl wenden und bei 200 Grad backen".</summary>
    public static bool Coats(string before, string after) => Coated.In(before) && Places.HasAny(after, "backen", "rösten", "garen", "braten");

    /// <summary>True where the words say that the heat is of a fat.</summary>
    /// <param name="before">What stands before it in its sentence, lower case.</param>
    /// <param name="after">What stands behind it, lower case.</param>
    /// <param name="celsius">The figure.</param>
    public static bool Of(string before, string after, double celsius)
    {
        if (celsius is < 40 or > 230)
        {
            return false;
        }

        string[] words = before.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length > 0 && words[^1][0] == '(' && Array.IndexOf(Fats, words[^1].Trim('(', ':')) >= 0)
        {
            // "at 110 °C (fat 95 °C)"
            return true;
        }

        if (words.Length > 0 && Array.IndexOf(Ins, words[^1]) >= 0 && Places.Begins(after, Behinds))
        {
            // "in 180 °C oil"
            return true;
        }

        for (int w = words.Length - 1; w > 0 && words.Length - w < 7; w--)
        {
            if (Array.IndexOf(Fats, Bare(words[w])) >= 0)
            {
                return Led(words, w);
            }

            // "graisse de canard à": what fat it is may stand between.
            if (Array.IndexOf(Smalls, words[w]) < 0 && Array.IndexOf(Ofs, words[w]) < 0 && !(Array.IndexOf(Ofs, words[w - 1]) >= 0 && !words[w].AsSpan().ContainsAny(",;:")))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>True where "in" leads to the fat: "in reichlich Butterschmalz", "dans la graisse".</summary>
    private static bool Led(string[] words, int fat)
    {
        for (int w = fat - 1; w >= 0 && fat - w < 4; w--)
        {
            if (Array.IndexOf(Ins, words[w]) >= 0)
            {
                return true;
            }

            if (words[w].AsSpan().ContainsAny(",;:") || words[w] is "and" or "und" or "et" or "y" or "e")
            {
                return false;
            }
        }

        return words[fat].StartsWith("nell'", StringComparison.Ordinal) || fat > 0 && words[fat - 1] == "à" && words[fat].StartsWith("l'", StringComparison.Ordinal);
    }

    private static string Bare(string word) => word.IndexOf('\'') is var mark and >= 0 ? word[(mark + 1)..] : word;

    /// <summary>The work of the verbs an oven shares, where the heats say that there is none: fried or slowly cooked in fat, or brought to a heat in its pot.</summary>
    /// <param name="s">The step.</param>
    /// <param name="lang">Language.</param>
    /// <param name="operations">The works of the step, which are set right.</param>
    /// <param name="temperatures">Its heats.</param>
    /// <returns>True when one was changed.</returns>
    public static bool Settle(string s, string lang, List<(int At, string Id)> operations, List<StepTemperature> temperatures)
    {
        if (lang is "en" or "ja" || temperatures.Count == 0 || !operations.Exists(o => o.Id is "bake") || temperatures.Exists(t => t.Of == TemperatureOf.Oven) || Airs.Oven(Folding.Lower(s), ""))
        {
            return false;
        }

        string? work = temperatures.Find(t => t.Of == TemperatureOf.Pan) is { } fat ? fat.Celsius >= Fries ? "deep_fry" : "confit"
            : temperatures.Exists(t => t.Of == TemperatureOf.Bath) ? "water_bath"
            : temperatures.TrueForAll(t => t is { Of: TemperatureOf.Food, Celsius: < 100 and >= 40 }) ? "cook_unsaid" : null;
        bool changed = false;
        for (int k = 0; work is not null && k < operations.Count; k++)
        {
            if (operations[k].Id is "bake" && (work != "cook_unsaid" || s.AsSpan(operations[k].At).StartsWith("cui", StringComparison.OrdinalIgnoreCase)))
            {
                operations[k] = (operations[k].At, work);
                changed = true;
            }
        }

        return changed;
    }
}
