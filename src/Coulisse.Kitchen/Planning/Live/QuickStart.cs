using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>A first schedule by lists, without any search: everything as soon as it may be, but no sooner than some hours before its latest start, chain by chain or by earliest start; of several the best by the goals.</summary>
/// <remarks>Of what is optional it takes the washes that are needed, and what a goal wants where it has a place; what longest waits tie together is laid as a whole. What it gives keeps every hard rule.</remarks>
public static class QuickStart
{
    private static readonly int[] Early = [240, 600, 1440, int.MaxValue];

    private static readonly RightShift.Pass[] Passes = [new(InOrder: true, Firm: true, FreeOrder: true), new(Firm: true, FreeOrder: true), new(InOrder: true, FreeOrder: true), new(FreeOrder: true)];

    /// <summary>A schedule, or null when lists find none.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="hurry">The first one found is good enough.</param>
    /// <param name="first">Hears of the first one found.</param>
    public static EngineSchedule? Of(SchedulingProblem problem, bool hurry = false, Action<EngineSchedule>? first = null)
    {
        EngineSchedule? best = null;
        foreach (EngineSchedule made in Tries(problem))
        {
            if (best is null)
            {
                first?.Invoke(made);
            }

            best = best is null || GoalValue.Better(problem, made, best) ? made : best;
            if (hurry)
            {
                return best;
            }
        }

        return best is null ? null : RightShift.Late(problem, best);
    }

    private static IEnumerable<EngineSchedule> Tries(SchedulingProblem problem)
    {
        Reach reach = Reach.Of(problem);
        if (!reach.Possible)
        {
            yield break;
        }

        int n = problem.Activities.Length;
        ImmutableArray<int> mode = [.. Enumerable.Range(0, n).Select(a => a % problem.Activities[a].Modes.Length)];

        // Everybody able counts as kept, so that nobody is waited for.
        ImmutableArray<ImmutableArray<int>> able = [.. Enumerable.Range(0, n).Select(a => problem.Activities[a].Modes[mode[a]].Choices.SelectMany(c => c.Resources).Distinct().ToImmutableArray())];
        int[] wanted = [.. problem.Goals.SelectMany(g => g.Terms).Where(t => t is { Kind: TermKind.Present, Weight: < 0 }).Select(t => t.Index).Distinct().Where(a => problem.Activities[a].Optional)];
        foreach (int[] with in wanted.Length > 0 ? new[] { wanted, [] } : [[]])
        {
            foreach (int early in Early)
            {
                // No sooner than so long before the latest start: fresher, and the days before stay free for what must be early.
                int Least(int a) => Math.Max(reach.Earliest[a], early == int.MaxValue ? 0 : reach.Latest[a] - early);
                EngineSchedule order = Fixed(problem, new([.. Enumerable.Range(0, n).Select(a => problem.Activities[a].Optional && !with.Contains(a) ? -1 : problem.Activities[a].FixedStart ?? Least(a))], mode, able, []));
                foreach (RightShift.Pass pass in Passes)
                {
                    if (ListWashes.Of(problem, RightShift.Repair(problem, order, pass), pass) is { } made)
                    {
                        yield return made;
                    }
                }
            }
        }
    }

    // What is fixed to its hour is placed first and untried: it needs hands of its own that are really there.
    private static EngineSchedule Fixed(SchedulingProblem problem, EngineSchedule order)
    {
        List<(int Start, int End, int Resource)> taken = [];
        ImmutableArray<int>[] served = [.. order.Served];
        foreach (int a in Enumerable.Range(0, served.Length).Where(a => problem.Activities[a].FixedStart is not null && order.Starts[a] >= 0))
        {
            Mode mode = problem.Activities[a].Modes[order.Modes[a]];
            (int from, int to) = (order.Starts[a], order.Starts[a] + mode.Duration);
            bool Free(int r) => !problem.Resources[r].Closed.Any(c => c.Start < to && from < c.End) && !taken.Exists(t => t.Resource == r && t.Start < to && from < t.End);
            List<int> mine = [];
            foreach (Choice c in mode.Choices)
            {
                mine.AddRange(c.Resources.Where(r => !mine.Contains(r) && Free(r)).Take(c.Count));
            }

            taken.AddRange(mine.Select(r => (from, to, r)));
            served[a] = [.. mine];
        }

        return order with { Served = [.. served] };
    }
}
