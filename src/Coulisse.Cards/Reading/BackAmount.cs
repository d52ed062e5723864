using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The amount behind the food: "egg yolk, 215 g", "Lieu jaune : 4 pavés de 140 g", "tuorli n. 4", "latte 250 g,".</summary>
internal static class BackAmount
{
    private static readonly System.Buffers.SearchValues<char> Marks = System.Buffers.SearchValues.Create(",:;.()/");

    /// <summary>Takes the amount off the end; gives what is left.</summary>
    public static string Take(string s, string lang, Draft d) => Take(s, lang, ref d!);

    /// <summary>The same; a draft is begun only where an amount is found.</summary>
    public static string Take(string s, string lang, ref Draft? d)
    {
        string t = s.TrimmedEnd(" ,.;");
        for (int i = 1; i < t.Length; i++)
        {
            bool starts = (char.IsAsciiDigit(t[i]) || Numbers.Vulgar(t[i]) > 0) && (!char.IsLetterOrDigit(t[i - 1]) || t[i - 1] is 'x' or '×' && i > 3 && t[i - 2] == ' ') && t[i - 1] is not ('.' or ',' or '/' or '°' or '-');
            bool numbered = t[i] is 'n' or 'N' && t[i - 1] == ' ' && i + 1 < t.Length && t[i + 1] is '.' or '°' or ' ' && lang == "it";
            // "Beef 14:00: take out" tells the hour.
            starts &= !(t[i - 1] == ':' && i > 1 && char.IsAsciiDigit(t[i - 2])) && !Hour(t, i);
            if (!starts && !numbered)
            {
                continue;
            }

            int at = i;
            if (numbered)
            {
                at = i + 1;
                while (at < t.Length && t[at] is '.' or '°' or ' ')
                {
                    at++;
                }

                if (at >= t.Length || !char.IsAsciiDigit(t[at]))
                {
                    continue;
                }
            }

            if (Amounts.At(t, at, lang) is not { } m || m.Unit is { Kind: "length" } || m.Unit is null && Pointers.Page(t.AsSpan(0, i)))
            {
                continue;
            }

            int end = Places.Skip(t, m.End);
            // Most figures close nothing: what follows is copied only where it is taken.
            ReadOnlySpan<char> rest = t.AsSpan(end);
            bool second = rest.Length > 3 && rest[0] == '/' && m.Unit is not null && Ends(rest[1..].TrimStart(' ').ToString(), lang);
            if (m.Unit is null or { Kind: "count" } && OfEach(rest) is var one and > 0 && t[end..] is var units && Amounts.At(units, one, lang) is { Unit.Kind: "mass" } each && i > 1)
            {
                // "Hake - 8 x 140 g portions", "Rostbraten 4 Stk à 180 g"
                d ??= new Draft(why: false);
                PartReader.Take(d, m, t);
                PartReader.Content(d, each.Number.Min, each.Unit);
                d.Prepare(units[each.End..]);
                return t[..i].TrimmedEnd(" ,:-=.");
            }

            if (m.Unit is { Kind: "mass" } weight && rest.Length > 1 && rest[0] is 'x' or '×' && rest[1..].TrimStart(' ').ToString() is var times && Numbers.Single(times, 0, lang) is { InWords: false } many && many.End >= times.Length)
            {
                // "Sole fillets 80/100 g × 10": what one weighs, and how many
                d ??= new Draft(why: false);
                d.Amount = many.Min;
                PartReader.Content(d, m.Number.Min, weight);
                d.GramsMax = m.Number.Max is { } most ? many.Min * most * weight.Base : null;
                return Without(t[..i]);
            }

            if (m.Size is null && !(m.Unit is null && PieceWord(rest)) && IsGrade(t, i, m, lang) || Degrees(t, i, m) || m.Unit is null && Clock.At(t, i, lang) is not null)
            {
                continue;
            }

            rest = m.Unit is not null && Share(rest) ? "" : rest;
            if (m.Unit?.Unit is "leaf" or "sheet" && rest.ToString().ToLowerInvariant() is "gold" or "silver" or "bronze" or "platinum" or "titanium")
            {
                // "gelatine, 6 leaves silver"
                d ??= new Draft(why: false);
                d.Graded(rest.ToString());
                rest = "";
            }

            bool aside = rest.StartsWith("- ", StringComparison.Ordinal) || m.Unit is { Kind: "mass" or "volume" } && Weighed(rest, t, end, lang) || WorkBehind.Tells(rest, m, lang) && FoodIds.Match(Without(FrontMarks.Unhedged(t[..i])), lang) is not null || WorkBehind.Jotted(t, i, m, rest, lang);
            bool heated = m.Unit is { Kind: "mass" or "volume" } && Degrees(rest) is { Length: > 1 } heat && Brackets.Temperature(heat.ToString(), new Draft(why: false));
            bool closes = heated || rest.Length > 4 && Uses.Begins(rest.ToString(), lang) || rest.Length == 0 || rest[0] is ',' or '(' or ';' || Each(rest) || second || aside;
            bool colon = i > 1 && t.AsSpan(0, i).TrimEnd() is { Length: > 0 } before && before[^1] == ':';
            if (!closes && !colon && !(m.Unit is null && PieceWord(rest)))
            {
                continue;
            }

            d ??= new Draft(why: false);
            PartReader.Take(d, m, t);
            bool equals = t.AsSpan(0, i).TrimEnd() is { Length: > 0 } lead && lead[^1] == '=';
            string food = Without(FrontMarks.Unhedged(t[..i]));
            // "Nori x 10 sheets"
            food = Multiplied(food) ? food[..^2].TrimEnd() : food;
            if (equals && m.Unit is { Kind: "mass", Base: { } b } && food.LastIndexOf(' ') is var gap and > 1 && int.TryParse(food.AsSpan(gap + 1), System.Globalization.CultureInfo.InvariantCulture, out int count) && count is > 0 and < 200)
            {
                // "Egg whites (L) 4 = 140g": the count, and what it weighs
                d.Grams = m.Number.Min * b;
                d.Amount = count;
                d.AmountMax = null;
                d.Unit = null;
                food = food[..gap].TrimEnd();
            }

            if (second)
            {
                d.Second = rest[1..].Trim().ToString();
                return food;
            }

            if (d.Unit is null && d.Grams is null && rest.Length > 0 && rest[0] == ',' && m.Number.Min >= 40 && !colon)
            {
                // "Chocolate - 300, chopped": nobody counts so many on a card; grams are taken, and asked.
                d.Unit = Lexicon.Unit("g", lang);
                d.Bare = true;
            }

            if (heated)
            {
                Brackets.Temperature(Degrees(rest).ToString(), d);
                return food;
            }

            if (aside)
            {
                d.Prepare(rest.TrimStart("- ").ToString());
                return food;
            }

            if (Each(rest))
            {
                rest = rest[(rest.IndexOf(' ') is var sp and > 0 ? sp : rest.Length)..];
            }
            else if (!closes)
            {
                Pieces(rest.ToString(), lang, d);
                rest = "";
            }

            // "Water: 300" in a list of grams is grams: asked, never assumed in silence.
            if (m.Unit is null && colon && d.Unit is null && d.Grams is null && rest.Length == 0 && m.Number.Min >= 20)
            {
                d.Unit = Lexicon.Unit("g", lang);
                d.Bare |= Typed(food) || m.Number.Min < 100 && !Poured(food, m.Number.Min, lang);
            }

            return rest.Length == 0 ? food : string.Concat(food, rest[0] == ',' ? "" : ", ", rest);
        }

        return s;
    }

