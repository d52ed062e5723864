using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Coulisse.Kitchen.Planning.Edits;
using NodaTime;

namespace Coulisse.Kitchen.Planning;

/// <summary>What planning answers.</summary>
public abstract record PlanOutcome
{
    private protected PlanOutcome()
    {
    }
}

/// <summary>No plan exists: the smallest set of demands that cannot hold together, and what would help.</summary>
/// <param name="Conflicts">The demands, in words; take any one away and a plan exists.</param>
/// <param name="Remedies">Changes that were each solved and work.</param>
public sealed record NoPlan(ImmutableArray<string> Conflicts, ImmutableArray<string> Remedies) : PlanOutcome;

/// <summary>Out of time with neither a plan nor a proof that there is none.</summary>
/// <param name="Why">What was tried.</param>
public sealed record NotYet(string Why) : PlanOutcome;

/// <summary>A plan: what, when, who, on what.</summary>
public sealed record Plan : PlanOutcome
{
    /// <summary>Occasion's title.</summary>
    public required string Title { get; init; }

    /// <summary>Start of the slot.</summary>
    public required LocalDateTime SlotStart { get; init; }

    /// <summary>Length of the slot.</summary>
    public required Duration SlotLength { get; init; }

    /// <summary>End of the slot.</summary>
    [JsonIgnore]
    public LocalDateTime SlotEnd => SlotStart.PlusSeconds((long)SlotLength.TotalSeconds);

    /// <summary>Tasks in order of start.</summary>
    public ImmutableArray<PlannedTask> Tasks { get; init; } = [];

    /// <summary>Twins: what stands ready for the slot.</summary>
    public ImmutableArray<Twin> Twins { get; init; } = [];

    /// <summary>The slot by segments; lengths sum to the slot.</summary>
    public ImmutableArray<RunSegment> RunSheet { get; init; } = [];

    /// <summary>Objective by level, in order of rank.</summary>
    public ImmutableArray<ObjectiveLevel> Objective { get; init; } = [];

    /// <summary>Fallbacks for the slot, in words.</summary>
    public ImmutableArray<string> Fallbacks { get; init; } = [];

    /// <summary>What was assumed, in words.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>What a person had fixed when it was made.</summary>
    public PlanEdits Edits { get; init; } = PlanEdits.None;

    /// <summary>Versions of card, tables and engine that made it.</summary>
    public ImmutableDictionary<string, string> Versions { get; init; } = ImmutableDictionary<string, string>.Empty;
}

/// <summary>What kind of work a task is.</summary>
public enum TaskKind
{
    /// <summary>Work of a card step.</summary>
    Work,

    /// <summary>Runs by itself (oven, bath, fridge, dehydrator); hands only in its moments.</summary>
    Unattended,

    /// <summary>A short moment of hands inside an unattended task, whose kit it shares.</summary>
    Moment,

    /// <summary>Washing between foods.</summary>
    Wash,

    /// <summary>Kit brought to its set point.</summary>
    Preheat,

    /// <summary>Carrying food or kit.</summary>
    Carry,

    /// <summary>Receive, set up, print, test, doors, clear down.</summary>
    House,

    /// <summary>A meal.</summary>
    Meal,

    /// <summary>Plating.</summary>
    Plate,
}

/// <summary>A task of the plan.</summary>
public sealed record PlannedTask
{
    /// <summary>Id, stable within the plan.</summary>
    public required string Id { get; init; }

    /// <summary>Name that stays the same from plan to plan (component and card line); edits speak of it. Empty in a plan made elsewhere.</summary>
    public string Key { get; init; } = "";

    /// <summary>What is done, in words.</summary>
    public required string Text { get; init; }

    /// <summary>Kind of work.</summary>
    public required TaskKind Kind { get; init; }

    /// <summary>Start.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>End.</summary>
    public required LocalDateTime End { get; init; }

    /// <summary>Dish it belongs to; null for the house.</summary>
    public string? Dish { get; init; }

    /// <summary>Component it belongs to; null for the house.</summary>
    public string? Component { get; init; }

    /// <summary>Card line of its step; 0 when no card states it.</summary>
    public int Line { get; init; }

    /// <summary>People who have their hands on it.</summary>
    public ImmutableArray<string> People { get; init; } = [];

    /// <summary>Kit codes it holds (for a moment: shares).</summary>
    public ImmutableArray<string> Kit { get; init; } = [];

    /// <summary>Shelves (tins, trays) it takes of its kit; 0 where nothing is said, which counts as one.</summary>
    public int Shelves { get; init; }

    /// <summary>Set point, °C.</summary>
    public double? Celsius { get; init; }

