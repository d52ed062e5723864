using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Takes from a food's words what is not its name: size, preparation, purpose, temperature, maker.</summary>
internal static class FoodWords
{
    private static readonly string[] Cuts = [" in discs", " in dice", " in slices", " in cubes", " in strips", " in drops", " in pieces", " and juice of", " and the juice of", " and zest of", " mixed with", " dissolved in", " slaked in", " slaked with", " mixed in", " let down with", " the size of ", " about the size of ", " gros comme ", " grosse comme ", " del tamaño de ", " grande come ", " von der Größe ", " in der Größe ", " beaten with", " soaked in", " whisked with", " melted with", " blended with", " tossed in", " studded with", " stuck with", " diluted in", " left over from", " cut in", " cut into", " in "];
    private static readonly Beginnings FirstOfCuts = new(Cuts.Select(c => c.TrimStart()));
    private static readonly string[] Eaches = [" @ ", " at ", " de ", " à ", " da ", " of about ", " of ", " je ", " zu je ", " zu ", " about "];
    private static readonly Beginnings FirstOfEaches = new(Eaches.Select(c => c.TrimStart()));
    private static readonly string[] Halves = [" e mezzo", " e mezza", " y medio", " y media", " et demi", " et demie", " and a half"];

    // What is done to these makes another food, sold by that name.
    private static readonly string[] Named = ["pan rallado", "queso rallado", "prosciutto cotto", "prosciutto crudo", "jamón cocido", "jamón york", "jambon cuit", "jambon cru", "lardo salato", "mosto cotto", "vino cotto", "crème brûlée", "lait entier", "lait cru", "panna cotta", "dulce de leche", "pomodori pelati", "pomodoro pelato", "pane grattugiato", "lait concentré", "lait fermenté", "leche condensada", "leche evaporada", "latte condensato"];
    private static readonly string[] Meats = ["beef", "pork", "lamb", "veal", "turkey", "chicken", "meat", "mutton", "venison", "rice"];

    /// <summary>Leaves the name as written and puts the rest where it belongs.</summary>
    public static void Tidy(Draft d, string lang)
    {
        string f = Places.Bare(d.Food);
        d.Food = f;
        EachWeight(d, lang);
        Alternatives.Split(d, lang);
        Alternatives.Slashed(d, lang);
        Examples.Take(d);
        Uses.TakeFrom(d, lang);
        AmountWords(d, lang);
        TemperatureTail(d, lang);
        Cut(d);
        Attached.Take(d, lang);
        Qualities.Take(d, lang);
        Front(d, lang);
        Back(d, lang);
        WorkBehind.OffName(d, lang);
        Makers.Take(d, lang);
        d.Food = Places.Bare(d.Food).Trim('/');
        d.Food = d.Food.Contains("  ", StringComparison.Ordinal) ? string.Join(' ', d.Food.Split(' ', StringSplitOptions.RemoveEmptyEntries)) : d.Food;
        Footnote(d);
        AndHalf(d);
        CountedParts.Name(d, lang);
        if (d.Unit is null && d.Amount is not null && (d.Food.StartsWith("garlic clove", StringComparison.OrdinalIgnoreCase) || d.Food.StartsWith("cloves garlic", StringComparison.OrdinalIgnoreCase)))
        {
            d.Unit = Lexicon.Unit("clove", "en");
            d.Food = "garlic";
        }

        if (d.Food.Length > 0)
        {
            d.Tokens?.Add(new ReadToken(d.Food, "food", d.Food));
        }

        Alternatives.Complete(d, lang);
        if (d.Amount is null && d.AmountMax is null)
        {
            d.Unit = null;
        }
    }

    /// <summary>"1 cipolla e mezza", "1 cebolla y media", "1 lemon and a half".</summary>
    private static void AndHalf(Draft d)
    {
        if (d.Amount is not { } n || d.AmountMax is not null || d.Unit is not null || n != Math.Floor(n))
        {
            return;
        }

        foreach (string half in Halves)
        {
            if (d.Food.Length > half.Length + 1 && d.Food.EndsWith(half, StringComparison.OrdinalIgnoreCase))
            {
                d.Amount = n + 0.5;
                d.Food = d.Food[..^half.Length];
                return;
            }
        }
    }

