namespace Coulisse.Cards.Words;

/// <summary>The forms in which a word that agrees with its food is met: gender and number in the Romance languages, endings in German.</summary>
internal static class Inflections
{
    private static readonly string[] German = ["", "e", "er", "es", "en", "em"];

    /// <summary>The word and its other forms; only the last word of a phrase bends.</summary>
    public static IEnumerable<string> Of(string word, string lang) => lang switch
    {
        "fr" when word[^1] is 'é' or 'u' or 'i' or 't' => [word, word + "e", word + "s", word + "es"],
        "de" when char.IsLower(word[0]) && !word.Contains(' ', StringComparison.Ordinal) && word[^1] is 't' or 'n' or 'm' or 'h' => German.Select(e => word + e),
        "es" when word.EndsWith('o') => [word, word[..^1] + "a", word + "s", word[..^1] + "as"],
        "it" when word.EndsWith('o') => [word, word[..^1] + "a", word[..^1] + (word.EndsWith("io", StringComparison.Ordinal) ? "" : "i"), word[..^1] + "e"],
        _ => [word],
    };
}
