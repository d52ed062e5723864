using Coulisse.Cards.Checks;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What stands in round brackets: a second measure, an alternative, a size, a share, a pointer, a preparation.</summary>
internal static class Brackets
{
    /// <summary>Takes the brackets out of a line; one level, the rest stays as text.</summary>
    public static string Take(string s, List<string> into)
    {
        int open = s.IndexOf('(');
        if (open < 0)
        {
            return s;
        }

        System.Text.StringBuilder b = new(s.Length);
        int depth = 0;
        int start = 0;
        for (int i = 0; i < s.Length; i++)
        {
            char c = s[i];
            if (c == '(')
            {
                if (depth++ == 0)
                {
                    start = i + 1;
                }
            }
            else if (c == ')' && depth > 0)
            {
                if (--depth == 0 && into.Count < 8)
                {
                    into.Add(s[start..i].Trim());
                    b.Append(' ');
                }
            }
            else if (depth == 0)
            {
                b.Append(c);
            }
        }

        if (depth > 0)
        {
            into.Add(s[start..].Trim());
        }

        return b.ToString().Replace("  ", " ", StringComparison.Ordinal).Replace(" ,", ",", StringComparison.Ordinal).Trim();
    }

    /// <summary>Reads the words of one bracket into the draft.</summary>
    public static void Read(string words, string lang, Draft d)
    {
        if (d.Amount is { } all && (DividedUses.Told(words, lang) || (DividedShares.In(words, 0, lang, named: false) is { Amounts.Count: > 1 } shares && shares.Sum(d.Unit) is { } sum && DividedShares.Same(sum, all))))
        {
            // "100 g sugar (60 g for the cake, 40 g for the top)", "(60 g cake + 40 g top)": how it is divided, and no second measure
            d.Prepare(words);
            return;
        }

        foreach (string piece in Pieces(words))
        {
            One(piece, lang, d);
        }
    }

    private static IEnumerable<string> Pieces(string words)
    {
        // "Klasse L, ca. 190 g" are two facts; "1,5 dl" is one.
        int start = 0;
        for (int i = 0; i + 1 < words.Length; i++)
        {
            if ((words[i] == ',' && words[i + 1] == ' ') || words[i] == ';' || (words[i] == '-' && words[i + 1] == ' ' && i > 0 && words[i - 1] == ' ' && !char.IsAsciiDigit(words[Math.Max(0, i - 2)])))
            {
                yield return words[start..i].Trim();
                start = i + 1;
            }
        }

        yield return words[start..].Trim();
    }

    private static void One(string w, string lang, Draft d)
    {
        if (w.Length == 0)
        {
            return;
        }

        if (UnitAlone(w, lang, d))
        {
        }
        else if (Lexicon.Longest("optional", w, 0, 3, lang, out _) is not null)
        {
            d.Optional = true;
            d.Tokens?.Add(new ReadToken(w, "optional", "may be left out"));
        }
        else if (Alternatives.In(w, lang, d) || Pointers.In(w, d))
        {
        }
        else if (Lexicon.Longest("use", w, 0, 3, lang, out _) is { } use)
        {
            if (use == "divided")
            {
                d.Use ??= "divided";
            }
            else
            {
                d.Use = use;
            }
        }
        else if (Temperature(w, d))
        {
        }
        else if (Measured(w, lang, d))
        {
        }
        else if (w.Contains('%') || w.Contains("bloom", StringComparison.OrdinalIgnoreCase) || IsSize(w))
        {
            d.Graded(w);
            d.Tokens?.Add(new ReadToken(w, "grade", w));
        }
        else if (w.StartsWith("for ", StringComparison.OrdinalIgnoreCase) || (w.EndsWith('用') && !w.EndsWith("使用", StringComparison.Ordinal)))
        {
            d.Use = w;
        }
        else if (IsNamedGrade(w))
        {
            d.Graded(w);
            d.Tokens?.Add(new ReadToken(w, "grade", w));
        }
        else if (lang == "ja" && w.EndsWith('印'))
        {
            d.Tokens?.Add(new ReadToken(w, "brand", w));
        }
        else
        {
            // a part, what is done to it, a remark, or what the food is made of: kept and shown, as an allergen may stand in it
            d.Prepare(w);
        }
    }

