using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Method;

/// <summary>What a component's method does to its mixture, step by step.</summary>
/// <param name="Component">The component's name.</param>
/// <param name="Stages">One for each step.</param>
public sealed record MethodRun(string Component, ImmutableArray<MethodStage> Stages);

/// <summary>One step: mixture before, what happened, mixture after.</summary>
/// <param name="Step">The step.</param>
/// <param name="Before">Mixture before.</param>
/// <param name="After">Mixture after.</param>
/// <param name="Duration">Minutes, with where they came from; null when unknown.</param>
/// <param name="Heat">What heat did to the slowest point; null when no heat was worked out.</param>
/// <param name="Losses">Water driven off and the like, in words with grams.</param>
public sealed record MethodStage(Step Step, Mixture Before, Mixture After, Estimate<double>? Duration, HeatRun? Heat, ImmutableArray<string> Losses)
{
    /// <summary>What the step did to the weight.</summary>
    public StepChange Change { get; init; }

    /// <summary>The loss that was taken though the card does not state it; null when it states one or none was taken.</summary>
    public LossRange? Unstated { get; init; }
}

/// <summary>A mixture at one stage: grams of each constituent.</summary>
/// <remarks>A null constituent is not known, never zero. Sums include the known parts only.</remarks>
public sealed record Mixture
{
    /// <summary>Total grams.</summary>
    public required double Grams { get; init; }

    /// <summary>Water, g.</summary>
    public double? Water { get; init; }

    /// <summary>Protein, g.</summary>
    public double? Protein { get; init; }

    /// <summary>Fat, g.</summary>
    public double? Fat { get; init; }

    /// <summary>Carbohydrate without fibre, g.</summary>
    public double? Carbohydrate { get; init; }

    /// <summary>Sugars within carbohydrate, g.</summary>
    public double? Sugars { get; init; }

    /// <summary>Fibre, g.</summary>
    public double? Fibre { get; init; }

    /// <summary>Ash, g.</summary>
    public double? Ash { get; init; }

    /// <summary>Alcohol, g.</summary>
    public double? Alcohol { get; init; }

    /// <summary>Sodium, mg.</summary>
    public double? SodiumMilligrams { get; init; }

    /// <summary>Grams of foods whose composition is not held.</summary>
    public double UnknownGrams { get; init; }

    /// <summary>Foods whose composition is not held.</summary>
    public ImmutableArray<string> Unknown { get; init; } = [];
}

/// <summary>Heat at the slowest point.</summary>
/// <param name="Start">Start temperature.</param>
/// <param name="Medium">Medium temperature.</param>
/// <param name="Thickness">Thickness or diameter.</param>
/// <param name="MinutesToTarget">Best and cautious minutes to the stated limit; null when there is no limit or it is never reached.</param>
/// <param name="Curve">Core and surface against minutes, cautious case.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record HeatRun(Temperature Start, Temperature Medium, Length Thickness, BestCautious? MinutesToTarget, ImmutableArray<CurvePoint> Curve, ImmutableArray<Origin> Assumptions);

/// <summary>A figure as best estimate and cautious bound.</summary>
/// <param name="Best">Best estimate.</param>
/// <param name="Cautious">Cautious bound.</param>
public sealed record BestCautious(double Best, double Cautious);

/// <summary>A point of a heating or cooling curve.</summary>
/// <param name="Minute">Minutes from the start.</param>
/// <param name="Core">Slowest point, °C.</param>
/// <param name="Surface">Surface, °C.</param>
public readonly record struct CurvePoint(double Minute, double Core, double Surface);
