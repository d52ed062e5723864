using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The label of a form before how many a card feeds or makes: "Nombre de couverts : 8", "Anzahl Portionen: 10", "Nº de raciones: 12", "Numero di coperti: 20", "人数:8名". "Number of eggs: 8" counts no guests.</summary>
internal static class CountLabels
{
    private const int Longest = 60;
    private static readonly string[] Counts =
    [
        "number of", "no. of", "no of", "nr of", "total number of", "nombre de", "nombre total de", "nb de", "nb. de", "nbre de", "nbr de", "nb", "nbre", "Anzahl der", "Anzahl", "Zahl der", "número de", "numero de", "nº de", "n° de", "n.° de", "n.º de", "núm. de", "num. de", "cantidad de",
        "numero di", "numero", "n° di", "n. di", "n°", "n.", "nr.",
    ];

    private static readonly string[] Guests = ["covers", "portions", "servings", "guests", "people", "persons", "pax", "diners", "couverts", "portions", "personnes", "convives", "parts", "assiettes", "Portionen", "Personen", "Gäste", "Gästen", "Gedecke", "Couverts", "raciones", "porciones", "comensales", "personas", "cubiertos", "coperti", "porzioni", "persone", "commensali", "ospiti"];
    private static readonly string[] Pieces = ["pieces", "pièces", "Stück", "Stücke", "piezas", "unidades", "pezzi"];
    private static readonly string[] Words = ["Personenzahl", "Personenanzahl", "Portionenzahl", "Portionszahl", "Portionsanzahl", "Portionenanzahl", "Gästezahl", "何人分", "人数", "食数", "提供数", "提供食数", "皿数", "仕込み数", "仕込数", "出来高", "出来上がり数", "個数", "Stückzahl"];
    private static readonly Beginnings First = new([.. Counts, .. Words, .. Guests, .. Pieces]);

    /// <summary>True for a line that is such a label and its count.</summary>
    public static bool Opens(string s, string lang) => At(s, default, lang) is not null;

    /// <summary>The yield such a line tells; null for any other.</summary>
    public static CardYield? At(string s, Span span, string lang)
    {
        if (!First.May(s, 0))
        {
            return null;
        }

        string line = s;
        s = s.IndexOf("  ", StringComparison.Ordinal) is > 0 and var gap && s.IndexOf(':', gap) > 0 ? s[..gap] : s; // "Nombre de couverts : 8   Temps : 2 h"
        if (s.Length is < 4 or > Longest || Label(s, out bool pieces) is not (> 0 and var end))
        {
            return null;
        }

        int i = Places.Skip(s, end);
        if (i < s.Length && s[i] is ':' or '=' or '-')
        {
            i = Places.Skip(s, i + 1);
        }

        if (i >= s.Length || !char.IsAsciiDigit(s[i]) || Numbers.Range(s, i, lang) is not { InWords: false, Min: > 0 } n)
        {
            return null;
        }

        string noun = s[n.End..].Trim(' ', '.', ')');
        return Unit(noun, pieces) is { } unit ? new CardYield(n.Min, unit, line, span) { AmountMax = n.Max } : null;
    }

    /// <summary>Where the label ends; 0 where none opens the line.</summary>
    private static int Label(string s, out bool pieces)
    {
        pieces = false;
        foreach (string w in Words)
        {
            if (Places.Opens(s, w))
            {
                pieces = w is "個数" or "Stückzahl" or "仕込み数" or "仕込数" or "出来高" or "出来上がり数";
                return w.Length;
            }
        }

        // "Unidades: 24", "Pièces : 12", "Guests: 10": the word itself before a colon
        if (s.IndexOf(':') is > 3 and < 14 and var colon && (Whole(s, colon, Guests) || Whole(s, colon, Pieces)))
        {
            pieces = !Whole(s, colon, Guests);
            return colon;
        }

        foreach (string w in Counts)
        {
            if (s.Length > w.Length && s.StartsWith(w, StringComparison.OrdinalIgnoreCase) && s[w.Length] == ' ')
            {
                int noun = Places.Skip(s, w.Length);
                int end = Places.Behind(s, noun, Guests);
                pieces = end == 0;
                end = end > 0 ? end : Places.Behind(s, noun, Pieces);
                if (end > 0)
                {
                    return end;
                }
            }
        }

        return 0;
    }

    private static bool Whole(string s, int colon, string[] words) => Array.Exists(words, w => s.AsSpan(0, colon).TrimEnd().Equals(w, StringComparison.OrdinalIgnoreCase));

    /// <summary>What is counted: the label says it, or the word behind the figure ("人数:8名", "仕込み数:40個"); null where something else stands there.</summary>
    private static string? Unit(string noun, bool pieces) =>
        noun.Length == 0 ? pieces ? "pieces" : "portions"
        : noun is "人" or "名" or "食" or "皿" or "客" or "人分" or "人前" or "食分" or "名分" or "名様" || YieldWords.Guest(noun) ? "portions"
        : noun is "個" or "枚" or "本" or "台" or "斤" or "切れ" or "個分" ? noun[..1]
        : Places.Behind(noun, 0, Pieces) == noun.Length ? "pieces"
        : noun[0] is '(' or ',' ? pieces ? "pieces" : "portions" : null;
}
