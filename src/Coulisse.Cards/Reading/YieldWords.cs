using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Yields however they are told: "Feeds four", "Cuts into 12 squares", "(makes 10 portions)", "Rendement : 60 choux", "Dosi per 8 persone", "4人分".</summary>
internal static class YieldWords
{
    private const int LongestTitle = 120;
    private const int LongestCount = 40;
    private static readonly string[] GuestWords = ["serving", "portion", "port", "ptn", "people", "guest", "cover", "cov", "prs", "person", "personne", "convive", "couvert", "personen", "portionen", "portion", "personas", "comensales", "raciones", "ración", "persone", "porzioni", "pax", "pers", "couv", "gäst", "gast", "ospiti", "ration", "invitados", "comensal", "coperti", "coperto", "eaters", "人分", "人前"];
    private static readonly string[] PieceWords = ["piece", "pcs", "pc", "unidad", "uds", "pieza", "stück", "stk", "pezzi", "pezzo", "pièce", "parts", "slice", "tranche", "scheibe", "fette", "biscuit", "cookie", "cupcake", "muffin", "square", "wedge", "verrine", "tartlet", "tartelette", "brötchen", "個", "斤", "枚", "本", "台", "杯"];
    private static readonly HashSet<string> Sizes = new(StringComparer.OrdinalIgnoreCase) { "big", "large", "small", "medium", "generous", "standard", "round", "square", "rectangular", "deep", "shallow", "long", "whole", "good", "nice", "individual", "mini", "gros", "grosse", "grand", "grande", "grands", "grandes", "petit", "petite", "petits", "petites", "große", "großes", "großer", "kleine", "kleines", "kleiner", "pequeño", "pequeña", "grandi", "piccolo", "piccola", "piccoli" };
    private static readonly string[] Headed = ["分量", "材料", "レシピ"];
    private static readonly char[] Bars = ['|', '·', '•'];
    private static readonly string[] Openers = YieldOpeners.All;
    private static readonly WordList AnyOpener = new(Openers);
    private static readonly Beginnings FirstOfGuests = new(GuestWords);

    private static readonly string[] Forms = ["mould", "moulds", "mold", "molds", "tray", "loaf", "loaves", "tart", "tin", "pie", "bleche", "formen", "laibe", "brote", "torten", "moldes", "teglie", "torte", "crostate", "pani", "filoni", "filone", "blech", "form", "springform", "kastenform", "kuchen", "torte", "brot", "laib", "backblech", "glas", "gläser", "moule", "plaque", "tarte", "gâteau", "cake", "terrine", "terrines", "verrine", "tartlet", "tartelette", "glass", "glasses", "jar", "ramekin", "ramekins", "ramequin", "ramequins", "förmchen", "gläschen", "ring", "rings", "ringe", "pagnotta", "pagnotte", "bocal", "bocaux", "molde", "bandeja", "tarta", "bizcocho", "pan", "teglia", "stampo", "torta", "crostata", "pane"];

    /// <summary>"Lote: 6 piezas" tells what a batch makes, "Lote: 240512" which one it was.</summary>
    private static bool Batched(string w) => w is "lote" or "lotto" or "charge" or "fournée" or "hornada" or "infornata";

    /// <summary>True for a tin, a tray or a whole: "Für 1 Blech" feeds no one portion.</summary>
    public static bool Form(string noun) => noun.Length > 2 && (AllForms.Contains(noun) || noun[^1] is 's' or 'e' && AllForms.Contains(noun[..^1]));

    private static readonly HashSet<string> AllForms = new(Forms, StringComparer.OrdinalIgnoreCase);

    /// <summary>"ca. 40 Stück", "10 slices": a number of pieces and nothing else.</summary>
    public static Numeral? PiecesOf(string s, string lang)
    {
        int i = Places.Skip(s, Hedged(s, 0, lang));
        return Numbers.Range(s, i, lang) is { InWords: false } n && Places.Skip(s, n.End) is var noun && noun < s.Length && IsPieces(Places.Letters(s, noun)) && Places.Skip(s, noun + Places.Letters(s, noun).Length) >= s.Length ? n : null;
    }

