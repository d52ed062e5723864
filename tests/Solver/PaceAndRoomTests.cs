using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Kitchen.Planning.Watch;

namespace Coulisse.Solver.Tests;

/// <summary>Slow hands take longer, many tins go in loads, food is carried, waits find room and keep the hours out of the cold.</summary>
public sealed class PaceAndRoomTests
{
    private static readonly PlanOptions First = new(60) { FirstOnly = true };

    [Fact]
    public void A_task_takes_the_minutes_of_the_slowest_who_serves()
    {
        string slow = DemoOccasion.Sheet.People[2].Name;
        Occasion occasion = DemoOccasion.Build(DemoOccasion.Sheet with { People = [.. DemoOccasion.Sheet.People.Select(p => p.Name == slow ? p with { Speed = 1.5 } : p)] });
        Plan plan = Planned(occasion);
        Dictionary<string, int> usual = DemoOccasion.Work.Tasks.ToDictionary(t => t.Key, t => t.Minutes);
        PlannedTask[] hands = [.. plan.Tasks.Where(t => t.Kind is TaskKind.Work or TaskKind.Plate && t.People.Length > 0 && usual.ContainsKey(t.Key))];
        Assert.All(hands, t => Assert.Equal(t.People.Contains(slow) ? (int)Math.Ceiling(usual[t.Key] * 1.5) : usual[t.Key], (int)Minutes(t)));
        Assert.Contains(hands, t => t.People.Contains(slow));
        Assert.Contains(hands, t => !t.People.Contains(slow));
        Assert.Empty(PlanValidator.Check(occasion, plan).Select(f => $"{f.Code} {f.By:0.#} {f.Unit}: {f.Words}"));
    }

    [Fact]
    public void Seven_tins_in_ovens_of_four_and_two_shelves_go_in_two_loads()
    {
        SheetDish slice = DemoOccasion.Sheet.Dishes[2];
        Occasion occasion = DemoOccasion.Build(DemoOccasion.Sheet with { Dishes = [.. DemoOccasion.Sheet.Dishes.Select(d => d == slice ? d with { Count = 7 * 28 } : d)] });
        Plan plan = Planned(occasion);
        foreach (IGrouping<int, PlannedTask> bake in plan.Tasks.Where(t => t.Dish == slice.Name && t.Kind == TaskKind.Unattended && t.Shelves > 0 && !t.Text.StartsWith("for the stage", StringComparison.Ordinal)).GroupBy(t => t.Line))
        {
            Assert.Equal([3, 4], bake.Select(t => t.Shelves).Order());
            double card = DemoOccasion.Occasion.Dishes[2].Dish.Components.SelectMany(c => c.Steps).First(s => s.Span.Line == bake.Key).Times.First().MinutesMin!.Value;
            Assert.All(bake, t => Assert.True(Minutes(t) >= card, $"{t.Text} takes {Minutes(t)} min, the card says {card}"));
            Assert.All(bake.Where(t => t.Shelves == 4), t => Assert.Equal("BO", t.Kit[0]));
        }

        Assert.Empty(PlanValidator.Check(occasion, plan).Select(f => $"{f.Code} {f.By:0.#} {f.Unit}: {f.Words}"));
        // Two tins are one load.
        Assert.DoesNotContain(DemoOccasion.Work.Tasks, t => t.Text.StartsWith("load 1", StringComparison.Ordinal));
    }

    [Fact]
    public void Food_is_carried_where_it_goes_on()
    {
        // Boiled on a ring of the stage, simmered on one of the back: pinned there by hand.
        PrepTask[] pans = [.. DemoOccasion.Work.Tasks.Where(t => t.Component!.StartsWith("C7", StringComparison.Ordinal) && !t.ForStage && t.Kit.Any(k => k.Type == "hob")).Take(2)];
        PlanOptions pinned = First with { Edits = new PlanEdits { Pins = [new Pin(pans[0].Key, null, null, "SH1"), new Pin(pans[1].Key, null, null, "BH1")] } };
        Occasion occasion = DemoOccasion.Build(DemoOccasion.Sheet with { Ways = [new SheetWay("back", "stage", 6, false, 1)] });
        NodaTime.LocalDateTime at = occasion.SlotStart.Date.PlusDays(-2).At(new NodaTime.LocalTime(14, 0));
        Plan close = Planned(DemoOccasion.Occasion, First with { Edits = new PlanEdits { Pins = [new Pin(pans[0].Key, at, null, "SH1"), new Pin(pans[1].Key, at.PlusMinutes(pans[0].Minutes + 2), null, "BH1")] } });
        Assert.Equal(4, Assert.Single(PlanValidator.Check(occasion, close), f => f.Code == "carried-too-fast").By, 6);
        Assert.Empty(PlanValidator.Check(occasion, Planned(occasion, pinned)).Select(f => $"{f.Code} {f.By:0.#} {f.Unit}: {f.Words}"));
    }

