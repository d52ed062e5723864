using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Edits;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>A piece of work of the prep days, before it has a time and a person.</summary>
public sealed record PrepTask
{
    /// <summary>Name that does not depend on when it is done; unique within the work.</summary>
    public string Key { get; init; } = "";

    /// <summary>What is done.</summary>
    public required string Text { get; init; }

    /// <summary>Kind of work.</summary>
    public required TaskKind Kind { get; init; }

    /// <summary>Minutes, at least 1.</summary>
    public required int Minutes { get; init; }

    /// <summary>Where the minutes came from, in words.</summary>
    public string MinutesWhy { get; init; } = "";

    /// <summary>Dish; null for the house.</summary>
    public string? Dish { get; init; }

    /// <summary>Component; null for the house.</summary>
    public string? Component { get; init; }

    /// <summary>Card line.</summary>
    public int Line { get; init; }

    /// <summary>How many people have their hands on it; 0 for none.</summary>
    public int People { get; init; }

    /// <summary>Skill it needs; null for anyone in the kitchen.</summary>
    public string? Skill { get; init; }

    /// <summary>Names of those who must do it; empty for anyone able.</summary>
    public ImmutableArray<string> Named { get; init; } = [];

    /// <summary>Kit types it holds, with how many shelves or pieces.</summary>
    public ImmutableArray<KitUse> Kit { get; init; } = [];

    /// <summary>It needs no hands but somebody in the room: a pan on a ring does not boil on through a meal or a night.</summary>
    public bool Watched { get; init; }

    /// <summary>Set point, °C.</summary>
    public double? Celsius { get; init; }

    /// <summary>Position of the task it lies in (a moment).</summary>
    public int? Within { get; init; }

    /// <summary>Earliest start; null for any.</summary>
    public LocalDateTime? NotBefore { get; init; }

    /// <summary>Latest end; null for the slot's start.</summary>
    public LocalDateTime? DoneBy { get; init; }

    /// <summary>Fixed start; null when free.</summary>
    public LocalDateTime? At { get; init; }

    /// <summary>Start a person has pinned; null when free.</summary>
    public LocalDateTime? PinnedAt { get; init; }

    /// <summary>People a person has pinned it to; with others where it needs more hands.</summary>
    public ImmutableArray<string> Pinned { get; init; } = [];

    /// <summary>Kit codes a person has pinned it to; empty for any of its type.</summary>
    public ImmutableArray<string> OnlyOn { get; init; } = [];

    /// <summary>Stretches a person has forbidden.</summary>
    public ImmutableArray<(LocalDateTime From, LocalDateTime To)> NotDuring { get; init; } = [];

    /// <summary>People a person has forbidden.</summary>
    public ImmutableArray<string> NotBy { get; init; } = [];

    /// <summary>Kit codes a person has forbidden.</summary>
    public ImmutableArray<string> NotOn { get; init; } = [];

    /// <summary>It may be left out (a wash nobody needs, a run-through).</summary>
    public bool Optional { get; init; }

    /// <summary>Allergens its food leaves on kit.</summary>
    public ImmutableArray<string> Allergens { get; init; } = [];

    /// <summary>For a wash: the type of kit it cleans.</summary>
    public string? Cleans { get; init; }

    /// <summary>Fresher when later: counted by the goal that makes things as late as their keeping allows.</summary>
    public bool Perishable { get; init; }

    /// <summary>True for the small batch a twin is made of.</summary>
    public bool ForStage { get; init; }

    /// <summary>True for the one that puts the twins where they stand in the slot.</summary>
    public bool SetsOut { get; init; }

    /// <summary>Grams in hand; null when not known.</summary>
    public double? Grams { get; init; }
}

/// <summary>Kit a task holds.</summary>
/// <param name="Type">Kit type: oven, hob, bath, blender, sealer, chiller, fridge, dehydrator.</param>
/// <param name="Amount">Shelves, rings or pieces.</param>
public readonly record struct KitUse(string Type, int Amount);

/// <summary>A lag between two prep tasks, by position.</summary>
/// <param name="From">Earlier task.</param>
/// <param name="FromStart">True to count from its start, false from its end.</param>
/// <param name="To">Later task.</param>
/// <param name="ToEnd">True to count to its end, false to its start.</param>
/// <param name="Least">Least minutes.</param>
/// <param name="Most">Most minutes; null for none.</param>
/// <param name="Soft">Most may be overrun at a price.</param>
/// <param name="Because">In words.</param>
public sealed record PrepLink(int From, bool FromStart, int To, bool ToEnd, int Least, int? Most, bool Soft, string Because);

/// <summary>All the work of the prep days.</summary>
/// <param name="Tasks">Tasks.</param>
/// <param name="Links">Lags.</param>
/// <param name="TwinTasks">For each twin of the slot, in order, the task that makes it; -1 when none does.</param>
/// <param name="Assumed">What was assumed, in words.</param>
public sealed record PrepWork(ImmutableArray<PrepTask> Tasks, ImmutableArray<PrepLink> Links, ImmutableArray<int> TwinTasks, ImmutableArray<string> Assumed)
{
    /// <summary>What a person has fixed; written into the work when its problem is written, so that it can be taken away again like any other demand.</summary>
    public PlanEdits Edits { get; init; } = PlanEdits.None;
}
