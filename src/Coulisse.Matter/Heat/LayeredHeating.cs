using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>The middle of a piece behind layers, heated from one side, with a wet face, or in a medium that changes: best, cautious and a little off, as <see cref="CoreHeating"/>, by the finite volumes.</summary>
/// <param name="Shape">Shape; one-sided only for a slab.</param>
/// <param name="Sizes">Full sizes of the food.</param>
/// <param name="Start">Uniform start.</param>
/// <param name="Medium">What surrounds it, through time.</param>
/// <param name="Food">Properties and surfaces, constant.</param>
/// <param name="Skin">Layers from the food outward: film, glass, steel, still air.</param>
/// <param name="OneSided">The lower face lets nothing through (a tray on a solid shelf).</param>
/// <param name="Wet">The face is wet and open; null for covered.</param>
public sealed record LayeredHeating(SolidShape Shape, ImmutableArray<Length> Sizes, Temperature Start, Medium Medium, HeatCase Food, ImmutableArray<BodyLayer> Skin, bool OneSided, WetSurface? Wet)
{
    private const int Cells = 12;
    private static readonly Duration Longest = Duration.FromHours(24);

    /// <summary>Works it out.</summary>
    /// <param name="target">Target of the middle; null for none.</param>
    /// <param name="length">How long; null to stop when the cautious case is there (at most 24 h).</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the model; the message says what.</exception>
    public CoreHeating Of(Temperature? target, Duration? length)
    {
        if (Start.Celsius is not (>= 0 and <= 120) || Enumerable.Range(0, 97).Select(i => Medium.At(i * 900.0)).Any(t => t < 0 || t > (Wet is null ? 120 : 300)))
        {
            throw new ArgumentOutOfRangeException(nameof(target), Start.Celsius, "Outside the model: start and medium run from 0 °C to 120 °C (an oven to 300 °C with a wet face); for freezing take coulisse heat freeze.");
        }

        if (length is { } asked && (asked <= Duration.Zero || asked > Longest))
        {
            throw new ArgumentOutOfRangeException(nameof(length), asked, "Outside the model: up to 24 h.");
        }

        Duration? Time(bool best, double scale, double shift) => target is { } t ? Until(Body(best, scale, shift), Start, t, 0.02, 2880) : null;
        Duration? cautious = Time(false, 1, 0);
        Duration until = length ?? cautious ?? Duration.FromHours(6);
        until = until < Duration.FromMinutes(0.1) ? Duration.FromMinutes(0.1) : until;
        return new CoreHeating(Time(true, 1, 0), cautious, Time(false, 1.1, Toward), Curve(Body(true, 1, 0), until), Curve(Body(false, 1, 0), until));
    }

    /// <summary>Minutes to a target over what is not known exactly, forty samples.</summary>
    public SampledAnswer Minutes(Temperature target) => SampledAnswer.Of(
        [.. Ranges.Where(r => r.What != "D")],
        v => Until(Sampled(v), Temperature.FromCelsius(v[1]), target, 0.1, 1440)?.TotalMinutes,
        40);

    /// <summary>Log reduction of an organism after a time, over the same and over its D, forty samples.</summary>
    public SampledAnswer Log10(Duration time, Organism organism)
    {
        ArgumentNullException.ThrowIfNull(organism);
        return time > Duration.Zero && time <= Longest
            ? SampledAnswer.Of(
                Ranges,
                v => Lethality.Log10(
                    organism.Best with { Minutes = organism.Best.Minutes * Math.Pow(organism.Hardest.Minutes / organism.Best.Minutes, v[5]) },
                    Middle(Sampled(v), Temperature.FromCelsius(v[1]), time, 0.05, 120),
                    organism.Floor,
                    organism.Ceiling),
                40)
            : throw new ArgumentOutOfRangeException(nameof(time), time, "Outside the model: longer than nothing and up to 24 h.");
    }

    /// <summary>Log reduction of an organism in the cautious case with the medium 1 K nearer to the start and every size a tenth greater, hardest D.</summary>
    public double OffLog10(Duration time, Organism organism)
    {
        ArgumentNullException.ThrowIfNull(organism);
        return Lethality.Log10(organism.Hardest, Middle(Body(false, 1.1, Toward), Start, time, 0.02, 240), organism.Floor, organism.Ceiling);
    }

