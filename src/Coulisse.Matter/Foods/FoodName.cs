using System.Text;

namespace Coulisse.Matter.Foods;

/// <summary>Makes names comparable: case, accents, hyphens, plurals; and knows the words that do not change which food it is.</summary>
public static class FoodName
{
    // Words that say state, quality or size but never another food. A word that could ("coconut", "goat's", "oat") must not stand here.
    private static readonly HashSet<string> Modifiers = new(StringComparer.Ordinal)
    {
        "fresh", "freshly", "cold", "warm", "hot", "soft", "softened", "melted", "chilled", "frozen", "thawed", "large", "small", "medium", "big", "young", "baby", "ripe", "firm",
        "organic", "free", "range", "pasteurised", "pasteurized", "unpasteurised", "chopped", "sliced", "diced", "grated", "peeled", "picked", "finely", "roughly", "coarsely", "fine",
        "good", "quality", "best", "plain", "whole", "raw", "ground", "crushed", "toasted", "roasted", "blanched", "skinless", "boneless", "unsweetened", "pure", "clean", "cloudy", "sharp",
        "cold-pressed", "pressed", "extra", "room", "temperature", "hulled", "pitted", "stoned", "shelled", "pieces", "piece", "halves", "slices", "slice", "wedges", "cubes", "chunks", "florets", "leaves", "the", "a", "some", "of", "de", "di", "del", "von", "unbleached", "sifted", "washed", "trimmed", "runny", "unwaxed", "unflavored", "unflavoured",
        "frais", "fraiche", "froid", "froide", "fondu", "mou", "pommade", "rape", "hache", "bio", "frisch", "frische", "frischer", "kalt", "kalte", "weich", "weiche", "gehackt", "gerieben",
        "fresco", "fresca", "freddo", "fredda", "morbido", "fuso", "tritato", "frio", "fria", "blando", "picado", "rallado", "molido", "fundido", "maduro", "maduros", "madura", "maduras",
    };

    /// <summary>Lower case, no accents, hyphens as blanks, œ and ß opened, one blank between words.</summary>
    public static string Fold(string name)
    {
        StringBuilder b = new(name.Length);
        bool blank = false;
        foreach (char raw in name.Normalize(NormalizationForm.FormKD))
        {
            // Only Latin accents go: the marks of kana make another letter.
            if (raw is >= '\u0300' and <= '\u036F' or '\u2019' or '\'')
            {
                continue;
            }

            char c = char.ToLowerInvariant(raw);
            if (!char.IsLetterOrDigit(c) && c is not ('%' or '\u3099' or '\u309A' or 'ー'))
            {
                blank = b.Length > 0;
                continue;
            }

            if (blank)
            {
                b.Append(' ');
                blank = false;
            }

            _ = c switch
            {
                'œ' => b.Append("oe"),
                'æ' => b.Append("ae"),
                'ß' => b.Append("ss"),
                _ => b.Append(c),
            };
        }

        return b.ToString();
    }

    /// <summary>Folded, each word without its plural ending. Rough on purpose: it only has to send both forms to the same key.</summary>
    public static string Singular(string folded) => string.Join(' ', folded.Split(' ').Select(One));

    /// <summary>True for a word that leaves the food the same.</summary>
    /// <param name="foldedWord">The word.</param>
    /// <param name="kept">What is left of the name: an animal changes every food but what sets.</param>
    public static bool IsModifier(string foldedWord, string kept) => Modifiers.Contains(foldedWord) || foldedWord is "bovine" or "pork" or "beef" && kept.Contains("gelatin", StringComparison.Ordinal);

    private static string One(string w)
    {
        if (w.Length <= 3 || w[^1] != 's' || w[^2] == 's')
        {
            return w;
        }

        return w.EndsWith("ies", StringComparison.Ordinal) && w.Length > 5 ? w[..^3] + "y"
            : w.EndsWith("oes", StringComparison.Ordinal) ? w[..^2]
            : w.EndsWith("ves", StringComparison.Ordinal) && !w.EndsWith("ives", StringComparison.Ordinal) && !w.EndsWith("oves", StringComparison.Ordinal) ? w[..^3] + "f"
            : w[..^1];
    }
}
