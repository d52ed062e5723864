using Coulisse.Kitchen.Planning;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Papers.Tests;

/// <summary>The stage's small batch and the guests' batch are made at different hours: neither is dated by the other.</summary>
public sealed class StageDatesTests
{
    private const string Part = "C3 Roast-beet purée";   // keeps 3 days, the day of making counted

    private static readonly LocalDateTime Slot = Demo.Planned().Plan!.SlotStart;

    // Guests' batch on Friday, the stage's begun on Thursday and worked on again on Saturday.
    private static PaperBundle Bundle(string madeBy)
    {
        PaperBundle demo = Demo.Planned();
        string dish = demo.Occasion!.Dishes[0].Name;
        int line = demo.Occasion.Dishes[0].Dish.Components.First(c => c.Name == Part).Steps[1].Span.Line;
        PlannedTask Task(string id, string text, LocalDateTime at, int of) => new() { Id = id, Text = text, Kind = TaskKind.Work, Start = at, End = at.PlusMinutes(10), Dish = dish, Component = Part, Line = of, People = ["Noor"] };
        LocalDateTime friday = Slot.Date.PlusDays(-1).At(new LocalTime(9, 0));
        Plan plan = demo.Plan! with
        {
            Tasks =
            [
                Task("weigh", "for the stage: weigh and set out for the stage: " + Part, friday.PlusDays(-1), 0),
                Task("guests", "Blend beet, juice, vinegar and salt", friday, line),
                Task("stage", "for the stage: Blend beet, juice, vinegar and salt", friday.PlusDays(1), line),
                Task("stood", "when it has stood: Blend beet", friday.PlusDays(1), 0),
            ],
            Twins = [new Twin { Number = 1, Component = Part, State = "after “Blend beet, juice, vinegar and salt 2 min” (what one plate takes)", Grams = 14, MadeBy = madeBy, ReadyBy = Slot.PlusHours(-1), Place = "F2", BroughtBy = "Noor", CueSecond = 60 }],
        };
        return demo with { Plan = plan };
    }

    private static LabelBlock[] Labels(PaperBundle bundle) => [.. PaperShelf.Papers(bundle).Single(p => p.Kind == LabelPaper.Kind).Blocks.OfType<LabelBlock>()];

    private static string Fact(LabelBlock label, string name) => label.Facts.Single(f => f.Label == name).Value;

    [Fact]
    public void The_guests_label_is_dated_from_their_own_batch_however_often_the_stages_is_worked_on()
    {
        LabelBlock guests = Labels(Bundle("stage")).Single(l => l.Name == Part);

        // By hand: blended Friday 9 at 9:10, day 1 is Friday, so Sunday 11; the stage's work on Saturday would have said Monday 12, its weighing on Thursday Saturday 10.
        Assert.Equal("Fri 9 Oct 09:10", Fact(guests, "Made"));
        Assert.Equal("Sun 11 Oct", Fact(guests, "Use by"));
        Assert.Equal("261009-C3-1", Fact(guests, "Batch"));
    }

    [Fact]
    public void A_twin_of_the_stages_own_batch_bears_its_own_mark_and_is_dated_from_the_first_work_on_it()
    {
        LabelBlock twin = Labels(Bundle("stage")).Single(l => l.Name.StartsWith("№1", StringComparison.Ordinal));

        // Weighed out on Thursday 8: day 1 is Thursday, so Saturday 10.
        Assert.Equal("Sat 10 Oct", Fact(twin, "Use by"));
        Assert.Equal("261008-C3-stage", Fact(twin, "Batch"));
        Assert.Contains("261008-C3-stage|made 2026-10-08T09:10|use by 2026-10-10T23:59", twin.Code, StringComparison.Ordinal);
    }

    [Fact]
    public void A_twin_taken_from_the_guests_batch_bears_the_guests_mark_and_date()
    {
        PaperBundle bundle = Bundle("guests");
        LabelBlock twin = Labels(bundle).Single(l => l.Name.StartsWith("№1", StringComparison.Ordinal));

        Assert.Equal("Sun 11 Oct", Fact(twin, "Use by"));
        Assert.Equal("261009-C3-1", Fact(twin, "Batch"));
        Assert.DoesNotContain("stage", twin.Code, StringComparison.Ordinal);
    }

    [Fact]
    public void A_twins_label_is_called_by_number_and_part_and_the_state_stands_below()
    {
        LabelBlock twin = Labels(Bundle("stage")).Single(l => l.Name.StartsWith("№1", StringComparison.Ordinal));

        Assert.Equal("№1 " + Part, twin.Name);
        Assert.Contains(twin.Texts, t => t.StartsWith("After “Blend beet", StringComparison.Ordinal));
    }

    [Fact]
    public void Work_on_the_stages_batch_is_listed_under_its_mark_and_the_guests_under_theirs()
    {
        PaperRow[] rows = [.. PrepListPaper.Of(Bundle("stage")).SelectMany(p => p.Blocks.OfType<TableBlock>()).Where(t => t.Columns.Any(c => c.Head == "Batch")).SelectMany(t => t.Rows)];

        Assert.All(rows.Where(r => r.Cells[4].Words.Contains("for the stage", StringComparison.Ordinal)), r => Assert.Contains(r.Cells, c => c.Text == "261008-C3-stage"));
        Assert.Equal(2, rows.Count(r => r.Cells.Any(c => c.Text == "261008-C3-stage")));
        Assert.Equal(2, rows.Count(r => r.Cells.Any(c => c.Text == "261009-C3-1")));
    }
}
