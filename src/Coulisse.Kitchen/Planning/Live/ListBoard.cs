using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>The board of a list schedule: what is placed, and what people and kit are left free at every step.</summary>
internal sealed class ListBoard
{
    private readonly SchedulingProblem _problem;
    private readonly EngineSchedule _old;
    private readonly int[][] _free;
    private readonly List<(int Start, int End, int State)>[] _states;
    private readonly int[] _start;
    private readonly int[] _mode;
    private readonly int[][] _served;

    public ListBoard(SchedulingProblem problem, EngineSchedule old)
    {
        (_problem, _old) = (problem, old);
        (_start, _mode, _served) = ([.. Enumerable.Repeat(-1, problem.Activities.Length)], [.. old.Modes], [.. old.Served.Select(s => s.ToArray())]);
        _states = [.. problem.StateKits.Select(_ => new List<(int, int, int)>())];
        _free = [.. problem.Resources.Select(r => Profile(r, problem.Horizon))];
    }

    public EngineSchedule Schedule => new([.. _start], [.. _mode], [.. _served.Select(s => s.ToImmutableArray())], []);

    public bool Placed(int a) => _start[a] >= 0;

    public int Start(int a) => _start[a];

    public int Length(int a) => _problem.Activities[a].Modes[_mode[a]].Duration;

    public int Time(int a, Edge edge) => edge == Edge.Start ? _start[a] : _start[a] + Length(a);

    /// <summary>A way to do an activity at a step: the old way where it can be, else another when that is asked for; null when there is none.</summary>
    public (int Mode, int[] People)? Way(int a, int t, bool others)
    {
        Activity activity = _problem.Activities[a];
        int kept = _old.Modes[a];
        if (Fits(activity, kept, t) && People(activity.Modes[kept], t, _old.Served[a], others: false) is { } same)
        {
            return (kept, same);
        }

        for (int i = 0; others && i < activity.Modes.Length; i++)
        {
            // The old way first, with whoever is there.
            int m = i == 0 ? kept : i <= kept ? i - 1 : i;
            if (Fits(activity, m, t) && People(activity.Modes[m], t, _old.Served[a], others: true) is { } people)
            {
                return (m, people);
            }
        }

        return null;
    }

    public void Take(int a, int m, int t, IEnumerable<int> people)
    {
        Mode mode = _problem.Activities[a].Modes[m];
        (_start[a], _mode[a], _served[a]) = (t, m, [.. people.Order()]);
        Hold(a, -1);
        if (mode.State is { } use)
        {
            _states[use.Kit].Add((t, t + mode.Duration, use.State));
        }
    }

    /// <summary>Puts what is there and fixed to its step, by its old way and people.</summary>
    public void TakeFixed()
    {
        for (int a = 0; a < _start.Length; a++)
        {
            if (_old.Starts[a] >= 0 && _problem.Activities[a].FixedStart is { } at)
            {
                Take(a, _old.Modes[a], at, _old.Served[a]);
            }
        }
    }

    public void Give(int a)
    {
        Mode mode = _problem.Activities[a].Modes[_mode[a]];
        Hold(a, 1);
        if (mode.State is { } use)
        {
            _states[use.Kit].Remove((_start[a], _start[a] + mode.Duration, use.State));
        }

        (_start[a], _mode[a], _served[a]) = (-1, _old.Modes[a], [.. _old.Served[a]]);
    }

    private void Hold(int a, int sign)
    {
        Mode mode = _problem.Activities[a].Modes[_mode[a]];
        (int from, int to) = (Math.Max(0, _start[a]), Math.Min(_start[a] + mode.Duration, _problem.Horizon));
        foreach (Demand d in mode.Demands)
        {
            Add(d.Resource, sign * d.Amount);
        }

        foreach (int r in mode.Choices.IsEmpty ? [] : _served[a])
        {
            Add(r, sign * _problem.Resources[r].Capacity);
        }

        void Add(int r, int amount)
        {
            for (int s = from; s < to; s++)
            {
                _free[r][s] += amount;
            }
        }
    }

    private bool Fits(Activity activity, int m, int t)
    {
        Mode mode = activity.Modes[m];
        int end = t + mode.Duration;
        if (end > _problem.Horizon || !InWindow(activity, t, end))
        {
            return false;
        }

        foreach (Demand d in mode.Demands)
        {
            if (!Free(d.Resource, d.Amount, t, end))
            {
                return false;
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

    private static bool InWindow(Activity activity, int t, int end)
    {
        foreach (Stretch w in activity.Windows)
        {
            if (w.Start <= t && end <= w.End)
            {
                return true;
            }
        }

        return activity.Windows.IsEmpty;
    }

    private bool Free(int r, int amount, int t, int end)
    {
        for (int s = t; s < end; s++)
        {
            if (_free[r][s] < amount)
            {
                return false;
            }
        }

        return true;
    }

    private int[]? People(Mode mode, int t, ImmutableArray<int> before, bool others)
    {
        List<int> taken = [];
        foreach (Choice choice in mode.Choices)
        {
            int missing = choice.Count;
            foreach (bool known in (ReadOnlySpan<bool>)[true, false])
            {
                for (int i = 0; i < choice.Resources.Length && missing > 0 && (known || others); i++)
                {
                    int r = choice.Resources[i];
                    if (before.Contains(r) == known && !taken.Contains(r) && Free(r, _problem.Resources[r].Capacity, t, t + mode.Duration))
                    {
                        taken.Add(r);
                        missing--;
                    }
                }
            }

            if (missing > 0)
            {
                return null;
            }
        }

        return [.. taken];
    }

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
