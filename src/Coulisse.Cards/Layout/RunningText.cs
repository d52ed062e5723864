using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A list inside running text: "GLAZE • lemon juice 80 g • isomalt 30 g Boil the juice. Add …".</summary>
internal static class RunningText
{
    private static readonly string[] Openers = ["Para el ", "Para la ", "Para los ", "Para las ", "Pour le ", "Pour la ", "Pour les ", "Pour l'", "Für den ", "Für die ", "Für das ", "Per il ", "Per lo ", "Per la ", "Per l'", "Per i ", "Per gli ", "Per le ", "For the "];
    private static readonly char[] Dots = ['•', '·', '▪', '●', '◦'];

    /// <summary>"For the stew", "Pour la pâte": a short line that opens like the name of a part.</summary>
    public static bool Opens(string body) => body.Length < 40 && body.Count(c => c == ' ') < 6 && Openers.Any(o => body.StartsWith(o, StringComparison.OrdinalIgnoreCase));

    /// <summary>"For the crust: 100 g flour, …": the same, before its list on one line.</summary>
    public static bool Led(string s) => s.AsSpan(0, Math.Min(s.Length, 50)).IndexOf(':') is > 6 and var colon && Opens(s[..colon]);

    /// <summary>"Sauce: 2 tbsp mustard, 1 egg yolk, 150 ml oil": an amount right behind the name.</summary>
    public static bool Weighed(string s) => s.AsSpan(0, Math.Min(s.Length, 50)).IndexOf(':') is > 2 and var colon && Places.Skip(s, colon + 1) is var figure && figure < s.Length && char.IsAsciiDigit(s[figure]) && s.Contains(", ", StringComparison.Ordinal);

    /// <summary>What a sentence that opens so names: "Para la masa se ponen tres huevos …" the masa. Null where no short name stands there.</summary>
    public static string? NamedBy(string sentence)
    {
        if (Openers.FirstOrDefault(o => sentence.StartsWith(o, StringComparison.OrdinalIgnoreCase)) is not { } opener)
        {
            return null;
        }

        int end = opener.Length;
        for (int words = 0; words < 4 && end < sentence.Length; words++)
        {
            int next = Places.WordEnd(sentence, end);
            if (sentence[end..next].ToLowerInvariant() is "se" or "si" or "on" or "il" or "man" or "wir" or "nimmt" or "braucht" or "brauchen" or "prendre" or "prenez" or "mélanger" or "usar" or "usare" or "servono" or "occorrono" or "hacen" or "you" or "mescolare" or "mezclar" || char.IsDigit(sentence[end]))
            {
                return words is > 0 ? sentence[opener.Length..end].Trim() : null;
            }

            if (next < sentence.Length && sentence[next] is ',' or ':')
            {
                return sentence[opener.Length..next].Trim();
            }

            end = Places.Skip(sentence, next);
        }

        return null;
    }

    /// <summary>True when a line holds a list: two or more dots with amounts behind them.</summary>
    public static bool Is(string s, string lang)
    {
        int first = s.AsSpan(1).IndexOfAny(Dots);
        // "FINISH • peanuts 80 g": one food is a list behind a name in capitals.
        return first >= 0 && (s.AsSpan(first + 2).IndexOfAny(Dots) >= 0 || first + 3 < s.Length && char.IsLetter(s[first + 3]) && Looks.Capitals(s[..(first + 1)].Trim())) && LineKinds.HasAmount(s, lang);
    }

    /// <summary>"Para el caramelo: 120 g de azúcar y 2 cucharadas de agua.": what a part takes, told in one line under its name. False for any other line.</summary>
    public static bool Labelled(RawLine raw, string lang, List<Piece> into) => MayBe(raw.Text) && Label(raw, lang, into);

    /// <summary>False only for a line without a sign that may part a name from its list: nearly every line.</summary>
    private static bool MayBe(string s) => s.AsSpan().ContainsAny(Parting) || s.Contains(". ", StringComparison.Ordinal) || PartSentences.May(s);

    private static readonly System.Buffers.SearchValues<char> Parting = System.Buffers.SearchValues.Create(":：-–—‐‑‒−－&");