    /// <summary>True when words say what is done to a food.</summary>
    public static bool IsPreparation(string w, string lang)
    {
        for (int i = 0, n = 0; i < w.Length && n < 4; n++)
        {
            if (Lexicon.Longest("prep", w, i, 2, lang, out _) is not null)
            {
                return true;
            }

            i = Places.Skip(w, Places.WordEnd(w, i));
        }

        return lang == "en" && (w.EndsWith("ed", StringComparison.Ordinal) || w.Contains("ed ", StringComparison.Ordinal) || w.StartsWith("in ", StringComparison.Ordinal) || w.StartsWith("cut ", StringComparison.Ordinal) || w.EndsWith("dice", StringComparison.Ordinal));
    }

    /// <summary>"4 filets de rouget de 70/80 g pièce", "6 Schweinebäckchen à 90 g", "4 triglie da 180 g l'una", "3 Becher Schmand à 200 g".</summary>
    private static void EachWeight(Draft d, string lang)
    {
        bool held = d.Unit is { Kind: "container" };
        if (d.Amount is null || !held && d.Unit is not (null or { Kind: "count" }))
        {
            return;
        }

        foreach (string w in FirstOfEaches.MayIn(d.Food) ? Eaches : [])
        {
            int at = d.Food.LastIndexOf(w, StringComparison.OrdinalIgnoreCase);
            if (at > 0 && Amounts.At(d.Food, at + w.Length, lang) is { Unit: { } unit } m && m.Number is { InWords: false } && (unit.Kind == "mass" || held && unit.Kind == "volume"))
            {
                if (held && (m.End < d.Food.Length && !OfOne.Closes(d.Food[m.End..]) || w == " about "))
                {
                    // "2 packs of crackers to 200 g cheese": the weight is of another food; "2 tins tomatoes about 800 g" may be of both.
                    return;
                }

                PartReader.Content(d, m.Number.Min, unit, m.Number.Max);
                d.Food = d.Food[..at];
                return;
            }
        }
    }

    /// <summary>"Sal y pimienta al gusto", "pepe q.b.", "Fleur de sel, quelques grains".</summary>
    private static void AmountWords(Draft d, string lang)
    {
        // "water as needed (about 120 g)": where an amount is told too, only words behind the food are no part of it.
        bool told = d.Amount is not null;
        int i = 0;
        while (i < d.Food.Length)
        {
            if (Lexicon.Longest("use", d.Food, i, 3, lang, out int end) is { } use && (i > 0 || end < d.Food.Length) && (end >= d.Food.Length - 1 || i == 0) && !(told && (i == 0 || end < d.Food.Length)))
            {
                if (i == 0 && Lexicon.LongestUnit(d.Food, Places.Skip(d.Food, end), lang, out int unit) is { Kind: "word" or "count" } && (PartReader.Of(d.Food, Places.Skip(d.Food, unit), lang) > Places.Skip(d.Food, unit) || (lang == "de" || lang == "en" && d.Food[unit - 1] == 's') && unit + 2 < d.Food.Length && d.Food[unit] == ' '))
                {
                    // "a few drops of vanilla", "a few sprigs thyme", "quelques brins de thym"
                    use = d.Food[..unit];
                    end = unit;
                }

                d.Use = use;
                d.Fronted = i == 0;
                d.Tokens?.Add(new ReadToken(d.Food[i..end], "use", use));
                d.Food = i == 0 ? d.Food[PartReader.Of(d.Food, Places.Skip(d.Food, end), lang)..].Trim() : d.Food[..i].TrimmedEnd(" ,");
                return;
            }

            i = Places.Skip(d.Food, Places.WordEnd(d.Food, i));
        }

        foreach (string opt in (ReadOnlySpan<string>)["extra "])
        {
            if (!told && d.Food.StartsWith(opt, StringComparison.OrdinalIgnoreCase) && d.Use is not null)
            {
                d.Food = d.Food[opt.Length..];
            }
        }
    }

