using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Safety;

/// <summary>The heat model of a component in a bath: its cautious properties and the words that say where they came from.</summary>
/// <param name="Cautious">Cautious properties.</param>
/// <param name="Why">Source, in words.</param>
/// <remarks>
/// Known throughout and blended or whisked: the mean of the two mixing bounds, at the mean of start and bath. A dispersion conducts nearer to its parallel bound
/// (liquid egg white a fifth, yolk none of the way to series: Abbasnezhad et al. 2014), so the half-way value is slow; and never faster than 1.15e-7 m²/s with 0.46 W/(m·K), the figures of the hand reckoning for a rich emulsion. Whole pieces may lie in layers: the series
/// bound, and never above 0.995e-7 m²/s, the slowest of Baldwin's figures (fish). A food that is not known: 0.995e-7 as well.
/// </remarks>
internal sealed record PieceInBath(FlatBag Cautious, string Why)
{
    private const double Wettest = 0.9 * 1050;   // kg of water in a cubic metre of a food that is not known: hardly any solid food holds more
    private const double Slowest = 0.995e-7;   // m²/s
    private const double Stirred = 95;         // W/(m²·K)
    private const string Published = "h 95 W/(m²·K) for a bagged food in a stirred bath: Baldwin, Int. J. Gastronomy and Food Science 1 (2012) 15-30";
    private static readonly string[] Blending = ["blend", "blend_hot", "stick_blend", "homogenise", "emulsify", "whisk_ribbon", "mix", "mix_batter", "sieve_fine"];

    /// <summary>Heat of all its water's ice, J/m³: none of it taken as bound.</summary>
    public double Latent { get; private init; } = Wettest * ThermalProperties.Fusion * 1000;

    /// <summary>The same piece going in frozen: its thawed part never faster than 0.995e-7 m²/s, smooth or not.</summary>
    public FrozenBag Frozen(double start) => new(Cautious with { Diffusivity = Math.Min(Cautious.Diffusivity, Slowest) }, Latent, Temperature.FromCelsius(start));

    /// <summary>For the component as weighed, before and in one of its steps.</summary>
    public static PieceInBath Of(WeighedComponent component, Step step, Temperature start, Temperature bath)
    {
        (HeatTransferCoefficient h, string surface) = Face(step);
        Mixture mixture = Mixing.Of(component);
        if (Mixing.Parts(mixture) is not { } parts)
        {
            string which = mixture.Unknown.IsEmpty ? "no weights are given" : $"not held: {string.Join(", ", mixture.Unknown.Take(3))}";
            return new PieceInBath(new FlatBag(Slowest, 0.4, h), $"Properties assumed slow, 0.995 × 10⁻⁷ m²/s and 0.4 W/(m·K), since the composition is not known ({which}); {surface}");
        }

        Temperature middle = Temperature.FromCelsius(Math.Max(0, (start.Celsius + bath.Celsius) / 2));
        ThermalProperties p = ThermalProperties.Of(parts, middle);
        double slow = p.SlowDiffusivity.SquareMetresPerSecond;
        double fast = p.FastDiffusivity.SquareMetresPerSecond;
        bool smooth = component.Component.Steps.TakeWhile(s => s.Span.Line < step.Span.Line).Any(s => s.Operations.Append(s.Operation).Any(o => Blending.Contains(o)));
        double alpha = smooth ? (slow + fast) / 2 : Math.Min(slow, Slowest);
        double k = smooth ? (p.Slow.WattsPerMetreKelvin + p.Fast.WattsPerMetreKelvin) / 2 : p.Slow.WattsPerMetreKelvin;
        bool capped = smooth && alpha > FlatBag.Cautious.Diffusivity;
        (alpha, k) = capped ? (FlatBag.Cautious.Diffusivity, FlatBag.Cautious.Conductivity) : (alpha, k);
        string taken = capped ? "the emulsion figure, slower than half way between" : smooth ? "half way between" : "the slower of 0.995 × 10⁻⁷ and the lower of";
        return new PieceInBath(
            new FlatBag(alpha, k, h),
            string.Create(CultureInfo.InvariantCulture, $"Exact series for a slab heated on both faces; properties from the component's composition, Choi and Okos 1986, at {middle.Celsius:0} °C: {alpha * 1e7:0.000} × 10⁻⁷ m²/s ({taken} the mixing bounds {slow * 1e7:0.00} and {fast * 1e7:0.00} × 10⁻⁷), {k:0.00} W/(m·K); {surface}"))
        {
            Latent = parts.Water * ThermalProperties.Of(parts, Temperature.FromCelsius(20)).Density.GramsPerMillilitre * 1000 * ThermalProperties.Fusion * 1000,
        };
    }

    // What the kitchen's own curves show may make the case harder, never easier: a bath that stirred well on three days may stand still on the fourth.
    private static (HeatTransferCoefficient H, string Why) Face(Step step) => step.Temperatures.Any(t => t.Of == TemperatureOf.Bath) ? step.SurfaceWatts switch
    {
        { Runs: >= Measured.LeastRuns, Least: > 0 and < Stirred } m => (HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(m.Least), string.Create(CultureInfo.InvariantCulture, $"h {m.Least:0.#} W/(m²·K), the least of the bath's own probe curves ({m.Words(" W/(m²·K)")}); below the {Published}")),
        { Runs: >= Measured.LeastRuns } m => (HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Stirred), $"{Published} (the bath's own probe curves, {m.Words(" W/(m²·K)")}, are not taken here: no trial loosens this bound)"),
        _ => (HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Stirred), Published),
    } : (HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Stirred), Published);
}
