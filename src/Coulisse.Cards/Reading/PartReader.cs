using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Reads one food with its amount: brackets first, then the amount at the front or at the end, then what stands after commas.</summary>
internal static class PartReader
{
    private static readonly System.Buffers.SearchValues<char> Figures = System.Buffers.SearchValues.Create("0123456789½¼¾⅓⅔/.");

    /// <summary>The brackets of a part without any: never added to.</summary>
    private static readonly List<string> None = [];

    /// <summary>The part's reading.</summary>
    public static Draft Read(string part, string lang, bool why = false)
    {
        Draft d = new(why);
        string s = part;
        if (lang == "ja" && JapanesePart.Reads(s))
        {
            return JapanesePart.Read(s, why);
        }

        s = KiloRates.Take(FrontMarks.Pointed(s, d), lang, d);
        List<string> brackets = s.Contains('(') ? [] : None;
        d.EachInBracket = FrontBracket(s);
        s = FrontMarks.Optional(s, lang, d);
        s = Shares.OnBracket(Brackets.Take(s, brackets), brackets);
        s = Labels.Take(FrontMarks.Plain(s, lang), lang, d);
        s = PartOf.Take(s, lang, d);
        // "De l'huile pour la friture", "Del sale": some of it, with no amount
        s = lang is "fr" or "it" && char.IsUpper(s.Length > 0 ? s[0] : ' ') && PartReader.Of(s, 0, lang) is var some and > 2 && some + 2 < s.Length ? s[some..] : s;
        s = Alternatives.Behind(s, lang, d);
        s = d.Percent is null ? Front(GluedUnits.Apart(s, lang), lang, d) : s;
        if (d.Amount is null && d.AmountMax is null && d.Percent is null)
        {
            s = Shares.Behind(UnitFirst.Take(s, lang, d), lang, d);
            s = d.Amount is null && d.Percent is null ? BakersRow.Take(BackAmount.Take(s, lang, d), lang, d) : s;
            s = d.Amount is null ? CountBehind.Take(s.TrimmedEnd(" ,.;"), lang, d) ?? BackAmount.Count(s.TrimmedEnd(" ,.;"), lang, d) ?? BackAmount.Counted(s, lang, d) ?? WorkBehind.Count(s, lang, d) ?? s : s;
        }

        s = brackets.Count == 0 ? EndWeight.Take(s, lang, d) : s;
        Tails.Read(Alternatives.OfSize(s, lang, d), lang, d);
        foreach (string b in brackets)
        {
            Brackets.Read(b, lang, d);
        }

        FoodWords.Tidy(d, lang);
        if (lang == "en" && d is { Amount: not null, Food.Length: > 5 } && d.Food.StartsWith("Of ", StringComparison.Ordinal))
        {
            // "Of best loaf sugar, one pound": as old books have it
            d.Food = d.Food[3..];
        }

        if (d is { Amount: null, AmountMax: null, Percent: null, Grams: null } && d.Food.Length > 0 && char.IsLetter(d.Food[0]) && d.Food.AsSpan().IndexOfAnyInRange('0', '9') > 0)
        {
            // "butter 200 g for the tin": the amount stood behind the food and before what was just taken off.
            d.Food = BackAmount.Take(d.Food, lang, d);
            d.Food = d.Amount is not null ? d.Food : CountBehind.Take(d.Food, lang, d) ?? (d.Food.LastIndexOf(' ') is > 1 and var space && FoodIds.Match(d.Food[..space], lang) is not null ? BackAmount.Count(d.Food, lang, d) : null) ?? d.Food;
        }

        return d;
    }

    /// <summary>"4 (6-oz) salmon fillets": what stands in brackets between the count and the food is of one.</summary>
    private static bool FrontBracket(string s)
    {
        int open = s.IndexOf('(');
        return open is > 0 and < 7 && s.AsSpan(0, open).TrimEnd().IndexOfAnyExcept(Figures) < 0 && s.IndexOf(')') is var close && close > open && close < s.Length - 2;
    }

