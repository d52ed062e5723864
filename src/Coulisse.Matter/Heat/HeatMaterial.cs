using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;

namespace Coulisse.Matter.Heat;

/// <summary>Heat content and conductivity of a material against each other and its temperature, in tables that the solver reads.</summary>
/// <remarks>
/// Heat content is per volume, J/m³, and the unknown of the solver, so that freezing needs no spike and no heat is lost.
/// Of a food: ρ at 20 °C (or the warmest of it) times ∫c dT of Choi and Okos, ice by 1 − t_f/t and its latent heat exact; density is held, so that mass is; the few percent by which freezing swells it are left out.
/// Conductivity between the mixing bounds: 1/k = (1 − s)/k_parallel + s/k_series (Krischer). Range: the fits', −40 to 150 °C.
/// </remarks>
public sealed class HeatMaterial
{
    private readonly double _first;
    private readonly double _per;
    private readonly double[] _celsius;
    private readonly double[] _conductivity;

    private HeatMaterial(double first, double last, double[] celsius, double[] conductivity, double coldest, double hottest)
    {
        _first = first;
        _per = (celsius.Length - 1) / (last - first);
        _celsius = celsius;
        _conductivity = conductivity;
        (Coldest, Hottest) = (Temperature.FromCelsius(coldest), Temperature.FromCelsius(hottest));
    }

    /// <summary>Lowest temperature it answers for.</summary>
    public Temperature Coldest { get; }

    /// <summary>Highest temperature it answers for.</summary>
    public Temperature Hottest { get; }

    /// <summary>Nothing of it changes with temperature.</summary>
    internal bool IsConstant => _celsius.Length == 2;

    /// <summary>Glass of a jar: 1.0 W/(m·K), 4.5e-7 m²/s (soda-lime, handbook order, from memory).</summary>
    public static HeatMaterial Glass { get; } = Constant(Conductivity.FromWattsPerMetreKelvin(1.0), Diffusivity.FromSquareMetresPerSecond(4.5e-7));

    /// <summary>Polyethylene film of a bag: 0.35 W/(m·K), 1.7e-7 m²/s (from memory).</summary>
    public static HeatMaterial Film { get; } = Constant(Conductivity.FromWattsPerMetreKelvin(0.35), Diffusivity.FromSquareMetresPerSecond(1.7e-7));

    /// <summary>Stainless steel of a tray or lid: 16 W/(m·K), 4.2e-6 m²/s (from memory).</summary>
    public static HeatMaterial Steel { get; } = Constant(Conductivity.FromWattsPerMetreKelvin(16), Diffusivity.FromSquareMetresPerSecond(4.2e-6));

    /// <summary>Still air of a gap, conduction only: 0.026 W/(m·K), 2.2e-5 m²/s (from memory).</summary>
    public static HeatMaterial AirGap { get; } = Constant(Conductivity.FromWattsPerMetreKelvin(0.026), Diffusivity.FromSquareMetresPerSecond(2.2e-5));

    /// <summary>Constant properties.</summary>
    public static HeatMaterial Constant(Conductivity k, Diffusivity alpha)
    {
        double heat = k.WattsPerMetreKelvin / alpha.SquareMetresPerSecond;
        return new HeatMaterial(-60 * heat, 340 * heat, [-60, 340], [k.WattsPerMetreKelvin, k.WattsPerMetreKelvin], -60, 340);
    }

    /// <summary>A food of known parts.</summary>
    /// <param name="parts">Mass fractions.</param>
    /// <param name="freezing">Where freezing begins, above −20 and below 0 °C; null when it stays above 0 °C, and then nothing below is answered.</param>
    /// <param name="series">0 for the parallel bound of conductivity, 1 for the series bound.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not 0 to 1, or the freezing point is outside the range.</exception>
    public static HeatMaterial Food(ThermalParts parts, Temperature? freezing, Fraction series)
    {
        // Fine where the ice comes and goes, coarse where polynomials are smooth.
        List<double> grid = [];
        if (freezing is { } f)
        {
            double depth = 40 + f.Celsius;
            grid.AddRange(Enumerable.Range(0, 240).Select(i => f.Celsius - (depth * Math.Pow(1 - (i / 240.0), 3))));
            grid.Add(f.Celsius);
        }

        double from = freezing?.Celsius ?? 0;
        grid.AddRange(Enumerable.Range(freezing is null ? 0 : 1, freezing is null ? 76 : 75).Select(i => from + ((150 - from) * i / 75)));
        double density = ThermalProperties.Of(parts, Temperature.FromCelsius(20)).Density.GramsPerMillilitre * 1000;
        double[] heat = new double[grid.Count];
        double[] k = new double[grid.Count];
        double before = 0;
        for (int i = 0; i < grid.Count; i++)
        {
            ThermalProperties p = ThermalProperties.Of(parts, Temperature.FromCelsius(grid[i]), grid[i] <= from ? freezing : null);
            k[i] = 1 / (((1 - series.Value) / p.Fast.WattsPerMetreKelvin) + (series.Value / p.Slow.WattsPerMetreKelvin));

            // The latent part is integrated exactly; what is left is smooth and the trapezoid is enough.
            double sensible = (p.Heat.KilojoulesPerKilogramKelvin - p.MeltingHeat) * 1000;
            heat[i] = i == 0 ? 0 : heat[i - 1] + (density * ((((before + sensible) / 2) * (grid[i] - grid[i - 1])) + (Latent(parts, freezing, grid[i - 1]) - Latent(parts, freezing, grid[i]))));
            before = sensible;
        }

        return Tabulate([.. grid], heat, k);
    }

