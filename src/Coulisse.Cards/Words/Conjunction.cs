namespace Coulisse.Cards.Words;

/// <summary>The word that joins two foods: "salt and pepper", "sel et poivre".</summary>
internal static class Conjunction
{
    /// <summary>The word alone.</summary>
    public static string Of(string lang) => lang switch { "fr" => "et", "de" => "und", "es" => "y", "it" => "e", _ => "and" };

    /// <summary>The word between its blanks.</summary>
    public static string Spaced(string lang) => lang switch { "fr" => " et ", "de" => " und ", "es" => " y ", "it" => " e ", _ => " and " };
}
