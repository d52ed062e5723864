using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"season with salt and serve with rice": foods of a card told in sentences that are named without an amount where nothing but a food can stand. Only what everybody knows is taken, and nothing twice: a food left out would be left out of the allergens too.</summary>
internal static class ProseServed
{
    private const int LongestName = 30;
    private const int Looked = 60;
    private const int LongestList = 80;
    private static readonly string[] Leads = ["season with", "seasoned with", "serve with", "served with", "sprinkle with", "dust with", "scatter with", "garnish with", "top with", "finish with", "assaisonner de", "assaisonnez de", "servir avec", "servez avec", "saupoudrer de", "saupoudrez de", "servir con", "espolvorear con", "acompañar con", "sert avec", "sers avec", "servons avec", "sirve con", "sirvo con", "servo con", "si serve con", "servire con", "servite con", "spolverare con", "cospargere di"];

    // "the sauce", "le reste": what stands in the pan already
    private static readonly WordList Back = new("the", "rest", "le", "la", "les", "reste", "el", "los", "las", "resto", "il", "lo", "gli");
    private static readonly WordList AnyLead = new(Leads);

    private static readonly WordList Behind = new("würzen", "abschmecken", "bestreuen", "bestäuben", "servieren", "garnieren");
    private static readonly string[] Some = ["a little ", "some ", "plenty of ", "de la ", "de l'", "du ", "des ", "un peu de ", "etwas ", "ein wenig ", "un poco de ", "un po' di ", "del ", "della "];

    /// <summary>Adds such foods of a sentence as items.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="lang">The language.</param>
    /// <param name="span">Where it stands.</param>
    /// <param name="into">The pieces so far.</param>
    public static void Add(string s, string lang, Span span, List<Piece> into)
    {
        for (int k = AnyLead.Next(s, 0); k >= 0; k = AnyLead.Next(s, k + 1))
        {
            int at = Places.FindWord(s, AnyLead[k]);
            if (at < 0)
            {
                continue;
            }

            int from = at + AnyLead[k].Length;
            int end = s.AsSpan(from).IndexOfAny(".;:(") is var stop and >= 0 ? from + stop : s.Length;
            Names(s[from..end], lang, span, into);
        }

        if (lang == "de" && Behind.In(s))
        {
            German(s, span, into);
        }

        for (int k = Covers.Next(s, 0); k >= 0; k = Covers.Next(s, k + 1))
        {
            Covering(s, Places.FindWord(s, Covers[k]), lang, span, into);
        }
    }

    private static readonly WordList Covers = new("to cover", "à hauteur", "pour couvrir", "zum Bedecken", "para cubrir", "hasta cubrir", "per coprire", "a coprire");

    /// <summary>"2 sprigs of sage and 100 ml olive oil, water to cover": the food right before the words, where it opens its clause; "put on a lid to cover" names none.</summary>
    private static void Covering(string s, int at, string lang, Span span, List<Piece> into)
    {
        int from = at > 0 ? s.AsSpan(0, at).LastIndexOfAny(",;.") + 1 : 0;
        string part = at > 0 ? s[from..at].Trim() : "";
        if (part.Length is > 2 and <= LongestName && part.Count(' ') < 3 && FoodIds.Match(part, lang) is { } food && !Told(into, part, food.Id, lang))
        {
            into.Add(new Piece(PieceKind.Item, part, span));
        }
    }

    /// <summary>"mit Salz und Pfeffer abschmecken": the names between the word and its verb, which closes the clause.</summary>
    private static void German(string s, Span span, List<Piece> into)
    {
        for (int k = Behind.Next(s, 0); k >= 0; k = Behind.Next(s, k + 1))
        {
            int verb = Places.FindWord(s, Behind[k]);
            int with = verb > 4 ? s.LastIndexOf("mit ", verb - 1, verb, StringComparison.OrdinalIgnoreCase) : -1;
            if (with >= 0 && verb - with < LongestList && (with == 0 || s[with - 1] == ' '))
            {
                Names(s[(with + 4)..verb].Trim(), "de", span, into);
            }
        }
    }

    private static void Names(string list, string lang, Span span, List<Piece> into)
    {
        foreach (string told in list.Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase).Split(", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string part = Array.Find(Some, w => told.StartsWith(w, StringComparison.OrdinalIgnoreCase)) is { } some ? told[some.Length..] : told;
            // The list ends where a word comes that is no food: "serve with rice, or leave it to cool".
            if (part.Length is 0 or > LongestName || Back.In(part) || FoodIds.Match(part, lang) is not { } food)
            {
                return;
            }

            if (!Told(into, part, food.Id, lang))
            {
                into.Add(new Piece(PieceKind.Item, part, span));
            }
        }
    }

    private static bool Told(List<Piece> pieces, string name, string food, string lang)
    {
        for (int k = pieces.Count - 1; k >= 0 && pieces.Count - k < Looked; k--)
        {
            if (pieces[k].Kind == PieceKind.Item && pieces[k].Text is { } text && (text.AsSpan().IndexOf(name, StringComparison.OrdinalIgnoreCase) >= 0 || LineReader.Read(text, lang, default, []) is { } line && line.Foods.Any(f => FoodIds.Match(f.Food, lang)?.Id == food)))
            {
                return true;
            }
        }

        return false;
    }
}