    private static bool Label(RawLine raw, string lang, List<Piece> into)
    {
        string line = Folding.Line(raw.Text).TrimEnd('.', '。');
        string told = PartSentences.Coloned(line, lang, out string taking);
        bool verb = taking.Length > 0;
        string s = verb ? told : LabelSigns.Coloned(line, lang);
        int colon = s.IndexOf(':');
        if (colon is > 2 and < 30 && Served(s, colon, raw.Span, lang, into))
        {
            return true;
        }

        if (colon > 50 || colon < (lang == "ja" && s.Length > 0 && Places.IsJapanese(s[0]) ? 1 : 3) || s.AsSpan(0, Counted(s, colon)).IndexOfAnyInRange('0', '9') >= 0 || s.AsSpan(colon).IndexOfAnyInRange('0', '9') < 0)
        {
            return false;
        }

        // "Dill oil: 100 g dill, 200 g oil. Blend at 70 for 6 min.": the list ends with its sentence, what follows is work, or the next part's list ("Para el flan: …").
        int stop = LabelSigns.Stop(s, colon, lang);
        string work = stop > 0 && lang == "ja" ? s[(stop + 1)..].TrimEnd('。') + "。" : stop > 0 && stop + 2 < s.Length && (char.IsUpper(s[stop + 2]) || char.IsAsciiDigit(s[stop + 2]) || Looks.Opens(s[(stop + 2)..], lang)) ? s[(stop + 2)..] + "." : "";
        s = work.Length > 0 ? s[..stop] : s;
        bool opened = verb || Openers.Any(o => s.StartsWith(o, StringComparison.OrdinalIgnoreCase));
        string list = s[(colon + 1)..].Trim();
        int lead = Lead(list);
        taking = verb ? taking : list[..lead].Trim();
        List<string> foods = [.. Foods(list[lead..], lang).SelectMany(f => RunOn(f, lang))];
        if (foods.FindIndex(f => Timed(f, lang) && Looks.Opens(f, lang)) is > 1 and var orders && s.IndexOf(foods[orders], colon, StringComparison.Ordinal) is > 0 and var begins)
        {
            // "flan: 300 cream, 200 milk, bake 95C 40min": the list ends where the work begins.
            work = s[begins..] + "." + (work.Length > 0 ? " " + work : "");
            foods = foods[..orders];
        }

        if (!opened && !Plainly(s[..colon], foods, lang) && !Layered(s, colon, foods, lang))
        {
            return false;
        }

        if (foods.Count < 2 && !Layered(s, colon, foods, lang) && !(verb && Named(foods[0], lang)) || foods.Exists(f => Timed(f, lang)) || !foods.TrueForAll(f => f.Length is > 2 and < 80) || opened && Amounts.At(foods[0], 0, lang) is null && !(lang == "ja" && Looks.Amounted(foods[0], lang)) || foods.Count(f => LineKinds.HasAmount(f, lang) || lang == "ja" && Looks.Amounted(f, lang)) * 2 < foods.Count && !Bare(foods, lang))
        {
            return false;
        }

        into.Add(new Piece(PieceKind.Heading, Reading.Marks.Strip(s[..colon]).Trim(), raw.Span, 2));
        if (taking.Length > 0)
        {
            // No word of the card is lost: "you need" leads the list as it led the sentence.
            into.Add(new Piece(PieceKind.Paragraph, taking + ":", raw.Span));
        }

        into.AddRange(foods.Select(f => new Piece(PieceKind.Item, f, raw.Span)));
        if (work.Length > 0 && !Labelled(raw with { Text = work }, lang, into))
        {
            into.AddRange(Statements.Sentences(work).Select(sentence => new Piece(Looks.Statement(sentence, lang) ? PieceKind.Paragraph : PieceKind.Step, sentence + ".", raw.Span)));
        }

        return true;
    }

    /// <summary>Where a label ends without the number of its row: "Layer 2". The colon's place where it has none.</summary>
    private static int Counted(string s, int colon) => colon > 4 && char.IsAsciiDigit(s[colon - 1]) && s[colon - 2] == ' ' && char.IsLetter(s[colon - 3]) ? colon - 2 : colon;

