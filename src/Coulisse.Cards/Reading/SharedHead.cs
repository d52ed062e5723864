namespace Coulisse.Cards.Reading;

/// <summary>"chicken or vegetable stock": the last word names both. Said of few heads only: "butter or olive oil" are two foods.</summary>
internal static class SharedHead
{
    private static readonly Dictionary<string, string[]> Kinds = new(StringComparer.OrdinalIgnoreCase)
    {
        ["stock"] = ["chicken", "beef", "veal", "fish", "vegetable", "game", "duck", "lamb", "mushroom", "white", "brown", "ham", "shellfish", "pork"],
        ["broth"] = ["chicken", "beef", "fish", "vegetable", "bone"],
        ["chocolate"] = ["white", "dark", "milk", "plain"],
        ["wine"] = ["white", "red", "rosé", "dry"],
        ["sugar"] = ["white", "brown", "caster", "granulated", "muscovado", "demerara", "icing", "cane", "palm"],
        ["flour"] = ["plain", "bread", "strong", "white", "wholemeal", "wheat", "spelt", "rye", "rice", "corn"],
        ["vinegar"] = ["white", "red", "cider", "sherry", "rice", "malt", "wine", "balsamic"],
        ["seeds"] = ["pumpkin", "sunflower", "sesame", "poppy", "cumin", "coriander", "fennel", "mustard", "caraway"],
        ["oil"] = ["sunflower", "rapeseed", "vegetable", "groundnut", "peanut", "corn", "sesame", "grapeseed"],
        ["onions"] = ["red", "white", "brown", "yellow", "spring"],
    };

    /// <summary>The food with the head it shares with its alternative; as it is when it shares none.</summary>
    public static string Of(string food, string alternative)
    {
        int space = alternative.LastIndexOf(' ');
        if (space > 0 && food.IndexOf(' ') < 0 && $"{food} {alternative[(space + 1)..]}" is var whole && FoodIds.Match(food, "en") is null && FoodIds.Match(whole, "en") is { Confidence: >= 0.8 })
        {
            // "sour or double cream", "olive or rapeseed oil": a word that is no food alone, and one with the other's head
            return whole;
        }

        return space > 0 && Kinds.TryGetValue(alternative[(space + 1)..], out string[]? kinds) && kinds.Contains(food, StringComparer.OrdinalIgnoreCase) ? $"{food} {alternative[(space + 1)..]}" : food;
    }
}
