using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Solver.Tests;

/// <summary>Occasions that cannot be: the conflict is smallest, the remedies work.</summary>
public sealed class ImpossibleTests
{
    private static readonly Effort Long = new(30, 1, 2);

    public static TheoryData<string> Cases => LongRun.On ? ["nobody before one", "one day only", "pins of one person at once", "plated by one in a quarter of an hour"] : ["nobody before one", "pins of one person at once"];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Take_away_any_one_demand_of_a_conflict_and_a_schedule_exists(string name)
    {
        (Occasion occasion, PlanEdits edits) = Case(name);
        PrepWork work = Work(occasion, edits);
        CpSatEngine engine = new();
        Assert.IsType<EngineInfeasible>(engine.Solve(PrepProblem.Write(occasion, work).Problem with { Goals = [new Goal("any", "", [])] }, Long));
        ImmutableArray<PrepDemand> conflict = Conflicts.Find(engine, occasion, work, Long);
        Assert.NotEmpty(conflict);
        Assert.IsType<EngineInfeasible>(Conflicts.Decide(engine, occasion, work, conflict, Long));
        Assert.All(conflict, d => Assert.IsType<EngineSchedule>(Conflicts.Decide(engine, occasion, work, conflict.Remove(d), Long)));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void At_least_three_remedies_are_told_and_each_makes_a_faultless_plan(string name)
    {
        (Occasion occasion, PlanEdits edits) = Case(name);
        ImmutableArray<Remedy> remedies = Remedies.Find(new CpSatEngine(), occasion, edits, Conflicts.Find(new CpSatEngine(), occasion, Work(occasion, edits), Long), new Effort(10, 1, 2), enough: 3);
        Assert.True(remedies.Length >= 3, string.Join("; ", remedies.Select(r => r.Words)));
        Assert.Distinct(remedies.Select(r => r.Kind));
        foreach (Remedy r in (LongRun.On ? remedies : remedies[..1]).Where(r => r.Given is null))
        {
            // What is given up is missing from the plan, and the validator would say so: those are judged by their schedule alone.
            PlanOutcome outcome = new CpSatPlanner().Plan(r.Changed, DemoOccasion.BatchesOf(r.Changed), new PlanOptions(60) { FirstOnly = true, Edits = r.Edits });
            Plan plan = outcome as Plan ?? throw new InvalidOperationException($"{r.Words}: {outcome}");
            Assert.Empty(PlanValidator.Check(r.Changed, plan).Select(f => $"{r.Words}: {f.Code} {f.By:0.#} {f.Unit} {f.Words} {string.Join(",", f.TaskIds)}"));
        }
    }

    private static PrepWork Work(Occasion occasion, PlanEdits edits) => TaskBuilder.Build(occasion, DemoOccasion.BatchesOf(occasion), LiveSlot.Decide(occasion)) with { Edits = edits };

    private static (Occasion, PlanEdits) Case(string name)
    {
        OccasionSheet sheet = DemoOccasion.Sheet;
        LocalDate day = DemoOccasion.Occasion.SlotStart.Date;
        PrepTask[] work = [.. DemoOccasion.Work.Tasks.Where(t => t is { Kind: TaskKind.Work, Line: > 0, People: 1, Minutes: >= 10 })];
        string who = DemoOccasion.Occasion.People[0].Name;
        return name switch
        {
            "nobody before one" => (DemoOccasion.Build(sheet with { People = [.. sheet.People.Select(p => p with { Hours = [.. p.Hours.Select(h => h.Start.Date == day && h.Start.TimeOfDay < new LocalTime(13, 0) ? h with { Start = day.At(new LocalTime(13, 0)) } : h)] })] }), PlanEdits.None),
            "one day only" => (DemoOccasion.Build(sheet with { Windows = [.. sheet.Windows.Where(w => w.Start.Date == day)], People = [.. sheet.People.Select(p => p with { Hours = [.. p.Hours.Where(h => h.Start.Date == day)] })] }), PlanEdits.None),
            "pins of one person at once" => (DemoOccasion.Occasion, new PlanEdits { Pins = [.. work.Where(t => t.Component != work[0].Component).Take(2).Select(t => new Pin(t.Key, day.PlusDays(-1).At(new LocalTime(10, 0)), who))] }),
            _ => (DemoOccasion.Occasion, new PlanEdits { Pins = [new Pin(DemoOccasion.Work.Tasks.First(t => t.Kind == TaskKind.Plate).Key, DemoOccasion.Occasion.SlotStart.PlusMinutes(-20))] }),
        };
    }
}
