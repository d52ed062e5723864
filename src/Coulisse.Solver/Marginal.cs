using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Kitchen.Planning.Why;

namespace Coulisse.Solver;

/// <summary>What one more hand, oven, shelf, ring or quarter of an hour would save: the same work solved again with it, from the plan as it is.</summary>
/// <remarks>More of anything leaves the plan as good as it was, so a search that finds nothing better in its time says "nothing found", never a loss.</remarks>
public static class Marginal
{
    /// <summary>Prices one more of each.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="work">Its work with its edits.</param>
    /// <param name="plan">The plan as it is.</param>
    /// <param name="effort">Effort for each.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<Worth> Of(Occasion occasion, PrepWork work, Plan plan, Effort effort, CancellationToken cancel = default)
    {
        PlanReasons now = new(occasion, work, plan);
        ImmutableArray<Worth>.Builder worths = ImmutableArray.CreateBuilder<Worth>();
        foreach ((string what, Occasion more) in OneMore(occasion))
        {
            if (cancel.IsCancellationRequested)
            {
                break;
            }

            worths.Add(Price(what, occasion, more, work, now, effort, cancel));
        }

        return worths.ToImmutable();
    }

    private static IEnumerable<(string What, Occasion More)> OneMore(Occasion o)
    {
        if (o.People.Length > 0)
        {
            yield return ("one more pair of hands in every window, as able as " + RemedyCandidates.Ablest(o).Name, RemedyCandidates.WithHands(o));
        }

        if (o.Kit.FirstOrDefault(k => k.Type == "oven" && k.Code.Length > 0) is { } oven)
        {
            yield return ("one more oven like " + oven.Code, RemedyCandidates.WithKit(o, oven));
            yield return ("one more shelf in every oven", o with { Kit = [.. o.Kit.Select(k => k.Type == "oven" ? k with { Shelves = (k.Shelves ?? 1) + 1 } : k)] });
        }

        if (o.Kit.FirstOrDefault(k => k.Type == "blender" && k.Code.Length > 0) is { } blender)
        {
            yield return ("one more blender like " + blender.Code, RemedyCandidates.WithKit(o, blender));
        }

        if (o.Windows.Length > 0 && o.Windows[0].Start < o.SlotStart)
        {
            yield return ("15 minutes more on every morning", RemedyCandidates.BeginEarlier(o, 15));
        }
    }

    private static Worth Price(string what, Occasion before, Occasion more, PrepWork work, PlanReasons now, Effort effort, CancellationToken cancel)
    {
        PrepProblem prep = PrepProblem.Write(more, work);
        int later = (int)NodaTime.Period.Between(prep.Zero, PrepProblem.Write(before, work).Zero, NodaTime.PeriodUnits.Minutes).Minutes;
        SchedulingProblem problem = prep.Problem with
        {
            Activities = [.. prep.Problem.Activities.Select((a, i) => a with { HintStart = now.Schedule.Starts[i] < 0 ? null : now.Schedule.Starts[i] + later })],
        };
        double[] old = [.. now.Problem.Goals.Select(g => Shown(g, GoalValue.Of(now.Problem, g, now.Schedule)))];
        EngineSchedule? found = new CpSatEngine().Solve(problem, effort, null, cancel) as EngineSchedule;
        double[] with = found is null ? old : [.. problem.Goals.Select((g, i) => Shown(g, found.Levels.ElementAtOrDefault(i)?.Value ?? GoalValue.Of(problem, g, found)))];
        int first = Enumerable.Range(0, old.Length).FirstOrDefault(i => Math.Abs(with[i] - old[i]) > 1e-9, -1);
        if (first >= 0 && with[first] > old[first])
        {
            // The plan as it is stays possible with more: the search merely did not come as far.
            (with, first) = (old, -1);
        }

        WorthLevel[] levels = [.. problem.Goals.Select((g, i) => new WorthLevel(g.Name, old[i], with[i], found is null || found.Levels[i].Bound == long.MinValue ? double.NegativeInfinity : Math.Min(with[i], Shown(g, found.Levels[i].Bound)), g.Unit))];
        bool proven = found is { Proven: true };
        string words = first < 0
            ? proven && levels.All(l => Math.Abs(l.With - l.Bound) < 1e-6) ? $"{Capital(what)} saves nothing (proven)." : string.Create(CultureInfo.InvariantCulture, $"{Capital(what)}: nothing better was found in {effort.Seconds:0.#} s.")
            : string.Create(CultureInfo.InvariantCulture, $"{Capital(what)}: {levels[first].Level} {old[first]:0.##} becomes {with[first]:0.##} {levels[first].Unit}.");
        return new Worth(what, words, [.. levels]);
    }

    private static double Shown(Goal goal, long value) => (value + goal.Offset) / goal.Scale;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
