using System.Collections.Immutable;
using Coulisse.Gauge.Planning;
using Coulisse.Tests;
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
        for (int seed = 1; seed <= (LongRun.On ? 30 : 8); seed++)
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

    [Fact]
    public void Searched_from_both_ends_the_value_is_that_of_the_plain_model()
    {
        int infeasible = 0;
        for (int seed = 1; seed <= 30; seed++)
        {
            // With longest waits, a first and a last activity, and the start of the last sought, as in the sets of minimum and maximum lags.
            SchedulingProblem p = Between(Random(new Random(seed), 10), seed);
            EngineOutcome ours = new CpSatEngine().Solve(p, new Effort(90, 1, 2));
            EngineOutcome plain = new PlainModel("").Solve(p, Short);
            if (plain is EngineInfeasible)
            {
                infeasible++;
                Assert.IsType<EngineInfeasible>(ours);
                continue;
            }

            EngineSchedule schedule = Assert.IsType<EngineSchedule>(ours);
            Assert.Null(ScheduleCheck.Fault(p, schedule));
            Assert.True(schedule.Proven && schedule.Levels[0].Value == Assert.IsType<EngineSchedule>(plain).Levels[0].Value, $"seed {seed}");
        }

        Assert.InRange(infeasible, 1, 25);
    }

    [Fact]
    public void A_log_of_the_gauge_cut_off_in_a_line_is_gone_on_with()
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        SchedulingProblem p = Problem(1, [Task(2), Task(3)]) with { Name = "two" };
        Effort effort = new(1, 1, 1);
        Solved solved = Solved.Of("set", "engine", p, effort, new CpSatEngine().Solve(p, effort));
        new SolvedLog(path).Add(solved);
        new SolvedLog(path).Add(solved with { Instance = "three" });
        File.WriteAllText(path, File.ReadAllText(path)[..^9]);

        SolvedLog again = new(path);
        Assert.Equal(5, again.Find(solved)!.Value);
        Assert.Null(again.Find(solved with { Instance = "three" }));
        again.Add(solved with { Instance = "three" });
        Assert.NotNull(new SolvedLog(path).Find(solved with { Instance = "three" }));
        File.Delete(path);
    }

    private static SchedulingProblem Between(SchedulingProblem p, int seed)
    {
        Random r = new(seed);
        int n = p.Activities.Length;
        List<Lag> lags = [.. p.Lags];
        for (int a = 0; a < n; a++)
        {
            lags.Add(Lag.StartToStart(n, a, 0));
            lags.Add(Lag.After(a, n + 1));
        }

        for (int k = 0; k < 6; k++)
        {
            // A longest wait written backwards.
            int from = r.Next(n - 1);
            lags.Add(Lag.StartToStart(r.Next(from + 1, n), from, -r.Next(10, 20)));
        }

        return p with
        {
            Activities = [.. p.Activities, new Activity("first", [new Mode(0, [])]) { FixedStart = 0 }, new Activity("last", [new Mode(0, [])])],
            Lags = [.. lags],
            Goals = [new Goal("makespan", "steps", [new Term(TermKind.Start, n + 1, 1)])],
        };
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
