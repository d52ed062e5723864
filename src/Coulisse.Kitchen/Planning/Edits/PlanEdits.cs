using System.Collections.Immutable;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Edits;

/// <summary>What a person has fixed, forbidden or put in order; every plan made with it keeps it, or says why it cannot.</summary>
/// <remarks>Tasks are named by <see cref="PlannedTask.Key"/>, which stays the same from plan to plan.</remarks>
public sealed record PlanEdits
{
    /// <summary>Nothing fixed.</summary>
    public static PlanEdits None { get; } = new();

    /// <summary>Tasks fixed to a start, a person or a piece of kit.</summary>
    public ImmutableArray<Pin> Pins { get; init; } = [];

    /// <summary>Times, people and kit that tasks must not have.</summary>
    public ImmutableArray<Forbid> Forbids { get; init; } = [];

    /// <summary>Tasks that must end before others begin.</summary>
    public ImmutableArray<Sequence> Sequences { get; init; } = [];

    /// <summary>True when nothing is fixed.</summary>
    public bool IsEmpty => Pins.IsEmpty && Forbids.IsEmpty && Sequences.IsEmpty;
}

/// <summary>A task fixed by a person; at least one of start, person and kit is given.</summary>
/// <param name="Task">Key of the task.</param>
/// <param name="Start">Start; null when free.</param>
/// <param name="Person">Who must have hands on it; null when free.</param>
/// <param name="Kit">Code of the kit it must be on; null when free.</param>
public sealed record Pin(string Task, LocalDateTime? Start, string? Person = null, string? Kit = null);

/// <summary>What a task must not have; a stretch, a person or a piece of kit.</summary>
/// <param name="Task">Key of the task.</param>
/// <param name="From">Start of a stretch it must not lie in; null for none.</param>
/// <param name="To">End of that stretch; null for none.</param>
/// <param name="Person">Who must not do it; null for none.</param>
/// <param name="Kit">Code of the kit it must not be on; null for none.</param>
public sealed record Forbid(string Task, LocalDateTime? From, LocalDateTime? To, string? Person = null, string? Kit = null);

/// <summary>An order set by a person: the first has ended when the other begins.</summary>
/// <param name="First">Key of the task that comes first.</param>
/// <param name="Then">Key of the task that comes after it.</param>
public sealed record Sequence(string First, string Then);
