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

    // A sheet may claim to be 16,384 columns wide and a million rows long with two cells in it, and every empty cell of it would be handed out: width is looked at first, cells are counted.
    private const int MostColumns = 256;
    private const long MostCells = 2_000_000;

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

                if (zip.Entries.Where(e => e.FullName.StartsWith("xl/worksheets/", StringComparison.OrdinalIgnoreCase) && e.FullName.EndsWith(".xml", StringComparison.OrdinalIgnoreCase)).Any(TooWide))
                {
                    return TooLarge();
                }
            }

            using MemoryStream stream = new(bytes);
            return Lines(MiniExcel.Query(stream, useHeaderRow: false, excelType: ExcelType.XLSX).Cast<IDictionary<string, object?>>().Take(MostRows)) is { } lines
                ? new Parsed<string>.Ok(lines)
                : TooLarge();
        }
        catch (Exception e) when (e is InvalidDataException or XmlException or IOException or FormatException or InvalidOperationException or KeyNotFoundException or ArgumentException or NullReferenceException or NotSupportedException)
        {
            return Refused();
        }
    }

    private static Parsed<string>.Failed TooLarge() => new([new Problem("PRI007", 0, "The workbook claims more than 256 columns or two million cells.", "Delete the empty rows and columns, or save it as CSV.")]);

    private static bool TooWide(ZipArchiveEntry sheet)
    {
        using Stream stream = sheet.Open();
        using XmlReader xml = XmlReader.Create(stream, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.Element && (xml.LocalName == "dimension" ? xml.GetAttribute("ref") : xml.LocalName == "c" ? xml.GetAttribute("r") : null) is { } at && at.Split(':').Any(c => Column(c) > MostColumns))
            {
                return true;
            }
        }

        return false;
    }

    // "AB12" is column 28
    private static int Column(string cell) => cell.TakeWhile(char.IsAsciiLetter).Take(4).Aggregate(0, (n, c) => (n * 26) + char.ToUpperInvariant(c) - 'A' + 1);

    private static Parsed<string>.Failed Refused() => new([new Problem("PRI007", 0, "This is no workbook that can be read.", "Save it as XLSX or as CSV.")]);

    // null when there are more cells than any list has
    private static string? Lines(IEnumerable<IDictionary<string, object?>> rows)
    {
        StringBuilder b = new();
        long seen = 0;
        bool begun = false;
        foreach (IDictionary<string, object?> row in rows)
        {
            seen += row.Count;
            if (seen > MostCells)
            {
                return null;
            }

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
