namespace Coulisse.Matter.Substance;

/// <summary>Nitrite put into meat with a curing salt, as the laws count it: milligrams of sodium nitrite in a kilogram of meat.</summary>
/// <remarks>Check: 6.24 g of a cure of 6.25 % on 2,500 g of meat is 156 mg/kg (FSIS handbook 7620.3); 80 mg/kg of the ion are 120.0 of sodium nitrite.</remarks>
public static class Nitrite
{
    // g/mol: sodium nitrite and its ion.
    private const double Sodium = 68.995, Ion = 46.005;

    /// <summary>Put in, mg of sodium nitrite in 1 kg of meat.</summary>
    /// <param name="cureGrams">Curing salt, g, 0 or more.</param>
    /// <param name="nitritePercent">Sodium nitrite in it, percent, 0 to 100.</param>
    /// <param name="meatGrams">Meat, g, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range.</exception>
    public static double MilligramsPerKilogram(double cureGrams, double nitritePercent, double meatGrams) => cureGrams >= 0 && nitritePercent is >= 0 and <= 100 && meatGrams > 0
        ? cureGrams * nitritePercent / 100 / meatGrams * 1e6
        : throw new ArgumentOutOfRangeException(nameof(meatGrams), meatGrams, "Curing salt is 0 g or more with 0 to 100 % of nitrite, on more than 0 g of meat.");

    /// <summary>The same amount as sodium nitrite where a law counts the ion.</summary>
    public static double AsSodiumNitrite(double ionMilligramsPerKilogram) => ionMilligramsPerKilogram * Sodium / Ion;
}
