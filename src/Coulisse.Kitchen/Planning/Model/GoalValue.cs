namespace Coulisse.Kitchen.Planning.Model;

/// <summary>Measures goals in a schedule, by arithmetic alone.</summary>
public static class GoalValue
{
    /// <summary>Value of a goal, unscaled and without its offset.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="goal">The goal.</param>
    /// <param name="s">A schedule of it.</param>
    public static long Of(SchedulingProblem problem, Goal goal, EngineSchedule s) => goal.Terms.Sum(t => t.Weight * (t.Kind switch
    {
        TermKind.Makespan => Enumerable.Range(0, s.Starts.Length).Where(a => s.Starts[a] >= 0).Max(a => (long)s.End(problem, a)),
        TermKind.Start => Math.Max(0, s.Starts[t.Index]),
        TermKind.Present => s.Starts[t.Index] >= 0 ? 1 : 0,
        TermKind.Mode => s.Starts[t.Index] >= 0 && s.Modes[t.Index] == t.Other ? 1 : 0,
        TermKind.Served => s.Served[t.Index].Contains(t.Other) ? 1 : 0,
        TermKind.Moved => s.Starts[t.Index] < 0 ? 0 : Math.Abs(s.Starts[t.Index] - t.Other),
        TermKind.EndAfter => s.Starts[t.Index] < 0 ? 0 : Math.Max(0, s.End(problem, t.Index) - t.Other),
        TermKind.LagExcess => Overrun(problem, problem.Lags[t.Index], s),
        _ => throw new ArgumentOutOfRangeException(nameof(goal), t.Kind, "No such kind of term."),
    }));

    /// <summary>True when one schedule is better than another by the first goal in which they differ.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="one">A schedule of it.</param>
    /// <param name="other">Another.</param>
    public static bool Better(SchedulingProblem problem, EngineSchedule one, EngineSchedule other)
        => problem.Goals.Select(g => Of(problem, g, one).CompareTo(Of(problem, g, other))).FirstOrDefault(c => c != 0) < 0;

    private static long Overrun(SchedulingProblem problem, Lag lag, EngineSchedule s)
    {
        if (s.Starts[lag.From] < 0 || s.Starts[lag.To] < 0)
        {
            return 0;
        }

        long from = lag.FromEdge == Edge.Start ? s.Starts[lag.From] : s.End(problem, lag.From);
        long to = lag.ToEdge == Edge.Start ? s.Starts[lag.To] : s.End(problem, lag.To);
        return Math.Max(0, to - from - (lag.Most ?? 0));
    }
}
