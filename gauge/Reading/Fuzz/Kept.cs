using System.Globalization;
using System.Text;
using Coulisse.Cards;

namespace Coulisse.Gauge.Reading.Fuzz;

/// <summary>Is every word of a plain card still somewhere in the dish? Written apart from the reader: it compares letters and figures only.</summary>
internal static class Kept
{
    private const int ShortestWord = 3;
    private const string Method = "作り方";
    private static readonly char[] Figures = [.. "0123456789"];
    private static readonly char[] Dress = ['#', '-', '*', '■', '●', '【', ' ', '\u3000', '\t'];

    /// <summary>Words that only divide a card and stand alone on their line; a table's heads and a head's labels are layout too.</summary>
    private static readonly HashSet<string> Dividers = new(File.ReadLines(Path.Combine(AppContext.BaseDirectory, "words.tsv")).Select(l => l.Split('\t')).Where(c => c.Length > 3 && c[2] is "ingredients" or "method" or "notes").Select(c => Squeezed(c[0])), StringComparer.Ordinal);

    private static readonly HashSet<string> Labels = new(StringComparer.Ordinal) { "title", "name", "titre", "titel", "titulo", "titolo", "yield", "yields", "makes", "servings", "serves" };

    /// <summary>The first word that is gone; null when nothing is.</summary>
    public static string? Missing(string text, Dish dish)
    {
        // Marks of pages, links and entities are resolved on purpose; what they hide is checked on the card text made of them.
        if (text.AsSpan().IndexOfAny("<&[|") >= 0)
        {
            return null;
        }

        string kept = Squeezed(Everything(dish));
        foreach (string line in text.Split(['\n', '\r', '\u2028']))
        {
            // "4. Tip": the number of a heading divides no more than the heading does.
            string bare = line.TrimStart().TrimStart(Figures).TrimStart('.', ')', ' ');
            int colon = line.IndexOf(':');
            // The labels of a head between two rules become what they mean, and so does "title:" before what is the title.
            if (Dividers.Contains(Squeezed(bare)) || colon > 0 && Labels.Contains(Squeezed(line[..colon])) && (text.StartsWith("---", StringComparison.Ordinal) || Squeezed(line[(colon + 1)..]) == Squeezed(dish.Title)))
            {
                continue;
            }

            foreach (string word in Words(line[Divided(line)..]))
            {
                // A list in a line is parted at its "and".
                if (word is not ("and" or "und") && !kept.Contains(word, StringComparison.Ordinal))
                {
                    return $"“{word}” of “{line.Trim()}”";
                }
            }
        }

        return null;
    }

    /// <summary>Where a line begins behind the word of a heading it runs on from: "Method (easy)", "作り方①…", in a script without gaps whatever follows. 0 for any other line.</summary>
    private static int Divided(string line)
    {
        int at = line.Length - line.TrimStart(Dress).Length;
        int sign = line.AsSpan(at).IndexOfAny('(', '（', '①');
        if (sign > 0 && Dividers.Contains(Squeezed(line[at..(at + sign)])))
        {
            return at + sign;
        }

        return line.AsSpan(at).StartsWith(Method, StringComparison.Ordinal) ? at + Method.Length : 0;
    }

    private static IEnumerable<string> Words(string line)
    {
        StringBuilder b = new();
        foreach (char c in line.Append(' '))
        {
            if (char.IsLetterOrDigit(c))
            {
                b.Append(c);
            }
            else if (!Silent(c))
            {
                string word = Squeezed(b.ToString());
                b.Clear();
                if (word.Length >= ShortestWord)
                {
                    yield return word;
                }
            }
        }
    }

    private static string Everything(Dish d)
    {
        StringBuilder b = new();
        b.AppendLine(d.Title);
        foreach (Component c in d.Components)
        {
            b.AppendLine(c.Name);
            Lines(b, c.Ingredients);
            b.AppendJoin('\n', c.Steps.Select(s => s.Under + "\n" + s.Text)).AppendLine().AppendJoin('\n', c.Notes.Select(n => n.Text)).AppendLine();
        }

        foreach (Variant v in d.Variants)
        {
            b.AppendLine(v.Name);
            Lines(b, v.Ingredients);
        }

        return b.AppendJoin('\n', d.Notes.Select(n => n.Text)).AppendLine().AppendJoin('\n', d.Unread.Select(n => n.Text)).ToString();
    }

    private static void Lines(StringBuilder b, IEnumerable<IngredientLine> lines)
    {
        foreach (IngredientLine l in lines)
        {
            b.AppendLine(l.Group).AppendLine(l.Text).AppendJoin('\n', l.Foods.Select(f => f.Alternative)).AppendLine();
        }
    }

    private static bool Silent(char c) => CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.NonSpacingMark;

    /// <summary>Letters and figures in one form; all else is a break that does not count.</summary>
    private static string Squeezed(string s)
    {
        StringBuilder b = new(s.Length);
        foreach (Rune r in s.EnumerateRunes())
        {
            b.Append(r.Value is '¹' or '²' or '³' or 'º' or 'ʼ' ? "" : r.Value == 0xFFFD ? "" : r.ToString().Normalize(NormalizationForm.FormKD));
        }

        int n = 0;
        for (int i = 0; i < b.Length; i++)
        {
            if (char.IsLetterOrDigit(b[i]))
            {
                b[n++] = char.ToLowerInvariant(b[i]);
            }
        }

        b.Length = n;
        return b.ToString();
    }
}
