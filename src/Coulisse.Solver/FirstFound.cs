using System.Diagnostics;
using Google.OrTools.Sat;

namespace Coulisse.Solver;

/// <summary>How the values of a solution are read, from a solver or from inside its search.</summary>
internal sealed record SolutionReader(Func<IntVar, long> Value, Func<ILiteral, bool> True);

/// <summary>Hears of the first solution; once there is one, the search of its level ends when its share of the time is used.</summary>
internal sealed class FirstFound : CpSolverSolutionCallback
{
    private readonly CpSolver _solver;
    private readonly double _share;
    private readonly Action<SolutionReader> _first;
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly Timer? _timer;
    private volatile bool _found;

    public FirstFound(CpSolver solver, double share, Action<SolutionReader> first)
    {
        (_solver, _share, _first) = (solver, share, first);
        if (double.IsFinite(share))
        {
            _timer = new Timer(_ => StopWhenFound(), null, TimeSpan.FromSeconds(share), Timeout.InfiniteTimeSpan);
        }
    }

    public override void OnSolutionCallback()
    {
        if (!_found)
        {
            _found = true;
            _first(new SolutionReader(v => Value(v), l => BooleanValue(l)));
        }

        StopWhenFound();
    }

    protected override void Dispose(bool disposing)
    {
        _timer?.Dispose();
        base.Dispose(disposing);
    }

    private void StopWhenFound()
    {
        if (_found && _clock.Elapsed.TotalSeconds >= _share)
        {
            _solver.StopSearch();
        }
    }
}
