using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>An amount with its unit at a place in a line.</summary>
internal readonly record struct Measure(Numeral Number, UnitWord? Unit, string? Fill, string? Size, int End)
{
    /// <summary>Nothing but a bound above ("up to 30 g").</summary>
    public bool UpTo { get; init; }

    /// <summary>Only a bound below ("at least 2 l").</summary>
    public bool AtLeast { get; init; }
}

/// <summary>Reads "2 heaped tablespoons", "250g", "about 3", "up to 30 g".</summary>
internal static class Amounts
{
    /// <summary>A measure at a place; null when none begins there.</summary>
    public static Measure? At(string s, int at, string lang)
    {
        int i = Places.Skip(s, at);
        bool upTo = false;
        bool atLeast = false;
        if (i < s.Length && s[i] is '<' or '≤' or '>' or '≥' && Places.Skip(s, i + 1) is var bounded && bounded < s.Length && char.IsAsciiDigit(s[bounded]))
        {
            upTo = s[i] is '<' or '≤';
            atLeast = !upTo;
            i = bounded;
        }

        // Words may bound or hedge an amount; a figure stands for itself.
        for (int guard = 0; guard < 3 && i < s.Length && !char.IsAsciiDigit(s[i]); guard++)
        {
            if (Bound(s, i, "up to", "no more than", "not more than", "jusqu'à", "bis zu", "hasta", "fino a", "at most", "höchstens", "max.", "max", "maximum", "massimo", "máximo") is var up and > 0) { upTo = true; i = up; }
            else if (Bound(s, i, "at least", "au moins", "mindestens", "al menos", "almeno", "minimum", "min.", "mind.") is var low and > 0) { atLeast = true; i = low; }
            else if (Hedge(s, i, lang) is var hedge and > 0) { i = hedge; }
            else { break; }
        }

        // "scant 1/2 cup", "a heaped 2 tbsp": how full stands before the figure
        string? before = null;
        if (i < s.Length && char.IsLetter(s[i]) && Lexicon.Longest("fill", s, i, 2, lang, out int filled) is { } full && Places.Skip(s, filled) is var figure && figure < s.Length && (char.IsAsciiDigit(s[figure]) || Numbers.Vulgar(s[figure]) > 0))
        {
            before = full;
            i = figure;
        }

        if (Places.WordAt(s, i, "the") && i + 4 < s.Length && char.IsAsciiDigit(s[i + 4]))
        {
            i += 4;
        }

        if (Numbers.Range(s, i, lang) is not { } number)
        {
            return null;
        }

        int j = Places.Skip(s, number.End);
        if (Places.WordAt(s, j, "or so"))
        {
            // "a dozen or so mint leaves"
            number = number with { End = j + 5 };
            j = Places.Skip(s, j + 5);
        }

        if (j < s.Length && s[j] == '-' && number.End == j && j + 1 < s.Length && char.IsLetter(s[j + 1]))
        {
            // "14 1/2-ounce", "7-grain": only a unit may follow the hyphen.
            if (Lexicon.LongestUnit(s, j + 1, lang, out _) is null)
            {
                return null;
            }

            j++;
        }

        return After(s, number, j, lang) is { } m ? m with { UpTo = upTo, AtLeast = atLeast, Fill = m.Fill ?? before } : null;
    }

