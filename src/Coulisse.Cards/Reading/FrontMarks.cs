using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What stands before or between the amount and the food without being either: "n. 4 uova", "g 250 di farina", "2x eggs", "½ x quantity", "200 g ca. Mehl", "Zehe/n".</summary>
internal static class FrontMarks
{
    private static readonly string[] Trailing = ["approx.", "approx", "approximately", "or so", "or thereabouts", "roughly", "environ", "env.", "env", "circa", "ca.", "ca", "aprox.", "aprox", "aproximadamente", "ungefähr", "etwa", "max.", "max", "min.", "exactly", "about", "unos", "unas"];
    private static readonly string[] Endings = ["/n", "/en", "/e", "/er", "/s", "/r", "(n)", "(en)", "(e)", "(s)", "(r)", "(er)"];

    /// <summary>The line with its figure first and without the two endings of a word ("Zehe/n", "Scheibe(n)").</summary>
    public static string Plain(string s, string lang)
    {
        s = Number(FigureFirst(s, lang), lang);
        return lang == "de" && s.IndexOf('/') > 0 ? Singular(s) : s;
    }

    /// <summary>"evtl. 1 EL Honig", "optional 1 tsp chilli": the word that a line may be left out, before the amount or the food.</summary>
    public static string Optional(string s, string lang, Draft d)
    {
        if (Lexicon.Longest("optional", s, 0, 2, lang, out int end) is null || end >= s.Length - 2 || s[end - 1] != '.' && s[end] != ' ' || s[^1] is ')' && s[0] == '(')
        {
            return s;
        }

        d.Optional = true;
        d.Tokens?.Add(new ReadToken(s[..end], "optional", "may be left out"));
        return s[end..].TrimmedStart(" ,:");
    }

