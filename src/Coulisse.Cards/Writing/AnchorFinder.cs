using Coulisse.Cards.Words;

namespace Coulisse.Cards.Writing;

/// <summary>A step found again.</summary>
/// <param name="Step">The step as it stands now.</param>
/// <param name="Component">Name of its component now.</param>
/// <param name="How">"same", "moved" or "reworded".</param>
public sealed record FoundStep(Step Step, string Component, string How);

/// <summary>Finds the step a mark hangs on after the text was edited. A mark that finds none is loose: shown as such, never dropped and never hung on a guess.</summary>
public static class AnchorFinder
{
    /// <summary>Least share of the shorter text's words that must be shared for a reworded or split step.</summary>
    private const double Alike = 0.7;

    /// <summary>The step; null when the mark is loose.</summary>
    /// <param name="dish">The dish as read now.</param>
    /// <param name="anchor">The handle kept with the mark.</param>
    /// <param name="wordsThen">The step's words when the mark was made; null when they were not kept: then only an unchanged step is found.</param>
    public static FoundStep? Find(Dish dish, Anchor anchor, string? wordsThen = null)
    {
        (FoundStep Found, int Far)? best = null;
        foreach (Component c in dish.Components)
        {
            bool home = c.Name.Equals(anchor.Component, StringComparison.OrdinalIgnoreCase);
            foreach (Step s in c.Steps)
            {
                if (s.Anchor.Fingerprint == anchor.Fingerprint)
                {
                    // Equal words may stand twice ("Chill 2 h."): the nearest in its own component is meant.
                    int far = (home ? 0 : 10_000) + Math.Abs(s.Anchor.Order - anchor.Order);
                    if (best is null || far < best.Value.Far)
                    {
                        best = (new FoundStep(s, c.Name, far == 0 ? "same" : "moved"), far);
                    }
                }
            }
        }

        return best?.Found ?? (wordsThen is null ? null : Reworded(dish, anchor, wordsThen));
    }

    private static FoundStep? Reworded(Dish dish, Anchor anchor, string then)
    {
        HashSet<string> words = WordsOf(then);
        (FoundStep? found, double most, bool tie) = (null, 0, false);
        foreach (Component c in dish.Components)
        {
            bool home = c.Name.Equals(anchor.Component, StringComparison.OrdinalIgnoreCase);
            foreach (Step s in c.Steps)
            {
                HashSet<string> now = WordsOf(s.Text);
                int least = Math.Min(words.Count, now.Count);
                double share = least < 2 ? 0 : (double)now.Count(words.Contains) / least;
                if (share < Alike)
                {
                    continue;
                }

                double score = share + (home ? 0.2 : 0) - 0.01 * Math.Min(10, Math.Abs(s.Anchor.Order - anchor.Order));
                tie = Math.Abs(score - most) < 1e-9;
                if (score > most)
                {
                    (found, most, tie) = (new FoundStep(s, c.Name, "reworded"), score, false);
                }
            }
        }

        return tie ? null : found;
    }

    private static HashSet<string> WordsOf(string s)
    {
        HashSet<string> words = new(StringComparer.Ordinal);
        string key = Folding.Key(s);
        for (int i = 0; i < key.Length;)
        {
            int end = Places.IsJapanese(key[i]) ? Math.Min(i + 2, key.Length) : Places.WordEnd(key, i);
            if (char.IsLetterOrDigit(key[i]))
            {
                words.Add(key[i..end]);
            }

            i = Places.IsJapanese(key[i]) ? i + 1 : Math.Max(end, i + 1);
        }

        return words;
    }
}
