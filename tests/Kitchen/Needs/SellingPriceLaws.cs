using Coulisse.Kitchen.Needs;
using Coulisse.Matter.Quantities;
using CsCheck;

namespace Coulisse.Kitchen.Tests.Needs;

public sealed class SellingPriceLaws
{
    [Fact]
    public void At_28_percent_and_ten_percent_tax_a_food_cost_of_2_80_asks_11_00() // by hand: 2.80 / 0.28 = 10.00, + 1.00
        => Assert.Equal(11.00m, SellingPrice.Of(new Money(2.80m, "D"), 28, 0, 10).Gross.Amount);

    [Fact]
    public void Food_and_the_unlisted_are_the_target_share_of_the_net_price()
        => Gen.Select(Gen.Decimal[0.1m, 50m], Gen.Int[10, 60], Gen.Int[0, 15]).Sample((food, target, q) =>
        {
            SellingPrice price = SellingPrice.Of(new Money(food, "D"), target, q, 15);
            return Math.Abs((price.Food.Amount + price.Unlisted.Amount) - (price.Net.Amount * target / 100)) < 0.000001m;
        });

    [Fact]
    public void A_target_of_nothing_is_refused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => SellingPrice.Of(new Money(1, "D"), 0));
}
