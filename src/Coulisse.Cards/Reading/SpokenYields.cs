using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>How much comes out, as one says it in passing: "This does 18 pots", "Das gibt 12 Brötchen", "On en tire 20 assiettes", "dan 18 cuencos y aguanta 2 días", "Ne vengono 32", "sale 2 litros". The words open the sentence and a figure stands right behind them; a time, a turn or a food behind the figure is none: "da 2 vueltas", "gibt 3 EL Öl dazu".</summary>
internal static class SpokenYields
{
    private const int Longest = 100;
    private const int MostWords = 4;

    // What comes out of it and nothing else.
    private static readonly string[] Sure =
    [
        "this makes", "it makes", "that makes", "all makes", "recipe makes", "you get", "you'll get", "you should get", "we get", "this yields", "it yields",
        "das ergibt", "es ergibt", "ergibt", "ergeben", "man bekommt", "wir bekommen", "man erhält",
        "on en tire", "on en fait", "on en obtient", "on en sort", "j'en tire", "j'en fais", "j'en sors", "nous en faisons", "ça donne", "ca donne", "cela donne", "la recette donne", "on obtient",
        "salen", "me salen", "nos salen", "te salen", "rinde", "rinden", "se obtienen", "se sacan", "con esto salen", "da para", "dan para", "llega para", "alcanza para", "alcanzan para",
        "ne vengono", "vengono", "vengono fuori", "ne vengono fuori", "ne escono", "se ne ricavano", "ne ricavo", "se ne ottengono", "si ottengono", "ne faccio", "ne facciamo", "ne ottengo", "rende", "rendono", "la ricetta rende",
    ];

    // Also said of other things: only those who eat, a dish, a form, a piece or a large measure behind the figure makes a yield of it.
    private static readonly string[] Loose = ["this does", "it does", "that does", "does", "this gives", "it gives", "that gives", "gives", "das gibt", "es gibt", "gibt", "das macht", "macht", "das reicht für", "reicht für", "langt für", "das langt für", "es werden", "das werden", "ça fait", "cela fait", "on fait", "fait", "donne", "donnent", "sale", "dan", "da", "me sale", "danno", "dà"];
    private static readonly string[] Served = ["assiette", "plate", "bowl", "cuenco", "plato", "teller", "schale", "schüssel", "piatt", "ciotol", "scodell", "starter", "main", "helping", "bol", "ración", "racion"];
    private static readonly string[] Vessels = ["pot", "jar", "cup", "glass", "verre", "coupe", "copa", "vaso", "tarro", "frasco", "gläs", "glas", "becher", "coppa", "coppe", "bicchier", "vasett", "barattol", "bottle", "bouteille", "botella", "flasche", "bottigl", "loaf", "loaves", "roll", "bun", "brot", "brötchen", "pane", "panin", "pani", "pain", "barra", "tarte", "galleta", "croqueta", "biscott", "plätzchen", "croissant", "ball", "boule", "knödel", "ravioli"];
    private static readonly string[] Ands = [" and ", " und ", " et ", " y ", " e ", " - ", " – "];
    private static readonly System.Buffers.SearchValues<char> Ends = System.Buffers.SearchValues.Create(".,;!()");
    private static readonly Beginnings First = new([.. Sure, .. Loose]);
    private static readonly Beginnings FirstOfDishes = new([.. Served, .. Vessels]);

    /// <summary>True for words that open so and tell a yield.</summary>
    public static bool Opens(string s, string lang) => (lang == "ja" || First.May(s, 0)) && In(s, default, lang) is not null;

    /// <summary>True for words that end so: "voilà le caramel. Donne environ 1 kg." is no food of a kilo.</summary>
    public static bool Closes(string s, string lang) =>
        Opens(s, lang) || lang != "ja" && s.LastIndexOf(". ", StringComparison.Ordinal) is > 4 and var stop && stop + 6 < s.Length && char.IsUpper(s[stop + 2]) && YieldWords.In(s[(stop + 2)..].TrimEnd('.'), default, lang) is not null;

    /// <summary>The yield such a sentence tells; null for any other.</summary>
    public static CardYield? In(string s, Span span, string lang)
    {
        if (lang == "ja")
        {
            return JapaneseOutput.In(s, span);
        }

        if (s.Length is < 6 or > Longest || !First.May(s, 0))
        {
            return null;
        }

        return Of(Sure, s, span, lang, sure: true) ?? Of(Loose, s, span, lang, sure: false);
    }

    private static CardYield? Of(string[] words, string s, Span span, string lang, bool sure)
    {
        foreach (string w in words)
        {
            if (!Places.WordAt(s, 0, w) || w is "sale" or "me sale" && lang != "es" || w is "da" or "dan" && lang != "es" || w is "dà" && lang != "it")
            {
                continue;
            }

            int i = Places.Skip(s, w.Length);
            bool near = Lexicon.Longest("hedge", s, i, 2, lang, out int hedged) is not null;
            i = near ? Places.Skip(s, hedged) : i;
            if (i >= s.Length || !char.IsAsciiDigit(s[i]) || Clock.At(s, i, lang) is not null || Numbers.Range(s, i, lang) is not { Min: > 0 } n)
            {
                continue;
            }

            string rest = Clause(s[n.End..]);
            Measure? m = Amounts.At(s, i, lang);
            if (m is { Unit: { Kind: "mass" or "volume" } u })
            {
                // "sale 20 g" is salt in another tongue; a litre or a kilo is what comes out.
                string behind = Clause(s[m.Value.End..]);
                return behind.Length == 0 && (sure || u.Base >= 100) ? new CardYield(n.Min, u.Unit, s, span) { AmountMax = n.Max } : null;
            }

            if (m is { Unit.Kind: "length" or "spoon" or "cup" } || n.Min < 2 && !sure || rest.Length > 0 && !char.IsLetter(rest[0]) || rest.Count(' ') >= MostWords || rest.AsSpan().IndexOfAnyInRange('0', '9') >= 0)
            {
                return null;
            }

            string noun = Places.Letters(rest, 0);
            bool guests = YieldWords.Guest(noun) || FirstOfDishes.May(noun, 0) && YieldWords.Begins(noun, Served);
            bool told = noun.Length == 0 ? n.Min > 1 : guests || YieldWords.Form(noun) || YieldWords.PiecesOf(s[i..Math.Min(n.End + 1 + noun.Length, s.Length)], lang) is not null || FirstOfDishes.May(noun, 0) && YieldWords.Begins(noun, Vessels);
            bool eaten = guests || noun.Length == 0 && w.EndsWith("für", StringComparison.Ordinal) || noun.Length == 0 && w.EndsWith("para", StringComparison.Ordinal);
            if (!sure && !guests && rest.Length > noun.Length)
            {
                // "gibt 2 Becher Sahne dazu"
                return null;
            }

            if (!told && (!sure || m?.Unit is { } other && other.Unit != "piece"))
            {
                return null;
            }

            return new CardYield(n.Min, eaten ? "portions" : YieldWords.Form(noun) ? noun.ToLowerInvariant() : "pieces", s, span) { AmountMax = n.Max };
        }

        return null;
    }

    /// <summary>The words up to the end of the clause: "18 pots and they hold 2 days" makes pots.</summary>
    private static string Clause(string s)
    {
        int end = s.AsSpan().IndexOfAny(Ends);
        s = end >= 0 ? s[..end] : s;
        foreach (string and in Ands)
        {
            end = s.IndexOf(and, StringComparison.Ordinal);
            s = end >= 0 ? s[..end] : s;
        }

        return s.Trim();
    }
}
