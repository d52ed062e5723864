namespace Coulisse.Solver.Engine;

/// <summary>Good schedules fast, for problems with precedence only: lists of activities placed one after the other, justified right and left, bred.</summary>
/// <remarks>
/// The serial scheme places each activity of a list as early as what is placed allows. Justifying (Valls, Ballestín, Quintanilla 2005)
/// shifts all to the right by their ends, then to the left by their starts, and never makes a schedule longer. Two lists are crossed at
/// two points; of a crowd the better half stays (Valls and others 2008, Hartmann 1998). From memory of these papers.
/// </remarks>
internal sealed class ImproveByLists
{
    private readonly ImproveNetwork _net;
    private readonly Random _random;
    private readonly int[][] _before;
    private readonly int[][] _after;
    private readonly int[][] _left;
    private readonly int _span;
    private readonly int[] _tail;

    private ImproveByLists(ImproveNetwork net, int seed)
    {
        (_net, _random) = (net, new Random(seed));
        int n = net.Count;
        _before = [.. Enumerable.Range(0, n).Select(j => Enumerable.Range(0, n).Where(i => i != j && net.Path[i][j] >= 0 && net.Path[i][j] != ImproveNetwork.None).ToArray())];
        _after = [.. Enumerable.Range(0, n).Select(i => Enumerable.Range(0, n).Where(j => i != j && net.Path[i][j] >= 0 && net.Path[i][j] != ImproveNetwork.None).ToArray())];
        _span = net.Duration.Sum() + Enumerable.Range(0, n).Sum(i => _after[i].Select(j => Math.Max(0, net.Path[i][j] - net.Duration[i])).DefaultIfEmpty().Max()) + 1;
        _left = [.. net.Capacity.Select(_ => new int[_span])];
        _tail = [.. Enumerable.Range(0, n).Select(i => Enumerable.Range(0, n).Where(j => net.Path[i][j] != ImproveNetwork.None).Max(j => net.Path[i][j] + net.Duration[j]))];
    }

    /// <summary>Starts of the best schedule found; null when the problem has longest waits or a cycle, which this cannot keep.</summary>
    public static int[]? Best(ImproveNetwork net, int seed, int goodEnough, Func<bool> goOn, Action<int>? better = null)
    {
        for (int i = 0; i < net.Count; i++)
        {
            for (int j = 0; j < net.Count; j++)
            {
                // A path back of less than nothing is a longest wait; a pair both at zero would be a cycle of equals.
                if (i != j && net.Path[i][j] != ImproveNetwork.None && (net.Path[i][j] < 0 || net.Path[j][i] != ImproveNetwork.None))
                {
                    return null;
                }
            }
        }

        return net.Demand.All(d => d.Zip(net.Capacity, (a, c) => a <= c).All(x => x)) ? new ImproveByLists(net, seed).Breed(goodEnough, goOn, better) : null;
    }

    private int[] Breed(int goodEnough, Func<bool> goOn, Action<int>? better)
    {
        int crowd = Math.Clamp(2 * _net.Count / 3, 20, 60);
        List<(int[] Starts, int Length)> all = [];
        (int[] Starts, int Length) best = (Place(Latest()), 0);
        best.Length = Length(best.Starts);
        int stale = 0;
        while (goOn() && best.Length > goodEnough)
        {
            if (all.Count < crowd)
            {
                all.Add(Justified(Place(all.Count == 0 ? Latest() : Sampled(0.5 + (2 * _random.NextDouble())))));
            }
            else
            {
                (int[] Starts, int Length) one = all[_random.Next(all.Count)];
                (int[] Starts, int Length) other = all[_random.Next(all.Count)];
                (int[] Starts, int Length) child = Justified(Place(Mutated(Crossed(List(one.Starts), List(other.Starts)))));
                // The child takes the place of the worse of two at random, unless it is a twin of somebody.
                int weak = Enumerable.Range(0, 3).Select(_ => _random.Next(all.Count)).MaxBy(i => all[i].Length);
                if (child.Length <= all[weak].Length && !all.Exists(x => x.Length == child.Length && x.Starts.AsSpan().SequenceEqual(child.Starts)))
                {
                    all[weak] = child;
                }

                stale++;
            }

            (int[] Starts, int Length) newest = all.MinBy(x => x.Length);
            if (newest.Length < best.Length)
            {
                best = newest;
                stale = 0;
                better?.Invoke(best.Length);
            }
            else if (stale > 60 * crowd)
            {
                // The crowd has become one family: begin again, the best kept.
                all = [best];
                stale = 0;
            }
        }

        return best.Starts;
    }

    private int Length(int[] starts)
    {
        int last = 0;
        for (int a = 0; a < starts.Length; a++)
        {
            last = Math.Max(last, starts[a] + _net.Duration[a]);
        }

        return last;
    }

    /// <summary>Longest tail first: a list that never places an activity before what it needs.</summary>
    private int[] Latest() => [.. Enumerable.Range(0, _net.Count).OrderByDescending(a => _tail[a]).ThenBy(a => _after[a].Length == 0).ThenBy(a => _before[a].Length)];

    private int[] List(int[] starts)
    {
        int[] list = [.. Enumerable.Range(0, starts.Length)];
        // A dummy of no duration starts with what follows it; the number of those before it breaks the tie in the right order.
        Array.Sort([.. list.Select(a => ((long)starts[a] << 16) + _before[a].Length)], list);
        return list;
    }

