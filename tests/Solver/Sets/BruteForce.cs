using System.Collections.Immutable;
using Coulisse.Gauge.Planning;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Tests;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>Random tiny occasions answered by trying everything: up to six tasks, two people, two ovens that hold one set point each, eight steps.</summary>
public sealed class BruteForce
{
    private const int Horizon = 8;

    [Fact]
    public void The_engine_and_trying_everything_agree_on_every_random_tiny_occasion()
    {
        int count = LongRun.On ? 500 : 50;
        int feasible = 0;
        for (int seed = 1; seed <= count; seed++)
        {
            SchedulingProblem problem = Random(new Random(seed));
            int? best = new Exhaustive(problem).Best();
            EngineOutcome outcome = new CpSatEngine().Solve(problem, new Effort(90, 1, 1));
            if (best is null)
            {
                Assert.IsType<EngineInfeasible>(outcome);
                continue;
            }

            feasible++;
            EngineSchedule schedule = Assert.IsType<EngineSchedule>(outcome);
            Assert.True(schedule.Proven && schedule.Levels[0].Value == best, $"seed {seed}: by trying everything {best}, by the engine {schedule.Levels[0].Value}");
            Assert.Null(ScheduleCheck.Fault(problem, schedule));
        }

        // Both kinds of answer are met, or the agreement says little.
        Assert.InRange(feasible, count / 4, count - 1);
    }

    internal static SchedulingProblem Random(Random r)
    {
        int n = r.Next(3, 7);
        List<Activity> tasks = [];
        for (int a = 0; a < n; a++)
        {
            int minutes = r.Next(1, 4);
            tasks.Add(r.Next(3) switch
            {
                // Either person; one named person; an oven by itself at one of three set points.
                0 => new Activity($"either {a}", [new Mode(minutes, []) { Choices = [new Choice([0, 1], r.Next(4) == 0 ? 2 : 1)] }]),
                1 => new Activity($"named {a}", [new Mode(minutes, [new Demand(r.Next(2), 1)])]),
                _ => Bake(a, minutes, r.Next(2), 150 + (10 * r.Next(3))),
            } with { Windows = r.Next(4) == 0 ? [new Stretch(0, r.Next(3, 6)), new Stretch(r.Next(6, 7), Horizon)] : [] });
        }

        List<Lag> lags = [];
        for (int b = 1; b < n; b++)
        {
            if (r.Next(2) == 0)
            {
                lags.Add(new Lag(r.Next(b), Edge.End, b, Edge.Start, r.Next(2)) { Most = r.Next(2) == 0 ? r.Next(1, 3) : null });
            }
        }

        return new SchedulingProblem
        {
            Horizon = Horizon, Activities = [.. tasks], Lags = [.. lags],
            // Two people, then the shelves of the two ovens (two each).
            Resources = [new Resource("one", 1) { Closed = r.Next(3) == 0 ? [new Stretch(3, 4)] : [] }, new Resource("two", 1), new Resource("shelves", 2), new Resource("shelves", 2)],
            StateKits = [new StateKit("oven 1", 10, 5), new StateKit("oven 2", 20, 10)],
        };
    }

    private static Activity Bake(int a, int minutes, int oven, int celsius)
        => new($"bake {a}", [new Mode(minutes, [new Demand(2 + oven, 1)]) { State = new StateUse(oven, celsius) }]);

    /// <summary>Every start and every choice of hands, cut only where a rule is already broken: shares no code with the engine.</summary>
    private sealed class Exhaustive(SchedulingProblem p)
    {
        private readonly int[] _start = new int[p.Activities.Length];
        private readonly int[] _hands = new int[p.Activities.Length];
        private int? _best;

        public int? Best()
        {
            Place(0, 0);
            return _best;
        }

        private Mode Of(int a) => p.Activities[a].Modes[0];

        private void Place(int a, int last)
        {
            if (a == p.Activities.Length)
            {
                _best = Math.Min(_best ?? int.MaxValue, last);
                return;
            }

            int minutes = Of(a).Duration;
            for (int t = 0; t + minutes <= Horizon && Math.Max(last, t + minutes) < (_best ?? int.MaxValue); t++)
            {
                if (p.Activities[a].Windows is { IsEmpty: false } w && !w.Any(s => s.Start <= t && t + minutes <= s.End))
                {
                    continue;
                }

                foreach (int hands in Ways(a))
                {
                    (_start[a], _hands[a]) = (t, hands);
                    if (Fits(a))
                    {
                        Place(a + 1, Math.Max(last, t + minutes));
                    }
                }
            }
        }

        /// <summary>Whose hands, as bits.</summary>
        private int[] Ways(int a) => Of(a) switch
        {
            { Choices: [{ Count: 2 }] } => [3],
            { Choices: [_] } => [1, 2],
            var m => [m.Demands.Where(d => d.Resource < 2).Sum(d => 1 << d.Resource)],
        };

        private bool Fits(int a)
        {
            for (int t = _start[a]; t < _start[a] + Of(a).Duration; t++)
            {
                if ((_hands[a] & 1) != 0 && p.Resources[0].Closed.Any(c => c.Start <= t && t < c.End))
                {
                    return false;
                }

                int[] now = [.. Enumerable.Range(0, a + 1).Where(b => _start[b] <= t && t < _start[b] + Of(b).Duration)];
                if (now.Any(b => b != a && (_hands[b] & _hands[a]) != 0) || (Of(a).State is { } s && now.Count(b => Of(b).State?.Kit == s.Kit) > 2))
                {
                    return false;
                }
            }

            for (int b = 0; b < a; b++)
            {
                if (Of(a).State is { } x && Of(b).State is { } y && x.Kit == y.Kit && x.State != y.State && Apart(b, a) < Change(x.Kit, y.State, x.State) && Apart(a, b) < Change(x.Kit, x.State, y.State))
                {
                    return false;
                }
            }

            return p.Lags.Where(l => Math.Max(l.From, l.To) == a).All(l => Apart(l.From, l.To) >= l.Least && !(Apart(l.From, l.To) > l.Most));
        }

        private int Apart(int from, int to) => _start[to] - (_start[from] + Of(from).Duration);

        private double Change(int kit, int from, int to) => to > from ? Math.Ceiling((to - from) / p.StateKits[kit].RisePerStep) : Math.Ceiling((from - to) / p.StateKits[kit].FallPerStep);
    }
}
