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

    /// <summary>What must be spent besides to reach minimum orders, by supplier.</summary>
    public ImmutableSortedDictionary<string, decimal> TopUp { get; init; } = ImmutableSortedDictionary<string, decimal>.Empty;

    /// <summary>No order for these needs costs less than this, top-ups counted.</summary>
    public decimal Bound { get; init; }

    /// <summary>The order is proven cheapest.</summary>
    public bool Proven => Total.Amount + TopUp.Values.Sum() - Bound < 0.005m;

    /// <summary>Sums needs by item, covers each by the cheapest mix of packs and flags thin margins.</summary>
    /// <param name="needs">All needs: dishes, twins, spares, diets.</param>
    /// <param name="prices">The price list.</param>
    /// <param name="leastMargin">Weighed goods are bought with at least this over, as a share.</param>
    /// <param name="thinMargin">Below this share over, the line is flagged.</param>
    public static Order For(IEnumerable<Need> needs, PriceList prices, decimal leastMargin = 0.01m, decimal thinMargin = 0.05m)
        => For(needs, prices, new OrderTerms { LeastMargin = leastMargin, ThinMargin = thinMargin });

    /// <summary>The same with stock used first, minimum orders, lead times and delivery days.</summary>
    /// <param name="needs">All needs.</param>
    /// <param name="prices">The price list.</param>
    /// <param name="terms">Terms.</param>
    public static Order For(IEnumerable<Need> needs, PriceList prices, OrderTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        List<Problem> problems = [];
        PriceMatch match = PriceMatch.For(prices);
        ILookup<string, StockLot> larder = Larder(terms, match, problems);
        List<(PricedItem Item, ImmutableArray<StockTake> Stock, decimal Buy, ImmutableArray<PriceRow> Rows)> open = [];
        foreach (PricedItem item in PricedNeeds.Of(needs, match, problems))
        {
            ImmutableArray<StockTake> stock = Take(item.Amount, larder[item.Item]);
            decimal left = item.Amount - stock.Sum(s => s.Amount);
            ImmutableArray<PriceRow> rows = [.. item.Rows.Where(terms.InTime)];
            if (left > 0 && rows.IsEmpty)
            {
                problems.Add(new("ORD006", item.Rows[0].Line, $"No supplier brings \"{item.Item}\" in time.", "Order earlier, move the day it is needed, or add a supplier."));
                continue;
            }

            open.Add((item, stock, left <= 0 ? 0 : item.Pieces ? left : left * (1 + terms.LeastMargin), rows));
        }

        (decimal, IReadOnlyList<SupplierOffer>)[] asked = [.. open.Where(o => o.Buy > 0).Select(o => (o.Buy, (IReadOnlyList<SupplierOffer>)[.. o.Rows.Select(r => new SupplierOffer(r.PackSize, r.Price.Amount, r.Supplier))]))];
        SupplierChoice choice = SupplierChoice.Cheapest(asked, terms.Suppliers.ToDictionary(s => s.Key, s => s.Value.Minimum));
        List<OrderLine> lines = [];
        int at = 0;
        foreach ((PricedItem item, ImmutableArray<StockTake> stock, decimal buy, ImmutableArray<PriceRow> rows) in open)
        {
            ImmutableArray<int> counts = buy > 0 ? choice.Packs[at++] : [];
            ImmutableArray<OrderedPack> packs = [.. rows.Zip(counts).Where(x => x.Second > 0).Select(x => new OrderedPack(x.First, x.Second) { ComesOn = terms.ComesOn(x.First) })];
            decimal bought = packs.Sum(p => p.Count * p.Row.PackSize);
            decimal margin = item.Amount == 0 ? 0 : (bought + stock.Sum(s => s.Amount) - item.Amount) / item.Amount;
            lines.Add(new(item.Item, item.Amount, bought, packs, new(packs.Sum(p => p.Count * p.Row.Price.Amount), prices.Currency), margin, !item.Pieces && buy > 0 && margin < terms.ThinMargin, [.. item.Lines.Select(l => l.Need)]) { FromStock = stock });
        }

        return new([.. lines], new(lines.Sum(l => l.Cost.Amount), prices.Currency), [.. problems]) { TopUp = choice.TopUp, Bound = choice.Bound };
    }

    private static ILookup<string, StockLot> Larder(OrderTerms terms, PriceMatch match, List<Problem> problems)
    {
        List<(string Item, StockLot Lot)> lots = [];
        foreach (StockLot lot in terms.Stock)
        {
            ImmutableArray<string> items = match.Items(new Need(lot.Item, 0, "stock") { FoodId = PriceMatch.IdOf(lot.Item) });
            if (items.Length == 1)
            {
                lots.Add((items[0], lot));
            }
            else if (items.Length > 1)
            {
                problems.Add(new("ORD001", 0, $"\"{lot.Item}\" (stock) may be {string.Join(" or ", items)}.", "Name it as the list does."));
            }
        }

        return lots.ToLookup(l => l.Item, l => l.Lot, StringComparer.Ordinal);
    }

    private static ImmutableArray<StockTake> Take(decimal need, IEnumerable<StockLot> lots)
    {
        ImmutableArray<StockTake>.Builder takes = ImmutableArray.CreateBuilder<StockTake>();
        foreach (StockLot lot in lots.Where(l => l.Amount > 0).OrderBy(l => l.Since is null).ThenBy(l => l.Since ?? default))
        {
            decimal own = Math.Min(need, lot.Amount);
            if (own > 0)
            {
                takes.Add(new(lot, own));
                need -= own;
            }
        }

        return takes.ToImmutable();
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
public sealed record OrderLine(string Item, decimal Need, decimal Bought, ImmutableArray<OrderedPack> Packs, Money Cost, decimal Margin, bool Thin, ImmutableArray<Need> Needs)
{
    /// <summary>What the larder gives, oldest first.</summary>
    public ImmutableArray<StockTake> FromStock { get; init; } = [];
}

/// <summary>Packs of one kind.</summary>
/// <param name="Row">The offer.</param>
/// <param name="Count">How many.</param>
public sealed record OrderedPack(PriceRow Row, int Count)
{
    /// <summary>Day it comes; null when time is not looked at.</summary>
    public NodaTime.LocalDate? ComesOn { get; init; }
}
