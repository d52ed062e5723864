using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>The quick repair of a schedule that no longer fits: everything in its old order, each as soon as it may be but no sooner than before.</summary>
/// <remarks>
/// A serial list schedule with the old starts as priorities. Ways (mode and people) are kept; another way is taken only when the
/// old one would cost more than <see cref="Patience"/> steps or a longest wait leaves no choice. A longest wait that is overrun
/// pushes its earlier task back and the schedule is made again. It may fail where a search would succeed; it never says more than it found.
/// </remarks>
public static class RightShift
{
    /// <summary>Steps a task waits for its own people and kit before others are asked.</summary>
    public const int Patience = 10;

    /// <summary>Passes before a repair is given up.</summary>
    internal const int Tries = 400;

    /// <summary>Repairs a schedule; null when this way finds none.</summary>
    /// <param name="problem">The problem as it is now (windows, closed people and kit).</param>
    /// <param name="old">The old schedule: starts (-1 for absent), modes, people.</param>
    public static EngineSchedule? Repair(SchedulingProblem problem, EngineSchedule old) => Repair(problem, old, Tries, inOrder: false);

    /// <summary>The same with its effort.</summary>
    /// <param name="problem">The problem as it is now.</param>
    /// <param name="old">The old schedule.</param>
    /// <param name="tries">Passes before it is given up.</param>
    /// <param name="inOrder">Activities by their position instead of their old starts: chain by chain.</param>
    internal static EngineSchedule? Repair(SchedulingProblem problem, EngineSchedule old, int tries, bool inOrder)
    {
        int[] least = [.. old.Starts];
        ImmutableArray<Lag> lags = [.. problem.Lags.Where(l => old.Starts[l.From] >= 0 && old.Starts[l.To] >= 0), .. Chains(problem, old)];
        for (int attempt = 0; attempt < tries; attempt++)
        {
            ListSchedule made = new(problem, old, lags, least);
            (bool done, int push, int to) = made.Run(inOrder);
            if (done)
            {
                return new EngineSchedule(made.Starts, made.Modes, made.Served, []);
            }

            if (push < 0 || to > problem.Horizon || problem.Activities[push].FixedStart is not null || to <= least[push])
            {
                return null;
            }

            least[push] = to;
        }

        return null;
    }

    // What shares a kit that is washed between uses keeps its order, so that each wash stays where it was needed.
    private static IEnumerable<Lag> Chains(SchedulingProblem problem, EngineSchedule old)
    {
        foreach (CleanRule rule in problem.Cleans)
        {
            int[] order = [.. rule.Uses.Select(u => u.Activity).Concat(rule.Cleanings).Where(a => rule.Concerns(problem, old, a)).OrderBy(a => old.Starts[a]).ThenBy(a => old.End(problem, a))];
            for (int i = 1; i < order.Length; i++)
            {
                yield return Lag.After(order[i - 1], order[i]);
            }
        }
    }
}
