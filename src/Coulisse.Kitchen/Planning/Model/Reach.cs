namespace Coulisse.Kitchen.Planning.Model;

/// <summary>Earliest and latest starts by windows and hard lags alone; nothing that is held counts.</summary>
public sealed class Reach
{
    private readonly SchedulingProblem _problem;

    private Reach(SchedulingProblem problem, int[] earliest, int[] latest) => (_problem, Earliest, Latest) = (problem, earliest, latest);

    /// <summary>Earliest start of each activity.</summary>
    public IReadOnlyList<int> Earliest { get; }

    /// <summary>Latest start of each activity.</summary>
    public IReadOnlyList<int> Latest { get; }

    /// <summary>Reach of a problem's activities; what is optional pulls nothing else.</summary>
    /// <param name="problem">The problem.</param>
    public static Reach Of(SchedulingProblem problem)
    {
        int n = problem.Activities.Length;
        (int[] earliest, int[] latest) = (new int[n], new int[n]);
        int Shortest(int a) => problem.Activities[a].Modes.Min(m => m.Duration);
        for (int a = 0; a < n; a++)
        {
            Activity x = problem.Activities[a];
            earliest[a] = x.FixedStart ?? (x.Windows.IsEmpty ? 0 : Math.Max(0, x.Windows.Min(w => w.Start)));
            latest[a] = x.FixedStart ?? ((x.Windows.IsEmpty ? problem.Horizon : x.Windows.Max(w => w.End)) - Shortest(a));
        }

        Lag[] binding = [.. problem.Lags.Where(l => !problem.Activities[l.From].Optional && !problem.Activities[l.To].Optional)];
        bool moved = true;
        for (int round = 0; moved && round <= n; round++)
        {
            moved = false;
            foreach (Lag l in binding)
            {
                // Whether an edge is an end takes the shortest or the longest mode, whichever says less.
                int from = l.FromEdge == Edge.End ? Shortest(l.From) : 0;
                int fromMost = l.FromEdge == Edge.End ? problem.Activities[l.From].Modes.Max(m => m.Duration) : 0;
                int to = l.ToEdge == Edge.End ? Shortest(l.To) : 0;
                int toMost = l.ToEdge == Edge.End ? problem.Activities[l.To].Modes.Max(m => m.Duration) : 0;
                moved |= Raise(earliest, l.To, earliest[l.From] + from + l.Least - toMost, problem);
                moved |= Lower(latest, l.From, latest[l.To] + toMost - l.Least - from, problem);
                if (l is { Most: { } most, Soft: false })
                {
                    moved |= Raise(earliest, l.From, earliest[l.To] + to - most - fromMost, problem);
                    moved |= Lower(latest, l.To, latest[l.From] + fromMost + most - to, problem);
                }
            }
        }

        return new Reach(problem, earliest, latest);
    }

    /// <summary>A value no schedule can go below; null where arithmetic says nothing.</summary>
    /// <param name="goal">The goal.</param>
    public long? Bound(Goal goal)
    {
        long sum = 0;
        foreach (Term t in goal.Terms)
        {
            Activity? a = t.Kind is TermKind.LagExcess or TermKind.Makespan ? null : _problem.Activities[t.Index];
            (long low, long high)? range = t.Kind switch
            {
                TermKind.LagExcess => (0, long.MaxValue),
                TermKind.Moved => (0, long.MaxValue),
                TermKind.Start => a!.Optional ? (0, Latest[t.Index]) : (Earliest[t.Index], Latest[t.Index]),
                TermKind.Present => a!.Optional ? (0, 1) : (1, 1),
                TermKind.EndAfter => a!.Optional ? (0, long.MaxValue) : (Math.Max(0, Earliest[t.Index] + a.Modes.Min(m => m.Duration) - t.Other), long.MaxValue),
                TermKind.Served or TermKind.Mode => (0, 1),
                _ => null,
            };
            if (range is not { } r || (t.Weight < 0 && r.high == long.MaxValue))
            {
                return null;
            }

            sum += t.Weight * (t.Weight < 0 ? r.high : r.low);
        }

        return sum;
    }

    private static bool Raise(int[] at, int a, int to, SchedulingProblem p)
    {
        bool moves = p.Activities[a].FixedStart is null && to > at[a];
        at[a] = moves ? to : at[a];
        return moves;
    }

    private static bool Lower(int[] at, int a, int to, SchedulingProblem p)
    {
        bool moves = p.Activities[a].FixedStart is null && to < at[a];
        at[a] = moves ? to : at[a];
        return moves;
    }
}