    /// <summary>"water at 38 °C", "eau à 27 °C", "agua a 24 °C".</summary>
    private static void TemperatureTail(Draft d, string lang)
    {
        int deg = d.Food.IndexOf('°');
        if (deg < 0 && d.Food.IndexOf(" @ ", StringComparison.Ordinal) is > 2 and var sign && Brackets.Temperature(d.Food[(sign + 3)..], d))
        {
            // "water @ 30C"
            d.Food = d.Food[..sign];
            return;
        }

        if (deg < 3 || deg + 1 < d.Food.Length && d.Food[deg + 1] == 'B')
        {
            // 30 °B is how thick a syrup is.
            return;
        }

        int i = deg - 1;
        while (i > 0 && (char.IsAsciiDigit(d.Food[i]) || d.Food[i] is ' ' or '.' or ',' or '-'))
        {
            i--;
        }

        int word = d.Food.LastIndexOf(' ', Math.Max(i - 1, 0));
        string joint = d.Food[(word + 1)..(i + 1)].Trim();
        if (joint is "at" or "@" or "à" or "a" or "bei" or "mit" or "de" or "about")
        {
            d.State = d.Food[(i + 1)..].Trim();
            d.Tokens?.Add(new ReadToken(d.State, "state", d.State));
            d.Food = d.Food[..Math.Max(word, 0)].TrimEnd();
        }

        _ = lang;
    }

    /// <summary>"kohlrabi in discs of 60 mm": the cut is preparation.</summary>
    private static void Cut(Draft d)
    {
        foreach (string w in d.Food.Contains(' ') && FirstOfCuts.MayIn(d.Food) ? Cuts : [])
        {
            int at = d.Food.IndexOf(w, StringComparison.OrdinalIgnoreCase);
            if (at > 0 && (w.Length > 4 || at + 4 < d.Food.Length && char.IsAsciiDigit(d.Food[at + 4])))
            {
                d.Prepare(d.Food[at..]);
                d.Food = d.Food[..at];
                return;
            }
        }
    }

    private static void Front(Draft d, string lang)
    {
        // "huevos M": a size letter behind a counted food
        int letter = d.Food.LastIndexOf(' ');
        if (letter > 0 && d.Unit is null && d.Amount is not null && d.Food[(letter + 1)..] is "S" or "M" or "L" or "XL")
        {
            d.Graded(d.Food[(letter + 1)..]);
            d.Food = d.Food[..letter];
            int word = d.Food.LastIndexOf(' ');
            if (word > 0 && d.Food[(word + 1)..].TrimEnd('.') is "Gr" or "Größe" or "Grösse" or "Kl" or "Klasse" or "size" or "taille" or "calibre" or "talla" or "tamaño" or "taglia")
            {
                // "3 Eier Gr. M"
                d.Food = d.Food[..word].TrimEnd(',');
            }
        }

        for (int guard = 0; guard < 6; guard++)
        {
            string f = d.Food;
            if (Lexicon.Longest("size", f, 0, 2, lang, out int size) is not null && size < f.Length && d.Amount is not null && d.Unit is null or { Kind: "count" })
            {
                d.Graded(f[..size]);
                d.Food = f[size..].TrimStart();
                continue;
            }

            if (Lexicon.Longest("prep", f, 0, 2, lang, out int end) is null && !Manner.Worked(f, lang, out end) || end >= f.Length || f[end] is not (' ' or ',') || lang is "fr" or "es" or "it" || Tinned(d, f[..end]))
            {
                if (d.Preparation is not null && AndWord(f, lang) is var joint and > 0) { d.Food = f[joint..]; continue; }
                return;
            }

            string word = f[..end];
            string rest = f[end..].TrimmedStart(" ,");
            if (word.Equals("ground", StringComparison.OrdinalIgnoreCase) && Places.HasAny(rest, Meats) || word.ToLowerInvariant() is "ground" or "flaked" && Places.HasAny(rest, "almonds", "hazelnuts", "almond") || rest.Length < 2 || word.Equals("hot", StringComparison.OrdinalIgnoreCase) && Places.HasAny(rest, "sauce", "chocolate"))
            {
                return;
            }

            d.Prepare(word);
            d.Food = rest;
        }
    }

