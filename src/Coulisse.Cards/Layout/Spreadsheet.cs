namespace Coulisse.Cards.Layout;

/// <summary>
/// A card kept in a spreadsheet and pasted whole: a title, rows of a label and its value, the head of the list, the list, and under it the method, all in the same columns.
/// The rows of the list are given bars, so that they are read as one table whatever empty rows part them; the others become the lines a cook would write ("Yield: 5 l", "1. Sweat the onions").
/// </summary>
internal static class Spreadsheet
{
    private const int FewestRows = 3;
    private const int Near = 4;
    private const int Widest = 400;

    /// <summary>The lines as written by hand; the same list for any card that is no such sheet. Rows that tell of the house ("Cost per portion | 0.60") go beside.</summary>
    public static List<RawLine> Told(List<RawLine> lines, List<RawLine> asides, string lang)
    {
        if (Sign(lines) is not { } sign)
        {
            return lines;
        }

        List<SpreadsheetRow> rows = new(lines.Count);
        foreach (RawLine line in lines)
        {
            rows.Add(new SpreadsheetRow(line, sign, lang));
        }

        bool headed = Headed(rows);
        return headed || Headless(rows, sign) ? new SpreadsheetLines(rows, !headed, asides, lang).Of() : lines;
    }

    /// <summary>True where a row names the columns, and one with an amount stands near under it.</summary>
    private static bool Headed(List<SpreadsheetRow> rows)
    {
        int head = -1;
        for (int i = 0; i + 1 < rows.Count && (head < 0 || i < head + Near); i++)
        {
            head = head < 0 && rows[i].HeadOver(rows[i + 1], i + 2 < rows.Count ? rows[i + 2] : null) ? i : head;
            if (head >= 0 && rows[i + 1].Amounted)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True for foods with their amounts in three rows running, where other rows than those need their cells too: a label, or steps with their numbers.</summary>
    private static bool Headless(List<SpreadsheetRow> rows, char sign)
    {
        int run = 0;
        int longest = 0;
        bool others = false;
        foreach (SpreadsheetRow row in rows)
        {
            run = row.Plain ? run + 1 : 0;
            longest = Math.Max(longest, run);
            others |= row.Filled > 1 && (row.Label is not null || row is { Number: 1, Worked: true });
        }

        return sign == '\t' && longest >= FewestRows && others;
    }

    /// <summary>What parts the cells: a tab in some rows, or one sign that every row has as often as the first; null for nearly every card.</summary>
    private static char? Sign(List<RawLine> lines)
    {
        int tabs = 0;
        foreach (RawLine line in lines)
        {
            if (line.Text.Length > Widest && line.Text.Contains('\t') || line.Text[0] is '|')
            {
                return null;
            }

            tabs += line.Text.Contains('\t') ? 1 : 0;
        }

        return tabs >= FewestRows ? '\t' : Even(lines, ';') || Ruled(lines) ? ';' : Even(lines, ',') ? ',' : null;
    }

    /// <summary>A sheet saved as values gives every row all its signs, those of its empty cells too.</summary>
    private static bool Even(List<RawLine> lines, char sign)
    {
        int first = lines.Count < FewestRows ? 0 : Signs(lines[0].Text, sign);
        for (int i = 1; first > 0 && i < lines.Count; i++)
        {
            first = Signs(lines[i].Text, sign) == first ? first : 0;
        }

        return first > 0;
    }

    /// <summary>A semicolon in every row, never with a blank behind it as a sentence has one, and two and more in most: such a sheet may leave out the signs of its empty cells.</summary>
    private static bool Ruled(List<RawLine> lines)
    {
        int rows = 0;
        foreach (RawLine line in lines)
        {
            if (!line.Text.Contains(';') || line.Text.Contains("; ", StringComparison.Ordinal))
            {
                return false;
            }

            rows += line.Text.AsSpan().Count(';') > 1 ? 1 : 0;
        }

        return rows >= FewestRows && rows * 2 > lines.Count;
    }

    private static int Signs(string s, char sign)
    {
        int n = 0;
        bool quoted = false;
        foreach (char c in s)
        {
            quoted ^= c == '"';
            n += c == sign && !quoted ? 1 : 0;
        }

        return n;
    }
}