    private static readonly WordList Drinks = new("beer", "stout", "ale", "lager", "cider", "wine", "cola", "lemonade", "soda", "tonic water", "sparkling water", "soda water");
    private static readonly string[] French = ["de la", "de l'", "des", "du", "de"];
    private static readonly string[] German = ["vom", "von"];
    private static readonly string[] Spanish = ["de la", "del", "de los", "de las", "de"];
    private static readonly string[] Italian = ["della", "dello", "dell'", "degli", "dei", "delle", "del", "di"];
    private static readonly string[] English = ["of the", "of"];

    /// <summary>End of "of", "de", "d'", "di" at a place; the place itself when there is none.</summary>
    public static int Of(string s, int i, string lang)
    {
        if (i < s.Length - 1 && s[i] is 'd' or 'D' && s[i + 1] == '\'')
        {
            return i + 2;
        }

        if (i >= s.Length || (s[i] | 0x20) is not ('d' or 'v' or 'o'))
        {
            return i;
        }

        foreach (string w in lang switch { "fr" => French, "de" => German, "es" => Spanish, "it" => Italian, _ => English })
        {
            if (w[^1] == '\'' ? s.AsSpan(i).StartsWith(w, StringComparison.OrdinalIgnoreCase) : Places.WordAt(s, i, w))
            {
                return Places.Skip(s, i + w.Length);
            }
        }

        return i;
    }

    /// <summary>The amount at the front and everything that hangs on it.</summary>
    private static string Front(string s, string lang, Draft d)
    {
        s = WholeOf.Take(s, d);
        if (s.StartsWith("the ", StringComparison.OrdinalIgnoreCase))
        {
            d.The = true;
            s = s[4..];
        }

        if (CanSizes.Take(s, lang, d) is { } afterCan)
        {
            return afterCan;
        }

        if (Shares.Percent(s, lang, d) is { } afterPercent)
        {
            return afterPercent;
        }

        if (Amounts.At(s, 0, lang) is not { } m)
        {
            return BareUnit(s, lang, d);
        }

        // "4 épices", "5 spice": the figure belongs to the name
        if (m is { Unit: null, Number: { Min: 4 or 5, Max: null } } && Places.Skip(s, m.End) is var named && (Places.WordAt(s, named, "épices") || Places.WordAt(s, named, "spice") || Places.WordAt(s, named, "spezie") || Places.WordAt(s, named, "especias")))
        {
            return s;
        }

        // "00 flour 500 g": a type, and no amount of nothing
        if (m.Unit is null && m.Number is { Min: 0, Max: null } && s[0] == '0' && m.End < s.Length && s[m.End] == ' ')
        {
            return s;
        }

        m = Millilitres(s, m, d);
        int i = m.End;
        // "7-grain flake mix", "2%": digits that belong to the food
        if (m.Unit is null && Places.Skip(s, i) is var sign && sign < s.Length && s[sign] == '%')
        {
            return s;
        }

        // "7up 330 ml": a figure grown into the name, where the amount stands behind; "2eggs" is a slip of the space
        if (m.Unit is null && i < s.Length && char.IsLetter(s[i]) && char.IsAsciiDigit(s[i - 1]) && s.AsSpan(i).IndexOfAnyInRange('0', '9') > 0 && BackAmount.Take(s, lang, new Draft(why: false)).Length < s.Length)
        {
            return s;
        }

        // "1 400 g tin": a count and the content of one
        if (m.Number.Spaced && m.Unit is { Kind: "mass" or "volume" } content && Container(s, Places.Skip(s, i), lang, out int ce) is { } box)
        {
            int space = s.IndexOf(' ');
            if (Numbers.Single(s[..space], 0, lang) is { } count && Numbers.Single(s, space + 1, lang) is { } each)
            {
                d.Amount = count.Min;
                d.Unit = box;
                Content(d, each.Min, content);
                return AfterUnit(s, ce, lang, d);
            }
        }

        // "a 5cm piece of ginger": one piece, and how long
        int inner = Places.Skip(s, i);
        if (m.Unit is null && m.Number is { InWords: true, Min: 1 } && inner < s.Length && char.IsAsciiDigit(s[inner]) && Amounts.At(s, inner, lang) is { Unit: { Kind: "length" } } length)
        {
            m = length;
            i = length.End;
        }

        Take(d, m, s);
        if (d.Unit is { Kind: "length" })
        {
            // "5 cm piece", "20cm length of kombu"
            int noun = Places.Skip(s, i);
            i = Lexicon.LongestUnit(s, noun, lang, out int pe) is { Unit: "piece" or "cube" or "stick" or "knob" or "thumb" } ? pe : Places.WordAt(s, noun, "length") ? noun + 6 : i;
        }

        i = Multiples.Take(s, i, lang, d);
        i = CompoundAmounts.Take(s, i, lang, d);
        i = Second(s, i, lang, d);
        i = d.Second is null ? i : Third(s, i, lang);
        return AfterUnit(s, i, lang, d);
    }

