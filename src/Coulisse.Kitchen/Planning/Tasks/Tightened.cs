using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Watch;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Makes hard what only a finished plan shows: food out of the cold for too long in all, fridges or trays too few for what waits, a way between places with no time left for it.</summary>
/// <remarks>
/// Most days never come near these limits, and as rules of every search they would cost every day; so a plan is looked at first, and only what it breaks is written into the problem, which is then solved again (decision 0186).
/// What cannot be mended by moving tasks (hands alone take longer than the limit) is left to the finding that tells it.
/// </remarks>
public static class Tightened
{
    private const int ShortestWait = 5;   // min: a wait cut below this is no wait

    /// <summary>The problem with the limits that the plan breaks; null when it breaks none that moving could mend.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">One for each dish.</param>
    /// <param name="work">The work.</param>
    /// <param name="prep">Its problem.</param>
    /// <param name="plan">A plan of it.</param>
    /// <param name="outMinutes">Minutes food may be out of the cold in all.</param>
    public static PrepProblem? Of(Occasion occasion, ImmutableArray<Batch> batches, PrepWork work, PrepProblem prep, Plan plan, double outMinutes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Dictionary<string, int> at = Enumerable.Range(0, work.Tasks.Length).Where(i => work.Tasks[i].Key.Length > 0).ToDictionary(i => work.Tasks[i].Key, StringComparer.Ordinal);
        Dictionary<string, int> byId = plan.Tasks.Where(t => at.ContainsKey(t.Key)).DistinctBy(t => t.Id).ToDictionary(t => t.Id, t => at[t.Key], StringComparer.Ordinal);
        Cut[] cuts = [.. TimeOut(occasion, batches, plan, byId, outMinutes)];
        Lag[] lags = [.. cuts.Select(c => c.Lag).OfType<Lag>(), .. Carried(occasion, plan, byId)];
        SchedulingProblem problem = Cold(occasion, batches, plan, byId, prep.Problem);
        foreach (Cut cut in cuts.Where(c => c.Lag is null))
        {
            problem = NotBefore(problem, cut.Task, (int)Period.Between(prep.Zero, cut.EndsAfter, PeriodUnits.Minutes).Minutes);
        }

        return lags.Length == 0 && ReferenceEquals(problem, prep.Problem) ? null : prep with { Problem = problem with { Lags = [.. problem.Lags, .. lags] } };
    }

    // A wait between two tasks is a lag; one that lasts until it is eaten is a task that must not end too soon.
    private readonly record struct Cut(Lag? Lag, int Task, LocalDateTime EndsAfter);

    private static SchedulingProblem NotBefore(SchedulingProblem problem, int task, int end)
    {
        Activity a = problem.Activities[task];
        int start = end - a.Modes.Min(m => m.Duration);
        Stretch[] open = [.. (a.Windows.IsEmpty ? [new Stretch(0, problem.Horizon)] : a.Windows).Where(w => w.End > start).Select(w => w with { Start = Math.Max(w.Start, start) })];
        return a.FixedStart is not null || open.Length == 0 || open.SequenceEqual(a.Windows) ? problem : problem with { Activities = problem.Activities.SetItem(task, a with { Windows = [.. open] }) };
    }

    // Long waits get the same most and short ones stay as short as they are, so that all of them together with the hands keep the limit.
    private static IEnumerable<Cut> TimeOut(Occasion occasion, ImmutableArray<Batch> batches, Plan plan, Dictionary<string, int> byId, double limit)
    {
        foreach (TimeOut part in TimesOut.Of(occasion, batches, plan).Where(t => t.Minutes > limit && !t.Part.StartsWith("twin ", StringComparison.Ordinal)))
        {
            OutStretch[] waits = [.. part.Stretches.Where(s => s.Stood && s.Task is null)];
            double most = Most([.. waits.Select(w => w.Minutes)], limit - part.Stretches.Where(s => !(s.Stood && s.Task is null)).Sum(s => s.Minutes));
            foreach (OutStretch wait in most < ShortestWait ? [] : waits)
            {
                if (Ending(plan, part, wait.From) is not { } from || !byId.TryGetValue(from.Id, out int a))
                {
                    continue;
                }

                int longest = (int)Math.Min(most, wait.Minutes);
                if (Starting(plan, part, wait.To) is { } to && byId.TryGetValue(to.Id, out int b))
                {
                    yield return new Cut(new Lag(a, Edge.End, b, Edge.Start, 0) { Most = longest, Because = "out of the cold no longer in all than the code of practice lets it" }, a, default);
                }
                else if (wait.To >= plan.SlotStart)
                {
                    yield return new Cut(null, a, wait.To.PlusMinutes(-longest));
                }
            }
        }
    }

