using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Why;
using Coulisse.Tests;

namespace Coulisse.Solver.Tests;

/// <summary>Each stated reason before a judge that knows nothing of it: the solver, with all other tasks fixed where they are.</summary>
public sealed class WhyTests(WhyTests.Planned planned) : IClassFixture<WhyTests.Planned>
{
    [Fact]
    public void What_a_reason_names_and_nothing_else_lets_the_task_move_earlier()
    {
        PlanReasons reasons = planned.Reasons;
        OneMove move = new(reasons.Problem, reasons.Schedule);
        int[] present = [.. Enumerable.Range(0, reasons.Schedule.Starts.Length).Where(a => reasons.Schedule.Starts[a] >= 0)];
        int step = LongRun.On ? 1 : 2;
        int held = 0;
        HashSet<HoldKind> kinds = [];
        List<string> wrong = [];
        for (int k = 0; k < present.Length; k += step)
        {
            int a = present[k];
            if (move.Together(a).Any(m => reasons.Schedule.Starts[m] == 0))
            {
                // Before the first minute of the first window there is no time to move into, whatever is taken away.
                continue;
            }

            ImmutableArray<Hold> holds = move.Holds(a, -1);
            string name = reasons.Problem.Activities[a].Name;
            bool movable = Possible(reasons, move.Together(a), []);
            if (movable != holds.IsEmpty)
            {
                wrong.Add($"{name}: said {(holds.IsEmpty ? "free" : "held")}, is {(movable ? "free" : "held")}");
                continue;
            }

            if (holds.IsEmpty)
            {
                continue;
            }

            held++;
            kinds.UnionWith(holds.Select(h => h.Kind));
            if (!Possible(reasons, move.Together(a), holds))
            {
                wrong.Add($"{name}: all it names taken away, it still cannot move: {string.Join("; ", holds.Select(h => h.Kind))}");
            }

            // All of them are needed: with any one of them left it stays.
            foreach (Hold kept in holds.Where(_ => holds.Length > 1))
            {
                if (Possible(reasons, move.Together(a), [.. holds.Where(h => h != kept && !Implied(h, kept))]))
                {
                    wrong.Add($"{name}: {kept.Kind} was named for nothing");
                }
            }

            // And nothing else helps: everything not named taken away.
            if (Possible(reasons, move.Together(a), Others(reasons.Problem, move.Together(a), holds)))
            {
                wrong.Add($"{name}: something else would have let it move than {string.Join("; ", holds.Select(h => h.Kind))}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        Assert.True(held >= present.Length / step / 3, $"only {held} tasks were held by anything");
        Assert.True(kinds.Count >= 3, string.Join(", ", kinds));
    }

    [Fact]
    public void Slack_is_the_last_minute_that_is_possible()
    {
        OneMove move = new(planned.Reasons.Problem, planned.Reasons.Schedule);
        int checkedOnes = 0;
        foreach (TaskReason r in planned.Reasons.All().Where(r => r.Slack.TotalMinutes is > 0 and < 200).Take(LongRun.On ? 50 : 5))
        {
            int a = planned.IndexOf(r.Key);
            Assert.True(Possible(planned.Reasons, move.Together(a), [], (int)r.Slack.TotalMinutes));
            Assert.False(Possible(planned.Reasons, move.Together(a), [], (int)r.Slack.TotalMinutes + 1));
            checkedOnes++;
        }

        Assert.True(checkedOnes > 0);
    }

    [Fact]
    public void Every_chain_ends_where_nobody_can_move_anything_or_something_is_free()
    {
        ImmutableArray<TaskReason> all = planned.Reasons.All();
        Assert.NotEmpty(all);
        Assert.All(all, r => Assert.NotEmpty(r.Chain));
        Assert.All(all, r => Assert.True(r.NotEarlier.Length > 0 || r.Chain[0].Contains("could begin earlier", StringComparison.Ordinal)));
    }

    private static bool Implied(Hold one, Hold other) => one.Kind == other.Kind && one.Kind is HoldKind.Hands or HoldKind.Kit && one.Resources.Intersect(other.Resources).Any();

    // Everything a relaxation can take away, save what was named: other lags of the group, other people and kit, other set points and washes, windows and hours that were not named.
    private static ImmutableArray<Hold> Others(SchedulingProblem p, ImmutableArray<int> group, ImmutableArray<Hold> named)
    {
        List<Hold> rest = [];
        rest.AddRange(Enumerable.Range(0, p.Lags.Length).Where(i => group.Contains(p.Lags[i].From) != group.Contains(p.Lags[i].To)).Select(i => new Hold(HoldKind.Lag, p.Lags[i].To, p.Lags[i].From, i, [])));
        rest.AddRange(Enumerable.Range(0, p.Resources.Length).Where(r => !named.Any(h => h.Resources.Contains(r))).Select(r => new Hold(HoldKind.Kit, 0, -1, 0, [r])));
        rest.AddRange(group.SelectMany(a => new[] { new Hold(HoldKind.Window, a, -1, 0, []), new Hold(HoldKind.Fixed, a, -1, 0, []) }));
        rest.AddRange(group.SelectMany(a => Enumerable.Range(0, p.StateKits.Length).Select(k => new Hold(HoldKind.SetPoint, a, -1, k, []))));
        return [.. rest.Where(r => !named.Any(h => h.Kind == r.Kind && (h.Kind == HoldKind.Lag ? h.Index == r.Index : h.Kind == HoldKind.SetPoint ? h.Index == r.Index && h.Activity == r.Activity : h.Activity == r.Activity && h.Kind is HoldKind.Window or HoldKind.Fixed)))];
    }

    // Whether the solver can place the group shifted, all else fixed, after some things were taken away.
    private static bool Possible(PlanReasons reasons, ImmutableArray<int> group, ImmutableArray<Hold> away, int shift = -1)
    {
        SchedulingProblem p = away.Aggregate(reasons.Problem, (q, h) => h.Without(q));
        EngineSchedule s = reasons.Schedule;
        Activity[] fixedOnes = [.. p.Activities.Select((a, i) =>
        {
            if (s.Starts[i] < 0)
            {
                return a with { Modes = [new Mode(0, [])], Windows = [], FixedStart = null, Optional = true };
            }

            Mode mode = a.Modes[s.Modes[i]];
            if (!group.Contains(i))
            {
                return a with { Modes = [mode with { Choices = s.Served[i].IsEmpty ? [] : [new Choice(s.Served[i], s.Served[i].Length)] }], Windows = [], FixedStart = s.Starts[i], Optional = false };
            }

            Stretch to = new(s.Starts[i] + shift, s.Starts[i] + shift + mode.Duration);
            bool open = a.FixedStart is null && (a.Windows.IsEmpty ? to.Start >= 0 && to.End <= p.Horizon : a.Windows.Any(w => w.Start <= to.Start && to.End <= w.End));
            return a with { Modes = [mode], Windows = [open ? to : new Stretch(0, 0)], FixedStart = null, Optional = false };
        })];
        ImmutableArray<Lag> lags = [.. p.Lags.Where(l => s.Starts[l.From] >= 0 && s.Starts[l.To] >= 0)];
        CleanRule[] cleans = [.. p.Cleans.Select(c => c with { Uses = [.. c.Uses.Where(u => s.Starts[u.Activity] >= 0)], Cleanings = [.. c.Cleanings.Where(w => s.Starts[w] >= 0)] })];
        return new CpSatEngine().Solve(p with { Activities = [.. fixedOnes], Lags = lags, Cleans = [.. cleans], Goals = [new Goal("any", "", [])] }, new Effort(30, 1, 1) { FirstOnly = true }) is EngineSchedule;
    }

    /// <summary>The example's plan, made once, with its reasons.</summary>
    public sealed class Planned
    {
        private readonly string[] _keys = [.. DemoOccasion.Work.Tasks.Select(t => t.Key)];

        public Planned()
        {
            Plan = Assert.IsType<Plan>(new CpSatPlanner().Plan(DemoOccasion.Occasion, DemoOccasion.Batches, new PlanOptions(20)));
            Reasons = new PlanReasons(DemoOccasion.Occasion, DemoOccasion.Work, Plan);
        }

        public Plan Plan { get; }

        public PlanReasons Reasons { get; }

        public int IndexOf(string key) => Array.IndexOf(_keys, key);
    }
}
