using System.Collections.Immutable;
using System.Diagnostics;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Engine;

/// <summary>Shortest schedules of plain problems: arithmetic first, then lists, then CP-SAT in the room that is left, from both ends at once.</summary>
/// <remarks>Anything beyond plain lags, resources and one mode is not touched and goes to the engine as it is.</remarks>
internal sealed class ImproveMakespan
{
    /// <summary>From this size on a search does not find the best by itself, and lists are worth some of the time (measured: decision 0183).</summary>
    private const int Large = 45;

    /// <summary>From this size on hardly anything is proven that is not proven at once, and lists are worth most of the time (measured: decision 0183).</summary>
    private const int Vast = 90;

    private readonly SchedulingProblem _problem;
    private readonly ImproveNetwork _net;
    private readonly Effort _effort;
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly int? _sink;
    private readonly Action<EngineSchedule>? _better;
    private readonly CancellationToken _cancel;
    private readonly ImproveWindows _windows;
    private EngineSchedule? _best;
    private int _bound;

    private ImproveMakespan(SchedulingProblem problem, ImproveNetwork net, Effort effort, Action<EngineSchedule>? better, CancellationToken cancel)
    {
        (_problem, _net, _effort, _better, _cancel) = (problem, net, effort, better, cancel);
        _sink = problem.Goals is [{ Terms: [{ Kind: TermKind.Start } term] }] ? term.Index : null;
        _windows = new ImproveWindows(problem, net, _sink);
    }

    // A search that must give the same answer again looks at no clock.
    private double Left => _effort.Repeatable ? _effort.Seconds : _effort.Seconds - _clock.Elapsed.TotalSeconds;

    /// <summary>An outcome, or null when the problem is of another kind.</summary>
    /// <param name="search">The engine itself, without this improvement.</param>
    public static EngineOutcome? Solve(SchedulingProblem problem, Effort effort, Action<EngineSchedule>? better, Searcher search, CancellationToken cancel)
    {
        bool shortest = problem.Goals.IsEmpty || problem.Goals is [{ Offset: 0, Terms: [{ Kind: TermKind.Makespan or TermKind.Start, Weight: 1 }] }];
        return shortest && effort is { FirstOnly: false, Parameters: "" } && ImproveNetwork.Of(problem) is { } net
            ? new ImproveMakespan(problem, net, effort, better, cancel).Run(search)
            : null;
    }

    private EngineOutcome Run(Searcher search)
    {
        if (_net.Contradicts)
        {
            return new EngineInfeasible("The lags contradict each other.") { Seconds = _clock.Elapsed.TotalSeconds };
        }

        _bound = Bound();
        if (!Lists(_effort.Seconds * 0.03, 1) || _net.Count < Large)
        {
            return Search(search, Left) ?? Done();
        }

        if (_net.Count < Vast)
        {
            // Middling: lists come near the best, and the proof is the work.
            Better(_effort.Seconds * 0.12);
            return Search(search, Left) ?? Done();
        }

        // Vast: a look that settles the easy ones, better lists, and neighbourhoods of the best for what is left.
        EngineInfeasible? none = Search(search, _effort.Seconds * 0.15);
        Better(_effort.Seconds * 0.4);
        return none ?? Search(search, Left, bothEnds: false) ?? Done();
    }

    private void Better(double seconds)
    {
        if (!Proven)
        {
            Lists(seconds, _effort.Workers);
        }
    }

    private bool Proven => _best is { } b && b.Levels[0].Value <= _bound;

    private int Bound()
    {
        if (_sink is not { } sink)
        {
            return _net.LowerBound();
        }

        bool last = Enumerable.Range(0, _net.Count).All(i => i == sink || (_net.Path[i][sink] != ImproveNetwork.None && _net.Path[i][sink] >= _net.Duration[i]));
        return last ? _net.LowerBound() : Enumerable.Range(0, _net.Count).Max(i => _net.Path[i][sink]);
    }

    /// <summary>Lists for a while; false when the problem is not one for lists.</summary>
    private bool Lists(double seconds, int threads)
    {
        double until = _clock.Elapsed.TotalSeconds + Math.Min(seconds, Left);
        int[]?[] found = new int[]?[threads];
        // A search that must give the same answer again counts its schedules instead of the seconds.
        Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, k =>
        {
            int rounds = (int)(seconds * 4000);
            found[k] = ImproveByLists.Best(_net, _effort.Seed + k, _bound, () => !_cancel.IsCancellationRequested && (_effort.Repeatable ? rounds-- > 0 : _clock.Elapsed.TotalSeconds < until));
        });
        foreach (int[]? starts in found)
        {
            if (starts is null)
            {
                return false;
            }

            Keep([.. starts], _best?.Modes ?? [.. starts.Select(_ => 0)]);
        }

        return true;
    }

    private void Keep(ImmutableArray<int> starts, ImmutableArray<int> modes)
    {
        long value = _sink is { } sink ? starts[sink] : Enumerable.Range(0, starts.Length).Max(a => (long)starts[a] + _net.Duration[a]);
        if (_best is null || value < _best.Levels[0].Value)
        {
            string name = _problem.Goals.IsEmpty ? Goal.Makespan.Name : _problem.Goals[0].Name;
            _best = new EngineSchedule(starts, modes, [.. starts.Select(_ => ImmutableArray<int>.Empty)], [new LevelResult(name, value, _bound)]);
            _better?.Invoke(_best);
        }
    }

    /// <summary>CP-SAT in the windows that the best schedule and the bound leave; an outcome only when there is no schedule at all.</summary>
    private EngineInfeasible? Search(Searcher search, double seconds, bool bothEnds = true)
    {
        if (Proven)
        {
            return null;
        }

        Effort effort = _effort with { Seconds = Math.Max(0.1, seconds), Parameters = "subsolvers:\"no_lp\"" };
        (EngineOutcome forward, EngineOutcome? backward) = BothEnds.Run(search, _windows.Forward(_best), bothEnds ? _windows.Backward(_best) : null, effort, _cancel);
        bool none = _best is null && (forward is EngineInfeasible || backward is EngineInfeasible);
        Heard(forward, back: false);
        Heard(backward, back: true);
        return none ? new EngineInfeasible("Proven by search.") { Seconds = _clock.Elapsed.TotalSeconds } : null;
    }

    private void Heard(EngineOutcome? outcome, bool back)
    {
        switch (outcome)
        {
            case EngineSchedule s:
                _bound = (int)Math.Max(_bound, Math.Max(int.MinValue, s.Levels[0].Bound));
                Keep(back ? _windows.Turned(s) : s.Starts, s.Modes);
                break;
            case EngineUnknown { Bound: { } b }:
                _bound = (int)Math.Max(_bound, b);
                break;
            default:
                break;
        }
    }

    private EngineOutcome Done() => _best is null ? new EngineUnknown(_bound) { Seconds = _clock.Elapsed.TotalSeconds } : Finished(_best);

    private EngineSchedule Finished(EngineSchedule best)
        => best with { Levels = [best.Levels[0] with { Bound = Math.Min(_bound, best.Levels[0].Value) }], Seconds = _clock.Elapsed.TotalSeconds };
}
