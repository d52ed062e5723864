using System.Collections.Immutable;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Method;

/// <summary>Which end of a loss that has a range is taken.</summary>
public enum LossEnd
{
    /// <summary>The middle.</summary>
    Best,

    /// <summary>The least loss.</summary>
    Least,

    /// <summary>The most.</summary>
    Most,
}

/// <summary>A loss of weight with its range, shares of 1.</summary>
/// <param name="Least">Least.</param>
/// <param name="Best">Middle.</param>
/// <param name="Most">Most.</param>
/// <param name="Source">Where it is from, in words.</param>
/// <param name="OfAll">True for a share of all that was mixed (a weighed trial), false for a share of what went into the oven.</param>
public sealed record LossRange(double Least, double Best, double Most, string Source, bool OfAll)
{
    /// <summary>The share at an end.</summary>
    public double At(LossEnd end) => end switch { LossEnd.Least => Least, LossEnd.Most => Most, _ => Best };
}

/// <summary>Where a loss comes from that the card does not state: nowhere, weighed trials, or what its kind of bake loses.</summary>
/// <remarks>
/// The card's own figure goes before a trial, a trial before the kind. What must be safe is judged with <see cref="None"/>: a loss nobody weighed must not make a food look drier than it is.
/// </remarks>
public sealed record UnstatedLoss
{
    private static readonly string[] Baking = ["bake", "blind_bake"];
    private static readonly string[] Heating = ["bake", "blind_bake", "roast", "gratinate", "reduce", "simmer", "dehydrate", "boil_food", "braise", "cook_syrup", "deglaze", "saute", "griddle", "steam", "poach"];

    /// <summary>Nothing but what the card says.</summary>
    public static UnstatedLoss None { get; } = new();

    /// <summary>What a kind of bake loses where the card is silent.</summary>
    public static UnstatedLoss OfKind { get; } = new() { Kinds = true };

    /// <summary>True when the figures of a kind are taken.</summary>
    public bool Kinds { get; init; }

    /// <summary>Title of the card: what the one part of a plain recipe is called.</summary>
    public string Title { get; init; } = "";

    /// <summary>Losses as weighed, by name of the component.</summary>
    public ImmutableDictionary<string, LossRange> Weighed { get; init; } = ImmutableDictionary<string, LossRange>.Empty;

    /// <summary>Which end of a range is taken.</summary>
    public LossEnd End { get; init; }

    /// <summary>The loss of a step that states none; null when there is none to take.</summary>
    /// <param name="component">Its component.</param>
    /// <param name="step">The step.</param>
    public LossRange? Of(Component component, Step step)
    {
        ArgumentNullException.ThrowIfNull(component);
        ArgumentNullException.ThrowIfNull(step);
        if (step.EndGrams is not null || step.LossPercent is not null)
        {
            return null;
        }

        if (Weighed.TryGetValue(component.Name, out LossRange? weighed))
        {
            // A trial weighs what went in and what came out of the whole part: it is taken where heat is last at it.
            return ReferenceEquals(step, component.Steps.LastOrDefault(Heats)) ? weighed : null;
        }

        return Kinds && Does(step, Baking) && (component.Name.Length > 0 ? BakeLoss.Of(component.Name) : BakeLoss.Of(step.Text) ?? BakeLoss.Of(Title)) is { } kind
            ? new LossRange(kind.Low / 100, kind.Best / 100, kind.High / 100, $"as {kind.Kind} does, not weighed: weigh the first bake", false)
            : null;
    }

    private static bool Heats(Step step) => Does(step, Heating) || step.Temperatures.Any(t => t.Of is TemperatureOf.Oven or TemperatureOf.Dryer);

    private static bool Does(Step step, string[] what) => step.Operations.Append(step.Operation).Any(o => o is not null && what.Contains(o));
}
