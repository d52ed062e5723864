using Coulisse.Kitchen.Needs;
using CsCheck;

namespace Coulisse.Kitchen.Tests.Needs;

public sealed class SupplierLaws
{
    [Fact]
    public void A_minimum_order_moves_goods_to_one_supplier_when_that_is_cheaper_than_topping_up() // by hand: 4 + 5 apart needs 6 more to reach 10; together at A 4 + 6 = 10
    {
        SupplierChoice choice = SupplierChoice.Cheapest(
            [(1, [new(1, 4, "A"), new(1, 9, "B")]), (1, [new(1, 6, "A"), new(1, 5, "B")])],
            new Dictionary<string, decimal> { ["A"] = 10, ["B"] = 5 });

        Assert.Equal((10m, 10m, true), (choice.Goods, choice.Cost, choice.Proven));
        Assert.Empty(choice.TopUp);
    }

    [Fact]
    public void Without_minimums_every_need_goes_where_it_is_cheapest()
    {
        SupplierChoice choice = SupplierChoice.Cheapest([(1, [new(1, 4, "A"), new(1, 9, "B")]), (1, [new(1, 6, "A"), new(1, 5, "B")])]);

        Assert.Equal((9m, true), (choice.Cost, choice.Proven));
    }

    [Fact]
    public void What_cannot_be_moved_is_topped_up_and_said()
    {
        SupplierChoice choice = SupplierChoice.Cheapest([(1, [new(1, 4, "A")])], new Dictionary<string, decimal> { ["A"] = 10 });

        Assert.Equal((4m, 6m, 10m), (choice.Goods, choice.TopUp["A"], choice.Cost));
        Assert.True(choice.Proven);
    }

    [Fact]
    public void Never_above_nor_the_bound_below_what_trying_everything_gives()
        => Gen.Select(Gen.Select(Gen.Int[1, 4], Gen.Select(Gen.Int[1, 3], Gen.Int[1, 20], Gen.Int[0, 2]).Array[2, 3]).Array[1, 3], Gen.Int[0, 40].Array[3]).Sample((lines, least) =>
        {
            (decimal, IReadOnlyList<SupplierOffer>)[] needs = [.. lines.Select(l => ((decimal)l.Item1, (IReadOnlyList<SupplierOffer>)[.. l.Item2.Select(o => new SupplierOffer(o.Item1, o.Item2, $"S{o.Item3}"))]))];
            Dictionary<string, decimal> minimums = new() { ["S0"] = least[0], ["S1"] = least[1], ["S2"] = least[2] };
            SupplierChoice choice = SupplierChoice.Cheapest(needs, minimums);
            decimal brute = Brute(needs, 0, new decimal[3], least);
            bool covered = needs.Select((n, i) => n.Item2.Select((o, k) => o.Size * choice.Packs[i][k]).Sum() >= n.Item1).All(x => x);
            return covered && choice.Bound <= brute + 0.0001m && choice.Cost >= brute - 0.0001m && (!choice.Proven || choice.Cost - brute < 0.005m);
        }, iter: 150);

    private static decimal Brute((decimal Need, IReadOnlyList<SupplierOffer> Offers)[] needs, int at, decimal[] goods, int[] least)
    {
        return at == needs.Length ? goods.Select((g, i) => g > 0 ? Math.Max(g, least[i]) : 0).Sum() : Packs(needs[at].Need, 0, goods);

        decimal Packs(decimal left, int offer, decimal[] now)
        {
            if (left <= 0 || offer == needs[at].Offers.Count)
            {
                return left <= 0 ? Brute(needs, at + 1, now, least) : decimal.MaxValue / 8;
            }

            decimal best = decimal.MaxValue / 8;
            SupplierOffer o = needs[at].Offers[offer];
            for (int n = 0; n <= Math.Ceiling(left / o.Size); n++)
            {
                decimal[] with = [.. now];
                with[o.Supplier[1] - '0'] += n * o.Price;
                best = Math.Min(best, Packs(left - (n * o.Size), offer + 1, with));
            }

            return best;
        }
    }
}
