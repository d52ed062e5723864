using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>One pass of a serial list schedule: one unit after the other in the order of the old starts, each at the first step where everything it needs is there.</summary>
/// <remarks>A unit is what longest waits tie together (<see cref="LagUnits"/>): its first activity is tried step by step, the rest within what the lags then leave them, back and forth for a while.</remarks>
internal sealed class ListSchedule
{
    /// <summary>Places tried for the rest of a unit before its first activity moves on a step.</summary>
    private const int Patient = 200;

    /// <summary>Places tried for a unit altogether.</summary>
    private const int Budget = 5_000;

    private readonly SchedulingProblem _problem;
    private readonly int[] _least;
    private readonly ListBoard _board;
    private readonly List<Lag>[] _of;
    private readonly ImmutableArray<ImmutableArray<int>> _units;
    private readonly int[] _part;
    private readonly StepWindows _windows;
    private readonly int[] _low;
    private readonly int[] _high;
    private Lag[] _binding = [];
    private bool _firm;
    private int _tries;
    private int _left;

    /// <summary>A pass, ready to run.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="old">Starts (-1 for absent), ways and people to keep to where it can be.</param>
    /// <param name="lags">Lags between those present.</param>
    /// <param name="least">No start is sooner.</param>
    /// <param name="firm">Longest waits that may be overrun are kept where they can be.</param>
    public ListSchedule(SchedulingProblem problem, EngineSchedule old, ImmutableArray<Lag> lags, int[] least, bool firm)
    {
        (_problem, _least, _firm) = (problem, least, firm);
        (_board, _windows) = (new ListBoard(problem, old), new StepWindows(problem));
        int n = problem.Activities.Length;
        (_low, _high) = (new int[n], new int[n]);
        _units = [.. LagUnits.Of(n, lags, firm).Select(u => u.Where(a => old.Starts[a] >= 0).ToImmutableArray()).Where(u => !u.IsEmpty)];
        _part = LagUnits.Numbers(n, lags);
        _of = [.. Enumerable.Range(0, n).Select(_ => new List<Lag>())];
        foreach (Lag lag in lags)
        {
            _of[lag.From].Add(lag);
            _of[lag.To].Add(lag);
        }
    }

    /// <summary>Runs the pass; null when some unit finds no place.</summary>
    /// <param name="inOrder">Units by their position instead of their old starts.</param>
    public EngineSchedule? Run(bool inOrder)
    {
        // What is fixed stands first. A wash is done as soon as it can be: what follows waits for it.
        HashSet<int> washes = [.. _problem.Cleans.SelectMany(c => c.Cleanings)];
        foreach (int a in _units.SelectMany(u => u).Where(a => _problem.Activities[a].FixedStart is not null).Order())
        {
            _board.TakeFixed(a, _problem.Activities[a].FixedStart!.Value);
        }

        IEnumerable<ImmutableArray<int>> order = _units
            .OrderBy(u => inOrder ? u.Any(washes.Contains) ? 0 : 1 : u.Min(a => _least[a])).ThenBy(u => u.Min());
        return InTurn(order, Place) ? _board.Schedule : null;
    }

    // One after the other, each when everything before it is placed.
    private bool InTurn(IEnumerable<ImmutableArray<int>> order, Func<ImmutableArray<int>, bool> place)
    {
        List<ImmutableArray<int>> waiting = [.. order];
        while (waiting.Count > 0)
        {
            int next = waiting.FindIndex(u => u.All(a => _of[a].TrueForAll(l => l.To != a || u.Contains(l.From) || _board.Placed(l.From))));
            if (next < 0 || !place(waiting[next]))
            {
                return false;
            }

            waiting.RemoveAt(next);
        }

        return true;
    }

    // With all its waits kept; where that has no place, its hard parts one after the other.
    private bool Place(ImmutableArray<int> unit)
    {
        if (!_firm)
        {
            return Laid(unit);
        }

        bool kept = Laid(unit);
        _firm = false;
        kept |= !kept && InTurn(unit.GroupBy(a => _part[a]).Select(g => g.ToImmutableArray()).OrderBy(p => p.Min(a => _least[a])), Laid);
        _firm = true;
        return kept;
    }

