using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Needs;

/// <summary>From the food cost of a cover to the price asked for it.</summary>
/// <param name="Food">Food cost of a cover, as reckoned line by line.</param>
/// <param name="Unlisted">Q factor: seasoning, oil, paper and the like that no line states, as money.</param>
/// <param name="Net">Price without tax at which food is the target share of it.</param>
/// <param name="Tax">GST or VAT on the net price.</param>
public sealed record SellingPrice(Money Food, Money Unlisted, Money Net, Money Tax)
{
    /// <summary>What the guest pays.</summary>
    public Money Gross => Net + Tax;

    /// <summary>net = food · (1 + q) / target; tax = net · rate. Common practice of menu pricing, no source.</summary>
    /// <param name="food">Food cost of a cover, prices without tax that can be reclaimed.</param>
    /// <param name="targetPercent">Share of the net price that food may cost, more than 0 and at most 100.</param>
    /// <param name="unlistedPercent">Q factor, percent of the listed food, 0 or more.</param>
    /// <param name="taxPercent">Rate of GST or VAT, 0 or more.</param>
    public static SellingPrice Of(Money food, decimal targetPercent, decimal unlistedPercent = 0, decimal taxPercent = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(targetPercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(targetPercent, 100);
        ArgumentOutOfRangeException.ThrowIfNegative(unlistedPercent);
        ArgumentOutOfRangeException.ThrowIfNegative(taxPercent);
        Money unlisted = food * (unlistedPercent / 100);
        Money net = (food + unlisted) * (100 / targetPercent);
        return new(food, unlisted, net, net * (taxPercent / 100));
    }
}
