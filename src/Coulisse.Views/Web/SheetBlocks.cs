using System.Collections.Immutable;
using System.Text;

namespace Coulisse.Views.Web;

/// <summary>A sheet people fill in, as headings, words and tables to be shown and written in; the text stays the one form that is kept.</summary>
public static class SheetBlocks
{
    /// <summary>Takes a sheet apart.</summary>
    /// <param name="text">The sheet.</param>
    /// <param name="blank">The same sheet before anybody wrote in it: what stands in all rows of a column there is told, not asked. Null for a sheet that is only shown.</param>
    public static ImmutableArray<SheetBlock> Of(string text, string? blank = null)
    {
        string[] lines = [.. text.ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim())];
        ImmutableArray<SheetBlock>.Builder all = ImmutableArray.CreateBuilder<SheetBlock>();
        ImmutableArray<SheetBlock> told = blank is null || blank == text ? default : Of(blank);
        for (int i = 0; i < lines.Length; i++)
        {
            int from = i;
            if (lines[i].StartsWith('#'))
            {
                all.Add(new SheetBlock(i + 1) { Heading = lines[i].TrimStart('#', ' '), Level = lines[i].Length - lines[i].TrimStart('#').Length });
            }
            else if (lines[i].StartsWith('|'))
            {
                while (i + 1 < lines.Length && lines[i + 1].StartsWith('|'))
                {
                    i++;
                }

                ImmutableArray<string> heads = [.. Cells(lines[from])];
                ImmutableArray<ImmutableArray<string>> rows = [.. lines[(from + 1)..(i + 1)].Select(Cells).Where(c => !c.All(x => x.Length > 0 && x.All(y => y is '-' or ':'))).Select(c => Enumerable.Range(0, heads.Length).Select(k => k < c.Length ? c[k] : "").ToImmutableArray())];
                ImmutableArray<ImmutableArray<string>> printed = told.IsDefault ? rows : told.FirstOrDefault(b => b.Heads.SequenceEqual(heads))?.Rows ?? rows;
                all.Add(new SheetBlock(from + 1) { Heads = heads, Rows = rows, Told = [.. Enumerable.Range(0, heads.Length).Where(k => printed.Length > 0 && printed.All(r => r[k].Length > 0))] });
            }
            else if (lines[i].Length > 0)
            {
                while (i + 1 < lines.Length && lines[i + 1].Length > 0 && lines[i + 1][0] is not ('#' or '|'))
                {
                    i++;
                }

                all.Add(new SheetBlock(from + 1) { Words = string.Join('\n', lines[from..(i + 1)]) });
            }
        }

        return [.. all.SelectMany((b, i) => b.Level > 1 && (i + 1 == all.Count || all[i + 1].Level > 0) ? new[] { b, new SheetBlock(-b.Line) } : [b])];
    }

    /// <summary>The sheet with what was written into its fields.</summary>
    /// <param name="blocks">The sheet as it was shown.</param>
    /// <param name="written">What stands in a field; null when it was not asked.</param>
    public static string Write(ImmutableArray<SheetBlock> blocks, Func<string, string?> written)
    {
        StringBuilder b = new();
        foreach (SheetBlock block in blocks)
        {
            if (block.Level > 0)
            {
                b.Append(b.Length > 0 ? "\n" : "").Append('#', block.Level).Append(' ').Append(block.Heading).Append('\n');
            }
            else if (block.Heads.IsEmpty)
            {
                string words = (written(block.Field) ?? block.Words).ReplaceLineEndings("\n").Trim();
                b.Append(block.Line > 0 ? "\n" : "").Append(words).Append(words.Length > 0 ? "\n" : "");
            }
            else
            {
                Row(b, block.Heads);
                b.Append('|').Insert(b.Length, "---|", block.Heads.Length).Append('\n');
                foreach (ImmutableArray<string> row in block.Rows.Select((r, n) => r.Select((c, k) => written(block.Cell(n, k)) ?? c).ToImmutableArray()))
                {
                    Row(b, row);
                }

                ImmutableArray<string> more = [.. block.Heads.Select((_, k) => written(block.Cell(block.Rows.Length, k)) ?? "")];
                if (more.Any(c => c.Trim().Length > 0))
                {
                    Row(b, more);
                }
            }
        }

        return b.ToString();
    }

    private static string[] Cells(string line) => [.. line.Trim('|').Split('|').Select(c => c.Trim())];

    // a bar or a line break would end the cell
    private static void Row(StringBuilder b, ImmutableArray<string> cells)
        => b.AppendJoin("", cells.Select(c => c.Replace('|', '/').ReplaceLineEndings(" ").Trim()).Select(c => c.Length > 0 ? $"| {c} " : "| ")).Append("|\n");
}

/// <summary>A piece of a sheet: a heading, words, or a table.</summary>
/// <param name="Line">Line it begins on; below zero for the empty room under a heading.</param>
public sealed record SheetBlock(int Line)
{
    private const int Slim = 3;

    /// <summary>Heading; empty for what is none.</summary>
    public string Heading { get; init; } = "";

    /// <summary>Level of the heading; 0 for what is none.</summary>
    public int Level { get; init; }

    /// <summary>Words, as written.</summary>
    public string Words { get; init; } = "";

    /// <summary>Heads of a table; none for what is no table.</summary>
    public ImmutableArray<string> Heads { get; init; } = [];

    /// <summary>Its rows.</summary>
    public ImmutableArray<ImmutableArray<string>> Rows { get; init; } = [];

    /// <summary>Columns that are told, not asked.</summary>
    public ImmutableArray<int> Told { get; init; } = [];

    /// <summary>Columns that are worth showing while it is filled in: one that says the same in every row is not.</summary>
    public IEnumerable<int> Shown => Enumerable.Range(0, Heads.Length).Where(k => !(Told.Contains(k) && Told.Length > 1 && Rows.Length > 1 && Rows.All(r => r[k] == Rows[0][k])));

    /// <summary>Whether it stays a table on a narrow screen.</summary>
    public bool IsSlim => Shown.Count() <= Slim;

    /// <summary>Whether one more row may be written: where rows are told, they are the card's.</summary>
    public bool Grows => Told.IsEmpty;

    /// <summary>Name of the field of its words.</summary>
    public string Field => FormattableString.Invariant($"w.{Line}");

    /// <summary>Name of the field of a cell; the row behind the last is a new one.</summary>
    public string Cell(int row, int column) => FormattableString.Invariant($"c.{Line}.{row}.{column}");

    /// <summary>Whether a column takes figures, for the keys a tablet offers.</summary>
    public bool IsFigure(int column) => Heads[column] is var h && (h.EndsWith(", g", StringComparison.Ordinal) || h.Contains('°', StringComparison.Ordinal) || h.StartsWith("Minutes", StringComparison.Ordinal) || h.EndsWith(", mm", StringComparison.Ordinal));
}
