namespace Coulisse.Kitchen.Planning.Model;

/// <summary>Solves scheduling problems.</summary>
public interface ISchedulingEngine
{
    /// <summary>Seeks the best schedule by the problem's goals.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="effort">How long and how.</param>
    /// <param name="better">Hears of every better schedule; may be null.</param>
    /// <param name="cancel">Stop and keep the best so far.</param>
    EngineOutcome Solve(SchedulingProblem problem, Effort effort, Action<EngineSchedule>? better = null, CancellationToken cancel = default);
}

/// <summary>How long and how to search.</summary>
/// <param name="Seconds">Time limit for all levels together, seconds.</param>
/// <param name="Seed">Random seed.</param>
/// <param name="Workers">Solver threads.</param>
public sealed record Effort(double Seconds, int Seed = 1, int Workers = 2)
{
    /// <summary>Equal seed and effort give the equal answer, whatever else the machine does; a little slower.</summary>
    public bool Repeatable { get; init; }

    /// <summary>Stop at the first valid schedule.</summary>
    public bool FirstOnly { get; init; }

    /// <summary>Which formulation of kit states is used.</summary>
    public StateFormulation States { get; init; } = StateFormulation.Pairs;

    /// <summary>Further parameters for the solver behind the engine, in its own words; empty for none.</summary>
    public string Parameters { get; init; } = "";
}

/// <summary>Formulations of kit that holds one state at a time.</summary>
public enum StateFormulation
{
    /// <summary>Every two uses at different states keep the change time apart.</summary>
    Pairs,

    /// <summary>Uses are put into campaigns of one state; campaigns do not overlap.</summary>
    Campaigns,

    /// <summary>Uses are padded to tiles: one interval for each state and run, kept apart by a global constraint with the least change time.</summary>
    Padded,
}
