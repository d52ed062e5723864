using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Puts back together what a window's edge broke when a text was copied: "• 10 beef cheeks, trimmed, about" and "280 g each" are one item.</summary>
internal static class BrokenLines
{
    private const int Longest = 400;
    private static readonly System.Buffers.SearchValues<char> Figures = System.Buffers.SearchValues.Create("0123456789-– ");
    private static readonly HashSet<string> Hanging = new(StringComparer.OrdinalIgnoreCase)
    {
        "on", "per", "as", "without", "over", "under", "auf", "im", "am", "ohne", "ins", "sur", "sans", "avec", "dans", "en", "sin", "por", "senza", "su", "da", "del", "della", "dei", "delle", "about", "approx", "for", "to", "of", "and", "or", "with", "the", "a", "at", "in", "until", "from", "by", "into", "large", "small", "pour", "de", "et", "ou", "environ", "à", "für", "ca", "etwa", "und", "oder", "mit", "bis", "para", "con", "hasta", "unos", "per", "di", "e", "o", "fino", "circa", "le", "la", "les", "der", "die", "das", "den", "el", "los", "il", "lo", "gli", "add", "then", "puis", "dann", "poi", "luego", "y", "u", "entre", "between", "zwischen", "bei", "tra", "fra", "oppure", "bzw.",
    };

    /// <summary>The lines with their halves joined.</summary>
    public static List<RawLine> Joined(List<RawLine> lines, string lang)
    {
        for (int i = 1; i < lines.Count; i++)
        {
            if (Broken(lines[i - 1], lines[i], lang, i == 1))
            {
                return Join(lines, lang);
            }
        }

        return lines;
    }

    private static List<RawLine> Join(List<RawLine> lines, string lang)
    {
        List<RawLine> joined = new(lines.Count);
        foreach (RawLine line in lines)
        {
            if (joined.Count > 0 && Broken(joined[^1], line, lang, joined.Count == 1))
            {
                RawLine first = joined[^1];
                // "sherry vine-" and "gar": the hyphen was the page's.
                bool parted = first.Text[^1] == '-' && first.Text.Length > 2 && char.IsLetter(first.Text[^2]) && char.IsLower(line.Text[0]) && !PartedWords.Both(line.Text);
                bool labelled = Label(first.Text);
                joined[^1] = first with { Text = labelled ? first.Text[..^2] + ":** " + line.Text : parted ? first.Text[..^1] + line.Text : first.Text[^1] == '-' && char.IsAsciiDigit(line.Text[0]) ? first.Text + line.Text : first.Text + " " + line.Text, Span = first.Span with { Length = line.Span.Start + line.Span.Length - first.Span.Start } };
            }
            else
            {
                joined.Add(line);
            }
        }

        return joined;
    }

    /// <summary>"… in the butter for 6" and "minutes, add": a figure and its unit of time; "… in the milk for" and "8 minutes."</summary>
    private static bool Timed(string a, string b)
    {
        if (char.IsAsciiDigit(a[^1]) && a.Contains(' ') && char.IsLower(b[0]) && b.Length > 1 && TimeWords.Unit(b, 0, out int end) is not null && end > 2)
        {
            return true;
        }

        if (char.IsAsciiDigit(a[^1]) && a.Length > 7 && (char.IsUpper(b[0]) && a.Contains(' ') || Places.IsJapanese(b[0])) && TimeWords.Unit(b, 0, out int unit) is not null && unit > (char.IsUpper(b[0]) ? 2 : 0) && (unit >= b.Length || b[unit] is not (':' or '-' or '|')))
        {
            // German nouns open with a capital: "etwa 10" and "Minuten köcheln"; "弱火で約10" and "分煮る"
            return true;
        }

        if (char.IsAsciiDigit(a[^1]) && a.Contains(' ') && (Places.WordAt(b, 0, "Grad") || Places.WordAt(b, 0, "degrees") || Places.WordAt(b, 0, "degrés") || Places.WordAt(b, 0, "grados") || Places.WordAt(b, 0, "gradi")))
        {
            return true;
        }

        if (char.IsAsciiDigit(a[^1]) && a.Contains(' ') && b[0] == '°' && b.Length > 1 && b[1] is 'C' or 'F' or ' ')
        {
            // "bake at 200" and "°C for 12 min"
            return true;
        }

        int space = a.LastIndexOf(' ');
        if (space > 12 && char.IsAsciiDigit(b[0]) && (char.IsLetter(a[0]) || Looks.Bullet(a)) && Degreed(b) && Hanging.Contains(a[(space + 1)..]))
        {
            // "nach 10 Minuten auf" and "210 °C zurückschalten", "turn it down to" and "160C"
            return true;
        }

        return space > 4 && char.IsAsciiDigit(b[0]) && (char.IsLetter(a[0]) || Marks.ListNumber(a, 0) > 0 || Looks.Bullet(a) && space > 12) && Lasting.Contains(a[(space + 1)..]) && Numbers.Range(b, 0, "en") is { } n && TimeWords.Unit(b, Places.Skip(b, n.End), out _) is not null;
    }