    /// <summary>"1 tin chopped tomatoes", "1 bote de garbanzos cocidos": what is done to a food before it comes into the tin is part of its name; draining it is the cook's work.</summary>
    private static bool Tinned(Draft d, string word) => d.Unit?.Unit is "tin" or "jar" && !Places.HasAny(word, "drained", "rinsed", "washed", "warm", "cold", "hot", "abgetropft", "abgetropfte", "gespült", "égouttés", "égouttées", "égoutté", "égouttée", "rincés", "rincées", "escurridos", "escurridas", "escurrido", "escurrida", "lavados", "enjuagados", "scolati", "scolate", "sgocciolati", "sgocciolate", "sgocciolato", "sciacquati");

    /// <summary>End of "and" between two works: "gehackte und gemahlene Haselnüsse"; 0 when the food does not begin so.</summary>
    private static int AndWord(string f, string lang)
    {
        string and = lang == "de" ? "und " : "and ";
        return f.StartsWith(and, StringComparison.Ordinal) ? and.Length : f.StartsWith("& ", StringComparison.Ordinal) ? 2 : 0;
    }

    /// <summary>French, Spanish and Italian put it behind: "beurre fondu", "agua fría", "uova intere".</summary>
    private static void Back(Draft d, string lang)
    {
        if (lang is not ("fr" or "es" or "it"))
        {
            return;
        }

        for (int guard = 0; guard < 3 && !IsNamed(d.Food); guard++)
        {
            int space = d.Food.LastIndexOf(' ');
            int two = space > 0 ? d.Food.LastIndexOf(' ', space - 1) : -1;
            int three = two > 0 ? d.Food.LastIndexOf(' ', two - 1) : -1;
            if (space > 0 && d.Amount is not null && d.Unit is null && Lexicon.Longest("size", d.Food, space + 1, 1, lang, out int sized) is not null && sized >= d.Food.Length)
            {
                // "3 œufs moyens", "2 uova medie"
                d.Graded(d.Food[(space + 1)..]);
                d.Food = d.Food[..space];
                continue;
            }

            int four = three > 0 ? d.Food.LastIndexOf(' ', three - 1) : -1;
            foreach (int at in (ReadOnlySpan<int>)[four, three, two, space])
            {
                if (at > 0 && !(Whole(d.Food[(at + 1)..]) && Places.HasAny(d.Food[..at], "lait", "crème", "leche", "nata", "latte", "panna", "yaourt", "yogur", "yogurt", "fromage")) && Lexicon.Longest("prep", d.Food, at + 1, 3, lang, out int end) is not null && Done(d.Food, end, lang) && !Tinned(d, d.Food[(at + 1)..]))
                {
                    string tail = d.Food[(at + 1)..];
                    d.Preparation = d.Preparation is null ? tail : tail + ", " + d.Preparation;
                    d.Tokens?.Add(new ReadToken(tail, "preparation", tail));
                    d.Food = d.Food[..at];
                    space = -1;
                    break;
                }
            }

            if (space >= 0)
            {
                return;
            }
        }
    }

    /// <summary>True when nothing but more work or how it is done follows: "fondu et refroidi", "tritata finemente", "picada muy fina".</summary>
    private static bool Done(string f, int end, string lang)
    {
        int i = Places.Skip(f, end);
        while (i < f.Length)
        {
            int word = Places.WordEnd(f, i);
            ReadOnlySpan<char> w = f.AsSpan(i, word - i);
            bool joint = w is "et" or "y" or "e" or "puis" or "très" or "muy" or "molto" or "bien" or "ben" or "pas" or "trop";
            bool manner = w.EndsWith("ment") || w.EndsWith("mente") || w is "fin" or "fino" or "fina" or "fine" or "fini" or "finas" or "finos";
            if (!joint && !manner && Lexicon.Longest("prep", f, i, 3, lang, out word) is null)
            {
                return false;
            }

            i = Places.Skip(f, word);
        }

        return true;
    }

    private static bool IsNamed(string food)
    {
        foreach (string n in Named)
        {
            if (food.EndsWith(n, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"entier" says of an egg how it is used, of milk what it is.</summary>
    private static bool Whole(string w) => w.IndexOf(' ') is var space && (space > 0 ? w[..space] : w) is "entier" or "entière" or "entero" or "entera" or "intero" or "intera";

    private static void Footnote(Draft d)
    {
        while (d.Food.Length > 1 && d.Food[^1] is '¹' or '²' or '³' or '†' or '*')
        {
            d.Food = d.Food[..^1];
        }
    }
}
