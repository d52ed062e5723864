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
    public static Costing Of(IEnumerable<Need> needs, PriceList prices) => Of(needs, prices, PriceMatch.For(prices));

    /// <summary>The same with names matched before: a shelf of dishes asks for the same foods again and again.</summary>
    internal static Costing Of(IEnumerable<Need> needs, PriceList prices, PriceMatch match)
    {
        List<Problem> problems = [];
        List<CostLine> lines = [];
        foreach (PricedItem item in PricedNeeds.Of(needs, match, problems))
        {
            decimal unit = item.Rows.Min(r => r.PerUnit);
            decimal? each = item.Pieces ? match.Note(item.Item).GramsEach is { } g ? (decimal)g : null : item.Rows[0].Unit == "g" ? 1 : null;

            // A third of a pack has no last decimal. Cut at the fifteenth, lines add up to the same total whichever way they are put together.
            CostLine Line(Need need, decimal amount, decimal value) => new(need, item.Item, amount, new(Math.Round(value, 15), prices.Currency)) { Trim = new(Math.Round(Trimmed(need, Math.Round(value, 15), unit, each), 15), prices.Currency) };

            lines.AddRange(item.Lines.Where(l => !Cut(item, l.Need)).Select(l => Line(l.Need, l.Amount, l.Amount * unit)));

            // What is cut from whole pieces is paid for in whole pieces, what is served first: a twin pays only for the pieces it adds.
            decimal before = 0;
            foreach (IGrouping<NeedRole, (Need Need, decimal Amount)> role in item.Lines.Where(l => Cut(item, l.Need)).GroupBy(l => l.Need.Role).OrderBy(g => g.Key))
            {
                decimal own = role.Sum(l => l.Amount);
                decimal whole = Whole(before + own) - Whole(before);
                lines.AddRange(role.Select(l => Line(l.Need, l.Amount, own == 0 ? 0 : whole * unit * l.Amount / own)));
                before += own;
            }
        }

        return new([.. lines], prices.Currency, [.. problems]);
    }

    /// <summary>Exact sum.</summary>
    public Money Total => Sum(Lines);

    /// <summary>Exact sum of what serves one purpose.</summary>
    public Money For(NeedRole role) => Sum(Lines.Where(l => l.Need.Role == role));

    /// <summary>Exact sums by dish and component.</summary>
    public ImmutableArray<PartCost> Parts => [.. Lines.GroupBy(l => (l.Need.Dish, l.Need.Component, l.Need.Role)).Select(g => new PartCost(g.Key.Dish, g.Key.Component, g.Key.Role, Sum(g)))];

    /// <summary>What is paid for and cut away (peel, stalks, what a disc leaves of its slice), as far as weights are known. It is part of the total, not on top of it.</summary>
    public Money Trim => new(Lines.Sum(l => l.Trim.Amount), Currency);

    // Paid grams less used grams, at the price a gram; a line weighed ready to use from a whole pack has none.
    private static decimal Trimmed(Need need, decimal value, decimal unit, decimal? gramsEach)
    {
        decimal paid = unit > 0 && gramsEach is { } each ? value / unit * each : 0;
        return paid > 0 && need.Grams > 0 ? Math.Max(0, value * (1 - ((decimal)need.Grams / paid))) : 0;
    }

    private static bool Cut(PricedItem item, Need need) => item.Pieces && need.Cut is not null;

    private static decimal Whole(decimal pieces) => Math.Ceiling(pieces - 0.000000001m);

    private Money Sum(IEnumerable<CostLine> lines) => new(lines.Sum(l => l.Value.Amount), Currency);
}

/// <summary>Value of one need.</summary>
/// <param name="Need">The need.</param>
/// <param name="Item">Item of the price list.</param>
/// <param name="Amount">Amount to buy for it, grams or pieces.</param>
/// <param name="Value">Its value, unrounded.</param>
public sealed record CostLine(Need Need, string Item, decimal Amount, Money Value)
{
    /// <summary>The share of the value that is cut away before use; nothing where no weight is known.</summary>
    public Money Trim { get; init; } = new(0, Value.Currency);
}

/// <summary>Value of a component.</summary>
/// <param name="Dish">Dish.</param>
/// <param name="Component">Component; empty for the dish as a whole.</param>
/// <param name="Role">Served, twin, diet or added.</param>
/// <param name="Value">Sum, unrounded.</param>
public sealed record PartCost(string Dish, string Component, NeedRole Role, Money Value);
