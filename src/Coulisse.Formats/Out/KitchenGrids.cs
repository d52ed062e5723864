using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;

namespace Coulisse.Formats.Out;

/// <summary>Order, cost and records as tables.</summary>
public static class KitchenGrids
{
    /// <summary>The order: a row a pack, then what could not be ordered.</summary>
    public static ImmutableArray<Grid> Of(Order order)
    {
        ArgumentNullException.ThrowIfNull(order);
        return
        [
            new Grid("Order", ["supplier", "item", "packs", "pack_size", "unit", "pack_price", "sum", "currency", "need", "bought", "margin_percent", "thin", "lead_days", "comes_on", "other_article", "note"],
                [.. order.Lines.SelectMany(l => l.Packs.Select(p => Grid.Row(p.Row.Supplier, l.Item, p.Count, p.Row.PackSize, p.Row.Unit, p.Row.Price.Amount, p.Count * p.Row.Price.Amount, order.Total.Currency, Math.Round(l.Need, 3), l.Bought, Math.Round(l.Margin * 100, 2), l.Thin ? "yes" : "no", p.Row.LeadDays, p.ComesOn, p.Row.MayReplace switch { true => "allowed", false => "not allowed", _ => null }, p.Row.Note))).OrderBy(r => (string)r[0]!, StringComparer.Ordinal).ThenBy(r => r[13] as NodaTime.LocalDate? ?? default).ThenBy(r => (string)r[1]!, StringComparer.Ordinal)]),
            new Grid("From stock", ["item", "take", "there_since"], [.. order.Lines.SelectMany(l => l.FromStock.Select(t => Grid.Row(t.Lot.Item, t.Amount, t.Lot.Since)))]),
            new Grid("Not ordered", ["code", "line", "what", "remedy"], [.. order.Problems.Select(p => Grid.Row(p.Code, p.Line, p.Message, p.Hint))]),
        ];
    }

    /// <summary>The cost, a row a need.</summary>
    public static ImmutableArray<Grid> Of(Costing costing)
    {
        ArgumentNullException.ThrowIfNull(costing);
        return
        [
            new Grid("Cost", ["dish", "part", "for", "ingredient", "grams", "item", "to_buy", "value", "currency"],
                [.. costing.Lines.Select(l => Grid.Row(l.Need.Dish, l.Need.Component, l.Need.Role.ToString().ToLowerInvariant(), l.Need.Food, Math.Round(l.Need.Grams, 3), l.Item, Math.Round(l.Amount, 4), Math.Round(l.Value.Amount, 6), costing.Currency))]),
            new Grid("Cost by part", ["dish", "part", "for", "value", "currency"], [.. costing.Parts.Select(p => Grid.Row(p.Dish, p.Component, p.Role.ToString().ToLowerInvariant(), Math.Round(p.Value.Amount, 6), costing.Currency))]),
        ];
    }

    /// <summary>The production record: planned grams, the rest to be filled in.</summary>
    /// <param name="batches">Batches with the names they go by.</param>
    public static Grid Record(IEnumerable<(string Name, Batch Batch)> batches) => new("Record", ["dish", "part", "planned_grams", "made_grams", "served", "left_over", "minutes", "celsius_at_service", "put_in_place_of", "for_next_time"],
        [.. batches.SelectMany(b => b.Batch.Components.Where(c => !c.Lines.IsEmpty).Select(c => Grid.Row(b.Name, c.Weighed.Component.Name, Math.Round(c.Lines.Where(l => l.Weighed.Grade != WeightGrade.Unknown).Sum(l => l.Rounded), 2), null, null, null, null, null, null, null)))]);
}
