using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Substance;

/// <summary>A part of a mixture at its own temperature.</summary>
/// <param name="Name">Food.</param>
/// <param name="Grams">Above 0.</param>
/// <param name="Parts">Mass fractions.</param>
/// <param name="Celsius">−40 to 150 °C.</param>
/// <param name="FreezingPoint">Where it begins to freeze, below 0 °C; needed only for a part below 0 °C.</param>
/// <param name="Fat">Curve of its fat; null leaves its melting out.</param>
public sealed record MixingPart(string Name, double Grams, ThermalParts Parts, double Celsius, double? FreezingPoint = null, FatMelting? Fat = null);

/// <summary>Where parts of different temperatures meet, nothing lost to bowl and air.</summary>
/// <param name="Celsius">Temperature of the mixture.</param>
/// <param name="IceGrams">Ice that is left; more than 0 means that its sugar and salt would go on melting it, below what is said here.</param>
/// <param name="FatLeftOut">Parts whose fat may be solid but has no curve.</param>
/// <remarks>
/// Balance of heat content: Σ m·h(t) is the same before and after; h from Choi and Okos 1986, ice with 333.6 kJ/kg, solid fat with the heat of its curve.
/// Check: 500 g of water at 80 °C and 200 g of ice at 0 °C meet at 34.3 °C by 4.18 kJ/(kg·K). A bowl takes more: a steel bowl of 1 kg is worth about 120 g of water.
/// </remarks>
public sealed record MixingTemperature(double Celsius, double IceGrams, ImmutableArray<string> FatLeftOut)
{
    /// <summary>Meets.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No parts, a weight that is not above 0, a temperature outside −40 to 150 °C, or a frozen part without its freezing point.</exception>
    public static MixingTemperature Of(ImmutableArray<MixingPart> parts)
    {
        if (parts.IsDefaultOrEmpty || parts.Any(p => p.Grams is not > 0 || p.Celsius is not (>= -40 and <= 150)))
        {
            throw new ArgumentOutOfRangeException(nameof(parts), "Parts have weights above 0 g and temperatures of -40 to 150 °C.");
        }

        if (parts.FirstOrDefault(p => p.Celsius < 0 && p.FreezingPoint is null) is { } bare)
        {
            throw new ArgumentOutOfRangeException(nameof(parts), bare.Celsius, $"{bare.Name} is below 0 °C and its freezing point is not known.");
        }

        double held = parts.Sum(p => p.Grams * Content(p, p.Celsius));
        double low = parts.Min(p => p.Celsius), high = parts.Max(p => p.Celsius);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (parts.Sum(p => p.Grams * Content(p, middle)) < held)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        double at = (low + high) / 2;
        double ice = parts.Sum(p => p.Grams * Ice(p, at));
        return new MixingTemperature(Math.Abs(at) < 0.005 ? 0 : at, ice < 1e-6 * parts.Sum(p => p.Grams) ? 0 : ice, [.. parts.Where(p => p.Fat is null && p.Parts.Fat > 0.05 && p.Celsius < 40).Select(p => p.Name)]);
    }

    // A part that was never frozen may be cooled below 0 °C by another; without its own freezing point it is taken as liquid down to it.
    private static double Content(MixingPart part, double celsius)
    {
        int steps = Math.Max(1, (int)Math.Ceiling(Math.Abs(celsius) / 2));
        double sum = 0;
        double before = Sensible(part, celsius < 0 ? Math.Max(celsius, -0.05) : 0);
        for (int i = 1; i <= steps; i++)
        {
            double now = Sensible(part, celsius * i / steps);
            sum += (before + now) / 2 * (celsius / steps);
            before = now;
        }

        return sum - (ThermalProperties.Fusion * Ice(part, celsius)) - (part.Fat is { } fat ? fat.Heat * part.Parts.Fat * fat.Solid(celsius) : 0);
    }

    // The properties are asked for with the freezing point of meat at the nearest, and the ice beyond that is counted in: water takes 4.2, ice 2.1 kJ/(kg·K).
    private static double Sensible(MixingPart part, double celsius)
    {
        ThermalProperties p = ThermalProperties.Of(part.Parts, Temperature.FromCelsius(celsius), celsius < 0 ? Temperature.FromCelsius(Math.Min(-0.6, Below(part))) : null);
        return p.Heat.KilojoulesPerKilogramKelvin - p.MeltingHeat - (celsius < 0 ? 2.1 * (Ice(part, celsius) - p.IceShare) : 0);
    }

    private static double Ice(MixingPart part, double celsius) => part.FreezingPoint is not null && celsius < Below(part)
        ? Math.Max(0, part.Parts.Water - (0.4 * part.Parts.Protein)) * (1 - (Below(part) / celsius)) : 0;

    private static double Below(MixingPart part) => Math.Clamp(part.FreezingPoint ?? -0.6, -19.9, -0.0005);
}
