using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using Coulisse.Cards;
using MiniExcelLibs;
using NodaTime;

namespace Coulisse.Formats.In;

/// <summary>A table as it comes: CSV in any usual encoding, or the first sheet of a workbook (XLSX), as text of lines and cells.</summary>
/// <remarks>What stands above the row of heads (a title, a date, an address) is left out; lines keep the numbers they have in the file.</remarks>
public static class TableFile
{
    private const long MostBytes = 200_000_000;
    private const int MostRows = 200_000;

    /// <summary>The text of a table.</summary>
    /// <param name="bytes">The file.</param>
    public static Parsed<string> Text(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        if (bytes is not [0x50, 0x4B, 0x03, 0x04, ..])
        {
            return TextBytes.Read(bytes);
        }

        try
        {
            using (ZipArchive zip = new(new MemoryStream(bytes), ZipArchiveMode.Read))
            {
                if (zip.Entries.All(e => !e.FullName.StartsWith("xl/", StringComparison.OrdinalIgnoreCase)) || zip.Entries.Sum(e => e.Length) > MostBytes)
                {
                    return Refused();
                }
            }

            using MemoryStream stream = new(bytes);
            return new Parsed<string>.Ok(Lines(MiniExcel.Query(stream, useHeaderRow: false, excelType: ExcelType.XLSX).Cast<IDictionary<string, object?>>().Take(MostRows)));
        }
        catch (Exception e) when (e is InvalidDataException or XmlException or IOException or FormatException or InvalidOperationException or KeyNotFoundException or ArgumentException or NullReferenceException or NotSupportedException)
        {
            return Refused();
        }
    }

    private static Parsed<string>.Failed Refused() => new([new Problem("PRI007", 0, "This is no workbook that can be read.", "Save it as XLSX or as CSV.")]);

    private static string Lines(IEnumerable<IDictionary<string, object?>> rows)
    {
        StringBuilder b = new();
        bool begun = false;
        foreach (IDictionary<string, object?> row in rows)
        {
            string[] cells = [.. row.Values.Select(Cell)];

            // the heads are the first row with three cells or more: above it stand titles
            begun |= cells.Count(c => c.Length > 0) >= 3;
            b.AppendJoin('\t', begun ? cells.Select(Quoted) : []).Append('\n');
        }

        return b.ToString();
    }

    private static string Cell(object? value) => value switch
    {
        null => "",
        double d => ((decimal)d).ToString(CultureInfo.InvariantCulture),
        DateTime t => LocalDateTime.FromDateTime(t).Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture),
        IFormattable f => f.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString()?.Trim() ?? "",
    };

    private static string Quoted(string text) => text.AsSpan().IndexOfAny("\t\"\r\n") < 0 ? text : "\"" + text.ReplaceLineEndings(" ").Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
