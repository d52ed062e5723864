namespace Coulisse.Kitchen.Planning.Model;

/// <summary>Earliest and latest starts by windows and hard lags alone; nothing that is held counts.</summary>
public sealed class Reach
{
    private readonly SchedulingProblem _problem;

    private Reach(SchedulingProblem problem, int[] earliest, int[] latest, bool possible) => (_problem, Earliest, Latest, Possible) = (problem, earliest, latest, possible);

    /// <summary>False when windows and lags leave some activity no start: then the starts told are those met on the way, and there is no schedule.</summary>
    public bool Possible { get; }

    /// <summary>Earliest start of each activity.</summary>
    public IReadOnlyList<int> Earliest { get; }

    /// <summary>Latest start of each activity.</summary>
    public IReadOnlyList<int> Latest { get; }

    /// <summary>Reach of a problem's activities; what is optional pulls nothing else.</summary>
    /// <param name="problem">The problem.</param>
    public static Reach Of(SchedulingProblem problem)
    {
        StepWindows windows = new(problem);
        int[] earliest = [.. problem.Activities.Select((x, a) => x.FixedStart ?? windows.Later(a, 0))];
        int[] latest = [.. problem.Activities.Select((x, a) => x.FixedStart ?? windows.Sooner(a, problem.Horizon))];
        Lag[] binding = [.. problem.Lags.Where(l => !problem.Activities[l.From].Optional && !problem.Activities[l.To].Optional)];
        bool possible = new LagBounds(windows, a => problem.Activities[a].FixedStart is not null, a => (windows.Shortest(a), windows.Longest(a))).Narrow(binding, firm: false, earliest, latest);
        return new Reach(problem, earliest, latest, possible && !problem.Activities.Index().Any(x => !x.Item.Optional && earliest[x.Index] > latest[x.Index]));
    }

    /// <summary>A value no schedule can go below; null where arithmetic says nothing.</summary>
    /// <param name="goal">The goal.</param>
    public long? Bound(Goal goal)
    {
        long sum = 0;
        foreach (Term t in goal.Terms)
        {
            Activity? a = t.Kind is TermKind.LagExcess or TermKind.Makespan ? null : _problem.Activities[t.Index];
            (long low, long high)? range = t.Kind switch
            {
                TermKind.LagExcess => (0, long.MaxValue),
                TermKind.Moved => (0, long.MaxValue),
                TermKind.Start => a!.Optional ? (0, Latest[t.Index]) : (Earliest[t.Index], Latest[t.Index]),
                TermKind.Present => a!.Optional ? (0, 1) : (1, 1),
                TermKind.EndAfter => a!.Optional ? (0, long.MaxValue) : (Math.Max(0, Earliest[t.Index] + a.Modes.Min(m => m.Duration) - t.Other), long.MaxValue),
                TermKind.Served or TermKind.Mode => (0, 1),
                _ => null,
            };
            if (range is not { } r || (t.Weight < 0 && r.high == long.MaxValue))
            {
                return null;
            }

            sum += t.Weight * (t.Weight < 0 ? r.high : r.low);
        }

        return sum;
    }
}
