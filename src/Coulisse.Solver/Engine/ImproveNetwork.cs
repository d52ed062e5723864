using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Engine;

/// <summary>A problem of plain lags and resources laid flat for fast arithmetic: longest paths, pairs that cannot run together, simple bounds.</summary>
internal sealed class ImproveNetwork
{
    /// <summary>No path: small enough never to win, far enough from overflow to be added up.</summary>
    public const int None = int.MinValue / 4;

    public required int[] Duration { get; init; }

    /// <summary>Demand by activity and resource.</summary>
    public required int[][] Demand { get; init; }

    public required int[] Capacity { get; init; }

    /// <summary>Least steps from the start of one to the start of the other, over all paths.</summary>
    public required int[][] Path { get; init; }

    public int Count => Duration.Length;

    /// <summary>True when a cycle of lags contradicts itself.</summary>
    public bool Contradicts { get; private set; }

    /// <summary>The problem laid flat; null when it has anything else than one mode an activity, lags and plain resources.</summary>
    public static ImproveNetwork? Of(SchedulingProblem p)
    {
        bool plain = p.StateKits.IsEmpty && p.Stores.IsEmpty && p.Cleans.IsEmpty && p.Stocks.IsEmpty && p.Resources.All(r => r.Closed.IsEmpty)
            && p.Lags.All(l => !l.Soft)
            && p.Activities.All(a => a is { Optional: false, Windows.IsEmpty: true, Modes: [{ Choices.IsEmpty: true, State: null }] });
        if (!plain || p.Activities.Length == 0)
        {
            return null;
        }

        int n = p.Activities.Length;
        int[] duration = [.. p.Activities.Select(a => a.Modes[0].Duration)];
        int[][] path = [.. Enumerable.Range(0, n).Select(i => Enumerable.Range(0, n).Select(j => i == j ? 0 : None).ToArray())];
        foreach (Lag l in p.Lags)
        {
            // time(To) - time(From) >= Least, with edges turned into starts.
            int shift = (l.FromEdge == Edge.End ? duration[l.From] : 0) - (l.ToEdge == Edge.End ? duration[l.To] : 0);
            path[l.From][l.To] = Math.Max(path[l.From][l.To], l.Least + shift);
            if (l.Most is { } most)
            {
                path[l.To][l.From] = Math.Max(path[l.To][l.From], -(most + shift));
            }
        }

        int[][] demand = [.. p.Activities.Select(a => Enumerable.Range(0, p.Resources.Length).Select(r => a.Modes[0].Demands.Where(d => d.Resource == r).Sum(d => d.Amount)).ToArray())];
        ImproveNetwork net = new() { Duration = duration, Demand = demand, Capacity = [.. p.Resources.Select(r => r.Capacity)], Path = path };
        net.Close();
        net.Order();
        return net;
    }

    /// <summary>True when the two never run at once.</summary>
    public bool Apart(int i, int j)
    {
        if (Duration[i] == 0 || Duration[j] == 0)
        {
            return false;
        }

        for (int r = 0; r < Capacity.Length; r++)
        {
            if (Demand[i][r] + Demand[j][r] > Capacity[r])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Largest of: work over capacity of any resource; the longest path from a start to an end.</summary>
    public int LowerBound()
    {
        int bound = 0;
        for (int r = 0; r < Capacity.Length; r++)
        {
            long work = Enumerable.Range(0, Count).Sum(a => (long)Duration[a] * Demand[a][r]);
            bound = Math.Max(bound, Capacity[r] > 0 ? (int)((work + Capacity[r] - 1) / Capacity[r]) : 0);
        }

        for (int i = 0; i < Count; i++)
        {
            for (int j = 0; j < Count; j++)
            {
                bound = Path[i][j] == None ? bound : Math.Max(bound, Path[i][j] + Duration[j]);
            }
        }

        return bound;
    }

    /// <summary>Longest paths through every middle.</summary>
    private void Close()
    {
        for (int k = 0; k < Count; k++)
        {
            int[] from = Path[k];
            for (int i = 0; i < Count; i++)
            {
                int first = Path[i][k];
                if (first == None)
                {
                    continue;
                }

                int[] row = Path[i];
                for (int j = 0; j < Count; j++)
                {
                    if (from[j] != None && first + from[j] > row[j])
                    {
                        row[j] = first + from[j];
                    }
                }
            }
        }

        Contradicts = Enumerable.Range(0, Count).Any(i => Path[i][i] > 0);
    }

    /// <summary>Where two cannot run at once and the lags forbid one order, the other order is a lag; again until nothing changes.</summary>
    private void Order()
    {
        for (bool moved = true; moved && !Contradicts;)
        {
            moved = false;
            for (int i = 0; i < Count; i++)
            {
                for (int j = 0; j < Count; j++)
                {
                    // start(j) > start(i) - duration(j): j does not end before i starts, so i comes first.
                    if (i != j && Path[i][j] > -Duration[j] && Path[i][j] < Duration[i] && Apart(i, j))
                    {
                        Path[i][j] = Duration[i];
                        moved = true;
                    }
                }
            }

            if (moved)
            {
                Close();
            }
        }
    }
}
