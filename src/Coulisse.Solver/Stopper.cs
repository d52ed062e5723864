using Google.OrTools.Sat;

namespace Coulisse.Solver;

/// <summary>Stops a search when it is asked to, and again until the search hears: a stop said before the search has begun is not heard by the solver.</summary>
internal sealed class Stopper : IDisposable
{
    private readonly CancellationTokenRegistration _asked;
    private readonly CpSolver _solver;
    private readonly Lock _ending = new();
    private Timer? _again;
    private bool _over;

    public Stopper(CpSolver solver, CancellationToken cancel)
    {
        _solver = solver;
        _asked = cancel.Register(() =>
        {
            lock (_ending)
            {
                _again = _over ? null : new Timer(_ => Stop(), null, TimeSpan.Zero, TimeSpan.FromMilliseconds(20));
            }
        });
    }

    public void Dispose()
    {
        _asked.Dispose();
        lock (_ending)
        {
            _over = true;
            _again?.Dispose();
        }
    }

    private void Stop()
    {
        lock (_ending)
        {
            if (!_over)
            {
                _solver.StopSearch();
            }
        }
    }
}
