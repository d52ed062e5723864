using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Solver.Tests;

/// <summary>The demo's plan followed into its last morning, and made again when that morning goes wrong.</summary>
public sealed class ReplanTests(ReplanTests.Followed followed) : IClassFixture<ReplanTests.Followed>
{
    private static readonly LocalDateTime Now = new(2026, 10, 10, 9, 0);

    [Fact]
    public void A_morning_that_goes_to_plan_changes_nothing()
    {
        Replanned made = Replan(followed.Until(Now));
        Plan after = Good(made, followed.Until(Now));
        Assert.Empty(made.Changes);
        Assert.Equal(followed.Plan.Tasks.Where(t => t.Start > Now).Select(t => (t.Id, t.Start)).Order(), after.Tasks.Where(t => t.Start > Now).Select(t => (t.Id, t.Start)).Order());
    }

    [Fact]
    public void Who_goes_has_nothing_left_to_do_and_the_others_hear_of_it()
    {
        int managed = 0;
        foreach (string who in followed.Occasion.People.Skip(1).Select(p => p.Name))
        {
            LiveState state = followed.Until(Now);
            state = state with { Gone = state.Gone.Add(who, Now) };
            Replanned made = Replan(state, 8);
            if (made.Outcome is NoPlan no)
            {
                // Some cannot be spared on so full a morning; then it says so.
                Assert.NotEmpty(no.Conflicts);
                continue;
            }

            managed++;
            Plan after = Good(made, state);
            Assert.DoesNotContain(after.Tasks, t => t.Start > Now && t.Start < after.SlotStart && t.Kind != TaskKind.Meal && t.People.Contains(who));
            if (!followed.Plan.Tasks.Any(t => t.Start > Now && t.Start < after.SlotStart && t.Kind != TaskKind.Meal && t.People.Contains(who)))
            {
                // Who had nothing left to do leaves nothing behind.
                continue;
            }

            Assert.Contains(made.Changes, c => c.StartsWith(who + ": ", StringComparison.Ordinal));
            Assert.Contains(made.Changes, c => !c.StartsWith(who + ": ", StringComparison.Ordinal));
        }

        Assert.InRange(managed, 1, followed.Occasion.People.Length - 1);
    }

    [Fact]
    public void What_is_past_stays_as_it_happened_and_nothing_begins_before_now()
    {
        LiveState state = followed.Until(Now);
        PlannedTask late = followed.Plan.Tasks.Where(t => state.Done.ContainsKey(t.Id) && t.Kind == TaskKind.Work && t.Start.Date == Now.Date).MaxBy(t => t.End) ?? followed.Plan.Tasks.First(t => state.Done.ContainsKey(t.Id));
        Plan after = Good(Replan(state), state);
        Assert.Equal(late.People, after.Tasks.First(t => t.Id == late.Id).People);
        Assert.All(after.Tasks.Where(t => !state.Started.ContainsKey(t.Id) && t.Kind != TaskKind.Meal), t => Assert.True(t.Start >= Now, t.Id));
        Assert.All(state.Done, d => Assert.Equal(d.Value, after.Tasks.First(t => t.Id == d.Key).End));
    }

    [Fact]
    public void What_is_lost_is_made_again_from_the_beginning_of_its_component()
    {
        LiveState state = followed.Until(Now);
        PlannedTask dropped = followed.Plan.Tasks.Where(t => state.Done.ContainsKey(t.Id) && t.Line > 0 && t.Component is not null && t.Start.Date == Now.PlusDays(-1).Date).OrderBy(t => t.Start).First();
        state = state with { Lost = state.Lost.Add(dropped.Id, Now) };
        Replanned made = Replan(state);
        Assert.True(made.Outcome is Plan or NoPlan);
        if (made.Outcome is Plan after)
        {
            Assert.True(after.Tasks.First(t => t.Id == dropped.Id).Start >= Now);
            Assert.NotEmpty(made.Changes);
        }
    }