    /// <summary>A frozen food whose parts are not trusted: slow on purpose, for times that must not come out short.</summary>
    /// <param name="k">Conductivity once thawed; the frozen part is given no more, though ice conducts four times as well.</param>
    /// <param name="alpha">Diffusivity once thawed.</param>
    /// <param name="latent">Heat of all its water's ice, J/m³, 0 to 4e8.</param>
    /// <remarks>Frozen it holds seven tenths of the thawed heat a kelvin (ice half that of water, dry matter the same); all water melts, by 1 − t_f/t with t_f −0.5 °C. Range −40 to 150 °C.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Latent heat outside its range.</exception>
    public static HeatMaterial Thawing(Conductivity k, Diffusivity alpha, double latent)
    {
        const double Begins = -0.5;
        const double From = -40;
        if (latent is not (>= 0 and <= 4e8))
        {
            throw new ArgumentOutOfRangeException(nameof(latent), latent, "Outside the model: ice of a cubic metre takes 0 to 4e8 J.");
        }

        double per = k.WattsPerMetreKelvin / alpha.SquareMetresPerSecond;
        double[] grid = [.. Enumerable.Range(0, 241).Select(i => Begins + ((From - Begins) * Math.Pow(1 - (i / 240.0), 3))), 0, 150];

        // melted share Begins/t below, all of it above
        double Heat(double t) => t >= Begins
            ? (0.7 * per * (Begins - From)) + latent + (per * (t - Begins))
            : (0.7 * per * (t - From)) + (latent * Begins / t);
        double zero = Heat(From);
        return Tabulate(grid, [.. grid.Select(t => Heat(t) - zero)], [.. grid.Select(_ => k.WattsPerMetreKelvin)]);
    }

    /// <summary>Heat content at a temperature, J/m³ above an arbitrary zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the material's range.</exception>
    public double HeatContent(Temperature at)
    {
        if (at < Coldest || at > Hottest)
        {
            throw new ArgumentOutOfRangeException(nameof(at), at.Celsius, FormattableString.Invariant($"Outside the model: this material is described from {Coldest.Celsius:0.##} to {Hottest.Celsius:0.##} °C."));
        }

        int low = 0;
        int high = _celsius.Length - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = _celsius[middle] <= at.Celsius ? (middle, high) : (low, middle);
        }

        return _first + ((low + ((at.Celsius - _celsius[low]) / (_celsius[high] - _celsius[low]))) / _per);
    }

    /// <summary>Temperature, its slope with heat content, and conductivity.</summary>
    internal void At(double heat, out double celsius, out double slope, out double conductivity)
    {
        double place = (heat - _first) * _per;
        int i = place <= 0 ? 0 : place >= _celsius.Length - 2 ? _celsius.Length - 2 : (int)place;
        double part = place - i;
        double rise = _celsius[i + 1] - _celsius[i];
        celsius = _celsius[i] + (part * rise);
        slope = rise * _per;
        conductivity = _conductivity[i] + (part * (_conductivity[i + 1] - _conductivity[i]));
    }

    private static double Latent(ThermalParts parts, Temperature? freezing, double celsius)
        => freezing is { } f && celsius < f.Celsius ? ThermalProperties.Fusion * 1000 * Math.Max(0, parts.Water - (0.4 * parts.Protein)) * (1 - (f.Celsius / celsius)) : 0;

    /// <summary>From a grid of temperatures to even steps of heat content.</summary>
    private static HeatMaterial Tabulate(double[] celsius, double[] heat, double[] k)
    {
        const int Count = 4096;
        double[] t = new double[Count];
        double[] c = new double[Count];
        int at = 0;
        for (int i = 0; i < Count; i++)
        {
            double h = heat[^1] * i / (Count - 1);
            while (at < heat.Length - 2 && heat[at + 1] < h)
            {
                at++;
            }

            double part = (h - heat[at]) / (heat[at + 1] - heat[at]);
            t[i] = celsius[at] + (part * (celsius[at + 1] - celsius[at]));
            c[i] = k[at] + (part * (k[at + 1] - k[at]));
        }

        return new HeatMaterial(0, heat[^1], t, c, celsius[0], celsius[^1]);
    }
}
