using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>One pass of a serial list schedule: one unit after the other in the order of the old starts, each at the first step where everything it needs is there.</summary>
internal sealed class ListSchedule
{
    private readonly SchedulingProblem _problem;
    private readonly EngineSchedule _old;
    private readonly RightShift.Pass _pass;
    private readonly ListBoard _board;
    private readonly UnitPlacer _placer;
    private readonly ImmutableArray<ImmutableArray<int>> _units;
    private readonly int[] _part;

    /// <summary>A pass, ready to run.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="old">Starts (-1 for absent) before which nothing starts; ways and people to keep to where it can be.</param>
    /// <param name="lags">Lags between those present.</param>
    /// <param name="pass">How it goes about it.</param>
    public ListSchedule(SchedulingProblem problem, EngineSchedule old, ImmutableArray<Lag> lags, RightShift.Pass pass)
    {
        (_problem, _old, _pass, _board) = (problem, old, pass, new ListBoard(problem, old));
        _placer = new UnitPlacer(problem, _board, lags) { Firm = pass.Firm };
        _units = LagUnits.Present(old, lags, pass.Firm);
        _part = pass.Firm ? LagUnits.Numbers(problem.Activities.Length, lags) : [];
    }

    /// <summary>Runs the pass; null when some unit finds no place.</summary>
    public EngineSchedule? Run()
    {
        // What is fixed stands first. A wash is done as soon as it can be: what follows waits for it.
        HashSet<int> washes = [.. _problem.Cleans.SelectMany(c => c.Cleanings)];
        _board.TakeFixed();
        IEnumerable<ImmutableArray<int>> order = _units
            .OrderBy(u => _pass.InOrder ? u.Any(washes.Contains) ? 0 : 1 : u.Min(a => _old.Starts[a])).ThenBy(u => u.Min());
        return InTurn(order, Place) ? _board.Schedule : null;
    }

    // One after the other, each when everything before it is placed.
    private bool InTurn(IEnumerable<ImmutableArray<int>> order, Func<ImmutableArray<int>, bool> place)
    {
        List<ImmutableArray<int>> waiting = [.. order];
        while (waiting.Count > 0)
        {
            int next = waiting.FindIndex(_placer.Ready);
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
        if (Laid(unit) || !_pass.Firm)
        {
            return unit.All(_board.Placed);
        }

        _placer.Firm = false;
        bool laid = InTurn(unit.GroupBy(a => _part[a]).Select(g => g.ToImmutableArray()).OrderBy(p => p.Min(a => _old.Starts[a])), Laid);
        _placer.Firm = true;
        return laid;
    }

    private bool Laid(ImmutableArray<int> unit) => _placer.Place(unit, a => _old.Starts[a]);
}
