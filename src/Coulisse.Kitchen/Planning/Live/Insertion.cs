using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>The least repair of a schedule: everything that still can stays at its old step, the rest finds a place around it.</summary>
internal sealed class Insertion
{
    private readonly SchedulingProblem _problem;
    private readonly EngineSchedule _old;
    private readonly ListBoard _board;
    private readonly UnitPlacer _placer;
    private readonly ImmutableArray<ImmutableArray<int>> _units;

    /// <summary>A repair, ready to run.</summary>
    /// <param name="problem">The problem as it is now.</param>
    /// <param name="old">The old schedule.</param>
    /// <param name="lags">Lags between those present.</param>
    public Insertion(SchedulingProblem problem, EngineSchedule old, ImmutableArray<Lag> lags)
    {
        (_problem, _old, _board) = (problem, old, new ListBoard(problem, old));
        _placer = new UnitPlacer(problem, _board, lags);
        _units = LagUnits.Present(old, lags);
    }

    /// <summary>Runs it: what cannot stay goes to the next step that is free, else to any, else what comes after it is sent on. Null when something finds no place.</summary>
    public EngineSchedule? Run()
    {
        _board.TakeFixed();
        List<ImmutableArray<int>> waiting = [.. _units.Where(u => !u.All(_board.Placed)).OrderBy(u => u.Min(a => _old.Starts[a])).Where(u => !Stays(u))];
        HashSet<int> sent = [];
        while (waiting.Count > 0)
        {
            int next = waiting.FindIndex(_placer.Ready);
            if (next < 0)
            {
                return null;
            }

            ImmutableArray<int> unit = waiting[next];
            if (_placer.Place(unit, a => _old.Starts[a]) || _placer.Place(unit, _ => 0))
            {
                waiting.RemoveAt(next);
            }
            else if (sent.Add(unit[0]) && SentOn(unit) is { Count: > 0 } after)
            {
                waiting.AddRange(_units.Where(u => u.Any(after.Contains)));
            }
            else
            {
                return null;
            }
        }

        return _board.Schedule;
    }

    // All of it at its old steps, with others where its own people are not there; or none of it.
    private bool Stays(ImmutableArray<int> unit)
    {
        List<int> taken = [];
        foreach (int a in unit.Where(a => !_board.Placed(a)))
        {
            if (_board.Way(a, _old.Starts[a], others: true) is not { } way)
            {
                taken.ForEach(_board.Give);
                return false;
            }

            _board.Take(a, way.Mode, _old.Starts[a], way.People);
            taken.Add(a);
        }

        if (_placer.Keeps(unit))
        {
            return true;
        }

        taken.ForEach(_board.Give);
        return false;
    }

    // Takes off the board what comes after a unit, near and far, but not what is fixed.
    private HashSet<int> SentOn(ImmutableArray<int> unit)
    {
        HashSet<int> after = [];
        Queue<int> from = new(unit);
        while (from.TryDequeue(out int a))
        {
            foreach (int b in _placer.Of(a).Where(l => l.From == a && !unit.Contains(l.To)).SelectMany(l => _units.First(u => u.Contains(l.To))))
            {
                if (_problem.Activities[b].FixedStart is null && _board.Placed(b) && after.Add(b))
                {
                    from.Enqueue(b);
                }
            }
        }

        foreach (int b in after)
        {
            _board.Give(b);
        }

        return after;
    }
}
