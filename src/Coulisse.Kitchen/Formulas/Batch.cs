using System.Collections.Immutable;

namespace Coulisse.Kitchen.Formulas;

/// <summary>A weighed dish scaled to what is wanted.</summary>
/// <param name="Weighed">What was scaled.</param>
/// <param name="Factor">By how much, as a whole.</param>
/// <param name="For">What it was scaled to, in words ("53 plates").</param>
/// <param name="Components">Components with their own factors.</param>
public sealed record Batch(WeighedDish Weighed, double Factor, string For, ImmutableArray<BatchComponent> Components);

/// <summary>A scaled component.</summary>
/// <param name="Weighed">What was scaled.</param>
/// <param name="Factor">By how much.</param>
/// <param name="Batches">In how many batches it is made, one for each vessel load.</param>
/// <param name="Lines">Scaled lines.</param>
/// <param name="Steps">Steps with their minutes.</param>
public sealed record BatchComponent(WeighedComponent Weighed, double Factor, int Batches, ImmutableArray<BatchLine> Lines, ImmutableArray<BatchStep> Steps)
{
    /// <summary>Sum of exact grams.</summary>
    public double Grams => Lines.Sum(l => l.Grams);
}

/// <summary>A scaled line.</summary>
/// <param name="Weighed">What was scaled.</param>
/// <param name="Grams">Exact grams.</param>
/// <param name="Rounded">Grams as they can be weighed.</param>
/// <param name="RoundingPercent">(rounded − exact) / exact · 100.</param>
/// <param name="StepGrams">Rounding step used.</param>
public sealed record BatchLine(WeighedLine Weighed, double Grams, double Rounded, double RoundingPercent, double StepGrams);

/// <summary>A step's minutes, as written and for this batch.</summary>
/// <param name="Step">As read.</param>
/// <param name="MinutesAsWritten">As written; null when the card gives none.</param>
/// <param name="Minutes">For this batch; null when nothing is known.</param>
/// <param name="Why">Why it changed or did not.</param>
public sealed record BatchStep(Cards.Step Step, double? MinutesAsWritten, double? Minutes, string Why)
{
    /// <summary>Cautious minutes; null when nothing is known or the kit never gets there.</summary>
    public double? MinutesCautious { get; init; }

    /// <summary>Worked out from mass, load, thickness and power, not taken as written.</summary>
    public bool Physical { get; init; }
}
