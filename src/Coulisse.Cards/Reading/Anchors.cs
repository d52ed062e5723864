using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Handles of steps that survive edits.</summary>
internal static class Anchors
{
    /// <summary>The handle of a text in its place.</summary>
    public static Anchor Of(string component, int order, string text)
    {
        // FNV-1a over letters and digits only, so that case, spacing and punctuation do not matter.
        ulong hash = 14695981039346656037UL;
        foreach (char c in Folding.Key(text))
        {
            if (char.IsLetterOrDigit(c))
            {
                unchecked
                {
                    hash = (hash ^ c) * 1099511628211UL;
                }
            }
        }

        return new Anchor(Folding.Lower(component), order, hash.ToString("x16", CultureInfo.InvariantCulture));
    }
}
