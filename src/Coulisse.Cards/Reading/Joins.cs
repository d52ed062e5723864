using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Splits a line that names more than one food, and puts back together amounts that belong to one.</summary>
internal static class Joins
{
    private static readonly string[] Ands = ["and", "et", "und", "y", "e", "plus", "más", "più", "more", "dazu", "&"];
    private static readonly string[] Mores = ["più quello per", "più un po'", "más un poco", "plus extra", "plus a little", "plus more", "plus a drizzle", "plus a few", "sowie etwas", "et un peu"];
    private static readonly string[] Leads = ["and ", "dazu ", "y ", "plus ", "et "];
    private static readonly string[] Extras = ["extra for", "extra to", "extra", "a little for", "a little extra", "more for", "more to", "more as", "more if", "a drizzle to", "a drizzle for", "a pinch to", "a splash to", "a few to", "some for", "un peu pour", "etwas für", "etwas zum", "un poco más para", "un poco para", "quello per", "quella per", "più quello per", "più quella per", "altra per", "altro per", "un po' per", "plus extra", "plus more", "plus a little", "q.b. per", "qb per", "quanto basta per"];
    private static readonly WordList Staples = new("oil", "huile", "Öl", "aceite", "olio", "vinegar", "vinaigre", "Essig", "vinagre", "aceto");
    private static readonly string[] Pairs = ["and", "et", "und", "u.", "y", "e", "&", "n", "'n'", "n'", "'n"];
    private static readonly string[] Salts = ["salt", "sel", "Salz", "sal", "sale", "pepper", "poivre", "Pfeffer", "pimienta", "pepe"];
    private static readonly Beginnings FirstOfJoints = new([.. Ands.Where(a => a != "&"), .. Mores]);
    private static readonly Beginnings FirstOfExtras = new([.. Leads, .. Extras]);
    private static readonly Beginnings FirstOfSalts = new(Salts);

    /// <summary>The parts of a line, in order.</summary>
    public static List<string> Split(string s, string lang)
    {
        List<string> parts = new(1);
        if (s.Length < 24 && lang == "en" && s.Length > 2 && s[0] is 'S' or 's' && SaltPepper(s) is { } both)
        {
            return both;
        }

        int start = 0;
        int depth = 0;
        for (int i = 0; i < s.Length; i++)
        {
            char c = s[i];
            depth += c == '(' ? 1 : c == ')' && depth > 0 ? -1 : 0;
            if (depth > 0 || i == 0)
            {
                continue;
            }

            int length = 0;
            if (c == '+')
            {
                // "2 oranges, juice + zest": two parts of one food
                length = Lexicon.Longest("part", s, Places.Skip(s, i + 1), 3, lang, out int part) is not null && part >= s.Length && parts.Count == 0 ? 0 : 1;
                // "1.5 kg potatoes, peeled + quartered": twice what is done to them
                length = length > 0 && s.AsSpan(0, i).Contains(", ", StringComparison.Ordinal) && WorkBehind.Only(s[Places.Skip(s, i + 1)..], lang) ? 0 : length;
            }
            else if (c == '、' && lang == "ja" && i + 1 < s.Length && (s.AsSpan(i + 1).IndexOfAnyInRange('0', '9') >= 0 || s.AsSpan(i).Contains("用に", StringComparison.Ordinal) || parts.Count > 0 && (s.EndsWith("適量", StringComparison.Ordinal) || s.EndsWith("少々", StringComparison.Ordinal) || s.EndsWith("適宜", StringComparison.Ordinal))))
            {
                length = 1;
            }
            else if (c == ' ' || c == ',')
            {
                length = AndBefore(s, i, start, lang);
                length = length == 0 && c == ',' && !Decimal(s, i) && Series(s, i, start, lang) ? 1 : length;
            }
            else if (c == '/' && i > 0 && s[i - 1] == ' ' && i + 1 < s.Length && s[i + 1] == ' ' && EndsWithNumber(s, i))
            {
                length = 1;
            }

            if (length > 0)
            {
                Add(parts, s[start..i]);
                start = i + length;
                i = start - 1;
            }
        }

        Add(parts, s[start..]);
        if (parts.Count == 1 && (ManyAmounts.Of(s, lang) ?? NameList.Of(s, lang) ?? MixedList.Of(s, lang) ?? PurposePairs.Of(s, lang)) is { } names)
        {
            return names;
        }

        // The amount is looked for last: nearly no line is a pair of names.
        if (parts.Count == 1 && Unamounted(s, lang) is { } pair && !LineKinds.HasAmount(s, lang))
        {
            return pair;
        }

        return parts.Count == 0 ? [s] : parts;
    }

