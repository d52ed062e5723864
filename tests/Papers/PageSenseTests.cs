using System.Collections.Immutable;
using Coulisse.Papers.Pages;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Papers.Tests;

/// <summary>What a chef stumbles over on a page: a figure parted from its unit, facts left alone under a page, a sheet for two lines, counts of another batch, the price of a piece.</summary>
public sealed class PageSenseTests
{
    private static Paper Sheet(params ReadOnlySpan<Block> blocks) => new() { Id = "x", Kind = "x", Title = "t", Dish = "d", Mark = Bundles.Mark, Blocks = [.. blocks.ToArray()] };

    private static string[] Words(LaidPage page) => [.. page.Body.SelectMany(l => l.Ops).OfType<TextOp>().Select(t => t.Text)];

    private static Paper Of(PaperBundle bundle, string id) => PaperShelf.Papers(bundle).Single(p => p.Id == id);

    [Fact]
    public void No_line_ends_between_a_figure_and_its_unit_at_any_width()
    {
        const string Text = "Bath 45 min at 82 °C, lose 8 %, about 1,731 g. Bars of 40 × 30 mm, 48 to a cloth, 21 to 5 °C in 4 h.";
        for (double width = 60; width < 400; width += 3)
        {
            ImmutableArray<string> lines = Measure.Wrap(Text, width, 10, false);
            Assert.Equal(Text, string.Join(' ', lines));
            Assert.DoesNotContain(lines, l => l.Split(' ')[0].TrimEnd('.', ',') is "min" or "°C" or "%" or "g" or "×" or "mm" or "h");
        }
    }

    [Fact]
    public void A_number_before_a_word_may_end_a_line_and_what_is_too_long_for_a_column_is_parted_at_its_blank()
    {
        Assert.Contains(Enumerable.Range(20, 300), w => Measure.Wrap("lay 48 to a cloth", w, 10, false).Any(l => l.EndsWith("48", StringComparison.Ordinal)));
        Assert.Equal(["1234", "min"], Measure.Wrap("1234 min", Measure.Width("1234 m", 10, false), 10, false));
    }

    [Fact]
    public void Facts_under_a_heading_go_to_the_page_of_their_table()
    {
        for (int filler = 30; filler < 60; filler++)
        {
            PagePlan plan = PagePlan.Of(Sheet([.. Enumerable.Range(0, filler).Select(i => (Block)new ParagraphBlock($"line {i}")), new HeadingBlock(1, "Crumb"), new FactsBlock([new("Factor", "× 2")]), new TableBlock([new("Ingredient")], [PaperRow.Of("rye bread"), PaperRow.Of("butter")]) { Together = true }]), PageFormat.A4);
            int[] on = [.. new[] { "Crumb", "× 2", "Ingredient", "rye bread", "butter" }.Select(w => plan.Pages.ToList().FindIndex(p => Words(p).Contains(w)))];
            Assert.Single(on.Distinct());
        }
    }

    [Fact]
    public void Two_lines_too_many_are_taken_in_with_less_air_and_half_a_page_too_much_is_not()
    {
        static PagePlan Lines(int n) => PagePlan.Of(Sheet([.. Enumerable.Range(0, n).Select(i => (Block)new ParagraphBlock($"line {i}"))]), PageFormat.A4);
        int full = Enumerable.Range(10, 80).Last(n => Lines(n).Pages.Length == 1 && Gap(Lines(n)) > 4);
        Assert.Single(Lines(full + 2).Pages);
        Assert.True(Gap(Lines(full + 2)) < Gap(Lines(full)));
        Assert.Equal(full + 3, Words(Lines(full + 2).Pages[0]).Length);   // the title, too
        Assert.Equal(2, Lines((int)(full * 1.6)).Pages.Length);
        Assert.Equal(Gap(Lines(full)), Gap(Lines((int)(full * 1.6))), 6);
    }

