using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Solver;
using NodaTime;

namespace Coulisse.Flows;

/// <summary>A plan re-made, with what the validator found in what is still to come.</summary>
/// <param name="Occasion">The occasion.</param>
/// <param name="State">Where things stand.</param>
/// <param name="Replanned">The new plan, or why there is none, and what changed.</param>
/// <param name="WaysOut">For a slot that runs late: at most three ways to end on time.</param>
/// <param name="Faults">Faults of the new plan that concern anything still to come; what is past is past.</param>
public sealed record ReplannedOccasion(Occasion Occasion, LiveState State, Replanned Replanned, ImmutableArray<WayOut> WaysOut, ImmutableArray<PlanFault> Faults);

/// <summary>Makes a plan again from what was reported, and has it checked before anyone sees it.</summary>
public static class ReplanFlow
{
    // Nobody who has gone stands on the run sheet, and nothing is shown on kit that broke: the slot is decided again by what is left.
    private static Replanned Without(Occasion occasion, ImmutableArray<Batch> batches, Plan plan, LiveState state, PlanOptions options, IProgress<Plan>? progress, CancellationToken cancel)
    {
        ImmutableArray<Person> people = [.. occasion.People.Where(p => !state.Gone.ContainsKey(p.Name))];
        Occasion left = occasion with
        {
            People = people.IsEmpty ? occasion.People : people,
            Kit = [.. occasion.Kit.Where(k => k.Code.Length == 0 || !state.Broken.ContainsKey(k.Code))],
            Circuits = [.. occasion.Circuits.Select(c => c with { Kit = [.. c.Kit.Where(k => !state.Broken.ContainsKey(k))] })],
        };
        SlotPlan slot = LiveSlot.Decide(left);
        PrepWork work = TaskBuilder.Build(occasion, batches, slot) with { Edits = options.Edits.IsEmpty ? plan.Edits : options.Edits };
        return new CpSatReplanner().Replan(occasion, slot, work, plan, state, options, progress, cancel);
    }

    /// <summary>Re-plans.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="plan">The plan followed so far.</param>
    /// <param name="read">What was reported.</param>
    /// <param name="options">Effort.</param>
    /// <param name="progress">Hears of every better plan.</param>
    /// <param name="cancel">Stop and keep the best so far.</param>
    public static Parsed<ReplannedOccasion> Replan(Occasion occasion, Plan plan, StateFile.State read, PlanOptions options, IProgress<Plan>? progress = null, CancellationToken cancel = default)
    {
        LiveState state = LiveFold.Fold(occasion, plan, read.Log, DateTimeZone.Utc, read.Now.InUtc().ToInstant());
        if (!state.NotUnderstood.IsEmpty)
        {
            return new Parsed<ReplannedOccasion>.Failed([.. state.NotUnderstood.Select(e => new Problem("STA003", 0, $"“{e.Kind} {e.Subject}” names nothing of this plan.", "Name a task, a segment, a person or a piece of kit as the plan does."))]);
        }

        return OccasionBatches.Make(occasion).Match<Parsed<ReplannedOccasion>>(
            batches =>
            {
                Replanned made = state.Gone.IsEmpty && state.Broken.IsEmpty
                    ? new CpSatReplanner().Replan(occasion, batches, plan, state, options, progress, cancel)
                    : Without(occasion, batches, plan, state, options, progress, cancel);
                HashSet<string> past = [.. state.Done.Keys, .. state.Started.Keys.Where(state.Running)];
                ImmutableArray<PlanFault> faults = made.Outcome is Plan after
                    ? [.. PlanValidator.Check(occasion, after).Where(f => f.TaskIds.IsEmpty || f.TaskIds.Any(t => !past.Contains(t)))]
                    : [];
                return new Parsed<ReplannedOccasion>.Ok(new ReplannedOccasion(occasion, state, made, SlotRecovery.Ways(plan, state), faults));
            },
            problems => new Parsed<ReplannedOccasion>.Failed(problems));
    }
}