    /// <summary>"S&amp;P", "S + P TT", "s&amp;p to taste": a kitchen's short for two foods everybody knows.</summary>
    private static List<string>? SaltPepper(string s)
    {
        string t = s.Trim().ToUpperInvariant();
        foreach (string pair in (ReadOnlySpan<string>)["S&P", "S & P", "S+P", "S + P", "S/P"])
        {
            if (t == pair || t.StartsWith(pair, StringComparison.Ordinal) && t[pair.Length..].Trimmed(" ,.-") is "TT" or "TO TASTE" or "AS NEEDED")
            {
                return t == pair ? ["salt", "pepper"] : ["salt, to taste", "pepper, to taste"];
            }
        }

        return null;
    }

    private static void Add(List<string> parts, string part)
    {
        string t = part.Trimmed(" ,;");
        if (t.Length > 0)
        {
            parts.Add(t);
        }
    }

    /// <summary>Length of ", plus " or " and " when a new amount begins behind it; 0 otherwise.</summary>
    private static int AndBefore(string s, int i, int start, string lang)
    {
        int j = i;
        while (j < s.Length && s[j] is ' ' or ',')
        {
            j++;
        }

        if (j < s.Length && s[j] != '&' && !FirstOfJoints.May(s, j))
        {
            return 0;
        }

        foreach (string and in Ands)
        {
            if (and is "y" && lang != "es" || and is "e" && lang != "it" || !Places.WordAt(s, j, and))
            {
                continue;
            }

            int k = Places.Skip(s, j + and.Length);
            if (i > 0 && char.IsAsciiDigit(s[i - 1]) && Numbers.Single(s, k, lang) is { Min: < 1, InWords: false })
            {
                // "1 and 1/2 cups", "2 y 1/2 tazas": one mixed number
                return 0;
            }

            bool isExtra = Extra(s[k..]) is not null || (and is "dazu" or "plus" && Extra(s[k..]) is not null);
            if (isExtra)
            {
                return k - i;
            }

            if (Amounts.At(s, k, lang) is { } m && (m.Unit is { Kind: not "length" } || (char.IsAsciiDigit(s[k]) && m.Unit is null)) && HasMeasure(s, start, i, lang) && !(k > 0 && m.Number.InWords && m.Unit is null) && !(m.Unit is null && Prepared(s, Places.Skip(s, m.End), lang)))
            {
                return k - i;
            }

            // "2 eggs plus a yolk", "3 œufs et un jaune": a count in words of a food everybody knows
            if (Amounts.At(s, k, lang) is { Unit: null, Number: { InWords: true, Min: 1 } } one && Places.Skip(s, one.End) is var noun && noun < s.Length && s.Length - noun < 30 && HasMeasure(s, start, i, lang) && FoodIds.Match(s[noun..].TrimmedEnd(".,"), lang) is not null)
            {
                return k - i;
            }
        }

        // "più quello per la teglia", "plus extra for"
        foreach (string more in Mores)
        {
            if (Places.WordAt(s, j, more) || s.AsSpan(j).StartsWith(more, StringComparison.OrdinalIgnoreCase))
            {
                int behind = Places.Skip(s, j + more.Length);
                if (more == "et un peu" && PartReader.Of(s, behind, lang) is var food && food > behind)
                {
                    // "sel, poivre et un peu de muscade": a food of its own, and no more of the one before
                    return s.AsSpan(start, i - start).Contains(',') ? 0 : j + "et ".Length - i;
                }

                return j - i;
            }
        }

        return 0;
    }

    /// <summary>The comma of "0,125 Beurre" parts nothing.</summary>
    private static bool Decimal(string s, int comma) => comma > 0 && char.IsAsciiDigit(s[comma - 1]) && comma + 1 < s.Length && char.IsAsciiDigit(s[comma + 1]);