    /// <summary>"2 baking powder (rounded teaspoons)", "2 cool cream (cartons of)": the unit was put behind the food.</summary>
    private static bool UnitAlone(string w, string lang, Draft d)
    {
        if (d.Unit is not null || d.Amount is null || w.Length > 30 || IsSize(w))
        {
            return false;
        }

        int i = 0;
        string? fill = Lexicon.Longest("fill", w, 0, 2, lang, out int fe);
        string? size = fill is null && Lexicon.Longest("size", w, 0, 1, lang, out int se) is not null ? w[..se] : null;
        i = fill is not null ? Places.Skip(w, fe) : size is not null ? Places.Skip(w, size.Length) : 0;
        if (Lexicon.LongestUnit(w, i, lang, out int end) is not { Kind: not ("length" or "count") } unit || PartReader.Of(w, Places.Skip(w, end), lang) < w.Length)
        {
            return false;
        }

        d.Unit = unit;
        d.Fill ??= fill;
        if (size is not null)
        {
            d.Graded(size);
        }

        d.Tokens?.Add(new ReadToken(w, "unit", unit.Unit));
        return true;
    }

    /// <summary>"gold", "Type 405", "T65", "W300": names of grades that decide weights or behaviour.</summary>
    private static bool IsNamedGrade(string w) => w.Length < 16 && ((w.StartsWith("No", StringComparison.OrdinalIgnoreCase) || w[0] == '#') && char.IsAsciiDigit(w[^1]) || w.ToLowerInvariant() is "gold" or "silver" or "bronze" or "platinum" or "titanium" || Places.WordAt(w, 0, "Type") || Places.WordAt(w, 0, "tipo")
        || (w.Length is 3 or 4 or 5 && w[0] is 'T' or 'W' && w.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0));

    /// <summary>True for a word of size: "Größe M", "US", "L".</summary>
    public static bool IsSize(string w) =>
        w.Length <= 14 && (Places.HasAny(w, "Größe", "Klasse", "Gr", "size", "taille", "calibre", "talla", "US") || w is "M" or "L" or "S" or "XL" or "medium" or "large" or "small" || Lettered(w));

    /// <summary>"Kl. L", "Kat. M", "cal. S", "Gew.-Kl. L": the letter of a size behind a word cut short.</summary>
    private static bool Lettered(string w) => w.IndexOf(' ') is > 1 and var gap && w[gap - 1] is '.' or 'l' && char.IsLetter(w[0]) && w[(gap + 1)..] is "S" or "M" or "L" or "XL";

    private static readonly WordList Felt = new("warm", "cold", "hot", "chilled", "tepid", "lukewarm", "cool", "fridge", "melted", "softened", "froid", "froide", "tiède", "chaud", "kalt", "kalte", "warme", "lauwarm", "frío", "fría", "tibia", "tibio", "freddo", "fredda", "tiepido", "tiepida");

    /// <summary>"55C", "at 30 C", and "4C" beside a word for warm or cold: degrees by their letter, where nobody means as many cups.</summary>
    private static bool Degrees(string w, Draft d)
    {
        int from = w.StartsWith("at ", StringComparison.OrdinalIgnoreCase) ? 3 : 0;
        int i = from;
        while (i < w.Length && i - from < 3 && char.IsAsciiDigit(w[i]))
        {
            i++;
        }

        if (i == from || i >= w.Length || w[^1] is not ('C' or 'F') || w.Length - i > 2 || w.Length - i == 2 && (w[i] != ' ' || from == 0))
        {
            return false;
        }

        int figure = int.Parse(w.AsSpan(from, i - from), System.Globalization.CultureInfo.InvariantCulture);
        return w[^1] == 'F' ? figure >= 30 : figure >= 15 || from > 0 || Felt.In(d.Food) || d.Preparation is { } told && Felt.In(told);
    }