    /// <summary>"Layer 3: 500 ml custard": a numbered name before one food with its amount, and no work.</summary>
    private static bool Layered(string s, int colon, List<string> foods, string lang) =>
        foods.Count == 1 && Counted(s, colon) < colon && s.AsSpan(0, colon).Count(' ') == 1 && Amounts.At(foods[0], 0, lang) is { Unit.Kind: "mass" or "volume" } m && Places.Skip(foods[0], m.End) is var food && food + 2 < foods[0].Length && char.IsLetter(foods[0][food]) && foods[0].Count(' ') < 5 && !Looks.Work(foods[0], lang) && !Timed(foods[0], lang);

    /// <summary>"To serve: crème fraîche and raspberries": foods everybody knows behind the words of an assembly, with or without amounts.</summary>
    private static bool Served(string s, int colon, Span span, string lang, List<Piece> into)
    {
        if (!Parts.Finish(s[..colon], lang) || s.Length > 160 || s.AsSpan(colon).IndexOf(". ") >= 0)
        {
            return false;
        }

        string and = Conjunction.Spaced(lang);
        string[] foods = Together(s[(colon + 1)..].Replace(and, ", ", StringComparison.OrdinalIgnoreCase).Split(", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries), lang);
        if (foods.Length == 0 || !foods.All(f => f.Length < 40 && (FoodIds.Match(f, lang) is not null || Looks.Amounted(f, lang))))
        {
            return false;
        }

        into.Add(new Piece(PieceKind.Heading, Reading.Marks.Strip(s[..colon]).Trim(), span, 2));
        into.AddRange(foods.Select(f => new Piece(PieceKind.Item, f, span)));
        return true;
    }

    /// <summary>"OIL" and under it "chive 100, grapeseed 200. blitz 70C 6 min": the same, the name on a line of its own. False for any other line.</summary>
    public static bool Headed(List<RawLine> lines, int i, string lang, List<Piece> into)
    {
        string name = Folding.Line(lines[i].Text);
        if (i + 1 >= lines.Count || lines[i + 1].Block != lines[i].Block || LabelSigns.Named(lines[i + 1].Text) || i > 0 && lines[i - 1].Block == lines[i].Block || name.Length > 40 || !Looks.Heading(name) || name.Contains(':') || !lines[i + 1].Text.Contains(", ", StringComparison.Ordinal) || Listed(lines, i + 2, lang))
        {
            return false;
        }

        int from = into.Count;
        if (!Labelled(lines[i + 1] with { Text = $"{name}: {(Looks.Bullet(lines[i + 1].Text) ? Reading.Marks.Strip(Folding.Line(lines[i + 1].Text)) : lines[i + 1].Text)}" }, lang, into))
        {
            return false;
        }

        into[from] = into[from] with { Span = lines[i].Span };
        return true;
    }

    /// <summary>True when one food with its amount stands on the line: "4 trout fillets, 120 g each" over "40 g butter" is the first line of a list, and no list in a line.</summary>
    private static bool Listed(List<RawLine> lines, int i, string lang) =>
        i < lines.Count && lines[i].Block == lines[i - 1].Block && Folding.Line(lines[i].Text) is { Length: > 0 } body && Looks.Amounted(body, lang) && !Looks.Work(body, lang) && (!body.Contains(", ", StringComparison.Ordinal) || Amounts.At(body, body.IndexOf(", ", StringComparison.Ordinal) + 2, lang) is null);

    /// <summary>"300 cream 200 milk 5 yolks salt": a list without a comma, where every figure stands before a food everybody knows; the words themselves when it is none.</summary>
    private static IEnumerable<string> RunOn(string s, string lang)
    {
        if (s.Length is < 12 or > 200 || !char.IsAsciiDigit(s[0]) || s.Contains('('))
        {
            return [s];
        }

        List<string> cut = [];
        int from = 0;
        for (int i = 1; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && s[i - 1] == ' ' && char.IsLetter(s[Math.Max(0, i - 2)]) && Named(s[from..(i - 1)], lang))
            {
                cut.Add(s[from..(i - 1)].Trim());
                from = i;
            }
        }

        string last = s[from..].Trim();
        if (cut.Count == 0 || last.IndexOf(' ') < 0)
        {
            return [s];
        }

        if (!Named(last, lang) && last.LastIndexOf(' ') is > 2 and var gap && Named(last[..gap], lang) && FoodIds.Match(last[(gap + 1)..], lang) is not null)
        {
            // "5 yolks salt"
            return [.. cut, last[..gap], last[(gap + 1)..]];
        }

        return Named(last, lang) ? [.. cut, last] : [s];
    }

    /// <summary>A figure, perhaps its unit, and a food everybody knows.</summary>
    private static bool Named(string s, string lang) => Amounts.At(s, 0, lang) is { } m && Places.Skip(s, m.End) is var food && food < s.Length && FoodIds.Match(s[PartReader.Of(s, food, lang)..], lang) is not null;

    private static readonly string[] Leads = ["you want ", "you need ", "you'll need ", "you will need ", "we use ", "i use ", "we take ", "take ", "use ", "mix ", "il faut ", "il te faut ", "il vous faut ", "on prend ", "prenez ", "man braucht ", "man nimmt ", "wir brauchen ", "wir nehmen ", "du brauchst ", "se necesitan ", "se necesita ", "necesitamos ", "hacen falta ", "ci vogliono ", "servono ", "occorrono ", "si usano "];

    /// <summary>"mix 6 min slow", "to 24C": work, and no food of a list.</summary>
    private static bool Timed(string f, string lang) => Clock.Tells(f, 0, lang) || f.Contains('°');

    /// <summary>Where the list begins behind the words that lead into it: "you want 200 g feta, …".</summary>
    private static int Lead(string s) => Leads.FirstOrDefault(l => s.StartsWith(l, StringComparison.OrdinalIgnoreCase))?.Length ?? 0;

    /// <summary>"Dressing: 3 tbsp oil, 1 tbsp vinegar, salt": any name before a list whose pieces nearly all carry an amount, and at least two of them a unit.</summary>
    private static bool Plainly(string label, List<string> foods, string lang)
    {
        if (foods.Count < 2 || label.Count(c => c == ' ') > 4 || Looks.Statement(label + ":", lang))
        {
            return false;
        }

        int amounts = foods.Count(f => Looks.Amounted(f, lang));
        if (amounts > 0 && Bare(foods, lang))
        {
            return true;
        }

        if (amounts >= 2 && foods.TrueForAll(f => Named(f, lang) || FoodIds.Match(f, lang) is not null))
        {
            // "Salad: 2 tomatoes, 1 onion, salt"
            return true;
        }

        int units = foods.Count(f => Amounts.At(f, 0, lang) is { Unit: not null } m && m.End + 2 < f.Length) + foods.Count(f => char.IsLetter(f[0]) && Looks.Amounted(f, lang));
        return amounts >= 2 && amounts * 3 >= foods.Count * 2 && (units >= 2 || units == 1 && (amounts == foods.Count || AllKnown(foods, lang)));
    }

    /// <summary>"chive 100, grapeseed 200": figures alone behind every name.</summary>
    private static bool Bare(List<string> foods, string lang) => foods.TrueForAll(f => BackAmount.Count(f.Trim(), lang, new Draft(why: false)) is not null);

    /// <summary>True when what has no amount is a food everybody knows: "6 pavés de lieu jaune, 30 g de beurre, thym".</summary>
    private static bool AllKnown(List<string> foods, string lang) => foods.TrueForAll(f => Looks.Amounted(f, lang) || FoodIds.Match(f, lang) is not null);

    /// <summary>"120 g butter / 150 g flour / 1 L milk": strokes part the foods where no comma does. "250 g / 9 oz butter" is one.</summary>
    private static bool Stroked(string s) => s.AsSpan().Count(" / ") > 1 && !s.Contains(", ", StringComparison.Ordinal);

    /// <summary>"cream, 100 ml": an amount alone behind a name without figures belongs to it.</summary>
    private static string[] Together(string[] parts, string lang)
    {
        List<string> foods = [];
        foreach (string part in parts)
        {
            if (foods.Count > 0 && foods[^1].AsSpan().IndexOfAnyInRange('0', '9') < 0 && char.IsAsciiDigit(part[0]) && Amounts.At(part, 0, lang) is { } m && m.End >= part.Length)
            {
                foods[^1] += ", " + part;
            }
            else
            {
                foods.Add(part);
            }
        }

        return foods.Count == parts.Length ? parts : [.. foods];
    }

    /// <summary>The foods of a list in a line.</summary>
    internal static IEnumerable<string> Foods(string s, string lang)
    {
        string and = Conjunction.Spaced(lang);
        string[] parts = s.Split(lang == "ja" && s.Contains('、') ? "、" : s.Contains("; ", StringComparison.Ordinal) ? "; " : Stroked(s) ? " / " : ", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        parts = Together(parts, lang);
        for (int i = 0; i < parts.Length; i++)
        {
            string part = parts[i];
            while (i + 1 < parts.Length && Tails.OnlyPreparation(parts[i + 1], lang))
            {
                // "50 g cheese, grated": how it is to be, and no food of its own
                part += ", " + parts[++i];
            }


            // "and" parts two amounts; "salt and pepper" it leaves together.
            int at = part.LastIndexOf(and, StringComparison.OrdinalIgnoreCase);
            string tail = at > 0 ? part[(at + and.Length)..] : "";
            bool inside = at > 0 && part.AsSpan(0, at).LastIndexOf('(') > part.AsSpan(0, at).LastIndexOf(')');
            if (at > 0 && !inside && LineKinds.HasAmount(part[..at], lang) && (Amounts.At(tail, 0, lang) is not null || Lexicon.Longest("part", tail, 0, 3, lang, out _) is not null || lang is "es" && tail.StartsWith("la ", StringComparison.Ordinal)))
            {
                yield return part[..at];
                yield return tail;
                continue;
            }

            yield return part.StartsWith(and.TrimStart(), StringComparison.OrdinalIgnoreCase) ? part[(and.Length - 1)..] : part;
        }
    }

    /// <summary>The pieces of such a line.</summary>
    public static void Cut(RawLine raw, string lang, List<Piece> into)
    {
        string[] parts = raw.Text.Split(Dots, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        for (int i = 0; i < parts.Length; i++)
        {
            string part = parts[i];
            if (i == 0 && !Dots.Contains(raw.Text[0]) && !LineKinds.HasAmount(part, lang))
            {
                into.Add(new Piece(PieceKind.Heading, part.TrimEnd(':'), raw.Span, 2));
                continue;
            }

            int end = AfterAmount(part, lang);
            into.Add(new Piece(PieceKind.Item, part[..end].Trim(), raw.Span));
            string tail = part[end..].Trim();
            int last = tail.LastIndexOf(". ", StringComparison.Ordinal);
            string next = i < parts.Length - 1 && last > 0 ? tail[(last + 2)..] : "";
            bool heads = next.Length > 1 && Looks.Capitals(next);
            foreach (string sentence in Statements.Sentences(heads ? tail[..last] : tail))
            {
                into.Add(new Piece(PieceKind.Step, sentence + ".", raw.Span));
            }

            if (heads)
            {
                // "… blend smooth. RYE CRUMB • rye bread 200 g"
                into.Add(new Piece(PieceKind.Heading, next.TrimEnd(':'), raw.Span, 2));
            }
        }
    }

    /// <summary>Where the last food ends and the method begins: behind the first amount that a capital follows.</summary>
    private static int AfterAmount(string s, string lang)
    {
        for (int i = 0; i < s.Length; i++)
        {
            bool begins = char.IsAsciiDigit(s[i]) && (i == 0 || s[i - 1] == ' ');
            if (begins && Amounts.At(s, i, lang) is { Unit: not null } m && Places.Skip(s, m.End) is var next && next < s.Length && char.IsUpper(s[next]))
            {
                return m.End;
            }
        }

        return s.Length;
    }
}
