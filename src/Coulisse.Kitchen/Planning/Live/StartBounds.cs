using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Earliest and latest starts by windows and hard lags alone; of people and kit they know nothing.</summary>
internal static class StartBounds
{
    /// <summary>The bounds; null when they leave some activity no start.</summary>
    /// <param name="p">The problem. What is optional binds nobody.</param>
    public static (int[] Earliest, int[] Latest)? Of(SchedulingProblem p)
    {
        StepWindows windows = new(p);
        int n = p.Activities.Length;
        int[] low = [.. Enumerable.Range(0, n).Select(a => p.Activities[a].FixedStart ?? windows.Later(a, 0))];
        int[] high = [.. Enumerable.Range(0, n).Select(a => p.Activities[a].FixedStart ?? windows.Sooner(a, p.Horizon))];
        Lag[] lags = [.. p.Lags.Where(l => !p.Activities[l.From].Optional && !p.Activities[l.To].Optional)];
        bool moved = true, empty = false;
        while (moved && !empty)
        {
            moved = false;
            foreach (Lag l in lags)
            {
                // Lengths that hang on the way are taken as what binds least.
                (int fromShort, int fromLong) = l.FromEdge == Edge.End ? (windows.Shortest(l.From), windows.Longest(l.From)) : default;
                (int toShort, int toLong) = l.ToEdge == Edge.End ? (windows.Shortest(l.To), windows.Longest(l.To)) : default;
                Raise(l.To, low[l.From] + fromShort + l.Least - toLong);
                Lower(l.From, high[l.To] + toLong - l.Least - fromShort);
                if (l is { Most: { } most, Soft: false })
                {
                    Raise(l.From, low[l.To] + toShort - most - fromLong);
                    Lower(l.To, high[l.From] + fromLong + most - toShort);
                }
            }
        }

        return empty ? null : (low, high);

        void Raise(int a, int at)
        {
            if (at > low[a] && p.Activities[a].FixedStart is null)
            {
                low[a] = windows.Later(a, at);
                (moved, empty) = (true, empty || low[a] > high[a]);
            }
        }

        void Lower(int a, int at)
        {
            if (at < high[a] && p.Activities[a].FixedStart is null)
            {
                high[a] = windows.Sooner(a, at);
                (moved, empty) = (true, empty || low[a] > high[a]);
            }
        }
    }
}
