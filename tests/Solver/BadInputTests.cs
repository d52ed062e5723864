using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Solver.Tests;

/// <summary>What arithmetic shows to be impossible is named before anything is solved; its near miss says nothing.</summary>
public sealed class BadInputTests
{
    private static readonly OccasionSheet Sheet = DemoOccasion.Sheet;

    [Fact]
    public void The_example_says_nothing() => Assert.Empty(WorkReview.Check(DemoOccasion.Occasion, DemoOccasion.Work));

    [Fact]
    public void A_circle_of_orders_is_named_by_its_card_lines()
    {
        PrepTask[] two = [.. DemoOccasion.Work.Tasks.Where(t => t is { Line: > 0, ForStage: false, People: > 0 }).DistinctBy(t => t.Dish).Take(2)];
        PlanEdits round = new() { Sequences = [new Sequence(two[0].Key, two[1].Key), new Sequence(two[1].Key, two[0].Key)] };
        Problem p = Assert.Single(WorkReview.Check(DemoOccasion.Occasion, DemoOccasion.Work with { Edits = round }));
        Assert.Equal("PLN020", p.Code);
        Assert.All(two, t => Assert.Contains($"line {t.Line} of", p.Message, StringComparison.Ordinal));
        Assert.Empty(WorkReview.Check(DemoOccasion.Occasion, DemoOccasion.Work with { Edits = new PlanEdits { Sequences = round.Sequences[..1] } }));
    }

    [Fact]
    public void A_longest_wait_under_the_least_one_is_named()
    {
        PrepLink link = DemoOccasion.Work.Links.First(l => l is { Least: > 60, FromStart: true, ToEnd: false } && DemoOccasion.Work.Tasks[l.From].Line > 0);
        PrepWork With(int most) => DemoOccasion.Work with { Links = DemoOccasion.Work.Links.Add(link with { Least = 0, Most = most, Soft = false, Because = "the card's limit" }) };
        Problem p = Assert.Single(WorkReview.Check(DemoOccasion.Occasion, With(link.Least - 1)));
        Assert.Equal("PLN021", p.Code);
        Assert.Contains("the card's limit", p.Message, StringComparison.Ordinal);
        Assert.Empty(WorkReview.Check(DemoOccasion.Occasion, With(link.Least)));
    }

    [Fact]
    public void A_task_longer_than_any_window_is_named_with_card_and_sheet_line()
    {
        int longest = DemoOccasion.Occasion.Windows.Where(w => w.Start < DemoOccasion.Occasion.SlotStart).Max(w => (int)Period.Between(w.Start, w.End, PeriodUnits.Minutes).Minutes);
        int at = DemoOccasion.Work.Tasks.ToList().FindIndex(t => t is { People: > 0, Line: > 0, Kind: Coulisse.Kitchen.Planning.TaskKind.Work });
        PrepWork With(int minutes) => DemoOccasion.Work with { Tasks = DemoOccasion.Work.Tasks.SetItem(at, DemoOccasion.Work.Tasks[at] with { Minutes = minutes }) };
        Problem p = WorkReview.Check(DemoOccasion.Occasion, With(longest + 1)).First(x => x.Code == "PLN022");
        Assert.Equal(DemoOccasion.Work.Tasks[at].Line, p.Line);
        Assert.Contains("of the sheet", p.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(WorkReview.Check(DemoOccasion.Occasion, With(longest)), x => x.Code == "PLN022");
    }

    [Fact]
    public void Nobody_with_the_skill_is_named()
    {
        Occasion noPastry = DemoOccasion.Build(Sheet with { People = [.. Sheet.People.Select(x => x with { Skills = [.. x.Skills.Where(s => s is not "all" and not "pastry")], Without = ["pastry", .. x.Without] })] });
        Assert.Contains(Review(noPastry), x => x.Code == "PLN023" && x.Message.Contains("pastry", StringComparison.Ordinal) && x.Line > 0);
    }

    [Fact]
    public void Kit_below_one_tray_and_kit_too_cool_are_named_by_the_line_of_the_sheet()
    {
        SheetKit oven = Sheet.Kit.First(k => k.Type == "oven");
        Problem none = Assert.Single(Review(DemoOccasion.Build(Sheet with { Kit = Sheet.Kit.Replace(oven, oven with { Shelves = 0 }) })));
        Assert.Equal(("PLN024", oven.Line), (none.Code, none.Line));
        Assert.All(Review(DemoOccasion.Build(Sheet with { Kit = [.. Sheet.Kit.Select(k => k.Type == "oven" ? k with { CelsiusMax = 120 } : k)] })), x => Assert.Equal("PLN025", x.Code));
        Assert.NotEmpty(Review(DemoOccasion.Build(Sheet with { Kit = [.. Sheet.Kit.Select(k => k.Type == "oven" ? k with { CelsiusMax = 120 } : k)] })));
        Assert.Empty(Review(DemoOccasion.Build(Sheet with { Kit = [.. Sheet.Kit.Select(k => k.Type == "oven" ? k with { CelsiusMax = 300 } : k)] })));
    }

    [Fact]
    public void A_slot_of_zero_in_which_something_is_to_be_shown_is_named_and_a_service_without_one_is_planned_without_a_run_sheet()
    {
        Occasion none = DemoOccasion.Occasion with { SlotLength = Duration.Zero };
        Assert.Contains(Review(none), x => x.Code == "PLN026");
        Occasion service = none with { Sheet = Sheet with { Shows = [] }, Shows = [] };
        Assert.Empty(Review(service));
        Assert.Empty(LiveSlot.Decide(service).Segments);
        Assert.Empty(LiveSlot.Decide(service).Twins);
    }

    [Fact]
    public void A_row_of_what_is_shown_that_names_nothing_of_the_occasion_is_refused_with_what_could_be_meant()
    {
        SheetShow first = Sheet.Shows[0];
        Problem p = Assert.Single(Review(DemoOccasion.Occasion with { Sheet = Sheet with { Shows = Sheet.Shows.Replace(first, first with { Component = "Lobster bisque" }) } }));

        Assert.Equal(("PLN027", first.Line), (p.Code, p.Line));
        Assert.Contains("whole plate", p.Hint, StringComparison.Ordinal);
    }

    private static System.Collections.Immutable.ImmutableArray<Problem> Review(Occasion occasion)
        => WorkReview.Check(occasion, TaskBuilder.Build(occasion, DemoOccasion.BatchesOf(occasion), LiveSlot.Decide(occasion)));
}
