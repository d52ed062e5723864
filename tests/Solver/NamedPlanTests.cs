using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Solver.Tests;

/// <summary>What a reader of the papers found nobody's: the plan of the example gives each a person, a minute, and keeps what is hot hot.</summary>
public sealed class NamedPlanTests
{
    private static readonly Lazy<Plan> Held = new(() => new CpSatPlanner().Plan(DemoOccasion.Occasion, DemoOccasion.Batches, new PlanOptions(120) { FirstOnly = true }) as Plan ?? throw new InvalidOperationException("no plan"));

    private static Plan Plan => Held.Value;

    private static Occasion Occasion => DemoOccasion.Occasion;

    private static LocalDateTime Over => Plan.SlotStart.PlusSeconds((long)Plan.SlotLength.TotalSeconds);

    [Fact]
    public void A_part_that_is_only_baked_is_filled_first_by_somebody_and_one_with_hands_before_it_gets_no_other_task()
    {
        PlannedTask fill = Assert.Single(Plan.Tasks, t => t.Text.Contains("fill it before it goes in: ", StringComparison.Ordinal));
        Assert.Equal("fill it before it goes in: 120 g of the quark mix, made first, with its own clean whisk; 60 g pear slices", fill.Text);
        Assert.NotEmpty(fill.People);
        PlannedTask bake = Plan.Tasks.Single(t => t.Kind == TaskKind.Unattended && t.Component == fill.Component && t.Line == fill.Line);
        Assert.True(fill.End <= bake.Start, $"filled until {fill.End}, baked from {bake.Start}");
        Assert.Contains(Plan.Tasks, t => t.Component == "Quark layer" && t.Text.StartsWith("Whisk till smooth", StringComparison.Ordinal) && t.End <= fill.Start);
    }

    [Fact]
    public void The_boxes_are_packed_by_who_packs_boxes_after_both_bakes_are_cut()
    {
        PlannedTask pack = Assert.Single(Plan.Tasks, t => t.Text.StartsWith("pack ", StringComparison.Ordinal));
        Assert.Equal("pack 48 boxes: Buckwheat, plum-butter and walnut slice + Pear and quark tray bake on a ginger sponge; another box: seats 17, 31", pack.Text);
        Assert.Equal(["Tomasz"], pack.People);
        PlannedTask[] cuts = [.. Plan.Tasks.Where(t => t.Text.StartsWith("when it has stood: ", StringComparison.Ordinal) && t.Component is "Walnut top" or "Pears")];
        Assert.NotEmpty(cuts);
        Assert.All(cuts, c => Assert.True(c.End <= pack.Start));

        // Nothing to take away, nothing to pack.
        Occasion none = Occasion with { Dishes = [.. Occasion.Dishes.Select(d => d with { For = "" })] };
        Assert.DoesNotContain(TaskBuilder.Build(none, DemoOccasion.Batches, Kitchen.Planning.Slot.LiveSlot.Decide(none)).Tasks, t => t.Text.StartsWith("pack ", StringComparison.Ordinal));
    }

    [Fact]
    public void When_the_slot_is_over_the_plates_are_served_by_names_and_who_presents_does_not_carry()
    {
        PlannedTask serve = Assert.Single(Plan.Tasks, t => t.Text.StartsWith("serve 48 plates to the seats; by name, before the others: seats 4, 5, 17, 23, 31, 40", StringComparison.Ordinal));
        Assert.Equal(Over, serve.Start);
        Assert.Equal(["Bram", "Noor", "Petra", "Tomasz"], serve.People.Order());
        Assert.All(serve.People, p => Assert.Contains(Plan.Tasks, t => t.Text.StartsWith("clear down", StringComparison.Ordinal) && t.People.Contains(p) && t.Start == serve.End));
    }

    [Fact]
    public void What_was_begun_live_comes_out_by_a_name_before_the_next_class_and_what_holds_no_heat_does_not()
    {
        LocalDateTime next = Occasion.Windows.Max(w => w.End);
        PlannedTask[] live = [.. Plan.Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Text.EndsWith(", begun live, goes on", StringComparison.Ordinal))];
        Assert.Equal(["BO", "SB", "SO"], live.SelectMany(t => t.Kit).Order());
        foreach (PlannedTask goes in live)
        {
            PlannedTask outOf = Assert.Single(Plan.Tasks, t => t.Text.StartsWith("out of " + goes.Kit[0] + ": ", StringComparison.Ordinal));
            Assert.Single(outOf.People);
            Assert.Equal(goes.End, outOf.Start);
            Assert.InRange(outOf.End, Over, next);
        }

