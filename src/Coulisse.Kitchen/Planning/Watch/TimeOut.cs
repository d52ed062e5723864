using System.Collections.Immutable;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>Minutes in which a part stood or was worked between cold and hot.</summary>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
/// <param name="What">What was done, or that it stood.</param>
/// <param name="Stood">Nobody's hands were on it: it could have stood in the cold.</param>
/// <param name="Task">Task of the plan; null for a wait between two.</param>
public sealed record OutStretch(LocalDateTime From, LocalDateTime To, string What, bool Stood, string? Task)
{
    /// <summary>Minutes.</summary>
    public double Minutes => Period.Between(From, To, PeriodUnits.Seconds).Seconds / 60.0;
}

/// <summary>A wait of which the card does not say where the food stands.</summary>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
/// <param name="Line">Card line of the step before it; 0 for none.</param>
/// <param name="After">That step, in words.</param>
public sealed record UnsaidPlace(LocalDateTime From, LocalDateTime To, int Line, string After);

/// <summary>How long a part of a dish is out of the cold in all, from when it was last cooked through (or first taken out) until it is eaten.</summary>
/// <param name="Dish">Dish.</param>
/// <param name="Part">Component, or the dish where it is made as one; a twin by its number.</param>
/// <param name="Line">Card line to look at; 0 for none.</param>
/// <param name="Stretches">Every stretch, in order.</param>
/// <param name="Unsaid">Waits whose place is not said; not in the sum.</param>
/// <param name="BackAfter">The most it had been out when it went back into the cold, minutes; 0 for never.</param>
/// <param name="Assumed">What was taken for granted, in words.</param>
public sealed record TimeOut(string Dish, string Part, int Line, ImmutableArray<OutStretch> Stretches, ImmutableArray<UnsaidPlace> Unsaid, double BackAfter, ImmutableArray<string> Assumed)
{
    /// <summary>Sum, minutes. Chilling does not set it back.</summary>
    public double Minutes => Stretches.Sum(s => s.Minutes);

    /// <summary>Moment at which it is eaten or handed out.</summary>
    public LocalDateTime Ends { get; init; }

    /// <summary>It is taken away and eaten elsewhere.</summary>
    public bool TakenAway { get; init; }
}
