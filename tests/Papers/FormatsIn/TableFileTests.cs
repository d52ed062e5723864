using System.IO.Compression;
using System.Text;
using Coulisse.Cards;
using Coulisse.Formats.In;
using Coulisse.Formats.Out;
using Coulisse.Kitchen.Needs;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using NodaTime;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>Price lists as workbooks, written by libraries that do not read them.</summary>
public sealed class TableFileTests
{
    private static string Text(byte[] bytes) => Assert.IsType<Parsed<string>.Ok>(TableFile.Text(bytes)).Value;

    [Fact]
    public async Task A_workbook_with_days_and_figures_gives_the_list_that_was_written()
    {
        byte[] bytes = await XlsxFile.WriteAsync([new Grid("Prices", ["Artikel", "Lieferant", "Inhalt", "Preis", "gültig ab"],
            [Grid.Row("Butter, ungesalzen", "Molkerei", "250 g", 2.45m, new LocalDate(2026, 10, 8)), Grid.Row("Zitronen \"bio\"", "Hof", "1 Stück", 0.3m, null)])], TestContext.Current.CancellationToken);
        PriceList list = Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read(Text(bytes), "EUR")).Value;

        Assert.Equal([("Butter, ungesalzen", 250m, 2.45m), ("Zitronen \"bio\"", 1m, 0.3m)], list.Rows.Select(r => (r.Item, r.PackSize, r.Price.Amount)));
        Assert.Equal(new LocalDate(2026, 10, 8), list.Rows[0].Since);
    }

    [Fact]
    public void What_stands_above_the_heads_is_left_out_and_lines_keep_their_numbers()
    {
        byte[] bytes = Book(["Winter list of a wholesaler"], ["from January"], [], ["item", "pack", "unit", "price"], ["butter", "250", "g", "2.45"], ["flour", "1", "stone", "3"]);
        Parsed<PriceList> read = PriceList.Read(Text(bytes), "D");

        Assert.Equal(("PRI002", 6), Assert.IsType<Parsed<PriceList>.Failed>(read).Problems.Select(p => (p.Code, p.Line)).Single());
    }

    [Theory]
    [InlineData(new byte[] { 0x50, 0x4B, 0x03, 0x04, 1, 2, 3 })]
    [InlineData(new byte[] { 0, 1, 2, 3, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 })]
    public void What_is_no_table_is_refused_and_nothing_is_thrown(byte[] bytes) => Assert.IsType<Parsed<string>.Failed>(TableFile.Text(bytes));

    // A hundred million of a letter by ten entities of ten, in the part that holds the words of a workbook.
    [Fact]
    public void A_workbook_whose_words_unfold_without_end_is_refused()
    {
        StringBuilder entities = new("<!ENTITY a0 \"aaaaaaaaaa\">");
        for (int i = 1; i < 9; i++)
        {
            entities.Append(System.Globalization.CultureInfo.InvariantCulture, $"<!ENTITY a{i} \"{string.Concat(Enumerable.Repeat($"&a{i - 1};", 10))}\">");
        }

        byte[] bomb = With(Book(["item", "pack", "price"]), "xl/sharedStrings.xml", $"<?xml version=\"1.0\"?><!DOCTYPE sst [{entities}]><sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" count=\"1\"><si><t>&a8;</t></si></sst>");
        Assert.Equal("PRI007", Assert.Single(Assert.IsType<Parsed<string>.Failed>(TableFile.Text(bomb)).Problems).Code);
    }

    [Fact]
    public void A_workbook_that_fetches_from_elsewhere_is_refused_and_a_file_of_this_machine_is_not_read()
    {
        string secret = Path.GetTempFileName();
        try
        {
            File.WriteAllText(secret, "what only this machine knows");
            byte[] bytes = With(Book(["item", "pack", "price"]), "xl/sharedStrings.xml", $"<?xml version=\"1.0\"?><!DOCTYPE sst [<!ENTITY s SYSTEM \"file://{secret}\">]><sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" count=\"1\"><si><t>&s;</t></si></sst>");
            Assert.IsType<Parsed<string>.Failed>(TableFile.Text(bytes));
        }
        finally
        {
            File.Delete(secret);
        }
    }

    [Fact]
    public void A_sheet_that_claims_to_be_as_wide_and_long_as_a_sheet_can_be_costs_no_more_than_what_stands_in_it()
    {
        byte[] wide = With(Book(["item", "pack", "price"], ["butter", "250 g", "2"]), "xl/worksheets/sheet1.xml",
            "<?xml version=\"1.0\"?><worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><dimension ref=\"A1:XFD1048576\"/><sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>item</t></is></c></row><row r=\"1048576\"><c r=\"XFD1048576\" t=\"inlineStr\"><is><t>end</t></is></c></row></sheetData></worksheet>");
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal("PRI007", Assert.Single(Assert.IsType<Parsed<string>.Failed>(TableFile.Text(wide)).Problems).Code);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 10_000_000);
    }

    [Fact]
    public void A_workbook_that_unpacks_to_gigabytes_is_refused_before_it_is_unpacked()
    {
        using MemoryStream stream = new();
        using (ZipArchive zip = new(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            using Stream entry = zip.CreateEntry("xl/worksheets/sheet1.xml", CompressionLevel.Fastest).Open();
            byte[] block = new byte[1_000_000];
            for (int i = 0; i < 300; i++)
            {
                entry.Write(block);
            }
        }

        Assert.IsType<Parsed<string>.Failed>(TableFile.Text(stream.ToArray()));
    }

    // The workbook with one of its parts put in the place of another, or added.
    private static byte[] With(byte[] book, string part, string text)
    {
        using MemoryStream stream = new();
        stream.Write(book);
        using (ZipArchive zip = new(stream, ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.Entries.FirstOrDefault(e => e.FullName.Equals(part, StringComparison.OrdinalIgnoreCase))?.Delete();
            using StreamWriter writer = new(zip.CreateEntry(part).Open());
            writer.Write(text);
        }

        return stream.ToArray();
    }

    private static byte[] Book(params string[][] rows)
    {
        using MemoryStream stream = new();
        using (SpreadsheetDocument book = SpreadsheetDocument.Create(stream, SpreadsheetDocumentType.Workbook))
        {
            WorkbookPart part = book.AddWorkbookPart();
            WorksheetPart sheet = part.AddNewPart<WorksheetPart>();
            sheet.Worksheet = new Worksheet(new SheetData(rows.Select((r, i) => new Row(r.Select(c => new Cell { DataType = CellValues.InlineString, InlineString = new InlineString(new Text(c)) })) { RowIndex = (uint)(i + 1) })));
            part.Workbook = new Workbook(new Sheets(new Sheet { Id = part.GetIdOfPart(sheet), SheetId = 1, Name = "A" }));
        }

        return stream.ToArray();
    }
}