    /// <summary>"1 carota, 1 costa di sedano e 1 cipolla": a comma before a count, in a line that goes on with "and" and another count.</summary>
    private static bool Series(string s, int comma, int start, string lang)
    {
        int k = Places.Skip(s, comma + 1);
        if (k < s.Length && char.IsLetter(s[k]) && start > 0)
        {
            // "1 chicken, 1 lemon, 50g butter, salt": a bare name closes such a line
            string last = s[k..].TrimEnd('.');
            return last.Length < 30 && !last.Contains(',') && !FoodWords.IsPreparation(last, lang) && FoodIds.Match(last, lang) is not null;
        }

        if (lang == "fr" && k < s.Length && char.IsAsciiDigit(s[k]) && Amounts.At(s, k, lang) is { Unit.Unit: "clove" } clove && (clove.End >= s.Length || s[clove.End] == ',') && s.AsSpan(k, clove.End - k).EndsWith("ail") && HasMeasure(s, start, comma, lang))
        {
            // "10 brins de persil, 1 gousse d'ail": the measure's word holds the food
            return true;
        }

        if (k >= s.Length || !char.IsAsciiDigit(s[k]) || Amounts.At(s, k, lang) is not { Unit: null or { Kind: "count" or "spoon" or "cup" or "mass" or "volume" } } m || !HasMeasure(s, start, comma, lang) || PartReader.Of(s, Places.Skip(s, m.End), lang) is var food && (food >= s.Length || !char.IsLetter(s[food])) || Prepared(s, food, lang))
        {
            return false;
        }

        string name = s[food..(s.IndexOf(',', food) is var stop and > 0 ? stop : s.Length)];
        if (m.Unit is { Kind: "mass" or "volume" })
        {
            // "30 g butter, 20 g flour and 10 g sugar": the last comma has no other behind it.
            int joint = name.IndexOf(Conjunction.Spaced(lang), StringComparison.OrdinalIgnoreCase);
            name = joint > 0 && joint + Conjunction.Spaced(lang).Length is var behind && behind < name.Length && char.IsAsciiDigit(name[behind]) ? name[..joint] : name;
            // A weight of the same food is how much of it ("1 tin tomatoes, 400 g tomatoes").
            return !s.AsSpan(0, comma).Contains(name, StringComparison.OrdinalIgnoreCase) && FoodIds.Match(name, lang) is not null;
        }

        if (FoodIds.Match(name, lang) is not null)
        {
            // "3 Lorbeerblätter, 5 Wacholderbeeren, 1 TL Pfefferkörner": an amount and a food everybody knows
            return true;
        }

        if (lang == "de" && char.IsUpper(s[food]) && !Places.WordAt(s, food, "Typ") && !Places.WordAt(s, food, "Type") && Clock.At(s, k, lang) is null)
        {
            // A German noun behind a count is a thing of its own; what is done to the first ("4 Eier, 2 getrennt") is no noun.
            return true;
        }

        string and = Conjunction.Spaced(lang);
        int later = s.IndexOf(and, m.End, StringComparison.OrdinalIgnoreCase);
        return later > 0 && later + and.Length < s.Length && char.IsAsciiDigit(s[later + and.Length]);
    }

    /// <summary>"2 onions, 1 chopped and 1 sliced": behind the count stands what is done to some, and no food.</summary>
    private static bool Prepared(string s, int at, string lang) =>
        Lexicon.Longest("prep", s, at, 2, lang, out int end) is not null && (end >= s.Length || s[end] is ',' or ';' or ')' || Places.Skip(s, end) is var next && Array.Exists(Ands, a => Places.WordAt(s, next, a)));

    private static bool HasMeasure(string s, int start, int end, string lang)
    {
        int at = Places.Skip(s, start);
        return Amounts.At(s, at, lang) is { } m && m.End <= end + 1 || LineKinds.HasAmount(s[start..end], lang);
    }

