using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>Heat resistance of an organism in a food: minutes at a temperature for one tenth to survive, and the kelvin that change it tenfold.</summary>
/// <param name="Organism">Organism.</param>
/// <param name="Matrix">Food it was measured in.</param>
/// <param name="Reference">Temperature of D.</param>
/// <param name="Minutes">D, minutes.</param>
/// <param name="Z">z, K.</param>
/// <param name="Source">Source.</param>
public sealed record HeatResistance(string Organism, string Matrix, Temperature Reference, double Minutes, double Z, string Source)
{
    /// <summary>D at a temperature: D_ref·10^((T_ref − T)/z), minutes.</summary>
    public double At(Temperature t) => Minutes * Math.Pow(10, (Reference.Celsius - t.Celsius) / Z);
}

/// <summary>Log reduction over a temperature history at the slowest point (Bigelow's model).</summary>
/// <remarks>
/// log = ∫ dt/D(T). Between two readings the temperature is a straight ramp and the step is exact: Δt·(L₂ − L₁)/ln(L₂/L₁), L = 1/D(T).
/// Nothing is credited below the floor; above the ceiling the rate is that of the ceiling (no extrapolation).
/// </remarks>
public static class Lethality
{
    /// <summary>Log reduction of a history.</summary>
    /// <param name="resistance">Organism in its food.</param>
    /// <param name="history">Minute and temperature, minutes rising.</param>
    /// <param name="floor">No credit below it (54.4 °C for meat, 55 °C for egg).</param>
    /// <param name="ceiling">No more credit than at it.</param>
    /// <exception cref="ArgumentException">Minutes do not rise.</exception>
    public static double Log10(HeatResistance resistance, ImmutableArray<(double Minute, Temperature At)> history, Temperature floor, Temperature ceiling)
    {
        double sum = 0;
        for (int i = 1; i < history.Length; i++)
        {
            double minutes = history[i].Minute - history[i - 1].Minute;
            if (minutes is not > 0)
            {
                throw new ArgumentException("The minutes of a history rise.", nameof(history));
            }

            sum += Ramp(resistance, minutes, history[i - 1].At.Celsius, history[i].At.Celsius, floor.Celsius, ceiling.Celsius);
        }

        return sum;
    }

    private static double Ramp(HeatResistance r, double minutes, double a, double b, double floor, double ceiling)
    {
        (double low, double high) = a < b ? (a, b) : (b, a);
        if (high < floor)
        {
            return 0;
        }

        if (high - low < 1e-9)
        {
            return minutes / r.At(Temperature.FromCelsius(Math.Min(high, ceiling)));
        }

        double perKelvin = minutes / (high - low);
        double top = Math.Min(high, ceiling);
        double bottom = Math.Max(low, floor);
        double capped = high > ceiling ? (high - Math.Max(ceiling, bottom)) * perKelvin / r.At(Temperature.FromCelsius(ceiling)) : 0;
        if (top <= bottom)
        {
            return capped;
        }

        double l1 = 1 / r.At(Temperature.FromCelsius(bottom));
        double l2 = 1 / r.At(Temperature.FromCelsius(top));
        return capped + (top - bottom) * perKelvin * (l2 - l1) / Math.Log(l2 / l1);
    }
}
