using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Solver;

/// <summary>For an impossible occasion: a smallest set of demands that cannot hold together, found by taking away whatever is not needed for the contradiction.</summary>
internal static class Conflicts
{
    /// <summary>The demands, in words. Take any one of them away and, as far as was proven in the time given, a plan exists.</summary>
    public static ImmutableArray<string> Find(ISchedulingEngine engine, Occasion occasion, PrepWork work, int seed, int workers, double secondsEach = 3, CancellationToken cancel = default)
    {
        List<PrepDemand> needed = [.. PrepDemand.Of(occasion, work)];
        for (int i = needed.Count - 1; i >= 0 && !cancel.IsCancellationRequested; i--)
        {
            PrepDemand tried = needed[i];
            needed.RemoveAt(i);
            if (!Impossible(engine, occasion, work, needed, seed, workers, secondsEach))
            {
                needed.Insert(i, tried);
            }
        }

        return [.. needed.Select(d => d.Words)];
    }

    private static bool Impossible(ISchedulingEngine engine, Occasion occasion, PrepWork work, List<PrepDemand> kept, int seed, int workers, double seconds)
    {
        (Occasion Occasion, PrepWork Work) rest = (occasion, work);
        foreach (PrepDemand given in PrepDemand.Of(occasion, work).Where(d => kept.All(k => k.Words != d.Words)))
        {
            rest = given.Without(rest.Occasion, rest.Work);
        }

        SchedulingProblem problem = PrepProblem.Write(rest.Occasion, rest.Work).Problem with { Goals = [new Goal("any", "", [])] };
        return engine.Solve(problem, new Effort(seconds, seed, workers) { FirstOnly = true }) is EngineInfeasible;
    }
}
