namespace Coulisse.Cards.Layout;

/// <summary>Cells of a page set with a typewriter, put under the columns they stand in: a gap where a row says nothing is an empty cell.</summary>
internal static class ColumnPlaces
{
    private const int Most = 20;

    /// <summary>What stands in a row, and from where to where on the page.</summary>
    public readonly record struct Cell(string Text, int From, int To);

    /// <summary>The cells of a line that two spaces and more part.</summary>
    public static List<Cell> Of(RawLine line)
    {
        List<Cell> cells = [];
        string s = line.Text;
        int place = line.Indent;
        for (int i = 0; i < s.Length;)
        {
            int end = s.IndexOf("  ", i, StringComparison.Ordinal);
            end = end < 0 ? s.Length : end;
            int width = Width(s.AsSpan(i, end - i));
            if (end > i)
            {
                cells.Add(new Cell(s[i..end].Trim(), place, place + width));
            }

            place += width;
            i = end;
            while (i < s.Length && s[i] is ' ' or '　')
            {
                place += s[i] == ' ' ? 1 : 2;
                i++;
            }
        }

        return cells;
    }

    /// <summary>Rows of as many cells as there are columns; null when two cells of a row stand in one column, or when no column can be seen.</summary>
    public static List<string[]>? Rows(List<List<Cell>> rows)
    {
        List<(int From, int To, bool Head, bool Body)> columns = [];
        foreach ((Cell cell, int row) in rows.SelectMany((r, n) => r.Count > 1 || n == 0 || r.TrueForAll(c => c.Text.Length < 4) ? r.Select(c => (c, n)) : []).OrderBy(c => c.c.From))
        {
            if (columns.Count > 0 && cell.From < columns[^1].To)
            {
                columns[^1] = (columns[^1].From, Math.Max(columns[^1].To, cell.To), columns[^1].Head || row == 0, columns[^1].Body || row > 0);
            }
            else
            {
                columns.Add((cell.From, cell.To, row == 0, row > 0));
            }
        }

        // A head beside its figures, and not over them, is the head of the figures next to it.
        for (int c = columns.Count - 1; c > 0; c--)
        {
            if (columns[c].Head != columns[c].Body && columns[c - 1].Head != columns[c - 1].Body && columns[c].Head != columns[c - 1].Head)
            {
                columns[c - 1] = (columns[c - 1].From, columns[c].To, true, true);
                columns.RemoveAt(c);
            }
        }

        if (columns.Count is < 3 or > Most)
        {
            return null;
        }

        List<string[]> placed = [];
        foreach (List<Cell> row in rows)
        {
            string[] cells = new string[columns.Count];
            Array.Fill(cells, "");
            foreach (Cell cell in row)
            {
                int at = row.Count == 1 && cell.From <= columns[0].To && cell.Text.Length > 3 ? 0 : columns.FindIndex(c => cell.From < c.To && c.From < cell.To);
                if (at < 0 || cells[at].Length > 0)
                {
                    return null;
                }

                cells[at] = cell.Text;
            }

            placed.Add(cells);
        }

        return placed;
    }

    /// <summary>Signs of East Asia take two places on a page with places of one width.</summary>
    private static int Width(ReadOnlySpan<char> s)
    {
        int n = 0;
        foreach (char c in s)
        {
            n += c is >= '\u1100' and <= '\u115F' or >= '\u2E80' and <= '\uA4CF' or >= '\uAC00' and <= '\uD7A3' or >= '\uF900' and <= '\uFAFF' or >= '\uFF00' and <= '\uFF60' ? 2 : 1;
        }

        return n;
    }
}
