namespace Coulisse.Matter.Heat;

/// <summary>A wet face in hot air: heat that arrives is spent on evaporation, so it stays near the wet-bulb temperature while it is wet.</summary>
/// <param name="VapourKilopascals">Vapour pressure of the air, 0 to 80 kPa.</param>
/// <remarks>
/// Heat spent per area: h/A·ln((p − p_v)/(p − p_s)), A = 6.62e-4 1/K the constant of a ventilated psychrometer (from memory), p 101.325 kPa; for small pressures it is the psychrometer's equation, and near the boil it keeps the face below 100 °C.
/// p_s by Antoine as in <see cref="Altitude"/>. The face never dries here, so this is the slow bound of an open roast; the dry face is the fast one.
/// Check: air of 30 °C at 50 % has its wet bulb at 22.0 °C (psychrometric tables, from memory).
/// </remarks>
public sealed record WetSurface(double VapourKilopascals)
{
    private const double Air = 101.325;      // kPa
    private const double Psychrometer = 6.62e-4;

    /// <summary>Heat spent on evaporation per kelvin of h: multiply by h for W/m².</summary>
    /// <param name="celsius">Of the face; above 99.9 °C it is taken as 99.9.</param>
    internal double Spent(double celsius) => Math.Log((Air - VapourKilopascals) / (Air - Saturation(Math.Min(celsius, 99.9)))) / Psychrometer;

    /// <summary>Temperature at which a wet thing settles in air of a temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Air outside 0 to 300 °C, or vapour outside 0 to 80 kPa.</exception>
    public double WetBulb(double air)
    {
        if (air is not (>= 0 and <= 300) || VapourKilopascals is not (>= 0 and <= 80))
        {
            throw new ArgumentOutOfRangeException(nameof(air), air, "Outside the model: air of 0 to 300 °C with 0 to 80 kPa of vapour.");
        }

        double low = -20;
        double high = Math.Min(air, 99.9);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = air - middle > Spent(middle) ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Vapour pressure over water, kPa, 0 to 100 °C.</summary>
    public static double Saturation(double celsius) => Math.Pow(10, 8.07131 - (1730.63 / (233.426 + celsius))) * 0.13332236842105263;
}