        // The bag would need until 14:55; the room closes at 14:50, and the twin's own words say what becomes of it.
        Assert.Contains(Plan.Tasks, t => t.Text.StartsWith("out of SB: ", StringComparison.Ordinal) && t.Text.Contains("not done", StringComparison.Ordinal));
        Assert.Contains(Plan.Twins, t => t.Afterwards.Contains("SB until 14:48, not done by then", StringComparison.Ordinal));
        Assert.Contains(Plan.Twins, t => t.Afterwards.Contains("goes on in SO until 14:", StringComparison.Ordinal) && !t.Afterwards.Contains("not done", StringComparison.Ordinal));
    }

    [Fact]
    public void The_twin_that_stands_in_the_bath_stays_there_and_the_guests_bags_come_out()
    {
        Assert.DoesNotContain(Plan.Tasks, t => t.Text.StartsWith("for the stage: out: Bath", StringComparison.Ordinal));
        Assert.Contains(Plan.Tasks, t => t.Text.StartsWith("for the stage: stays in until its cue: Bath", StringComparison.Ordinal));
        Assert.Contains(Plan.Tasks, t => t.Text.StartsWith("out: Bath", StringComparison.Ordinal));

        // It holds the bath, and its circuit, from when it is cooked until it is shown; nothing else stands so.
        PlannedTask stands = Assert.Single(Plan.Tasks, t => t.Text.EndsWith(" stands in its heat until its cue", StringComparison.Ordinal));
        PlannedTask cooked = Plan.Tasks.Single(t => t.Id == Plan.Twins.Single(x => x.Holds.Contains("in the bath", StringComparison.Ordinal)).SetOutBy);
        Assert.Equal((cooked.End, 82.0), (stands.Start, stands.Celsius!.Value));
        Assert.InRange(stands.End, Plan.SlotStart, Over);
    }

    [Fact]
    public void What_is_boiled_with_agar_is_poured_hot_and_what_gelatine_sets_may_wait()
    {
        PlannedTask boil = Plan.Tasks.Single(t => t.Text.StartsWith("Whisk the agar", StringComparison.Ordinal));
        PlannedTask pour = Plan.Tasks.Single(t => t.Text.StartsWith("Blend with the hot base", StringComparison.Ordinal));
        PlannedTask taken = Plan.Tasks.Single(t => t.Text.StartsWith("Open the bags", StringComparison.Ordinal));
        Assert.InRange(Period.Between(boil.End, pour.Start, PeriodUnits.Minutes).Minutes, 0, 10);
        Assert.InRange(Period.Between(taken.End, pour.Start, PeriodUnits.Minutes).Minutes, 0, 20);

        PrepWork work = DemoOccasion.Work;
        string[] hot = [.. work.Links.Where(l => l.Because == "poured while it is hot: it sets as it cools").Select(l => work.Tasks[l.To].Component!).Distinct().Order()];
        Assert.Equal(["C1v Agar-set royale, vegetarian", "C4 Green-apple and dill fluid gel"], hot);
    }

    [Fact]
    public void A_pan_on_a_ring_does_not_boil_through_a_meal_and_the_dryer_may()
    {
        string[] rings = [.. Occasion.Kit.Where(k => k.Type == "hob").Select(k => k.Code)];
        PlannedTask[] pans = [.. Plan.Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Kit.Any(rings.Contains))];
        Assert.NotEmpty(pans);
        Assert.DoesNotContain(PlanValidator.Check(Occasion, Plan), f => f.Code == "pan-alone");
        SheetWindow meal = Occasion.Meals[^1];
        ImmutableArray<PlanFault> Moved(PlannedTask task) => PlanValidator.Check(Occasion, Plan with { Tasks = Plan.Tasks.Replace(task, task with { Start = meal.Start.PlusMinutes(-10), End = meal.End.PlusMinutes(10) }) });
        Assert.Contains(Moved(pans[0]), f => f.Code == "pan-alone");
        Assert.DoesNotContain(Moved(Plan.Tasks.Single(t => t.Kind == TaskKind.Unattended && t.Kit.Contains("DH"))), f => f.Code == "pan-alone");
    }

    [Fact]
    public void Twins_of_one_dish_are_kept_alike_and_only_what_is_finished_stands_dry()
    {
        Twin[] slice = [.. Plan.Twins.Where(t => t.Component.StartsWith("Buckwheat", StringComparison.Ordinal))];
        Assert.Equal(3, slice.Length);

        // The card keeps the baked slice cool and dry; raw dough with yolk stands cold.
        Assert.All(slice, t => Assert.Equal(t.State.StartsWith("finished", StringComparison.Ordinal) ? "dry and closed" : "5 °C or less", t.Holds));
        Assert.All(Plan.Twins.Where(t => t.Component.StartsWith("Pear and quark", StringComparison.Ordinal)), t => Assert.Equal("5 °C or less", t.Holds));
    }
}
