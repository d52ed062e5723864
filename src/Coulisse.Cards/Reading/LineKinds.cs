using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Tells totals, headings and remarks from foods.</summary>
internal static class LineKinds
{
    // What is said of every measure of the list, and words that open a remark in other languages.
    private static readonly string[] Levels = ["all spoon ", "all spoons ", "all spoonfuls ", "all cup measures ", "all measures ", "all measurements ", "spoon measures are ", "alle Löffel ", "alle Löffelmaße ", "alle Löffelangaben ", "toutes les cuillères ", "toutes les cuillerées ", "toutes les mesures ", "todas las cucharadas ", "todas las cucharaditas ", "todas las medidas ", "tutti i cucchiai ", "tutti i cucchiaini ", "tutte le misure ", "Hinweis:", "Anmerkung:", "remarque", "astuce", "nota:", "nota bene", "ojo:", "importante:", "important:", "Wichtig:", "P.S.", "PS:"];
    private static readonly string[] Remarks = ["see ", "read the ", "read on", "you will also need ", "you'll also need ", "you will need ", "you'll need ", "note", "n.b.", "nb:", "nb ", "tip:", "voir ", "siehe ", "véase ", "vedi ", .. Levels, .. ChosenSize.Answers];
    private static readonly string[] Keepers = ["à réserver ", "à conserver ", "conserver ", "store ", "keep ", "haltbar ", "aufbewahren ", "conservar ", "conservare ", "da conservare "];
    private static readonly string[] Tellers = ["we ", "i ", "this ", "it ", "they ", "wir ", "nous ", "on "];
    private static readonly Beginnings FirstOfRemarks = new(Remarks);
    private static readonly Beginnings FirstOfKeepers = new([.. Keepers, .. Tellers]);

    /// <summary>What a line of a list is.</summary>
    public static LineKind Of(string s, string lang)
    {
        bool digit = s.AsSpan().IndexOfAnyInRange('0', '9') >= 0;
        if (s[0] is '【' or '[' or '<' or '〈' or '《' or '■' && s[^1] is '】' or ']' or '>' or '〉' or '》')
        {
            return LineKind.Heading;
        }

        if (Lexicon.Longest("total", s, 0, 2, lang, out int end) is not null && digit)
        {
            return IsTotal(s, end) ? LineKind.Total : LineKind.Ingredient;
        }

        if (s[^1] == ':' && !HasAmount(s, lang))
        {
            return LineKind.Heading;
        }

        if (!digit && s.Length < 60 && s.IndexOf(',') < 0 && s.IndexOf(':') is var colon && (colon < 0 || colon == s.Length - 1) && Lexicon.Longest("heading", s, 0, 3, lang, out int h) is not null && h < s.Length && (s[h - 1] == '\'' || s[h] == ' '))
        {
            return LineKind.Heading;
        }

        if (lang != "ja" && Layout.Looks.Statement(s, lang) && !char.IsAsciiDigit(s[0]) && !Layout.Looks.Amounted(s, lang) || Keeps(s))
        {
            // "Makes about 1.2 kg", "Keeps 5 days chilled": what is said of the whole, and no food
            return LineKind.Note;
        }

        if (s[0] is '*' or '※' || FreeFrom.Is(s, lang) || FirstOfRemarks.May(s, 0) && Opens(s, Remarks))
        {
            return LineKind.Note;
        }

        if (BareSettings.Is(s, lang) || NoteHeats.Only(s, lang) || Asides.Is(s, lang) || Warnings.Is(s, lang) || KitLines.Is(s) || char.IsLetter(s[0]) && Layout.Furniture.Is(s) || Layout.Remarks.Is(s, lang))
        {
            return LineKind.Note;
        }

        // a temperature and nothing to eat
        if (s.Contains('°') && Places.HasAny(s, "oven", "four", "Ofen", "horno", "forno") && !s.Contains(" g ", StringComparison.Ordinal))
        {
            return LineKind.Note;
        }

        return LineKind.Ingredient;
    }

    /// <summary>"À réserver au frais 48 h maximum", "We did 140 covers with this in March": a remark with a verb and a full stop or a time.</summary>
    private static bool Keeps(string s) =>
        s.Length > 12 && FirstOfKeepers.May(s, 0) && (Opens(s, Keepers) || s[^1] == '.' && Opens(s, Tellers) && s.Count(c => c == ' ') > 5);

    /// <summary>True when a figure that is an amount stands anywhere.</summary>
    public static bool HasAmount(string s, string lang)
    {
        for (int i = 0; i < s.Length && i < 400; i++)
        {
            if ((char.IsAsciiDigit(s[i]) || Numbers.Vulgar(s[i]) > 0) && (i == 0 || !char.IsLetterOrDigit(s[i - 1])) && Amounts.At(s, i, lang) is { } m && (m.Unit is { Kind: not "length" } || i == 0))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsTotal(string s, int end)
    {
        // "Total: 1,486 g", "Totale impasto 1.230 g", "Poids total de la pâte : 918 g": figures come last and nothing follows but a unit.
        int first = s.AsSpan().IndexOfAnyInRange('0', '9');
        int last = s.AsSpan().LastIndexOfAnyInRange('0', '9');
        return first >= end && s.Length - last < 12 && first - end < 30;
    }

    private static bool Opens(string s, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            if (s.StartsWith(w, StringComparison.OrdinalIgnoreCase) && (w[^1] is ' ' or ':' or '.' or '*' or '※' || s.Length == w.Length || !char.IsLetter(s[w.Length])))
            {
                return true;
            }
        }

        return false;
    }
}