    /// <summary>"28 °C", "soft (20 °C)".</summary>
    public static bool Temperature(string w, Draft d)
    {
        if (Degrees(w, d))
        {
            d.State = d.State is null ? w : d.State + ", " + w;
            d.Tokens?.Add(new ReadToken(w, "state", w));
            return true;
        }

        int deg = w.IndexOf('°');
        if (deg <= 0 || deg > 12 || !char.IsAsciiDigit(w[0]) && !w.StartsWith("à ", StringComparison.Ordinal) && !w.StartsWith("at ", StringComparison.Ordinal) && !w.StartsWith("a ", StringComparison.Ordinal) && !w.StartsWith("bei ", StringComparison.Ordinal))
        {
            return false;
        }

        d.State = d.State is null ? w : d.State + ", " + w;
        d.Tokens?.Add(new ReadToken(w, "state", w));
        return true;
    }

    private static readonly WordList Nets = new("net", "netto", "drained", "Abtropfgewicht", "égoutté", "neto", "escurrido", "sgocciolato", "正味");

    // A portion of meat or fish weighs more: common practice, no source.
    private const double LeastPortion = 50;
    private const double LeastFillet = 40;
    private static readonly WordList Fillets = new("fillet", "fillets", "leg", "legs", "thigh", "thighs", "cuisse", "cuisses", "filet", "filets", "Filet", "Filets", "Keule", "Keulen", "filete", "filetes", "muslo", "muslos", "filetto", "filetti", "coscia", "cosce");
    private static readonly WordList Little = new("anchovy", "anchovies", "sardine", "sardines", "sprat", "frog", "anchois", "grenouille", "Sardellen", "Sardinen", "anchoa", "anchoas", "boquerones", "sardinas", "acciughe", "alici", "sarde");
    private static readonly WordList Portions = new("portion", "portions", "steak", "steaks", "chop", "chops", "breast", "breasts", "pavé", "pavés", "Portion", "Portionen", "Steak", "Kotelett", "Koteletts", "ración", "raciones", "chuleta", "chuletas", "porzione", "porzioni", "trancio", "tranci");

