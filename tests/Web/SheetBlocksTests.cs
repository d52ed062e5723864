using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Safety;
using Coulisse.Views.Web;

namespace Coulisse.Web.Tests;

public sealed class SheetBlocksTests
{
    private const string Blank = "# Trial of Tart\n\nMade on YYYY-MM-DD by NAME.\n\n## Weighed\n| What | Card, g | Weighed, g |\n|---|---|---|\n| flour | 250 | |\n| butter | 125 | |\n\n## Tasting\n| Taster | Looks |\n|---|---|\n| | |\n\n## Notes\n";

    [Fact]
    public void What_the_card_says_is_told_and_what_was_found_is_asked()
    {
        ImmutableArray<SheetBlock> blocks = SheetBlocks.Of(Blank, Blank);

        Assert.Equal([0, 1], blocks.Single(b => b.Heads.Contains("Weighed, g")).Told);
        Assert.Empty(blocks.Single(b => b.Heads.Contains("Taster")).Told);
        Assert.True(blocks[^1] is { Line: < 0, Words: "" }); // room for notes under a heading with nothing under it
    }

    [Fact]
    public void What_was_written_into_the_fields_stands_in_the_text_and_nothing_else_moved()
    {
        ImmutableArray<SheetBlock> blocks = SheetBlocks.Of(Blank);
        SheetBlock weighed = blocks.Single(b => b.Heads.Contains("Weighed, g")), tasting = blocks.Single(b => b.Heads.Contains("Taster"));
        Dictionary<string, string> written = new() { [weighed.Cell(0, 2)] = "251", [tasting.Cell(0, 0)] = "Ada", [tasting.Cell(1, 0)] = "Ben | two", [blocks[^1].Field] = "Crumbly." };

        string text = SheetBlocks.Write(blocks, f => written.GetValueOrDefault(f));

        Assert.Equal(Blank, SheetBlocks.Write(blocks, _ => null));
        Assert.Equal(Blank.Replace("250 | |", "250 | 251 |", StringComparison.Ordinal).Replace("| | |\n", "| Ada | |\n| Ben / two | |\n", StringComparison.Ordinal) + "Crumbly.\n", text);
    }

    [Fact]
    public void A_sheet_that_was_refused_half_filled_asks_for_the_same_cells_again()
    {
        string half = Blank.Replace("| flour | 250 | |\n| butter | 125 | |", "| flour | 250 | 251 |\n| butter | 125 | x |", StringComparison.Ordinal);

        Assert.Equal([0, 1], SheetBlocks.Of(half, Blank).Single(b => b.Heads.Contains("Weighed, g")).Told);
    }

    [Theory]
    [InlineData("After 45 min it is at 79.7 °C: 80 °C is not kept.", "56.9 min needed", "45 min, 80 °C", "45 min → 57 min.", "")]
    [InlineData("Kept chilled, but warmer than the code allows.", "8 °C", "5 °C or less", "Keep it at 5 °C or less.", "8 °C against 5 °C or less")]
    [InlineData("After 57 °C for 80 min.", "56.9 min needed", "80 °C", "", "56.9 min needed against 80 °C")] // the same numbers of other things tell nothing
    public void A_finding_tells_each_figure_once(string what, string value, string limit, string remedy, string told)
        => Assert.Equal(told, RemarkView.From(new Finding(Severity.Stop, "SAF001", "", 1, what, value, limit, "−1", remedy, "")).Figures);

    [Fact]
    public void Both_figures_of_a_load_have_as_many_decimals()
    {
        Coulisse.Kitchen.Needs.LoadProfile Of(double most, double limit, string unit) => new("K1", unit, limit, [new(new NodaTime.LocalDateTime(2026, 3, 7, 9, 0), new NodaTime.LocalDateTime(2026, 3, 7, 10, 0), most, ["O1"])]);
        string[] peaks = [.. PlanView.LoadsOf([Of(5.8, 7.36, "kW"), Of(2, 4, "shelves"), Of(3.5, 7, "kW")], new NodaTime.LocalDateTime(2026, 3, 7, 8, 0), CultureInfo.InvariantCulture).Select(l => l.Peak.Split(',')[0])];

        Assert.Equal(["most 5.80 of 7.36 kW", "most 2 of 4 shelves", "most 3.5 of 7.0 kW"], peaks);
    }
}
