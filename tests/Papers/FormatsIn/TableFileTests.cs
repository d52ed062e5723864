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
