using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>What a line looks like on its own.</summary>
internal static class Looks
{
    private const int LongestHeading = 60;
    private static readonly string[] Headers = ["Prep time", "Preparation time", "Cook time", "Cooking time", "Total time", "Active time", "Hands-on time", "Temps de", "Préparation :", "Cuisson :", "Zubereitungszeit", "Backzeit", "Arbeitszeit", "Gesamtzeit", "Kochzeit", "Tiempo", "Tempo di", "Tempo", "調理時間", "所要時間"];
    private static readonly string[] Servers = ["Serves", "Makes", "Yields", "Yield", "Servings", "Portions", "Ergibt", "Für", "Para", "Per", "Pour", "Rendement"];
    private static readonly string[] Statements = ["Serves", "Makes", "Yields", "Yield", "Servings", "One plate:", "Keeps", "Pour", "Ergibt", "Für", "Para", "Per", "Hält", "Haltbar", "Portions", "Rendement"];
    private static readonly string[] Keepers = ["keeps", "keep", "se guarda", "se guardan", "se conserve", "se conservent", "se garde", "se gardent", "hält sich", "halten sich", "haltbar", "si conserva", "si conservano", "se conserva", "se conservan", "aguanta", "aguantan"];
    private static readonly Beginnings FirstOfHeaders = new(Headers);
    private static readonly Beginnings FirstOfStatements = new([.. Servers, .. Statements]);
    private static readonly Beginnings FirstOfKeepers = new(Keepers);

    // Asked of the same few lines again and again while a card is laid out.
    [ThreadStatic]
    private static Recent? _amounted;
    [ThreadStatic]
    private static Recent? _statement;
    [ThreadStatic]
    private static Recent? _work;
    // Set while a long card is laid out.
    [ThreadStatic]
    private static Foreseen? _foreseen;

    /// <summary>Lets the looks of a long card's lines be known on this core until the answer is disposed of.</summary>
    public static Known Knowing(Foreseen? foreseen)
    {
        Known before = new(_foreseen);
        _foreseen = foreseen;
        return before;
    }

    /// <summary>What was known before.</summary>
    internal readonly struct Known(Foreseen? before) : IDisposable
    {
        /// <summary>Knows again what was known before.</summary>
        public void Dispose() => _foreseen = before;
    }

    /// <summary>True for a bullet.</summary>
    public static bool Bullet(string s) =>
        s.Length > 1 && !(s[0] == '*' && s[1] != ' ' && s[^1] == '*') && ((s[0] is '-' or '*' or '+' or '–' && (s[1] is ' ' or '\t' || char.IsAsciiDigit(s[1]))) || s[0] is not ('–' or '—') && Reading.Marks.Glyph(s[0]) || s[0] is '—' && s[1] == ' ' || s[0] == 'o' && s.Length > 2 && s[1] is ' ' or '\t' && char.IsAsciiDigit(s[2]));

    /// <summary>True when an amount stands at the front or at the end.</summary>
    public static bool Amounted(string body, string lang) => _foreseen?.Amounted(body, lang) ?? (_amounted ??= new Recent(IsAmounted)).Of(body, lang);

