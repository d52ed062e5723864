using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Needs;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Cli.Commands;

/// <summary>What <see cref="PricesCommand"/> prints.</summary>
internal static class PricesOutput
{
    public static int Json(PriceList list, LocalDate on, PriceChange change) => Input.Json(new
    {
        schema = "coulisse/prices/1", currency = list.Currency, on = Iso(on),
        packs = list.Rows.Select(r => new { item = r.Item, supplier = r.Supplier, packSize = r.PackSize, unit = r.Unit, price = r.Price.Amount, since = Iso(r.Since), until = Iso(r.Until), leadDays = r.LeadDays, mayReplace = r.MayReplace }),
        history = list.History.Select(h => new { item = h[0].Item, supplier = h[0].Supplier, packSize = h[0].PackSize, unit = h[0].Unit, prices = h.Select(r => new { price = r.Price.Amount, since = Iso(r.Since), until = Iso(r.Until) }) }),
        changed = change.Prices.Select(p => new { item = p.Item, supplier = p.Supplier, packSize = p.Pack.Size, unit = p.Pack.Unit, before = p.Before, after = p.After, percent = Round(p.Percent, 2), since = Iso(p.Since) }),
        dishes = change.Dishes.Select(d => new
        {
            title = d.Dish.Title, makes = d.Dish.Makes, unit = d.Dish.Unit, before = Round(d.Before.Amount, 4), after = Round(d.After.Amount, 4), eachBefore = Round(d.EachBefore.Amount, 4), eachAfter = Round(d.EachAfter.Amount, 4), percent = Round(d.Percent, 3),
            because = d.Because.Select(b => new { item = b.Item, adds = Round(b.Adds, 4) }), notPriced = d.NotPriced,
        }),
    });

    public static int Print(PriceList list, PriceChange change)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        TextWriter o = Console.Out;
        if (change.Dishes.IsEmpty)
        {
            foreach (PriceRow r in list.Rows)
            {
                o.WriteLine(Of($"{r.Price.Amount,9:0.00}  {r.PackSize:0.##} {r.Unit,-5} {r.Item}{(r.Supplier.Length > 0 ? ", " + r.Supplier : "")}{(r.Since is { } s ? ", since " + Iso(s) : "")}"));
            }
        }

        foreach (var h in list.History)
        {
            o.WriteLine(Of($"\n{h[0].Item}{(h[0].Supplier.Length > 0 ? ", " + h[0].Supplier : "")}, {h[0].PackSize:0.##} {h[0].Unit}"));
            for (int i = 0; i < h.Length; i++)
            {
                string moved = i > 0 && h[i - 1].Price.Amount > 0 ? Of($"  {(h[i].Price.Amount / h[i - 1].Price.Amount * 100) - 100:+0.0;-0.0} %") : "";
                o.WriteLine(Of($"{h[i].Price.Amount,9:0.00}  {(h[i].Since is { } s ? "since " + Iso(s) : "at first")}{(h[i].Until is { } u ? " until " + Iso(u) : "")}{moved}"));
            }
        }

        foreach (ChangedPrice p in change.Prices)
        {
            o.WriteLine(Of($"\n{p.Item}{(p.Supplier.Length > 0 ? ", " + p.Supplier : "")}, {p.Pack.Size:0.##} {p.Pack.Unit}: {(p.Before is { } b ? b.ToString("0.00##", CultureInfo.InvariantCulture) : "not on offer")} → {(p.After is { } a ? a.ToString("0.00##", CultureInfo.InvariantCulture) : "no longer on offer")}{(p.Percent is { } pc ? Of($" ({pc:+0.0;-0.0} %)") : "")}"));
        }

        foreach (ChangedDish d in change.Dishes)
        {
            string unit = d.Dish.Unit.Length > 0 ? Of($" each of {d.Dish.Makes:0.##} {d.Dish.Unit}") : " the whole card";
            o.WriteLine(Of($"\n{d.Dish.Title}: {d.EachBefore.Amount:0.000} → {d.EachAfter.Amount:0.000} {list.Currency}{unit}{(d.Percent is { } p && p != 0 ? Of($" ({p:+0.0;-0.0} %)") : ", not moved")}"));
            foreach ((string item, decimal adds) in d.Because)
            {
                o.WriteLine(Of($"  {adds / (decimal)d.Dish.Makes,9:+0.000;-0.000}  {item}"));
            }

            foreach (string lacking in d.NotPriced)
            {
                o.WriteLine("  not counted: " + lacking);
            }
        }

        return Exit.Done;
    }

    private static string? Iso(LocalDate? day) => day is { } d ? LocalDatePattern.Iso.Format(d) : null;

    private static decimal? Round(decimal? value, int digits) => value is { } v ? Math.Round(v, digits) : null;

    private static string Of(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
