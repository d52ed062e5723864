using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Risk;
using Coulisse.Kitchen.Tests.Checking;
using CsCheck;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Risk;

/// <summary>The simulation on plans whose chance can be reckoned by hand.</summary>
public sealed class RiskOfPlanTests
{
    private static readonly Occasion House = SmallHouse.Occasion with { Dishes = [], Windows = [] };

    [Fact]
    public void One_task_is_in_time_as_often_as_its_triangle_says()
    {
        // Triangle 10, 20, 40; 30 minutes to the slot: 1 - (40 - 30)² / ((40 - 10) · (40 - 20)) = 5/6.
        RiskReport r = Risk([Task("a", 0, 20, "Ann")], 30, _ => new Triangular(10, 20, 40));

        Assert.InRange(5.0 / 6, r.OnTimeLow - 0.003, r.OnTimeHigh + 0.003);
        Assert.InRange(r.OnTimeHigh - r.OnTimeLow, 0.01, 0.02);
    }

    [Fact]
    public void Two_tasks_of_one_person_add_up_but_the_second_never_begins_before_its_time()
    {
        // Both even between 0 and 10; the second is due at 5: 0.5 + the integral from 5 to 10 of (15 - a)/100 = 0.875.
        RiskReport r = Risk([Task("a", 0, 5, "Ann"), Task("b", 5, 10, "Ann")], 15, _ => new Recorded([0, 10]));

        Assert.InRange(0.875, r.OnTimeLow - 0.003, r.OnTimeHigh + 0.003);
    }

    [Fact]
    public void Two_tasks_of_two_people_must_both_be_in_time()
    {
        RiskReport r = Risk([Task("a", 0, 5, "Ann"), Task("b", 0, 5, "Ben")], 8, _ => new Recorded([0, 10]));

        Assert.InRange(0.64, r.OnTimeLow - 0.004, r.OnTimeHigh + 0.004);
    }

    [Fact]
    public void A_task_that_waits_for_kit_waits_and_one_on_other_kit_does_not()
    {
        Func<PlannedTask, Spread> spread = t => t.Id == "a" ? Spread.Exactly(25) : Spread.Exactly(10);

        Assert.Equal(0, Risk([Task("a", 0, 20, "Ann", "BL"), Task("b", 20, 30, "Ben", "BL")], 30, spread).OnTime);
        Assert.Equal(1, Risk([Task("a", 0, 20, "Ann", "BL"), Task("b", 20, 30, "Ben", "OV")], 30, spread).OnTime);
    }

    [Fact]
    public void A_plan_without_chance_is_always_in_time_and_endangers_nothing()
    {
        RiskReport r = RiskOfPlan.Simulate(SmallHouse.Occasion, SmallHouse.Plan, t => Spread.Exactly(Minutes(t)));

        Assert.Equal((1.0, 0.0), (r.OnTime, r.LateNinety));
        Assert.Empty(r.Dangerous);
        Assert.Empty(r.Buffers);
    }

    [Fact]
    public void What_only_the_slot_itself_ends_is_not_waited_for()
    {
        Assert.Equal(1, Risk([Task("a", 0, 40, "Ann")], 30, _ => Spread.Exactly(90)).OnTime);
    }

    [Fact]
    public void The_task_that_spreads_is_the_dangerous_one_and_a_buffer_pays_behind_it()
    {
        RiskReport r = Risk([Task("calm", 0, 20, "Ben"), Task("wild", 0, 20, "Ann"), Task("last", 20, 30, "Ann")], 30, t => t.Id == "wild" ? new Triangular(15, 20, 40) : Spread.Exactly(Minutes(t)));

        Assert.Equal("wild", r.Dangerous[0].TaskId);
        Assert.Equal(1, r.Dangerous[0].Share, 9);
        // Late whenever "wild" takes over 20; ten minutes of buffer: over 30. 1 - 10² / (25 · 20) = 0.8.
        BufferGain best = r.Buffers[0];
        Assert.Equal("last", best.BeforeTaskId);
        Assert.InRange(best.OnTime, 0.785, 0.815);
    }

