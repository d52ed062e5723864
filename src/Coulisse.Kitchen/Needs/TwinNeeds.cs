using System.Collections.Immutable;
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
        (ImmutableArray<TwinBatch> made, ImmutableArray<string> left) = TwinBatch.Of(twins, occasion, batches);

        // Takings from components that the twin's own small batch does not hold stand in the service batch's place.
        return ([.. made.SelectMany(m => NeedsList.From([m.Batch]).Needs.Select(n => n with { For = TwinBatch.Label(m.Need), Role = NeedRole.Twin, FromWhole = m.Need.StageLine == 0 && n.Cut is not null }))], left);
    }
}