    private static string AfterUnit(string s, int i, string lang, Draft d)
    {
        if (lang == "en" && d is { Unit: null, Amount: > 0 and < 1 } && Places.Skip(s, i) is var article)
        {
            // "1/2 a small celeriac", "½ of a lemon"
            article = Places.WordAt(s, article, "of") ? Places.Skip(s, article + 2) : article;
            i = Places.WordAt(s, article, "a") ? article + 1 : Places.WordAt(s, article, "an") ? article + 2 : i;
        }

        i = FrontMarks.Hedged(s, Places.Skip(s, i), lang);
        // a container after a weight: "7 g sachet instant yeast" keeps the weight
        if (d.Unit is { Kind: "mass" or "volume" } && Container(s, i, lang, out int e) is not null && e < s.Length && PlainContainer(s, i, e))
        {
            // "12 oz bottle stout": of a drink ounces are fluid
            d.Unit = lang == "en" && d.Unit.Unit == "oz" && Drinks.In(s[e..]) ? Lexicon.Unit("floz", "en") ?? d.Unit : d.Unit;
            i = Places.Skip(s, e);
        }
        else if (d.Unit is { Kind: "container" or "count" } && BetweenOf(s, i, lang) is var content and > 0 && Amounts.At(s, content, lang) is { Unit.Kind: "mass" or "volume" } m)
        {
            // "2 boîtes de 425 g de fèves", "2 scatole da 230 g di ceci"
            Content(d, m.Number.Min, m.Unit!);
            i = Places.Skip(s, m.End);
        }

        if (lang == "fr" && d.Unit is { Unit: "tin" } && i + 3 < s.Length && char.IsAsciiDigit(s[i]) && s[i + 1] == '/' && char.IsAsciiDigit(s[i + 2]) && s[i + 3] == ' ')
        {
            // "1 boîte 4/4 de pois chiches": the size of the tin
            d.Graded(s[i..(i + 3)]);
            i = Places.Skip(s, i + 3);
        }

        if (lang is "fr" or "es" or "it" && Lexicon.Longest("cut", s, i, 1, lang, out int thick) is not null && Of(s, Places.Skip(s, thick), lang) > Places.Skip(s, thick))
        {
            // "8 tranches fines de jambon": how thick the slices are
            d.Graded(s[i..thick]);
            i = Places.Skip(s, thick);
        }

        int of = Of(s, i, lang);
        // "une gousse d'ail": the unit's word holds the food
        return d.Unit?.Unit == "clove" && lang == "fr" ? "ail " + s[Places.Skip(s, of)..] : s[Places.Skip(s, of)..];
    }

    private static bool PlainContainer(string s, int i, int end) => !s.AsSpan(i, end - i).StartsWith("pot", StringComparison.OrdinalIgnoreCase);

