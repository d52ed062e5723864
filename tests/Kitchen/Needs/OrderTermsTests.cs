using Coulisse.Cards;
using Coulisse.Kitchen.Needs;
using CsCheck;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Needs;

public sealed class OrderTermsTests
{
    private static readonly LocalDate Monday = new(2026, 10, 5);

    private static PriceList List => Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read("item,supplier,pack,unit,price,currency,lead\nplum jam,near,500,g,6,D,0\nplum jam,far,500,g,4,D,3\nloaf,near,1,each,3,D,0")).Value;

    [Fact]
    public void Stock_is_used_first_and_the_oldest_before_the_newer()
    {
        Order order = Order.For([new Need("plum jam", 700, "x")], List, new OrderTerms { Stock = [new("plum jam", 300, Monday), new("plum jam", 200, Monday.PlusDays(-9)), new("plum jam", 50, null)] });
        OrderLine line = Assert.Single(order.Lines);

        Assert.Equal([200m, 300m, 50m], line.FromStock.Select(s => s.Amount));
        Assert.Equal((500m, 4m), (line.Bought, line.Cost.Amount)); // 150 g left: one pack of the cheaper
    }

    [Fact]
    public void A_full_larder_buys_nothing()
    {
        Order order = Order.For([new Need("plum jam", 300, "x")], List, new OrderTerms { Stock = [new("plum jam", 1000, Monday)] });

        Assert.Equal((0m, 300m), (order.Total.Amount, order.Lines[0].FromStock.Sum(s => s.Amount)));
        Assert.False(order.Lines[0].Thin);
        Assert.True(order.Proven);
    }

    [Theory] // lead of three days from Monday: Thursday; Wednesday is too early
    [InlineData(3, "far", 4)]
    [InlineData(2, "near", 6)]
    public void A_supplier_that_cannot_bring_it_in_time_is_not_asked(int days, string supplier, int cost)
    {
        Order order = Order.For([new Need("plum jam", 300, "x")], List, new OrderTerms { OrderedOn = Monday, NeededBy = Monday.PlusDays(days) });

        Assert.Equal((supplier, (decimal)cost), (order.Lines[0].Packs[0].Row.Supplier, order.Total.Amount));
    }

    [Fact]
    public void Goods_come_on_the_last_delivery_day_in_time()
    {
        OrderTerms terms = new() { OrderedOn = Monday, NeededBy = Monday.PlusDays(3), Suppliers = System.Collections.Immutable.ImmutableDictionary<string, SupplierTerms>.Empty.Add("near", new(0, [IsoDayOfWeek.Tuesday])) };

        Assert.Equal(Monday.PlusDays(1), Order.For([new Need("loaf", 0, "x") { Pieces = 2 }], List, terms).Lines[0].Packs[0].ComesOn);
    }

    [Fact]
    public void What_nobody_brings_in_time_is_asked_about()
        => Assert.Equal("ORD006", Assert.Single(Order.For([new Need("loaf", 0, "x") { Pieces = 2 }], List, new OrderTerms
        {
            OrderedOn = Monday, NeededBy = Monday, Suppliers = System.Collections.Immutable.ImmutableDictionary<string, SupplierTerms>.Empty.Add("near", new(0, [IsoDayOfWeek.Friday])),
        }).Problems).Code);

    [Fact]
    public void A_minimum_order_can_move_a_line()
    {
        OrderTerms terms = new() { Suppliers = System.Collections.Immutable.ImmutableDictionary<string, SupplierTerms>.Empty.Add("far", new(20, [])) };
        Order order = Order.For([new Need("plum jam", 300, "x")], List, terms);

        Assert.Equal(("near", 6m, true), (order.Lines[0].Packs[0].Row.Supplier, order.Total.Amount, order.Proven)); // 6 is less than the 20 that "far" asks for
    }

    [Fact]
    public void The_demo_order_is_the_same_and_proven()
        => Assert.True(Order.For(Demo.Needs().Needs, Demo.Prices, new OrderTerms()) is { Proven: true } order && order.Total == Order.For(Demo.Needs().Needs, Demo.Prices).Total);

    [Fact]
    public void The_order_covers_the_need_and_dropping_any_pack_breaks_it()
    {
        PriceList packs = Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read("item,supplier,pack,unit,price,currency\nrice,a,250,g,1.10,D\nrice,a,1000,g,3.90,D\nrice,b,500,g,2.05,D\nrice,b,5000,g,17.40,D")).Value;
        Gen.Int[1, 20000].Sample(grams =>
        {
            OrderLine line = Order.For([new Need("rice", grams, "x")], packs).Lines.Single();
            decimal wanted = grams * 1.01m;
            return line.Bought >= wanted && line.Packs.All(p => line.Bought - p.Row.PackSize < wanted) && line.Cost.Amount == line.Packs.Sum(p => p.Count * p.Row.Price.Amount);
        });
    }
}
