using System.Globalization;
using NodaTime;
using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;

namespace Coulisse.Formats.Out;

/// <summary>A workbook with one sheet a table: heads in bold and fixed, figures as figures, days as days.</summary>
public static class XlsxFile
{
    /// <summary>Writes the workbook.</summary>
    /// <param name="grids">Tables; one or more, with different names.</param>
    /// <param name="cancel">Stops it.</param>
    public static async Task<byte[]> WriteAsync(IReadOnlyCollection<Grid> grids, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(grids);
        ArgumentOutOfRangeException.ThrowIfZero(grids.Count);
        using MemoryStream stream = new();
        await using (Spreadsheet book = await Spreadsheet.CreateNewAsync(stream, cancellationToken: cancel).ConfigureAwait(false))
        {
            StyleId head = book.AddStyle(new Style { Font = { Bold = true } });
            StyleId day = book.AddStyle(new Style { Format = NumberFormat.Custom("yyyy-mm-dd") });
            foreach (Grid grid in grids)
            {
                WorksheetOptions options = new() { FrozenRows = 1 };
                for (int i = 0; i < grid.Columns.Length; i++)
                {
                    int longest = grid.Rows.Select(r => i < r.Length ? CsvFile.Text(r[i]).Length : 0).Append(grid.Columns[i].Length).Max();
                    options.Column(i + 1).Width = Math.Clamp(longest + 2, 6, 60);
                }

                await book.StartWorksheetAsync(grid.Name.Length > 31 ? grid.Name[..31] : grid.Name, options, cancel).ConfigureAwait(false);
                await book.AddRowAsync([.. grid.Columns.Select(c => new Cell(c, head))], cancel).ConfigureAwait(false);
                foreach (var row in grid.Rows)
                {
                    await book.AddRowAsync([.. row.Select(c => Of(c, day))], cancel).ConfigureAwait(false);
                }
            }

            await book.FinishAsync(cancel).ConfigureAwait(false);
        }

        return stream.ToArray();
    }

    private static Cell Of(object? cell, StyleId day) => cell switch
    {
        null => default,
        decimal d => new Cell(d),
        double d => new Cell(d),
        int n => new Cell(n),
        LocalDate d => new Cell(d.ToDateTimeUnspecified(), day),
        IFormattable f => new Cell(f.ToString(null, CultureInfo.InvariantCulture)),
        _ => new Cell(cell.ToString()),
    };
}
