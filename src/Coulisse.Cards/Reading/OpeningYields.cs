using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"For a quick dal for four, rinse …", "Para hacer gazpacho para seis, trituro …", "Pour une bonne ratatouille (4 personnes), je prends …": a card told in sentences says in its first clause for how many it is. "Simmer for four, then" says nothing.</summary>
internal static class OpeningYields
{
    private const int LongestClause = 100;
    private static readonly string[] Openers = ["For ", "To make ", "Pour ", "Für ", "Para ", "Per "];
    private static readonly string[] Fors = [" for ", " pour ", " für ", " para ", " per "];

    /// <summary>The yield the first sentence tells; null for none.</summary>
    public static CardYield? Of(string s, Span span, string lang)
    {
        if (!char.IsUpper(s[0]) || lang == "ja")
        {
            return null;
        }

        int end = s.AsSpan(0, Math.Min(s.Length, LongestClause)).IndexOfAny(',', ':', '.');
        string clause = end > 0 ? s[..end] : s.Length < LongestClause ? s : "";
        bool opens = Array.Exists(Openers, o => clause.StartsWith(o, StringComparison.Ordinal));
        if (opens && clause.IndexOf('(') is > 3 and var open && clause.IndexOf(')', open) is > 0 and var close && Guests(clause[(open + 1)..close], span, lang) is { } boxed)
        {
            return boxed;
        }

        foreach (string word in Fors)
        {
            for (int at = clause.IndexOf(word, StringComparison.Ordinal); at > 0; at = clause.IndexOf(word, at + 1, StringComparison.Ordinal))
            {
                if (at > 3 && Numbers.Range(clause, at + word.Length, lang) is { Min: > 1 } n && clause[n.End..].Trim() is var rest && (opens && rest.Length == 0 || YieldWords.Guest(rest[..Places.WordEnd(rest, 0)])))
                {
                    return new CardYield(n.Min, "portions", clause.Trim(), span) { AmountMax = n.Max };
                }
            }
        }

        return null;
    }

    private static CardYield? Guests(string s, Span span, string lang) => YieldWords.Guests(s, lang) ? YieldWords.In(s, span, lang) : null;
}