    [Fact]
    public void The_quick_repair_is_a_plan_the_validator_passes()
    {
        LiveState state = followed.Until(Now);
        Heard heard = new();
        new CpSatReplanner().Replan(followed.Occasion, followed.Batches, followed.Plan, state, new PlanOptions(2), heard);
        Assert.NotEmpty(heard.Plans);
        Assert.Empty(Faults(heard.Plans[0], state));
    }

    [Fact]
    public void Every_task_of_the_plan_is_found_again_in_the_work_it_was_made_from()
    {
        PlanTrace trace = PlanTrace.Of(Coulisse.Kitchen.Planning.Tasks.TaskBuilder.Build(followed.Occasion, followed.Batches, Coulisse.Kitchen.Planning.Slot.LiveSlot.Decide(followed.Occasion)), followed.Plan);
        // Meals, and what begins when the slot does or is over, are written behind the work and have no lasting name.
        string[] behind = ["meal-", "clear-", "serve-", "live-", "stands-"];
        Assert.All(followed.Plan.Tasks.Where(t => t.Key.Length == 0), t => Assert.Contains(behind, b => t.Id.StartsWith(b, StringComparison.Ordinal)));
        Assert.Empty(followed.Plan.Tasks.Where(t => t.Key.Length > 0).Except(trace.Tasks.OfType<PlannedTask>()).Select(t => t.Id));
    }

    private Replanned Replan(LiveState state, double seconds = 15) => new CpSatReplanner().Replan(followed.Occasion, followed.Batches, followed.Plan, state, new PlanOptions(seconds));

    private Plan Good(Replanned made, LiveState state)
    {
        Plan plan = made.Outcome as Plan ?? throw new InvalidOperationException(made.Outcome.ToString());
        Assert.Empty(Faults(plan, state));
        return plan;
    }

    private string[] Faults(Plan plan, LiveState state) => [.. PlanValidator.Check(followed.Occasion, plan)
        .Where(f => f.TaskIds.IsEmpty || f.TaskIds.Any(t => !state.Started.ContainsKey(t)))
        .Select(f => $"{f.Code} {f.By:0.#} {f.Unit}: {f.Words} {string.Join(",", f.TaskIds)}")];

    private sealed class Heard : IProgress<Plan>
    {
        public List<Plan> Plans { get; } = [];

        public void Report(Plan value) => Plans.Add(value);
    }

    /// <summary>The demo's plan, made once.</summary>
    public sealed class Followed
    {
        public Followed()
        {
            Occasion = OccasionReader.Read(File.ReadAllText(Demo("occasion.md")), new LocalDate(2026, 10, 1)).Match(
                s => OccasionBuilder.Build(s, Card).Match(o => o, p => throw new InvalidOperationException(string.Join("; ", p))),
                p => throw new InvalidOperationException(string.Join("; ", p)));
            Batches = OccasionBatches.Make(Occasion).Match(b => b, p => throw new InvalidOperationException(string.Join("; ", p)));
            Plan = Assert.IsType<Plan>(new CpSatPlanner().Plan(Occasion, Batches, new PlanOptions(20)));
        }

        public Occasion Occasion { get; }

        public ImmutableArray<Batch> Batches { get; }

        public Plan Plan { get; }

        /// <summary>Everything as planned until a moment.</summary>
        public LiveState Until(LocalDateTime now) => new()
        {
            Now = now,
            Started = Plan.Tasks.Where(t => t.Start <= now && t.Kind != TaskKind.Meal).ToImmutableSortedDictionary(t => t.Id, t => t.Start),
            Done = Plan.Tasks.Where(t => t.End <= now && t.Kind != TaskKind.Meal).ToImmutableSortedDictionary(t => t.Id, t => t.End),
        };

        private static Dish Card(string path) => CardReader.Read(new CardText(File.ReadAllText(Demo(path)), path)).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));

        private static string Demo(string path) => Path.Combine(SharedData.Repository, "examples", "demo", path);
    }
}
