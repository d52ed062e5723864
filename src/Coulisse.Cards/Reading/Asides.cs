using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Equipment: 23 cm tin, piping bag", "Allergens: milk, egg", "Peso por pieza: 65 g": what a label says is no food.</summary>
internal static class Asides
{
    private const int Longest = 36;

    /// <summary>True for a line under such a label.</summary>
    public static bool Is(string s, string lang)
    {
        int colon = s.AsSpan(0, Math.Min(s.Length, Longest)).IndexOfAny(':', '：');
        return colon > 2 && colon + 1 < s.Length && Lexicon.Word("aside", Folding.Key(s.AsSpan(0, colon).Trim()), lang) is not null;
    }
}
