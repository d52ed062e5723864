using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Columns parted by tabs or by wide gaps, as a spreadsheet or a typewriter gives them: the same lines with bars, so that they are read as a table.</summary>
internal static class Columns
{
    private const int FewestRows = 3;
    private const int Widest = 400;

    /// <summary>The rows from a line on as a table with bars; null when they are none. <paramref name="end"/> is the place of the first line behind them.</summary>
    public static List<RawLine>? Of(List<RawLine> lines, int at, out int end)
    {
        end = at;
        int columns = 0;
        List<RawLine> rows = [];
        while (end < lines.Count && lines[end].Block == lines[at].Block && lines[end].Text.Length < Widest && (Barred(lines[end].Text) ?? Stage(lines, end, rows)) is { } row)
        {
            columns = Math.Max(columns, row.Count(c => c == '|'));
            rows.Add(lines[end] with { Text = row });
            end++;
        }

        // Two columns are read as lines; three and more need to know what each holds.
        return rows.Count >= FewestRows && columns >= 2 && rows.Count(r => r.Text.Count(c => c == '|') >= columns - 1) * 2 > rows.Count ? Aligned(rows, columns) : null;
    }

    /// <summary>The name of a stage alone in its row, between rows with columns ("Sponge" over "milk   18   180"): a row of one cell.</summary>
    private static string? Stage(List<RawLine> lines, int i, List<RawLine> rows)
    {
        string s = lines[i].Text;
        bool between = rows.Count > 0 && i + 1 < lines.Count && lines[i + 1].Block == lines[i].Block && Barred(lines[i + 1].Text) is { } next && next.Count(c => c == '|') >= 2;
        return between && !s.Contains('|') && Looks.Heading(s) && s.AsSpan().IndexOfAnyInRange('0', '9') < 0 ? s.TrimmedEnd(": ") + " |  | " : null;
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
