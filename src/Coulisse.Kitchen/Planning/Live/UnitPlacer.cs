using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Puts one unit on the board of a list schedule, within what its lags to everything placed leave it.</summary>
/// <remarks>A unit is what longest waits tie together (<see cref="LagUnits"/>): its first activity is tried step by step, the rest within what the lags then leave them, back and forth for a while.</remarks>
internal sealed class UnitPlacer
{
    /// <summary>Places tried for the rest of a unit before its first activity moves on a step.</summary>
    private const int Patient = 200;

    /// <summary>Places tried for a unit altogether.</summary>
    private const int Budget = 5_000;

    private readonly SchedulingProblem _problem;
    private readonly ListBoard _board;
    private readonly StepWindows _windows;
    private readonly LagBounds _bounds;
    private readonly List<Lag>[] _of;
    private readonly int[] _low;
    private readonly int[] _high;
    private Lag[] _binding = [];
    private int _tries;
    private int _left;

    /// <summary>A placer over a board.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="board">The board.</param>
    /// <param name="lags">Lags between those present.</param>
    public UnitPlacer(SchedulingProblem problem, ListBoard board, ImmutableArray<Lag> lags)
    {
        int n = problem.Activities.Length;
        (_problem, _board, _windows) = (problem, board, new StepWindows(problem));
        (_low, _high) = (new int[n], new int[n]);
        _bounds = new LagBounds(_windows, board.Placed, a => board.Placed(a) ? (board.Length(a), board.Length(a)) : (_windows.Shortest(a), _windows.Longest(a)));
        _of = [.. Enumerable.Range(0, n).Select(_ => new List<Lag>())];
        foreach (Lag lag in lags)
        {
            _of[lag.From].Add(lag);
            _of[lag.To].Add(lag);
        }
    }

    /// <summary>Longest waits that may be overrun are kept like the others.</summary>
    public bool Firm { get; set; }

    /// <summary>As late as it may, instead of as soon as it may.</summary>
    public bool Late { get; init; }

    /// <summary>Lags that touch an activity.</summary>
    /// <param name="a">Activity.</param>
    public IReadOnlyList<Lag> Of(int a) => _of[a];

    /// <summary>True when everything that comes before a unit is placed.</summary>
    /// <param name="unit">The unit.</param>
    public bool Ready(ImmutableArray<int> unit) => unit.All(a => _of[a].TrueForAll(l => l.To != a || unit.Contains(l.From) || _board.Placed(l.From)));

    /// <summary>True when all lags between a unit and what is placed are kept.</summary>
    /// <param name="unit">A unit that is placed.</param>
    public bool Keeps(ImmutableArray<int> unit) => unit.All(a => _of[a].TrueForAll(l => !_board.Placed(l.From) || !_board.Placed(l.To) || Kept(l)));

    /// <summary>Places what is open of a unit; false, and nothing placed, when it finds no place.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="least">Step before which an activity does not start.</param>
    public bool Place(ImmutableArray<int> unit, Func<int, int> least)
    {
        int[] open = [.. unit.Where(a => !_board.Placed(a))];
        if (open.Length == 0)
        {
            return true;
        }

        _binding = [.. open.SelectMany(a => _of[a]).Distinct().Where(l => (_board.Placed(l.From) || open.Contains(l.From)) && (_board.Placed(l.To) || open.Contains(l.To)))];
        _left = Budget;
        if (!Narrow(open, least))
        {
            return false;
        }

        // The one that comes first leads; the one that comes last when all goes as late as it may.
        int lead = Late ? open.MaxBy(a => ((long)_high[a] << 32) + _low[a]) : open.MinBy(a => ((long)_low[a] << 32) + _high[a]);
        (int first, int last) = (_low[lead], _high[lead]);
        int[] rest = [.. open.Where(a => a != lead)];
        for (int i = 0; i <= last - first && _left > 0; i++)
        {
            int t = Late ? last - i : first + i;
            foreach (bool others in (ReadOnlySpan<bool>)[false, true])
            {
                _tries = Patient;
                if ((!others || first == last || i >= RightShift.Patience) && _board.Way(lead, t, others) is { } way)
                {
                    _board.Take(lead, way.Mode, t, way.People);
                    if (Rest(rest, least, others))
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
    private bool Rest(int[] open, Func<int, int> least, bool others)
    {
        if (open.Length == 0)
        {
            return Array.TrueForAll(_binding, Kept);
        }

        if (!Narrow(open, least))
        {
            return false;
        }

        int next = open.MinBy(a => ((long)(_high[a] - _low[a]) << 32) + (Late ? _problem.Horizon - _low[a] : _low[a]));
        (int first, int last) = (_low[next], _high[next]);
        int[] rest = [.. open.Where(a => a != next)];
        for (int i = 0; i <= last - first && _tries > 0 && _left > 0; i++)
        {
            int t = Late ? last - i : first + i;
            if (_board.Way(next, t, others || first == last || i >= RightShift.Patience) is { } way)
            {
                (_tries, _left) = (_tries - 1, _left - 1);
                _board.Take(next, way.Mode, t, way.People);
                if (Rest(rest, least, others))
                {
                    return true;
                }

                _board.Give(next);
            }
        }

        return false;
    }

    // First and last starts of what is open, by windows and by lags to what stands and among itself; false when somebody has none.
    private bool Narrow(int[] open, Func<int, int> least)
    {
        foreach (int a in open)
        {
            (_low[a], _high[a]) = (_windows.Later(a, Math.Max(0, least(a))), _windows.Sooner(a, _problem.Horizon));
        }

        foreach (Lag lag in _binding)
        {
            Stand(lag.From);
            Stand(lag.To);
        }

        return _bounds.Narrow(_binding, Firm, _low, _high) && Array.TrueForAll(open, a => _low[a] <= _high[a]);
    }

    private void Stand(int a)
    {
        if (_board.Placed(a))
        {
            _low[a] = _high[a] = _board.Start(a);
        }
    }

    private int? Most(Lag lag) => lag.Soft && !Firm ? null : lag.Most;

    private bool Kept(Lag lag)
    {
        int between = _board.Time(lag.To, lag.ToEdge) - _board.Time(lag.From, lag.FromEdge);
        return between >= lag.Least && (Most(lag) is not { } most || between <= most);
    }
}
