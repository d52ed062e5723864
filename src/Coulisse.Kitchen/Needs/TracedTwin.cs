using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;

namespace Coulisse.Kitchen.Needs;

/// <summary>A twin with the batch it is of and what it carries.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Dish">Dish.</param>
/// <param name="Component">Component.</param>
/// <param name="State">State it stands in.</param>
/// <param name="Of">"the batch for service" or "a batch of its own": a recall of one takes the other along only in the first case.</param>
/// <param name="Allergens">What it carries.</param>
public sealed record TracedTwin(int Number, string Dish, string Component, string State, string Of, ImmutableArray<AllergenLine> Allergens)
{
    /// <summary>Twins of the slot, each with its batch.</summary>
    public static ImmutableArray<TracedTwin> Trace(Occasion occasion, IEnumerable<TwinNeed> twins, AllergenRegime regime)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        ArgumentNullException.ThrowIfNull(twins);
        return [.. twins.Select(t =>
        {
            OccasionDish? dish = occasion.Dishes.FirstOrDefault(d => d.Name == t.Dish) ?? occasion.Dishes.FirstOrDefault(d => d.Dish.Title == t.Dish);
            WeighedDish? weighed = dish is null ? null : Weighing.Weigh(dish.Dish);
            WeighedComponent? part = weighed?.Components.FirstOrDefault(c => c.Component.Name.Equals(t.Twin.Component, StringComparison.OrdinalIgnoreCase));
            IEnumerable<AllergenReason> reasons = weighed is null ? [] : (part is null ? weighed.Components : Labels.Allergens.Reached(weighed, part)).SelectMany(c => Labels.Allergens.Reasons(c, dish!.Dish.Language, dish.Dish.Foods));
            return new TracedTwin(t.Twin.Number, t.Dish, t.Twin.Component, t.Twin.State, t.OwnBatch ? "a batch of its own" : "the batch for service", Labels.Allergens.Merge(reasons, regime));
        })];
    }
}
