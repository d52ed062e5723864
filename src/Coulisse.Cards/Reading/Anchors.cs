using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Handles of steps that survive edits.</summary>
internal static class Anchors
{
    private const int Stretch = 64;

    /// <summary>The handle of a text in its place.</summary>
    public static Anchor Of(string component, int order, string text) => new(Folding.Lower(component), order, Fingerprint(text));

    /// <summary>Hash of a text's words.</summary>
    public static string Fingerprint(string text)
    {
        // FNV-1a over letters and digits only, so that case, spacing and punctuation do not matter.
        ulong hash = 14695981039346656037UL;
        Span<char> letters = stackalloc char[Stretch * 2];
        for (int from = 0; from < text.Length; from += Stretch)
        {
            // A letter's key is at most two letters, and the key of a text is its letters' keys in a row.
            int n = Folding.Key(text.AsSpan(from, Math.Min(Stretch, text.Length - from)), letters);
            foreach (char c in letters[..n])
            {
                if (char.IsLetterOrDigit(c))
                {
                    unchecked
                    {
                        hash = (hash ^ c) * 1099511628211UL;
                    }
                }
            }
        }

        return Hex(hash);
    }

    private static string Hex(ulong hash)
    {
        Span<char> digits = stackalloc char[16];
        for (int i = 15; i >= 0; i--)
        {
            digits[i] = "0123456789abcdef"[(int)(hash & 15)];
            hash >>= 4;
        }

        return digits.ToString();
    }
}
