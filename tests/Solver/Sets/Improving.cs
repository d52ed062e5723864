using System.Collections.Immutable;
using Coulisse.Gauge.Planning;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>What is done before and beside the search, on problems answered by hand or checked step by step.</summary>
public sealed class Improving
{
    private static readonly Effort Short = new(90, 1, 1);

    [Fact]
    public void Lags_that_contradict_each_other_are_refused_by_arithmetic()
    {
        SchedulingProblem p = Problem(1, [Task(2), Task(3)]) with { Lags = [Lag.StartToStart(0, 1, 5), Lag.StartToStart(1, 0, -4)] };
        Assert.Equal("The lags contradict each other.", Assert.IsType<EngineInfeasible>(new CpSatEngine().Solve(p, Short)).Why);
        // Near miss: at least 5 and at most 5.
        Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p with { Lags = [Lag.StartToStart(0, 1, 5), Lag.StartToStart(1, 0, -5)] }, Short));
    }

    [Fact]
    public void Two_that_cannot_run_together_and_may_not_wait_apart_are_ordered()
    {
        // b starts at least 1 after a and at most 2: on one pair of hands a (4 steps) is still running then.
        SchedulingProblem p = Problem(1, [Task(4), Task(3)]) with { Lags = [new Lag(0, Edge.Start, 1, Edge.Start, 1) { Most = 2 }] };
        Assert.IsType<EngineInfeasible>(new CpSatEngine().Solve(p, Short));
        Assert.Equal(7, Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p with { Lags = [new Lag(0, Edge.Start, 1, Edge.Start, 1) { Most = 4 }] }, Short)).Levels[0].Value);
    }

    [Fact]
    public void Many_random_networks_give_the_value_of_the_plain_model_and_a_valid_schedule()
    {
        for (int seed = 1; seed <= 30; seed++)
        {
            SchedulingProblem p = Random(new Random(seed), 12);
            EngineSchedule ours = Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p, Short));
            EngineSchedule plain = Assert.IsType<EngineSchedule>(new PlainModel("").Solve(p, Short));

            Assert.Null(ScheduleCheck.Fault(p, ours));
            Assert.True(ours.Proven && plain.Proven && ours.Levels[0].Value == plain.Levels[0].Value, $"seed {seed}: {ours.Levels[0].Value} and {plain.Levels[0].Value}");
        }
    }

    [Fact]
    public void A_large_network_keeps_its_bound_under_its_value_and_every_rule()
    {
        SchedulingProblem p = Random(new Random(7), 90);
        EngineSchedule s = Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p, new Effort(1, 1, 2)));

        Assert.Null(ScheduleCheck.Fault(p, s));
        Assert.InRange(s.Levels[0].Bound, 1, s.Levels[0].Value);
    }

    [Fact]
    public void Equal_seed_and_effort_give_the_equal_schedule_when_asked_for()
    {
        SchedulingProblem p = Random(new Random(3), 50);
        Effort effort = new(0.2, 5, 1) { Repeatable = true };
        EngineSchedule one = Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p, effort));
        EngineSchedule two = Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p, effort));

        Assert.Equal(one.Starts.AsEnumerable(), two.Starts);
    }

    private static Activity Task(int duration) => new("t", [new Mode(duration, [new Demand(0, 1)])]);

    private static SchedulingProblem Problem(int capacity, ImmutableArray<Activity> activities) => new() { Horizon = 60, Activities = activities, Resources = [new Resource("hands", capacity)] };

    private static SchedulingProblem Random(Random r, int n)
    {
        Activity[] tasks = [.. Enumerable.Range(0, n).Select(i => new Activity($"t{i}", [new Mode(r.Next(0, 9), [.. Enumerable.Range(0, 3).Select(k => new Demand(k, r.Next(0, 6))).Where(d => d.Amount > 0)])]))];
        List<Lag> lags = [];
        for (int b = 1; b < n; b++)
        {
            for (int k = r.Next(0, 3); k > 0; k--)
            {
                lags.Add(Lag.After(r.Next(b), b, r.Next(3)));
            }
        }

        return new SchedulingProblem { Horizon = 12 * n, Activities = [.. tasks], Lags = [.. lags], Resources = [new Resource("x", 8), new Resource("y", 9), new Resource("z", 7)] };
    }
}
