using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>Laws that hold whatever the right answer is: more is never worse, moved is only moved, renamed is the same.</summary>
public sealed class Laws
{
    private static readonly Effort Full = new(30, 1, 1);

    [Fact]
    public void One_more_of_any_kit_or_pair_of_hands_never_makes_the_best_schedule_longer()
    {
        for (int seed = 1; seed <= (LongRun.On ? 150 : 20); seed++)
        {
            SchedulingProblem p = BruteForce.Random(new Random(seed));
            long? best = Best(p);
            for (int r = 0; r < p.Resources.Length && best is not null; r++)
            {
                // A choice holds its resource whole, so one more pair of hands is a resource of its own.
                SchedulingProblem more = new Kitchen.Planning.Why.Hold(Kitchen.Planning.Why.HoldKind.Hands, 0, -1, 0, [r]).Without(p);
                Assert.True(Best(more) <= best, $"seed {seed}, resource {r}");
            }
        }
    }

    [Fact]
    public void Another_order_of_the_tasks_has_the_same_best_value()
    {
        for (int seed = 1; seed <= (LongRun.On ? 150 : 20); seed++)
        {
            SchedulingProblem p = BruteForce.Random(new Random(seed));
            int n = p.Activities.Length;
            SchedulingProblem turned = p with
            {
                Activities = [.. p.Activities.Reverse().Select(a => a with { Name = "other " + a.Name })],
                Lags = [.. p.Lags.Select(l => l with { From = n - 1 - l.From, To = n - 1 - l.To })],
            };
            Assert.Equal(Best(p), Best(turned));
        }
    }

    [Fact]
    public void A_longer_slot_never_shows_less()
    {
        int before = 0;
        for (int minutes = 4; minutes <= 60; minutes += 4)
        {
            int value = LiveSlot.Decide(DemoOccasion.Occasion with { SlotLength = Duration.FromMinutes(minutes) }).Shown.Sum(s => s.Weight >= 5 ? 1000 : Math.Max(1, s.Weight));
            Assert.True(value >= before, $"{minutes} min");
            before = value;
        }
    }

    [Fact]
    public void A_week_later_the_problem_is_the_same_problem()
    {
        Occasion o = DemoOccasion.Occasion;
        SheetWindow Later(SheetWindow w) => w with { Start = w.Start.PlusDays(7), End = w.End.PlusDays(7) };
        Occasion later = o with
        {
            SlotStart = o.SlotStart.PlusDays(7),
            Windows = [.. o.Windows.Select(Later)],
            Meals = [.. o.Meals.Select(Later)],
            People = [.. o.People.Select(p => p with { Hours = [.. p.Hours.Select(Later)] })],
            Kit = [.. o.Kit.Select(k => k.MovesAt is { } at ? k with { MovesAt = at.PlusDays(7) } : k)],
            Sheet = o.Sheet with { OrderArrives = o.Sheet.OrderArrives?.PlusDays(7) },
        };
        Assert.Equal(Told(PrepProblem.Write(o, DemoOccasion.Work).Problem), Told(PrepProblem.Write(later, TaskBuilder.Build(later, DemoOccasion.Batches, LiveSlot.Decide(later))).Problem));
    }

    [Fact]
    public void Other_names_are_the_same_problem()
    {
        Occasion o = DemoOccasion.Occasion;
        Occasion renamed = o with { People = [.. o.People.Select((p, i) => p with { Name = $"Person {i}" })] };
        PrepProblem one = PrepProblem.Write(o, DemoOccasion.Work);
        PrepProblem other = PrepProblem.Write(renamed, TaskBuilder.Build(renamed, DemoOccasion.Batches, LiveSlot.Decide(renamed)));
        Assert.Equal(Told(one.Problem), Told(other.Problem));
    }

    [Fact]
    public void Without_any_one_of_its_twins_the_run_sheet_fails()
    {
        Plan plan = Assert.IsType<Plan>(new CpSatPlanner().Plan(DemoOccasion.Occasion, DemoOccasion.Batches, new PlanOptions(60) { FirstOnly = true }));
        Assert.NotEmpty(plan.Twins);
        Assert.Empty(PlanValidator.Check(DemoOccasion.Occasion, plan).Select(f => f.Words));
        Assert.All(plan.Twins, t => Assert.Contains(PlanValidator.Check(DemoOccasion.Occasion, plan with { Twins = plan.Twins.Remove(t) }), f => f.Code == "twin-missing"));
    }

    [Fact]
    public void A_first_schedule_by_lists_keeps_every_rule()
    {
        SchedulingProblem p = PrepProblem.Write(DemoOccasion.Occasion, DemoOccasion.Work).Problem;
        EngineSchedule? heard = null;
        EngineSchedule? quick = Kitchen.Planning.Live.QuickStart.Of(p, first: s => heard = s);
        Assert.NotNull(heard);
        Assert.False(GoalValue.Better(p, heard, quick!));

        // The waits the cards wish for are met, the run-through is held: no search was needed for it.
        Assert.Equal(0, GoalValue.Of(p, p.Goals[0], quick!));
        Assert.InRange(GoalValue.Of(p, p.Goals[1], quick!), -10, -8);
        Activity[] there = [.. p.Activities.Select((a, i) => quick!.Starts[i] < 0 ? a : a with { FixedStart = Inside(a, quick.Starts[i], quick.Modes[i]) ? quick.Starts[i] : -1, Modes = [a.Modes[quick.Modes[i]] with { Choices = quick.Served[i].IsEmpty ? [] : [new Choice(quick.Served[i], quick.Served[i].Length)] }] })];
        Assert.DoesNotContain(there, a => a.FixedStart == -1);
        Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p with { Activities = [.. there], Goals = [new Goal("any", "", [])] }, Full));

        for (int seed = 1; seed <= (LongRun.On ? 500 : 60); seed++)
        {
            SchedulingProblem tiny = BruteForce.Random(new Random(seed));
            if (Kitchen.Planning.Live.QuickStart.Of(tiny) is { } made)
            {
                Assert.Null(Coulisse.Gauge.Planning.ScheduleCheck.Fault(tiny, made));
                Assert.True(Best(tiny) is { } best && best <= Enumerable.Range(0, made.Starts.Length).Max(a => made.End(tiny, a)), $"seed {seed}");
            }
        }
    }

    private static bool Inside(Activity a, int start, int mode) => a.Windows.IsEmpty || a.Windows.Any(w => w.Start <= start && start + a.Modes[mode].Duration <= w.End);

    private static long? Best(SchedulingProblem p) => new CpSatEngine().Solve(p, Full) switch
    {
        EngineSchedule { Proven: true } s => s.Levels[0].Value,
        EngineInfeasible => null,
        EngineOutcome o => throw new InvalidOperationException(o.ToString()),
    };

    // All that the engine sees of a problem, without names.
    private static string Told(SchedulingProblem p) => string.Join('\n',
        p.Horizon,
        string.Join(';', p.Activities.Select(a => $"{a.Optional} {a.FixedStart} {string.Join(',', a.Windows)} {string.Join('/', a.Modes.Select(m => $"{m.Duration} {string.Join(',', m.Demands)} {m.State} {string.Join('+', m.Choices.Select(c => c.Count + ":" + string.Join(',', c.Resources)))}"))}")),
        string.Join(';', p.Lags.Select(l => $"{l.From} {l.FromEdge} {l.To} {l.ToEdge} {l.Least} {l.Most} {l.Soft}")),
        string.Join(';', p.Resources.Select(r => $"{r.Capacity} {string.Join(',', r.Closed)}")));
}
