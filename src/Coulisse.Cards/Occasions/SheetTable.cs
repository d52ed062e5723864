using Coulisse.Cards.Words;

namespace Coulisse.Cards.Occasions;

/// <summary>A table of the sheet: heading, columns, rows with their lines.</summary>
internal sealed record SheetTable(string Heading, int Line, string[] Columns, List<(int Line, string[] Cells)> Rows)
{
    /// <summary>A cell by the beginning of its column's name; empty when the table has no such column.</summary>
    public string Cell(string[] cells, string column)
    {
        int i = Array.FindIndex(Columns, c => c.StartsWith(column, StringComparison.OrdinalIgnoreCase));
        return i >= 0 && i < cells.Length && cells[i] is not ("–" or "-") ? cells[i] : "";
    }

    /// <summary>True when the column is there.</summary>
    public bool Has(string column) => Array.Exists(Columns, c => c.StartsWith(column, StringComparison.OrdinalIgnoreCase));

    /// <summary>Cells of one row of a Markdown table.</summary>
    public static string[] Cells(string line) => [.. line.Trim().Trim('|').Split('|').Select(c => Folding.Line(c.Replace("×", "×", StringComparison.Ordinal)).Trim() is var t && t == "-" ? "–" : t)];
}
