using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Rows of a sheet pasted as values with commas or semicolons between them ("ingredient,qty,unit,prep" over "onions,800,g,\"peeled, sliced\""): the same lines with bars, so that they are read as a table.</summary>
internal static class Delimited
{
    private const int Widest = 300;
    private const int WidestHead = 160;
    private const int WidestCell = 40;
    private const int MostCells = 12;
    private const int FewestBare = 3;

    private static readonly System.Buffers.SearchValues<char> Signs = System.Buffers.SearchValues.Create(";,");

    private static readonly System.Buffers.SearchValues<char> Figures = System.Buffers.SearchValues.Create("0123456789.,/");

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
        if (at is < 1 or > WidestCell && s[0] != '"' || lines[i + 1].Block != lines[i].Block || s.Contains('|'))
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

            bool figures = lines[i].Text.AsSpan().IndexOfAnyInRange('0', '9') >= 0;
            if (figures && !Leads(lines[i].Text, sign))
            {
                continue;
            }

            string[] first = Split(lines[i].Text, sign);
            // The first row is asked alone: nearly no line is one, and its list may be long.
            if (figures ? !Plain(first, lang) : lines[i].Text.Length >= WidestHead || !Head(first, lang))
            {
                continue;
            }

            List<string[]> cells = Cells(lines, i, sign, figures ? c => Plain(c, lang) : _ => true);
            if (cells.Count >= (figures ? FewestBare : 2))
            {
                return [.. cells.Select(c => figures ? Told(c, lang) : "| " + string.Join(" | ", c) + " |")];
            }
        }

        return null;
    }

    /// <summary>A figure right behind the first sign, or a name in quotes: "onions,800,g". In "500 g flour, sifted" none stands there.</summary>
    private static bool Leads(string s, char sign) => s[0] == '"' || s.IndexOf(sign) is var at && Places.Skip(s, at + 1) is var figure && figure < s.Length && char.IsAsciiDigit(s[figure]) && char.IsLetter(s[0]);

    /// <summary>The rows from a line on that have as many cells as it has; a sheet leaves out the empty ones at the end.</summary>
    private static List<string[]> Cells(List<RawLine> lines, int i, char sign, Predicate<string[]> row)
    {
        List<string[]> rows = [];
        for (int k = i; k < lines.Count && lines[k].Block == lines[i].Block && lines[k].Text.Length < Widest; k++)
        {
            string[] cells = Split(lines[k].Text, sign);
            if (cells.Length is < 2 or > MostCells || rows.Count > 0 && (cells.Length > rows[0].Length || rows[0].Length < 2) || !row(cells))
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

    /// <summary>A row without a head: a name, a figure alone, a unit alone, and perhaps what is done to it.</summary>
    private static bool Plain(string[] c, string lang) =>
        c.Length > 2 && c[0].Length > 1 && char.IsLetter(c[0][0]) && Figure(c[1]) && (c[2].Length == 0 || Lexicon.LongestUnit(c[2], 0, lang, out int end) is not null && end >= c[2].Length);

    /// <summary>Such a row as a cook writes it.</summary>
    private static string Told(string[] c, string lang)
    {
        string done = string.Join(", ", c.Skip(3).Where(t => t.Length > 0));
        string line = lang == "ja" ? $"{c[0]} {c[1]}{c[2]}" : $"{c[1]} {c[2]} {c[0]}".Replace("  ", " ", StringComparison.Ordinal);
        return done.Length > 0 ? $"{line}, {done}" : line;
    }

    private static bool Figure(string s) => s.Length > 0 && char.IsAsciiDigit(s[0]) && s.AsSpan().IndexOfAnyExcept(Figures) < 0;

    /// <summary>The cells of a row; inside quotes the sign parts nothing, and two quotes are one.</summary>
    public static string[] Split(string s, char sign)
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