    /// <summary>"210 °C", "160C", "180-190 °C": a line that opens with degrees.</summary>
    private static bool Degreed(string b)
    {
        int i = b.AsSpan(0, Math.Min(b.Length, LongestDegrees)).IndexOfAnyExcept(Figures);
        return i > 1 && (b[i] is '°' or '℃' || b[i] is 'C' or 'F' && (i + 1 == b.Length || !char.IsLetterOrDigit(b[i + 1]))) && char.IsAsciiDigit(b[1]);
    }

    private const int LongestDegrees = 12;

    // Words that hang before a time: "noch etwa" and "10 Minuten".
    private static readonly HashSet<string> Lasting = new(StringComparer.OrdinalIgnoreCase)
    {
        "for", "about", "approx", "approx.", "another", "least", "further", "pendant", "pour", "environ", "env.", "encore", "durant", "moins", "für", "ca.", "ca", "etwa", "rund", "circa", "ungefähr", "mindestens", "weitere", "noch", "gut", "knapp", "durante", "unos", "aproximadamente", "otros", "menos", "per", "altri", "ancora", "almeno", "to", "bis", "à", "hasta",
    };

    /// <summary>", skin" and "on", ", in 1 cm" and "dice": half of how a food is cut.</summary>
    private static bool Cut(string a, string b) =>
        b is "on" or "off" or "in" or "out" && a.LastIndexOf(',') > 0
        || char.IsLower(b[0]) && b.Length < 24 && a.LastIndexOf(", ", StringComparison.Ordinal) is > 0 and var comma && a.AsSpan(comma) is var tail && (tail.EndsWith(" cm") || tail.EndsWith(" mm") || tail.EndsWith("inch")) && tail.ContainsAnyInRange('0', '9');

    /// <summary>"4 chicken thighs, skin on", "rack of lamb, bone in": the words end there.</summary>
    private static bool AsBought(string a, int space)
    {
        int word = space > 0 ? a.LastIndexOf(' ', space - 1) : -1;
        return a.AsSpan(space + 1) is "on" or "in" && word >= 0 && a.AsSpan(word + 1, space - word - 1) is "skin" or "bone" or "shell" or "rind" or "head" or "fat" or "tail" or "root" or "stalk" or "stem" or "leaves" or "tops" or "wing";
    }

    /// <summary>"1. **Oil**": the number and the name of a step, the step itself under it.</summary>
    private static bool Label(string a) => a.Length is > 6 and < 60 && a.EndsWith("**", StringComparison.Ordinal) && Marks.ListNumber(a, 0) is > 0 and var number && a.AsSpan(number).TrimStart().StartsWith("**") && a.AsSpan(number).TrimStart()[2..^2].IndexOf("**") < 0;

