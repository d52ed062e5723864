using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Risk;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Kitchen.Planning.Why;
using Coulisse.Solver;

namespace Coulisse.Flows;

/// <summary>Questions to a plan that was made: why, what more would be worth, what if something fails.</summary>
public static class PlanStudy
{
    /// <summary>Why each task is when it is.</summary>
    /// <param name="planned">The planned occasion.</param>
    /// <param name="plan">Its plan.</param>
    public static ImmutableArray<TaskReason> Why(PlannedOccasion planned, Plan plan) => new PlanReasons(planned.Occasion, Work(planned, plan), plan).All();

    /// <summary>What one more hand, oven, shelf, blender or quarter of an hour would save.</summary>
    /// <param name="planned">The planned occasion.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="options">Effort for each.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<Worth> Worth(PlannedOccasion planned, Plan plan, PlanOptions options, CancellationToken cancel = default)
        => Marginal.Of(planned.Occasion, Work(planned, plan), plan, new Effort(options.Seconds, options.Seed, options.Workers), cancel);

    /// <summary>Every single failure of kit, absence of a person and small delay, solved.</summary>
    /// <param name="planned">The planned occasion.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="options">Effort for each.</param>
    /// <param name="solved">Hears of each as it is solved.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<IfThen> IfThen(PlannedOccasion planned, Plan plan, PlanOptions options, Action<IfThen>? solved = null, CancellationToken cancel = default)
        => new IfThens(planned.Occasion, planned.Batches, plan, options).All(solved, cancel);

    /// <summary>What could be shown instead, with the risk of each choice where it was asked for.</summary>
    /// <param name="planned">The planned occasion.</param>
    /// <param name="options">Effort for the plan of each choice.</param>
    /// <param name="risked">How many choices are planned and simulated, spread over the frontier.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<ShownChoice> Frontier(PlannedOccasion planned, PlanOptions options, int risked = 5, CancellationToken cancel = default)
    {
        ImmutableArray<ShowPoint> points = ShowFrontier.Of(planned.Occasion);
        HashSet<int> asked = [.. Enumerable.Range(0, Math.Min(risked, points.Length)).Select(i => points[(int)((long)i * (points.Length - 1) / Math.Max(1, risked - 1))].Number)];
        return [.. points.Select(p => new ShownChoice(p, asked.Contains(p.Number) && !cancel.IsCancellationRequested ? OnTime(planned.Occasion with { Shows = p.Shows }, options, cancel) : null))];
    }

    /// <summary>The same occasion with everything due earlier by several buffers: how fresh, how sure.</summary>
    /// <param name="planned">The planned occasion.</param>
    /// <param name="options">Effort for each.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<BufferChoice> Robust(PlannedOccasion planned, PlanOptions options, CancellationToken cancel = default)
    {
        ImmutableArray<BufferChoice>.Builder rows = ImmutableArray.CreateBuilder<BufferChoice>();
        foreach (int minutes in new[] { 0, 10, 20, 30, 45 })
        {
            if (!cancel.IsCancellationRequested)
            {
                PlanOutcome outcome = new CpSatPlanner().Plan(planned.Occasion, planned.Batches, options with { Buffer = minutes }, null, cancel);
                rows.Add(outcome is Plan plan && PlanValidator.Check(planned.Occasion, plan).IsEmpty
                    ? new BufferChoice(minutes, RiskOfPlan.Simulate(planned.Occasion, plan), plan.Objective)
                    : new BufferChoice(minutes, null, []));
            }
        }

        return rows.ToImmutable();
    }

    private static RiskReport? OnTime(Occasion occasion, PlanOptions options, CancellationToken cancel)
        => OccasionBatches.Make(occasion).Match<RiskReport?>(
            batches => new CpSatPlanner().Plan(occasion, batches, options, null, cancel) is Plan plan && PlanValidator.Check(occasion, plan).IsEmpty ? RiskOfPlan.Simulate(occasion, plan) : null,
            _ => null);

    private static PrepWork Work(PlannedOccasion planned, Plan plan) => TaskBuilder.Build(planned.Occasion, planned.Batches, LiveSlot.Decide(planned.Occasion)) with { Edits = plan.Edits };
}

/// <summary>A choice of what is shown.</summary>
/// <param name="Point">The choice.</param>
/// <param name="Risk">Risk of its plan; null when it was not planned, or could not be.</param>
public sealed record ShownChoice(ShowPoint Point, RiskReport? Risk);

/// <summary>A plan with everything due earlier by some minutes.</summary>
/// <param name="Minutes">Minutes.</param>
/// <param name="Risk">Its risk; null when no such plan was found.</param>
/// <param name="Objective">Its objective.</param>
public sealed record BufferChoice(int Minutes, RiskReport? Risk, ImmutableArray<ObjectiveLevel> Objective);