    /// <summary>Fill, size and unit after a number.</summary>
    private static Measure? After(string s, Numeral number, int j, string lang)
    {
        string? fill = null;
        string? size = null;
        int end = number.End;
        if (lang == "fr" && j == number.End && FrenchAmounts.Between(s, number, j) is { } told)
        {
            return told;
        }

        for (int guard = 0; guard < 3; guard++)
        {
            if (Lexicon.LongestUnit(s, j, lang, out int unitEnd) is { } unit && IsUnitHere(s, j, unitEnd, unit, number, lang))
            {
                end = unitEnd;
                number = SlashCounts.Of(s, number, unit, j, unitEnd);
                number = FrenchAmounts.Pointed(s, number, unit, lang);
                // French cc is a coffee spoon, but nobody spoons ten of them.
                unit = lang == "fr" && unit.Unit == "tsp" && end - j == 2 && number.Min >= 10 ? Lexicon.Unit("ml", "en")! : unit;
                int k = Places.Skip(s, end);
                // "1 c. à c. bombée de …", "2 cucchiai colmi", "a cup and a half of"
                if (Lexicon.Longest("fill", s, k, 2, lang, out int fillEnd) is { } after && fill is null && unit.Kind is "spoon" or "cup" or "word" && AfterFill(lang, s, k, fillEnd))
                {
                    fill = Lexicon.Longest("fill", s, k, 2, lang, out fillEnd);
                    end = fillEnd;
                    _ = after;
                    k = Places.Skip(s, end);
                }

                if (Bound(s, k, "and a half", "et demi", "et demie", "y medio", "y media", "e mezzo", "e mezza", "und ein halbes") is var half and > 0)
                {
                    number = number with { Min = number.Min + 0.5 };
                    end = half;
                }

                if (lang is "fr" or "es" or "it" or "de" && unit.Kind is "volume" or "mass" or "cup" && number is { Max: null, InWords: false } && number.Min >= 1 && number.Min % 1 == 0 && HalfBehind(s, Places.Skip(s, end), lang) is { } part)
                {
                    // "1 litre 1/2 de bouillon", "1 kg ½"
                    number = number with { Min = number.Min + part.Min };
                    end = part.End;
                }

                return Upper(s, number, unit, end, lang, fill, size) ?? new Measure(number, unit, fill, size, end);
            }

            if (number.Min < 1 && lang is "fr" or "es" or "it" && PartReader.Of(s, j, lang) is var of && of > j && Lexicon.LongestUnit(s, of, lang, out int whole) is { Kind: "mass" or "volume" or "cup" or "spoon" } partial)
            {
                // "1/4 de litre de lait"
                return new Measure(number, partial, fill, size, whole);
            }

            if (Lexicon.Longest("fill", s, j, 2, lang, out int fe) is { } f && fill is null && FollowedByUnit(s, fe, lang))
            {
                fill = f;
                j = Places.Skip(s, fe);
                end = fe;
            }
            else if (Lexicon.Longest("size", s, j, 2, lang, out int se) is not null && size is null)
            {
                size = s[j..se];
                j = Places.Skip(s, se);
                end = se;
            }
            else
            {
                break;
            }
        }

        // A fill or size word with no unit after it belongs to the piece ("4 large eggs").
        return new Measure(lang == "fr" && Lexicon.LongestUnit(s, j, lang, out int bare) is { } alone ? SlashCounts.Of(s, number, alone, j, bare) : number, null, fill, size, end);
    }

    private static Numeral? HalfBehind(string s, int i, string lang) =>
        i < s.Length && (char.IsAsciiDigit(s[i]) && i + 2 < s.Length && s[i + 1] == '/' || Numbers.Vulgar(s[i]) > 0) && Numbers.Single(s, i, lang) is { Min: > 0 and < 1 } part && Lexicon.LongestUnit(s, Places.Skip(s, part.End), lang, out _) is null ? part : null;

    /// <summary>"100 g-120 g", "1 tbsp to 2 tbsp", "500 g bis 1 kg": a range whose unit is told twice; null when no second amount follows.</summary>
    private static Measure? Upper(string s, Numeral number, UnitWord unit, int end, string lang, string? fill, string? size)
    {
        int i = Places.Skip(s, end);
        if (number.Max is not null || number.InWords || i >= s.Length || unit.Kind is not ("mass" or "volume" or "spoon" or "cup"))
        {
            return null;
        }

        int j = s[i] is '-' or '~' ? i + 1 : 0;
        foreach (string to in lang switch { "fr" => (ReadOnlySpan<string>)["à"], "de" => ["bis"], "es" or "it" => ["a"], _ => ["to"] })
        {
            j = Places.WordAt(s, i, to) ? i + to.Length : j;
        }

        int k = Places.Skip(s, j);
        if (j == 0 || k >= s.Length || !(char.IsAsciiDigit(s[k]) || Numbers.Vulgar(s[k]) > 0) || Numbers.Single(s, k, lang) is not { InWords: false } second || Lexicon.LongestUnit(s, Places.Skip(s, second.End), lang, out int unitEnd) is not { } other || other.Kind != unit.Kind)
        {
            return null;
        }

        double factor = other.Unit == unit.Unit ? 1 : other.Base is { } b && unit.Base is { } own ? b / own : 0;
        return second.Min * factor > number.Min ? new Measure(number with { Max = Math.Round(second.Min * factor, 6), Repaired = number.Repaired || second.Repaired }, unit, fill, size, unitEnd) : null;
    }

    private static bool AfterFill(string lang, string s, int k, int fillEnd) =>
        lang is "fr" or "es" or "it" or "de" || Places.Skip(s, fillEnd) >= s.Length || s[k..fillEnd].Contains("pack", StringComparison.OrdinalIgnoreCase);

