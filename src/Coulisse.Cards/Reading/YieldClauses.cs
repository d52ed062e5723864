using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Yields told in a clause of their own: "Makes 1 cake, 12 slices", "Springform 26 cm, 12 Stücke", "Totale 1.421 g, 2 pagnotte", "(frame 40 x 60, 80 portions)".</summary>
internal static class YieldClauses
{
    private static readonly string[] Seams = [", ", " · ", " | ", " - ", " – ", "; ", " / ", " (", ")", " soit ", ". ", "  "];

    /// <summary>Adds the pieces a sentence tells beside its yield; where it told none, only a sentence that opens with a tin or a total may tell them so.</summary>
    public static void Add(string sentence, Span span, string lang, List<CardYield> yields, int told, bool named = false)
    {
        if (sentence.Length is 0 or > 120 || yields.Count == told && !Opens(sentence, lang))
        {
            return;
        }

        foreach (string clause in Of(sentence).Skip(1))
        {
            string cut = clause.StartsWith("cuts into ", StringComparison.OrdinalIgnoreCase) ? $"{clause[10..]}{(char.IsAsciiDigit(clause[^1]) ? " slices" : "")}" : clause;
            if ((YieldWords.Made(cut, lang) ?? (named ? Layout.TitleCount.Tail(sentence, cut, lang) : null)) is { } made && !yields.Skip(told).Any(y => Math.Abs(y.Amount - made.Amount.Min) < 0.01))
            {
                yields.Add(new CardYield(made.Amount.Min, made.Unit, sentence, span) { AmountMax = made.Amount.Max });
            }
            else if (yields.Count > told && char.IsAsciiDigit(cut[0]) && YieldWords.Leads(cut, span, lang) is { } sized && cut.IndexOf(' ') > 0 && !yields.Skip(told).Any(y => y.Unit == sized.Unit || Math.Abs(y.Amount - sized.Amount) < 0.01))
            {
                // "Dough weight 3.6 kg, 4 loaves at 900 g", "For 2 l (8 portions of 250 ml)"
                yields.Add(sized with { Text = sentence });
            }
        }
    }

    /// <summary>The yield that the name of a dish tells in any of its ways; null for none.</summary>
    public static CardYield? OfName(string name, Span span, string lang)
    {
        if ((YieldWords.OfTitle(name, span, lang, weighed: true) ?? In(name, span, lang)) is { } told)
        {
            return told;
        }

        foreach (string clause in Of(name).Skip(1))
        {
            // "Ficha: Tacos de cochinita · 30 tacos"
            if (Layout.TitleCount.Tail(name, clause, lang) is { } tail)
            {
                return new CardYield(tail.Amount.Min, tail.Unit, name, span) { AmountMax = tail.Amount.Max };
            }

            if (YieldWords.Leads(clause, span, lang) is { } led)
            {
                // "Focaccia, 2 trays of 12"
                return led with { Text = name };
            }
        }

        return null;
    }

    /// <summary>The yield in the clauses of what a title tells in brackets; null for none.</summary>
    public static CardYield? In(string inside, Span span, string lang)
    {
        foreach (string clause in Of(inside))
        {
            if ((YieldWords.Made(clause, lang) ?? Course(clause, lang)) is { } made)
            {
                return new CardYield(made.Amount.Min, made.Unit, inside, span) { AmountMax = made.Amount.Max };
            }
        }

        return null;
    }

    /// <summary>"1 tray, 48 pieces": the whole and what it is cut into.</summary>
    public static bool Two(string s, string lang) => Of(s) is { Length: 2 } two && Array.TrueForAll(two, c => YieldWords.Made(c, lang) is not null);

    /// <summary>"1 terrine, 14 slices", "8 portions": nothing but what a dish makes.</summary>
    public static bool Only(string s, string lang) => Of(s) is { Length: > 0 } all && Array.TrueForAll(all, c => YieldWords.Made(c, lang) is not null);

    /// <summary>"10 porzioni antipasto": guests, and the course they eat it as.</summary>
    private static (Numeral Amount, string Unit)? Course(string s, string lang) =>
        s.LastIndexOf(' ') is > 3 and var last && last + 4 < s.Length && Lexicon.Longest("hedge", s, 0, 2, lang, out _) is null && s.Count(' ') == 2 && YieldWords.Made(s[..last], lang) is { Unit: "portions" } made ? made : null;

    private static string[] Of(string s) => s.Split(Seams, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static bool Opens(string s, string lang) => YieldWords.Form(s[..Places.WordEnd(s, 0)]) || s[0] == '(' || Lexicon.Longest("total", s, 0, 3, lang, out _) is not null;
}