    private static bool Measured(string w, string lang, Draft d)
    {
        string t = NetOfEach.Of(w);
        (bool from, bool weighedNet) = (false, false);
        foreach (string lead in (ReadOnlySpan<string>)["from ", "each ", "je ", "jeweils ", "à ", "á ", "da ", "@ ", "de ", "soit ", "entspricht ", "ou environ ", "circa ", "ca. ", "ca ", "environ ", "env. ", "unos ", "unas ", "aprox. ", "1切れ", "1個", "1枚", "各", "net ", "netto ", "net weight ", "drained weight ", "drained ", "Abtropfgewicht ", "Abtropfgewicht: ", "Füllmenge ", "poids net ", "poids égoutté ", "peso escurrido ", "peso neto ", "peso sgocciolato ", "正味", "約", "およそ"])
        {
            if (t.StartsWith(lead, StringComparison.OrdinalIgnoreCase))
            {
                from |= lead == "from ";
                weighedNet |= Nets.In(lead);
                t = t[lead.Length..].TrimStart();
                if (lead is "each " or "je " or "jeweils " or "à " or "á " or "da " or "@ " or "de " or "1切れ" or "1個" or "1枚" or "各" && Amounts.At(t, 0, lang) is { Unit: { Kind: "mass" } each } e)
                {
                    PartReader.Content(d, e.Number.Min, each, e.Number.Max);
                    return true;
                }

                break;
            }
        }

        t = FrontMarks.FigureFirst(t, lang);
        if (CompoundAmounts.At(t, 0, lang) is not { } m)
        {
            return false;
        }

        m = SameTwice.Of(t, m, lang) ?? m;
        string rest = t[Math.Min(m.End, t.Length)..].Trim();
        if (rest.StartsWith(':'))
        {
            // "2:1:1 onion, carrot, celery": how the parts stand to each other measures nothing
            return false;
        }

        if (rest.StartsWith('/') && Amounts.At(rest, 1, lang) is { Unit: { Kind: "mass", Base: { } rb } } drained)
        {
            // "400 g/240 g drained": gross is bought, drained is used
            d.PackGrams = m.Number.Min * (m.Unit?.Base ?? 1);
            d.Grams = (d.Amount ?? 1) * drained.Number.Min * rb;
            d.Bought = (d.Amount ?? 1) * d.PackGrams;
            d.Prepare(rest[drained.End..].Trim());
            return true;
        }

        if (rest.StartsWith('%') || rest.StartsWith('°'))
        {
            // "20 % fat": a grade, no second measure.
            return false;
        }

        if (m.Unit is null && d.Amount is null && rest.Length > 2 && Lexicon.LongestUnit(rest, 0, lang, out int named) is { Kind: "count" } part && named >= rest.Length)
        {
            // "garlic (4 cloves)", "parsley (3 sprigs)": at the end of a text the part counts like any unit.
            m = m with { Unit = part, End = t.Length };
            rest = "";
        }

        if (d.Amount is null && d.AmountMax is null && d.Percent is null && (m.Unit is { Kind: not "length" } || (m.Unit is null && rest.Length == 0)) && !m.Number.InWords && rest.Length < 60)
        {
            // "plain flour (125 g)", "barbecue sauce (1 bottle)": the only amount of the line.
            PartReader.Take(d, m, t);
            if (rest.Length > 0)
            {
                d.Prepare(rest[PartReader.Of(rest, 0, lang)..]);
            }

            return true;
        }

        if (m.Unit is null)
        {
            if (m.Number.InWords)
            {
                return false;
            }

            d.Second ??= w;
            return true;
        }

        double? grams = m.Unit is { Kind: "mass", Base: { } b } ? Math.Round(m.Number.Min * b, 4) : null;
        if (grams is { } bought && (from || Places.HasAny(rest, "to buy", "as bought", "whole", "unpeeled", "gross", "brutto", "brut")))
        {
            d.Bought = bought;
            d.Tokens?.Add(new ReadToken(w, "as bought", System.FormattableString.Invariant($"{bought} g to buy")));
            if (from && rest.Length > 2 && FoodIds.Match(rest, lang) is not null)
            {
                // "brown butter (from 130 g butter)": what it is made from is shown
                d.Prepare(w);
            }

            return true;
        }

        if (OfOne.In(rest))
        {
            PartReader.Content(d, m.Number.Min, m.Unit, m.Number.Max);
            return true;
        }

        if (grams is { } net && d.Unit is { Kind: "mass" } && (Places.HasAny(rest, "net", "netto", "trimmed", "peeled", "drained") || weighedNet && net < d.Amount * d.Unit.Base))
        {
            d.Bought = d.Amount * d.Unit.Base;
            d.Grams = net;
            d.Second = w;
            return true;
        }

        if (d.EachInBracket && d.Unit is null or { Kind: "count" } && m.Unit.Kind == "mass")
        {
            d.EachInBracket = false;
            PartReader.Content(d, m.Number.Min, m.Unit, m.Number.Max);
            if (rest.Length > 0 && FoodWords.IsPreparation(rest, lang))
            {
                d.Prepare(rest);
            }

            return true;
        }

        if (grams is { } small && d.Amount > 1 && d.Unit is null or { Kind: "count" } && Portions.In(d.Food) && small / d.Amount < LeastPortion && small >= LeastPortion)
        {
            // "10 hake portions (150 g)": nobody serves portions of 15 g
            PartReader.Content(d, m.Number.Min, m.Unit, m.Number.Max);
            return true;
        }

        // "10 hake fillets (150 g)": of one, or of all? Anchovies weigh so little.
        d.EachOrAll ??= grams is >= 100 and { } told && d.Amount > 1 && d.Unit is null or { Kind: "count" } && told / d.Amount < LeastFillet && Fillets.In(d.Food) && !Little.In(d.Food) && rest.Length == 0 ? t[..m.End].Trim() : null;

        // the content of a container: "3 Dosen (je 240 g)", "1 (400 g) tin", "2 (14 1/2-ounce) cans"
        if (d.Unit is { Kind: "container" } && grams is { } one && d.Amount is { } n)
        {
            double? whole = PartPacks.All(d, one, lang);
            d.PackGrams = whole is null ? one : Math.Round(one / n, 4);
            d.Grams = whole ?? n * one;
            d.GramsMax = null;
            d.Second ??= System.FormattableString.Invariant($"{m.Number.Min} {m.Unit.Unit}");
        }
        else if (m.Unit.Kind == "length")
        {
            d.Tokens?.Add(new ReadToken(w, "size", w));
        }
        else
        {
            PartReader.SecondMeasure(d, m, t[..m.End]);
        }

        if (rest.Length > 0 && FoodWords.IsPreparation(rest, lang))
        {
            d.Prepare(rest);
        }

        return true;
    }
}
