using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Substance;

/// <summary>Gelatine of another bloom in place of the one written, by both rules in use.</summary>
/// <param name="Linear">By mass · bloom: how leaf packs are cut.</param>
/// <param name="SquareRoot">By mass · √bloom: how gels are measured to behave.</param>
/// <param name="ApartPercent">How far the two are apart, percent of the square-root figure.</param>
/// <param name="Wide">True when they part by more than 13 %: try 100 g first.</param>
/// <remarks>
/// Sources: leaf grades of makers (linear); a published 60 to 260 bloom conversion table (square root). Range: 50 to 300 bloom.
/// Check: 10 g of 200 bloom to 250 bloom is 8.00 linear, 8.94 square root.
/// </remarks>
public sealed record GelatineStrength(Mass Linear, Mass SquareRoot, double ApartPercent, bool Wide)
{
    /// <summary>Converts an amount.</summary>
    /// <param name="amount">Amount as written.</param>
    /// <param name="from">Its bloom, 50 to 300.</param>
    /// <param name="to">Bloom at hand, 50 to 300.</param>
    /// <exception cref="ArgumentOutOfRangeException">A bloom outside 50 to 300.</exception>
    public static GelatineStrength Convert(Mass amount, double from, double to)
    {
        if (from is not (>= 50 and <= 300) || to is not (>= 50 and <= 300))
        {
            throw new ArgumentOutOfRangeException(nameof(from), from is >= 50 and <= 300 ? to : from, "A bloom is 50 to 300.");
        }

        Mass linear = amount * (from / to);
        Mass root = amount * Math.Sqrt(from / to);
        double apart = root.Grams == 0 ? 0 : ((linear / root) - 1) * 100;
        return new GelatineStrength(linear, root, apart, Math.Abs(Math.Log(from / to)) > 0.25);
    }
}