    [Fact]
    public void Waits_that_fill_the_fridges_too_full_are_written_into_the_problem()
    {
        Plan plan = Planned(DemoOccasion.Occasion);
        PrepProblem prep = PrepProblem.Write(DemoOccasion.Occasion, DemoOccasion.Work);
        ColdWait[] waits = [.. ColdWaits.Of(DemoOccasion.Occasion, DemoOccasion.Batches, plan).Where(w => w.Known)];
        int peak = waits.Max(a => waits.Where(b => b.From <= a.From && a.From < b.Until).Sum(b => b.Slots));
        PrepProblem? With(int slots)
        {
            Occasion of = DemoOccasion.Build(DemoOccasion.Sheet with { Kit = [.. DemoOccasion.Sheet.Kit.Where(k => k.Code != "F2").Select(k => k.Code == "F1" ? k with { Shelves = slots } : k)] });
            return Tightened.Of(of, DemoOccasion.Batches, DemoOccasion.Work, prep, plan, double.MaxValue);
        }

        Assert.Null(With(peak));
        PrepProblem tight = With(peak - 1)!;
        int room = tight.Problem.Resources.ToList().FindIndex(r => r.Name == "fridge slots");
        Assert.Equal(new Resource("fridge slots", peak - 1), tight.Problem.Resources[room]);
        Assert.Equal(waits.Sum(w => w.Slots), tight.Problem.Stores.Where(s => s.Resource == room).Sum(s => s.Amount));
        // The plates stand there to the end: nothing that moves helps, and that is proven.
        Assert.IsType<EngineInfeasible>(new CpSatEngine().Solve(tight.Problem with { Goals = [new Goal("any", "", [])] }, new Effort(60)));
    }

    [Theory]
    [InlineData(1, 10)]
    [InlineData(2, 0)]
    public void A_place_held_from_one_task_to_another_keeps_others_out(int places, int second)
    {
        // Two pieces made as soon as may be, used at 10 and at 20; with one place the second waits for the first to go.
        Activity Made(params int[] minutes) => new("made", [.. minutes.Select(m => new Mode(m, []))]);
        Activity Used(int at) => new("used", [new Mode(1, [])]) { FixedStart = at };
        SchedulingProblem p = new()
        {
            Horizon = 30, Activities = [Made(2, 3), Used(10), Made(2), Used(20)], Lags = [Lag.After(0, 1), Lag.After(2, 3)], Resources = [new Resource("places", places)],
            Stores = [new Storing(0, 1, 0, 1), new Storing(2, 3, 0, 1)], Goals = [new Goal("soon", "min", [new Term(TermKind.Start, 0, 10), new Term(TermKind.Start, 2, 1)])],
        };
        EngineSchedule s = Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p, new Effort(20)));
        Assert.Equal((0, second - (places == 1 ? 2 : 0)), (s.Starts[0], s.Starts[2]));
        // What stays to the end leaves no place for a second that stays to the end.
        SchedulingProblem ends = p with { Stores = [new Storing(0, null, 0, 1), new Storing(2, null, 0, 1)] };
        Assert.Equal(places == 1, new CpSatEngine().Solve(ends, new Effort(20)) is EngineInfeasible);
    }

    [Fact]
    public void A_plan_that_leaves_food_out_for_too_long_is_made_again()
    {
        double Longest(Plan plan) => TimesOut.Of(DemoOccasion.Occasion, DemoOccasion.Batches, plan).Where(t => !t.Part.StartsWith("twin ", StringComparison.Ordinal)).Max(t => t.Minutes);
        Plan plain = Planned(DemoOccasion.Occasion, First with { OutMinutes = double.MaxValue });
        Assert.True(Longest(plain) > 240, $"{Longest(plain)} min: nothing to mend");
        Plan mended = Planned(DemoOccasion.Occasion);
        Assert.InRange(Longest(mended), 0, 240);
        Assert.Empty(PlanValidator.Check(DemoOccasion.Occasion, mended, DemoOccasion.Batches).Select(f => $"{f.Code} {f.By:0.#} {f.Unit}: {f.Words}"));
    }

    private static Plan Planned(Occasion occasion, PlanOptions? options = null) => Assert.IsType<Plan>(new CpSatPlanner().Plan(occasion, DemoOccasion.BatchesOf(occasion), options ?? First));

    private static double Minutes(PlannedTask t) => NodaTime.Period.Between(t.Start, t.End, NodaTime.PeriodUnits.Minutes).Minutes;
}
