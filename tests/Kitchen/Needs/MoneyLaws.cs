using Coulisse.Cards;
using Coulisse.Kitchen.Needs;
using CsCheck;

namespace Coulisse.Kitchen.Tests.Needs;

/// <summary>Money sums exactly, in decimals: lines, parts, roles and suppliers each add up to the total, to the last digit.</summary>
public sealed class MoneyLaws
{
    private static PriceList Prices => Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read(
        "item,supplier,pack,unit,price,currency,note\nrice,a,300,g,1.10,D,\nrice,b,700,g,2.33,D,\noil,a,460,g,5.60,D,usable share 0.97\nsalt,b,7000,g,1.00,D,\nmelon,c,1,each,3.33,D,900 g")).Value;

    [Fact]
    public void Lines_parts_and_roles_of_a_costing_add_up_to_its_total()
        => Needs.Sample(needs =>
        {
            Costing c = Costing.Of(needs, Prices);
            return c.Lines.Length == needs.Length
                && c.Lines.Sum(l => l.Value.Amount) == c.Total.Amount
                && c.Parts.Sum(p => p.Value.Amount) == c.Total.Amount
                && Enum.GetValues<NeedRole>().Sum(r => c.For(r).Amount) == c.Total.Amount
                && c.Lines.All(l => l.Trim.Amount >= 0 && l.Trim.Amount <= l.Value.Amount);
        });

    [Fact]
    public void Lines_and_suppliers_of_an_order_add_up_to_its_total_and_every_line_is_packs_times_price()
        => Needs.Sample(needs =>
        {
            Order o = Order.For(needs, Prices);
            return o.Problems.IsEmpty
                && o.Lines.Sum(l => l.Cost.Amount) == o.Total.Amount
                && o.BySupplier.Values.Sum(s => s.Amount) == o.Total.Amount
                && o.Lines.All(l => l.Cost.Amount == l.Packs.Sum(p => p.Count * p.Row.Price.Amount) && l.Bought == l.Packs.Sum(p => p.Count * p.Row.PackSize) && l.Bought >= l.Need);
        });

    [Fact]
    public void Two_halves_of_a_need_cost_what_the_whole_does() // thirds of a pack never end in decimals: lines are cut at the fifteenth
        => Gen.Int[1, 5000].Sample(g =>
        {
            Need whole = new("rice", 2 * g, "x");
            Need half = new("rice", g, "x");
            return Math.Abs(Costing.Of([whole], Prices).Total.Amount - Costing.Of([half, half], Prices).Total.Amount) <= 1e-14m;
        });

    private static Gen<Need[]> Needs => Gen.Select(Gen.Int[0, 3], Gen.Int[1, 4000], Gen.Int[0, 3], Gen.Int[0, 2]).Array[1, 30].Select(all => all.Select(n => new Need(new[] { "rice", "oil", "salt", "melon" }[n.Item1], n.Item1 == 3 ? 0 : n.Item2, "x")
    {
        Pieces = n.Item1 == 3 ? 1 + (n.Item2 % 5) : 0, Role = (NeedRole)n.Item3, Dish = "d" + n.Item4, Component = "c" + (n.Item2 % 2),
    }).ToArray());
}