    /// <summary>The words when they only say that some more is needed for something; null otherwise.</summary>
    public static string? Extra(string s)
    {
        if (s.Length > 0 && s[^1] != '量' && s[^1] != '々' && !FirstOfExtras.May(s, 0))
        {
            return null;
        }

        foreach (string lead in Leads)
        {
            if (s.StartsWith(lead, StringComparison.OrdinalIgnoreCase) && s.Length > lead.Length + 4)
            {
                s = s[lead.Length..];
                break;
            }
        }

        foreach (string w in Extras)
        {
            if (s.StartsWith(w, StringComparison.OrdinalIgnoreCase) && (s.Length == w.Length || s[w.Length] == ' '))
            {
                return "extra: " + s;
            }
        }

        return s.EndsWith("用に少々", StringComparison.Ordinal) || s.EndsWith("用に適量", StringComparison.Ordinal) ? "extra: " + s : null;
    }

    private static bool EndsWithNumber(string s, int i)
    {
        int j = i - 2;
        while (j > 0 && s[j] == ' ')
        {
            j--;
        }

        return j > 1 && char.IsAsciiDigit(s[j]) && s.AsSpan(0, j).IndexOfAnyInRange('A', 'z') >= 0 && s[0] is > '9';
    }

    /// <summary>"salt and pepper", "Sal y pimienta al gusto": two foods only when the first is one everybody pairs.</summary>
    private static List<string>? Unamounted(string s, string lang)
    {
        int slash = s.IndexOf('/');
        if (slash > 1 && slash == s.LastIndexOf('/') && slash + 2 < s.Length && s.AsSpan(0, slash).TrimEnd().IndexOf(' ') < 0 && IsSalt(s[..slash]) && IsSalt(s[slash..]))
        {
            return [s[..slash].Trim(), s[(slash + 1)..].Trim()];
        }

        // A pair begins with salt or pepper, whatever joins it.
        foreach (string and in FirstOfSalts.MayIn(s) ? Pairs : [])
        {
            int at = and[0] == '\'' ? s.IndexOf(and, StringComparison.OrdinalIgnoreCase) : Places.FindWord(s, and);
            if (at > 2 && at < 40 && (and.Length > 1 || and == "&" || and == "n" && lang == "en" || (and == "y" && lang == "es") || (and == "e" && lang == "it")) && IsSalt(s[..at]))
            {
                return [s[..at].Trim(), s[(at + and.Length)..].Trim()];
            }
        }

        // "aceite y sal", "beurre et sel": one word, and salt behind it
        string word = Conjunction.Spaced(lang);
        int joint = s.IndexOf(word, StringComparison.OrdinalIgnoreCase);
        if (s.Length < 30 && joint > 2 && s.IndexOf(' ') == joint && IsSalt(s[(joint + word.Length)..]) && s.IndexOf(' ', joint + word.Length) < 0)
        {
            return [s[..joint], s[(joint + word.Length)..]];
        }

        // "olio evo e aceto di vino bianco": two foods the table knows, and no one food of that name
        if (joint > 1 && s.Length < 70 && joint == s.LastIndexOf(word, StringComparison.OrdinalIgnoreCase) && s.IndexOf(',') < 0 && s.IndexOf('(') < 0 && Named(s[..joint], lang) && Named(s[(joint + word.Length)..], lang) && FoodIds.Match(s, lang) is null)
        {
            return [s[..joint].Trim(), s[(joint + word.Length)..].Trim()];
        }

        // "Salz, Pfeffer": two names and nothing else
        int comma = s.IndexOf(',');
        if (comma > 1 && s.LastIndexOf(',') == comma && IsSalt(s[..comma]) && IsSalt(s[comma..]) && s.AsSpan(0, comma).IndexOf(' ') < 0 && s.AsSpan(comma).Count(' ') < 4)
        {
            return [s[..comma].Trim(), s[(comma + 1)..].Trim()];
        }

        return null;
    }

    /// <summary>True for a food of the table, and for oil and vinegar of whatever kind.</summary>
    internal static bool Named(string name, string lang) => name.IndexOf(' ') < 0 && Staples.In(name) || FoodIds.Match(name, lang) is not null;

    /// <summary>True where salt or pepper is named.</summary>
    internal static bool IsSalt(string s) => FirstOfSalts.MayIn(s) && Places.HasAny(s, Salts);
}
