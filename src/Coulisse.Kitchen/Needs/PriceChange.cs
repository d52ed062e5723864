using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Needs;

/// <summary>A dish as it is costed on the shelf: what it takes and what that makes.</summary>
/// <param name="Title">Dish.</param>
/// <param name="Needs">What it takes.</param>
/// <param name="Makes">Plates or pieces it makes, more than 0.</param>
/// <param name="Unit">What these are; empty for the whole card.</param>
public sealed record ShelvedDish(string Title, ImmutableArray<Need> Needs, double Makes, string Unit)
{
    /// <summary>A card as written: its lines, its yield in portions or pieces, else its first yield.</summary>
    public static ShelvedDish Of(Formulas.Batch batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        Dish dish = batch.Weighed.Dish;
        CardYield? makes = dish.Yields.FirstOrDefault(y => y.Unit is "portions" or "plates" or "covers" or "pieces" && y.Amount > 0);
        return new ShelvedDish(dish.Title, NeedsList.From([batch]).Needs, makes?.Amount ?? 1, makes?.Unit ?? "");
    }
}

/// <summary>A pack whose price is another, or that came or went.</summary>
/// <param name="Item">Item.</param>
/// <param name="Supplier">Supplier.</param>
/// <param name="Pack">Content and unit as sold.</param>
/// <param name="Before">Price before; null when it was not on offer.</param>
/// <param name="After">Price after; null when it no longer is.</param>
/// <param name="Since">First day of the price after; null when not stated.</param>
public sealed record ChangedPrice(string Item, string Supplier, (decimal Size, string Unit) Pack, decimal? Before, decimal? After, LocalDate? Since)
{
    /// <summary>Change in percent; null for what came or went, or cost nothing.</summary>
    public decimal? Percent => Before is > 0 and var b && After is { } a ? (a - b) / b * 100 : null;
}

/// <summary>A dish before and after a change of prices.</summary>
/// <param name="Dish">The dish.</param>
/// <param name="Before">Value of what it takes, unrounded; what has no price counts nothing.</param>
/// <param name="After">The same after.</param>
/// <param name="Because">Items that move it, the largest first, with what each adds.</param>
/// <param name="NotPriced">Foods without a price before or after: the figures leave them out.</param>
public sealed record ChangedDish(ShelvedDish Dish, Money Before, Money After, ImmutableArray<(string Item, decimal Adds)> Because, ImmutableArray<string> NotPriced)
{
    /// <summary>What one plate or piece costs before.</summary>
    public Money EachBefore => Before * (1 / (decimal)Dish.Makes);

    /// <summary>What one costs after.</summary>
    public Money EachAfter => After * (1 / (decimal)Dish.Makes);

    /// <summary>Change in percent; 0 where nothing moves, null where it cost nothing before.</summary>
    public decimal? Percent => Before.Amount > 0 ? (After.Amount - Before.Amount) / Before.Amount * 100 : After.Amount == 0 ? 0 : null;
}

/// <summary>What another price list does to every dish.</summary>
/// <param name="Prices">Packs that changed, came or went.</param>
/// <param name="Dishes">Every dish, the one that moves most first.</param>
public sealed record PriceChange(ImmutableArray<ChangedPrice> Prices, ImmutableArray<ChangedDish> Dishes)
{
    /// <summary>Costs every dish by both lists.</summary>
    /// <param name="dishes">Dishes.</param>
    /// <param name="before">List before.</param>
    /// <param name="after">List after; in the same currency.</param>
    public static PriceChange Of(IEnumerable<ShelvedDish> dishes, PriceList before, PriceList after)
    {
        ArgumentNullException.ThrowIfNull(dishes);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        if (before.Currency != after.Currency && !before.Rows.IsEmpty && !after.Rows.IsEmpty)
        {
            throw new ArgumentException($"One list is in {before.Currency}, the other in {after.Currency}.", nameof(after));
        }

        ImmutableArray<ChangedPrice> prices = Compare(before, after);
        HashSet<string> moved = [.. prices.Select(p => p.Item)];
        PriceMatch was = PriceMatch.For(before);
        PriceMatch now = PriceMatch.For(after);
        return new PriceChange(prices, [.. dishes.Select(d => One(d, before, after, was, now, moved)).OrderByDescending(d => Math.Abs(d.After.Amount - d.Before.Amount) / (decimal)d.Dish.Makes).ThenBy(d => d.Dish.Title, StringComparer.Ordinal)]);
    }

    private static ImmutableArray<ChangedPrice> Compare(PriceList before, PriceList after)
    {
        ILookup<(string, string, decimal, string), PriceRow> old = before.Rows.ToLookup(Key);
        ILookup<(string, string, decimal, string), PriceRow> young = after.Rows.ToLookup(Key);
        return [.. old.Select(g => g.Key).Union(young.Select(g => g.Key)).Select(k =>
        {
            decimal? a = old.Contains(k) ? old[k].Min(r => r.Price.Amount) : null;
            decimal? b = young.Contains(k) ? young[k].Min(r => r.Price.Amount) : null;
            return a == b ? null : new ChangedPrice(k.Item1, k.Item2, (k.Item3, k.Item4), a, b, young[k].FirstOrDefault()?.Since);
        }).OfType<ChangedPrice>()];
    }

    private static (string, string, decimal, string) Key(PriceRow r) => (r.Item, r.Supplier, r.PackSize, r.Unit);

    // A dish that takes nothing of what moved is costed once.
    private static ChangedDish One(ShelvedDish dish, PriceList before, PriceList after, PriceMatch was, PriceMatch now, HashSet<string> moved)
    {
        Costing old = Costing.Of(dish.Needs, before, was);
        bool touched = !old.Problems.IsEmpty || old.Lines.Any(l => moved.Contains(l.Item));
        Costing young = touched ? Costing.Of(dish.Needs, after, now) : old;
        ImmutableArray<(string, decimal)> because = !touched ? [] : [.. young.Lines.Select(l => (l.Item, Adds: l.Value.Amount)).Concat(old.Lines.Select(l => (l.Item, Adds: -l.Value.Amount)))
            .GroupBy(x => x.Item, StringComparer.Ordinal).Select(g => (g.Key, Sum: g.Sum(x => x.Adds))).Where(x => x.Sum != 0).OrderByDescending(x => Math.Abs(x.Sum)).ThenBy(x => x.Key, StringComparer.Ordinal)];
        return new ChangedDish(dish, old.Total, young.Total, because, [.. old.Problems.Concat(young.Problems).Select(p => p.Message).Distinct()]);
    }
}
