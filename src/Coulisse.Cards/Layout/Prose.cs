using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A card told in sentences, with no list: the amounts are taken from the sentences, each of which stays a step.</summary>
internal static class Prose
{
    private const int Stretch = 512;

    /// <summary>A shorter card is cut before other cores would have begun.</summary>
    private const int FewestStretches = 8;
    private static readonly string[] Stops = ["and", "with", "for", "under", "in", "into", "over", "until", "mixed", "fried", "each", "by", "from", "on", "at", "to", "plus", "then", "while", "or", "well", "during", "overnight", "if you", "all", "a spoonful", "a little at a time", "a little", "bit by bit", "one at a time", "gradually", "peu à peu", "petit à petit", "nach und nach", "poco a poco", "un po' alla volta", "que", "che", "et", "avec", "dans", "pour", "puis", "jusqu'à", "pendant", "durant", "und", "mit", "für", "im", "in", "ein", "bis", "dann", "während", "über", "y", "con", "en", "para", "hasta", "durante", "toda", "e", "per", "poi", "fino", "nel", "in"];

    // "a pan" is bread in Spanish and kit in English.
    private static readonly WordList Kit = new("pan", "saucepan", "pot", "bowl", "tin", "dish", "tray", "plate", "jar", "lid", "sieve", "moule", "plat", "poêle", "casserole", "Topf", "Schüssel", "Pfanne", "Form", "molde", "sartén", "olla", "cazuela", "bandeja", "teglia", "pentola", "padella", "ciotola", "baking paper", "greaseproof paper", "parchment", "baking parchment", "foil", "tin foil", "cling film", "kitchen paper", "papier cuisson", "papier sulfurisé", "Backpapier", "Alufolie", "papel de horno", "papel vegetal", "carta forno", "carta da forno");

    private static readonly Beginnings FirstOfStops = new(Stops);

    /// <summary>True when sentences hold three amounts by weight or volume and no list was found.</summary>
    public static bool Is(List<Piece> pieces, string lang)
    {
        int amounts = 0;
        foreach (Piece p in pieces)
        {
            if (p.Kind == PieceKind.Item)
            {
                return false;
            }

            amounts += p.Kind is PieceKind.Paragraph or PieceKind.Step && amounts < 3 ? Math.Min(3, Foods(Reading.Marks.Strip(Folding.Line(p.Text)), lang).Count) : 0;
        }

        return amounts >= 3;
    }

    /// <summary>The pieces of such a card. A long one is cut on whatever cores there are: a sentence hangs on nothing but its own words.</summary>
    /// <param name="pieces">The pieces as laid out.</param>
    /// <param name="lang">The language.</param>
    /// <param name="foreseen">What is known of a long card's lines.</param>
    public static List<Piece> Cut(List<Piece> pieces, string lang, Foreseen? foreseen = null)
    {
        List<Piece>[] parts = new List<Piece>[(pieces.Count + Stretch - 1) / Stretch];
        if (parts.Length < FewestStretches)
        {
            return Cut(pieces, 0, pieces.Count, lang);
        }

        Parallel.For(0, parts.Length, i =>
        {
            using Looks.Known _ = Looks.Knowing(foreseen);
            parts[i] = Cut(pieces, i * Stretch, Math.Min(pieces.Count, (i + 1) * Stretch), lang);
        });
        List<Piece> result = new(parts.Sum(p => p.Count));
        Array.ForEach(parts, result.AddRange);
        return result;
    }

    private static List<Piece> Cut(List<Piece> pieces, int from, int to, string lang)
    {
        List<Piece> result = new(to - from);
        // A sentence that comes again is cut as it was before.
        Dictionary<(PieceKind, string), (int At, int Count)> cut = [];
        for (int i = from; i < to; i++)
        {
            Piece p = pieces[i];
            if (p.Kind is PieceKind.Paragraph or PieceKind.Step)
            {
                int at = result.Count;
                if (cut.TryGetValue((p.Kind, p.Text), out (int At, int Count) before))
                {
                    for (int k = before.At; k < before.At + before.Count; k++)
                    {
                        result.Add(result[k] with { Span = p.Span });
                    }
                }
                else
                {
                    Cut(p, lang, result);
                    cut[(p.Kind, p.Text)] = (at, result.Count - at);
                }
            }
            else
            {
                result.Add(p);
            }
        }

        return result;
    }

