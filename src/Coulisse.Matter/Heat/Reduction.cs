using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>Boiling water off a pan from one weight to another.</summary>
/// <param name="Start">Weight at the start.</param>
/// <param name="End">Weight at the end.</param>
/// <remarks>Latent heat 2.257 MJ/kg at 100 °C (steam tables, from memory). Warming from cold is not counted.</remarks>
public sealed record Reduction(Mass Start, Mass End)
{
    private const double Latent = 2257;   // kJ/kg

    /// <summary>Water to drive off.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The end weighs more than the start.</exception>
    public Mass Water => Start - End;

    /// <summary>Heat it takes at least.</summary>
    public Energy Heat => Energy.FromKilojoules(Water.Grams / 1000 * Latent);

    /// <summary>Time at a net power into the pan.</summary>
    public Duration Time(Power net) => Heat / net;
}
