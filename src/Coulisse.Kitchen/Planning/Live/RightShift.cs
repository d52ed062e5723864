using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>The quick repair of a schedule that no longer fits: everything in its old order, each as soon as it may be but no sooner than before.</summary>
/// <remarks>
/// A serial list schedule with the old starts as priorities. Ways (mode and people) are kept; another way is taken only when the
/// old one would cost more than <see cref="Patience"/> steps or a longest wait leaves no choice. What longest waits tie together
/// is laid as a whole. It may fail where a search would succeed; it never says more than it found.
/// </remarks>
public static class RightShift
{
    /// <summary>Steps a task waits for its own people and kit before others are asked.</summary>
    public const int Patience = 10;

    /// <summary>Repairs a schedule; null when this way finds none.</summary>
    /// <param name="problem">The problem as it is now (windows, closed people and kit).</param>
    /// <param name="old">The old schedule: starts (-1 for absent), modes, people.</param>
    public static EngineSchedule? Repair(SchedulingProblem problem, EngineSchedule old) => Repair(problem, old, new Pass());

    /// <summary>The least repair: everything that still can stays where it was, the rest finds a place around it; null when this way finds none.</summary>
    /// <param name="problem">The problem as it is now.</param>
    /// <param name="old">The old schedule.</param>
    public static EngineSchedule? Insert(SchedulingProblem problem, EngineSchedule old) => new Insertion(problem, old, [.. Present(problem, old), .. Chains(problem, old)]).Run();

    /// <summary>The same in a way of its own.</summary>
    /// <param name="problem">The problem as it is now.</param>
    /// <param name="old">The old schedule.</param>
    /// <param name="pass">How it goes about it.</param>
    internal static EngineSchedule? Repair(SchedulingProblem problem, EngineSchedule old, Pass pass)
        => new ListSchedule(problem, old, [.. Present(problem, old), .. pass.FreeOrder ? [] : Chains(problem, old)], pass).Run();

    /// <summary>Everything as late as the rest allows, no goal the worse for it.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="made">A schedule of it that keeps every hard rule.</param>
    internal static EngineSchedule Late(SchedulingProblem problem, EngineSchedule made) => LateShift.Of(problem, made, [.. Present(problem, made), .. Chains(problem, made)]);

    private static IEnumerable<Lag> Present(SchedulingProblem problem, EngineSchedule old) => problem.Lags.Where(l => old.Starts[l.From] >= 0 && old.Starts[l.To] >= 0);

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

    /// <summary>How a pass goes about it.</summary>
    /// <param name="InOrder">Activities by their position instead of their old starts: chain by chain.</param>
    /// <param name="Firm">Longest waits that may be overrun at a price are kept where they can be.</param>
    /// <param name="FreeOrder">What shares kit that is washed may change its order: there is no wash yet.</param>
        internal readonly record struct Pass(bool InOrder = false, bool Firm = false, bool FreeOrder = false);
}