    private static bool IsAmounted(string body, string lang)
    {
        if (body.Length is 0 or > 240 || Header(body))
        {
            return false;
        }

        body = lang == "ja" ? KanjiAmounts.Plain(body) : body;

        // "8 personnes - Préparation : 45 min" counts guests.
        if (char.IsAsciiDigit(body[0]) && (YieldWords.Guests(body, lang) || ToldYields.Course(body, lang) is not null || lang == "ja" && SpokenYields.Opens(body, lang)))
        {
            return false;
        }

        if (Degrees(body) || BareHeat.Opens(body, lang) || NoteHeats.Only(body, lang) || Sentences(body) || char.IsAsciiDigit(body[0]) && Numbers.Range(body, 0, lang) is { } heat && BareHeat.Alone(body, 0, heat, lang))
        {
            return false;
        }

        if (lang == "ja" && Servings(body, lang) && (body.IndexOf(' ') < 0 || body.Contains("cm", StringComparison.Ordinal) || body.Contains('号')))
        {
            // "15cm丸型1台分", "15cm丸型 1台分": a tin and how many of it
            return false;
        }

        if (lang == "ja" && (JapanesePart.Spooned(body) || GrownAmounts.In(body) || JapaneseSizes.Told(body)))
        {
            return true;
        }

        if (IsPart(body, lang))
        {
            return true;
        }

        body = Leaders.Plain(body);

        if (Reading.Amounts.At(body, 0, lang) is { } m && !(m.Unit is null && m.End < body.Length && body[m.End] == '°') && (m.Unit is { Kind: not "length" } || m.End < body.Length && !m.Number.InWords || m.Unit is null && m.Number.InWords && m.End < body.Length && m.Number.Min > 1) && !(m.Unit is null && Lasts(body, m.End, lang)))
        {
            return true;
        }

        if (lang == "ja" && body[^1] != '。' && body.IndexOf('、') is > 1 and var part && Reading.Amounts.At(body, 0, lang) is null && Amounted(body[..part], lang))
        {
            // "卵 6個、だし 120cc、サラダ油 適量"
            return true;
        }

        if (UnitFirst.Told(body, lang))
        {
            return true;
        }

        // "Serves 4." counts guests: no food is called so, though a count stands behind ("Eggs 4").
        if (Serving(body, lang) || SpokenYields.Closes(body, lang))
        {
            return false;
        }

        Draft? d = null;
        if (BackAmount.Take(body, lang, ref d) != body && d?.Amount is not null)
        {
            return !Statement(body, lang) && !(body.Length > 50 && body[^1] == '.' && body.IndexOf(':') is > 2 and < 30 && Clock.Tells(body, 1, lang) && Work(body, lang));
        }

        if (Shared(body, lang, ref d))
        {
            return true;
        }

        // A bare count binds only a food everybody knows: "Chapter 3" is none.
        return body.Length < 40 && char.IsAsciiDigit(body[^1]) && BackAmount.Count(body, lang, d ?? new Draft(why: false)) is { } food && FoodIds.Match(food, lang) is not null;
    }

    /// <summary>"as promised, the ketchup from last autumn. Makes roughly 1.5 litres": sentences, and no item whatever the last one counts.</summary>
    public static bool Sentences(string body)
    {
        int stop = body.Length > 40 ? body.IndexOf(". ", StringComparison.Ordinal) : -1;
        if (stop > 4 && stop + 3 < body.Length && body.IndexOf(". ", stop + 2, StringComparison.Ordinal) is > 0 and var second && second + 3 < body.Length && char.IsUpper(body[stop + 2]) && char.IsLower(body[stop + 3]) && char.IsUpper(body[second + 2]) && char.IsLower(body[second + 3]) && body[^1] == '.')
        {
            // "Autolyse 1h. Add levain + salt. Bulk 4h @ 25c."
            return true;
        }

        // "500 g Linsen 40 Minuten kochen. Mit Essig abschmecken und servieren.": a figure opens the sentence, and a time stands in it.
        bool letter = stop > 12 && char.IsLetter(body[0]) || stop > 20 && Lasting(body, stop);
        return stop > 12 && stop + 4 < body.Length && char.IsUpper(body[stop + 2]) && char.IsLower(body[stop + 3]) && char.IsLower(body[stop - 1]) && char.IsLower(body[stop - 2]) && char.IsLower(body[stop - 3]) && letter;
    }

    /// <summary>A figure in front that is no time, a time behind it before the stop, and a stop at the end.</summary>
    private static bool Lasting(string body, int stop) => char.IsAsciiDigit(body[0]) && body[^1] == '.' && Clock.At(body, 0, "de") is null && Clock.Tells(body[..stop], 3, "de");

    /// <summary>"45 Min. bei 175 °C": the figure in front is a time; "6 minute steaks" are counted.</summary>
    private static bool Lasts(string body, int end, string lang) => Reading.Clock.At(body, 0, lang) is not null && !(lang == "en" && Places.WordAt(body, Places.Skip(body, end), "minute"));

