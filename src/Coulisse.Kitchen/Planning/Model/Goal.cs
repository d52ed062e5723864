using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Model;

/// <summary>One level of what is sought: the least sum of its terms. Levels are sought in order; a later one never worsens an earlier one.</summary>
/// <param name="Name">Name shown to people.</param>
/// <param name="Unit">Unit shown to people.</param>
/// <param name="Terms">What is summed.</param>
public sealed record Goal(string Name, string Unit, ImmutableArray<Term> Terms)
{
    /// <summary>Added to the sum before it is shown.</summary>
    public long Offset { get; init; }

    /// <summary>The sum is divided by this before it is shown.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>The shortest schedule.</summary>
    public static Goal Makespan { get; } = new("makespan", "steps", [new Term(TermKind.Makespan, 0, 1)]);
}

/// <summary>What a term measures.</summary>
public enum TermKind
{
    /// <summary>Latest end of all activities.</summary>
    Makespan,

    /// <summary>Start of the activity at <see cref="Term.Index"/>; 0 when absent.</summary>
    Start,

    /// <summary>1 when the activity at <see cref="Term.Index"/> is present.</summary>
    Present,

    /// <summary>1 when the activity at <see cref="Term.Index"/> is done in mode <see cref="Term.Other"/>.</summary>
    Mode,

    /// <summary>Excess over the most of the soft lag at <see cref="Term.Index"/>.</summary>
    LagExcess,

    /// <summary>1 when the activity at <see cref="Term.Index"/> is served by the resource <see cref="Term.Other"/> of a choice.</summary>
    Served,

    /// <summary>Steps by which the activity at <see cref="Term.Index"/> starts away from step <see cref="Term.Other"/>.</summary>
    Moved,

    /// <summary>Steps by which the activity at <see cref="Term.Index"/> ends after step <see cref="Term.Other"/>; 0 when it ends before, or is absent.</summary>
    EndAfter,
}

/// <summary>A weighted term of a goal.</summary>
/// <param name="Kind">What it measures.</param>
/// <param name="Index">Position it speaks of.</param>
/// <param name="Weight">Weight; negative to seek more of it.</param>
/// <param name="Other">Second position or step, where the kind needs one.</param>
public sealed record Term(TermKind Kind, int Index, long Weight, int Other = 0);

/// <summary>A goal that may not be worse than a value.</summary>
/// <param name="Goal">The goal.</param>
/// <param name="Most">Its largest value, unscaled and without its offset.</param>
public sealed record GoalLimit(Goal Goal, long Most);