    /// <summary>"juni-" and "per, leave", "… bake for 2 hours" and "15 minutes", ", about 200 g" and "each", a sentence of a full width and small letters under it.</summary>
    private static bool GoesOn(string a, string b, string lang)
    {
        if (b is "each" or "each." or "apiece" || a.Contains(',') && char.IsAsciiDigit(a[0]) && b.Length < 24 && (b.StartsWith("and ", StringComparison.Ordinal) || b.StartsWith("et ", StringComparison.Ordinal) || b.StartsWith("und ", StringComparison.Ordinal)) && b.AsSpan().IndexOfAnyInRange('0', '9') < 0 && !Feeds(b, b.IndexOf(' ') + 1, lang))
        {
            return true;
        }

        if (a.Length < 28 || !char.IsLetter(a[0]) || char.IsLower(a[0]) || Looks.Bullet(b))
        {
            return false;
        }

        return a[^1] == '-' && char.IsLetter(a[^2]) && char.IsLower(b[0])
            || char.IsAsciiDigit(b[0]) && (a.EndsWith(" hours", StringComparison.Ordinal) || a.EndsWith(" hour", StringComparison.Ordinal) || a.EndsWith(" h", StringComparison.Ordinal) || a.EndsWith(" Std.", StringComparison.Ordinal) || a.EndsWith(" heures", StringComparison.Ordinal) || a.EndsWith(" horas", StringComparison.Ordinal) || a.EndsWith(" ore", StringComparison.Ordinal)) && b.Contains("min", StringComparison.OrdinalIgnoreCase)
            || char.IsLower(b[0]) && char.IsLower(a[^1]) && a.Contains(' ') && b[^1] == '.' && b.Length > 3;
    }

    /// <summary>True where a line goes on in the next: small letters, or a comma or a word that hangs before whatever stands there.</summary>
    public static bool Hangs(string a, string b) => char.IsLower(b[0]) || a[^1] == ',' || Hanging.Contains(a[(a.LastIndexOf(' ') + 1)..]);

    /// <summary>True for a line that cannot end there: a comma, half a word, a word that hangs.</summary>
    public static bool Hung(string a) => a[^1] == ',' || a[^1] == '-' && char.IsLetter(a[^2]) || a[(a.LastIndexOf(' ') + 1)..] is var last && (Hanging.Contains(last) || Lasting.Contains(last)) && !Done(a);

    /// <summary>"brown all over", "lid on": the words end there too.</summary>
    private static bool Done(string a) => Places.Ends(a, "all over", "turn over", "turned over", "shake about", "toss about", "move about", "stir about", "push about", "turn about", "flip over", "flipped over", "lid on", "lids on", "oven on", "heat on", "all in");

    private static bool Unclosed(string s) => s.LastIndexOf('(') is var open && open > 0 && s.IndexOf(')', open) < 0;

    /// <summary>"750 ml red" and "wine": no food, and with the next line one everybody knows.</summary>
    private static bool Halved(string a, string b, string lang)
    {
        if (b.Length > 40 || Amounts.At(a, 0, lang) is not { Unit: not null } m)
        {
            return false;
        }

        string food = a[PartReader.Of(a, Places.Skip(a, m.End), lang)..].Trim();
        int comma = b.IndexOf(',');
        string rest = comma > 0 ? b[..comma] : b;
        return food.Length is > 1 and < 30 && !food.Contains(',') && FoodIds.Match(food, lang) is null && FoodIds.Match($"{food} {rest}", lang) is not null;
    }