    internal static void Cut(Piece p, string lang, List<Piece> into)
    {
        foreach (string sentence in Full(Reading.Marks.Strip(Folding.Line(p.Text))))
        {
            List<string> foods = Foods(sentence, lang);
            if ((Looks.Statement(sentence, lang) || ToldYields.In(sentence, default, lang) is not null) && !(lang == "ja" ? foods.Count > 0 : foods.Count > 1 && Looks.Work(sentence, lang)) || Greetings.Closes(sentence) || Greetings.Leaves(sentence, lang) || Greetings.Begins(sentence) && foods.Count == 0)
            {
                into.Add(p with { Text = sentence });
                continue;
            }

            if (foods.Count > 0 && Name(sentence) is { } name)
            {
                into.Add(new Piece(PieceKind.Heading, name, p.Span, 2));
            }

            foreach (string food in foods)
            {
                into.Add(new Piece(PieceKind.Item, food, p.Span));
            }

            ProseServed.Add(sentence, lang, p.Span, into);
            into.Add(new Piece(foods.Count > 0 || Looks.Work(sentence, lang) || Looks.Opens(sentence, lang) || Baked(sentence, lang) || Lasting(sentence, lang) ? PieceKind.Step : PieceKind.Paragraph, sentence, p.Span));
        }
    }

    /// <summary>"Cuocete per un'ora.", "Laisse au frigo 4 h minimum.": in languages whose verbs bend, the time tells the work.</summary>
    private static bool Lasting(string sentence, string lang) => lang is "fr" or "de" or "es" or "it" && Reading.StepReader.Alone(sentence, lang, new Span(0, 0, 0)).Times.Length > 0;

    /// <summary>"170 (150 fan) for an hour and a quarter": a heat with its time is work without a verb.</summary>
    private static bool Baked(string sentence, string lang) => Reading.StepReader.Alone(sentence, lang, new Span(0, 0, 0)) is { Times.Length: > 0, Temperatures.Length: > 0 };

    /// <summary>"For the mackerel, …", "make the dressing: …", "The crumb is …": what the sentence makes.</summary>
    private static string? Name(string s)
    {
        foreach ((string opener, char[] ends) in (ReadOnlySpan<(string, char[])>)[("For the ", [',', ':']), ("make the ", [':']), ("The ", []), ("the ", [':'])])
        {
            int at = s.IndexOf(opener, StringComparison.Ordinal);
            if (at < 0 || at > 0 && (char.IsUpper(opener[0]) || opener.Length == 4 && Somewhere(s.AsSpan(0, at).TrimEnd())))
            {
                continue;
            }

            int from = at + opener.Length;
            int end = ends.Length > 0 ? s.AsSpan(from).IndexOfAny(ends) : s.AsSpan(from).IndexOf(" is ") is var verb and >= 0 ? verb : s.AsSpan(from).IndexOf(" are ");
            if (end is > 1 and < 40)
            {
                return s[from..(from + end)];
            }
        }

        return RunningText.NamedBy(s) ?? Label(s);
    }

