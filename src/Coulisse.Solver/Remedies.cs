using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Solver;

/// <summary>For an impossible occasion: changes that make it possible, each of them solved before it is said.</summary>
public static class Remedies
{
    /// <summary>Remedies that worked, the least of a change first; of one kind of change only the least that helps.</summary>
    /// <param name="engine">Engine.</param>
    /// <param name="occasion">The occasion.</param>
    /// <param name="edits">What a person has fixed.</param>
    /// <param name="conflict">Demands that cannot hold together.</param>
    /// <param name="effort">Time for each, seed and threads.</param>
    /// <param name="enough">Stop after so many.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<Remedy> Find(ISchedulingEngine engine, Occasion occasion, PlanEdits edits, ImmutableArray<PrepDemand> conflict, Effort effort, int enough = 4, CancellationToken cancel = default)
    {
        ImmutableArray<Remedy>.Builder found = ImmutableArray.CreateBuilder<Remedy>();
        HashSet<string> kinds = [];
        if (Nearest(engine, occasion, edits, effort) is { } near)
        {
            kinds.Add(near.Kind);
            found.Add(near);
        }

        foreach (Remedy remedy in RemedyCandidates.Of(occasion, edits, conflict))
        {
            if (found.Count >= enough || cancel.IsCancellationRequested)
            {
                break;
            }

            if (!kinds.Contains(remedy.Kind) && Worked(engine, remedy, effort) is { } worked)
            {
                kinds.Add(remedy.Kind);
                found.Add(worked);
            }
        }

        return found.ToImmutable();
    }

    // The pinned starts moved as little as they must be for a plan to exist.
    private static Remedy? Nearest(ISchedulingEngine engine, Occasion occasion, PlanEdits edits, Effort effort)
    {
        Pin[] timed = [.. edits.Pins.Where(p => p.Start is not null)];
        if (timed.Length == 0)
        {
            return null;
        }

        PlanEdits free = edits with { Pins = [.. edits.Pins.Select(p => p with { Start = null }).Where(p => p.Person is not null || p.Kit is not null)] };
        return OccasionBatches.Make(occasion).Match<Remedy?>(
            batches =>
            {
                PrepWork work = TaskBuilder.Build(occasion, batches, LiveSlot.Decide(occasion)) with { Edits = free };
                PrepProblem prep = PrepProblem.Write(occasion, work);
                int[] at = [.. timed.Select(p => Enumerable.Range(0, work.Tasks.Length).First(i => work.Tasks[i].Key == p.Task))];
                Term[] moved = [.. timed.Select((p, k) => new Term(TermKind.Moved, at[k], 1, Math.Clamp((int)Period.Between(prep.Zero, p.Start!.Value, PeriodUnits.Minutes).Minutes, 0, prep.Problem.Horizon)))];
                if (engine.Solve(prep.Problem with { Goals = [new Goal("moved", "minutes", [.. moved])] }, effort) is not EngineSchedule s)
                {
                    return null;
                }

                Pin[] shifted = [.. timed.Select((p, k) => p with { Start = prep.Zero.PlusMinutes(s.Starts[at[k]]) })];
                string words = string.Join(" and ", shifted.Where((p, k) => p.Start != timed[k].Start).Select(p => $"{p.Task} to {p.Start!.Value.ToString("ddd HH:mm", CultureInfo.InvariantCulture)}"));
                return new Remedy("nearest", $"Pin {words} instead.", occasion, edits with { Pins = [.. edits.Pins.Where(p => p.Start is null), .. shifted] });
            },
            _ => null);
    }

    // The remedy, without edits of work that it takes away; null when no schedule was found.
    private static Remedy? Worked(ISchedulingEngine engine, Remedy remedy, Effort effort)
        => OccasionBatches.Make(remedy.Changed).Match<Remedy?>(
            batches =>
            {
                SlotPlan slot = LiveSlot.Decide(remedy.Changed);
                PrepWork work = TaskBuilder.Build(remedy.Changed, batches, slot);
                HashSet<string> keys = [.. work.Tasks.Select(t => t.Key)];
                PlanEdits edits = new()
                {
                    Pins = [.. remedy.Edits.Pins.Where(p => keys.Contains(p.Task))],
                    Forbids = [.. remedy.Edits.Forbids.Where(f => keys.Contains(f.Task))],
                    Sequences = [.. remedy.Edits.Sequences.Where(s => keys.Contains(s.First) && keys.Contains(s.Then))],
                };
                (Occasion occasion, work) = remedy.Given is { } given ? given.Without(remedy.Changed, work with { Edits = edits }) : (remedy.Changed, work with { Edits = edits });
                PrepProblem prep = PrepProblem.Write(occasion, work);
                if (engine.Solve(prep.Problem with { Goals = [new Goal("any", "", [])] }, effort with { FirstOnly = true }) is not EngineSchedule schedule)
                {
                    return null;
                }

                // What is given up is missing from the plan, and the validator would say so; every other remedy must leave it silent.
                bool faultless = remedy.Given is not null || PlanValidator.Check(occasion, PlanWriter.Write(occasion, slot, work, prep, schedule)).IsEmpty;
                return faultless ? remedy with { Edits = edits } : null;
            },
            _ => null);
}
