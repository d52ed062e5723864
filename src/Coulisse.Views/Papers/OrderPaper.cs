using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Needs;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>The order, one table a supplier; what could not be ordered is said first.</summary>
public static class OrderPaper
{
    public const string Kind = "order";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Order is not { } order)
        {
            return null;
        }

        CultureInfo culture = bundle.Culture;
        List<Block> blocks = [.. order.Problems.Select(p => new CalloutBlock("Not on this order: " + p.Message, p.Hint))];
        foreach (var supplier in order.Lines.SelectMany(l => l.Packs.Select(p => (Line: l, Pack: p))).GroupBy(x => (x.Pack.Row.Supplier, x.Pack.ComesOn)).OrderBy(g => g.Key.Supplier, StringComparer.Ordinal).ThenBy(g => g.Key.ComesOn ?? default))
        {
            string name = supplier.Key.Supplier;
            blocks.Add(new HeadingBlock(1, (name.Length > 0 ? name : "No supplier named") + (supplier.Key.ComesOn is { } day ? ", " + Days.Long(day, culture) : "")));
            blocks.Add(new FactsBlock([new("Order by", By(bundle, supplier, culture)), new("Comes on", Comes(bundle, supplier, culture)), .. order.TopUp.GetValueOrDefault(name) is > 0 and var more ? [new Fact("Short of its least order by", Money(more, order.Total.Currency))] : Array.Empty<Fact>()]));
            ImmutableArray<PaperRow> rows = [.. supplier.OrderBy(x => x.Line.Item, StringComparer.Ordinal).Select(x => Row(x.Line, x.Pack, culture))];
            blocks.Add(new TableBlock(
            [
                new("Item"), new("Ready to use", Side.Right), new("Usable", Side.Right), new("To buy", Side.Right), new("On hand", Side.Right, Pen: 13), new("Pack", Side.Right), new("Packs", Side.Right, Strong: true), new("A pack", Side.Right), new("Sum", Side.Right), new("Over", Side.Right), new("Days ahead", Side.Right), new("Other article", Pen: 22), new("Came", Side.Centre), new("°C", Pen: 14),
            ],
            rows.Add(PaperRow.Total("Sum", "", "", "", "", "", "", "", Money(supplier.Sum(x => x.Pack.Count * x.Pack.Row.Price.Amount), order.Total.Currency), "", "", "", "", ""))));
        }

        OrderLine[] stocked = [.. order.Lines.Where(l => !l.FromStock.IsEmpty)];
        if (stocked.Length > 0)
        {
            blocks.Add(new HeadingBlock(1, "From the larder, not ordered"));
            blocks.Add(new TableBlock([new("Item"), new("Take", Side.Right, Strong: true), new("There since"), new("Taken", Side.Centre)],
                [.. stocked.SelectMany(l => l.FromStock.Select(t => new PaperRow([t.Lot.Item, Quantity(t.Amount, Unit(bundle, l), culture), t.Lot.Since is { } since ? Days.Short(since, culture) : "not known", PaperCell.Tick])))]));
        }

        blocks.Add(new ParagraphBlock($"Whole order: {Money(order.Total.Amount, order.Total.Currency)}.", true));
        OrderLine[] thin = [.. order.Lines.Where(l => l.Thin)];
        if (thin.Length > 0)
        {
            blocks.Add(new CalloutBlock("Little to spare", string.Join("; ", thin.Select(l => $"{l.Item}: {Percent(l.Margin, culture)} over")) + "."));
        }

        blocks.Add(new ParagraphBlock("Another article is taken only when its name is written in and its allergens were looked up.", Small: true));
        return bundle.Sheet(Kind, "Order", [.. blocks]) with { Landscape = true, TextSize = 9 };
    }

    private static double Ready(OrderLine line) => line.Needs.Sum(n => n.Grams);

    private static string Unit(PaperBundle bundle, OrderLine line) => bundle.Prices?.Rows.FirstOrDefault(r => r.Item == line.Item)?.Unit ?? "g";

    // The longest lead of the supplier's goods counts back from the day they come.
    private static string By(PaperBundle bundle, IEnumerable<(OrderLine Line, OrderedPack Pack)> packs, CultureInfo culture)
    {
        NodaTime.LocalDate[] days = [.. packs.Where(p => p.Pack.Row.LeadDays is not null).Select(p => (p.Pack.ComesOn ?? bundle.Occasion?.Sheet.OrderArrives?.Date)?.PlusDays(-p.Pack.Row.LeadDays!.Value)).OfType<NodaTime.LocalDate>()];
        return days.Length == 0 ? "" : Days.Long(days.Min(), culture);
    }

    private static string Comes(PaperBundle bundle, IEnumerable<(OrderLine Line, OrderedPack Pack)> packs, CultureInfo culture)
        => string.Join(", ", packs.Select(p => p.Pack.ComesOn ?? bundle.Occasion?.Sheet.OrderArrives?.Date).OfType<NodaTime.LocalDate>().Distinct().Order().Select(d => Days.Short(d, culture)));

    /// <summary>Money in cents with its currency.</summary>
    internal static string Money(decimal amount, string currency) => amount.ToString("#,0.00", CultureInfo.InvariantCulture) + (currency.Length > 0 ? "\u202F" + currency : "");

    internal static string Quantity(decimal amount, string unit, CultureInfo culture) => unit switch
    {
        "each" => Figures.Number((double)amount, culture),
        "ml" => Figures.Number((double)amount, culture) + "\u202FmL",
        _ => Figures.Grams((double)amount, culture),
    };

    private static string Percent(decimal share, CultureInfo culture) => Figures.Number((double)Math.Round(share * 100, 1), culture) + "\u202F%";

    private static PaperRow Row(OrderLine line, OrderedPack pack, CultureInfo culture) => new(
    [
        line.Item + (pack.Row.Note.Length > 0 ? $" ({pack.Row.Note})" : ""),
        Ready(line) is > 0 and var ready ? Figures.Grams(ready, culture) : "",
        Ready(line) is > 0 and var usable && pack.Row.Unit == "g" && line.Need > 0 ? Percent((decimal)usable / line.Need, culture) : "",
        Quantity(line.Need, pack.Row.Unit, culture),
        line.FromStock.Sum(t => t.Amount) is > 0 and var there ? Quantity(there, pack.Row.Unit, culture) : PaperCell.Blank,
        Quantity(pack.Row.PackSize, pack.Row.Unit, culture),
        pack.Count.ToString(culture),
        Money(pack.Row.Price.Amount, ""),
        Money(pack.Row.Price.Amount * pack.Count, ""),
        Percent(line.Margin, culture) + (line.Thin ? " LITTLE" : ""),
        pack.Row.LeadDays is { } days ? days.ToString(culture) : "",
        pack.Row.MayReplace is { } may ? may ? "allowed" : "none" : PaperCell.Blank,
        PaperCell.Tick,
        PaperCell.Blank,
    ]);
}
