using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Needs;

/// <summary>Value of what the recipes use: grams × pack price ÷ pack content ÷ usable share. Rests of packs are the order's matter, not the dish's.</summary>
/// <param name="Lines">Each need with its value.</param>
/// <param name="Currency">Currency of the price list.</param>
/// <param name="Problems">Needs that have no value, and why; nothing was assumed for them.</param>
public sealed record Costing(ImmutableArray<CostLine> Lines, string Currency, ImmutableArray<Problem> Problems)
{
    /// <summary>Values needs by a price list.</summary>
    /// <param name="needs">Needs.</param>
    /// <param name="prices">The list; an item on offer in several packs is valued at its cheapest price a unit.</param>
    /// <remarks>Roots cut into discs count in whole pieces, shared over the needs. Of the parts of one fruit the one that decides how many are bought carries the price.</remarks>
    public static Costing Of(IEnumerable<Need> needs, PriceList prices)
    {
        List<Problem> problems = [];
        List<CostLine> lines = [];
        foreach (PricedItem item in PricedNeeds.Of(needs, prices, PriceMatch.For(prices), problems))
        {
            decimal unit = item.Rows.Min(r => r.PerUnit);

            // What is cut from whole pieces is paid for in whole pieces; zest by the gram, since the rest of the fruit is of use.
            decimal cut = item.Lines.Where(l => l.Need.Cut is not null && item.Pieces).Sum(l => l.Amount);
            decimal whole = cut == 0 ? 1 : Math.Ceiling(cut - 0.000000001m) / cut;
            lines.AddRange(item.Lines.Select(l => new CostLine(l.Need, item.Item, l.Amount, new(l.Amount * unit * (item.Pieces && l.Need.Cut is not null ? whole : 1), prices.Currency))));
        }

        return new([.. lines], prices.Currency, [.. problems]);
    }

    /// <summary>Exact sum.</summary>
    public Money Total => Sum(Lines);

    /// <summary>Exact sum of what serves one purpose.</summary>
    public Money For(NeedRole role) => Sum(Lines.Where(l => l.Need.Role == role));

    /// <summary>Exact sums by dish and component.</summary>
    public ImmutableArray<PartCost> Parts => [.. Lines.GroupBy(l => (l.Need.Dish, l.Need.Component, l.Need.Role)).Select(g => new PartCost(g.Key.Dish, g.Key.Component, g.Key.Role, Sum(g)))];

    private Money Sum(IEnumerable<CostLine> lines) => new(lines.Sum(l => l.Value.Amount), Currency);
}

/// <summary>Value of one need.</summary>
/// <param name="Need">The need.</param>
/// <param name="Item">Item of the price list.</param>
/// <param name="Amount">Amount to buy for it, grams or pieces.</param>
/// <param name="Value">Its value, unrounded.</param>
public sealed record CostLine(Need Need, string Item, decimal Amount, Money Value);

/// <summary>Value of a component.</summary>
/// <param name="Dish">Dish.</param>
/// <param name="Component">Component; empty for the dish as a whole.</param>
/// <param name="Role">Served, twin, diet or added.</param>
/// <param name="Value">Sum, unrounded.</param>
public sealed record PartCost(string Dish, string Component, NeedRole Role, Money Value);