    private static double Most(double[] waits, double left)
    {
        double[] sorted = [.. waits.Order()];
        for (int i = 0; i < sorted.Length; i++)
        {
            double each = left / (sorted.Length - i);
            if (each < sorted[i])
            {
                return Math.Floor(each);
            }

            left -= sorted[i];
        }

        return double.PositiveInfinity;
    }

    private static PlannedTask? Ending(Plan plan, TimeOut part, LocalDateTime at) => plan.Tasks.FirstOrDefault(t => t.End == at && t.Kind != TaskKind.Moment && Of(part, t));

    private static PlannedTask? Starting(Plan plan, TimeOut part, LocalDateTime at) => plan.Tasks.FirstOrDefault(t => t.Start == at && t.Kind != TaskKind.Moment && Of(part, t));

    private static bool Of(TimeOut part, PlannedTask t) => t.Dish == part.Dish && (t.Component == part.Part || part.Part == part.Dish || t.Kind == TaskKind.Plate);

    private static IEnumerable<Lag> Carried(Occasion occasion, Plan plan, Dictionary<string, int> byId)
    {
        foreach (PlanFault f in CarryRule.Check(occasion, plan))
        {
            if (byId.TryGetValue(f.TaskIds[0], out int a) && byId.TryGetValue(f.TaskIds[1], out int b))
            {
                int stands = (int)Period.Between(plan.Tasks.First(t => t.Id == f.TaskIds[0]).End, plan.Tasks.First(t => t.Id == f.TaskIds[1]).Start, PeriodUnits.Minutes).Minutes;
                yield return new Lag(a, Edge.End, b, Edge.Start, stands + (int)Math.Ceiling(f.By)) { Because = "carried to where it goes on" };
            }
        }
    }

    private static SchedulingProblem Cold(Occasion occasion, ImmutableArray<Batch> batches, Plan plan, Dictionary<string, int> byId, SchedulingProblem problem)
    {
        PlanFault[] faults = [.. ColdRule.Check(occasion, batches, plan)];
        if (faults.Length == 0)
        {
            return problem;
        }

        ColdWait[] waits = [.. ColdWaits.Of(occasion, batches, plan).Where(w => w.Known && byId.ContainsKey(w.After) && (w.Before is null || byId.ContainsKey(w.Before)))];
        problem = Room(problem, "fridge slots", occasion.Kit.Where(k => k.Type == "fridge" && k.Shelves is > 0).Sum(k => k.Shelves!.Value * Math.Max(1, k.Number)), waits, byId);
        return Room(problem, "trays", occasion.Kit.Where(k => k.Type == "tray").Sum(k => k.Number), waits.Where(w => w.Trays), byId);
    }

    private static SchedulingProblem Room(SchedulingProblem problem, string name, int room, IEnumerable<ColdWait> waits, Dictionary<string, int> byId)
    {
        Storing[] stores = [.. waits.Select(w => new Storing(byId[w.After], w.Before is { } by ? byId[by] : null, problem.Resources.Length, w.Slots))];
        return room == 0 || stores.Sum(s => s.Amount) <= room ? problem
            : problem with { Resources = problem.Resources.Add(new Resource(name, room)), Stores = problem.Stores.AddRange(stores) };
    }
}