    private double Toward => Medium.At(0) >= Start.Celsius ? -1 : 1;

    private double Set => Math.Clamp(Medium.At(0), 0, 300);

    private ImmutableArray<StatedRange> Ranges => UncertainCore.Ranges(Sizes, Start, Temperature.FromCelsius(Set), Food);

    private Built Sampled(double[] v)
    {
        double part = Food.Best.SquareMetresPerSecond == Food.Cautious.SquareMetresPerSecond ? 1 : Math.Abs((v[3] - Food.Cautious.SquareMetresPerSecond) / (Food.Best.SquareMetresPerSecond - Food.Cautious.SquareMetresPerSecond));
        double k = Food.CautiousConductivity.WattsPerMetreKelvin + (part * (Food.BestConductivity.WattsPerMetreKelvin - Food.CautiousConductivity.WattsPerMetreKelvin));
        return Body(Conductivity.FromWattsPerMetreKelvin(k), Diffusivity.FromSquareMetresPerSecond(v[3]), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(v[4]), v[0], v[2] - Set, 6);
    }

    // Constant layers of one axis in a medium that never changes are told exactly in time by their modes; the rest is followed.
    private static Duration? Until(Built body, Temperature start, Temperature target, double perStep, int points) => body.Modes is { } modes
        ? modes.TimeTo(start, body.Medium.Steady!.Value, target) is { } t && t <= Longest ? t : null
        : body.Body.Follow(start, Longest, perStep, points).TimeTo(target);

    private static ImmutableArray<(double Minute, Temperature At)> Middle(Built body, Temperature start, Duration length, double perStep, int points) => body.Modes is { } modes
        ? [.. Enumerable.Range(0, points + 1).Select(i => length * i / points).Select(t => (t.TotalMinutes, modes.CoreAfter(start, body.Medium.Steady!.Value, t)))]
        : body.Body.Follow(start, length, perStep, points).History;

    private ImmutableArray<CoreMoment> Curve(Built body, Duration until) => body.Modes is { } modes
        ? [.. Enumerable.Range(0, 121).Select(i => until * i / 120).Select(t => new CoreMoment(t.TotalMinutes, modes.CoreAfter(Start, body.Medium.Steady!.Value, t), modes.SurfaceAfter(Start, body.Medium.Steady!.Value, t)))]
        : [.. body.Body.Follow(Start, until, 0.02, 120).Moments.Select(m => new CoreMoment(m.Time.TotalMinutes, m.Core, m.Surface))];

    private Built Body(bool best, double scale, double shift) => best
        ? Body(Food.BestConductivity, Food.Best, Food.BestSurface, scale, shift, Cells)
        : Body(Food.CautiousConductivity, Food.Cautious, Food.CautiousSurface, scale, shift, Cells);

    private Built Body(Conductivity k, Diffusivity alpha, HeatTransferCoefficient? h, double scale, double shift, int cells)
    {
        HeatMaterial food = HeatMaterial.Constant(k, alpha);
        BodyFace face = new(h, Medium.Warmer(shift)) { Wet = Wet };
        if (OneSided && (Shape != SolidShape.Slab || Sizes.Length != 1))
        {
            throw new ArgumentOutOfRangeException(nameof(scale), Shape, "Only a slab of one size is heated from one side.");
        }

        HeatBody body = OneSided
            ? new HeatBody([new BodyAxis(BodyShape.Slab, [new BodyLayer(food, Sizes[0] * scale, cells), .. Skin], null, face)])
            : HeatBody.Piece(Shape, [.. Sizes.Select(s => s * scale)], food, face, Sizes.Length > 1 ? Math.Min(cells, 8) : cells, Skin);
        return new Built(body, face.Medium, body.Axes is [var only] && LayerModes.Fits(only) ? new LayerModes(only) : null);
    }

    private sealed record Built(HeatBody Body, Medium Medium, LayerModes? Modes);
}
