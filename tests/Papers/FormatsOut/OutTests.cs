using System.Globalization;
using System.Text;
using System.Text.Json;
using Coulisse.Flows;
using Coulisse.Formats.Out;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Papers;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using Ical.Net.CalendarComponents;
using MiniExcelLibs;
using NodaTime;
using Calendar = Ical.Net.Calendar;

namespace Coulisse.Papers.Tests.FormatsOut;

/// <summary>Workbook, comma-separated text and calendar are read back by libraries that did not write them.</summary>
public sealed class OutTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-out-").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task The_workbook_is_valid_and_holds_every_figure_of_the_order()
    {
        PaperBundle demo = Demo.Planned();
        byte[] bytes = await XlsxFile.WriteAsync([.. KitchenGrids.Of(demo.Order!), .. KitchenGrids.Of(demo.Costing!), KitchenGrids.Record(demo.Batches.Select(b => (demo.TitleOf(b), b)))], TestContext.Current.CancellationToken);
        using SpreadsheetDocument book = SpreadsheetDocument.Open(new MemoryStream(bytes), false);
        Assert.Empty(new OpenXmlValidator().Validate(book, TestContext.Current.CancellationToken));

        string[] names = [.. book.WorkbookPart!.Workbook!.Descendants<Sheet>().Select(s => s.Name!.Value!)];
        Assert.Equal(["Order", "From stock", "Not ordered", "Cost", "Cost by part", "Record"], names);
        decimal[] sums = [.. Cells(book, 0).Skip(1).Select(r => decimal.Parse(r[6], CultureInfo.InvariantCulture))];
        Assert.Equal(demo.Order!.Lines.SelectMany(l => l.Packs).Count(), sums.Length);
        Assert.Equal(demo.Order.Total.Amount, sums.Sum());
    }

    [Fact]
    public void Comma_separated_text_is_read_by_another_reader_with_every_sign()
    {
        Grid odd = new("odd", ["a", "b,c", "d"], [Grid.Row("plain", 1.5m, new LocalDate(2026, 10, 8)), Grid.Row("with, comma and \"quotes\"", null, 3), Grid.Row("two\nlines", -2.25, "żółtko 黄身")]);
        string file = Path.Combine(_folder, "odd.csv");
        File.WriteAllBytes(file, CsvFile.Write(odd));
        IDictionary<string, object>[] read = [.. MiniExcel.Query(file, useHeaderRow: true, excelType: ExcelType.CSV).Cast<IDictionary<string, object>>()];

        Assert.Equal(["a", "b,c", "d"], read[0].Keys);
        Assert.Equal("with, comma and \"quotes\"", read[1]["a"]);
        Assert.Equal("1.5", read[0]["b,c"]);
        Assert.Equal("2026-10-08", read[0]["d"]);
        Assert.Equal("two\nlines", ((string)read[2]["a"]).ReplaceLineEndings("\n"));
        Assert.Equal("żółtko 黄身", read[2]["d"]);
    }

    [Fact]
    public void A_persons_calendar_holds_their_tasks_cues_and_alarms_and_nobody_elses()
    {
        Plan plan = Demo.Planned().Plan!;
        string person = plan.Twins[0].BroughtBy;
        Calendar read = Calendar.Load(CalendarFile.Write(plan, person, Instant.FromUtc(2026, 10, 7, 12, 0)))!;
        CalendarEvent[] events = [.. read.Events];

        PlannedTask[] own = [.. plan.Tasks.Where(t => t.People.Contains(person))];
        Assert.Equal(own.Length + plan.RunSheet.Length + plan.Twins.Count(t => t.BroughtBy == person), events.Length);
        foreach (PlannedTask t in own)
        {
            CalendarEvent e = events.Single(e => e.Uid!.StartsWith(t.Id + "-", StringComparison.Ordinal));
            Assert.Equal(t.Text, e.Summary);
            Assert.Equal(t.Start.ToDateTimeUnspecified(), e.DtStart!.Value);
            Assert.Equal(t.End.ToDateTimeUnspecified(), e.DtEnd!.Value);
            Assert.Equal(-10, Assert.Single(e.Alarms).Trigger!.Duration!.Value.Minutes);
            Assert.Null(e.DtStart.TzId);
        }

        Assert.Equal(events.Length, events.Select(e => e.Uid).Distinct().Count());
        Assert.DoesNotContain(events, e => plan.Tasks.Any(t => !t.People.Contains(person) && e.Uid!.StartsWith(t.Id + "-", StringComparison.Ordinal)));
    }

    [Fact]
    public void No_line_of_a_calendar_is_longer_than_the_standard_allows_and_none_cuts_a_sign()
    {
        Plan plan = Bundles.Plan() with { Tasks = [Bundles.Plan().Tasks[0] with { Text = string.Concat(Enumerable.Repeat("黄身żółtko; a, b\\c ", 20)) }] };
        string text = CalendarFile.Write(plan, null, Instant.FromUtc(2026, 10, 7, 12, 0));

        Assert.All(text.Split("\r\n"), l => Assert.True(Encoding.UTF8.GetByteCount(l) <= 75));
        Assert.Equal(plan.Tasks[0].Text, Calendar.Load(text)!.Events.First(e => e.Uid!.StartsWith('a')).Summary);
    }

    [Theory]
    [InlineData("xlsx", 1)]
    [InlineData("csv", 6)]
    [InlineData("ics", 6)]
    [InlineData("json", 1)]
    [InlineData("jsonld", 3)]
    public void Each_form_is_written_and_named(string form, int files)
    {
        PrintedSet set = PrintOut.Write(Demo.Planned(), PaperChoice.All, _folder, form);
        Assert.Equal(files, set.Files.Length);
        Assert.All(set.Files, f => Assert.True(new FileInfo(f.File).Length > 20));
    }

    [Fact]
    public void The_bundle_as_JSON_says_what_the_sheets_say()
    {
        PaperBundle demo = Demo.Planned();
        PrintOut.Write(demo, PaperChoice.All, _folder, "json");
        using JsonDocument read = JsonDocument.Parse(File.ReadAllText(Path.Combine(_folder, "bundle.json")));

        Assert.Equal(demo.Mark.Version, read.RootElement.GetProperty("version").GetString());
        JsonElement[] papers = [.. read.RootElement.GetProperty("papers").EnumerateArray()];
        Assert.Equal(PaperShelf.Papers(demo).Select(p => p.Content), papers.Select(p => p.GetProperty("content").GetString()));
        Assert.Equal(demo.Order!.Total.Amount, read.RootElement.GetProperty("order").GetProperty("order").EnumerateArray().Sum(r => r.GetProperty("sum").GetDecimal()));
    }

    private static List<string[]> Cells(SpreadsheetDocument book, int sheet)
    {
        Sheet s = book.WorkbookPart!.Workbook!.Descendants<Sheet>().ElementAt(sheet);
        WorksheetPart part = (WorksheetPart)book.WorkbookPart.GetPartById(s.Id!.Value!);
        return [.. part.Worksheet!.Descendants<Row>().Select(r => r.Elements<Cell>().Select(c => c.InlineString?.InnerText ?? c.CellValue?.Text ?? "").ToArray())];
    }
}