    /// <summary>A list drawn by tails, with chance.</summary>
    private int[] Sampled(double sharpness)
    {
        int n = _net.Count;
        int[] waits = [.. _before.Select(b => b.Length)];
        List<int> ready = [.. Enumerable.Range(0, n).Where(a => waits[a] == 0)];
        int[] list = new int[n];
        for (int i = 0; i < n; i++)
        {
            int low = ready.Min(a => _tail[a]);
            double[] weight = [.. ready.Select(a => Math.Pow(1 + _tail[a] - low, sharpness))];
            double at = _random.NextDouble() * weight.Sum();
            int k = 0;
            while (k < ready.Count - 1 && (at -= weight[k]) > 0)
            {
                k++;
            }

            int chosen = ready[k];
            ready.RemoveAt(k);
            list[i] = chosen;
            foreach (int b in _after[chosen])
            {
                if (--waits[b] == 0)
                {
                    ready.Add(b);
                }
            }
        }

        return list;
    }

    private int[] Crossed(int[] one, int[] other)
    {
        int n = one.Length;
        (int from, int to) = (_random.Next(n), _random.Next(n));
        (from, to) = (Math.Min(from, to), Math.Max(from, to));
        bool[] taken = new bool[n];
        int[] child = new int[n];
        Array.Copy(one, child, from);
        for (int i = 0; i < from; i++)
        {
            taken[one[i]] = true;
        }

        int at = from;
        for (int i = 0; i < n && at < to; i++)
        {
            if (!taken[other[i]])
            {
                taken[child[at++] = other[i]] = true;
            }
        }

        for (int i = 0; i < n; i++)
        {
            if (!taken[one[i]])
            {
                child[at++] = one[i];
            }
        }

        return child;
    }

    /// <summary>Neighbours that may change places do so now and then.</summary>
    private int[] Mutated(int[] list)
    {
        for (int i = 0; i + 1 < list.Length; i++)
        {
            if (_random.Next(20) == 0 && _net.Path[list[i]][list[i + 1]] == ImproveNetwork.None)
            {
                (list[i], list[i + 1]) = (list[i + 1], list[i]);
            }
        }

        return list;
    }

    private (int[] Starts, int Length) Justified(int[] starts)
    {
        int length = Length(starts);
        while (true)
        {
            int[] back = PlaceBack(starts, length);
            int[] again = Place(List(back));
            int now = Length(again);
            if (now >= length)
            {
                return now > length ? (starts, length) : (again, now);
            }

            (starts, length) = (again, now);
        }
    }

    private int[] Place(int[] list)
    {
        Clear();
        int[] starts = new int[list.Length];
        foreach (int a in list)
        {
            int at = 0;
            foreach (int b in _before[a])
            {
                at = Math.Max(at, starts[b] + _net.Path[b][a]);
            }

            starts[a] = Hold(a, at, 1);
        }

        return starts;
    }

    /// <summary>As late as can be within the length, those that end last first.</summary>
    private int[] PlaceBack(int[] starts, int length)
    {
        Clear();
        int[] list = [.. Enumerable.Range(0, starts.Length)];
        Array.Sort([.. list.Select(a => (-(long)(starts[a] + _net.Duration[a]) << 16) + _after[a].Length)], list);
        int[] back = new int[starts.Length];
        foreach (int a in list)
        {
            int at = length - _net.Duration[a];
            foreach (int b in _after[a])
            {
                at = Math.Min(at, back[b] - _net.Path[a][b]);
            }

            back[a] = Hold(a, at, -1);
        }

        int first = back.Min();
        for (int a = 0; a < back.Length; a++)
        {
            back[a] -= first;
        }

        return back;
    }

    private void Clear()
    {
        for (int r = 0; r < _left.Length; r++)
        {
            Array.Fill(_left[r], _net.Capacity[r]);
        }
    }

    /// <summary>Moves from a step in a direction until everything the activity holds is free, and holds it.</summary>
    private int Hold(int a, int at, int direction)
    {
        int duration = _net.Duration[a];
        int[] demand = _net.Demand[a];
        for (int r = 0; r < demand.Length; r++)
        {
            if (demand[r] == 0)
            {
                continue;
            }

            int[] left = _left[r];
            int clash = Clash(left, demand[r], at, duration, direction);
            if (clash >= 0)
            {
                at = direction > 0 ? clash + 1 : clash - duration;
                r = -1;
            }
        }

        for (int r = 0; r < demand.Length; r++)
        {
            for (int t = at; demand[r] > 0 && t < at + duration; t++)
            {
                _left[r][t] -= demand[r];
            }
        }

        return at;
    }

    /// <summary>The clash that moves the activity furthest, or -1.</summary>
    private static int Clash(int[] left, int demand, int at, int duration, int direction)
    {
        if (direction > 0)
        {
            for (int t = at + duration - 1; t >= at; t--)
            {
                if (left[t] < demand)
                {
                    return t;
                }
            }
        }
        else
        {
            for (int t = at; t < at + duration; t++)
            {
                if (left[t] < demand)
                {
                    return t;
                }
            }
        }

        return -1;
    }
}
