using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Model;

/// <summary>A scheduling problem free of food and of any solver: activities in modes, lags both ways, resources, kit that holds one state at a time.</summary>
/// <remarks>
/// Time is in whole steps from 0 (the caller says whether a step is a minute or a second). Activities and resources are known by
/// their position in their lists. The same types carry prep days, the live slot and the outside instance sets.
/// </remarks>
public sealed record SchedulingProblem
{
    /// <summary>Name, for messages.</summary>
    public string Name { get; init; } = "";

    /// <summary>No activity ends after this step.</summary>
    public required int Horizon { get; init; }

    /// <summary>Activities.</summary>
    public ImmutableArray<Activity> Activities { get; init; } = [];

    /// <summary>Lags between activities; a precedence is a lag from an end to a start of at least 0.</summary>
    public ImmutableArray<Lag> Lags { get; init; } = [];

    /// <summary>Resources that are free again when an activity ends: people, shelves, rings, watts.</summary>
    public ImmutableArray<Resource> Resources { get; init; } = [];

    /// <summary>Resources that are used up.</summary>
    public ImmutableArray<Stock> Stocks { get; init; } = [];

    /// <summary>Kit that holds one state (set point) at a time.</summary>
    public ImmutableArray<StateKit> StateKits { get; init; } = [];

    /// <summary>Places taken from the end of one activity to the start of another (fridge slots).</summary>
    public ImmutableArray<Storing> Stores { get; init; } = [];

    /// <summary>Shared kit that must be cleaned between uses that do not suit each other.</summary>
    public ImmutableArray<CleanRule> Cleans { get; init; } = [];

    /// <summary>What is sought, in order of rank; empty means the shortest schedule.</summary>
    public ImmutableArray<Goal> Goals { get; init; } = [];

    /// <summary>Goals that are not sought but may not be worse than a value.</summary>
    public ImmutableArray<GoalLimit> Limits { get; init; } = [];

    /// <summary>A schedule that keeps every rule and from which a search may begin; null when none is known.</summary>
    public EngineSchedule? Known { get; init; }
}
