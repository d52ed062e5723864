using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>For how many it is enough, as one tells it at the table: "Does 8 of us.", "Alcanza para 6.", "Suffit pour quatre". The words open the sentence, and nothing but those who eat stands behind the figure: "does 8 minutes" feeds nobody.</summary>
internal static class ToldYields
{
    private const int Longest = 60;
    private static readonly string[] Phrases = ["does", "will do", "does for", "will do for", "will feed", "will serve", "should feed", "should serve", "enough to serve", "enough to feed", "alcanza para", "da de comer a", "suficiente para", "basta para", "llega para", "basta per", "bastano per", "è per", "sufficiente per", "suffit pour", "assez pour", "genügt für", "genug für", "das reicht für", "reicht locker für", "reicht gut für", "reicht bequem für"];
    /// <summary>Words that say how many sit there only where the table stands behind the figure.</summary>
    private static readonly string[] Seated = ["on est", "nous sommes", "on sera", "we are", "we're", "there are", "wir sind", "wir sitzen zu", "somos", "seremos", "siamo in", "siamo", "ci mangiamo in", "se mangiamo in", "on mange à", "comemos"];
    private static readonly string[] Tables = ["à table", "at the table", "round the table", "around the table", "am tisch", "bei tisch", "a la mesa", "en la mesa", "a tavola"];

    /// <summary>What a dish is eaten as, right behind a bare figure: "8 as a side".</summary>
    private static readonly string[] Courses = ["as a side", "as a starter", "as a main", "as a snack", "en accompagnement", "en entrée", "en plat", "als beilage", "als vorspeise", "als hauptgang", "como guarnición", "como entrante", "de primero", "come contorno", "come antipasto", "come primo", "come secondo"];
    private static readonly Beginnings FirstOfSeated = new(Seated);
    private static readonly Beginnings FirstOfCourses = new(Courses);
    /// <summary>"table 3 is booked for 20 people" feeds nobody.</summary>
    public static readonly WordList Booked = new("booked", "booking", "reservation", "réservé", "réservée", "réservation", "reserviert", "gebucht", "reservada", "reservado", "reserva", "prenotato", "prenotata", "prenotazione");
    private static readonly HashSet<string> Us = new(StringComparer.OrdinalIgnoreCase) { "", "of us", "of you", "of them", "hungry people", "easily", "generously", "de nosotros", "di noi", "d'entre nous", "von uns" };
    private static readonly Beginnings First = new(Phrases);

    /// <summary>"8 as a side. keeps 5 days": how many eat of it as what; null for any other words.</summary>
    public static Numeral? Course(string s, string lang)
    {
        if (Numbers.Range(s, 0, lang) is not { InWords: false, Min: > 1 and < 500 } n || n.End >= s.Length || !FirstOfCourses.May(s, Places.Skip(s, n.End)))
        {
            return null;
        }

        int end = Places.Behind(s, Places.Skip(s, n.End), Courses);
        return end > 0 && (end == s.Length || s[end] is '.' or ',' or ';' or '!') ? n : null;
    }

    /// <summary>"On est 8 à table en général": who sits there eats it.</summary>
    private static CardYield? AtTable(string s, Span span, string lang)
    {
        foreach (string w in Seated)
        {
            if (Places.WordAt(s, 0, w) && Numbers.Range(s, Places.Skip(s, w.Length), lang) is { Min: > 1 and < 100 } n)
            {
                int k = Places.Skip(s, n.End);
                bool table = Places.Behind(s, k, Tables) > 0;
                bool eat = w.Contains("mang", StringComparison.Ordinal) || w[0] == 'c' && w.Contains("com", StringComparison.Ordinal);
                return table || eat && (k >= s.Length || s[k] is '.' or ',' or '!') ? new CardYield(n.Min, "portions", s, span) { AmountMax = n.Max } : null;
            }
        }

        return null;
    }

    /// <summary>The yield such a sentence tells; null for any other.</summary>
    public static CardYield? In(string s, Span span, string lang)
    {
        if (s.Length > Longest * 2)
        {
            return null;
        }

        if (FirstOfSeated.May(s, 0) && AtTable(s, span, lang) is { } seated)
        {
            return seated;
        }

        if (s.Length > 2 && char.IsAsciiDigit(s[0]) && Course(s, lang) is { } eaters)
        {
            return new CardYield(eaters.Min, "portions", s, span) { AmountMax = eaters.Max };
        }

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
