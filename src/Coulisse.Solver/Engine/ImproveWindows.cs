using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Engine;

/// <summary>A plain problem with every window as narrow as paths and the best schedule make it, orders that are already forced, and a hint: from the first step on, or from the last step back.</summary>
internal sealed class ImproveWindows
{
    private readonly SchedulingProblem _problem;
    private readonly ImproveNetwork _net;
    private readonly int? _sink;
    private readonly int _source;
    private readonly int[] _head;
    private readonly int?[] _tail;
    private readonly Lag[] _lags;

    public ImproveWindows(SchedulingProblem problem, ImproveNetwork net, int? sink)
    {
        (_problem, _net, _sink) = (problem, net, sink);
        int[] all = [.. Enumerable.Range(0, net.Count)];
        _source = Array.FindIndex(all, i => problem.Activities[i].FixedStart == 0);
        _head = [.. all.Select(a => Math.Max(0, _source >= 0 ? net.Path[_source][a] : all.Max(i => net.Path[i][a])))];
        // Steps from a start to the end of everything; unknown where the sink does not wait for the activity.
        _tail = [.. all.Select(a => sink is { } s
            ? net.Path[a][s] == ImproveNetwork.None ? (int?)null : net.Path[a][s]
            : all.Max(j => net.Path[a][j] == ImproveNetwork.None ? 0 : net.Path[a][j] + net.Duration[j]))];
        _lags = [.. problem.Lags, .. Forced()];
    }

    /// <summary>From the first step on.</summary>
    public SchedulingProblem Forward(EngineSchedule? best)
    {
        int end = best is { } b ? (int)b.Levels[0].Value : _problem.Horizon;
        return _problem with
        {
            Horizon = _sink is null && best is not null ? end : _problem.Horizon,
            Activities = [.. _problem.Activities.Select((a, i) => a.FixedStart is not null ? a : a with
            {
                Windows = [new Stretch(_head[i], best is null || _tail[i] is not { } tail ? _problem.Horizon : Math.Min(_problem.Horizon, end - tail + _net.Duration[i]))],
                HintStart = best?.Starts[i],
            })],
            Lags = [.. _lags],
        };
    }

    /// <summary>From the last step back; null when something may lie outside first and last, or is fixed elsewhere.</summary>
    public SchedulingProblem? Backward(EngineSchedule? best)
    {
        bool between = _sink is { } last
            ? _source >= 0 && _net.Duration[_source] == 0 && _net.Duration[last] == 0
                && Enumerable.Range(0, _net.Count).All(i => i == last || (_net.Path[_source][i] >= 0 && _tail[i] is { } t && t >= _net.Duration[i]))
                && _problem.Activities.Select((a, i) => i == _source || a.FixedStart is null).All(free => free)
            : _problem.Activities.All(a => a.FixedStart is null);
        if (!between)
        {
            return null;
        }

        int end = best is { } b ? (int)b.Levels[0].Value : _problem.Horizon;
        return _problem with
        {
            Horizon = _sink is null && best is not null ? end : _problem.Horizon,
            Activities = [.. _problem.Activities.Select((a, i) => i == _sink ? a with { FixedStart = 0 } : a with
            {
                FixedStart = null,
                Windows = [new Stretch(Math.Max(0, _tail[i]!.Value - _net.Duration[i]), Math.Min(_problem.Horizon, end - _head[i]))],
                HintStart = best is null ? null : end - best.Starts[i] - _net.Duration[i],
            })],
            Lags = [.. _lags.Select(l => new Lag(l.To, Other(l.ToEdge), l.From, Other(l.FromEdge), l.Least) { Most = l.Most })],
            Goals = _sink is null ? _problem.Goals : [_problem.Goals[0] with { Terms = [new Term(TermKind.Start, _source, 1)] }],
        };
    }

    /// <summary>Starts of a schedule found from the last step back.</summary>
    public ImmutableArray<int> Turned(EngineSchedule backward)
    {
        int end = (int)backward.Levels[0].Value;
        return [.. backward.Starts.Select((s, i) => end - s - _net.Duration[i])];
    }

    private static Edge Other(Edge edge) => edge == Edge.Start ? Edge.End : Edge.Start;

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
