using System.Globalization;
using System.Text;

namespace Coulisse.Store;

/// <summary>Folds words for search: no accents, lower case, so that "creme" finds "Crème" on both databases.</summary>
internal static class Folding
{
    public static string Fold(string text)
    {
        StringBuilder b = new(text.Length);
        foreach (char c in text.Normalize(NormalizationForm.FormD))
        {
            UnicodeCategory category = char.GetUnicodeCategory(c);
            if (category != UnicodeCategory.NonSpacingMark)
            {
                b.Append(c switch { 'ß' => 's', 'ø' or 'Ø' => 'o', 'ł' or 'Ł' => 'l', _ => char.ToLowerInvariant(c) });
            }
        }

        return b.ToString().Normalize(NormalizationForm.FormC);
    }

    public static List<string> Words(string query)
    {
        List<string> words = [];
        StringBuilder word = new();
        foreach (char c in Fold(query) + " ")
        {
            if (char.IsLetterOrDigit(c))
            {
                word.Append(c);
            }
            else if (word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }
        }

        return words;
    }
}