    /// <summary>"eggs x 3", "uova 3", "sale un pizzico": a small bare count, or a measure in words, as the last words.</summary>
    public static string? Count(string t, string lang, Draft d)
    {
        int space = t.LastIndexOf(' ');
        if (space <= 1)
        {
            return null;
        }

        string last = t[(space + 1)..];
        bool parted = t[..space].TrimEnd() is { Length: > 0 } ahead && ahead[^1] is '-' or ':' or ',';
        string food = t[..space].TrimmedEnd(" ,:-");
        if (food.Length == 0 || Pointers.Page(t.AsSpan(0, space)))
        {
            return null;
        }

        if (last.Length is 2 or 3 or 4 && last.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0 && last[0] != '0' && int.Parse(last, System.Globalization.CultureInfo.InvariantCulture) is >= 40 and var grams && food.Count(' ') < 4 && (!Typed(food) || FlourTypes.None(food, grams, lang)) && (food[^1] == '%' || FlourTypes.Bare(food).IndexOfAnyInRange('0', '9') < 0))
        {
            // "butter 82% 340", "Sahne 600", "Bread flour 500": grams are meant where nothing else can be, and asked
            d.Amount = grams;
            d.Unit = Lexicon.Unit("g", "en");
            d.Bare = true;
            d.Tokens?.Add(new ReadToken(last, "amount", last + " g"));
            return food;
        }

        if (last[0] is 'x' or '×' or 'X' && last.Length is > 1 and < 4)
        {
            last = last[1..];
        }
        else if (food.EndsWith(" x", StringComparison.Ordinal) || food.EndsWith(" ×", StringComparison.Ordinal))
        {
            food = food[..^2].TrimEnd();
        }
        else if ((char.IsAsciiDigit(last[0]) || Numbers.Vulgar(last[0]) > 0) && (Words(food) > 2 && !parted && !Kept(food, lang) || Typed(food)))
        {
            return null;
        }

        if (last.Length is > 0 and < 4 && (char.IsAsciiDigit(last[0]) || Numbers.Vulgar(last[0]) > 0) && Numbers.Single(last, 0, lang) is { InWords: false, Repaired: false, Min: > 0 and <= 36 } n && n.End == last.Length && n.Min * 4 % 1 == 0 && !(last.Length > 1 && last[0] == '0' && char.IsAsciiDigit(last[1])))
        {
            // "uova 3", "gelatine leaves 4.5", "lemon ½"
            d.Amount = n.Min;
            d.Tokens?.Add(new ReadToken(last, "amount", last));
            return food;
        }

        int before = food.LastIndexOf(' ');
        if (before > 1 && Lexicon.Longest("num", t, before + 1, 1, lang, out _) is not null && Amounts.At(t, before + 1, lang) is { Unit: { Kind: "word" or "spoon" or "count" or "cup" } } m && m.End >= t.Length)
        {
            PartReader.Take(d, m, t);
            return t[..before].TrimmedEnd(" ,:");
        }

        return null;
    }