    private static int BetweenOf(string s, int i, string lang)
    {
        foreach (string w in (ReadOnlySpan<string>)["de", "da", "à", "à", "zu je", "je", "of", "zu"])
        {
            if (Places.WordAt(s, i, w))
            {
                return Places.Skip(s, i + w.Length);
            }
        }

        _ = lang;
        return 0;
    }

    /// <summary>Puts a measure into the draft.</summary>
    public static void Take(Draft d, Measure m, string s)
    {
        d.Amount = m.UpTo ? 0 : m.Number.Min;
        d.AmountMax = m.UpTo ? m.Number.Min : m.Number.Max;
        d.Unit = m.Unit;
        d.Fill = m.Fill;
        if (m.Size is not null)
        {
            d.Graded(m.Size);
        }

        d.Repaired |= m.Number.Repaired;
        if (m.Unit is { Kind: "dozen" })
        {
            d.Amount *= 12;
            d.AmountMax *= 12;
            d.Unit = null;
        }

        d.Tokens?.Add(new ReadToken(s[..Math.Min(m.Number.End, s.Length)].Trim(), "amount", System.FormattableString.Invariant($"{d.Amount}{(d.AmountMax is { } x ? System.FormattableString.Invariant($" to {x}") : "")}")));
        if (m.Unit is not null)
        {
            d.Tokens?.Add(new ReadToken(s[Math.Min(m.Number.End, m.End)..m.End].Trim(), "unit", m.Unit.Unit));
        }
    }

    /// <summary>"75 m vinegar": a lone m is no unit of a kitchen; ml is meant, and asked.</summary>
    private static Measure Millilitres(string s, Measure m, Draft d)
    {
        int i = Places.Skip(s, m.End);
        if (m.Unit is null && i + 1 < s.Length && s[i] == 'm' && s[i + 1] == ' ')
        {
            d.Milli = true;
            return m with { Unit = Lexicon.Unit("ml", "en"), End = i + 1 };
        }

        // "30 q yeast": print damage of g
        if (m.Unit is null && i + 1 < s.Length && s[i] == 'q' && s[i + 1] == ' ' && !m.Number.InWords)
        {
            return m with { Unit = Lexicon.Unit("g", "en"), End = i + 1, Number = m.Number with { Repaired = true } };
        }

        return m;
    }

    /// <summary>"pinch salt", "small handful rocket", "juice": a measure word with no number before it means one.</summary>
    private static string BareUnit(string s, string lang, Draft d)
    {
        int from = Lexicon.Longest("size", s, 0, 1, lang, out int size) is not null ? Places.Skip(s, size) : 0;
        if (from > 0 && Lexicon.LongestUnit(s, 0, lang, out _) is not null)
        {
            from = 0;
        }

        if (from == 0 && lang == "en" && Lexicon.Longest("fill", s, 0, 1, lang, out int full) is "generous" or "heaped" or "scant" && Lexicon.LongestUnit(s, Places.Skip(s, full), lang, out _) is { Kind: "word" })
        {
            // "good glug of oil", "generous pinch of salt"
            d.Fill = s[..full].ToLowerInvariant() is "good" ? "generous" : Lexicon.Longest("fill", s, 0, 1, lang, out _);
            (from, size) = (Places.Skip(s, full), 0);
        }

        if (Lexicon.LongestUnit(s, from, lang, out int end) is { } unit && end < s.Length && s[end] == ' ' && FrontMarks.MeansOne(s, end, unit, lang) && Lexicon.Longest("nounit", s, from, 4, lang, out _) is null && !Amounts.OnlyOf(s, from, end, unit, lang))
        {
            d.Amount = 1;
            d.Unit = unit;
            if (from > 0 && size > 0)
            {
                d.Graded(s[..size]);
            }

            return s[Places.Skip(s, Of(s, Places.Skip(s, end), lang))..];
        }

        return s;
    }

