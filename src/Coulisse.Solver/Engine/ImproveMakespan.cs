using System.Collections.Immutable;
using System.Diagnostics;
using Coulisse.Kitchen.Planning.Model;
using Activity = Coulisse.Kitchen.Planning.Model.Activity;

namespace Coulisse.Solver.Engine;

/// <summary>Shortest schedules of plain problems: arithmetic first, then lists, then CP-SAT in the room that is left, turn by turn.</summary>
/// <remarks>Anything beyond plain lags, resources and one mode is not touched and goes to the engine as it is.</remarks>
internal sealed class ImproveMakespan
{
    /// <summary>From this size on a search alone no longer settles most problems, and lists are worth more of the time (assumed, to be measured: decision 0182).</summary>
    private const int Large = 45;

    private readonly SchedulingProblem _problem;
    private readonly ImproveNetwork _net;
    private readonly Effort _effort;
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly int? _sink;
    private readonly Action<EngineSchedule>? _better;
    private readonly CancellationToken _cancel;
    private EngineSchedule? _best;
    private int _bound;

    private ImproveMakespan(SchedulingProblem problem, ImproveNetwork net, Effort effort, Action<EngineSchedule>? better, CancellationToken cancel)
    {
        (_problem, _net, _effort, _better, _cancel) = (problem, net, effort, better, cancel);
        _sink = problem.Goals is [{ Terms: [{ Kind: TermKind.Start } term] }] ? term.Index : null;
    }

    // A search that must give the same answer again looks at no clock.
    private double Left => _effort.Repeatable ? _effort.Seconds : _effort.Seconds - _clock.Elapsed.TotalSeconds;

    /// <summary>An outcome, or null when the problem is of another kind.</summary>
    /// <param name="search">The engine itself, without this improvement.</param>
    public static EngineOutcome? Solve(SchedulingProblem problem, Effort effort, Action<EngineSchedule>? better, Func<SchedulingProblem, Effort, EngineOutcome> search, CancellationToken cancel)
    {
        bool shortest = problem.Goals.IsEmpty || problem.Goals is [{ Offset: 0, Terms: [{ Kind: TermKind.Makespan or TermKind.Start, Weight: 1 }] }];
        return shortest && effort is { FirstOnly: false, Parameters: "" } && ImproveNetwork.Of(problem) is { } net
            ? new ImproveMakespan(problem, net, effort, better, cancel).Run(search)
            : null;
    }

    private EngineOutcome Run(Func<SchedulingProblem, Effort, EngineOutcome> search)
    {
        if (_net.Contradicts)
        {
            return new EngineInfeasible("The lags contradict each other.") { Seconds = _clock.Elapsed.TotalSeconds };
        }

        _bound = Bound();
        bool listed = Lists(_effort.Seconds * 0.03, 1);
        if (!listed || _net.Count < Large)
        {
            return Search(search, Left) ?? Done();
        }

        // Large: a look, better lists, and what is left to the search from the better start.
        return Search(search, _effort.Seconds * 0.3) ?? Lists2(search);
    }

    private EngineOutcome Lists2(Func<SchedulingProblem, Effort, EngineOutcome> search)
    {
        if (!Proven)
        {
            Lists(_effort.Seconds * 0.37, _effort.Workers);
        }

        return (Proven ? null : Search(search, Left)) ?? Done();
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
    private EngineOutcome? Search(Func<SchedulingProblem, Effort, EngineOutcome> search, double seconds)
    {
        if (Proven)
        {
            return null;
        }

        EngineOutcome outcome = search(Tight(), _effort with { Seconds = Math.Max(0.1, seconds), Parameters = "subsolvers:\"no_lp\"" });
        switch (outcome)
        {
            case EngineSchedule s:
                _bound = (int)Math.Max(_bound, Math.Max(int.MinValue, s.Levels[0].Bound));
                Keep(s.Starts, s.Modes);
                return null;
            case EngineInfeasible when _best is null:
                return outcome with { Seconds = _clock.Elapsed.TotalSeconds };
            case EngineUnknown { Bound: { } b }:
                _bound = (int)Math.Max(_bound, b);
                return null;
            default:
                return null;
        }
    }

    private EngineOutcome Done() => _best is null ? new EngineUnknown(_bound) { Seconds = _clock.Elapsed.TotalSeconds } : Finished(_best);

    private EngineSchedule Finished(EngineSchedule best)
        => best with { Levels = [best.Levels[0] with { Bound = Math.Min(_bound, best.Levels[0].Value) }], Seconds = _clock.Elapsed.TotalSeconds };

    /// <summary>The same problem with every window as narrow as paths and the best schedule make it, orders that are already forced, and a hint.</summary>
    private SchedulingProblem Tight()
    {
        int n = _net.Count;
        int end = _best is { } b ? (int)b.Levels[0].Value : _problem.Horizon;
        int source = Array.FindIndex([.. Enumerable.Range(0, n)], i => _problem.Activities[i].FixedStart == 0);
        Activity[] activities = new Activity[n];
        for (int a = 0; a < n; a++)
        {
            int head = Math.Max(0, source >= 0 ? _net.Path[source][a] : Enumerable.Range(0, n).Max(i => _net.Path[i][a]));
            int tail = _sink is { } sink
                ? (_net.Path[a][sink] == ImproveNetwork.None ? int.MinValue : _net.Path[a][sink])
                : Enumerable.Range(0, n).Max(j => _net.Path[a][j] == ImproveNetwork.None ? 0 : _net.Path[a][j] + _net.Duration[j]);
            int latest = _best is null || tail == int.MinValue ? _problem.Horizon - _net.Duration[a] : Math.Min(_problem.Horizon - _net.Duration[a], end - tail);
            Activity old = _problem.Activities[a];
            activities[a] = old.FixedStart is null ? old with { Windows = [new Stretch(head, latest + _net.Duration[a])], HintStart = _best?.Starts[a] } : old;
        }

        return _problem with { Horizon = _sink is null && _best is not null ? end : _problem.Horizon, Activities = [.. activities], Lags = [.. _problem.Lags, .. Forced()] };
    }

    /// <summary>Orders that follow from pairs that cannot run together.</summary>
    private IEnumerable<Lag> Forced()
    {
        HashSet<(int, int)> said = [.. _problem.Lags.Select(l => (l.From, l.To))];
        for (int i = 0; i < _net.Count; i++)
        {
            for (int j = 0; j < _net.Count; j++)
            {
                if (i != j && _net.Path[i][j] == _net.Duration[i] && _net.Apart(i, j) && said.Add((i, j)))
                {
                    yield return Lag.StartToStart(i, j, _net.Duration[i]);
                }
            }
        }
    }
}
