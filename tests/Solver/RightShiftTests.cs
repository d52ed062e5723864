using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Model;
using CsCheck;

namespace Coulisse.Solver.Tests;

/// <summary>The quick repair, on schedules answered by hand and against the engine that accepts or refuses what it made.</summary>
public sealed class RightShiftTests
{
    private static readonly Resource[] Two = [new("one", 1), new("two", 1)];

    [Fact]
    public void Nothing_happened_so_nothing_moves()
    {
        SchedulingProblem p = Chain();
        EngineSchedule old = Schedule(p, [0, 5, 10]);
        Assert.Equal(old.Starts, RightShift.Repair(p, old)!.Starts);
    }

    [Fact]
    public void A_task_that_begins_late_pushes_only_what_waits_for_it()
    {
        SchedulingProblem p = Chain();
        p = p with { Activities = [p.Activities[0] with { FixedStart = 3 }, p.Activities[1], p.Activities[2]] };
        // 0 runs 3 to 8, 1 follows at 8 instead of 5 and ends at 13, so 2 comes at 13; a 2 that was at 20 anyway stays.
        Assert.Equal([3, 8, 13], RightShift.Repair(p, Schedule(p, [0, 5, 10]))!.Starts);
        Assert.Equal([3, 8, 20], RightShift.Repair(p, Schedule(p, [0, 5, 20]))!.Starts);
    }

    [Fact]
    public void A_person_who_went_is_replaced_by_one_who_can_and_nobody_by_one_who_cannot()
    {
        SchedulingProblem p = new()
        {
            Horizon = 60,
            Resources = [Two[0] with { Closed = [new Stretch(0, 60)] }, Two[1]],
            Activities = [new Activity("knead", [new Mode(5, []) { Choices = [new Choice([0, 1], 1)] }])],
        };
        EngineSchedule made = RightShift.Repair(p, Schedule(p, [0], [0]))!;
        Assert.Equal(1, Assert.Single(made.Served[0]));
        Assert.Null(RightShift.Repair(p with { Resources = [p.Resources[0], p.Resources[0]] }, Schedule(p, [0], [0])));
    }

    [Fact]
    public void A_longest_wait_pushes_the_earlier_task_back()
    {
        // "Turn it" comes 4 to 6 steps after the start of the bake and needs the person, who is away until step 10.
        SchedulingProblem p = new()
        {
            Horizon = 60,
            Resources = [Two[0] with { Closed = [new Stretch(0, 10)] }],
            Activities = [new Activity("bake", [new Mode(20, [])]), new Activity("turn", [new Mode(2, []) { Choices = [new Choice([0], 1)] }])],
            Lags = [new Lag(0, Edge.Start, 1, Edge.Start, 4) { Most = 6 }],
        };
        EngineSchedule made = RightShift.Repair(p, Schedule(p, [0, 4], [], [0]))!;
        Assert.Equal(10, made.Starts[1]);
        Assert.Equal(4, made.Starts[0]);
    }

    [Fact]
    public void The_least_repair_leaves_alone_whom_nothing_touches()
    {
        // Three for one pair of hands, one after the other; the middle one's kit is gone until 30. The third stays at 10, where a shift to the right would have moved it on.
        SchedulingProblem p = new()
        {
            Horizon = 60,
            Resources = [Two[0], Two[1] with { Closed = [new Stretch(0, 30)] }],
            Activities = [.. Enumerable.Range(0, 3).Select(i => new Activity("a" + i, [new Mode(5, i == 1 ? [new Demand(0, 1), new Demand(1, 1)] : [new Demand(0, 1)])]))],
        };
        Assert.Equal([0, 30, 10], RightShift.Insert(p, Schedule(p, [0, 5, 10]))!.Starts);

        // What waits for the one that moved is sent on.
        SchedulingProblem chained = p with { Lags = [Lag.After(0, 1), Lag.After(1, 2)] };
        Assert.Equal([0, 30, 35], RightShift.Insert(chained, Schedule(chained, [0, 5, 10]))!.Starts);

        // Where there is room earlier and none later, it comes earlier.
        SchedulingProblem gone = p with { Resources = [Two[0], Two[1] with { Closed = [new Stretch(5, 60)] }], Activities = [p.Activities[0] with { FixedStart = 20 }, p.Activities[1], p.Activities[2]] };
        Assert.Equal([20, 0, 10], RightShift.Insert(gone, Schedule(gone, [20, 5, 10]))!.Starts);
        Assert.Null(RightShift.Insert(gone with { Resources = [Two[0], Two[1] with { Closed = [new Stretch(0, 60)] }] }, Schedule(gone, [20, 5, 10])));
    }

