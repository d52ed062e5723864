using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>For how many it is enough, as one tells it at the table: "Does 8 of us.", "Alcanza para 6.", "Suffit pour quatre". The words open the sentence, and nothing but those who eat stands behind the figure: "does 8 minutes" feeds nobody.</summary>
internal static class ToldYields
{
    private const int Longest = 60;
    private static readonly string[] Phrases = ["does", "will do", "does for", "will do for", "will feed", "will serve", "should feed", "should serve", "enough to serve", "enough to feed", "alcanza para", "da de comer a", "suficiente para", "basta para", "llega para", "basta per", "bastano per", "è per", "sufficiente per", "suffit pour", "assez pour", "genügt für", "genug für", "das reicht für", "reicht locker für", "reicht gut für", "reicht bequem für"];
    private static readonly HashSet<string> Us = new(StringComparer.OrdinalIgnoreCase) { "", "of us", "of you", "of them", "hungry people", "easily", "generously", "de nosotros", "di noi", "d'entre nous", "von uns" };
    private static readonly Beginnings First = new(Phrases);

    /// <summary>The yield such a sentence tells; null for any other.</summary>
    public static CardYield? In(string s, Span span, string lang)
    {
        if (s.Length > Longest || !First.May(s, 0))
        {
            return null;
        }

        foreach (string w in Phrases)
        {
            if (Places.WordAt(s, 0, w) && Numbers.Range(s, Places.Skip(s, w.Length), lang) is { Min: > 1 } n)
            {
                string rest = s[n.End..].Trimmed(" .!)");
                string noun = rest.IndexOf(' ') is > 0 and var gap ? rest[..gap] : rest;
                return Us.Contains(rest) || YieldWords.Guest(noun) ? new CardYield(n.Min, "portions", s, span) { AmountMax = n.Max } : null;
            }
        }

        return null;
    }
}
