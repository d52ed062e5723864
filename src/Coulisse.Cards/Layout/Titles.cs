using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Which heading is the title of the card, and what looks like one and is none: strokes, page furniture, a list told again in another size.</summary>
internal static class Titles
{
    /// <summary>True for a first heading under which every other is deeper or only divides ("### Short ribs" over "### Method"): the title.</summary>
    public static bool Alone(List<RawLine> lines, int i, int level, string lang)
    {
        int sections = 0;
        bool other = false;
        for (int k = i + 1; k < lines.Count; k++)
        {
            string s = lines[k].Text;
            if (s[0] == '#' && Hashes(s) is var deep and > 0)
            {
                bool section = Sections.Of(Hashed(s, deep), lang) is not null;
                other = true;
                sections += section || deep > level ? 1 : 0;
                if (!section && deep <= level)
                {
                    return false;
                }
            }
            else
            {
                sections += s.StartsWith("**", StringComparison.Ordinal) && s.Length < 60 ? 1 : 0;
            }
        }

        // A heading over the whole card, and no other, is its name.
        return sections > 0 || !other && i == 0;
    }

    /// <summary>True for a first line in bold over another heading, over the words of a list, or over the only table: the title. Over a list of its own it is a part.</summary>
    public static bool Bold(List<RawLine> lines, int i, string lang)
    {
        if (i + 1 >= lines.Count)
        {
            return false;
        }

        if (lines[i + 1].Block == lines[i].Block)
        {
            // "**Ravioli, sage butter**" right over "Portions: 10", and behind that the first part
            return i + 2 < lines.Count && lines[i + 2].Block != lines[i].Block && (lines[i + 2].Text[0] == '#' || lines[i + 2].Text.StartsWith("**", StringComparison.Ordinal)) && Folding.Line(lines[i + 1].Text) is { Length: > 0 } under && Looks.Statement(under, lang) && !Looks.Amounted(under, lang);
        }

        string next = lines[i + 1].Text;
        if (next[0] == '#' || next.StartsWith("**", StringComparison.Ordinal))
        {
            return true;
        }

        string body = Folding.Line(next).TrimmedEnd(": ");
        return Sections.Of(body, lang) is not null || Looks.Statement(body, lang) && !Looks.Amounted(body, lang) || next[0] == '|' && !lines.Skip(i + 1).Any(l => l.Text.StartsWith("**", StringComparison.Ordinal));
    }

    /// <summary>"Gulasch" over the only list of a card without a title: the name of the dish, and of no part of it.</summary>
    public static void Only(List<Piece> pieces, List<RawLine> lines)
    {
        if (pieces.Count is > 1 and < MostPieces && pieces[0] is { Kind: PieceKind.Heading, Level: > 1 } first && first.Span.Line == lines[0].Span.Line && lines[0].Text[0] != '#' && !Looks.Bullet(lines[0].Text) && pieces.FindIndex(1, p => p.Kind is PieceKind.Heading or PieceKind.Variant) < 0)
        {
            pieces[0] = first with { Level = 1 };
        }
    }

    private const int MostPieces = 400;

    /// <summary>A name without what stands behind it in brackets: "Country loaf (2 x 900g)", "Levain (night before, 12h @ 24°C)".</summary>
    public static string Unbracketed(string body) => body[^1] == ')' && body.IndexOf('(') is > 2 and var open ? body[..open].TrimEnd() : body;

    /// <summary>What stands behind a bracket that opens the words; the words themselves when none does.</summary>
    public static string Behind(string rest) => rest.Length > 1 && rest[0] == '(' && rest.IndexOf(')') is > 0 and var close ? rest[(close + 1)..].TrimStart() : rest;

    /// <summary>"2. Chocolate tart" over a blank line, where no other line carries the next number: the number of a recipe. Null for any other first line.</summary>
    public static string? Numbered(List<RawLine> lines)
    {
        string s = lines[0].Text;
        int end = Reading.Marks.ListNumber(s, 0);
        if (end == 0 || s.Length > 60 || s[^1] is '.' or ';' or ',' || lines.Count < 3 || lines[1].Block == lines[0].Block || !char.IsAsciiDigit(s[0]))
        {
            return null;
        }

        string name = s[end..].Trim();
        int number = s[0] - '0';
        bool goesOn = lines.Skip(1).Any(l => l.Text.Length > 1 && char.IsAsciiDigit(l.Text[0]) && l.Text[0] - '0' == number + 1 && Reading.Marks.ListNumber(l.Text, 0) > 0);
        return !goesOn && name.Length > 2 && char.IsUpper(name[0]) && !name.Any(char.IsAsciiDigit) ? name : null;
    }

    /// <summary>True for what a page hangs around a recipe: "Jump to Recipe", stars and votes.</summary>
    public static bool Furniture(string body) => body.Contains('★') || Places.HasAny(body, "Jump to", "Skip to", "Print", "Pin it", "Share", "votes", "Zum Rezept", "Imprimer", "Imprimir", "Stampa");

    /// <summary>Level of a heading by its hashes; 0 for none.</summary>
    public static int Hashes(string s)
    {
        int n = 0;
        while (n < s.Length && s[n] == '#')
        {
            n++;
        }

        // "#10 can" is a size of tin, "#. " the number of a step that the writer left to be counted
        return n == 1 && n < s.Length && (char.IsAsciiDigit(s[n]) || s[n] == '.' && n + 1 < s.Length && s[n + 1] == ' ') ? 0 : n;
    }

    /// <summary>The words of a heading behind its hashes. "## Glaze ##" and "##Glaze##" close what they open; a hash on the last word of "## Glaze no. 2#" is of the name.</summary>
    public static string Hashed(string s, int level)
    {
        string words = Folding.Line(s.AsSpan(level));
        string name = words.Trimmed(" #:");
        int end = words.TrimmedEnd(" :").Length;
        return end > 0 && words[end - 1] == '#' && name.Length > 0 && level < s.Length && char.IsWhiteSpace(s[level]) && words[..end].TrimEnd('#') is var open && open[^1] is not (' ' or ':') ? words[..end].TrimmedStart(" #:") : name;
    }

    /// <summary>A stroke across the page.</summary>
    public static bool Rule(string s) => s is "…" or "---" or "***" or "___" || (s.Length > 3 && s.AsSpan().TrimStart(s[0]).Length == 0 && s[0] is '-' or '*' or '_' or '=' or '~');

    /// <summary>"The same for two tarts": another size of the list before.</summary>
    public static bool Same(string body) => body.Length < 80 && (body.StartsWith("The same for", StringComparison.OrdinalIgnoreCase) || body.StartsWith("Same for", StringComparison.OrdinalIgnoreCase) || body.StartsWith("La même pour", StringComparison.OrdinalIgnoreCase) || body.StartsWith("Dasselbe für", StringComparison.OrdinalIgnoreCase));

    /// <summary>Level of a heading by the stroke under it; 0 for none.</summary>
    public static int Underlined(List<RawLine> lines, int i)
    {
        if (i + 1 >= lines.Count || lines[i + 1].Block != lines[i].Block || lines[i + 1].Text.Length < 3 || Looks.Bullet(lines[i].Text) || lines[i].Text.Length > 120 || lines[i].Text.Contains('|') || Columns.Head(lines, i) || HeadedColumn.Head(lines, i))
        {
            return 0;
        }

        string u = lines[i + 1].Text;
        return u.AsSpan().TrimStart('=').Length == 0 ? 1 : u.AsSpan().TrimStart('-').Length == 0 ? 2 : u.AsSpan().TrimStart('~').Length == 0 ? 3 : 0;
    }
}
