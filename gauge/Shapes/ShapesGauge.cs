using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Needs;

namespace Coulisse.Gauge.Shapes;

/// <summary>gauge shapes: every fit, an order of 200 lines over five suppliers and 1,000 packs, the cost of 5,000 dishes after a price change.</summary>
internal static class ShapesGauge
{
    public static int Run()
    {
        Console.WriteLine("| what | median, ms | 95th, ms | limit, ms |");
        Console.WriteLine("|---|---|---|---|");
        FitsGauge.Run(Row);
        Orders();
        Dishes();
        return 0;
    }

    private static void Orders()
    {
        Random random = new(7);
        bool proven = true;
        decimal gap = 0;
        (double, double) time = Stopwatches.Milliseconds(5, _ =>
        {
            (decimal, IReadOnlyList<SupplierOffer>)[] needs = [.. Enumerable.Range(0, 200).Select(_ =>
            {
                decimal unit = random.Next(2, 40) / 1000m;
                return ((decimal)random.Next(50, 6000), (IReadOnlyList<SupplierOffer>)[.. Enumerable.Range(0, 5).Select(s =>
                {
                    int size = new[] { 250, 500, 1000, 1500, 2500 }[random.Next(5)];
                    return new SupplierOffer(size, Math.Round(size * unit * (0.85m + (random.Next(30) / 100m)), 2), $"S{s}");
                })]);
            })];
            SupplierChoice choice = SupplierChoice.Cheapest(needs, Enumerable.Range(0, 5).ToDictionary(s => $"S{s}", s => 100m + (50 * s)));
            proven &= choice.Proven;
            gap = Math.Max(gap, choice.Cost == 0 ? 0 : (choice.Cost - choice.Bound) / choice.Cost * 100);
        });
        Row($"order, 200 lines, 5 suppliers with minimums, 1,000 packs ({(proven ? "all proven" : string.Create(CultureInfo.InvariantCulture, $"not all proven, gap at most {gap:0.000} %"))})", time, 2000);
    }

    private static void Dishes()
    {
        string csv = "item,pack,unit,price,currency\n" + string.Join('\n', Enumerable.Range(0, 300).Select(i => FormattableString.Invariant($"food number {i},{250 + i},g,{1 + (i % 17)}.50,D")));
        if (PriceList.Read(csv) is not Parsed<PriceList>.Ok(var prices))
        {
            throw new InvalidOperationException("The list of the gauge is not read.");
        }

        ShelvedDish[] dishes = [.. Enumerable.Range(0, 5000).Select(d => new ShelvedDish($"dish {d}", [.. Enumerable.Range(0, 12).Select(l => new Need($"food number {((d * 7) + (l * 13)) % 300}", 20 + l, "x") { Dish = $"dish {d}", Component = "a" })], 10, "portions"))];
        Need[] needs = [.. dishes.SelectMany(d => d.Needs)];
        Row("cost of 5,000 dishes of 12 lines as one list", Stopwatches.Milliseconds(5, _ => Costing.Of(needs, prices)), 1000);
        Row("one price changed: 5,000 dishes before and after, dish by dish", Stopwatches.Milliseconds(5, _ => PriceChange.Of(dishes, prices, prices.With(r => r.Item == "food number 7" ? 9 : null))), 1000);
        Row("every price changed: 5,000 dishes before and after, dish by dish", Stopwatches.Milliseconds(5, _ => PriceChange.Of(dishes, prices, prices.With(r => r.Price.Amount + 1))), 1000);
    }

    private static void Row(string what, (double Median, double P95) time, double limit)
        => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {time.Median:0.00} | {time.P95:0.00} | {limit:0} |"));
}