    /// <summary>What one pack holds, and so the weight of all.</summary>
    public static void Content(Draft d, double each, UnitWord unit, double? most = null)
    {
        if (unit is { Kind: "mass", Base: { } b })
        {
            d.PackGrams = each * b;
            d.Grams = d.Amount * each * b;
            // The most of all are the most pieces of the heaviest.
            d.GramsMax = most is null ? d.AmountMax * each * b : (d.AmountMax ?? d.Amount) * most * b;
        }

        d.Second ??= System.FormattableString.Invariant($"{each}{(most is null ? "" : System.FormattableString.Invariant($"-{most}"))} {unit.Unit} each");
        d.Tokens?.Add(new ReadToken(System.FormattableString.Invariant($"{each} {unit.Unit}"), "content of one", System.FormattableString.Invariant($"{d.Grams} g in all")));
    }

    /// <summary>"250g/9oz", "1 cup / 120 g", "9 oz = 250 g", "200 g ± 10 g": a second measure beside the first.</summary>
    private static int Second(string s, int i, string lang, Draft d)
    {
        int j = Places.Skip(s, i);
        if (j >= s.Length || s[j] is not ('/' or '=' or '±' or '|') || Amounts.At(s, j + 1, lang) is not { Unit: not null } m)
        {
            return i;
        }

        // "1kg/2lb 4oz": the second measure told in two units
        int tail = Places.Skip(s, m.End);
        if (m.Unit is { Unit: "lb" or "pint" } && tail < s.Length && char.IsAsciiDigit(s[tail]) && Amounts.At(s, tail, lang) is { Unit: { Unit: "oz" or "floz" } small } rest)
        {
            double share = small.Unit == "oz" ? rest.Number.Min / 16 : 0;
            m = m with { Number = m.Number with { Min = m.Number.Min + share }, End = rest.End };
        }

        string words = s[Places.Skip(s, j + 1)..m.End];
        if (s[j] == '±')
        {
            d.Tokens?.Add(new ReadToken(words, "tolerance", words));
            return m.End;
        }

        SecondMeasure(d, m, words);
        return m.End;
    }

    /// <summary>"225g / 8oz / 1 cup butter": a third measure says nothing new.</summary>
    private static int Third(string s, int i, string lang)
    {
        int j = Places.Skip(s, i);
        return j < s.Length && s[j] == '/' && Amounts.At(s, Places.Skip(s, j + 1), lang) is { Unit: not null } m ? m.End : i;
    }

    /// <summary>Keeps the second measure; the weight of the two is the one that binds.</summary>
    public static void SecondMeasure(Draft d, Measure m, string words)
    {
        d.Second ??= Tidy(m, words);
        // "9 oz (250 g)": of two masses that agree the metric one is exact, the other was rounded from it.
        bool exact = m.Unit is { Kind: "mass", Unit: "g" or "kg", Base: { } mb } && d.Unit is { Unit: "oz" or "lb", Base: { } db } && d.Amount is { } had && Math.Abs(had * db - m.Number.Min * mb) <= 0.05 * m.Number.Min * mb;
        if (m.Unit is { Kind: "mass", Base: { } b } && (d.Unit is null || d.Unit.Kind != "mass" || exact))
        {
            d.Grams = Math.Round(m.Number.Min * b, 4);
            d.GramsMax = m.Number.Max is { } x ? Math.Round(x * b, 4) : null;
        }

        d.Tokens?.Add(new ReadToken(words, "second measure", d.Second));
    }

    private static string Tidy(Measure m, string words) =>
        m.Number.Max is null && m.Unit is not null ? System.FormattableString.Invariant($"{Math.Round(m.Number.Min, 4)} {m.Unit.Unit}") : words.Trim();

    /// <summary>The container a word at a place names; null for none.</summary>
    public static UnitWord? Container(string s, int i, string lang, out int end) =>
        Lexicon.LongestUnit(s, i, lang, out end) is { Kind: "container" } unit ? unit : null;
}
