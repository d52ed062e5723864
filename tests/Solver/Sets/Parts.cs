using System.Collections.Immutable;
using Coulisse.Gauge.Planning;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>Large plans made better part by part.</summary>
public sealed class Parts
{
    [Fact]
    public void A_banquet_only_gets_better_and_keeps_every_rule()
    {
        (Occasion occasion, ImmutableArray<Batch> batches) = Banquet.Make(9, 8, 3);
        Plan first = Assert.IsType<Plan>(new CpSatPlanner().Plan(occasion, batches, new PlanOptions(5) { FirstOnly = true }));
        Assert.InRange(first.Tasks.Length, 250, 400);

        Plan after = Assert.IsType<Plan>(new CpSatPlanner().Plan(occasion, batches, new PlanOptions(10)));

        Assert.Empty(PlanValidator.Check(occasion, after).Select(f => f.Words));
        Assert.True(Compared(after, first) < 0, string.Join("; ", after.Objective.Zip(first.Objective, (a, b) => $"{a.Level} {a.Value} after {b.Value}")));
        // What is called a bound is one: no value lies on its wrong side.
        Assert.All(after.Objective.Skip(1), l => Assert.True(l.Bound is null || l.Bound <= l.Value + 1e-9, l.Level));
    }

    [Fact]
    public void What_arithmetic_calls_reach_and_bound_can_be_reckoned_by_hand()
    {
        // a (3) then 2 steps later b (4), on a day of 20; b begins at most 6 after a has ended.
        SchedulingProblem p = new()
        {
            Horizon = 20,
            Activities = [new Activity("a", [new Mode(3, [])]) { Windows = [new Stretch(1, 20)] }, new Activity("b", [new Mode(4, [])])],
            Lags = [new Lag(0, Edge.End, 1, Edge.Start, 2) { Most = 6 }],
        };
        Reach reach = Reach.Of(p);
        Assert.Equal([1, 6], reach.Earliest);
        Assert.Equal([11, 16], reach.Latest);
        Assert.Equal(-16, reach.Bound(new Goal("late", "", [new Term(TermKind.Start, 1, -1)])));
        Assert.Equal(4, reach.Bound(new Goal("over", "", [new Term(TermKind.EndAfter, 1, 1, 6)])));
        Assert.Equal(-16, Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p with { Goals = [new Goal("late", "", [new Term(TermKind.Start, 1, -1)])] }, new Effort(20, 1, 1))).Levels[0].Value);
    }

    [Fact]
    public void The_reach_of_random_problems_never_cuts_off_the_best()
    {
        int told = 0;
        for (int seed = 1; seed <= 40; seed++)
        {
            SchedulingProblem p = BruteForce.Random(new Random(seed));
            Goal late = new("late", "", [.. p.Activities.Select((_, i) => new Term(TermKind.Start, i, i % 2 == 0 ? -1 : 1))]);
            if (new CpSatEngine().Solve(p with { Goals = [late] }, new Effort(30, 1, 1)) is EngineSchedule s)
            {
                told++;
                Assert.True(Reach.Of(p).Bound(late) <= s.Levels[0].Value, $"seed {seed}");
            }
        }

        Assert.InRange(told, 10, 40);
    }

    private static int Compared(Plan one, Plan other)
        => one.Objective.Zip(other.Objective, (a, b) => a.Level == "shown" ? b.Value.CompareTo(a.Value) : a.Value.CompareTo(b.Value)).FirstOrDefault(c => c != 0);
}
