using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>Freezing time of a slab, roll or ball by closed formulas, as a check beside the finite volumes.</summary>
/// <remarks>
/// Plank: t = ρ·λ·x_ice/(t_f − T_a)·(L/h + L²/(2k))/E, E 1, 2, 3, latent heat only, so too short. Pham (1986): precooling and freezing apart, mean freezing temperature 1.8 + 0.263·T_core + 0.105·T_a, (ΔH₁/ΔT₁ + ΔH₂/ΔT₂)·L/(E·h)·(1 + Bi/2).
/// Both from memory; Pham claims ten to fifteen percent. Range: core −10 to −30 °C, medium −15 to −45 °C and colder than the core, start 0 to 40 °C, h 5 to 500 W/(m²·K), 2 to 250 mm.
/// </remarks>
public static class FreezingTime
{
    /// <summary>By Plank's equation.</summary>
    public static Duration Plank(BodyShape shape, Length half, ThermalParts parts, Temperature begins, Temperature medium, HeatTransferCoefficient surface)
    {
        (double e, double l, double h, double k, double density) = Of(shape, half, parts, begins, surface);
        double latent = ThermalProperties.Of(parts, Temperature.FromCelsius(-20), begins).IceShare * ThermalProperties.Fusion * 1000;
        return Duration.FromSeconds(density * latent / (begins.Celsius - medium.Celsius) * ((l / h) + (l * l / (2 * k))) / e);
    }

    /// <summary>By Pham's formula.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the model.</exception>
    public static Duration Pham(BodyShape shape, Length half, ThermalParts parts, Temperature begins, Temperature start, Temperature medium, Temperature core, HeatTransferCoefficient surface)
    {
        if (core.Celsius is not (>= -30 and <= -10) || medium.Celsius is not (>= -45 and <= -15) || medium >= core || start.Celsius is not (>= 0 and <= 40) || half.Millimetres is not (>= 1 and <= 125) || surface.WattsPerSquareMetreKelvin is not (>= 5 and <= 500))
        {
            throw new ArgumentOutOfRangeException(nameof(core), core.Celsius, "Outside the model: core -10 to -30 °C, medium -15 to -45 °C and colder than the core, start 0 to 40 °C, 2 to 250 mm, h 5 to 500 W/(m²·K).");
        }

        (double e, double l, double h, double k, double density) = Of(shape, half, parts, begins, surface);
        ThermalProperties warm = ThermalProperties.Of(parts, Temperature.FromCelsius(5));
        ThermalProperties cold = ThermalProperties.Of(parts, Temperature.FromCelsius(-20), begins);
        double mean = 1.8 + (0.263 * core.Celsius) + (0.105 * medium.Celsius);
        double cool = density * warm.Heat.KilojoulesPerKilogramKelvin * 1000 * (start.Celsius - mean);
        double freeze = density * 1000 * ((cold.IceShare * ThermalProperties.Fusion) + ((cold.Heat.KilojoulesPerKilogramKelvin - cold.MeltingHeat) * (mean - core.Celsius)));
        double driveCool = ((start.Celsius + mean) / 2) - medium.Celsius;
        return Duration.FromSeconds(((cool / driveCool) + (freeze / (mean - medium.Celsius))) * l / (e * h) * (1 + (h * l / k / 2)));
    }

    private static (double E, double L, double H, double K, double Density) Of(BodyShape shape, Length half, ThermalParts parts, Temperature begins, HeatTransferCoefficient surface)
        => (shape switch { BodyShape.Slab => 1, BodyShape.Cylinder => 2, _ => 3 }, half.Metres, surface.WattsPerSquareMetreKelvin, ThermalProperties.Of(parts, Temperature.FromCelsius(-20), begins).Fast.WattsPerMetreKelvin, ThermalProperties.Of(parts, Temperature.FromCelsius(20)).Density.GramsPerMillilitre * 1000);
}