    /// <summary>The yield a sentence tells when no other way was found; null when it tells none.</summary>
    public static CardYield? In(string s, Span span, string lang)
    {
        if (lang == "ja" && KanjiAmounts.Plain(s) is var plain && plain.Length > 0 && !ReferenceEquals(plain, s))
        {
            // "六人前"
            return In(plain, span, lang) is { } written ? written with { Text = s } : null;
        }

        if (s.Length is > 4 and <= LongestTitle && (s[0], s[^1]) is ('(', ')') or ('[', ']') && In(s[1..^1], span, lang) is { } inside)
        {
            // "(12 couverts)" on a line of its own
            return inside with { Text = s };
        }

        if (s.Length <= LongestTitle && (s.AsSpan().IndexOfAny("|·•") >= 0 || s.IndexOf("  ", StringComparison.Ordinal) is > 0 and var gap && s.IndexOf(':') is > 0 and var label && label < gap))
        {
            foreach (string part in s.Replace("  ", "|", StringComparison.Ordinal).Split(Bars, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            {
                if ((One(part, span, lang) ?? (Layout.Front.DoughYield(s) && Made(part, lang) is { } made ? new CardYield(made.Amount.Min, made.Unit, s, span) { AmountMax = made.Amount.Max } : null)) is { } told)
                {
                    return told with { Text = s };
                }
            }

            return null;
        }

        if (s.Length <= LongestTitle && s.Contains(" / ", StringComparison.Ordinal) && Array.Find(s.Split(" / ", StringSplitOptions.TrimEntries), p => p.Length > 3 && char.IsAsciiDigit(p[0]) && Guests(p, lang)) is { } guests)
        {
            // "House book / winter menu / 8 covers"
            return One(guests, span, lang) is { } fed ? fed with { Text = s } : null;
        }

        return One(s, span, lang);
    }

    /// <summary>True for a line that begins with a number of guests and says nothing to eat behind it.</summary>
    public static bool Guests(string s, string lang) => s.Length <= LongestTitle && MayBeGuests(s, 0, lang) && Of(s, 0, default, lang) is { Unit: "portions" } && Ends(s, lang);

    /// <summary>False only when the noun behind a figure is surely none of the guests' words.</summary>
    private static bool MayBeGuests(string s, int i, string lang) => Numbers.Range(s, Places.Skip(s, Hedged(s, i, lang)), lang) is { } n && Places.Skip(s, n.End) is var noun && FirstOfGuests.May(s, noun);

    private static CardYield? One(string s, Span span, string lang)
    {
        if (CountLabels.At(s, span, lang) is { } labelled)
        {
            return labelled;
        }

        for (int k = ToldYields.Booked.In(s) ? -1 : AnyOpener.Next(s, 0); k >= 0; k = AnyOpener.Next(s, k + 1))
        {
            string w = AnyOpener[k];
            int at = Places.FindWord(s, w);
            if (at < 0 || at + w.Length >= s.Length)
            {
                continue;
            }

            bool small = w is "for" or "pour" or "für" or "para" or "per" or "cut into" or "personnes" or "personen" or "portions" or "portionen" or "porzioni" or "raciones" or "porciones" or "servings" or "covers" or "couverts" or "batch" or "quantity" or "menge" or "nombre" or "stück" or "stückzahl" or "anzahl" or "coperti" or "dosi" or "comensales" or "pax" or "donne" or "gives" or "fills" or "remplit" or "füllt" or "llena" or "riempie" or "soit";
            int i = at + w.Length;
            bool marked = false;
            while (i < s.Length && s[i] is ' ' or ':' or '=' or '-')
            {
                marked |= s[i] is ':' or '=' or '-';
                i++;
            }

            if (Times(s, i) is var behind && (!small || at == 0 || Guest(Noun(s, behind, lang))) && Of(s, behind, span, lang) is { } y && !EnoughFor.Feeds(w, y) && (!Batched(w) || at == 0 && (IsPieces(Noun(s, behind, lang)) || Form(Noun(s, behind, lang)))) && (w is not ("is for" or "are for") || Closed(s, behind, lang)) && (!small || at == 0 && (marked || IsPieces(Noun(s, behind, lang)) || Form(Noun(s, behind, lang)) || y.Unit == "portions" || w != "batch" && Ended(s, behind, lang) || Near(s, behind, lang)) || Guest(Noun(s, behind, lang))))
            {
                return EnoughFor.Made(w, Noun(s, behind, lang)) ? y : w is "coperti" or "is for" or "are for" or "feeds" or "serves" or "enough for" or "starter for" or "main for" or "pax" or "covers" or "comensales" or "couverts" or "raciones" or "porciones" or "servings" or "personen" or "personnes" || (small || w is "dosi per" or "dose per" or "ingredienti per" or "ricetta per" or "ingrédients pour" or "quantités pour" or "recette pour" or "zutaten für" or "rezept für" or "menge für" or "ingredientes para" or "cantidades para" or "receta para" or "recipe for" or "quantities for" or "reicht für") && Ended(s, behind, lang) && y.Unit == "pieces" ? y with { Unit = "portions" } : y;
            }
        }

        return s.Length <= 60 && Of(s, Times(s, 0), span, lang) is { Unit: "portions" } bare && Ends(s[Times(s, 0)..], lang) ? bare : ShortYields.At(s, 0, span, lang) ?? JapaneseYields.In(s, span) ?? ToldYields.In(s, span, lang) ?? SpokenYields.In(s, span, lang);
    }

    /// <summary>"x 20 snacks": the sign of times before the count.</summary>
    private static int Times(string s, int i) => i + 1 < s.Length && s[i] is 'x' or 'X' or '×' && Places.Skip(s, i + 1) is var j && j < s.Length && char.IsAsciiDigit(s[j]) ? j : i;

    /// <summary>"lunch is for 25, please …": a figure and the end of the clause.</summary>
    private static bool Closed(string s, int i, string lang) => Numbers.Range(s, Places.Skip(s, Hedged(s, i, lang)), lang) is { Min: > 1 } n && (n.End >= s.Length || s[n.End] is ',' or '.' or ';' || Guest(Noun(s, i, lang)));

    /// <summary>"Para unas 30 croquetas": about so many of one word, and nothing behind it.</summary>
    private static bool Near(string s, int i, string lang) => Hedged(s, i, lang) > i && Numbers.Range(s, Places.Skip(s, Hedged(s, i, lang)), lang) is { InWords: false } n && Places.Skip(s, n.End) is var noun && Places.Letters(s, noun) is { Length: > 3 } word && Places.Skip(s, noun + word.Length) >= s.TrimEnd('.', ':').Length;

    /// <summary>True when nothing but a full stop stands behind the figure.</summary>
    private static bool Ended(string s, int i, string lang) => Numbers.Range(s, Places.Skip(s, Hedged(s, i, lang)), lang) is { } n && s[n.End..].Trimmed(" .):").Length == 0;

    /// <summary>The yield in a title: "CIABATTA (2 pezzi)", "Flan (8 raciones)", "弁当 2人分", "ZANDER – 10 Portionen".</summary>
    /// <param name="title">The title.</param>
    /// <param name="span">Where it stands.</param>
    /// <param name="lang">The language of the card.</param>
    /// <param name="weighed">True where a weight or a volume at the end is a yield too: "Custard base, 5 kg".</param>
    public static CardYield? OfTitle(string title, Span span, string lang, bool weighed = false)
    {
        if (title.Length > LongestTitle)
        {
            return null;
        }

        title = lang == "ja" ? KanjiAmounts.Plain(title) : title;

        title = title.Replace(" // ", " - ", StringComparison.Ordinal);
        if (title.LastIndexOf(" / ", StringComparison.Ordinal) is > 2 and var stroke && stroke + 3 < title.Length && char.IsAsciiDigit(title[stroke + 3]))
        {
            // "VERRINE / 30 glasses"
            title = $"{title[..stroke]} - {title[(stroke + 3)..]}";
        }

        int open = Math.Max(title.LastIndexOf('('), title.LastIndexOf('['));
        string inside = open > 2 && title[^1] is ')' or ']' ? title[(open + 1)..^1].Trim() : "";
        if (inside.Length > 2)
        {
            if (Times(inside, 0) is > 0 and var count && Of(inside, count, span, lang) is { } times)
            {
                // "(x 8)", "(x 20 snacks)"
                return times;
            }

            if (Hedged(inside, 0, lang) is > 0 and var about && Numbers.Range(inside, about, lang) is { } some && some.End >= inside.Length)
            {
                // "Pancakes (about 12)"
                return new CardYield(some.Min, "pieces", inside, span) { AmountMax = some.Max };
            }

            // "(18 cm)" is a size, "(part 2)" a number.
            CardYield? counted = Of(inside, 0, span, lang) is { Unit: not ("cm" or "mm" or "g" or "kg" or "ml" or "l") } y && Noun(inside, 0, lang) is var noun && (noun.Length > 2 || IsPieces(noun)) ? y : null;
            if ((SizedForms.At(inside, 0, span, lang) ?? In(inside, span, lang) ?? counted ?? YieldClauses.In(inside, span, lang)) is { } bracketed)
            {
                return bracketed;
            }

            title = title[..open].TrimEnd();
        }

        int dash = Math.Max(title.LastIndexOf(" - ", StringComparison.Ordinal), title.LastIndexOf(", ", StringComparison.Ordinal) - 1);
        return (dash > 2 ? Tail(title[(dash + 3)..].Trim(), span, lang, weighed) : null) ?? Crossed(title, span) ?? Trailing(title, span, lang) ?? Closing(title, span, lang) ?? Inside(title, span, lang) ?? (lang == "ja" ? JapaneseOutput.In(title, span) : null) ?? JapaneseYields.In(title, span) ?? Layout.CountedTitles.Yield(title, span, lang) ?? ShortYields.OfTitle(title, span, lang);
    }

    /// <summary>"CATERING Fri 60 guests - canapes": the guests in the middle of a title.</summary>
    private static CardYield? Inside(string title, Span span, string lang)
    {
        for (int i = 3; i < title.Length; i++)
        {
            if (char.IsAsciiDigit(title[i]) && title[i - 1] == ' ' && Of(title, i, span, lang) is { Unit: "portions", Amount: > 1 } y && Guest(Noun(title, i, lang)))
            {
                return y;
            }
        }

        return null;
    }

    /// <summary>True for a name that tells its yield behind it: "Leek tart for 8", "肉じゃが 4人分", "Croquetas - 30 unidades". What opens with the words of a yield names nothing; pieces are told only by a line that stands alone, as a list may begin so too.</summary>
    public static bool Names(string s, string lang, bool alone)
    {
        if (s.Length is < 5 or > LongestTitle || !char.IsLetter(s[0]) || s[^1] is '。' or ':' or '!' || s[^1] == '.' && !s.EndsWith("pers.", StringComparison.OrdinalIgnoreCase) || s.AsSpan().IndexOfAny("|·•:") >= 0 || Openers.Any(o => Places.WordAt(s, 0, o)) || Headed.Any(w => s.StartsWith(w, StringComparison.Ordinal)) || OfTitle(s, default, lang) is not { } told)
        {
            return false;
        }

        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && !char.IsLetterOrDigit(s[Math.Max(0, i - 1)]) && Clock.At(s, i, lang) is not null)
            {
                // "Cuisson 20 min pour 4 personnes": a head, and no name
                return false;
            }
        }

        s = s.Replace(" // ", " - ", StringComparison.Ordinal);
        int figure = s.AsSpan().IndexOfAnyInRange('0', '9');
        int dash = s.LastIndexOf(" - ", StringComparison.Ordinal);
        bool said = dash > 2 && (Openers.Any(o => Places.WordAt(s, dash + 3, o)) || YieldClauses.Two(s[(dash + 3)..], lang));
        return figure is < 0 or > 2 && (told.Unit == "portions" || said || (alone || lang == "ja") && (IsPieces(told.Unit) || Form(told.Unit)) && !Layout.CountedTitles.Listed(s, lang, alone));
    }