    /// <summary>"2. CREMA" or "2. Crema" over "ceci secchi 500 g": the number and the name of a part over its list, whose lines tell their amounts last. "1. Olive" over "oil 20 ml" is one food.</summary>
    private static bool NumberedName(string a, string b, string lang)
    {
        if (Marks.ListNumber(a, 0) is not (> 0 and var number) || a[number..].Trim() is not { Length: > 2 and < 40 } name || !char.IsUpper(name[0]) || !Parts.Numberless(name) || name[^1] == ',' || Hanging.Contains(name[(name.LastIndexOf(' ') + 1)..]))
        {
            return false;
        }

        if (Looks.Capitals(name))
        {
            return true;
        }

        Draft d = new(why: false);
        string food = !Parts.Numberless(b) && char.IsLetter(b[0]) ? BackAmount.Take(Folding.Line(b), lang, d) : "";
        return food.Length > 2 && d is { Amount: not null, Unit.Kind: "mass" or "volume" } && FoodIds.Match($"{name} {food}", lang) is null;
    }

    /// <summary>"• Riso" and, further in, "riso originario, 500 g": an item of its own under a name, and no rest of it. Joined, each amount would go to the next food.</summary>
    private static bool Whole(RawLine first, RawLine next, string lang) =>
        Marks.Strip(Folding.Line(first.Text)) is { Length: > 0 } a && (Looks.Amounted(a, lang) ? Alone(Folding.Line(next.Text), lang) is not null
            : Parts.Numberless(a) && a.Length < 40 && !Hanging.Contains(a[(a.LastIndexOf(' ') + 1)..]) && a[^1] != ',' && (next.Indent > first.Indent && Looks.Amounted(Folding.Line(next.Text), lang) || Alone(Folding.Line(next.Text), lang) is { } food && FoodIds.Match($"{a} {food}", lang) is null));

    /// <summary>The food everybody knows of a line that tells an amount behind it and nothing else; null for any other.</summary>
    private static string? Alone(string b, string lang)
    {
        Draft d = new(why: false);
        string food = !Parts.Numberless(b) && !char.IsAsciiDigit(b[0]) ? BackAmount.Take(b, lang, d) : "";
        food = food.IndexOf(',') is > 0 and var comma ? food[..comma] : food;
        return food.Length > 2 && d is { Amount: not null, Unit.Kind: "mass" or "volume" or "spoon" or "cup" } && FoodIds.Match(food, lang) is not null ? food : null;
    }

    /// <summary>"130 g brown butter, cooled" and "to lukewarm", "4 g cornflour mixed" and "with a little cold water": small words that open no item and no name go on with the amount over them. "for the sauce" may be a name.</summary>
    private static bool Follows(RawLine first, RawLine next, string lang)
    {
        string a = first.Text;
        string b = next.Text;
        int word = b.IndexOf(' ');
        return word is > 0 and < 6 && b.Length < 40 && char.IsAsciiDigit(a[0]) && char.IsLower(b[0]) && Openers.Contains(b[..word]) && b.AsSpan().IndexOfAnyInRange('0', '9') < 0 && b[^1] is not (':' or '.' or '?' or '!')
            && Amounts.At(a, 0, lang) is { } m && m.End < a.Length && Sections.Of(b, lang) is null && !Parts.Finish(b, lang) && Lexicon.Longest("heading", b, 0, 3, lang, out _) is null && !Feeds(b, word + 1, lang);
    }

    /// <summary>"and a few walnuts", "with milk": a food that would be hidden in the name before it; water hides nothing.</summary>
    private static bool Feeds(string b, int from, string lang)
    {
        for (int i = from; i > 0 && i < b.Length && !Waters.In(b); i = b.IndexOf(' ', i) + 1)
        {
            if (FoodIds.Match(b[i..], lang) is not null)
            {
                return true;
            }
        }

        return false;
    }

    private static readonly WordList Waters = new("water", "Wasser", "eau", "agua", "acqua");

    private static readonly HashSet<string> Openers = new(StringComparer.Ordinal) { "to", "with", "in", "and", "into", "at", "until", "from", "mit", "zu", "bis", "aus", "und", "auf", "avec", "dans", "en", "et", "à", "con", "y", "hasta", "e", "fino", "in" };

