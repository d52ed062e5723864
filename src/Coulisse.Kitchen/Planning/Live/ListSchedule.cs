using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>One pass of a serial list schedule: activities in order of their old starts, each at the first step where everything it needs is there.</summary>
internal sealed class ListSchedule
{
    private readonly SchedulingProblem _problem;
    private readonly EngineSchedule _old;
    private readonly int[] _least;
    private readonly int[][] _free;
    private readonly List<(int Start, int End, int State)>[] _states;
    private readonly List<Lag>[] _into;
    private readonly List<Lag>[] _tied;
    private readonly int[] _start;
    private readonly int[] _mode;
    private readonly int[][] _served;

    public ListSchedule(SchedulingProblem problem, EngineSchedule old, ImmutableArray<Lag> lags, int[] least)
    {
        (_problem, _old, _least) = (problem, old, least);
        int n = problem.Activities.Length;
        (_start, _mode, _served) = ([.. Enumerable.Repeat(-1, n)], [.. old.Modes], [.. old.Served.Select(s => s.ToArray())]);
        _states = [.. problem.StateKits.Select(_ => new List<(int, int, int)>())];
        _into = [.. Enumerable.Range(0, n).Select(_ => new List<Lag>())];
        _tied = [.. Enumerable.Range(0, n).Select(_ => new List<Lag>())];
        foreach (Lag lag in lags)
        {
            _into[lag.To].Add(lag);
            if (lag.Most == lag.Least && !lag.Soft)
            {
                _tied[lag.From].Add(lag);
            }
        }

        _free = [.. problem.Resources.Select(r => Profile(r, problem.Horizon))];
    }

    public ImmutableArray<int> Starts => [.. _start];

    public ImmutableArray<int> Modes => [.. _mode];

    public ImmutableArray<ImmutableArray<int>> Served => [.. _served.Select(s => s.ToImmutableArray())];

    /// <summary>Runs the pass.</summary>
    /// <param name="inOrder">Activities by their position instead of their old starts.</param>
    /// <returns>Done; or the activity to push back and the step it should not start before (-1 when pushing cannot help).</returns>
    public (bool Done, int Push, int To) Run(bool inOrder)
    {
        // A wash is done as soon as it can be: what follows waits for it.
        HashSet<int> washes = [.. _problem.Cleans.SelectMany(c => c.Cleanings)];
        List<int> waiting = [.. Enumerable.Range(0, _start.Length).Where(a => _old.Starts[a] >= 0).OrderBy(a => _problem.Activities[a].FixedStart is null).ThenBy(a => inOrder ? washes.Contains(a) ? 0 : 1 : _least[a]).ThenBy(a => a)];
        while (waiting.Count > 0)
        {
            int a = waiting.FindIndex(x => _problem.Activities[x].FixedStart is not null || _into[x].TrueForAll(l => _start[l.From] >= 0));
            if (a < 0)
            {
                return (false, -1, 0);
            }

            int next = waiting[a];
            waiting.RemoveAt(a);
            if (_start[next] < 0 && Place(next) is { } push)
            {
                return (false, push.Activity, push.To);
            }
        }

        return (true, -1, 0);
    }

    private (int Activity, int To)? Place(int a)
    {
        Activity activity = _problem.Activities[a];
        if (activity.FixedStart is { } at)
        {
            Take(a, _mode[a], at, _served[a]);
            return null;
        }

        int first = Math.Max(0, _least[a]);
        foreach (Lag lag in _into[a])
        {
            first = Math.Max(first, Time(lag.From, lag.FromEdge) + lag.Least - Length(a, lag.ToEdge));
        }

        for (int t = first; t <= _problem.Horizon; t++)
        {
            if (_into[a].Find(l => l is { Most: not null, Soft: false } && t + Length(a, l.ToEdge) > Time(l.From, l.FromEdge) + l.Most) is { } overrun)
            {
                // The earlier task must come later, so that this one still comes in time after it.
                int by = t + Length(a, overrun.ToEdge) - overrun.Most!.Value - Time(overrun.From, overrun.FromEdge);
                return (overrun.From, _start[overrun.From] + by);
            }

            bool exact = _into[a].Exists(l => l.Most == l.Least && !l.Soft);
            if (Way(a, t, exact || t - first >= RightShift.Patience) is { } way)
            {
                Take(a, way.Mode, t, way.People);
                if (Followed(a))
                {
                    return null;
                }

                Give(a);
            }
        }

        return (-1, 0);
    }

    // What is tied to it step for step is placed with it, or it is not placed there.
    private bool Followed(int a)
    {
        List<int> placed = [];
        foreach (Lag lag in _tied[a].Where(l => _start[l.To] < 0 && _old.Starts[l.To] >= 0 && _problem.Activities[l.To].FixedStart is null))
        {
            int b = lag.To;
            int t = Time(a, lag.FromEdge) + lag.Least - Length(b, lag.ToEdge);
            bool due = t >= _least[b] && _into[b].TrueForAll(l => _start[l.From] >= 0 && t + Length(b, l.ToEdge) >= Time(l.From, l.FromEdge) + l.Least);
            if (due && Way(b, t, others: true) is { } way)
            {
                Take(b, way.Mode, t, way.People);
                placed.Add(b);
            }
            else if (!_into[b].Exists(l => _start[l.From] < 0))
            {
                placed.ForEach(Give);
                return false;
            }
        }

        return true;
    }