    private static bool IsPieces(string noun) => Begins(noun, PieceWords);

    /// <summary>"Lasagne for 6", "Daube pour 8 personnes": the guests at the end of a title.</summary>
    private static CardYield? Trailing(string title, Span span, string lang)
    {
        foreach (string w in (ReadOnlySpan<string>)["for", "pour", "für", "para", "per", "serves", "makes"])
        {
            int at = Places.FindWord(title, w, 2);
            if (at > 2 && Of(title, Places.Skip(title, at + w.Length), span, lang) is { } y && (y.Unit == "portions" || Ended(title, at + w.Length, lang)))
            {
                return y with { Unit = "portions" };
            }
        }

        return null;
    }

    /// <summary>"Potage Parmentier 8 pers.", "Blanquette 12 couverts": guests counted at the very end.</summary>
    private static CardYield? Closing(string title, Span span, string lang)
    {
        int last = title.AsSpan().LastIndexOfAnyInRange('0', '9');
        int from = last;
        while (from > 0 && char.IsAsciiDigit(title[from - 1]))
        {
            from--;
        }

        return from > 2 && last - from < 3 && title[from - 1] == ' ' && Of(title, from, span, lang) is { Unit: "portions" } y && Ends(title[from..], lang) && title.Length - last < 14 ? y : null;
    }

