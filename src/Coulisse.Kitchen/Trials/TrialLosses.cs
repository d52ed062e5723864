using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Method;

namespace Coulisse.Kitchen.Trials;

/// <summary>What parts of a card lost when they were made and weighed: (in − out − left behind) / in.</summary>
/// <remarks>Trials judged not good are left out; one that nobody judged counts. A part that came out heavier than it went in tells no loss.</remarks>
public static class TrialLosses
{
    /// <summary>Where losses come from that the card does not state: these trials, then what a kind of bake loses.</summary>
    /// <param name="dish">The card.</param>
    /// <param name="trials">Trials of it.</param>
    public static UnstatedLoss Of(Dish dish, IReadOnlyList<Trial> trials)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ArgumentNullException.ThrowIfNull(trials);
        ImmutableDictionary<string, LossRange>.Builder weighed = ImmutableDictionary.CreateBuilder<string, LossRange>(StringComparer.Ordinal);
        foreach (Component component in dish.Components)
        {
            string name = component.Name.Length > 0 ? component.Name : dish.Title;
            double[] shares = [.. trials.Where(t => t.Good != false).SelectMany(t => t.Yields).Where(y => string.Equals(y.Part.Trim(), name, StringComparison.OrdinalIgnoreCase) && y.InGrams > 0)
                .Select(y => (y.InGrams!.Value - y.OutGrams - (y.LeftGrams ?? 0)) / y.InGrams.Value).Where(s => s is > 0 and < 1)];
            if (shares.Length > 0)
            {
                weighed[component.Name] = new LossRange(shares.Min(), shares.Average(), shares.Max(), string.Create(CultureInfo.InvariantCulture, $"as weighed in {(shares.Length == 1 ? "a trial" : $"{shares.Length} trials")}"), true);
            }
        }

        return UnstatedLoss.OfKind with { Title = dish.Title, Weighed = weighed.ToImmutable() };
    }
}