    [Fact]
    public void What_longest_waits_tie_together_is_laid_as_a_whole()
    {
        // Off the heat at once (0 to 3), poured within 10 steps of it, and only one pair of hands, which is taken from 12 to 40.
        SchedulingProblem p = new()
        {
            Horizon = 90,
            Resources = [Two[0] with { Closed = [new Stretch(12, 40)] }],
            Activities = [new Activity("boil", [new Mode(10, [])]), new Activity("off", [new Mode(2, [new Demand(0, 1)])]), new Activity("pour", [new Mode(8, [new Demand(0, 1)])])],
            Lags = [Lag.After(0, 1) with { Most = 3 }, Lag.After(1, 2) with { Most = 10 }],
        };
        EngineSchedule made = RightShift.Repair(p, Schedule(p, [0, 10, 12]))!;
        // 10 to 12 is free for "off", but then the pouring would wait 28: all of it moves, and the boil ends at 37, no sooner than 3 before "off".
        Assert.Equal([27, 40, 42], made.Starts);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_it_makes_the_engine_accepts(bool least)
    {
        int repaired = 0;
        Gen.Select(Gen.Int[1, 6].Array[4, 9], Gen.Int[0, 8].Array[9], Gen.Int[0, 3].Array[9], Gen.Int[0, 12], Gen.Int[0, 20]).Sample((durations, starts, kinds, slip, away) =>
        {
            int n = durations.Length;
            SchedulingProblem p = new()
            {
                Horizon = 200,
                Resources = [Two[0] with { Closed = [new Stretch(away, away + 7)] }, Two[1], new Resource("shelves", 2)],
                StateKits = [new StateKit("oven", 5, 2) { Initial = 100 }],
                Activities = [.. Enumerable.Range(0, n).Select(i => new Activity("a" + i, [new Mode(durations[i], kinds[i] == 1 ? [new Demand(2, 1)] : [])
                {
                    Choices = kinds[i] == 2 ? [new Choice([0, 1], 1)] : [],
                    State = kinds[i] == 3 ? new StateUse(0, 150 + (10 * (i % 2))) : null,
                }]))],
                Lags = [.. Enumerable.Range(1, n - 1).Where(i => starts[i] > 3).Select(i => new Lag(i - 1, Edge.End, i, Edge.Start, starts[i] - 4) { Most = starts[i] == 8 ? 30 : null })],
            };
            p = p with { Activities = p.Activities.SetItem(0, p.Activities[0] with { FixedStart = slip + (kinds[0] == 3 ? 20 : 0) + (kinds[0] == 2 ? 40 : 0) }) };
            EngineSchedule old = Schedule(p, [.. Enumerable.Range(0, n).Select(i => 6 * i)], [.. kinds.Take(n).Select(k => k == 2 ? 0 : -1)]);
            if ((least ? RightShift.Insert(p, old) : RightShift.Repair(p, old)) is not { } made)
            {
                return;
            }

            repaired++;
            SchedulingProblem held = p with
            {
                Activities = [.. p.Activities.Select((a, i) => a with { FixedStart = made.Starts[i], Modes = [.. a.Modes.Select(m => m with { Choices = m.Choices.IsEmpty ? [] : [new Choice(made.Served[i], 1)] })] })],
            };
            Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(held, new Effort(5, 1, 1)));
            Assert.All(Enumerable.Range(1, n - 1), i => Assert.True(least || made.Starts[i] >= old.Starts[i]));
        }, iter: 60, threads: 1);
        Assert.InRange(repaired, 20, 60);
    }

    private static SchedulingProblem Chain() => new()
    {
        Horizon = 60,
        Resources = [Two[0]],
        Activities = [.. Enumerable.Range(0, 3).Select(i => new Activity("a" + i, [new Mode(5, [new Demand(0, 1)])]))],
        Lags = [Lag.After(0, 1), Lag.After(1, 2)],
    };

    private static EngineSchedule Schedule(SchedulingProblem p, int[] starts, params int[][] served) =>
        new([.. starts], [.. starts.Select(_ => 0)], [.. p.Activities.Select((_, i) => i < served.Length ? served[i].ToImmutableArray() : [])], []);

    private static EngineSchedule Schedule(SchedulingProblem p, int[] starts, int[] one) =>
        Schedule(p, starts, [.. one.Select(r => r < 0 ? Array.Empty<int>() : [r])]);
}