    /// <summary>"pasta e ceci x 6", "STICKY PUDDING x 40 (2 x GN 1/1)": how many times, behind the name.</summary>
    private static CardYield? Crossed(string title, Span span)
    {
        int last = title.LastIndexOf(' ');
        if (last < 4)
        {
            return null;
        }

        // "x 40", "x40"
        bool apart = title[last - 1] is 'x' or 'X' or '×' && title[last - 2] == ' ';
        bool glued = !apart && last + 2 < title.Length && title[last + 1] is 'x' or 'X' or '×';
        return (apart || glued) && int.TryParse(title.AsSpan(last + (glued ? 2 : 1)), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int n) && n > 1 ? new CardYield(n, "portions", title, span) : null;
    }

    private static CardYield? Tail(string s, Span span, string lang, bool weighed)
    {
        string? opener = Openers.FirstOrDefault(o => Places.WordAt(s, 0, o));
        return In(s, span, lang) ?? (opener is null ? Of(s, 0, span, lang) is { } y && ((IsPieces(y.Unit) || Form(y.Unit)) && (Ends(s, lang) || Each(s, lang)) || weighed && y.Unit is "g" or "kg" or "l" or "ml" && Ends(s, lang)) ? y : null : Of(s, Places.Skip(s, opener.Length), span, lang) is { } made && !EnoughFor.Feeds(opener, made) ? made : null);
    }