    private static bool FollowedByUnit(string s, int i, string lang)
    {
        int j = Places.Skip(s, i);
        return Lexicon.LongestUnit(s, j, lang, out _) is { Kind: "spoon" or "cup" or "word" or "volume" or "container" };
    }

    /// <summary>Words that are units only sometimes: "2 bay leaves", "2 cloves", "4 slices" stay units, "1 t" needs its space.</summary>
    private static bool IsUnitHere(string s, int at, int end, UnitWord unit, Numeral number, string lang)
    {
        int next = Places.Skip(s, end);
        bool nothingAfter = next >= s.Length || s[next] is ',' or '(' or ';';
        if (s[at] == '#')
        {
            return next > end && !nothingAfter;
        }

        // "2 bouquets garnis", "1 noix de coco": the word belongs to the food.
        if (Lexicon.Longest("nounit", s, at, 4, lang, out _) is not null || OnlyOf(s, at, end, unit, lang) || LargeShort.Is(s, at, end, unit, number, lang))
        {
            return false;
        }

        // "2 cloves", "3 rolls, split": with no food behind it, a counted word is the food itself; behind a food ("thyme, 3 sprigs") it counts that.
        if (nothingAfter && unit.Kind == "count" && unit.Unit is not "piece" && LettersBefore(s, at) == 0)
        {
            return false;
        }

        if (unit.Unit is "nut" && nothingAfter)
        {
            return false;
        }

        if (unit.Unit == "sheet" && lang is "de" or "it" && s.IndexOf("elatin", StringComparison.OrdinalIgnoreCase) < 0 && s.IndexOf("olla", StringComparison.OrdinalIgnoreCase) < 0)
        {
            return true;
        }

        // German "Glas", "Dose" and so on before a comma or bracket are still units; a letter or two must stand apart from the next word.
        if (end - at <= 2 && end < s.Length && char.IsLetterOrDigit(s[end]))
        {
            return false;
        }

        _ = number;
        return true;
    }

    /// <summary>Words that measure only a few foods: a "noix" of butter, a "filet" of oil; of anything else they are the food.</summary>
    internal static bool OnlyOf(string s, int at, int end, UnitWord unit, string lang)
    {
        string[]? foods = (lang, unit.Unit) switch
        {
            (_, "knob" or "nut") when s.AsSpan(at, end - at).StartsWith("noi", StringComparison.OrdinalIgnoreCase) => ["beurre", "margarine", "saindoux", "graisse", "crème", "ghee"],
            ("fr", "drizzle") => ["huile", "vinaigre", "citron", "jus", "lait", "crème", "miel", "sirop", "vin", "eau", "cognac", "rhum"],
            ("fr", "square") => ["chocolat", "sucre"],
            ("it", "knob" or "nut") => ["burro", "margarina", "strutto"],
            ("it", "drizzle") => ["olio", "aceto", "latte", "miele", "limone", "panna", "vino"],
            ("en", "stalk") when s[at] is 'r' or 'R' => ["celery", "chard", "rhubarb"],
            ("es", "nut") => ["mantequilla", "manteca", "margarina"],
            _ => null,
        };
        return foods is not null && !Places.HasAny(s[end..Math.Min(s.Length, end + 24)], foods) && s.AsSpan(at, end - at).IndexOf(' ') < 0;
    }

    private static int LettersBefore(string s, int at)
    {
        int n = 0;
        for (int i = 0; i < at && n < 4; i++)
        {
            n += char.IsLetter(s[i]) ? 1 : 0;
        }

        // A number in words ("two") is no food: the rule is for figures.
        return n > 0 && Numbers.Single(s, 0, "en") is { } number && Places.Skip(s, number.End) >= at ? 0 : n;
    }

    private static int Hedge(string s, int i, string lang)
    {
        if (i < s.Length && s[i] is '~' or '≈' or '±')
        {
            return Places.Skip(s, i + 1);
        }

        if (Lexicon.Longest("hedge", s, i, 2, lang, out int end) is not null && end > i)
        {
            int j = Places.Skip(s, end);
            // "a generous" and the like before a number or measure only
            return j < s.Length && (char.IsAsciiDigit(s[j]) || Numbers.Vulgar(s[j]) > 0 || Numbers.Single(s, j, lang) is not null) ? j : 0;
        }

        return 0;
    }

    private static int Bound(string s, int i, params ReadOnlySpan<string> phrases)
    {
        foreach (string p in phrases)
        {
            if (Places.WordAt(s, i, p))
            {
                return Places.Skip(s, i + p.Length);
            }
        }

        return 0;
    }
}
