using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Columns parted by tabs or by wide gaps, as a spreadsheet or a typewriter gives them: the same lines with bars, so that they are read as a table.</summary>
internal static class Columns
{
    private const int FewestRows = 3;
    private const int Widest = 400;
    private const string Alone = " |  | ";

    /// <summary>The rows from a line on as a table with bars; null when they are none. <paramref name="end"/> is the place of the first line behind them.</summary>
    public static List<RawLine>? Of(List<RawLine> lines, int at, out int end)
    {
        end = at;
        // Only a line with cells begins a table: a bare name or unit needs rows before it.
        if (Barred(lines[at].Text) is null)
        {
            return null;
        }

        int columns = 0;
        List<RawLine> rows = [];
        List<RawLine> raw = [];
        while (end < lines.Count && lines[end].Block == lines[at].Block && lines[end].Text.Length < Widest)
        {
            if (Titles.Rule(lines[end].Text) && rows.Count > 0)
            {
                // A stroke between rows parts head and body, or rows and their sum.
                end++;
                continue;
            }

            if ((Barred(lines[end].Text) ?? Stage(lines, end, rows) ?? Units(lines, end, rows)) is not { } row || Costs(row, rows))
            {
                break;
            }

            columns = Math.Max(columns, row.Count(c => c == '|'));
            rows.Add(lines[end] with { Text = row });
            raw.Add(lines[end]);
            end++;
        }

        if (rows.Count >= FewestRows && columns >= 1 && Placed(raw, rows) is { } placed)
        {
            return placed;
        }

        // Two columns are read as lines; three and more need to know what each holds.
        // A head that names two parts, each over its two columns, is no row of them.
        int spanning = rows.Count > 0 && columns == 3 && rows[0].Text.Count(c => c == '|') == 1 ? 1 : 0;
        return rows.Count >= FewestRows && columns >= 2 && rows.Count(r => r.Text.Count(c => c == '|') >= columns - 1) * 2 > rows.Count - spanning ? Aligned(rows, columns) : null;
    }

    /// <summary>True for a line over a stroke that is the head of a table, and so no heading: what stands under the stroke has columns as well.</summary>
    public static bool Head(List<RawLine> lines, int i) =>
        i + 2 < lines.Count && lines[i + 2].Block == lines[i].Block && Barred(lines[i].Text) is { } head && head.Count(c => c == '|') >= 2
        && (Barred(lines[i + 2].Text) is not null || i + 3 < lines.Count && lines[i + 3].Block == lines[i].Block && Barred(lines[i + 3].Text) is { } next && next.Count(c => c == '|') >= 2);

    /// <summary>"TOTAL COST  76.32     COST PER PORTION  3.18": the foot of a costed sheet, set in columns of its own.</summary>
    private static bool Costs(string row, List<RawLine> rows) =>
        rows.Count > 1 && row.Count(c => c == '|') is > 1 and var bars && bars != rows[0].Text.Count(c => c == '|') && ColumnHeads.Price(row[..row.IndexOf('|')]);

    /// <summary>The name of a stage alone in its row, between rows with columns ("Sponge" over "milk   18   180", "--- Sponge ---"): a row of one cell.</summary>
    private static string? Stage(List<RawLine> lines, int i, List<RawLine> rows)
    {
        string s = lines[i].Text.Trim('-', '=', '*', ' ');
        s = s.Length > 4 && char.IsAsciiLetterUpper(s[0]) && s[1] is '.' or ')' && s[2] == ' ' ? s[3..].TrimStart() : s;
        bool between = rows.Count > 0 && i + 1 < lines.Count && lines[i + 1].Block == lines[i].Block && Barred(lines[i + 1].Text) is { } next && next.Count(c => c == '|') >= 2;
        return between && !s.Contains('|') && Looks.Heading(s) && s.AsSpan().IndexOfAnyInRange('0', '9') < 0 ? s.TrimmedEnd(": ") + Alone : null;
    }

    /// <summary>A unit alone under the head: the row of units.</summary>
    private static string? Units(List<RawLine> lines, int i, List<RawLine> rows) =>
        rows.Count == 1 && lines[i].Indent > 4 && lines[i].Text.Length < 4 && lines[i].Text.All(char.IsLetter) ? lines[i].Text : null;

    /// <summary>Rows whose cells stand under the cells of the head, where rows leave some out.</summary>
    private static List<RawLine>? Placed(List<RawLine> raw, List<RawLine> rows)
    {
        int tabs = raw.Count(r => r.Text.Contains('\t'));
        if (tabs > 0)
        {
            int least = raw.Min(r => r.Indent);
            int wide = rows[0].Text.Count(c => c == '|');
            if (tabs < raw.Count && raw.Exists(r => !r.Text.Contains('\t') && r.Text.Contains("  ", StringComparison.Ordinal)) || wide < 2 || raw.TrueForAll(r => r.Indent == least))
            {
                return null;
            }

            // A tab at the front of a row is an empty first cell.
            return [.. raw.Select((r, i) => rows[i] with { Text = Enumerable.Range(0, r.Indent - least).Aggregate(rows[i].Text, (t, _) => t.Count(c => c == '|') < wide || i == 0 ? " | " + t : t) })];
        }

        // The name of a stage stands in the first column, without its strokes and its letter.
        List<List<ColumnPlaces.Cell>> cells = [.. raw.Select((r, i) => ColumnPlaces.Of(rows[i].Text.EndsWith(Alone, StringComparison.Ordinal) ? r with { Text = rows[i].Text[..^Alone.Length] } : r))];
        if (cells.TrueForAll(c => c.Count == cells[0].Count) || cells[0].Count < 2 || ColumnPlaces.Rows(cells) is not { } placed)
        {
            return null;
        }

        // The head names every column, or all but the first; else the gaps are those of a page, not of a table.
        return placed[0].Count(c => c.Length > 0) >= placed[0].Length - 1 ? [.. rows.Select((r, i) => r with { Text = "| " + string.Join(" | ", placed[i]) + " |" })] : null;
    }

    /// <summary>A head that stands far in has no name over the first column: it is moved under its own columns.</summary>
    private static List<RawLine> Aligned(List<RawLine> rows, int columns)
    {
        RawLine head = rows[0];
        if (head.Indent > 4 && head.Text.Count(c => c == '|') < columns)
        {
            rows[0] = head with { Text = " | " + head.Text };
        }

        return rows;
    }

    private static string? Barred(string s)
    {
        if (s.Contains('|') || s[0] is '#' or '-' or '•' or '*' && s.Length > 1 && s[1] == ' ')
        {
            return null;
        }

        if (s.Contains('\t'))
        {
            return string.Join(" | ", s.Split('\t').Select(c => c.Trim()));
        }

        int gap = s.IndexOf("  ", StringComparison.Ordinal);
        if (gap <= 0)
        {
            return null;
        }

        string[] cells = s.Split("  ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return cells.Length > 1 ? string.Join(" | ", cells) : null;
    }
}
