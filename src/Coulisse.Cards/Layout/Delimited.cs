using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Rows of a sheet pasted as values with commas or semicolons between them ("ingredient,qty,unit,prep" over "onions,800,g,\"peeled, sliced\""): the same lines with bars, so that they are read as a table.</summary>
internal static class Delimited
{
    private const int Widest = 300;
    private const int WidestHead = 160;
    private const int MostCells = 12;
    private const int FewestBare = 3;

    private static readonly System.Buffers.SearchValues<char> Signs = System.Buffers.SearchValues.Create(";,");

    /// <summary>The lines with bars for such signs; the same list where no such rows stand.</summary>
    public static List<RawLine> Barred(List<RawLine> lines, string lang)
    {
        List<RawLine>? barred = null;
        for (int i = 0; i + 1 < lines.Count; i++)
        {
            if (!May(lines, i) || Rows(lines, i, lang) is not { Count: > 1 } rows)
            {
                continue;
            }

            barred ??= [.. lines];
            for (int k = 0; k < rows.Count; k++)
            {
                barred[i + k] = lines[i + k] with { Text = rows[k] };
            }

            i += rows.Count - 1;
        }

        return barred ?? lines;
    }

    /// <summary>False for nearly every line: the sign stands in it and in the one under it, where a figure stands as well.</summary>
    private static bool May(List<RawLine> lines, int i)
    {
        string s = lines[i].Text;
        int at = s.Length is > 4 and < Widest ? s.AsSpan().IndexOfAny(Signs) : -1;
        if (at < 1 || lines[i + 1].Block != lines[i].Block || s.Contains('|'))
        {
            return false;
        }

        string next = lines[i + 1].Text;
        return next.Length < Widest && next.AsSpan().IndexOfAny(Signs) > 0 && next.AsSpan().IndexOfAnyInRange('0', '9') > 0;
    }

    private static List<string>? Rows(List<RawLine> lines, int i, string lang)
    {
        foreach (char sign in (ReadOnlySpan<char>)[';', ','])
        {
            if (!lines[i].Text.Contains(sign))
            {
                continue;
            }

            bool headed = lines[i].Text.Length < WidestHead && lines[i].Text.AsSpan().IndexOfAnyInRange('0', '9') < 0;
            List<string[]> cells = Cells(lines, i, sign);
            if (cells.Count > 1 && headed && Head(cells[0], lang))
            {
                return [.. cells.Select(c => "| " + string.Join(" | ", c) + " |")];
            }

            if (!headed && cells.Count >= FewestBare && Plain(cells, lang) is { } plain)
            {
                return plain;
            }
        }

        return null;
    }

    /// <summary>The rows from a line on that have as many cells as it has; a sheet leaves out the empty ones at the end.</summary>
    private static List<string[]> Cells(List<RawLine> lines, int i, char sign)
    {
        List<string[]> rows = [];
        for (int k = i; k < lines.Count && lines[k].Block == lines[i].Block && lines[k].Text.Length < Widest; k++)
        {
            string[] cells = Split(lines[k].Text, sign);
            if (cells.Length is < 2 or > MostCells || rows.Count > 0 && (cells.Length > rows[0].Length || rows[0].Length < 2))
            {
                break;
            }

            rows.Add(cells);
        }

        return rows;
    }

    /// <summary>A head of short words: one says the column holds the foods, another that it weighs. "Salt, pepper and other items, a good amount of each" is none.</summary>
    private static bool Head(string[] cells, string lang) =>
        Array.TrueForAll(cells, c => c.Length < 30 && c.AsSpan().Count(' ') < 3) && Array.Exists(cells, TableColumns.Opens) && Array.Exists(cells, c => !TableColumns.Opens(c) && ColumnHeads.Weighs(c, lang));

    /// <summary>Rows without a head: a name, a figure alone, a unit alone, and perhaps what is done to it. Null for anything else.</summary>
    private static List<string>? Plain(List<string[]> rows, string lang)
    {
        List<string> lines = [];
        foreach (string[] c in rows)
        {
            if (c.Length < 3 || c[0].Length < 2 || !char.IsLetter(c[0][0]) || !Figure(c[1]) || c[2].Length > 0 && (Lexicon.LongestUnit(c[2], 0, lang, out int end) is null || end < c[2].Length))
            {
                return null;
            }

            string done = string.Join(", ", c.Skip(3).Where(t => t.Length > 0));
            string line = lang == "ja" ? $"{c[0]} {c[1]}{c[2]}" : $"{c[1]} {c[2]} {c[0]}".Replace("  ", " ", StringComparison.Ordinal);
            lines.Add(done.Length > 0 ? $"{line}, {done}" : line);
        }

        return lines;
    }

    private static bool Figure(string s) => s.Length > 0 && char.IsAsciiDigit(s[0]) && s.AsSpan().IndexOfAnyExcept("0123456789.,/") < 0;

    /// <summary>The cells of a row; inside quotes the sign parts nothing, and two quotes are one.</summary>
    private static string[] Split(string s, char sign)
    {
        if (!s.Contains('"'))
        {
            return s.Split(sign, StringSplitOptions.TrimEntries);
        }

        List<string> cells = [];
        System.Text.StringBuilder cell = new();
        bool quoted = false;
        for (int i = 0; i < s.Length; i++)
        {
            if (s[i] == '"' && quoted && i + 1 < s.Length && s[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (s[i] == '"' && (quoted || cell.ToString().Trim().Length == 0))
            {
                quoted = !quoted;
            }
            else if (s[i] == sign && !quoted)
            {
                cells.Add(cell.ToString().Trim());
                cell.Clear();
            }
            else
            {
                cell.Append(s[i] == '|' ? '/' : s[i]);
            }
        }

        cells.Add(cell.ToString().Trim());
        return [.. cells];
    }
}
