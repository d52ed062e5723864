namespace Coulisse.Cards.Words;

/// <summary>The forms in which a word that agrees with its food is met: gender and number in the Romance languages, endings in German.</summary>
internal static class Inflections
{
    private static readonly string[] Unbent = [""];
    private static readonly string[] French = ["", "e", "s", "es"];
    private static readonly string[] German = ["", "e", "er", "es", "en", "em"];
    private static readonly string[] Spanish = ["o", "a", "os", "as"];
    private static readonly string[] Italian = ["o", "a", "i", "e"];
    private static readonly string[] ItalianSoft = ["o", "a", "", "e"];

    /// <summary>The endings of the word itself and of its other forms; only the last word of a phrase bends.</summary>
    /// <param name="word">The word.</param>
    /// <param name="lang">Its language.</param>
    /// <param name="stem">How many of its letters stand before every ending.</param>
    public static string[] Of(string word, string lang, out int stem)
    {
        stem = word.Length;
        switch (lang)
        {
            case "fr" when word[^1] is 'é' or 'u' or 'i' or 't': return French;
            case "de" when char.IsLower(word[0]) && word.IndexOf(' ') < 0 && word[^1] is 't' or 'n' or 'm' or 'h': return German;
            case "es" when word[^1] == 'o': stem--; return Spanish;
            case "it" when word[^1] == 'o': stem--; return word.EndsWith("io", StringComparison.Ordinal) ? ItalianSoft : Italian;
            default: return Unbent;
        }
    }
}
