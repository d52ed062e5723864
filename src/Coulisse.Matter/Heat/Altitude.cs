using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>Where water boils, by height above the sea.</summary>
/// <remarks>
/// p = 101.325·(1 − 2.25577e-5·h)^5.25588 kPa (standard atmosphere) and Antoine's equation with 8.07131, 1730.63, 233.426 (both from memory).
/// Range −400 to 5000 m. Weather moves it by ±0.8 °C: water boiled on the day is the better zero. Check: 1500 m, 95.0 °C.
/// </remarks>
public static class Altitude
{
    /// <summary>Boiling point of water.</summary>
    /// <param name="metres">Height, −400 to 5000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Temperature BoilingPoint(double metres)
    {
        if (metres is not (>= -400 and <= 5000))
        {
            throw new ArgumentOutOfRangeException(nameof(metres), metres, "Outside the model: heights from -400 m to 5000 m.");
        }

        double kilopascals = 101.325 * Math.Pow(1 - (2.25577e-5 * metres), 5.25588);
        double torr = kilopascals / 0.13332236842105263;   // exact: 101.325 kPa are 760 Torr
        return Temperature.FromCelsius((1730.63 / (8.07131 - Math.Log10(torr))) - 233.426);
    }
}
