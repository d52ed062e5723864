using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Kitchen.Trials;

/// <summary>A sheet as people fill it in: a title, sentences, and tables under headings.</summary>
/// <param name="Title">After the first mark.</param>
/// <param name="Lines">Lines that are neither heading nor table, each with its number and the heading above it.</param>
/// <param name="Rows">Rows of tables.</param>
internal sealed record PlainSheet(string Title, ImmutableArray<SheetLine> Lines, ImmutableArray<SheetRow> Rows)
{
    public static PlainSheet Read(string text)
    {
        string title = "";
        string heading = "";
        string[]? columns = null;
        ImmutableArray<SheetLine>.Builder lines = ImmutableArray.CreateBuilder<SheetLine>();
        ImmutableArray<SheetRow>.Builder rows = ImmutableArray.CreateBuilder<SheetRow>();
        int number = 0;
        foreach (string line in text.ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim()))
        {
            number++;
            if (line.StartsWith('|'))
            {
                string[] cells = [.. line.Trim('|').Split('|').Select(c => c.Trim())];
                if (columns is null)
                {
                    columns = cells;
                }
                else if (!cells.All(c => c.Length > 0 && c.All(x => x is '-' or ':')))
                {
                    rows.Add(new SheetRow(heading, number, [.. columns], [.. cells]));
                }

                continue;
            }

            columns = null;
            if (line.StartsWith('#'))
            {
                (title, heading) = title.Length == 0 && line.StartsWith("# ", StringComparison.Ordinal) ? (line[2..].Trim(), "") : (title, line.TrimStart('#', ' '));
            }
            else if (line.Length > 0)
            {
                lines.Add(new SheetLine(heading, number, line));
            }
        }

        return new PlainSheet(title, lines.ToImmutable(), rows.ToImmutable());
    }

    public IEnumerable<SheetRow> Under(string heading) => Rows.Where(r => r.Heading.Equals(heading, StringComparison.OrdinalIgnoreCase));
}

/// <summary>A line of words.</summary>
internal sealed record SheetLine(string Heading, int Line, string Text);

/// <summary>A row of a table.</summary>
internal sealed record SheetRow(string Heading, int Line, ImmutableArray<string> Columns, ImmutableArray<string> Cells)
{
    /// <summary>A cell by its column's name or the first words of it; empty when there is none.</summary>
    public string Cell(string column)
    {
        // "Taste" is its own column, not the beginning of "Taster"
        int i = Columns.ToList().FindIndex(c => c.Equals(column, StringComparison.OrdinalIgnoreCase));
        i = i < 0 ? Columns.ToList().FindIndex(c => c.StartsWith(column, StringComparison.OrdinalIgnoreCase) && !(c.Length > column.Length && char.IsLetter(c[column.Length]))) : i;
        return i < 0 || i >= Cells.Length || Cells[i] is "–" or "-" ? "" : Cells[i];
    }

    /// <summary>A figure, with point or comma, with or without its unit; null when nothing is written.</summary>
    /// <param name="column">The column's name or its first words.</param>
    /// <param name="units">Units that may stand after it.</param>
    /// <param name="fails">Called when something is written that is no figure.</param>
    public double? Figure(string column, string[] units, Action<string> fails)
    {
        string cell = Cell(column);
        if (cell.Length == 0)
        {
            return null;
        }

        string bare = cell;
        foreach (string unit in units.Where(u => cell.EndsWith(u, StringComparison.OrdinalIgnoreCase)))
        {
            bare = cell[..^unit.Length].TrimEnd();
            break;
        }

        if (double.TryParse(bare.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double figure) && double.IsFinite(figure))
        {
            return figure;
        }

        fails(cell);
        return null;
    }
}