    [Fact]
    public void A_squeeze_within_a_bath_comes_so_long_after_it_began_as_was_planned()
    {
        PlannedTask bath = SmallHouse.Task("bath", TaskKind.Unattended, 10, 55, null, 0, null, "SB");
        PlannedTask squeeze = SmallHouse.Task("squeeze", TaskKind.Moment, 25, 27, null, 0, "Ben", "SB") with { Within = "bath" };
        PlannedTask load = SmallHouse.Task("load", TaskKind.Moment, 8, 10, null, 0, "Ann", "SB") with { Within = "bath" };

        // Loading takes 7 instead of 2, so the squeeze ends at 32.
        Func<PlannedTask, Spread> spread = t => Spread.Exactly(t.Id == "load" ? 7 : Minutes(t));
        Assert.Equal(0, Risk([load, bath, squeeze], 31, spread).OnTime);
        Assert.Equal(1, Risk([load, bath, squeeze], 32, spread).OnTime);
    }

    [Fact]
    public void Equal_seeds_give_equal_reports_and_other_seeds_nearly()
    {
        RiskReport One(int seed) => RiskOfPlan.Simulate(House, Planned([Task("a", 0, 20, "Ann"), Task("b", 20, 40, "Ann")], 44), null, 4000, seed);

        Assert.Equal(One(3).OnTime, One(3).OnTime);
        Assert.NotEqual(One(3).OnTime, One(4).OnTime);
        Assert.InRange(One(4).OnTime, One(3).OnTime - 0.05, One(3).OnTime + 0.05);
    }

    [Fact]
    public void More_time_before_the_slot_never_makes_it_less_likely_to_be_ready() => Gen.Int[31, 60].Select(Gen.Int[0, 15]).Sample((slot, more) =>
    {
        double At(int minutes) => RiskOfPlan.Simulate(House, Planned([Task("a", 0, 20, "Ann"), Task("b", 20, 30, "Ann")], minutes), null, 300).OnTime;
        Assert.True(At(slot + more) >= At(slot));
    }, iter: 40);

    [Theory]
    [InlineData(10, 20, 40)]
    [InlineData(5, 5, 30)]
    public void Nine_of_ten_lie_between_the_two_figures(double low, double likely, double high)
    {
        Triangular t = Triangular.Holding(low, likely, high);

        Assert.Equal(high, t.Quantile(0.95), 6);
        // With the likeliest at the very end there is no left arm and nothing falls below it.
        Assert.Equal(low, t.Quantile(low < likely ? 0.05 : 0), 6);
        Assert.True(t.Quantile(0) >= 0 && t.Quantile(0.3) <= t.Quantile(0.7));
    }

    [Fact]
    public void Ten_runs_of_ten_in_time_leave_a_wide_interval()
    {
        // Wilson (1927) for all of n: from 1 / (1 + z²/n) to 1; z = 1.959964, n = 10: 0.7225, by hand.
        RiskReport r = RiskOfPlan.Simulate(House, Planned([Task("a", 0, 20, "Ann")], 30), _ => Spread.Exactly(20), 10);

        Assert.Equal(0.7225, r.OnTimeLow, 4);
        Assert.Equal(1, r.OnTimeHigh, 9);
    }

    private static RiskReport Risk(ImmutableArray<PlannedTask> tasks, int slot, Func<PlannedTask, Spread> spread) => RiskOfPlan.Simulate(House, Planned(tasks, slot), spread);

    private static Plan Planned(ImmutableArray<PlannedTask> tasks, int slot) => new() { Title = "p", SlotStart = SmallHouse.Day.PlusMinutes(slot), SlotLength = Duration.FromMinutes(10), Tasks = tasks };

    private static PlannedTask Task(string id, int from, int to, string person, string? kit = null) => SmallHouse.Task(id, TaskKind.Work, from, to, null, 0, person, kit);

    private static double Minutes(PlannedTask t) => Period.Between(t.Start, t.End, PeriodUnits.Minutes).Minutes;
}
