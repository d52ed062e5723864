using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Solver;

/// <summary>For an impossible occasion: changes that make it possible, each of them solved before it is said.</summary>
internal static class Remedies
{
    /// <summary>Remedies that worked, the least of a change first.</summary>
    /// <param name="engine">Engine.</param>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">Its batches.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="workers">Threads.</param>
    /// <param name="enough">Stop after so many.</param>
    /// <param name="secondsEach">Time for each.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<string> Find(ISchedulingEngine engine, Occasion occasion, ImmutableArray<Batch> batches, int seed, int workers, int enough = 4, double secondsEach = 4, CancellationToken cancel = default)
    {
        ImmutableArray<string>.Builder found = ImmutableArray.CreateBuilder<string>();
        HashSet<string> kinds = [];
        foreach ((string kind, string words, Occasion changed) in Candidates(occasion))
        {
            // Of one kind of change only the least that helps is told.
            if (found.Count >= enough || cancel.IsCancellationRequested)
            {
                break;
            }

            if (!kinds.Contains(kind) && Works(engine, changed, batches, seed, workers, secondsEach))
            {
                kinds.Add(kind);
                found.Add(words);
            }
        }

        return found.ToImmutable();
    }

    private static bool Works(ISchedulingEngine engine, Occasion occasion, ImmutableArray<Batch> batches, int seed, int workers, double seconds)
    {
        PrepWork work = TaskBuilder.Build(occasion, batches, LiveSlot.Decide(occasion));
        SchedulingProblem problem = PrepProblem.Write(occasion, work).Problem with { Goals = [new Goal("any", "", [])] };
        return engine.Solve(problem, new Effort(seconds, seed, workers) { FirstOnly = true }) is EngineSchedule;
    }

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Candidates(Occasion o)
    {
        foreach (int minutes in new[] { 15, 30, 60, 120 })
        {
            if (o.Windows.Length > 0 && o.Windows[0].Start < o.SlotStart)
            {
                yield return ("early", string.Create(CultureInfo.InvariantCulture, $"Begin {minutes} min earlier on every day."), Earlier(o, minutes));
            }
        }

        foreach (SheetShow show in o.Shows.OrderBy(s => s.Weight))
        {
            yield return ("show", $"Do not show “{show.StepText}”.", o with { Shows = o.Shows.Remove(show) });
        }

        foreach (int minutes in new[] { 30, 60, 120 })
        {
            yield return ("late", string.Create(CultureInfo.InvariantCulture, $"Serve {minutes} min later."), Later(o, minutes));
        }

        foreach (SheetKit kit in o.Kit.Where(k => k.Code.Length > 0 && k.Type is not "fridge").DistinctBy(k => k.Type))
        {
            yield return ("kit " + kit.Type, $"Borrow one more {kit.Type} like {kit.Code} ({kit.What.Split(',')[0]}).", o with { Kit = o.Kit.Add(kit with { Code = kit.Code + "+", Circuit = null }) });
        }

        if (o.People.Length > 0)
        {
            Person most = o.People.MaxBy(p => (p.Skills.Contains("all"), p.Hours.Length))!;
            yield return ("hands", "One more pair of hands, as able as " + most.Name + ", in every window.", o with { People = o.People.Add(most with { Name = "one more", Hours = [.. o.Windows] }) });
        }
    }

    private static Occasion Earlier(Occasion o, int minutes)
    {
        HashSet<LocalDateTime> firsts = [.. o.Windows.GroupBy(w => w.Start.Date).Select(g => g.Min(w => w.Start)).Where(s => s < o.SlotStart)];
        SheetWindow Moved(SheetWindow w) => firsts.Contains(w.Start) ? w with { Start = w.Start.PlusMinutes(-minutes) } : w;
        return o with
        {
            Windows = [.. o.Windows.Select(Moved)],
            People = [.. o.People.Select(p => p with { Hours = [.. p.Hours.Select(Moved)] })],
        };
    }

    // Everything of the day that hangs on the slot moves with it; what is before it stays.
    private static Occasion Later(Occasion o, int minutes)
    {
        SheetWindow Moved(SheetWindow w) => w.Start >= o.SlotStart ? w with { Start = w.Start.PlusMinutes(minutes), End = w.End.PlusMinutes(minutes) }
            : w.End >= o.SlotStart ? w with { End = w.End.PlusMinutes(minutes) } : w;
        return o with
        {
            SlotStart = o.SlotStart.PlusMinutes(minutes),
            Windows = [.. o.Windows.Select(Moved)],
            People = [.. o.People.Select(p => p with { Hours = [.. p.Hours.Select(Moved)] })],
        };
    }
}