    /// <summary>A marked item that does not end, and a line right under it that goes on in small letters, or with a figure where a word still hangs.</summary>
    private static bool Broken(RawLine first, RawLine next, string lang, bool opens)
    {
        string a = first.Text;
        string b = next.Text;
        if (char.IsAsciiDigit(a[0]) && NumberedName(a, b, lang))
        {
            return false;
        }

        if (first.Block == next.Block && a.Length + b.Length <= Longest && (Label(a) && next.Indent > first.Indent && char.IsLetter(b[0]) || GoesOn(a, b, lang)))
        {
            return true;
        }

        if (first.Block == next.Block && a.Length + b.Length <= Longest && Unclosed(a) && b.IndexOf(')') is var closed && closed >= 0 && b.AsSpan(0, closed).IndexOf('(') < 0 && !Looks.Bullet(b))
        {
            // "1 celeriac (about" and "900 g), peeled"
            return true;
        }

        if (first.Block == next.Block && PartedWords.Goes(a, b))
        {
            return true;
        }

        if (first.Block == next.Block && a.Length < 12 && char.IsAsciiDigit(a[0]) && char.IsLower(b[0]) && b.Length < 40 && Amounts.At(a, 0, lang) is { Unit.Kind: "mass" or "volume" } alone && alone.End >= a.Length)
        {
            // "250 ml" and "apple juice"
            return true;
        }

        if (first.Block == next.Block && a.Length + b.Length <= Longest && a.Length > 7 && (Timed(a, b) || Cut(a, b)))
        {
            return true;
        }

        if (lang == "de" && first.Block == next.Block && char.IsUpper(b[0]) && a.Length < 40 && Looks.Bullet(a) && char.IsLower(a[a.LastIndexOf(' ') + 1]) && Halved(Marks.Strip(Folding.Line(a)), b, lang))
        {
            // "• 100 g gemahlene" and "Mandeln": a noun opens the next line in capitals.
            return true;
        }

        if (first.Block != next.Block || a.Length + b.Length > Longest || a[^1] is '.' or '!' or '?' or ':' or ';' or '|' or '。' || b.Contains('|') || !char.IsLower(b[0]) && !char.IsAsciiDigit(b[0]) || Looks.Bullet(b) || Marks.ListNumber(b, 0) > 0)
        {
            return false;
        }

        if (a[^1] == '-' && a.Length > 18 && char.IsAsciiDigit(a[^2]) && char.IsAsciiDigit(b[0]))
        {
            // "approx 11-" and "12 min": the range goes on.
            return true;
        }

        if (Follows(first, next, lang))
        {
            return true;
        }

        int space = a.LastIndexOf(' ');
        if (!(Looks.Bullet(a) || Marks.ListNumber(a, 0) > 0))
        {
            // Unmarked lines are joined only where the first surely goes on.
            bool hanging = Hanging.Contains(a[(space + 1)..]) && !AsBought(a, space) && !Done(a);
            bool counted = char.IsAsciiDigit(a[0]) && char.IsLower(b[0]) && !Leaders.In(a);
            if (counted && a.Length > 7 && (hanging && space > 3 || Halved(a, b, lang)) || opens && a[^1] == ',' && char.IsLower(b[0]) && !Greetings.Opens(a) && a.Length > 6)
            {
                return true;
            }

            bool goesOn = a[^1] == ',' && a.IndexOf(',') < a.Length - 1 || hanging || a.Contains(',') && (b.StartsWith("de ", StringComparison.Ordinal) || b.StartsWith("d'", StringComparison.Ordinal) || b.StartsWith("of ", StringComparison.Ordinal) || b.StartsWith("di ", StringComparison.Ordinal));
            return a.Length > 18 && char.IsLower(b[0]) && goesOn && !Leaders.In(a);
        }

        if (Whole(first, next, lang))
        {
            return false;
        }

        bool hangs = a[^1] == ',' || Hanging.Contains(a[(space + 1)..].TrimEnd('.'));
        return hangs ? char.IsLower(b[0]) || char.IsAsciiDigit(b[0]) : char.IsLower(b[0]) && !b.Contains(':');
    }
}
