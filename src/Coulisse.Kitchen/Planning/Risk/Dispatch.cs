using System.Collections;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Checking;

namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>The rule a kitchen really follows: keep the plan's order; begin at the planned time, or as soon after as hands, kit and food are there.</summary>
internal sealed class Dispatch
{
    private Dispatch(PlannedTask[] tasks) => Tasks = tasks;

    public PlannedTask[] Tasks { get; }

    /// <summary>Planned start, minutes before (less than 0) or after the slot begins.</summary>
    public required double[] Release { get; init; }

    /// <summary>Latest end at which the slot does not suffer; infinite for what the slot does not wait for.</summary>
    public required double[] Due { get; init; }

    /// <summary>For each task, what it waits for: the position, whether it waits for the start (else the end), and minutes to wait beyond.</summary>
    public required (int Before, bool Start, double Wait)[][] Waits { get; init; }

    public static Dispatch Of(Occasion occasion, Plan plan)
    {
        PlannedTask[] tasks = [.. plan.Tasks.OrderBy(t => t.Start).ThenBy(t => t.Within is not null && plan.Tasks.Any(l => l.Id == t.Within && l.Start == t.Start)).ThenBy(t => t.End).ThenBy(t => t.Id, StringComparer.Ordinal)];
        Dictionary<string, int> at = [];
        for (int i = 0; i < tasks.Length; i++)
        {
            at[tasks[i].Id] = i;
        }

        HashSet<string> single = [.. occasion.Kit.Where(k => k.Number == 1 && k.Shelves is null or 1).Select(k => k.Code)];
        HashSet<string> states = [.. occasion.Kit.Where(k => k.Number == 1).Select(k => k.Code)];
        double Minute(NodaTime.LocalDateTime t) => t >= plan.SlotStart ? Overlap.Between(plan.SlotStart, t) : -Overlap.Between(t, plan.SlotStart);
        double[] due = [.. tasks.Select(t => t.End <= plan.SlotStart ? 0 : double.PositiveInfinity)];
        foreach (Twin twin in plan.Twins.Where(t => t.MadeBy is not null && at.ContainsKey(t.MadeBy)))
        {
            // A twin is wanted at its cue, which may be later than the slot's start and is earlier than the end of its own task only in a broken plan.
            due[at[twin.MadeBy!]] = tasks[at[twin.MadeBy!]].End <= plan.SlotStart.PlusSeconds(twin.CueSecond) ? twin.CueSecond / 60.0 : due[at[twin.MadeBy!]];
        }

        Dictionary<(string Id, string Next), double> cards = CardWaits(occasion, plan);
        List<(int, bool, double)>[] waits = [.. tasks.Select(_ => new List<(int, bool, double)>())];
        for (int b = 0; b < tasks.Length; b++)
        {
            for (int a = 0; a < b; a++)
            {
                if (cards.TryGetValue((tasks[a].Id, tasks[b].Id), out double wait))
                {
                    waits[b].Add((a, true, wait));
                }

                if (tasks[a].End <= tasks[b].Start && Follows(tasks[a], tasks[b], single, states))
                {
                    waits[b].Add((a, false, 0));
                }
                else if (tasks[b].Within == tasks[a].Id && tasks[b].Start < tasks[a].End)
                {
                    // A moment comes so long after its task began as was planned.
                    waits[b].Add((a, true, Overlap.Between(tasks[a].Start, tasks[b].Start)));
                }
            }
        }

        return new Dispatch(tasks) { Release = [.. tasks.Select(t => Minute(t.Start))], Due = due, Waits = Thinned(waits) };
    }

    /// <summary>Ends in the plan before the other begins, and the other needs its hands, kit or food.</summary>
    private static bool Follows(PlannedTask a, PlannedTask b, HashSet<string> single, HashSet<string> states)
        => a.Within == b.Id || b.Within == a.Id
            || a.People.Any(b.People.Contains)
            || a.Kit.Any(k => b.Kit.Contains(k) && (single.Contains(k) || (states.Contains(k) && a.Celsius != b.Celsius)))
            || (a.Component is not null && a.Component == b.Component && a.Dish == b.Dish && a.Line > 0 && a.Line < b.Line);

    /// <summary>Stated least waits from the start of a step to the start of the next, for pairs of tasks the plan keeps that far apart.</summary>
    private static Dictionary<(string, string), double> CardWaits(Occasion occasion, Plan plan)
    {
        Dictionary<(string, string), double> waits = [];
        foreach (CardStep[] steps in CardStep.ByComponent(occasion, plan))
        {
            for (int i = 0; i + 1 < steps.Length; i++)
            {
                double least = steps[i].Step.Times.Where(t => t.Kind is TimeKind.Chill or TimeKind.Rest && t.Bound != Bound.AtMost).Select(t => (t.MinutesMin ?? 0) * t.Repeats).DefaultIfEmpty().Max();
                foreach (PlannedTask to in steps[i + 1].Whole.Where(_ => least > 0))
                {
                    // Of several batches the last that is far enough ahead is the one it belongs to.
                    PlannedTask? from = steps[i].Whole.Where(t => Overlap.Between(t.Start, to.Start) >= least).MaxBy(t => t.Start);
                    if (from is not null)
                    {
                        waits[(from.Id, to.Id)] = least;
                    }
                }
            }
        }

        return waits;
    }

    /// <summary>Leaves out what another wait already tells: who waits for the last of a row need not wait for the first.</summary>
    private static (int, bool, double)[][] Thinned(List<(int Before, bool Start, double Wait)>[] waits)
    {
        BitArray[] done = [.. waits.Select(_ => new BitArray(waits.Length))];
        (int, bool, double)[][] kept = new (int, bool, double)[waits.Length][];
        for (int b = 0; b < waits.Length; b++)
        {
            List<(int, bool, double)> some = [.. waits[b].Where(w => w.Start)];
            foreach ((int before, _, double wait) in waits[b].Where(w => !w.Start).OrderByDescending(w => w.Before))
            {
                if (!done[b][before])
                {
                    some.Add((before, false, wait));
                    done[b].Or(done[before])[before] = true;
                }
            }

            kept[b] = [.. some];
        }

        return kept;
    }
}
