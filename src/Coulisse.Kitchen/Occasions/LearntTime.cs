using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Occasions;

/// <summary>How long a step's hands really took, in trials of the card, each brought to the card's own amount.</summary>
/// <param name="Fingerprint">Fingerprint of the step's words: an edited step has learnt nothing yet.</param>
/// <param name="Component">Component it stands in, folded as in its anchor.</param>
/// <param name="Minutes">A figure a trial.</param>
public sealed record LearntTime(string Component, string Fingerprint, ImmutableArray<double> Minutes)
{
    /// <summary>Trials that are needed before a plan uses them in place of what it assumed or was told: one bad or lucky day is not a rule.</summary>
    public const int Least = 3;

    /// <summary>The middle of the figures, minutes.</summary>
    public double Median
    {
        get
        {
            ImmutableArray<double> sorted = Minutes.Sort();
            int middle = sorted.Length / 2;
            return sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
        }
    }

    /// <summary>What a plan says beside the minutes.</summary>
    public string Why => string.Create(CultureInfo.InvariantCulture, $"learnt from {Minutes.Length} trials: {Minutes.Min():0.#} to {Minutes.Max():0.#} min");

    /// <summary>The learnt time of a step; null when there are too few trials of it.</summary>
    /// <param name="learnt">All that was learnt.</param>
    /// <param name="step">The step as the card has it now.</param>
    public static LearntTime? Of(ImmutableArray<LearntTime> learnt, Step step)
        => learnt.FirstOrDefault(l => l.Fingerprint == step.Anchor.Fingerprint && l.Component == step.Anchor.Component && l.Minutes.Length >= Least);
}
