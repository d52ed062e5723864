namespace Coulisse.Cards.Reading;

/// <summary>"ground cumin, coriander and smoked paprika": "ground" said of the first spice is said of those behind it that have a ground kind of their own, until one has a word of its own. "ground pork, coriander" grinds no coriander.</summary>
internal static class GroundSpices
{
    private const string Word = "ground ";

    /// <summary>The names, each with the word where it governs.</summary>
    public static string[] Spread(string[] names)
    {
        string[]? told = null;
        bool governs = false;
        for (int i = 0; i < names.Length; i++)
        {
            string name = names[i];
            if (name.StartsWith(Word, StringComparison.OrdinalIgnoreCase))
            {
                governs = name.LastIndexOf(' ') == Word.Length - 1 && Spice(name[Word.Length..]);
            }
            else if (name.Contains(' '))
            {
                governs = false;
            }
            else if (governs && FoodIds.Match(Word + name, "en") is { Confidence: >= 0.95 } ground && FoodIds.Match(name, "en")?.Id != ground.Id)
            {
                told ??= [.. names];
                told[i] = Word + name;
            }
        }

        return told ?? names;
    }

    private static bool Spice(string name) => name.ToLowerInvariant() is "cumin" or "coriander" or "ginger" or "turmeric" or "cinnamon" or "cardamom" or "allspice" or "nutmeg" or "cloves" or "fennel" or "fenugreek" or "mace" or "caraway" or "mustard" or "sumac";
}
