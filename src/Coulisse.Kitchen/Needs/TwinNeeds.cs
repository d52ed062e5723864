using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;

namespace Coulisse.Kitchen.Needs;

/// <summary>What twins take beyond the batches for service: a twin that needs a batch of its own or is kept from a batch made larger for it is bought for, one that is a share of the service batch is not.</summary>
public static class TwinNeeds
{
    /// <summary>Needs of the twins.</summary>
    /// <param name="twins">Twins of the slot.</param>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">Its batches, one a dish in the same order.</param>
    /// <returns>Needs, and twins that are left out because nothing says what they weigh.</returns>
    /// <remarks>A twin on which nothing has been done yet, of what is cut from whole roots, takes whole roots of its own: those of the service batch are cut by then. Lines are taken in the proportion of the twin's weight to the raw weight of what it is made from. A cooked twin has lost weight already, so its need is understated by the loss.</remarks>
    public static (ImmutableArray<Need> Needs, ImmutableArray<string> LeftOut) Of(IEnumerable<TwinNeed> twins, Occasion occasion, ImmutableArray<Batch> batches)
    {
        ImmutableArray<Need>.Builder needs = ImmutableArray.CreateBuilder<Need>();
        ImmutableArray<string>.Builder left = ImmutableArray.CreateBuilder<string>();
        foreach (TwinNeed twin in twins.Where(t => t.OwnBatch || t.Beyond))
        {
            string label = string.Create(CultureInfo.InvariantCulture, $"twin {twin.Twin.Number}: {twin.Twin.Component}, {twin.Twin.State}");
            int at = Enumerable.Range(0, occasion.Dishes.Length).FirstOrDefault(i => Same(occasion.Dishes[i].Name, twin.Dish) || Same(occasion.Dishes[i].Dish.Title, twin.Dish), -1);
            if (at < 0 || at >= batches.Length || twin.Twin.Grams is not > 0)
            {
                left.Add(label);
                continue;
            }

            WeighedComponent[] own = [.. batches[at].Weighed.Components.Where(c => Same(c.Component.Name, twin.Part ?? twin.Twin.Component))];
            WeighedComponent[] from = own.Length > 0 ? own : Same(occasion.Dishes[at].Name, twin.Twin.Component) || Same(occasion.Dishes[at].Dish.Title, twin.Twin.Component) ? [.. batches[at].Weighed.Components] : [];
            double raw = from.Sum(c => c.Lines.Where(l => l.Food.FromComponent is null && l.Grade != WeightGrade.Unknown).Sum(l => l.Grams));
            if (raw <= 0)
            {
                left.Add(label);
                continue;
            }

            Dish only = batches[at].Weighed.Dish with { Components = [.. from.Select(c => c.Component)] };
            double share = twin.Twin.Grams.Value / raw;
            if (Scaling.Scale(new WeighedDish(only, [.. from], batches[at].Weighed.Measures), new ScaleTo.Factor(share)) is Parsed<Batch>.Ok(var batch))
            {
                // Takings from components that the twin's own small batch does not hold stand in the service batch's place.
                needs.AddRange(NeedsList.From([batch]).Needs.Select(n => n with { For = label, Role = NeedRole.Twin, FromWhole = twin.StageLine == 0 && n.Cut is not null }));
            }
        }

        return (needs.ToImmutable(), left.ToImmutable());
    }

    private static bool Same(string a, string b) => a.Length > 0 && a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
