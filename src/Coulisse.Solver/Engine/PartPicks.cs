using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Engine;

/// <summary>Which part of a schedule may move next: around something that costs, in a stretch of time, or some chains of work from end to end.</summary>
internal sealed class PartPicks
{
    private readonly SchedulingProblem _problem;
    private readonly Reach _reach;
    private readonly Random _random;
    private readonly List<int>[] _linked;
    private readonly List<int>[] _tied;
    private readonly int[] _chain;
    private readonly HashSet<int>[] _holds;
    private readonly HashSet<int> _cleanings;

    public PartPicks(SchedulingProblem problem, Reach reach, int seed)
    {
        (_problem, _reach, _random) = (problem, reach, new Random(seed));
        int n = problem.Activities.Length;
        (_linked, _tied) = ([.. Enumerable.Range(0, n).Select(_ => new List<int>())], [.. Enumerable.Range(0, n).Select(_ => new List<int>())]);
        foreach (Lag l in problem.Lags)
        {
            _linked[l.From].Add(l.To);
            _linked[l.To].Add(l.From);
            if (l.Most == l.Least && !l.Soft)
            {
                _tied[l.From].Add(l.To);
                _tied[l.To].Add(l.From);
            }
        }

        _holds = [.. problem.Activities.Select(a => a.Modes.SelectMany(m => m.Demands.Select(d => d.Resource).Concat(m.Choices.SelectMany(c => c.Resources))).ToHashSet())];
        _cleanings = [.. problem.Cleans.SelectMany(c => c.Cleanings)];
        _chain = [.. Enumerable.Repeat(-1, n)];
        for (int a = 0; a < n; a++)
        {
            Spread(a, a);
        }
    }

    /// <summary>A part of about so many activities.</summary>
    public HashSet<int> Next(EngineSchedule best, Goal goal, int size)
    {
        int[] there = [.. Enumerable.Range(0, best.Starts.Length).Where(a => best.Starts[a] >= 0 && _problem.Activities[a].FixedStart is null)];
        int seed = Costly(best, goal) ?? there[_random.Next(there.Length)];
        int at = Math.Max(0, best.Starts[seed]);
        // Nearness in time of starts; what shares hands or kit with the seed counts as nearer.
        IEnumerable<int> order = _random.Next(3) switch
        {
            0 => there.OrderBy(a => Math.Abs(best.Starts[a] - at)),
            1 => there.OrderBy(a => _chain[a] == _chain[seed] ? -1 : Math.Abs(best.Starts[a] - at) * (_holds[a].Overlaps(_holds[seed]) ? 1 : 2)),
            _ => Chains(there, _chain[seed]),
        };
        HashSet<int> free = [];
        foreach (int a in order)
        {
            if (free.Count >= size)
            {
                break;
            }

            Add(free, a);
        }

        // What is left out now may come in, a wash of each kind too.
        foreach (int a in Enumerable.Range(0, best.Starts.Length).Where(a => best.Starts[a] < 0 && !_cleanings.Contains(a)).Concat(_problem.Cleans.SelectMany(c => c.Cleanings.Where(w => best.Starts[w] < 0).Take(1))))
        {
            free.Add(a);
        }

        return free;
    }

    private void Add(HashSet<int> free, int a)
    {
        if (_problem.Activities[a].FixedStart is null && free.Add(a))
        {
            foreach (int b in _tied[a])
            {
                Add(free, b);
            }
        }
    }

    private IEnumerable<int> Chains(int[] there, int first)
    {
        int[] chains = [.. there.Select(a => _chain[a]).Distinct()];
        _random.Shuffle(chains);
        Dictionary<int, int> rank = chains.Select((c, i) => (c, i)).ToDictionary(x => x.c, x => x.i);
        rank[first] = -1;
        return there.OrderBy(a => rank[_chain[a]]);
    }

    // One of what costs at this level, drawn by its cost; null when nothing does.
    private int? Costly(EngineSchedule best, Goal goal)
    {
        List<(int Activity, long Cost)> costs = [];
        foreach (Term t in goal.Terms)
        {
            int a = t.Kind == TermKind.LagExcess ? _problem.Lags[t.Index].To : t.Index;
            long cost = t is { Kind: TermKind.Start, Weight: < 0 } ? best.Starts[a] < 0 ? 0 : -t.Weight * (_reach.Latest[a] - best.Starts[a])
                : GoalValue.Of(_problem, goal with { Terms = [t with { Weight = Math.Max(1, t.Weight) }] }, best);
            if (cost > 0)
            {
                costs.Add((a, cost));
            }
        }

        if (costs.Count == 0 || _random.Next(6) == 0)
        {
            return null;
        }

        double left = _random.NextDouble() * costs.Sum(c => (double)c.Cost);
        foreach ((int activity, long cost) in costs)
        {
            left -= cost;
            if (left <= 0)
            {
                return activity;
            }
        }

        return costs[^1].Activity;
    }

    private void Spread(int a, int chain)
    {
        Stack<int> left = new([a]);
        while (left.TryPop(out int x))
        {
            if (_chain[x] < 0)
            {
                _chain[x] = chain;
                _linked[x].ForEach(left.Push);
            }
        }
    }
}