    /// <summary>"3 loaves x 1 kg, paper moulds", "1 tart of 26 cm (fluted tin) - cuts into 12", "12 verrines": a line that opens with how many of what the dish is made as. Null for any other.</summary>
    public static CardYield? Leads(string s, Span span, string lang)
    {
        if (s.Length < 3 || !char.IsAsciiDigit(s[0]) && s[0] is not ('x' or '×') && (s.Length > LongestCount || Lexicon.Longest("num", s, 0, 1, lang, out _) is null))
        {
            return null;
        }

        int from = Times(s, 0);
        string body = from > 0 ? s[from..] : s;
        if (Whole(body, lang) is not { } end || Numbers.Range(body, 0, lang) is not { } n)
        {
            return null;
        }

        string rest = Layout.Titles.Behind(body[end..].Trim());
        bool told = rest.Length == 0 || rest[0] is ',' or '-' or '–' or '·' or '|' or '/' or 'x' or '×' or 'Ø' or '.' or '=' || char.IsAsciiDigit(rest[0]) || Sized(rest, lang);
        return told ? new CardYield(n.Min, UnitOf(Noun(body, 0, lang)), s, span) { AmountMax = n.Max } : null;
    }

    /// <summary>"of 26 cm", "da 1 kg", "à 350 g", "of 12": the size of each, or how many it holds.</summary>
    private static bool Sized(string rest, string lang)
    {
        int gap = rest.IndexOf(' ');
        return gap is > 0 and < 5 && rest[..gap] is "of" or "at" or "à" or "de" or "da" or "di" or "zu" or "von" && Amounts.At(rest, gap + 1, lang) is { } m && (m.Unit is { Kind: "length" or "mass" or "volume" } || m.Unit is null && m.End >= rest.TrimEnd('.', ')').Length);
    }

    /// <summary>"5 pezzi da 1 kg", "4 pieces of 350 g": how large each is.</summary>
    private static bool Each(string s, string lang)
    {
        int size = s.AsSpan(1).LastIndexOfAnyInRange('0', '9') is > 0 and var digit ? s.LastIndexOf(' ', digit + 1) + 1 : 0;
        return size > 4 && Amounts.At(s, size, lang) is { Unit.Kind: "mass" or "volume" or "length" } m && m.End >= s.Length;
    }

    /// <summary>"12 slices", "2 pagnotte", "80 portions": a count of what a dish is made as or cut into, and nothing else.</summary>
    public static (Numeral Amount, string Unit)? Made(string s, string lang) =>
        Whole(s, lang) is { } end && Places.Skip(s, end) >= s.Length && Numbers.Range(s, Places.Skip(s, Hedged(s, 0, lang)), lang) is { } n ? (n, UnitOf(Noun(s, 0, lang))) : null;

    private static string UnitOf(string noun) => Guest(noun) ? "portions" : Form(noun) ? noun.ToLowerInvariant() : "pieces";