    /// <summary>"57C bath 75 min": a figure of heat opens the line; "2C flour" is two cups.</summary>
    private static bool Degrees(string body)
    {
        int i = 0;
        while (i < body.Length && char.IsAsciiDigit(body[i]))
        {
            i++;
        }

        return i is 2 or 3 && i < body.Length && body[i] is 'C' or 'F' && (body[0] >= '3' || i == 3) && (i + 1 == body.Length || !char.IsLetterOrDigit(body[i + 1]));
    }

    /// <summary>"Prep Time: 15 mins", "Temps de cuisson : 20 min": a head that tells times, and no food.</summary>
    private static bool Header(string body)
    {
        foreach (string w in FirstOfHeaders.May(body, 0) ? Headers : [])
        {
            if (body.StartsWith(w, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Serving(string body, string lang)
    {
        foreach (string w in FirstOfStatements.May(body, 0) ? Servers : [])
        {
            if (body.StartsWith(w, StringComparison.OrdinalIgnoreCase) && NumberBehind(body, w.Length, lang))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Brine: water 50 g + salt 4 g": a name and behind its colon amounts alone.</summary>
    private static bool Summed(string body, string lang)
    {
        int colon = body.IndexOf(':');
        return colon is > 2 and < 30 && body.IndexOf('+', colon) is > 0 and var plus && plus + 2 < body.Length && body[^1] != '.' && body.AsSpan(0, colon).IndexOfAnyInRange('0', '9') < 0 && Amounted(body[(colon + 1)..plus].Trim(), lang) && Amounted(body[(plus + 1)..].Trim(), lang);
    }

    /// <summary>True for a sentence of work: a verb of the trade, and the shape of a sentence.</summary>
    public static bool Work(string body, string lang) => (_work ??= new Recent(IsWork)).Of(body, lang);

    private static bool IsWork(string body, string lang)
    {
        if (body.Length < 60 && body[^1] != '.' && (IsPart(body, lang) || Summed(body, lang)))
        {
            return false;
        }

        if (body.Length < 12)
        {
            return lang == "ja" && body[^1] == '。';
        }

        if (body.Length < 60 && body[^1] != '.' && lang == "en" && Reading.Amounts.At(body, 0, lang) is null && Used(body, lang) && FoodIds.Match(body[..Places.WordEnd(body, 0)], lang) is not null)
        {
            // "Salt and white pepper, to taste"
            return false;
        }

        bool stops = body[^1] is '.' or '。' or '!' or ';';
        // "Cream cheese     700 g": the food begins like work.
        List<(int At, string Id)> verbs = Operations.In(body.Length > 300 ? body[..300] : body, lang);
        return Addressed.Orders(body, lang) || verbs.Count > 0 && (stops || (verbs[0].At <= Addressed.Behind(body) && body.Length > 25 && Reading.Amounts.At(body, 0, lang) is null && !Weighed(body, lang) && !MixedList.Opens(body, lang)));
    }

    /// <summary>"salt: 1.5% of butter weight": a share of a base behind a food everybody knows is as much of a list as a weight.</summary>
    private static bool Shared(string body, string lang, ref Draft? d) =>
        body.Length < 80 && body[^1] != '.' && body.IndexOf('%') > 3 && Shares.Behind(body, lang, d ??= new Draft(why: false)) is { Length: < 30 } food && d.Percent is not null && FoodIds.Match(food, lang) is not null;

    /// <summary>A food everybody knows, its weight or its share of a base behind it, and nothing else.</summary>
    private static bool Weighed(string body, string lang)
    {
        Draft? d = null;
        return Shared(body, lang, ref d) || char.IsLetterOrDigit(body[^1]) && body.Length < 60 && BackAmount.Take(body, lang, ref d) is { Length: < 30 } food && d?.Unit is { Kind: "mass" or "volume" } && FoodIds.Match(food, lang) is not null;
    }

    /// <summary>True when the first word is one of work: "blitz 70C 6 min", "brine 12 min".</summary>
    public static bool Opens(string body, string lang) => Operations.In(body.Length > 60 ? body[..60] : body, lang) is { Count: > 0 } verbs && verbs[0].At == 0;

    private static readonly WordList Orders = new("together", "bowl", "saucepan", "pan", "aside", "ensemble", "saladier", "casserole", "Schüssel", "zusammen", "Topf", "bol", "juntos", "ciotola", "insieme", "pentola");

    /// <summary>"Whisk together:", "In another bowl beat:": an order that leads into its list, and no name of a part. "Glaze:" is one.</summary>
    public static bool Order(string body, string lang) => body.Contains(' ') && Orders.In(body) && Operations.In(body, lang).Count > 0;

    /// <summary>True behind a list: two items, or one and words that open with work ("turbot x 8", "brine 8 % / 12 min").</summary>
    public static bool Behind(int items, string body, string lang) => items > 1 || items == 1 && Opens(body, lang);

    /// <summary>"zest of 1 orange, in strips": what is taken of a food, and no order to do it.</summary>
    private static bool IsPart(string body, string lang) => Lexicon.Longest("part", body, 0, 5, lang, out int end) is not null && PartReader.Of(body, Places.Skip(body, end), lang) is var of && of > Places.Skip(body, end) && Reading.Amounts.At(body, of, lang) is not null;

    /// <summary>True for words that tell a time and no amount: "set 6 h", "strain o/n".</summary>
    public static bool Timed(string body, string lang)
    {
        if (body.Length > 200 || !Degrees(body) && Reading.Amounts.At(body, 0, lang) is { Unit: not null })
        {
            return false;
        }

        return Clock.Tells(body, 1, lang) || body[^1] == '.' && Reading.Clock.At(body, 0, lang) is not null || Places.HasAny(body, "overnight", "o/n");
    }

    /// <summary>True for a line that may be a heading without saying so.</summary>
    public static bool Heading(string body) =>
        body.Length is > 1 and <= LongestHeading && body[^1] is not ('.' or ',' or ';' or '!' or '。') && !char.IsLower(body[0]) && char.IsLetter(body[0]) && body.Count(c => c == ' ') < 8 && !body.Contains('°');

    /// <summary>True when a bare line is a food everybody knows: "Salt" between two amounts is no heading.</summary>
    public static bool Food(string body, string lang) => FoodIds.Match(body, lang) is not null || Pair(body, lang) || Lexicon.Longest("use", body, Math.Max(0, body.LastIndexOf(' ') + 1), 2, lang, out _) is not null;

    /// <summary>"Salz und Pfeffer", "sal y aceite": two foods everybody knows, one of them salt or pepper, and nothing else. "Rice and peas" may name a part.</summary>
    private static bool Pair(string body, string lang) =>
        body.Length < 40 && Joins.IsSalt(body) && Conjunction.Spaced(lang) is var and && body.IndexOf(and, StringComparison.OrdinalIgnoreCase) is > 1 and var at && FoodIds.Match(body[..at], lang) is not null && FoodIds.Match(body[(at + and.Length)..], lang) is not null;

    /// <summary>"Salt to taste", "Öl zum Braten": an item without an amount, whatever stands under it.</summary>
    public static bool Used(string body, string lang)
    {
        for (int at = body.IndexOf(' '); at > 0; at = body.IndexOf(' ', at + 1))
        {
            if (Lexicon.Longest("use", body, at + 1, 4, lang, out int end) is not null && end >= body.Length)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True for a line in capitals throughout; the unit of "だし 2L" makes none.</summary>
    public static bool Capitals(string body) => body.Length is > 2 and <= LongestHeading && body.Count(char.IsUpper) is > 0 and var capitals && !body.Any(char.IsLower) && capitals * 2 >= body.Count(char.IsLetter);

    /// <summary>True for a sentence about yields, keeping or the plate.</summary>
    public static bool Statement(string body, string lang) => _foreseen?.Statement(body, lang) ?? (_statement ??= new Recent(IsStatement)).Of(body, lang);

    private static bool IsStatement(string body, string lang)
    {
        body = lang == "ja" ? KanjiAmounts.Plain(body) : body;
        if (CountLabels.Opens(body, lang) || SpokenYields.Opens(body, lang) || body.Length > 0 && char.IsAsciiDigit(body[0]) && ToldYields.Course(body, lang) is not null)
        {
            return true;
        }

        foreach (string w in FirstOfStatements.May(body, 0) ? Statements : [])
        {
            // "Pour half the sauce over it" is an order in English.
            if (body.StartsWith(w, StringComparison.OrdinalIgnoreCase) && (w.Length > 4 || w == "Hält" || NumberBehind(body, w.Length, lang) && !(w == "Pour" && lang == "en" && !Places.HasAny(body, "personnes", "pers", "couverts"))) && !(w.Length < 5 && One(body, w.Length + 1, lang)))
            {
                return true;
            }
        }

        foreach (string w in FirstOfKeepers.MayIn(body) ? Keepers : [])
        {
            int at = Places.FindWord(body, w);
            if (at >= 0 && !Warmed(body, at + w.Length) && (w is "keeps" or "haltbar" || body.AsSpan(at).IndexOfAnyInRange('0', '9') is >= 0 and < 20 and var figure && !Kept(body, at + figure, lang)) && !(body.IndexOf(':') is > 2 and < 30 and var label && label < at && Opens(body[(label + 1)..].TrimStart(), lang)))
            {
                return true;
            }
        }

        if (lang == "ja" && Named(body) && (Leaders.In(body) || body.IndexOf(' ') is > 0 and var gap && FoodIds.Match(body[..gap], lang) is not null))
        {
            // "卵黄…3個分", "卵黄 3個分" are lines of a list; "だし巻き卵 2本分" is a dish that tells its yield.
            return false;
        }

        return Header(body) || body.Contains("保存", StringComparison.Ordinal) || Servings(body, lang) || Told(body, lang) || Apart(body, lang);
    }

    /// <summary>"Pour une bonne ratatouille", "Für eine Sauce": an article, and nobody who eats behind it.</summary>
    private static bool One(string body, int at, string lang) => Numbers.Range(body, Places.Skip(body, at), lang) is { InWords: true, Min: 1 } n && !YieldWords.Guest(body[Places.Skip(body, n.End)..]) && !YieldWords.Form(body[Places.Skip(body, n.End)..Places.WordEnd(body, Places.Skip(body, n.End))]);

    /// <summary>"Keep warm in a 90 °C oven": work, and no storing.</summary>
    private static bool Warmed(string body, int at) => Places.WordAt(body, Places.Skip(body, at), "warm") || Places.WordAt(body, Places.Skip(body, at), "hot") || Places.WordAt(body, Places.Skip(body, at), "them warm") || Places.WordAt(body, Places.Skip(body, at), "it warm");

    /// <summary>"keep 100 ml of the milk": what is set aside, and no time.</summary>
    private static bool Kept(string body, int figure, string lang) => Reading.Amounts.At(body, figure, lang) is { Unit.Kind: "mass" or "volume" or "spoon" or "cup" } && Clock.At(body, figure, lang) is null;

    /// <summary>"Prep 10 min | Cook 50 min | Serves 4", "4 personas · 50 minutos", "Feeds four, generously.": a short line that tells the yield in another way.</summary>
    private static bool Told(string body, string lang)
    {
        if (body.Length is 0 or > 80 || body[0] is '(' or '【')
        {
            return false;
        }

        // "Strawberry consommé (yield 600 g)" is a name that tells its yield.
        if (body.IndexOf('(') > 1 && body[0] is not ('(' or '【'))
        {
            return false;
        }

        // "Pimento cheese - makes 1 gallon", likewise.
        if (body.IndexOf(" - ", StringComparison.Ordinal) is > 2 and var dash && char.IsLetter(body[0]) && YieldWords.In(body[..dash], default, lang) is null && !body[..dash].Contains(':') && body.AsSpan(0, dash).IndexOfAnyInRange('0', '9') < 0)
        {
            return false;
        }

        int bar = body.AsSpan().IndexOfAny('|', '·');
        bar = bar < 0 && char.IsAsciiDigit(body[0]) ? body.IndexOf(" - ", StringComparison.Ordinal) : bar;
        return bar > 0 && (Places.HasAny(body, "Serves", "Makes", "Prep", "Cook", "Pour", "Préparation", "Cuisson") || YieldWords.In(body[..bar].Trim(), default, lang) is not null) && !Reading.Amounts.At(body, 0, lang).HasValue
            || bar > 0 && YieldWords.In(body[..bar].Trim(), default, lang) is not null
            || !char.IsAsciiDigit(body[0]) && YieldWords.In(body, default, lang) is { } y && y.Amount > 0 && body.Count(' ') < 8 && !Portioned(body, lang);
    }

    /// <summary>"hake portions x10 (150g)": a food everybody knows that is bought in portions, and how many; "portions: 10" counts guests.</summary>
    private static bool Portioned(string body, string lang)
    {
        int space = body.IndexOf(' ');
        return space > 2 && body.IndexOfAny(['x', '×', '('], space) > 0 && !body.Contains(':') && FoodIds.Match(body[..space], lang) is not null;
    }

    /// <summary>"(8 portions, ragù can be frozen up to 3 months)": guests in brackets on a line of their own.</summary>
    private static bool Apart(string body, string lang) => body.Length is > 4 and < 120 && (body[0], body[^1]) is ('(', ')') && char.IsAsciiDigit(body[1]) && YieldWords.Guests(body[1..^1], lang);

    /// <summary>"だし巻き卵 2本分", "卵黄…3個分": a name, and behind it how many; "分量: 4人分" names nothing.</summary>
    private static bool Named(string body)
    {
        if (body.Length < 4 || !Places.IsJapanese(body[0]) || body[0] is '約' or '全' || body.EndsWith("人分", StringComparison.Ordinal) && !body.Contains(' ') || body.StartsWith("材料", StringComparison.Ordinal) || body.StartsWith("分量", StringComparison.Ordinal) || body.StartsWith("仕上がり", StringComparison.Ordinal) || body.StartsWith("出来上がり", StringComparison.Ordinal) || body.StartsWith("できあがり", StringComparison.Ordinal))
        {
            return false;
        }

        int gap = body.AsSpan().IndexOfAny(" …:・");
        return gap > 0 && (body[gap] == ' ' ? gap > 1 : true) && body.AsSpan(0, gap).IndexOfAnyInRange('0', '9') < 0;
    }

    /// <summary>"6 raciones", "4 portions", "27cm天板 1枚分", "4人分": a yield and nothing else.</summary>
    private static bool Servings(string body, string lang)
    {
        if (body.Length > 40)
        {
            return false;
        }

        // "4人分です。" tells it in a sentence.
        body = body.Length > 0 && body[^1] is '。' or 'す' ? body.TrimEnd('。') is var told && told.EndsWith("です", StringComparison.Ordinal) ? told[..^2] : told : body;
        // "だし巻き卵 2本分" is a name that tells its yield.
        bool named = Named(body);
        return !named && (body.EndsWith("人分", StringComparison.Ordinal) || body.EndsWith("台分", StringComparison.Ordinal) || body.EndsWith("枚分", StringComparison.Ordinal) || body.EndsWith("個分", StringComparison.Ordinal) || body.EndsWith("本分", StringComparison.Ordinal))
            || (Numbers.Range(body, 0, lang) is { } n && body[Places.Skip(body, n.End)..].TrimEnd('.') is "raciones" or "portions" or "servings" or "personnes" or "porzioni" or "Portionen" or "Personen" or "persone" or "personas" or "serves" or "people" or "covers" or "couverts");
    }

    private static bool NumberBehind(string body, int at, string lang) => at < body.Length && body[at] is ' ' or ':' && Numbers.Range(body, Places.Skip(body, at + 1), lang) is not null;
}
