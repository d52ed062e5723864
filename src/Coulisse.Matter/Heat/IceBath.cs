namespace Coulisse.Matter.Heat;

/// <summary>Ice that a cooling takes.</summary>
/// <remarks>m·c·ΔT / 333.6 kJ/kg, melting only: the water's own warming is left as reserve. c 3.8 kJ/(kg·K) for a moist food. Check: 4.12 kg from 60 to 5 °C take 2.6 kg (hand reckoning).</remarks>
public static class IceBath
{
    private const double Melting = 333.6;
    private const double FoodHeat = 3.8;

    /// <summary>Kilograms of ice.</summary>
    /// <param name="kilograms">Food.</param>
    /// <param name="from">Start, °C.</param>
    /// <param name="to">End, 0 °C and up, not above the start.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the model.</exception>
    public static double Ice(double kilograms, double from, double to) => kilograms is >= 0 and <= 10_000 && to >= 0 && from >= to && from <= 120
        ? kilograms * FoodHeat * (from - to) / Melting
        : throw new ArgumentOutOfRangeException(nameof(to), to, "Outside the model: from at most 120 °C down to 0 °C or more, up to 10 t.");
}