    /// <summary>"as she told it on the phone: beat …": where, and no name.</summary>
    private static bool Somewhere(ReadOnlySpan<char> before)
    {
        foreach (string word in (ReadOnlySpan<string>)["on", "in", "at", "over", "by", "from", "to", "of", "off", "into", "with", "than", "under"])
        {
            if (Places.EndsIn(before, word))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Spätzle: 400 g Mehl, … schlagen": a short name before a colon.</summary>
    private static string? Label(string s) =>
        s.IndexOf(':') is > 2 and < 30 and var colon && char.IsUpper(s[0]) && s.AsSpan(0, colon).Count(' ') < 3 && s.AsSpan(0, colon).IndexOfAnyInRange('0', '9') < 0 && Sections.Of(s[..colon], "en") is null ? s[..colon].Trim() : null;

    /// <summary>"250 g gooseberries" for each weight or volume of the sentence; "110 g each" is no food.</summary>
    internal static List<string> Foods(string s, string lang)
    {
        if (lang == "ja")
        {
            return JapaneseProse.Foods(s);
        }

        List<string> found = [];
        string? last = null;
        for (int i = 0; i < s.Length; i++)
        {
            bool word = char.IsLetter(s[i]);
            if (!char.IsAsciiDigit(s[i]) && !word && Numbers.Vulgar(s[i]) == 0 || (i > 0 && s[i - 1] is not ' ' and not '(' and not '\''))
            {
                continue;
            }

            if (word && !(NumberBeginnings.May(s, i) && Numbers.Single(s, i, lang) is not null) && !Same(s, i, out _))
            {
                continue;
            }

            if (word && Same(s, i, out int other) && last is { } weight)
            {
                // "250 g butter, the same weight of sugar": told once, weighed twice
                string twin = Named(s, other, out int twinEnd);
                if (twin.Length > 1 && !Stopped(twin, 0))
                {
                    found.Add($"{weight} {twin}");
                    i = Math.Max(i, twinEnd - 1);
                    continue;
                }
            }

            // A weight in figures is no time; "trois quarts d'heure" is one, though a quart holds a litre.
            if (Reading.Amounts.At(s, i, lang) is not { } m || m.Unit is not ({ Kind: "mass" or "volume" or "spoon" or "cup" or "count" or "word" or "container" } or null) || (m.Number.InWords || m.Unit is not { Kind: "mass" or "volume" }) && Clock.At(s, i, lang) is not null)
            {
                continue;
            }

            if (m.Unit is { Kind: "count" } && s.AsSpan(i..m.End).Contains('\''))
            {
                // "3 gousses d'ail": the food stands in the word it is counted by.
                found.Add(s[i..m.End].Trim());
                i = m.End - 1;
                continue;
            }

            int told = Times(s, m, lang);
            if (m.Unit is { Kind: "mass" or "volume" } && WeightAside.Before(s, i, told) is { } aside)
            {
                found.Add($"{s[i..told].Trim()} {aside}");
                last = s[i..m.End].Trim();
                i = told;
                continue;
            }

            int from = PartReader.Of(s, Places.Skip(s, told), lang);
            string food = Named(s, from, out int end);
            food = lang == "de" ? Nouns(food) : food;
            // A bare count binds only a food everybody knows, or a kind of one ("3 cooking apples"): "5 minutes" is none. A slice or a sprig is counted of anything, unless it is cut into them.
            bool linked = from > Places.Skip(s, told);
            if (told == m.End && m.Unit is null or { Kind: "count" or "container" } && (Kit.In(food) || !Known(food, lang) && !(m.Unit is not null && linked && !Into(s, i)) && !(m.Unit is null && !m.Number.InWords && food.Length > 3 && Taken.Before(s, i)) || m.Unit is { Kind: "container" } && !linked && lang is not "de"))
            {
                i = word ? Places.WordEnd(s, i) - 1 : i;
                continue;
            }

            if (m.Unit is null && Weighing(s, from, ref end, lang) is { } weighed)
            {
                // "1 gallina de 1,8 kg": the weight of what is counted, and no other food
                found.Add($"{s[i..told].Trim()} {weighed}");
                i = Math.Max(i, end - 1);
                continue;
            }

            if (food.Length > 1 && !Stopped(food, 0))
            {
                found.Add($"{s[i..told].Trim()} {food}");
                last = m.Unit is { Kind: "mass" } ? s[i..m.End].Trim() : last;
            }

            i = Math.Max(i, end - 1);
        }

        return found;
    }

    /// <summary>"cut into 4 slices", "en 8 rodajas": what is made of it, and no food.</summary>
    private static bool Into(string s, int at) => Places.Ends(Folding.Lower(s.AsSpan(Math.Max(0, at - 6), Math.Min(6, at)).ToString()).TrimEnd(), "into", "in", "en", "into the", "a", "zu");

    /// <summary>"gallina (1,8 kg)" of "gallina de 1,8 kg"; null where no weight stands right behind the name.</summary>
    private static string? Weighing(string s, int from, ref int end, string lang)
    {
        string name = s[from..end].Trim();
        int of = name.LastIndexOf(' ');
        if (of < 2 || name[(of + 1)..] is not ("de" or "di" or "da" or "von" or "of" or "zu" or "à") || end >= s.Length || !char.IsAsciiDigit(s[end]) || Reading.Amounts.At(s, end, lang) is not { Unit.Kind: "mass" } m)
        {
            return null;
        }

        string weight = s[end..m.End].Trim();
        end = m.End;
        return $"{name[..of]} ({weight})";
    }

    /// <summary>End of "2 x 2.5kg tins": a count, what one holds, and the vessel; else of the amount itself.</summary>
    private static int Times(string s, Reading.Measure m, string lang)
    {
        int x = Places.Skip(s, m.End);
        if (m.Unit is not null || x + 2 >= s.Length || s[x] is not ('x' or '×') || Reading.Amounts.At(s, Places.Skip(s, x + 1), lang) is not { Unit.Kind: "mass" or "volume" } each)
        {
            return m.End;
        }

        int vessel = Places.Skip(s, each.End);
        return Lexicon.LongestUnit(s, vessel, lang, out int end) is { Kind: "container" } ? end : each.End;
    }

    /// <summary>A food everybody knows, also as old books and German grammar bend it: "whites of egg", "mit 3 Eiern".</summary>
    private static bool Known(string food, string lang) =>
        FoodIds.Match(food, lang) is not null || Compounds.Known(food, lang)
        || food.IndexOf(' ') > 2 && Worked(food, lang)
        || lang == "de" && food.Length > 4 && food[^1] == 'n' && FoodIds.Match(food[..^1], lang) is not null
        || lang == "en" && food.LastIndexOf(' ') is > 0 and var space && FoodIds.Match(food[(space + 1)..], lang) is not null
        || lang == "en" && (food.StartsWith("whites of egg", StringComparison.OrdinalIgnoreCase) || food.StartsWith("yolks of egg", StringComparison.OrdinalIgnoreCase));

    /// <summary>"œufs battus", "chillies sliced": a food everybody knows and what is done to it, as it is told behind the noun.</summary>
    private static bool Worked(string food, string lang)
    {
        for (int gap = food.IndexOf(' '); gap > 2; gap = food.IndexOf(' ', gap + 1))
        {
            if (WorkBehind.Only(food[(gap + 1)..], lang) && FoodIds.Match(food[..gap], lang) is not null)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Zucker zugeben", "Butter schmelzen": a German food ends with its noun; the small words behind it are what is done.</summary>
    private static string Nouns(string name)
    {
        for (int gap = name.LastIndexOf(' '); gap > 0 && char.IsUpper(name[0]) && char.IsLower(name[gap + 1]); gap = name.LastIndexOf(' '))
        {
            name = name[..gap].TrimEnd();
        }

        return name;
    }

    /// <summary>The name at a place, up to a word or sign that ends one.</summary>
    private static string Named(string s, int from, out int end)
    {
        end = from;
        while (end < s.Length && (char.IsLetter(s[end]) || s[end] is ' ' or '-' or '\'') && !Stopped(s, end))
        {
            end++;
        }

        return s[from..end].Trim();
    }

    private static readonly string[] Sames = ["same weight of", "same amount of", "same quantity of", "equal weight of", "même poids de", "même quantité de", "gleiche Menge", "mismo peso de", "misma cantidad de", "stesso peso di", "stessa quantità di"];
    private static readonly Beginnings FirstOfSames = new(Sames);

    private static bool Same(string s, int at, out int end)
    {
        foreach (string w in FirstOfSames.May(s, at) ? Sames : [])
        {
            if (Places.WordAt(s, at, w))
            {
                end = Places.Skip(s, at + w.Length);
                return true;
            }
        }

        end = at;
        return false;
    }

    /// <summary>True where a word stands that ends the name of a food.</summary>
    private static bool Stopped(string s, int at)
    {
        foreach (string w in (at == 0 || !char.IsLetterOrDigit(s[at - 1])) && FirstOfStops.May(s, at) ? Stops : [])
        {
            if (Places.WordAt(s, at, w))
            {
                return true;
            }
        }

        return false;
    }

    internal static IEnumerable<string> Full(string s)
    {
        int start = 0;
        for (int i = 0; i < s.Length; i++)
        {
            if (s[i] is '.' or '。' && (i + 1 == s.Length || s[i + 1] == ' ' || s[i] == '。') || s[i] is '!' or '?' && i + 2 < s.Length && s[i + 1] == ' ' && char.IsUpper(s[i + 2]))
            {
                yield return s[start..(i + 1)].Trim();
                start = i + 1;
            }
        }

        if (s[start..].Trim() is { Length: > 0 } rest)
        {
            yield return rest;
        }
    }
}
