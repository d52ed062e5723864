using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>A first schedule by lists, without any search: everything as soon as it may be, but no sooner than some hours before its latest start, chain by chain or by earliest start; of several the best by the goals.</summary>
/// <remarks>It leaves out what is optional but the washes that are needed, and gives up where a longest wait cannot be met by pushing back. What it gives keeps every hard rule.</remarks>
public static class QuickStart
{
    private static readonly int[] Early = [240, 600, 1440, int.MaxValue];

    private const int Few = 60;

    /// <summary>A schedule, or null when lists find none.</summary>
    /// <param name="problem">The problem.</param>
    public static EngineSchedule? Of(SchedulingProblem problem)
    {
        int n = problem.Activities.Length;
        int[] mode = [.. Enumerable.Range(0, n).Select(a => problem.Activities[a].Modes.Length > 1 ? a % problem.Activities[a].Modes.Length : 0)];
        int[]? earliest = Earliest(problem);
        if (earliest is null)
        {
            return null;
        }

        // Everybody able counts as kept, so that nobody is waited for.
        ImmutableArray<ImmutableArray<int>> able = [.. Enumerable.Range(0, n).Select(a => problem.Activities[a].Modes[mode[a]].Choices.SelectMany(c => c.Resources).Distinct().ToImmutableArray())];
        int[] latest = Latest(problem);
        EngineSchedule? best = null;
        foreach (int early in Early)
        {
            // No sooner than so long before the latest start: fresher, and the days before stay free for what must be early.
            int[] least = [.. Enumerable.Range(0, n).Select(a => Math.Max(earliest[a], early == int.MaxValue ? 0 : Math.Min(latest[a], Math.Max(0, latest[a] - early))))];
            EngineSchedule order = new([.. Enumerable.Range(0, n).Select(a => problem.Activities[a].Optional ? -1 : problem.Activities[a].FixedStart ?? least[a])], [.. mode], able, []);
            foreach (bool chains in (ReadOnlySpan<bool>)[true, false])
            {
                if (Washed(problem, RightShift.Repair(problem, Fixed(problem, order), early == int.MaxValue ? RightShift.Tries : Few, chains), chains) is { } made && (best is null || Better(problem, made, best)))
                {
                    best = made;
                }
            }
        }

        return best;
    }

    private static EngineSchedule? Washed(SchedulingProblem problem, EngineSchedule? made, bool chains)
    {
        for (int turn = 0; made is not null && !Clean(problem, made) && turn < 3; turn++)
        {
            made = Washed(problem, made) is { } washed ? RightShift.Repair(problem, washed, Few, chains) : null;
        }

        return made is not null && Clean(problem, made) ? made : null;
    }

    private static bool Better(SchedulingProblem p, EngineSchedule one, EngineSchedule other)
        => p.Goals.Select(g => GoalValue.Of(p, g, one).CompareTo(GoalValue.Of(p, g, other))).FirstOrDefault(c => c != 0) < 0;

    /// <summary>Latest starts by windows and least waits.</summary>
    private static int[] Latest(SchedulingProblem p)
    {
        int Length(int a) => p.Activities[a].Modes.Max(m => m.Duration);
        int[] start = [.. Enumerable.Range(0, p.Activities.Length).Select(a => p.Activities[a].FixedStart ?? ((p.Activities[a].Windows.IsEmpty ? p.Horizon : p.Activities[a].Windows.Max(w => w.End)) - Length(a)))];
        bool moved = true;
        for (int round = 0; moved && round <= start.Length; round++)
        {
            moved = false;
            foreach (Lag l in p.Lags.Where(l => p.Activities[l.From].FixedStart is null))
            {
                int at = start[l.To] + (l.ToEdge == Edge.End ? Length(l.To) : 0) - l.Least - (l.FromEdge == Edge.End ? Length(l.From) : 0);
                if (at < start[l.From])
                {
                    (start[l.From], moved) = (at, true);
                }
            }
        }

        return start;
    }

    // A wash before every use that must not have what was left since the last one; null when there are not enough washes.
    private static EngineSchedule? Washed(SchedulingProblem p, EngineSchedule s)
    {
        (int[] start, int[] mode) = ([.. s.Starts], [.. s.Modes]);
        foreach (CleanRule rule in p.Cleans)
        {
            Queue<int> washes = new(rule.Cleanings.Where(w => start[w] < 0));
            long left = 0;
            foreach (CleanUse use in rule.Uses.Where(u => rule.Concerns(p, s, u.Activity)).OrderBy(u => s.Starts[u.Activity]))
            {
                if ((left & ~use.Carries) != 0)
                {
                    if (!washes.TryDequeue(out int wash))
                    {
                        return null;
                    }

                    mode[wash] = Math.Max(0, p.Activities[wash].Modes.ToList().FindIndex(rule.Holds));
                    start[wash] = start[use.Activity];
                    left = 0;
                    start[use.Activity] += p.Activities[wash].Modes[mode[wash]].Duration;
                }

                left |= use.Carries;
            }
        }

        return s with { Starts = [.. start], Modes = [.. mode], Served = [.. s.Served.Select((x, i) => s.Starts[i] < 0 && start[i] >= 0 ? [.. p.Activities[i].Modes[mode[i]].Choices.SelectMany(c => c.Resources).Distinct()] : x)] };
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

    /// <summary>Earliest starts by windows and least waits; null when the waits run in a circle.</summary>
    private static int[]? Earliest(SchedulingProblem p)
    {
        int[] start = [.. p.Activities.Select(a => a.FixedStart ?? (a.Windows.IsEmpty ? 0 : Math.Max(0, a.Windows.Min(w => w.Start))))];
        int Length(int a) => p.Activities[a].Modes.Min(m => m.Duration);
        for (int round = 0; round <= start.Length; round++)
        {
            bool moved = false;
            foreach (Lag l in p.Lags)
            {
                int at = start[l.From] + (l.FromEdge == Edge.End ? Length(l.From) : 0) + l.Least - (l.ToEdge == Edge.End ? Length(l.To) : 0);
                if (at > start[l.To] && p.Activities[l.To].FixedStart is null)
                {
                    (start[l.To], moved) = (at, true);
                }

                int back = start[l.To] + (l.ToEdge == Edge.End ? Length(l.To) : 0) - (l.Most ?? 0) - (l.FromEdge == Edge.End ? Length(l.From) : 0);
                if (l is { Most: not null, Soft: false } && back > start[l.From] && p.Activities[l.From].FixedStart is null)
                {
                    (start[l.From], moved) = (back, true);
                }
            }

            if (!moved)
            {
                return start;
            }
        }

        return null;
    }

    private static bool Clean(SchedulingProblem p, EngineSchedule s) => p.Cleans.All(rule => rule.Uses.Where(u => rule.Concerns(p, s, u.Activity)).All(u => rule.Uses.Where(v => v.Activity != u.Activity && rule.Concerns(p, s, v.Activity)).All(v =>
        (u.Carries & ~v.Carries) == 0 || s.Starts[u.Activity] >= s.End(p, v.Activity) || rule.Cleanings.Any(w => rule.Concerns(p, s, w) && s.Starts[w] >= s.End(p, u.Activity) && s.Starts[v.Activity] >= s.End(p, w)))));
}
