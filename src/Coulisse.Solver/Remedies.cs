using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Solver;

/// <summary>For an impossible occasion: changes that make it possible, each of them solved before it is said.</summary>
public static class Remedies
{
    /// <summary>Remedies that worked, the least of a change first; of one kind of change only the least that helps.</summary>
    /// <param name="engine">Engine.</param>
    /// <param name="occasion">The occasion.</param>
    /// <param name="edits">What a person has fixed.</param>
    /// <param name="effort">Time for each, seed and threads.</param>
    /// <param name="enough">Stop after so many.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<Remedy> Find(ISchedulingEngine engine, Occasion occasion, PlanEdits edits, Effort effort, int enough = 4, CancellationToken cancel = default)
    {
        ImmutableArray<Remedy>.Builder found = ImmutableArray.CreateBuilder<Remedy>();
        HashSet<string> kinds = [];
        foreach (Remedy remedy in RemedyCandidates.Of(occasion, edits))
        {
            if (found.Count >= enough || cancel.IsCancellationRequested)
            {
                break;
            }

            if (!kinds.Contains(remedy.Kind) && Works(engine, remedy, effort))
            {
                kinds.Add(remedy.Kind);
                found.Add(remedy);
            }
        }

        return found.ToImmutable();
    }

    private static bool Works(ISchedulingEngine engine, Remedy remedy, Effort effort)
        => OccasionBatches.Make(remedy.Changed).Match(
            batches =>
            {
                PrepWork work = TaskBuilder.Build(remedy.Changed, batches, LiveSlot.Decide(remedy.Changed)) with { Edits = remedy.Edits };
                SchedulingProblem problem = PrepProblem.Write(remedy.Changed, work).Problem with { Goals = [new Goal("any", "", [])] };
                return engine.Solve(problem, effort with { FirstOnly = true }) is EngineSchedule;
            },
            _ => false);
}
