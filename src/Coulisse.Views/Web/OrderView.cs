using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Needs;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Views.Web;

/// <summary>The order of an occasion: who brings what on which day, how much is over, what it costs.</summary>
/// <param name="Id">Occasion.</param>
/// <param name="Title">Its title.</param>
/// <param name="Says">Total and whether it is proven cheapest.</param>
/// <param name="Asks">What could not be ordered, each as a question with what would settle it.</param>
/// <param name="Thin">Lines with little to spare.</param>
/// <param name="Deliveries">One for each supplier and day.</param>
/// <param name="Stock">What the larder gives.</param>
/// <param name="NotCounted">Lines without an amount.</param>
/// <param name="Ordered">Day of ordering, as it stands in the form.</param>
/// <param name="Needed">Last day on which goods may come.</param>
/// <param name="Over">Least share over, percent.</param>
/// <param name="Besides">Needed besides, as typed: "swede=1 piece; beetroot=500 g".</param>
public sealed record OrderView(
    string Id, string Title, string Says, ImmutableArray<string> Asks, ImmutableArray<string> Thin, ImmutableArray<DeliveryView> Deliveries, ImmutableArray<string> Stock, ImmutableArray<string> NotCounted, string Ordered, string Needed, string Over, string Besides = "")
{
    /// <summary>Tail of an address that asks for the same order.</summary>
    public string Tail => $"?ordered={Uri.EscapeDataString(Ordered)}&needed={Uri.EscapeDataString(Needed)}&over={Uri.EscapeDataString(Over)}&besides={Uri.EscapeDataString(Besides)}";

    /// <summary>Lays an order out.</summary>
    /// <param name="order">The order.</param>
    /// <param name="arrives">Day the sheet says the order comes; null when it says none.</param>
    /// <param name="code">Code of practice.</param>
    /// <param name="culture">Culture of figures and days.</param>
    public OrderView With(Order order, LocalDate? arrives, string code, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(order);
        string currency = order.Total.Currency;
        decimal topUp = order.TopUp.Values.Sum();
        return this with
        {
            Says = string.Create(culture, $"{order.Total.Amount:#,0.00} {currency} {(order.Problems.IsEmpty ? "in all" : "without what is asked about below")}{(topUp > 0 ? $", and {topUp:0.00} more to reach minimum orders" : "")}; {(order.Proven ? order.Problems.IsEmpty ? "no cheaper mix of packs and suppliers covers it" : "no cheaper mix of packs and suppliers covers the rest" : $"not proven cheapest: at best {order.Bound:0.00}")}."),
            Thin = [.. order.Lines.Where(l => l.Thin).Select(l => string.Create(culture, $"{l.Item}: {Amount(l, l.Bought + l.FromStock.Sum(s => s.Amount), culture)} for {Amount(l, l.Need, culture)}, {l.Margin * 100:0.0} % over"))],
            Deliveries = [.. order.Lines.SelectMany(l => l.Packs.Select(p => (Line: l, Pack: p, Day: p.ComesOn ?? arrives))).GroupBy(x => (x.Pack.Row.Supplier, x.Day))
                .OrderBy(g => g.Key.Day is null).ThenBy(g => g.Key.Day ?? default).ThenBy(g => g.Key.Supplier, StringComparer.Ordinal).Select(g => Delivery(g.Key.Supplier, g.Key.Day, [.. g.Select(x => (x.Line, x.Pack))], order, code, culture))],
            Stock = [.. order.Lines.SelectMany(l => l.FromStock.Select(s => string.Create(culture, $"{Amount(l, s.Amount, culture)} {s.Lot.Item}{(s.Lot.Since is { } d ? $", there since {LocalDatePattern.Iso.Format(d)}" : "")}")))],
        };
    }

    private static DeliveryView Delivery(string supplier, LocalDate? day, ImmutableArray<(OrderLine Line, OrderedPack Pack)> packs, Order order, string code, CultureInfo culture)
    {
        LocalDate? by = day is { } d ? packs.Where(p => p.Pack.Row.LeadDays is not null).Select(p => (LocalDate?)d.PlusDays(-p.Pack.Row.LeadDays!.Value)).Min() : null;
        decimal sum = packs.Sum(p => p.Pack.Count * p.Pack.Row.Price.Amount);
        return new DeliveryView(
            supplier.Length > 0 ? supplier : "No supplier named", day is { } on ? on.ToString("dddd d MMMM", culture) : "day not known", by is { } b ? "order by " + b.ToString("dddd d MMMM", culture) : "",
            string.Create(culture, $"{sum:#,0.00} {order.Total.Currency}"), order.TopUp.GetValueOrDefault(supplier) is > 0 and var more ? string.Create(culture, $"{more:0.00} short of its minimum order") : "",
            [.. packs.OrderBy(p => p.Line.Item, StringComparer.Ordinal).Select(p => new OrderRowView(
                p.Line.Item, p.Pack.Row.Note, Amount(p.Line, p.Line.Need, culture), string.Create(culture, $"{p.Pack.Count} × {p.Pack.Row.PackSize:#,0.##} {p.Pack.Row.Unit}"), (p.Pack.Count * p.Pack.Row.Price.Amount).ToString("#,0.00", culture),
                Left(p.Line, culture), p.Line.Thin, p.Pack.Row.MayReplace switch { true => "allowed", false => "not allowed", _ => "ask first" }, Arrives(p.Line, code, culture)))]);
    }

    private static string Arrives(OrderLine line, string code, CultureInfo culture) => ReceivingLimits.For(line, code) switch
    {
        { Frozen: true, Celsius: { } c } => "frozen hard, " + Figures.Celsius(c, culture) + " or colder",
        { Celsius: { } c } => Figures.Celsius(c, culture) + " or colder",
        { Known: false } => "as its label says",
        _ => "dry, whole",
    };

    // Grams say more than "9,214 %" where a pack is far more than is needed.
    private static string Left(OrderLine line, CultureInfo culture)
        => Amount(line, line.Bought + line.FromStock.Sum(s => s.Amount) - line.Need, culture) + (line.Margin < 1 ? string.Create(culture, $", {line.Margin * 100:0.0} %") : "");

    private static string Amount(OrderLine line, decimal amount, CultureInfo culture) => (line.Packs.IsEmpty ? "g" : line.Packs[0].Row.Unit) switch
    {
        "each" => string.Create(culture, $"{amount:0.##}"),
        "ml" => string.Create(culture, $"{amount:#,0} mL"),
        _ => string.Create(culture, $"{amount:#,0.#} g"),
    };
}

/// <summary>What one supplier brings on one day.</summary>
public sealed record DeliveryView(string Supplier, string Day, string By, string Sum, string Short, ImmutableArray<OrderRowView> Rows);

/// <summary>One kind of pack.</summary>
/// <param name="Item">Item.</param>
/// <param name="Note">Note of the list.</param>
/// <param name="Need">What must be bought.</param>
/// <param name="Packs">Packs.</param>
/// <param name="Sum">Money.</param>
/// <param name="Over">What is left over, with its share while that says something.</param>
/// <param name="Thin">Under five percent.</param>
/// <param name="Replace">Whether another article may come.</param>
/// <param name="Arrives">How it must arrive.</param>
public sealed record OrderRowView(string Item, string Note, string Need, string Packs, string Sum, string Over, bool Thin, string Replace, string Arrives);
