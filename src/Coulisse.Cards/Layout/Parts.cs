using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Bare lines that name a part: where nothing in their dress says so, the word ("Filling", "Garniture", "Füllung") or what stands under it does.</summary>
internal static class Parts
{
    private const int Longest = 50;
    private const int Highest = 12;
    private const int MostRow = 60;

    /// <summary>True for the words of an assembly on a line of their own: "To serve", "Dressage", "仕上げ".</summary>
    public static bool Finish(string body, string lang) => body.Length < 30 && Lexicon.Word("assembly", Folding.Key(body.TrimmedEnd(": ")), lang) is not null;

    /// <summary>"C. To serve", "C) Montage": the words behind the letter of a row.</summary>
    public static string Unlettered(string body) => body.Length > 4 && char.IsAsciiLetterUpper(body[0]) && body[1] is '.' or ')' && body[2] == ' ' ? body[3..] : body;

    /// <summary>"Component 1 - Gel", "Partie 2 : mousse", "A) Dough": the first line of a part, and no title.</summary>
    public static bool Numbered(string body)
    {
        foreach (string w in (ReadOnlySpan<string>)["component", "part", "partie", "élément", "teil", "komponente", "parte", "componente", "elemento", "elaboración", "elaboracion", "preparación", "preparazione", "préparation", "rezeptur"])
        {
            if (Places.WordAt(body, 0, w) && Places.Skip(body, w.Length) is var at && at < body.Length && char.IsAsciiDigit(body[at]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True for a name over a list: one that a kitchen calls its parts by, or, behind a method, any short name over "Ingredients" or over two amounts.</summary>
    public static bool Restarts(List<RawLine> lines, int i, string body, string lang, bool method)
    {
        if (body.Length > Longest || !Looks.Heading(body) && lang != "ja" && !(body.Length > 2 && char.IsLower(body[0]) && body[^1] is not ('.' or ',')) || body.AsSpan().IndexOfAnyInRange('0', '9') >= 0 || Leaders.In(body) || Looks.Used(body, lang) || Looks.Work(body, lang) || Reading.WholeOf.Behind(body) > 0)
        {
            return false;
        }

        string next = Reading.Marks.Strip(Folding.Line(lines[i + 1].Text));
        if (next.Length == 0)
        {
            return false;
        }

        bool amounted = Looks.Amounted(next, lang) && !Looks.Work(next, lang) && !Looks.Statement(next, lang);
        if (!method)
        {
            // "Soy sauce" over an amount is a food without one.
            return amounted && Called(body, lang) && !Looks.Food(body.TrimmedEnd(": "), lang) || Rows.In(lines, i, body, amounted, lang);
        }

        return Sections.Of(next.TrimmedEnd(": "), lang) == "ingredients"
            || amounted && (Called(body, lang) || i + 2 < lines.Count && Reading.Marks.Strip(Folding.Line(lines[i + 2].Text)) is { Length: > 0 } second && Looks.Amounted(second, lang) && !Looks.Work(second, lang));
    }

    /// <summary>True for a line that may name a part: a heading by its look, and neither an amount nor "Salt to taste". What stands in brackets behind it says nothing.</summary>
    public static bool Plain(string body, string lang) =>
        !Leaders.In(body) && Titles.Unbracketed(body) is var name && Looks.Heading(name) && !(Looks.Amounted(name, lang) && !Looks.Capitals(body)) && !Looks.Used(body, lang) && !(lang == "ja" && Reading.JapaneseSizes.Told(body));

    /// <summary>"2. ROAST LAMB" over "Lamb rump 2kg": parts that are numbered, not steps.</summary>
    public static bool Counted(List<RawLine> lines, int i, int number, string lang)
    {
        if (i + 1 >= lines.Count || lines[i + 1].Block != lines[i].Block || Reading.Marks.ListNumber(lines[i + 1].Text, 0) > 0)
        {
            return false;
        }

        string body = Folding.Line(lines[i].Text.AsSpan(number)).Trimmed(" :");
        return Looks.Heading(body) && !Looks.Amounted(body, lang) && (Looks.Capitals(body) || Reading.Operations.In(body, lang).Count == 0 || Row(lines, i, body, lang)) && Listed(lines[i + 1].Text, lang) && !Looks.Work(Folding.Line(lines[i + 1].Text), lang);
    }

    /// <summary>"3. Dip" and "2. Celeriac puree" behind "1. Dough": words that may be work head a list where the first number of the row surely names a part.</summary>
    private static bool Row(List<RawLine> lines, int i, string body, string lang)
    {
        if (body.Count(' ') > 2)
        {
            return false;
        }

        for (int k = i - 1; k >= 0 && i - k < MostRow; k--)
        {
            if (Reading.Marks.ListNumber(lines[k].Text, 0) is > 0 and var number && lines[k].Indent <= lines[i].Indent)
            {
                string name = Folding.Line(lines[k].Text.AsSpan(number)).Trimmed(" :");
                if (!Looks.Heading(name) || Looks.Amounted(name, lang) || !Listed(lines[k + 1].Text, lang))
                {
                    return false;
                }

                if (Reading.Operations.In(name, lang).Count == 0)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>"flake cod into mash, shape 8 cakes" over "chill 30 mins": lines in lower case behind a list, one of which tells a time and none an amount, are the work.</summary>
    public static bool Worked(List<RawLine> lines, int i, string lang)
    {
        bool timed = false;
        for (int k = i; k < lines.Count && lines[k].Block == lines[i].Block; k++)
        {
            string body = Folding.Line(lines[k].Text);
            if (body.Length < 4 || k - i > Highest || !char.IsLower(body[0]) || body[^1] is ':' or '?' || Looks.Amounted(body, lang) || Looks.Statement(body, lang))
            {
                return false;
            }

            timed |= Looks.Timed(body, lang) || body.Contains('°') || Looks.Opens(body, lang);
        }

        return timed;
    }

    /// <summary>True for words without a figure.</summary>
    public static bool Numberless(string s) => s.AsSpan().IndexOfAnyInRange('0', '9') < 0;

    /// <summary>True when a part is called so.</summary>
    public static bool Headed(List<Piece> pieces, string label) => pieces.Exists(p => p is { Kind: PieceKind.Heading, Level: > 1 } && p.Text.Contains(label, StringComparison.OrdinalIgnoreCase));

    /// <summary>A line alone in its block over a block of at least two items: the blank line parts a name from its list.</summary>
    public static bool Apart(List<RawLine> lines, int i, string lang) =>
        i + 2 < lines.Count && lines[i + 1].Block == lines[i].Block + 1 && lines[i + 2].Block == lines[i + 1].Block && Listed(lines[i + 1].Text, lang) && Listed(lines[i + 2].Text, lang) && Folding.Line(lines[i].Text) is var name && !Looks.Food(name, lang);

    /// <summary>True for a line that is an item whatever stands around it.</summary>
    public static bool Listed(string s, string lang) => Looks.Bullet(s) || Leaders.In(s) || (Folding.Line(s) is var body && body.Length > 0 && Looks.Amounted(body, lang) && !Looks.Statement(body, lang));

    /// <summary>True when the last or the first word is one that parts are called by.</summary>
    public static bool Called(string body, string lang)
    {
        string key = Folding.Key(body.TrimmedEnd(": "));
        int last = key.LastIndexOf(' ');
        int first = key.IndexOf(' ');
        return Lexicon.Word("partname", key, lang) is not null || last > 0 && Lexicon.Word("partname", key.AsSpan(last + 1), lang) is not null || first > 0 && lang is "fr" or "es" or "it" && Lexicon.Word("partname", key.AsSpan(0, first), lang) is not null;
    }
}
