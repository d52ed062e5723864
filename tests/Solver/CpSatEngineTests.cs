using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Tests;

/// <summary>The engine on problems small enough to be answered by hand.</summary>
public sealed class CpSatEngineTests
{
    private static readonly Effort Short = new(5, 1, 1);

    [Fact]
    public void Two_tasks_of_one_person_follow_each_other()
    {
        EngineSchedule s = Solved(Problem([Task("a", 3, 0), Task("b", 4, 0)]) with { Resources = [new Resource("cook", 1)] });
        Assert.Equal(7, s.Levels[0].Value);
        Assert.True(s.Proven);
    }

    [Fact]
    public void A_longest_wait_that_contradicts_the_least_is_infeasible()
    {
        SchedulingProblem p = Problem([Task("a", 3), Task("b", 4)]) with { Lags = [Lag.After(0, 1, 5), new Lag(0, Edge.End, 1, Edge.Start, 0) { Most = 4 }] };
        Assert.IsType<EngineInfeasible>(new CpSatEngine().Solve(p, Short));
    }

    [Fact]
    public void An_oven_changes_its_set_point_at_its_own_rate_and_shares_an_equal_one()
    {
        Activity Bake(string name, int celsius) => new(name, [new Mode(10, []) { State = new StateUse(0, celsius) }]);
        SchedulingProblem p = Problem([Bake("a", 160), Bake("b", 160), Bake("c", 170)]) with { StateKits = [new StateKit("oven", 5, 2)] };
        // 160 first: 10, then 10 degrees up at 5 a step: 2, then 10. The other way round the fall would take 5.
        Assert.Equal(22, Solved(p).Levels[0].Value);
    }

    [Fact]
    public void A_cleaning_stands_between_a_use_with_an_allergen_and_one_without_when_the_order_is_fixed()
    {
        SchedulingProblem p = Problem([Task("with egg", 3, 0), Task("without", 3, 0), Task("wash", 2, 0) with { Optional = true }]) with
        {
            Resources = [new Resource("jug", 1)],
            Lags = [Lag.After(0, 1)],
            Cleans = [new CleanRule(0, [new CleanUse(0, 1), new CleanUse(1, 0)], [2])],
        };
        Assert.Equal(8, Solved(p).Levels[0].Value);
        // Near miss: free to choose, the clean food goes first and nothing is washed.
        Assert.Equal(6, Solved(p with { Lags = [] }).Levels[0].Value);
    }

    [Fact]
    public void What_one_jug_held_is_no_matter_to_another()
    {
        // With egg in one jug, without in the other: no wash. One jug for both in that order: a wash.
        Activity Blend(string name, params int[] jugs) => new(name, [.. jugs.Select(j => new Mode(3, [new Demand(j, 1)]))]);
        SchedulingProblem two = Problem([Blend("with egg", 0), Blend("without", 0, 1), new Activity("wash", [new Mode(2, [new Demand(0, 1)]), new Mode(2, [new Demand(1, 1)])]) { Optional = true }]) with
        {
            Resources = [new Resource("jug", 1), new Resource("other jug", 1)],
            Lags = [Lag.After(0, 1)],
            Cleans = [.. new[] { 0, 1 }.Select(j => new CleanRule(j, [new CleanUse(0, 1), new CleanUse(1, 0)], [2]))],
        };
        Assert.Equal(6, Solved(two).Levels[0].Value);
        Assert.Equal(8, Solved(two with { Activities = two.Activities.SetItem(1, Blend("without", 0)) }).Levels[0].Value);
    }

    [Fact]
    public void Any_one_of_the_able_serves_and_one_who_is_away_does_not()
    {
        Activity either = new("knead", [new Mode(5, []) { Choices = [new Choice([0, 1], 1)] }]);
        SchedulingProblem p = Problem([either, either]) with { Resources = [new Resource("one", 1), new Resource("two", 1) { Closed = [new Stretch(0, 20)] }] };
        EngineSchedule s = Solved(p);
        Assert.Equal(10, s.Levels[0].Value);
        Assert.All(s.Served, served => Assert.Equal(0, Assert.Single(served)));
        Assert.Equal(5, Solved(p with { Resources = [.. p.Resources.Select(r => r with { Closed = [] })] }).Levels[0].Value);
    }

    [Fact]
    public void Work_that_is_to_be_done_early_counts_only_what_ends_after()
    {
        // One person, three and four steps of work, done by step 5: one of the two ends at 7, so two steps over; done by 7, none.
        Goal Early(int by) => new("early", "steps", [new Term(TermKind.EndAfter, 0, 1, by), new Term(TermKind.EndAfter, 1, 1, by)]);
        SchedulingProblem p = Problem([Task("a", 3, 0), Task("b", 4, 0)]) with { Resources = [new Resource("cook", 1)], Goals = [Early(5)] };
        EngineSchedule s = Solved(p);
        Assert.Equal(2, s.Levels[0].Value);
        Assert.Equal(2, GoalValue.Of(p, p.Goals[0], s));
        Assert.Equal(0, Solved(p with { Goals = [Early(7)] }).Levels[0].Value);
    }

    private static Activity Task(string name, int duration, params int[] holds) => new(name, [new Mode(duration, [.. holds.Select(r => new Demand(r, 1))])]);

    private static SchedulingProblem Problem(ImmutableArray<Activity> activities) => new() { Horizon = 50, Activities = activities };

    private static EngineSchedule Solved(SchedulingProblem p) => Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p, Short));
}
