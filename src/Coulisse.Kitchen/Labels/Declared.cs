using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Labels;

/// <summary>Allergen codes a guest's declaration closes off ("coeliac disease": wheat, rye, barley, oats).</summary>
public static class Declared
{
    private static readonly Lazy<(string Phrase, string[] Codes)[]> Phrases = new(Load);

    /// <summary>Codes of a declaration; empty when its words name none, which must be asked and is not a leave to serve.</summary>
    public static ImmutableArray<string> Codes(string declaration)
    {
        ArgumentNullException.ThrowIfNull(declaration);
        string rest = declaration.ToLowerInvariant();
        SortedSet<string> found = new(StringComparer.Ordinal);

        // Longest first, and what is read is taken away: "tree nuts" must not be read again as "nuts".
        foreach ((string phrase, string[] codes) in Phrases.Value)
        {
            int at = Word(rest, phrase);
            if (at >= 0)
            {
                found.UnionWith(codes);
                rest = rest[..at] + new string(' ', phrase.Length) + rest[(at + phrase.Length)..];
            }
        }

        return [.. found.OrderBy(c => AllergenNames.Codes.IndexOf(c))];
    }

    private static int Word(string text, string phrase)
    {
        for (int at = text.IndexOf(phrase, StringComparison.Ordinal); at >= 0; at = text.IndexOf(phrase, at + 1, StringComparison.Ordinal))
        {
            bool open = at == 0 || !char.IsLetter(text[at - 1]);
            bool shut = at + phrase.Length == text.Length || !char.IsLetter(text[at + phrase.Length]);
            if (open && shut)
            {
                return at;
            }
        }

        return -1;
    }

    private static (string, string[])[] Load()
    {
        ReferenceTable table = ReferenceTable.Load("foods/diets.tsv");

        // A cell holds either one phrase of several words (";" between phrases) or single words with blanks between.
        return [.. table.Rows.SelectMany(r => r[0].Split(';').Select(p => (Phrase: p.Trim().ToLower(CultureInfo.InvariantCulture), Codes: r[1].Split(' '))))
            .OrderByDescending(p => p.Phrase.Length).ThenBy(p => p.Phrase, StringComparer.Ordinal)];
    }
}