    /// <summary>For a moment: the task it lies in.</summary>
    public string? Within { get; init; }

    /// <summary>How long it could be later without moving anything fixed.</summary>
    public Duration Slack { get; init; }

    /// <summary>Why it is when it is.</summary>
    public string Because { get; init; } = "";

    /// <summary>For a wash: the allergens it removes.</summary>
    public ImmutableArray<string> Removes { get; init; } = [];

    /// <summary>Place.</summary>
    public string? Place { get; init; }

    /// <summary>Grams in hand, when known.</summary>
    public double? Grams { get; init; }

    /// <summary>Words before the text of work on a small batch of its own for the stage.</summary>
    public const string StageWords = "for the stage: ";

    /// <summary>True for work on the small batch that a twin is made of: another batch than the guests', made at another time.</summary>
    [JsonIgnore]
    public bool ForStage => Text.StartsWith(StageWords, StringComparison.Ordinal);
}

/// <summary>Something made ahead that stands ready at the stage where the showing resumes.</summary>
public sealed record Twin
{
    /// <summary>Number, from 1, in the order it comes in.</summary>
    public required int Number { get; init; }

    /// <summary>Dish or component.</summary>
    public required string Component { get; init; }

    /// <summary>State ("set block, uncut").</summary>
    public required string State { get; init; }

    /// <summary>How many.</summary>
    public double Count { get; init; } = 1;

    /// <summary>Grams; null when it is counted only.</summary>
    public double? Grams { get; init; }

    /// <summary>Task that makes it; null when it is a share of a batch that no single task ends.</summary>
    public string? MadeBy { get; init; }

    /// <summary>When it is ready.</summary>
    public LocalDateTime ReadyBy { get; init; }

    /// <summary>How it is held ("3 °C", "82 °C in the bath", "room").</summary>
    public string Holds { get; init; } = "";

    /// <summary>Where it stands at the start of the slot.</summary>
    public string Place { get; init; } = "";

    /// <summary>Task that leaves it there before the slot; null when the plan names none.</summary>
    public string? SetOutBy { get; init; }

    /// <summary>Who brings it at its cue; "there" when it stands within reach of whoever shows it.</summary>
    public string BroughtBy { get; init; } = "";

    /// <summary>True when nobody brings it at its cue.</summary>
    [JsonIgnore]
    public bool Stands => BroughtBy is "" or "there";

    /// <summary>Seconds into the slot at which it comes in.</summary>
    public int CueSecond { get; init; }

    /// <summary>What it stands for ("6 h setting").</summary>
    public string Replaces { get; init; } = "";

    /// <summary>What becomes of the live one and of the twin.</summary>
    public string Afterwards { get; init; } = "";
}

/// <summary>A segment of the run sheet.</summary>
public sealed record RunSegment
{
    /// <summary>Number, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Start, seconds into the slot.</summary>
    public required int StartSecond { get; init; }

    /// <summary>Length, seconds.</summary>
    public required int Seconds { get; init; }

    /// <summary>What is shown, in words.</summary>
    public required string Show { get; init; }

    /// <summary>Component or dish shown; empty for opening and close.</summary>
    public string Component { get; init; } = "";

    /// <summary>What each person does, by name.</summary>
    public ImmutableSortedDictionary<string, string> Who { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Kit in use.</summary>
    public ImmutableArray<string> Kit { get; init; } = [];

    /// <summary>Numbers of the twins that come in.</summary>
    public ImmutableArray<int> Twins { get; init; } = [];

    /// <summary>How much it weighs with the sheet that it is seen: 5 must be seen, 1 may go first; 0 when nothing says it.</summary>
    public int Weight { get; init; }

    /// <summary>Seconds that may be dropped here.</summary>
    public int DroppableSeconds { get; init; }

    /// <summary>Order in which drops are taken, 1 first; 0 for none.</summary>
    public int DropRank { get; init; }

    /// <summary>True when its start is a gate for the time-keeper.</summary>
    public bool Gate { get; init; }

    /// <summary>No talking: a loud machine runs.</summary>
    public bool Silence { get; init; }
}

/// <summary>One level of the objective.</summary>
/// <param name="Level">Name of the level.</param>
/// <param name="Value">Value reached.</param>
/// <param name="Bound">Best value any plan could have, as proven; null when nothing is.</param>
/// <param name="Unit">Unit of both.</param>
public sealed record ObjectiveLevel(string Level, double Value, double? Bound, string Unit)
{
    /// <summary>True when the value equals the bound.</summary>
    public bool Proven => Bound is { } b && Math.Abs(Value - b) < 1e-6;
}
