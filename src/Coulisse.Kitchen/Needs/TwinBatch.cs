using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;
using NodaTime;

namespace Coulisse.Kitchen.Needs;

/// <summary>What one twin takes beyond the batches for service, as a batch that can be weighed out: the order and the weigh-out sheet count the same grams.</summary>
/// <param name="Need">The twin.</param>
/// <param name="Dish">Position of its dish in the occasion, from 0.</param>
/// <param name="Batch">Its lines, in the proportion of the twin's weight to the raw weight of what it is made from.</param>
public sealed record TwinBatch(TwinNeed Need, int Dish, Batch Batch)
{
    /// <summary>What the twins of an occasion's slot take; none without hands or without a slot.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">Its batches, one a dish in the same order.</param>
    public static ImmutableArray<TwinBatch> Of(Occasion occasion, ImmutableArray<Batch> batches)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        return occasion.People.IsEmpty || occasion.SlotLength <= Duration.Zero ? [] : Of(LiveSlot.Decide(occasion).Twins, occasion, batches).Made;
    }

    /// <summary>The batches of those twins that a service batch does not serve, and the twins that are left out because nothing says what they weigh.</summary>
    /// <param name="twins">Twins of the slot.</param>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">Its batches, one a dish in the same order.</param>
    public static (ImmutableArray<TwinBatch> Made, ImmutableArray<string> LeftOut) Of(IEnumerable<TwinNeed> twins, Occasion occasion, ImmutableArray<Batch> batches)
    {
        ImmutableArray<TwinBatch>.Builder made = ImmutableArray.CreateBuilder<TwinBatch>();
        ImmutableArray<string>.Builder left = ImmutableArray.CreateBuilder<string>();
        foreach (TwinNeed twin in twins.Where(t => t.OwnBatch || t.Beyond))
        {
            int at = Enumerable.Range(0, occasion.Dishes.Length).FirstOrDefault(i => Same(occasion.Dishes[i].Name, twin.Dish) || Same(occasion.Dishes[i].Dish.Title, twin.Dish), -1);
            if (at < 0 || at >= batches.Length || twin.Twin.Grams is not > 0)
            {
                left.Add(Label(twin));
                continue;
            }

            WeighedComponent[] own = [.. batches[at].Weighed.Components.Where(c => Same(c.Component.Name, twin.Part ?? twin.Twin.Component))];
            WeighedComponent[] from = own.Length > 0 ? own : Same(occasion.Dishes[at].Name, twin.Twin.Component) || Same(occasion.Dishes[at].Dish.Title, twin.Twin.Component) ? [.. batches[at].Weighed.Components] : [];
            double raw = from.Sum(c => c.Lines.Where(l => l.Food.FromComponent is null && l.Grade != WeightGrade.Unknown).Sum(l => l.Grams));
            if (raw <= 0)
            {
                left.Add(Label(twin));
                continue;
            }

            Dish only = batches[at].Weighed.Dish with { Components = [.. from.Select(c => c.Component)] };
            if (Scaling.Scale(new WeighedDish(only, [.. from], batches[at].Weighed.Measures), new ScaleTo.Factor(twin.Twin.Grams.Value / raw)) is Parsed<Batch>.Ok(var batch))
            {
                made.Add(new TwinBatch(twin, at, batch));
            }
        }

        return (made.ToImmutable(), left.ToImmutable());
    }

    /// <summary>The twin in words, as needs and the order name it.</summary>
    internal static string Label(TwinNeed twin) => string.Create(CultureInfo.InvariantCulture, $"twin {twin.Twin.Number}: {twin.Twin.Component}, {twin.Twin.State}");

    private static bool Same(string a, string b) => a.Length > 0 && a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
