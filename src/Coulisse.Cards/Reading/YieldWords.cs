using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Yields however they are told: "Feeds four", "Cuts into 12 squares", "(makes 10 portions)", "Rendement : 60 choux", "Dosi per 8 persone", "4人分".</summary>
internal static class YieldWords
{
    private const int LongestTitle = 120;
    private static readonly string[] Openers = ["feeds", "cuts into", "cut into", "enough for", "starter for", "main for", "yield:", "rendement :", "rendement:", "rinde", "salen", "dosi per", "ingredienti per", "ingredientes para", "ingrédients pour", "zutaten für", "ergibt", "makes", "serves", "portions:", "servings:", "raciones:", "porzioni:", "portionen:", "personnes :", "for", "pour", "für", "para", "per"];
    private static readonly string[] Guests = ["serving", "portion", "people", "guest", "cover", "person", "personne", "convive", "couvert", "personen", "portionen", "portion", "personas", "comensales", "raciones", "ración", "persone", "porzioni", "人分", "人前"];
    private static readonly string[] Counters = ["個分", "枚分", "本分", "台分", "杯分"];

    /// <summary>The yield a sentence tells when no other way was found; null when it tells none.</summary>
    public static CardYield? In(string s, Span span, string lang)
    {
        foreach (string w in Openers)
        {
            int at = Places.FindWord(s, w.TrimEnd(':', ' '));
            if (at < 0 || at + w.Length >= s.Length || w[^1] == ':' && !s.AsSpan(at).StartsWith(w, StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            bool small = w is "for" or "pour" or "für" or "para" or "per" or "cut into";
            int i = Places.Skip(s, at + w.Length);
            i = Places.WordAt(s, i, "about") || Places.WordAt(s, i, "unas") || Places.WordAt(s, i, "unos") ? Places.Skip(s, Places.WordEnd(s, i)) : i;
            if (Of(s, i, span, lang) is { } y && (!small || at == 0 && y.Unit == "portions" || Guest(Noun(s, i, lang))))
            {
                return w is "feeds" or "serves" or "enough for" or "starter for" or "main for" ? y with { Unit = "portions" } : y;
            }
        }

        return s.Length <= 60 && Of(s, 0, span, lang) is { Unit: "portions" } bare && Ends(s, lang) ? bare : Japanese(s, span);
    }

    /// <summary>The yield in a title: "CIABATTA (2 pezzi)", "Flan (8 raciones)", "弁当 2人分", "ZANDER – 10 Portionen".</summary>
    public static CardYield? OfTitle(string title, Span span, string lang)
    {
        if (title.Length > LongestTitle)
        {
            return null;
        }

        int open = title.LastIndexOf('(');
        string inside = open > 2 && title[^1] == ')' ? title[(open + 1)..^1].Trim() : "";
        if (inside.Length > 2)
        {
            inside = inside.StartsWith("x ", StringComparison.Ordinal) ? inside[2..] : inside;
            // "(18 cm)" is a size, "(part 2)" a number.
            return In(inside, span, lang) ?? (Of(inside, 0, span, lang) is { Unit: not ("cm" or "mm" or "g" or "kg" or "ml" or "l") } y && Noun(inside, 0, lang).Length > 2 ? y : null);
        }

        int dash = title.LastIndexOf(" - ", StringComparison.Ordinal);
        return dash > 2 ? Tail(title[(dash + 3)..], span, lang) : Japanese(title, span);
    }

    private static CardYield? Tail(string s, Span span, string lang)
    {
        string? opener = Openers.FirstOrDefault(o => Places.WordAt(s, 0, o));
        return In(s, span, lang) ?? (opener is null ? null : Of(s, Places.Skip(s, opener.Length), span, lang));
    }

    private static CardYield? Of(string s, int i, Span span, string lang)
    {
        if (i >= s.Length || Amounts.At(s, i, lang) is not { } m || m.Unit is { Kind: "length" } || m.Number.Min <= 0)
        {
            return null;
        }

        string noun = Noun(s, i, lang);
        string unit = m.Unit is { Kind: "mass" or "volume" or "container" } u ? u.Unit : Guest(noun) ? "portions" : noun.Length > 0 ? noun.ToLowerInvariant() : "pieces";
        return new CardYield(m.Number.Min, unit, s, span) { AmountMax = m.Number.Max };
    }

    private static string Noun(string s, int i, string lang) => i < s.Length && Numbers.Range(s, Places.Skip(s, Hedged(s, i, lang)), lang) is { } n ? new string([.. s[Places.Skip(s, n.End)..].TakeWhile(char.IsLetter)]) : "";

    /// <summary>True when nothing stands behind the guests: "8 portions of cod" is a food.</summary>
    private static bool Ends(string s, string lang)
    {
        int i = Numbers.Range(s, 0, lang) is { } n ? Places.Skip(s, n.End) : s.Length;
        i = Places.Skip(s, i < s.Length ? Places.WordEnd(s, i) : i);
        return i >= s.Length || s[i] is ',' or '.' or '·' or '|' or '(';
    }

    private static int Hedged(string s, int i, string lang) => Lexicon.Longest("hedge", s, i, 2, lang, out int end) is not null ? Places.Skip(s, end) : i;

    private static bool Guest(string noun) => noun.Length > 2 && Guests.Any(g => noun.StartsWith(g, StringComparison.OrdinalIgnoreCase));

    private static CardYield? Japanese(string s, Span span)
    {
        foreach (string w in (ReadOnlySpan<string>)["人分", "人前", .. Counters])
        {
            int at = s.IndexOf(w, StringComparison.Ordinal);
            int from = at;
            while (from > 0 && char.IsAsciiDigit(s[from - 1]))
            {
                from--;
            }

            if (at > 0 && from < at && at - from < 4)
            {
                return new CardYield(double.Parse(s.AsSpan(from, at - from), System.Globalization.CultureInfo.InvariantCulture), w[0] == '人' ? "portions" : w[..1], s, span);
            }
        }

        return null;
    }
}