    /// <summary>True for a short name and a small count behind it, of whatever food: "Cabezas de carabinero 12". A list that tells its amounts last has such lines.</summary>
    public static bool Counts(string s, string lang) =>
        s.Length is > 4 and < 50 && char.IsLetter(s[0]) && char.IsAsciiDigit(s[^1]) && Count(s, lang, new Draft(why: false)) is { Length: > 2 } food && food.AsSpan().IndexOfAnyInRange('0', '9') < 0 && Words(food) < 4 && !food.AsSpan().ContainsAny(Marks) && !Places.HasAny(s, "gas", "gas mark", "mark", "Stufe", "th", "no", "nr") && !Layout.Looks.Statement(s, lang);

    /// <summary>True for a line that ends with an amount and its unit: "Gros sel 60 g".</summary>
    public static bool Unit(string s, string lang)
    {
        Draft d = new(why: false);
        return Take(s, lang, d) != s && d.Unit is not null && !d.Bare;
    }

    /// <summary>How many words a name has beside the small ones that bind them.</summary>
    private static int Words(string food)
    {
        int words = 1;
        for (int i = food.IndexOf(' '); i > 0; i = food.IndexOf(' ', i + 1))
        {
            int end = food.IndexOf(' ', i + 1);
            words += food.AsSpan(i + 1, (end < 0 ? food.Length : end) - i - 1) is "de" or "del" or "di" or "da" or "of" or "du" or "des" or "von" or "à" ? 0 : 1;
        }

        return words;
    }

    /// <summary>"cipolle 2, bruciate": a small count behind a name of one word, and what is done to it behind a comma.</summary>
    public static string? Counted(string s, string lang, Draft d)
    {
        int comma = s.IndexOf(", ", StringComparison.Ordinal);
        int space = comma < 0 ? -1 : s.IndexOf(' ');
        return space > 2 && space + 1 < comma && (FoodWords.IsPreparation(s[(comma + 2)..], lang) || WorkBehind.Only(s[(comma + 2)..], lang)) && (CountBehind.Take(s[..comma], lang, d) ?? (comma - space <= 3 && char.IsAsciiDigit(s[space + 1]) ? Count(s[..comma], lang, d) : null)) is { } food ? food + s[comma..] : null;
    }