    private static double Gap(PagePlan plan) => plan.Pages[0].Body[3].Y - plan.Pages[0].Body[2].Y - plan.Pages[0].Body[2].Slab.Height;

    [Fact]
    public void A_count_in_the_words_of_a_line_goes_with_its_weight()
    {
        PaperBundle demo = Demo.Unplanned();
        string guests = string.Join('\n', Rows(PaperShelf.Papers(demo).First(p => p.Kind == BatchPaper.Kind)));
        Assert.Contains("280 of them, from 8 bulbs of about 354 g", guests, StringComparison.Ordinal);

        // By hand: 950 g are 280 discs; the home batch takes 145 g of them, 42.7 discs, and one bulb is not worth saying.
        string home = string.Join('\n', Rows(PaperShelf.Papers(demo).First(p => p.Kind == HandoutPaper.Kind && p.Id.Contains("royale", StringComparison.Ordinal))));
        string line = home.Split('\n').Single(l => l.Contains("kohlrabi", StringComparison.Ordinal));
        Assert.Matches("about 4[0-9] of them", line);
        Assert.Contains("discs of 60 mm", line, StringComparison.Ordinal);
        Assert.DoesNotContain("bulbs", line, StringComparison.Ordinal);
        Assert.DoesNotContain("slice (", line, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_costs_what_the_list_says_however_many_whole_ones_are_taken()
    {
        string row = Rows(Of(Demo.Unplanned(), CostPaper.Kind)).First(r => r.StartsWith("kohlrabi", StringComparison.Ordinal));
        Assert.Contains("0.90 for 1 | 0.90 |", row, StringComparison.Ordinal);
        Assert.Contains("| 7.200 |", row, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_made_apart_for_one_guest_does_not_bear_the_notes_of_the_whole_tray()
    {
        Paper[] cards = [.. PaperShelf.Papers(Demo.Unplanned()).Where(p => p.Kind == CardPaper.Kind)];
        static bool Notes(Paper p) => p.Blocks.OfType<HeadingBlock>().Any(h => h.Text == "Notes");
        Assert.False(Notes(cards.Single(p => p.Title.StartsWith("Ramekin", StringComparison.Ordinal))));
        Assert.True(Notes(cards.Single(p => p.Title.StartsWith("Pear", StringComparison.Ordinal))));
    }

    [Fact]
    public void What_two_do_alike_is_said_once_with_both_names()
    {
        PaperBundle demo = Demo.Planned();
        RunSegmentWho("brings twin 16; crumb between bar and fan", "crumb between bar and fan", out string two);
        Assert.Equal("Bram: brings №16\nBram, Noor: crumb between bar and fan", two);
        RunSegmentWho("crumb", "crisps", out string apart);
        Assert.Equal("Bram: crumb\nNoor: crisps", apart);

        void RunSegmentWho(string bram, string noor, out string cell)
        {
            Kitchen.Planning.RunSegment first = demo.Plan!.RunSheet[0] with { Who = ImmutableSortedDictionary<string, string>.Empty.Add("Bram", bram).Add("Noor", noor) };
            cell = PaperShelf.Papers(demo with { Plan = demo.Plan with { RunSheet = [first, .. demo.Plan.RunSheet.Skip(1)] } }).Single(p => p.Kind == RunSheetPaper.Kind).Blocks.OfType<TableBlock>().First().Rows[0].Cells[4].Text;
        }
    }

    [Fact]
    public void A_box_of_two_dishes_is_kept_as_the_colder_wants_it_when_its_date_is_known()
    {
        LabelBlock[] boxes = [.. Of(Demo.Planned(), BoxLabelPaper.Kind).Blocks.OfType<LabelBlock>()];
        LabelBlock both = boxes.First(l => l.Texts.Count(t => t.Contains("Ingredients:", StringComparison.Ordinal)) == 2);
        Assert.NotEqual("", both.Facts.Single(f => f.Label == "Use by").Value);
        Assert.Equal("the whole box at 5 °C or less", both.Facts.Single(f => f.Label == "Keep").Value);
        LabelBlock undated = Of(Demo.Unplanned(), BoxLabelPaper.Kind).Blocks.OfType<LabelBlock>().First();
        Assert.Contains("3 days", undated.Facts.Single(f => f.Label == "Keep").Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_twin_taken_before_the_part_is_finished_is_dated_from_then_and_says_when_its_day_is_past()
    {
        PaperBundle demo = Demo.Planned();
        LocalDateTime made = Papers(demo);
        LabelBlock early = Twin(demo, made.PlusDays(-1));
        Assert.Contains(early.Texts, t => t.StartsWith("Past its date when it is shown", StringComparison.Ordinal));
        LabelBlock late = Twin(demo, made.PlusHours(1));
        Assert.DoesNotContain(late.Texts, t => t.StartsWith("Past its date", StringComparison.Ordinal));

        static LocalDateTime Papers(PaperBundle b) => b.Plan!.Tasks.Where(t => t.Component == "C4 Green-apple and dill fluid gel").Max(t => t.End);
        static LabelBlock Twin(PaperBundle b, LocalDateTime ready) => Of(b with { Plan = b.Plan! with { Twins = [new Kitchen.Planning.Twin { Number = 1, Component = "C4 Green-apple and dill fluid gel", State = "after “Pour 15 mm deep”", Grams = 150, ReadyBy = ready, Place = "F2", BroughtBy = "Noor", CueSecond = 60 }] } }, LabelPaper.Kind)
            .Blocks.OfType<LabelBlock>().Single(l => l.Name.StartsWith("№1", StringComparison.Ordinal));
    }

    [Fact]
    public void A_brief_says_where_everything_stands_that_it_names_and_no_more()
    {
        PaperBundle demo = Demo.Planned();
        Kitchen.Planning.PlannedTask task = demo.Plan!.Tasks[0] with { Text = "have SB at 82 °C for C1 Pumpkin-seed royale: switch it on, or see that it holds", Kit = [], People = ["Tomasz"] };
        Paper brief = Of(demo with { Plan = demo.Plan with { Tasks = [task], RunSheet = [], Twins = [] } }, PaperShelf.BriefOf("Tomasz"));
        string[] marks = [.. brief.Blocks.OfType<TableBlock>().SelectMany(t => t.Rows).Select(r => r.Cells[0].Text).Where(c => demo.Occasion!.Kit.Any(k => k.Code == c && c.Length > 0))];
        Assert.Equal(["SB"], marks);
    }

    [Fact]
    public void What_weighs_hardly_more_than_its_tolerance_is_laid_by_count_and_what_is_not_counted_never()
    {
        string[] rows = [.. Rows(PaperShelf.Papers(Demo.Unplanned()).First(p => p.Kind == PlatingPaper.Kind))];
        Assert.Contains(rows, r => r.StartsWith("C5", StringComparison.Ordinal) && r.Contains("0.6\u202Fg | by count", StringComparison.Ordinal));
        Assert.Single(rows, r => r.Contains("by count", StringComparison.Ordinal));
        Assert.Contains(rows, r => r.StartsWith("C7", StringComparison.Ordinal) && r.Contains('±', StringComparison.Ordinal));
    }

    [Fact]
    public void The_packing_list_has_a_place_for_the_box_of_each_twin()
        => Assert.Contains(Of(Demo.Planned(), KitPaper.Kind).Blocks.OfType<TableBlock>(), t => t.Columns[0].Head == "No." && t.Columns.Any(c => c.Head == "In box" && c.Pen > 0));

    private static IEnumerable<string> Rows(Paper paper) => paper.Blocks.OfType<TableBlock>().SelectMany(t => t.Rows).Select(r => string.Join(" | ", r.Cells.Select(c => c.Words)));
}