    /// <summary>"Fine salt    2%    10g": columns that stayed in a line; the share between them is told by the amount. Other runs of blanks become one.</summary>
    public static string Spaced(string s)
    {
        s = Inches(Compound(s));
        if (!s.Contains("  ", StringComparison.Ordinal))
        {
            return s;
        }

        string[] cells = s.Split("  ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (cells.Length == 2 && cells[1].Length is 1 or 2 && cells[1].AsSpan().IndexOfAnyExceptInRange('0', '9') < 0 && int.Parse(cells[1], System.Globalization.CultureInfo.InvariantCulture) < 40 && cells[0].Length > 2 && char.IsLetter(cells[0][0]) && !BackAmount.Typed(cells[0]))
        {
            // "kaffir lime leaves        8": the gap parts the count from the name, as a comma would.
            return $"{cells[0]}, {cells[1]}";
        }

        bool shares = cells.Length > 2 && cells.Count(c => c[^1] == '%' && char.IsAsciiDigit(c[0])) == 1;
        return string.Join(' ', shares ? cells.Where(c => !(c[^1] == '%' && char.IsAsciiDigit(c[0]))) : cells);
    }

    /// <summary>"5\" cinnamon stick", "5'' kombu": the marks of an inch behind the first figure.</summary>
    private static string Inches(string s)
    {
        int i = 0;
        while (i < s.Length && i < 5 && (char.IsAsciiDigit(s[i]) || s[i] is '/' or '.' || Numbers.Vulgar(s[i]) > 0))
        {
            i++;
        }

        int marks = i == 0 || i + 2 >= s.Length ? 0 : s[i] is '"' or '″' ? 1 : s[i] == '\'' && s[i + 1] == '\'' ? 2 : 0;
        return marks > 0 && i + marks < s.Length && s[i + marks] == ' ' ? $"{s[..i]} inch{s[(i + marks)..]}" : s;
    }

    /// <summary>"1lb2oz flour", "2kg500g": two units of one amount without room between them.</summary>
    private static string Compound(string s)
    {
        int i = 0;
        while (i < s.Length && i < 3 && char.IsAsciiDigit(s[i]))
        {
            i++;
        }

        return i > 0 && i + 2 < s.Length && (s.AsSpan(i, 2) is "lb" or "kg") && char.IsAsciiDigit(s[i + 2]) && !(s[i] == 'k' && Ends(s, i + 2)) ? s.Insert(i + 2, " ") : s;
    }

    /// <summary>Place behind words that only say how sure the amount is.</summary>
    public static int Hedged(string s, int i, string lang)
    {
        foreach (string w in Trailing)
        {
            if (i < s.Length && s[i] == w[0] && s.AsSpan(i).StartsWith(w) && (i + w.Length == s.Length || !char.IsLetter(s[i + w.Length]) && s[i + w.Length] is not '-'))
            {
                return Places.Skip(s, i + w.Length);
            }
        }

        _ = lang;
        return i;
    }

    /// <summary>What stands before an amount at the end, without the word that says how sure it is: "Wasser ca." 100 ml.</summary>
    public static string Unhedged(string before)
    {
        string s = before.TrimEnd(' ', '-', '>', '→', '=');
        foreach (string w in Trailing)
        {
            if (s.Length > w.Length + 2 && s.EndsWith(w, StringComparison.OrdinalIgnoreCase) && s[s.Length - w.Length - 1] is ' ' or ',' or ':')
            {
                return s[..^w.Length].TrimEnd();
            }
        }

        return s;
    }

    private static readonly string[] Arrows = [" -> ", " => ", " → ", " ➔ "];
    private static readonly WordList Elsewhere = new("see", "card", "page", "recipe", "voir", "fiche", "siehe", "Rezept", "Karte", "ver", "ficha", "receta", "vedi", "ricetta", "scheda", "sub-recipe", "base");

    /// <summary>"seaweed butter 100 -> see card": an arrow to another card stands behind the line and is a note.</summary>
    public static string Pointed(string s, Draft d)
    {
        foreach (string arrow in s.Contains('>') || s.Contains('→') || s.Contains('➔') ? Arrows : [])
        {
            int at = s.IndexOf(arrow, StringComparison.Ordinal);
            if (at > 2 && Elsewhere.In(s[(at + arrow.Length)..]))
            {
                d.Use ??= s[(at + arrow.Length)..].Trim();
                d.Tokens?.Add(new ReadToken(s[at..].Trim(), "note", d.Use));
                return s[..at].TrimEnd();
            }
        }

        return s;
    }

    /// <summary>"2x eggs", "2 x carrots", "½ x quantity rough puff": the sign of times before a word; place behind it, 0 when none stands there.</summary>
    public static int Times(string s, int i, string lang, Draft d)
    {
        if (i >= s.Length || s[i] is not ('x' or 'X' or '×'))
        {
            return 0;
        }

        int j = Places.Skip(s, i + 1);
        if (j >= s.Length || !char.IsLetter(s[j]) || s[i] != '×' && j == i + 1)
        {
            return 0;
        }

        if (Lexicon.LongestUnit(s, j, lang, out int end) is { } unit && end < s.Length && unit.Unit is "batch" || Lexicon.LongestUnit(s, j, lang, out end) is { Kind: "container" or "count" } && end < s.Length && s[end] == ' ')
        {
            d.Unit = Lexicon.LongestUnit(s, j, lang, out end);
            return end;
        }

        return j;
    }

    /// <summary>True when a unit's word without a figure means one: "pinch salt", "sprig of rosemary", "botte de persil". Of counted things only where "of" follows: "slice" and "head" are no food, "fillet of beef" is.</summary>
    public static bool MeansOne(string s, int end, UnitWord unit, string lang) => unit.Kind switch
    {
        "word" => unit.Unit is "pinch" or "handful" or "small handful" or "large pinch" or "bunch" or "knob" or "dash" or "knife tip" or "splash" or "drizzle" or "squeeze" or "glug" or "dollop" or "grind" or "grating" || unit.Unit is "thumb" or "drop" or "glass" or "mug" or "ladle" or "jigger" && (Places.WordAt(s, Places.Skip(s, end), "of") || end > 3 && s.AsSpan(end - 3, 3) is " of"),
        "count" or "container" or "cup" or "spoon" => lang == "en" && s[end - 1] != 's' && Places.WordAt(s, Places.Skip(s, end), "of") && unit.Unit is "sprig" or "clove" or "head" or "slice" or "stick" or "bulb" or "wedge" or "strip" or "sheet" or "block" or "cube" or "stalk" or "tin" or "jar" or "pack" or "carton" or "bottle" or "cup" or "tbsp" or "tsp",
        _ => false,
    };

    /// <summary>"n. 4 uova", "n° 3 limoni", "nº 2": the sign of a number before the count.</summary>
    private static string Number(string s, string lang)
    {
        if (lang is not ("it" or "es" or "fr") || s.Length < 4 || s[0] is not ('n' or 'N'))
        {
            return s;
        }

        int i = 1;
        while (i < s.Length && s[i] is '.' or '°' or 'º' or ' ')
        {
            i++;
        }

        return i > 1 && i < s.Length && char.IsAsciiDigit(s[i]) ? s[i..] : s;
    }

    /// <summary>"g 250 di farina", "gr. 100 burro", "kg. 1 patate", "l 1 di brodo": the unit before its figure at the front.</summary>
    public static string FigureFirst(string s, string lang)
    {
        if (lang is not ("it" or "es" or "fr" or "de"))
        {
            return s;
        }

        int end = 0;
        while (end < s.Length && end < 3 && char.IsLetter(s[end]))
        {
            end++;
        }

        int figure = end < s.Length && s[end] == '.' ? end + 1 : end;
        figure = Places.Skip(s, figure);
        if (end == 0 || figure == end || figure >= s.Length || !char.IsAsciiDigit(s[figure]) || s[..end].ToLowerInvariant() is not ("g" or "gr" or "kg" or "ml" or "cl" or "dl" or "l" or "lt" or "hg"))
        {
            return s;
        }

        return Numbers.Range(s, figure, lang) is { InWords: false } n && (n.End == s.Length || s[n.End] == ' ') ? $"{s[figure..n.End]} {s[..end]} {s[n.End..].TrimStart()}".TrimEnd() : s;
    }

    private static string Singular(string s)
    {
        foreach (string ending in Endings)
        {
            int at = s.IndexOf(ending, StringComparison.Ordinal);
            while (at > 0)
            {
                int end = at + ending.Length;
                if (char.IsLetter(s[at - 1]) && (end >= s.Length || s[end] is ' ' or ','))
                {
                    s = s.Remove(at, ending.Length);
                }

                at = s.IndexOf(ending, Math.Min(s.Length, at + 1), StringComparison.Ordinal);
            }
        }

        return s;
    }

    /// <summary>"1kg2": a figure that ends its word, and no second unit behind it.</summary>
    private static bool Ends(string s, int i)
    {
        while (i < s.Length && char.IsAsciiDigit(s[i]))
        {
            i++;
        }

        return i == s.Length || s[i] == ' ' && !(i + 1 < s.Length && Lexicon.LongestUnit(s, i + 1, "en", out _) is not null);
    }
}