    /// <summary>"Pears in syrup", "anchois à l'huile": a food everybody knows, and what it is kept in.</summary>
    private static bool Kept(string food, string lang)
    {
        int first = food.IndexOf(' ');
        int last = food.LastIndexOf(' ');
        ReadOnlySpan<char> between = food.AsSpan(first + 1, Math.Max(0, last - first - 1));
        return between is "in" or "au" or "aux" or "en" or "al" or "allo" or "sotto" && Liquors.In(food) && FoodIds.Match(food[..first], lang) is not null
            || food.IndexOf(" à l'", StringComparison.Ordinal) == first && Liquors.In(food) && FoodIds.Match(food[..first], lang) is not null;
    }

    private static readonly WordList Liquors = new("syrup", "oil", "brine", "water", "juice", "vinegar", "alcohol", "sirop", "huile", "saumure", "vinaigre", "Sirup", "Öl", "Lake", "Salzlake", "Essig", "Saft", "almíbar", "aceite", "salmuera", "vinagre", "sciroppo", "olio", "salamoia", "aceto");

    /// <summary>Names whose figure is a type or a place in a row.</summary>
    internal static bool Typed(string food) => Places.HasAny(food, "farine", "farina", "harina", "flour", "Mehl", "Weizenmehl", "Dinkelmehl", "Roggenmehl", "type", "Type", "grade", "size", "No", "NH", "day", "step", "part", "bloom");

    /// <summary>A food nobody counts, or one so light and fine that a small figure is its weight.</summary>
    private static bool Poured(string food, double n, string lang) => NeverCounted.Is(FoodIds.Match(food, lang), n) || NeverCounted.Poured(food, lang);

    private static bool Each(ReadOnlySpan<char> rest) => Opens(rest, "each", "pièce", "chacun", "circa") > 0;

    /// <summary>Length of the word that opens what follows; 0 when none of these does.</summary>
    private static int Opens(ReadOnlySpan<char> rest, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            if (rest.Length >= w.Length && (w.Length == rest.Length || !char.IsLetterOrDigit(rest[w.Length])) && rest.StartsWith(w, StringComparison.OrdinalIgnoreCase))
            {
                return w.Length;
            }
        }

