using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;

namespace Coulisse.Flows.Fits;

/// <summary>What another depth does to the heating: minutes until the middle of the layer is hot, as a factor on those of the old depth.</summary>
/// <param name="Best">With the best diffusivity of moist food.</param>
/// <param name="Cautious">With the slowest.</param>
/// <remarks>
/// The conduction series of the heat module for a slab heated from above and below. Baking is more than conduction (rise, steam, crust): this is a factor to reckon with, never a time.
/// </remarks>
internal sealed record DepthHeating(double Best, double Cautious)
{
    public const string Assumed = "a layer heated from above and below, 20 to 90 °C with faces at 100 °C, 25 W/(m²·K), by the heat module";

    /// <summary>The factor; null when a depth is outside the module.</summary>
    public static DepthHeating? Of(Length before, Length after)
        => Minutes(before, 1.4e-7, 0.48) is { } b0 && Minutes(after, 1.4e-7, 0.48) is { } b1 && Minutes(before, 0.995e-7, 0.4) is { } c0 && Minutes(after, 0.995e-7, 0.4) is { } c1
            ? new(b1 / b0, c1 / c0)
            : null;

    private static double? Minutes(Length depth, double squareMetresPerSecond, double wattsPerMetreKelvin) => depth.Millimetres is >= 1 and <= 900
        ? SolidBody.Of(SolidShape.Slab, [depth], Diffusivity.FromSquareMetresPerSecond(squareMetresPerSecond), Conductivity.FromWattsPerMetreKelvin(wattsPerMetreKelvin), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(25))
            .TimeTo(Temperature.FromCelsius(20), Temperature.FromCelsius(100), Temperature.FromCelsius(90))?.TotalMinutes
        : null;
}
