using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Needs;

/// <summary>What to buy for a set of needs.</summary>
/// <param name="Lines">One for each item of the price list that is needed.</param>
/// <param name="Total">Exact sum.</param>
/// <param name="Problems">Needs that could not be ordered, and why; nothing was assumed for them.</param>
public sealed record Order(ImmutableArray<OrderLine> Lines, Money Total, ImmutableArray<Problem> Problems)
{
    /// <summary>Sum by supplier, exact.</summary>
    public ImmutableSortedDictionary<string, Money> BySupplier => Lines
        .SelectMany(l => l.Packs)
        .GroupBy(p => p.Row.Supplier, StringComparer.Ordinal)
        .ToImmutableSortedDictionary(g => g.Key, g => new Money(g.Sum(p => p.Count * p.Row.Price.Amount), Total.Currency), StringComparer.Ordinal);

    /// <summary>Sums needs by item, covers each by the cheapest mix of packs and flags thin margins.</summary>
    /// <param name="needs">All needs: dishes, twins, spares, diets.</param>
    /// <param name="prices">The price list.</param>
    /// <param name="leastMargin">Weighed goods are bought with at least this over, as a share; 0.01 covers what sticks to the pack (common practice, no source).</param>
    /// <param name="thinMargin">Below this share over, the line is flagged.</param>
    public static Order For(IEnumerable<Need> needs, PriceList prices, decimal leastMargin = 0.01m, decimal thinMargin = 0.05m)
    {
        List<Problem> problems = [];
        List<OrderLine> lines = [];
        foreach (PricedItem item in PricedNeeds.Of(needs, prices, PriceMatch.For(prices), problems))
        {
            PackMix mix = PackMix.Cheapest(item.Pieces ? item.Amount : item.Amount * (1 + leastMargin), [.. item.Rows.Select(r => (r.PackSize, r.Price.Amount))]);
            ImmutableArray<OrderedPack> packs = [.. item.Rows.Zip(mix.Packs).Where(x => x.Second > 0).Select(x => new OrderedPack(x.First, x.Second))];
            decimal margin = item.Amount == 0 ? 0 : (mix.Bought - item.Amount) / item.Amount;
            lines.Add(new(item.Item, item.Amount, mix.Bought, packs, new(mix.Cost, prices.Currency), margin, !item.Pieces && margin < thinMargin, [.. item.Lines.Select(l => l.Need)]));
        }

        return new([.. lines], new(lines.Sum(l => l.Cost.Amount), prices.Currency), [.. problems]);
    }
}

/// <summary>One item of an order.</summary>
/// <param name="Item">Item of the price list.</param>
/// <param name="Need">Grams to buy, or pieces.</param>
/// <param name="Bought">Grams or pieces bought.</param>
/// <param name="Packs">Packs bought.</param>
/// <param name="Cost">Exact cost.</param>
/// <param name="Margin">(bought − need) / need.</param>
/// <param name="Thin">The margin is below the flag.</param>
/// <param name="Needs">What it is for.</param>
public sealed record OrderLine(string Item, decimal Need, decimal Bought, ImmutableArray<OrderedPack> Packs, Money Cost, decimal Margin, bool Thin, ImmutableArray<Need> Needs);

/// <summary>Packs of one kind.</summary>
/// <param name="Row">The offer.</param>
/// <param name="Count">How many.</param>
public sealed record OrderedPack(PriceRow Row, int Count);
