using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>The live slot, decided before the prep days: what is shown, in which seconds, by whom, and what must stand ready for it.</summary>
public sealed record SlotPlan
{
    /// <summary>Segments; their seconds sum to the slot exactly.</summary>
    public ImmutableArray<RunSegment> Segments { get; init; } = [];

    /// <summary>What must stand ready.</summary>
    public ImmutableArray<TwinNeed> Twins { get; init; } = [];

    /// <summary>Kit that must be at a set point at a moment of the slot.</summary>
    public ImmutableArray<KitNeed> Kit { get; init; } = [];

    /// <summary>Rows of the sheet that are shown.</summary>
    public ImmutableArray<SheetShow> Shown { get; init; } = [];

    /// <summary>Rows that do not fit the slot, least weight first.</summary>
    public ImmutableArray<SheetShow> NotShown { get; init; } = [];

    /// <summary>Weight shown against the most that fits.</summary>
    public required ObjectiveLevel Level { get; init; }

    /// <summary>What was assumed, in words.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>What to do when a machine or a step fails, in words.</summary>
    public ImmutableArray<string> Fallbacks { get; init; } = [];
}

/// <summary>A twin and what the prep days must know to make it.</summary>
/// <param name="Twin">The twin, without the task that makes it.</param>
/// <param name="Dish">Dish it belongs to.</param>
/// <param name="StageLine">Card line of the last step already done to it; 0 when it is only weighed.</param>
/// <param name="NextLine">Card line of the step that goes on from it in the slot; 0 when none does.</param>
/// <param name="OwnBatch">True when the batch for service cannot serve: it has gone past this stage, or has none over.</param>
public sealed record TwinNeed(Twin Twin, string Dish, int StageLine, int NextLine, bool OwnBatch)
{
    /// <summary>True when its food comes on top of what the batch for service takes, although it is made together with it.</summary>
    public bool Beyond { get; init; }

    /// <summary>True for a plate of those plated ahead: ready when they are.</summary>
    public bool Plated { get; init; }

    /// <summary>Component whose food it is, when only a part of the dish; null for all of it.</summary>
    public string? Part { get; init; }
}

/// <summary>Kit that must be ready.</summary>
/// <param name="Kit">Kit code.</param>
/// <param name="Celsius">Set point; null when it has none.</param>
/// <param name="FromSecond">Seconds into the slot by which it must be ready.</param>
/// <param name="Minutes">How long it is then held by what goes in; 0 for a moment.</param>
/// <param name="What">What goes in, in words.</param>
public sealed record KitNeed(string Kit, double? Celsius, int FromSecond, double Minutes, string What)
{
    /// <summary>Minutes before the last window closes by which kit is empty: it is still to be wiped. Common practice, no source.</summary>
    public const int EmptyBefore = 2;

    /// <summary>When it comes out: done, or because the room must be empty; null when nobody is there after the slot to take it out.</summary>
    /// <param name="occasion">The occasion.</param>
    public (LocalDateTime At, bool Done)? Out(Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        LocalDateTime over = occasion.SlotEnd;
        if (occasion.Windows.Where(w => w.Start <= over && w.End > over).Select(w => (LocalDateTime?)w.End).Max() is not { } closes)
        {
            return null;
        }

        LocalDateTime done = occasion.SlotStart.PlusMinutes((long)Math.Ceiling((FromSecond / 60.0) + Minutes));
        LocalDateTime least = LocalDateTime.Max(over, closes.PlusMinutes(-EmptyBefore));
        return done <= least ? (LocalDateTime.Max(done, over), true) : (least, false);
    }
}