        return 0;
    }

    /// <summary>True for an amount with its unit and nothing behind it.</summary>
    private static bool Ends(string rest, string lang) => Amounts.At(rest, 0, lang) is { Unit: not null } other && other.End >= rest.Length;

    /// <summary>The food without the marks before its amount; "olio e.v.o." keeps the stop of its abbreviation.</summary>
    private static string Without(string s)
    {
        string food = s.TrimmedEnd(" ,:-=|");
        return food.Length > 3 && food[^1] == '.' && food[^3] == '.' ? food : food.TrimmedEnd(" ,:-=.|");
    }

    /// <summary>"Nori x", "onion ×": the sign of times between a food and its amount.</summary>
    private static bool Multiplied(ReadOnlySpan<char> food) => food.Length > 3 && food[^1] is 'x' or '×' && food[^2] == ' ' && char.IsLetterOrDigit(food[^3]);

    private static bool Hour(string t, int i)
    {
        int colon = i + 1 < t.Length && char.IsAsciiDigit(t[i + 1]) ? i + 2 : i + 1;
        return colon + 2 < t.Length && t[colon] == ':' && t[colon + 1] is >= '0' and <= '5' && char.IsAsciiDigit(t[colon + 2]) && (colon + 3 == t.Length || !char.IsAsciiDigit(t[colon + 3]));
    }

    /// <summary>"1.5 kg peeled weight", "600g net", "800 g geputzt", "butter 60g soft": how it was weighed, or what is done to it, and nothing else.</summary>
    private static bool Weighed(ReadOnlySpan<char> rest, string t, int at, string lang)
    {
        if (rest.EndsWith(" weight", StringComparison.OrdinalIgnoreCase) && rest.Count(' ') == 1)
        {
            return true;
        }

        if (rest.Length < 12 && rest.ToString().ToLowerInvariant() is "net" or "netto" or "net weight" or "gross" or "brutto" or "brut" or "poids net" or "peso neto" or "peso netto" or "gewogen" or "soft" or "warm" or "wedges" or "cubes" or "strips" or "chunks" or "batons" or "coarse" or "fine" or "flakes" or "env" or "surg")
        {
            return true;
        }

        for (int i = at; i < t.Length; i = Places.Skip(t, i))
        {
            if (Lexicon.Longest("prep", t, i, 3, lang, out i) is null)
            {
                return false;
            }
        }

        return rest.Length > 2;
    }

    /// <summary>"100 %" behind the amount: the baker's share, which the amount already tells.</summary>
    private static bool Share(ReadOnlySpan<char> rest) => rest.Length is > 1 and < 9 && rest[^1] == '%' && char.IsAsciiDigit(rest[0]) && rest[..^1].TrimEnd() is var share && Numbers.Single(rest.ToString(), 0, "en") is { } n && n.End >= share.Length;

    /// <summary>Place behind the sign or word between a count and the weight of one; 0 when none stands there.</summary>
    private static int OfEach(ReadOnlySpan<char> rest)
    {
        bool sign = rest.Length > 2 && rest[0] is 'x' or '×' or 'X' or '@';
        int at = sign ? 1 : Opens(rest, "zu je", "à", "a", "je", "zu", "da", "de", "of");
        return at == 0 ? 0 : at + (rest.Length - at) - rest[at..].TrimStart(' ').Length;
    }

    private static bool PieceWord(ReadOnlySpan<char> rest) => Opens(rest, PieceWords) > 0;

    private static readonly string[] PieceWords = ["pavés", "filets", "gousse", "gousses", "Schote", "Schoten", "vaina", "vainas", "bacca", "bacche", "baccello", "baccelli", "pod", "pods", "filetto", "filetti", "filete", "filetes", "Filet", "Filets", "fillet", "fillets", "trancio", "tranci", "lomo", "lomos"];

    /// <summary>"@ 30C", "at 30 °C", "à 30 °C", "bei 30 °C": what stands behind the word, where nothing else does.</summary>
    private static ReadOnlySpan<char> Degrees(ReadOnlySpan<char> rest)
    {
        int at = rest.Length > 2 && rest[0] == '@' ? 1 : Opens(rest, "at", "à", "a", "bei", "mit");
        return at == 0 ? default : rest[at..].Trim();
    }

    private static void Pieces(string rest, string lang, Draft d)
    {
        // "4 pavés de 140 g"
        for (int i = 0; i < rest.Length; i++)
        {
            if (char.IsAsciiDigit(rest[i]) && Amounts.At(rest, i, lang) is { Unit: { Kind: "mass" } unit } each)
            {
                PartReader.Content(d, each.Number.Min, unit);
                return;
            }
        }

        d.Prepare(rest);
    }

    /// <summary>"45 min at 28C", "dough 26 C": a C behind "at" or "to", or behind more than anybody measures in cups, is no cup, and so is the small letter of "core 75c" and "retard o/n 4c"; "flour 2C" and "salt 4c" are.</summary>
    private static bool Degrees(string t, int i, Measure m) =>
        m.Unit?.Unit == "cup" && Places.Skip(t, m.Number.End) is var scale && scale < t.Length && (t[scale] == 'c' && scale == m.Number.End && (NoteHeats.TooMany(m.Number.Min) || NoteHeats.Cold(t, scale)) || t[scale] == 'C' && t.AsSpan(0, i).TrimEnd() is var lead && (m.Number.Min >= 20 || lead.EndsWith(" at", StringComparison.OrdinalIgnoreCase) || lead.EndsWith(" to", StringComparison.OrdinalIgnoreCase) || lead is [.., '@']));

    /// <summary>"35 %", "Type 812", "T65", "66 % cacao": figures that belong to the name.</summary>
    private static bool IsGrade(string t, int i, Measure m, string lang)
    {
        int next = Places.Skip(t, m.Number.End);
        if (next < t.Length && t[next] is '%' or '°')
        {
            return true;
        }

        if (m.Unit is not null)
        {
            return false;
        }

        ReadOnlySpan<char> before = t.AsSpan(0, i).TrimEnd();
        bool flour = before.EndsWith("Type", StringComparison.OrdinalIgnoreCase) || (m.Number.Min is >= 400 and <= 2000 && before.EndsWith("mehl", StringComparison.OrdinalIgnoreCase));
        // In running words a bare figure is a count only after a colon or comma or in the Italian way.
        _ = lang;
        return flour || !(before.Length > 0 && (before[^1] is ':' or ',' or '°' or '.' || before.EndsWith(" -", StringComparison.Ordinal)) || Multiplied(before)) && t[i] is not 'n';
    }
}