    private bool Laid(ImmutableArray<int> unit)
    {
        int[] open = [.. unit.Where(a => !_board.Placed(a))];
        if (open.Length == 0)
        {
            return true;
        }

        _binding = [.. open.SelectMany(a => _of[a]).Distinct().Where(l => (_board.Placed(l.From) || open.Contains(l.From)) && (_board.Placed(l.To) || open.Contains(l.To)))];
        _left = Budget;
        if (!Narrow(open))
        {
            return false;
        }

        // The one that comes first leads.
        int lead = open.MinBy(a => ((long)_low[a] << 32) + _high[a]);
        (int first, int last) = (_low[lead], _high[lead]);
        int[] rest = [.. open.Where(a => a != lead)];
        for (int t = first; t <= last && _left > 0; t++)
        {
            foreach (bool others in (ReadOnlySpan<bool>)[false, true])
            {
                _tries = Patient;
                if ((!others || first == last || t - first >= RightShift.Patience) && _board.Way(lead, t, others) is { } way)
                {
                    _board.Take(lead, way.Mode, t, way.People);
                    if (Rest(rest, others))
                    {
                        return true;
                    }

                    _board.Give(lead);
                }
            }
        }

        return false;
    }

    // The one with the least choice first, at each step it may have.
    private bool Rest(int[] open, bool others)
    {
        if (open.Length == 0)
        {
            return Array.TrueForAll(_binding, Kept);
        }

        if (!Narrow(open))
        {
            return false;
        }

        int next = open.MinBy(a => ((long)(_high[a] - _low[a]) << 32) + _low[a]);
        (int first, int last) = (_low[next], _high[next]);
        int[] rest = [.. open.Where(a => a != next)];
        for (int t = first; t <= last && _tries > 0 && _left > 0; t++)
        {
            if (_board.Way(next, t, others || first == last || t - first >= RightShift.Patience) is { } way)
            {
                (_tries, _left) = (_tries - 1, _left - 1);
                _board.Take(next, way.Mode, t, way.People);
                if (Rest(rest, others))
                {
                    return true;
                }

                _board.Give(next);
            }
        }

        return false;
    }

    // First and last starts of what is open, by windows and by lags to what stands and among itself; false when somebody has none.
    private bool Narrow(int[] open)
    {
        foreach (int a in open)
        {
            (_low[a], _high[a]) = (_windows.Later(a, Math.Max(0, _least[a])), _windows.Sooner(a, _problem.Horizon));
        }

        bool moved = true;
        for (int round = 0; moved && round <= open.Length + 1; round++)
        {
            moved = false;
            foreach (Lag lag in _binding)
            {
                // Of lengths not yet known the one that binds least.
                (int fromShort, int fromLong) = lag.FromEdge == Edge.End ? Lengths(lag.From) : default;
                (int toShort, int toLong) = lag.ToEdge == Edge.End ? Lengths(lag.To) : default;
                moved |= Raise(lag.To, Low(lag.From) + fromShort + lag.Least - toLong) | Lower(lag.From, High(lag.To) + toLong - lag.Least - fromShort);
                if (Most(lag) is { } most)
                {
                    moved |= Raise(lag.From, Low(lag.To) + toShort - most - fromLong) | Lower(lag.To, High(lag.From) + fromLong + most - toShort);
                }
            }
        }

        return Array.TrueForAll(open, a => _low[a] <= _high[a]);
    }

    private int Low(int a) => _board.Placed(a) ? _board.Start(a) : _low[a];

    private int High(int a) => _board.Placed(a) ? _board.Start(a) : _high[a];

    private (int Short, int Long) Lengths(int a) => _board.Placed(a) ? (_board.Length(a), _board.Length(a)) : (_windows.Shortest(a), _windows.Longest(a));

    private int? Most(Lag lag) => lag.Soft && !_firm ? null : lag.Most;

    private bool Raise(int a, int to)
    {
        if (to <= _low[a] || _board.Placed(a))
        {
            return false;
        }

        _low[a] = _windows.Later(a, to);
        return _low[a] <= _high[a];
    }

    private bool Lower(int a, int to)
    {
        if (to >= _high[a] || _board.Placed(a))
        {
            return false;
        }

        _high[a] = _windows.Sooner(a, to);
        return _low[a] <= _high[a];
    }

    private bool Kept(Lag lag)
    {
        int between = _board.Time(lag.To, lag.ToEdge) - _board.Time(lag.From, lag.FromEdge);
        return between >= lag.Least && (Most(lag) is not { } most || between <= most);
    }
}
