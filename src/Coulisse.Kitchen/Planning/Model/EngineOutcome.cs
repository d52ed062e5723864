using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Model;

/// <summary>What an engine answers.</summary>
public abstract record EngineOutcome
{
    private protected EngineOutcome()
    {
    }

    /// <summary>Seconds of search.</summary>
    public double Seconds { get; init; }
}

/// <summary>A schedule.</summary>
/// <param name="Starts">Start of each activity; -1 when it is left out.</param>
/// <param name="Modes">Mode of each activity.</param>
/// <param name="Served">For each activity, the resources that serve its choices.</param>
/// <param name="Levels">Value and bound of each goal.</param>
public sealed record EngineSchedule(ImmutableArray<int> Starts, ImmutableArray<int> Modes, ImmutableArray<ImmutableArray<int>> Served, ImmutableArray<LevelResult> Levels) : EngineOutcome
{
    /// <summary>True when every level's value equals its bound.</summary>
    public bool Proven => Levels.All(l => l.Proven);

    /// <summary>End of an activity.</summary>
    public int End(SchedulingProblem problem, int activity) => Starts[activity] + problem.Activities[activity].Modes[Modes[activity]].Duration;
}

/// <summary>Proven: there is no schedule.</summary>
/// <param name="Why">How it was proven, in words.</param>
public sealed record EngineInfeasible(string Why) : EngineOutcome;

/// <summary>Out of time with neither.</summary>
/// <param name="Bound">Best bound of the first level, when one was found.</param>
public sealed record EngineUnknown(double? Bound) : EngineOutcome;

/// <summary>Value and bound of a goal, unscaled.</summary>
/// <param name="Name">Goal.</param>
/// <param name="Value">Value reached.</param>
/// <param name="Bound">Best value any schedule could have, given the levels before.</param>
public sealed record LevelResult(string Name, long Value, long Bound)
{
    /// <summary>True when the value equals the bound.</summary>
    public bool Proven => Value == Bound;
}
