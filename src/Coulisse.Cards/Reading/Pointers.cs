using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"see below", "card 14", "fiche 7", "別記", "from above": a pointer to another component or card.</summary>
internal static class Pointers
{
    /// <summary>True when the words point elsewhere; the draft remembers where.</summary>
    public static bool In(string w, Draft d)
    {
        bool points = w.StartsWith("see ", StringComparison.OrdinalIgnoreCase) || w.StartsWith("voir ", StringComparison.OrdinalIgnoreCase) || w.StartsWith("siehe ", StringComparison.OrdinalIgnoreCase)
            || w.StartsWith("s. ", StringComparison.OrdinalIgnoreCase) || w.StartsWith("ver ", StringComparison.OrdinalIgnoreCase) || w.StartsWith("vedi ", StringComparison.OrdinalIgnoreCase)
            || w.StartsWith("from above", StringComparison.OrdinalIgnoreCase) || w.StartsWith("above", StringComparison.OrdinalIgnoreCase) || w.StartsWith("all of the above", StringComparison.OrdinalIgnoreCase)
            || w.StartsWith("all of it", StringComparison.OrdinalIgnoreCase) || w is "gesamt" or "all" or "tout" or "todo" or "tutto" or "別記" or "上記" or "下記参照"
            || Card(w, "card") || Card(w, "fiche") || Card(w, "ficha") || Card(w, "scheda") || Card(w, "Karte") || Card(w, "page") || Card(w, "recipe") || Card(w, "recette") || w.AsSpan().IndexOfAnyInRange('0', '9') is > 0 and var figure && w.AsSpan(0, figure).IndexOf(' ') is var gap && (gap < 0 || gap == figure - 1) && Page(" " + w[..figure]);
        if (!points)
        {
            return false;
        }

        d.Reference = w;
        d.Whole |= w.StartsWith("all", StringComparison.OrdinalIgnoreCase) || w is "gesamt" or "tout" or "todo" or "tutto";
        if (w.Contains(' ') && !w.StartsWith("all", StringComparison.OrdinalIgnoreCase) && !w.StartsWith("from", StringComparison.OrdinalIgnoreCase))
        {
            // "see p. 45" is shown with the line: whoever reads it looks there
            d.Prepare(w);
        }

        d.Tokens?.Add(new ReadToken(w, "pointer", w));
        return true;
    }

    private static readonly string[] Pages = ["page", "pages", "pg.", "pg", "p.", "pp.", "Seite", "S.", "página", "pág.", "pág", "pag.", "pagina", "fiche", "Karte", "ficha", "scheda", "card", "Rezept Nr.", "recipe no.", "recette n°"];

    /// <summary>"half the recipe on page", "media receta de la pág.": a figure that follows is the number of a page or card, and no amount.</summary>
    public static bool Page(ReadOnlySpan<char> before)
    {
        before = before.TrimEnd();
        foreach (string page in Pages)
        {
            // "S." is a page in a capital only: "Kas. 3" and "pes. 2" end in no word.
            if (before.Length > page.Length && before.EndsWith(page, page == "S." ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase) && !char.IsLetterOrDigit(before[before.Length - page.Length - 1]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True where the words name a page or card by its number: "de la pág. 23".</summary>
    public static bool Numbered(string words) => words.AsSpan().IndexOfAnyInRange('0', '9') is > 0 and var figure && Page(words.AsSpan(0, figure));

    private static bool Card(string w, string word) => Places.WordAt(w, 0, word) && w.Length > word.Length + 1 && char.IsAsciiDigit(w[word.Length + 1]);
}