    private void Give(int a)
    {
        Mode mode = _problem.Activities[a].Modes[_mode[a]];
        int end = Math.Min(_start[a] + mode.Duration, _problem.Horizon);
        foreach (Demand d in mode.Demands)
        {
            for (int s = Math.Max(0, _start[a]); s < end; s++)
            {
                _free[d.Resource][s] += d.Amount;
            }
        }

        foreach (int r in mode.Choices.IsEmpty ? [] : _served[a])
        {
            for (int s = Math.Max(0, _start[a]); s < end; s++)
            {
                _free[r][s] += _problem.Resources[r].Capacity;
            }
        }

        if (mode.State is { } use)
        {
            _states[use.Kit].Remove((_start[a], _start[a] + mode.Duration, use.State));
        }

        (_start[a], _mode[a], _served[a]) = (-1, _old.Modes[a], [.. _old.Served[a]]);
    }

    private (int Mode, int[] People)? Way(int a, int t, bool others)
    {
        Activity activity = _problem.Activities[a];
        int kept = _mode[a];
        if (Fits(activity, kept, t) && People(activity.Modes[kept], t, _old.Served[a], others: false) is { } same)
        {
            return (kept, same);
        }

        if (!others)
        {
            return null;
        }

        foreach (int m in Enumerable.Range(0, activity.Modes.Length).OrderBy(m => m != kept))
        {
            if (Fits(activity, m, t) && People(activity.Modes[m], t, _old.Served[a], others: true) is { } people)
            {
                return (m, people);
            }
        }

        return null;
    }

    private bool Fits(Activity activity, int m, int t)
    {
        Mode mode = activity.Modes[m];
        int end = t + mode.Duration;
        if (end > _problem.Horizon || (!activity.Windows.IsEmpty && !activity.Windows.Any(w => w.Start <= t && end <= w.End)))
        {
            return false;
        }

        foreach (Demand d in mode.Demands)
        {
            for (int s = t; s < end; s++)
            {
                if (_free[d.Resource][s] < d.Amount)
                {
                    return false;
                }
            }
        }

        if (mode.State is { } use)
        {
            StateKit kit = _problem.StateKits[use.Kit];
            return (kit.Initial is not { } initial || t >= kit.ChangeTime(initial, use.State))
                && _states[use.Kit].TrueForAll(o => o.State == use.State || t >= o.End + kit.ChangeTime(o.State, use.State) || o.Start >= end + kit.ChangeTime(use.State, o.State));
        }

        return true;
    }

    private int[]? People(Mode mode, int t, ImmutableArray<int> before, bool others)
    {
        List<int> taken = [];
        foreach (Choice choice in mode.Choices)
        {
            int[] able = [.. choice.Resources
                .Where(r => !taken.Contains(r) && (others || before.Contains(r)) && Enumerable.Range(t, mode.Duration).All(s => _free[r][s] >= _problem.Resources[r].Capacity))
                .OrderBy(r => !before.Contains(r))
                .Take(choice.Count)];
            if (able.Length < choice.Count)
            {
                return null;
            }

            taken.AddRange(able);
        }

        return [.. taken];
    }

    private void Take(int a, int m, int t, IEnumerable<int> people)
    {
        Mode mode = _problem.Activities[a].Modes[m];
        (_start[a], _mode[a], _served[a]) = (t, m, [.. people.Order()]);
        int end = Math.Min(t + mode.Duration, _problem.Horizon);
        foreach (Demand d in mode.Demands)
        {
            for (int s = Math.Max(0, t); s < end; s++)
            {
                _free[d.Resource][s] -= d.Amount;
            }
        }

        foreach (int r in mode.Choices.IsEmpty ? [] : _served[a])
        {
            for (int s = Math.Max(0, t); s < end; s++)
            {
                _free[r][s] -= _problem.Resources[r].Capacity;
            }
        }

        if (mode.State is { } use)
        {
            _states[use.Kit].Add((t, t + mode.Duration, use.State));
        }
    }

    private int Length(int a, Edge edge) => edge == Edge.Start ? 0 : _problem.Activities[a].Modes[_mode[a]].Duration;

    private int Time(int a, Edge edge) => _start[a] + Length(a, edge);

    private static int[] Profile(Resource resource, int horizon)
    {
        int[] free = new int[horizon + 1];
        Array.Fill(free, resource.Capacity);
        foreach (Stretch closed in resource.Closed)
        {
            for (int s = Math.Max(0, closed.Start); s < Math.Min(horizon + 1, closed.End); s++)
            {
                free[s] = 0;
            }
        }

        return free;
    }
}
