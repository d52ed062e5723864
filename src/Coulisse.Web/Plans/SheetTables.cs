using System.Collections.Immutable;
using System.Text;

namespace Coulisse.Web.Plans;

/// <summary>One table of a sheet's text, read and put back without touching anything else that stands there.</summary>
internal static class SheetTables
{
    /// <summary>Columns and rows of the table under a heading; empty when there is none.</summary>
    /// <param name="text">Sheet.</param>
    /// <param name="headings">Names the heading may have.</param>
    public static (ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows) Read(string text, params ReadOnlySpan<string> headings)
    {
        string[] lines = text.Split('\n');
        (int from, int to) = Find(lines, headings);
        string[][] rows = [.. lines[from..to].Where(l => !l.Contains("---", StringComparison.Ordinal)).Select(Cells)];
        return rows.Length == 0 ? ([], []) : ([.. rows[0]], [.. rows.Skip(1).Select(r => r.ToImmutableArray())]);
    }

    /// <summary>The sheet with another table under a heading; without rows the table goes, and its heading with it.</summary>
    /// <param name="text">Sheet.</param>
    /// <param name="headings">Names the heading may have; the first is written when there is none.</param>
    /// <param name="columns">Column heads.</param>
    /// <param name="rows">Rows.</param>
    public static string Put(string text, ReadOnlySpan<string> headings, IReadOnlyList<string> columns, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        List<string> lines = [.. text.Split('\n')];
        (int from, int to) = Find([.. lines], headings);
        int heading = Heading([.. lines], headings);
        string[] table = rows.Count == 0 ? [] : [Row(columns), "|" + string.Concat(Enumerable.Repeat("---|", columns.Count)), .. rows.Select(Row)];
        if (from < to)
        {
            lines.RemoveRange(from, to - from);
            lines.InsertRange(from, table);
            if (table.Length == 0)
            {
                // nothing stands under the heading any more unless somebody wrote there
                int end = lines.FindIndex(heading + 1, l => l.TrimStart().StartsWith('#'));
                end = end < 0 ? lines.Count : end;
                if (lines[(heading + 1)..end].TrueForAll(string.IsNullOrWhiteSpace))
                {
                    lines.RemoveRange(heading, end - heading);
                }
            }

            return string.Join('\n', lines);
        }

        if (table.Length == 0)
        {
            return text;
        }

        if (heading >= 0)
        {
            lines.InsertRange(heading + 1, ["", .. table]);
            return string.Join('\n', lines);
        }

        StringBuilder b = new(text.TrimEnd('\n', ' '));
        return b.Append("\n\n## ").Append(headings[0]).Append("\n\n").AppendJoin('\n', table).Append('\n').ToString();
    }

    private static int Heading(string[] lines, ReadOnlySpan<string> headings)
    {
        for (int i = 0; i < lines.Length; i++)
        {
            string line = lines[i].Trim();
            foreach (string heading in headings)
            {
                if (line.StartsWith('#') && line.TrimStart('#', ' ').Equals(heading, StringComparison.OrdinalIgnoreCase))
                {
                    return i;
                }
            }
        }

        return -1;
    }

    // Lines of the first table under the heading: from its first row to behind its last.
    private static (int From, int To) Find(string[] lines, ReadOnlySpan<string> headings)
    {
        int heading = Heading(lines, headings);
        if (heading < 0)
        {
            return (0, 0);
        }

        int from = heading + 1;
        while (from < lines.Length && !lines[from].TrimStart().StartsWith('|') && !lines[from].TrimStart().StartsWith('#'))
        {
            from++;
        }

        int to = from;
        while (to < lines.Length && lines[to].TrimStart().StartsWith('|'))
        {
            to++;
        }

        return (from, to);
    }

    private static string[] Cells(string line)
    {
        string inner = line.Trim();
        inner = inner.StartsWith('|') ? inner[1..] : inner;
        inner = inner.EndsWith('|') ? inner[..^1] : inner;
        return [.. inner.Split('|').Select(c => c.Trim())];
    }

    /// <summary>A bar or a line break would end the cell.</summary>
    private static string Row(IReadOnlyList<string> cells) => "| " + string.Join(" | ", cells.Select(c => c.Replace('|', '/').ReplaceLineEndings(" ").Trim())) + " |";
}
