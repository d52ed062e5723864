using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Kitchen.Planning.Watch;
using Coulisse.Kitchen.Safety;
using Coulisse.Solver;

namespace Coulisse.Flows;

/// <summary>An occasion with its batches, findings and plan.</summary>
/// <param name="Occasion">The occasion.</param>
/// <param name="Batches">One for each dish.</param>
/// <param name="Findings">What the code of practice says to each dish.</param>
/// <param name="Outcome">Plan, no plan, or not yet.</param>
/// <param name="Faults">What the independent validator found in the plan; a plan with faults is shown with them, never silently.</param>
public sealed record PlannedOccasion(Occasion Occasion, ImmutableArray<Batch> Batches, ImmutableArray<Findings> Findings, PlanOutcome Outcome, ImmutableArray<PlanFault> Faults);

/// <summary>Plans an occasion and has the plan checked before anyone sees it.</summary>
public static class PlanFlow
{
    /// <summary>Plans.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="options">Effort.</param>
    /// <param name="code">Code of practice.</param>
    /// <param name="progress">Hears of every better plan.</param>
    /// <param name="cancel">Stop and keep the best so far.</param>
    public static Parsed<PlannedOccasion> Plan(Occasion occasion, PlanOptions options, string code, IProgress<Plan>? progress = null, CancellationToken cancel = default)
        => OccasionBatches.Make(occasion).Match<Parsed<PlannedOccasion>>(
            batches =>
            {
                PrepWork work = TaskBuilder.Build(occasion, batches, LiveSlot.Decide(occasion)) with { Edits = options.Edits };
                if (EditReview.Check(occasion, work) is { IsEmpty: false } wrong)
                {
                    return new Parsed<PlannedOccasion>.Failed(wrong);
                }

                if (WorkReview.Check(occasion, work) is { IsEmpty: false } impossible)
                {
                    return new Parsed<PlannedOccasion>.Failed(impossible);
                }

                PlanOutcome outcome = new CpSatPlanner().Plan(occasion, batches, options with { OutMinutes = PlanSafety.OutMinutes(code) }, progress, cancel);
                outcome = outcome is Plan made ? made with { Versions = made.Versions.SetItems(MadeWith.Of(occasion)) } : outcome;
                return new Parsed<PlannedOccasion>.Ok(Of(occasion, batches, outcome, code));
            },
            problems => new Parsed<PlannedOccasion>.Failed(problems));

    /// <summary>A plan with all that is worked out beside it, the same whether it was just made or kept and opened again: minutes of each step for the batch's own size, findings, faults.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">Its batches as scaled.</param>
    /// <param name="outcome">What planning gave.</param>
    /// <param name="code">Code of practice.</param>
    public static PlannedOccasion Of(Occasion occasion, ImmutableArray<Batch> batches, PlanOutcome outcome, string code)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        KitFacts kit = KitFacts.Of(occasion.Kit);
        return new PlannedOccasion(
            occasion, [.. batches.Select(b => ScaledTimes.For(b, kit))], PlanSafety.Review(occasion, batches, outcome, code), outcome,
            outcome is Plan plan ? PlanValidator.Check(occasion, plan, batches) : []);
    }
}
