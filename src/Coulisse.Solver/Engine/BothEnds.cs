using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Engine;

/// <summary>A search of the engine itself.</summary>
/// <param name="problem">The problem.</param>
/// <param name="effort">How long and how.</param>
/// <param name="tell">Better schedules on the way are told.</param>
/// <param name="cancel">Stop and keep the best so far.</param>
internal delegate EngineOutcome Searcher(SchedulingProblem problem, Effort effort, bool tell, CancellationToken cancel);

/// <summary>One search from the first step on, one from the last step back, half the threads each: whichever settles the problem stops the other.</summary>
/// <remarks>How long a proof takes differs widely by where the search begins; of two unlike searches the shorter is waited for.</remarks>
internal static class BothEnds
{
    /// <summary>Runs them; the second is null when there is only one way or one thread, or when the answer must be repeatable.</summary>
    public static (EngineOutcome Forward, EngineOutcome? Backward) Run(Searcher search, SchedulingProblem forward, SchedulingProblem? backward, Effort effort, CancellationToken cancel)
    {
        if (backward is null || effort.Workers < 2 || effort.Repeatable)
        {
            return (search(forward, effort, tell: true, cancel), null);
        }

        Effort each = effort with { Workers = effort.Workers / 2 };
        using CancellationTokenSource settled = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        EngineOutcome Until(SchedulingProblem p, bool tell)
        {
            EngineOutcome outcome = search(p, each, tell, settled.Token);
            if (outcome is EngineInfeasible or EngineSchedule { Proven: true })
            {
                settled.Cancel();
            }

            return outcome;
        }

        Task<EngineOutcome> back = Task.Run(() => Until(backward, tell: false), CancellationToken.None);
        EngineOutcome one = Until(forward, tell: true);
        return (one, back.GetAwaiter().GetResult());
    }
}
