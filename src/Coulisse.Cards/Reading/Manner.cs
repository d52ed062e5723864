using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"frisch geriebener Meerrettich", "fein gehackter Dill": German says how it is done in a word of its own before the work, which bends with the food. "frische Feigen" and "grobes Salz" are names.</summary>
internal static class Manner
{
    private static readonly string[] Adverbs = ["frisch", "fein", "grob", "dünn", "dick", "klein", "sehr fein", "ganz fein", "leicht", "gut", "feinst", "hauchdünn", "gründlich"];
    private static readonly Beginnings First = new(Adverbs);

    /// <summary>True for a word that says how finely or well.</summary>
    public static bool Is(string word) => First.May(word, 0) && Array.Exists(Adverbs, a => word.Equals(a, StringComparison.OrdinalIgnoreCase));

    /// <summary>True for such words at the front of a food; <paramref name="end"/> is the place behind the work.</summary>
    public static bool Worked(string food, string lang, out int end)
    {
        end = 0;
        if (lang != "de" || !First.May(food, 0))
        {
            return false;
        }

        foreach (string adverb in Adverbs)
        {
            if (Places.WordAt(food, 0, adverb) && Lexicon.Longest("prep", food, Places.Skip(food, adverb.Length), 1, lang, out end) is not null)
            {
                return true;
            }
        }

        end = 0;
        return false;
    }
}