    /// <summary>Where the noun behind a count ends, when it is a form, a piece, a guest or a vessel: "3 loaves x 1 kg"; null for any other.</summary>
    public static int? Whole(string s, string lang)
    {
        int i = Places.Skip(s, Hedged(s, 0, lang));
        if (Numbers.Range(s, i, lang) is not { } n || n.Min <= 0)
        {
            return null;
        }

        string noun = Places.Letters(s, Places.Skip(s, n.End));
        bool made = noun.Length > 0 && (Form(noun) || IsPieces(noun) || Guest(noun));
        return made && FoodIds.Match(s[Places.Skip(s, n.End)..], lang) is null ? Places.Skip(s, n.End) + noun.Length : null;
    }

    private static CardYield? Of(string s, int i, Span span, string lang)
    {
        if (i < s.Length && char.IsAsciiDigit(s[i]) && SizedForms.At(s, i, span, lang) is { } sized)
        {
            return sized;
        }

        if (i >= s.Length || Amounts.At(s, i, lang) is not { } m || m.Unit is { Kind: "length" } || m.Number.Min <= 0)
        {
            return null;
        }

        string noun = Noun(s, i, lang);
        string unit = Form(noun) ? noun.ToLowerInvariant() : m.Unit is { Kind: "mass" or "volume" or "container" } u ? u.Unit : Guest(noun) ? "portions" : noun.Length > 0 ? noun.ToLowerInvariant() : "pieces";
        return new CardYield(m.Number.Min, unit, s, span) { AmountMax = m.Number.Max };
    }

    private static string Noun(string s, int i, string lang) => i < s.Length && Numbers.Range(s, Places.Skip(s, Hedged(s, i, lang)), lang) is { } n ? Thing(s, Places.Skip(s, n.End)) : "";

    /// <summary>The thing that is counted: "a big slice tin" is a tin, neither a slice nor a big; a size alone stays what is written.</summary>
    private static string Thing(string s, int from)
    {
        string noun = Places.Letters(s, from);
        while (Sizes.Contains(noun) && Places.Letters(s, Places.Skip(s, from + noun.Length)) is { Length: > 0 } behind)
        {
            from = Places.Skip(s, from + noun.Length);
            noun = behind;
        }

        return !Form(noun) && noun.Length > 0 && Places.Letters(s, Places.Skip(s, from + noun.Length)) is var next && (next is "tin" or "tins" or "tray" or "trays" or "pan" or "pans") ? next : noun;
    }

    /// <summary>"cut into 28", "cuts into about 12 squares": the pieces of the whole; null when it is not said.</summary>
    public static CardYield? CutInto(string s, Span span, string lang)
    {
        foreach (string w in (ReadOnlySpan<string>)["cut into", "cuts into"])
        {
            if (Places.FindWord(s, w) is var at and > 0 && Numbers.Range(s, Places.Skip(s, Hedged(s, Places.Skip(s, at + w.Length), lang)), lang) is { Min: > 1 } n && !Clock.Tells(s, Places.Skip(s, at + w.Length), lang) && Places.Letters(s, Places.Skip(s, n.End)) is not ("cm" or "mm" or "g" or "ml" or "inch"))
            {
                return new CardYield(n.Min, "pieces", s, span) { AmountMax = n.Max };
            }
        }

        return null;
    }

    /// <summary>True when nothing stands behind the guests: "8 portions of cod" is a food.</summary>
    private static bool Ends(string s, string lang)
    {
        int i = Numbers.Range(s, 0, lang) is { } n ? Places.Skip(s, n.End) : s.Length;
        i = Places.Skip(s, i < s.Length ? Places.WordEnd(s, i) : i);
        return i >= s.Length || s[i] is ',' or '.' or '·' or '|' or '(' or '-' or '/' or ';' or ':' || Places.Behind(s, i, YieldOpeners.Courses) > 0;
    }

    private static int Hedged(string s, int i, string lang) => Lexicon.Longest("hedge", s, i, 2, lang, out int end) is not null ? Places.Skip(s, end) : i;

    /// <summary>True for a word for those who eat.</summary>
    public static bool Guest(string noun) => noun.Length >= 2 && (noun.Length > 2 || Places.IsJapanese(noun[0])) && Begins(noun, GuestWords);

    /// <summary>True for a noun that begins like one of these, in whatever case.</summary>
    public static bool Begins(string noun, string[] words)
    {
        foreach (string w in words)
        {
            if (noun.StartsWith(w, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
