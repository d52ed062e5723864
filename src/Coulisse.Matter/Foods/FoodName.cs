using System.Text;

namespace Coulisse.Matter.Foods;

/// <summary>Makes names comparable: case, accents, hyphens, plurals.</summary>
public static class FoodName
{
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
                // "70 %" is "70%".
                _ = c == '%' && char.IsDigit(b[^1]) ? b : b.Append(' ');
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
