using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Solver;

/// <summary>For an impossible occasion: a smallest set of demands that cannot hold together, found by taking away whatever is not needed for the contradiction.</summary>
public static class Conflicts
{
    /// <summary>The demands. Take any one of them away and, as far as was proven in the time given, a plan exists.</summary>
    /// <param name="engine">Engine.</param>
    /// <param name="occasion">The occasion.</param>
    /// <param name="work">Its work with its edits.</param>
    /// <param name="effort">Time for each question, seed and threads.</param>
    /// <param name="cancel">Stop and keep what was found.</param>
    public static ImmutableArray<PrepDemand> Find(ISchedulingEngine engine, Occasion occasion, PrepWork work, Effort effort, CancellationToken cancel = default)
    {
        List<PrepDemand> needed = [.. PrepDemand.Of(occasion, work)];

        // Halves first: most demands have no part in it, and go together.
        for (int size = Math.Max(1, needed.Count / 2); size >= 1; size /= 2)
        {
            for (int i = needed.Count - size; i > -size && !cancel.IsCancellationRequested; i -= size)
            {
                List<PrepDemand> tried = [.. needed.Where((_, k) => k < i || k >= i + size)];
                if (tried.Count < needed.Count && Decide(engine, occasion, work, tried, effort) is EngineInfeasible)
                {
                    needed = tried;
                }
            }
        }

        return [.. needed];
    }

    /// <summary>Solves the occasion with some of its demands only.</summary>
    /// <param name="engine">Engine.</param>
    /// <param name="occasion">The occasion.</param>
    /// <param name="work">Its work with its edits.</param>
    /// <param name="kept">The demands that stay.</param>
    /// <param name="effort">Time, seed and threads.</param>
    public static EngineOutcome Decide(ISchedulingEngine engine, Occasion occasion, PrepWork work, IReadOnlyCollection<PrepDemand> kept, Effort effort)
    {
        HashSet<string> stays = [.. kept.Select(d => d.Words)];
        (Occasion Occasion, PrepWork Work) rest = (occasion, work);
        foreach (PrepDemand given in PrepDemand.Of(occasion, work).Where(d => !stays.Contains(d.Words)))
        {
            rest = given.Without(rest.Occasion, rest.Work);
        }

        SchedulingProblem problem = PrepProblem.Write(rest.Occasion, rest.Work).Problem with { Goals = [new Goal("any", "", [])] };
        return engine.Solve(problem, effort with { FirstOnly = true });
    }
}
