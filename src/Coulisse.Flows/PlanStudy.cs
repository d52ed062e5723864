using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Model;
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

    private static PrepWork Work(PlannedOccasion planned, Plan plan) => TaskBuilder.Build(planned.Occasion, planned.Batches, LiveSlot.Decide(planned.Occasion)) with { Edits = plan.Edits };
}
