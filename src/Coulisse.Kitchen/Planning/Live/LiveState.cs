using System.Collections.Immutable;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Where a run or a prep day stands: the fold of what was reported.</summary>
public sealed record LiveState
{
    /// <summary>The moment it speaks of.</summary>
    public required LocalDateTime Now { get; init; }

    /// <summary>Tasks begun, with when.</summary>
    public ImmutableSortedDictionary<string, LocalDateTime> Started { get; init; } = ImmutableSortedDictionary<string, LocalDateTime>.Empty;

    /// <summary>Tasks ended, with when.</summary>
    public ImmutableSortedDictionary<string, LocalDateTime> Done { get; init; } = ImmutableSortedDictionary<string, LocalDateTime>.Empty;

    /// <summary>Tasks left out.</summary>
    public ImmutableSortedSet<string> Skipped { get; init; } = [];

    /// <summary>Tasks whose food was lost (a dropped tray), with when.</summary>
    public ImmutableSortedDictionary<string, LocalDateTime> Lost { get; init; } = ImmutableSortedDictionary<string, LocalDateTime>.Empty;

    /// <summary>People who went, with when.</summary>
    public ImmutableSortedDictionary<string, LocalDateTime> Gone { get; init; } = ImmutableSortedDictionary<string, LocalDateTime>.Empty;

    /// <summary>Kit that broke, with when.</summary>
    public ImmutableSortedDictionary<string, LocalDateTime> Broken { get; init; } = ImmutableSortedDictionary<string, LocalDateTime>.Empty;

    /// <summary>Segments whose drop was called.</summary>
    public ImmutableSortedSet<int> Dropped { get; init; } = [];

    /// <summary>Segments that are left out; one that begins after all is not.</summary>
    public ImmutableSortedSet<int> LeftOut { get; init; } = [];

    /// <summary>Twins called in early, by number, with when.</summary>
    public ImmutableSortedDictionary<int, LocalDateTime> Early { get; init; } = ImmutableSortedDictionary<int, LocalDateTime>.Empty;

    /// <summary>Segments begun, with when.</summary>
    public ImmutableSortedDictionary<int, LocalDateTime> Gates { get; init; } = ImmutableSortedDictionary<int, LocalDateTime>.Empty;

    /// <summary>Notes in order.</summary>
    public ImmutableArray<LiveEvent> Notes { get; init; } = [];

    /// <summary>Events of a kind or a subject that is not known here; kept, never thrown away.</summary>
    public ImmutableArray<LiveEvent> NotUnderstood { get; init; } = [];

    /// <summary>True when the task is under way: begun, neither ended, lost nor left out.</summary>
    /// <param name="task">Task id.</param>
    public bool Running(string task) => Started.ContainsKey(task) && !Done.ContainsKey(task) && !Lost.ContainsKey(task) && !Skipped.Contains(task);
}
