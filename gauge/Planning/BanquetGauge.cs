using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Solver;

namespace Coulisse.Gauge.Planning;

/// <summary>gauge banquet: 600 tasks and 12 people planned; 300 tasks re-planned when somebody goes and an oven breaks.</summary>
internal static class BanquetGauge
{
    public static int Run(string[] args)
    {
        double seconds = args.Length > 0 && double.TryParse(args[0], NumberStyles.Float, CultureInfo.InvariantCulture, out double s) ? s : 120;
        int dishes = args.Length > 1 && int.TryParse(args[1], NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 21;
        Plan? big = Planned(dishes, 12, seconds);
        Replanned(dishes / 2, 12, Math.Min(seconds, 30));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"peak memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1048576.0:0} MB, {Environment.ProcessorCount} cores"));
        return big is null ? 1 : 0;
    }

    private static Plan? Planned(int dishes, int people, double seconds)
    {
        (Occasion occasion, ImmutableArray<Batch> batches) = Banquet.Make(dishes, people, 1);
        long start = Stopwatch.GetTimestamp();
        double? first = null;
        PlanOutcome outcome = new CpSatPlanner().Plan(occasion, batches, new PlanOptions(seconds), new Heard(p =>
        {
            if (first is null)
            {
                first = Stopwatch.GetElapsedTime(start).TotalSeconds;
                int faults = PlanValidator.Check(occasion, p).Length;
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{p.Tasks.Length} tasks, {people} people: first plan after {first:0.0} s, {faults} faults ({string.Join(", ", p.Objective.Skip(1).Select(o => string.Create(CultureInfo.InvariantCulture, $"{o.Level} {o.Value:0.#}")))})"));
            }
        }));
        if (outcome is not Plan plan)
        {
            Console.WriteLine($"no plan: {string.Join(" ", Coulisse.Kitchen.Planning.Tasks.WorkReview.Check(occasion, Coulisse.Kitchen.Planning.Tasks.TaskBuilder.Build(occasion, batches, Coulisse.Kitchen.Planning.Slot.LiveSlot.Decide(occasion))).Take(3).Select(p => p.Message))}{(outcome is NoPlan no ? string.Join("; ", no.Conflicts) : "not yet")}");
            return null;
        }

        ImmutableArray<PlanFault> found = PlanValidator.Check(occasion, plan);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"after {Stopwatch.GetElapsedTime(start).TotalSeconds:0} s: {found.Length} faults{(found.IsEmpty ? "" : ", " + found[0].Code + ": " + found[0].Words)}"));
        Console.WriteLine("| level | value | bound | unit |\n|---|---|---|---|");
        foreach (ObjectiveLevel l in plan.Objective)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {l.Level} | {l.Value:0.##} | {(l.Proven ? "proven" : l.Bound is { } b ? b.ToString("0.##", CultureInfo.InvariantCulture) : "none")} | {l.Unit} |"));
        }

        return found.IsEmpty ? plan : null;
    }

    private static void Replanned(int dishes, int people, double seconds)
    {
        (Occasion occasion, ImmutableArray<Batch> batches) = Banquet.Make(dishes, people, 2);
        if (new CpSatPlanner().Plan(occasion, batches, new PlanOptions(seconds)) is not Plan plan)
        {
            Console.WriteLine("no plan to follow");
            return;
        }

        NodaTime.LocalDateTime now = occasion.SlotStart.PlusDays(-1).Date.At(new NodaTime.LocalTime(10, 0));
        LiveState state = new()
        {
            Now = now,
            Started = plan.Tasks.Where(t => t.Start <= now && t.Kind != TaskKind.Meal).ToImmutableSortedDictionary(t => t.Id, t => t.Start),
            Done = plan.Tasks.Where(t => t.End <= now && t.Kind != TaskKind.Meal).ToImmutableSortedDictionary(t => t.Id, t => t.End),
        };
        foreach ((string what, LiveState then) in new[] { ("Cook 5 goes", state with { Gone = state.Gone.Add("Cook 5", now) }), ("oven O1 breaks", state with { Broken = state.Broken.Add("O1", now) }) })
        {
            // Once to warm the machine, then the one that counts.
            Coulisse.Kitchen.Planning.Live.Replanned? made = null;
            for (int turn = 0; turn < 2; turn++)
            {
                made = new CpSatReplanner().Replan(occasion, batches, plan, then, new PlanOptions(2));
            }

            PlanFault[] faults = made!.Outcome is Plan after ? [.. PlanValidator.Check(occasion, after).Where(f => f.TaskIds.IsEmpty || f.TaskIds.Any(t => !then.Started.ContainsKey(t)))] : [];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"re-plan of {plan.Tasks.Length} tasks, {what}: first answer {(made.QuickSeconds is { } q ? $"{q * 1000:0} ms" : "none by shifting")}, final {made.Seconds:0.00} s, {(made.Outcome is Plan ? $"{faults.Length} faults{(faults.Length > 0 ? " (" + faults[0].Code + ": " + faults[0].Words + ")" : "")}, {made.Changes.Length} people hear of it" : "no plan")}"));
        }
    }

    private sealed class Heard(Action<Plan> heard) : IProgress<Plan>
    {
        public void Report(Plan value) => heard(value);
    }
}
