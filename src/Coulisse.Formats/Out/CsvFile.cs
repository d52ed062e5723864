using System.Globalization;
using System.Text;
using NodaTime;

namespace Coulisse.Formats.Out;

/// <summary>Comma-separated text by RFC 4180: quotes where a cell holds a comma, a quote or a line end; figures with a point; days as 2026-10-08.</summary>
public static class CsvFile
{
    /// <summary>The table as bytes in UTF-8, with a mark at the start so that spreadsheets read its accents.</summary>
    public static byte[] Write(Grid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        StringBuilder b = new();
        b.AppendJoin(',', grid.Columns.Select(Quoted)).Append("\r\n");
        foreach (var row in grid.Rows)
        {
            b.AppendJoin(',', row.Select(c => Quoted(Text(c)))).Append("\r\n");
        }

        return [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(b.ToString())];
    }

    internal static string Text(object? cell) => cell switch
    {
        null => "",
        string s => Inert(s),
        LocalDate d => d.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture),
        IFormattable f => f.ToString(null, CultureInfo.InvariantCulture),
        _ => cell.ToString() ?? "",
    };

    // a spreadsheet runs a cell that begins so; what people typed is text (OWASP, CSV injection)
    private static string Inert(string text) => text.Length > 0 && text[0] is ('=' or '+' or '-' or '@' or '\t' or '\r') ? "'" + text : text;

    private static string Quoted(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
