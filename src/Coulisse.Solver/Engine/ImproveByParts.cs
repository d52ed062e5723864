using System.Diagnostics;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Engine;

/// <summary>A large problem of which a schedule is known, made better part by part: a search frees some tasks, the rest stands, level after level.</summary>
/// <remarks>Large-neighbourhood search (Shaw 1998). What it says of bounds is arithmetic over windows and lags, so a level is called proven only where its value meets that.</remarks>
internal sealed class ImproveByParts
{
    /// <summary>From this many activities on a search of the whole finds nothing better in minutes (measured: decision 0184).</summary>
    private const int Many = 250;

    private const int Smallest = 12;

    private const int Largest = 160;

    /// <summary>Seconds for one part.</summary>
    private const double Each = 1.2;

    private readonly SchedulingProblem _problem;
    private readonly Effort _effort;
    private readonly Searcher _search;
    private readonly Action<EngineSchedule>? _better;
    private readonly CancellationToken _cancel;
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly PartPicks _picks;
    private readonly long[] _bounds;
    private EngineSchedule _best;
    private double _told = double.NegativeInfinity;

    private ImproveByParts(SchedulingProblem problem, EngineSchedule known, Effort effort, Searcher search, Action<EngineSchedule>? better, CancellationToken cancel)
    {
        (_problem, _best, _effort, _search, _better, _cancel) = (problem, known, effort, search, better, cancel);
        Reach reach = Reach.Of(problem);
        _picks = new PartPicks(problem, reach, effort.Seed);
        _bounds = [.. problem.Goals.Select(g => reach.Bound(g) ?? long.MinValue)];
    }

    private double Left => _effort.Seconds - _clock.Elapsed.TotalSeconds;

    /// <summary>An outcome, or null when the problem is too small, without a known schedule, or of a kind this cannot cut up.</summary>
    public static EngineOutcome? Solve(SchedulingProblem problem, Effort effort, Searcher search, Action<EngineSchedule>? better, CancellationToken cancel)
        => problem.Known is { } known && problem.Activities.Length >= Many && effort is { Repeatable: false, FirstOnly: false } && problem.Stocks.IsEmpty && problem.Stores.IsEmpty
            && !problem.Goals.IsEmpty && problem.Goals.All(g => g.Terms.All(t => t.Kind != TermKind.Makespan))
            ? new ImproveByParts(problem, known, effort, search, better, cancel).Run()
            : null;

    private EngineSchedule Run()
    {
        while (Left > 0.3 && !_cancel.IsCancellationRequested && Open().Any())
        {
            double round = Left;
            foreach (int level in Open().ToArray())
            {
                // The levels share what is left; the first round gives the higher ones their chance, later rounds begin again above.
                Level(level, _clock.Elapsed.TotalSeconds + (round / 2 / _problem.Goals.Length));
            }
        }

        Tell(last: true);
        return _best with { Levels = [.. _problem.Goals.Select((g, k) => new LevelResult(g.Name, Value(_best, k), Math.Min(Value(_best, k), _bounds[k])))], Seconds = _clock.Elapsed.TotalSeconds };
    }

    private IEnumerable<int> Open() => Enumerable.Range(0, _problem.Goals.Length).Where(k => !_problem.Goals[k].Terms.IsEmpty && Value(_best, k) > _bounds[k]);

    private void Level(int level, double until)
    {
        double size = 30;
        int idle = 0;
        // A level on which nothing moves any more is left to the next.
        while (_clock.Elapsed.TotalSeconds < until && Left > 0.2 && !_cancel.IsCancellationRequested && idle < 40 && Value(_best, level) > _bounds[level])
        {
            if (Part.Of(_problem, _best, _picks.Next(_best, _problem.Goals[level], (int)size), level) is not { } part)
            {
                idle++;
                continue;
            }

            EngineOutcome found = _search(part.Problem, _effort with { Seconds = Math.Min(Each, Left), Parameters = "subsolvers:\"no_lp\"" }, tell: false, _cancel);
            bool exhausted = found is EngineSchedule { Proven: true };
            idle++;
            if (found is EngineSchedule s && part.Merged(s) is var merged && Compared(merged) is var better && better <= 0)
            {
                _best = merged;
                idle = better < 0 ? 0 : idle;
                Tell(last: false);
            }

            // Searched to its end: the next may be larger; cut off: smaller.
            size = Math.Clamp(size * (exhausted ? 1.12 : 0.85), Smallest, Largest);
        }
    }

    private long Value(EngineSchedule s, int level) => GoalValue.Of(_problem, _problem.Goals[level], s);

    private int Compared(EngineSchedule s) => Enumerable.Range(0, _problem.Goals.Length).Select(k => Value(s, k).CompareTo(Value(_best, k))).FirstOrDefault(c => c != 0);

    private void Tell(bool last)
    {
        if (_better is not null && (last || _clock.Elapsed.TotalSeconds - _told > 1))
        {
            _told = _clock.Elapsed.TotalSeconds;
            _better(_best with { Levels = [.. _problem.Goals.Select((g, k) => new LevelResult(g.Name, Value(_best, k), long.MinValue))] });
        }
    }
}
