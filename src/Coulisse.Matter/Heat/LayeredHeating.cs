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

        double toward = Medium.At(0) >= Start.Celsius ? -1 : 1;
        Duration? Time(bool best, double scale, double shift) => target is { } t ? Body(best, scale, shift).Follow(Start, Longest, 0.02, 2880).TimeTo(t) : null;
        Duration? cautious = Time(false, 1, 0);
        Duration until = length ?? cautious ?? Duration.FromHours(6);
        until = until < Duration.FromMinutes(0.1) ? Duration.FromMinutes(0.1) : until;
        return new CoreHeating(Time(true, 1, 0), cautious, Time(false, 1.1, toward), Curve(Body(true, 1, 0), until), Curve(Body(false, 1, 0), until));
    }

    /// <summary>Minutes to a target over what is not known exactly, forty samples.</summary>
    public SampledAnswer Minutes(Temperature target) => SampledAnswer.Of(
        [.. UncertainCore.Ranges(Sizes, Start, Temperature.FromCelsius(Math.Clamp(Medium.At(0), 0, 300)), Food).Where(r => r.What != "D")],
        v =>
        {
            double part = Food.Best.SquareMetresPerSecond == Food.Cautious.SquareMetresPerSecond ? 1 : Math.Abs((v[3] - Food.Cautious.SquareMetresPerSecond) / (Food.Best.SquareMetresPerSecond - Food.Cautious.SquareMetresPerSecond));
            double k = Food.CautiousConductivity.WattsPerMetreKelvin + (part * (Food.BestConductivity.WattsPerMetreKelvin - Food.CautiousConductivity.WattsPerMetreKelvin));
            return Body(Conductivity.FromWattsPerMetreKelvin(k), Diffusivity.FromSquareMetresPerSecond(v[3]), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(v[4]), v[0], v[2] - Math.Clamp(Medium.At(0), 0, 300), 6)
                .Follow(Temperature.FromCelsius(v[1]), Longest, 0.1, 1440).TimeTo(target)?.TotalMinutes;
        },
        40);

    private HeatBody Body(bool best, double scale, double shift) => best
        ? Body(Food.BestConductivity, Food.Best, Food.BestSurface, scale, shift, Cells)
        : Body(Food.CautiousConductivity, Food.Cautious, Food.CautiousSurface, scale, shift, Cells);

    private HeatBody Body(Conductivity k, Diffusivity alpha, HeatTransferCoefficient? h, double scale, double shift, int cells)
    {
        HeatMaterial food = HeatMaterial.Constant(k, alpha);
        BodyFace face = new(h, shift == 0 ? Medium : Medium with { At = s => Medium.At(s) + shift }) { Wet = Wet };
        return !OneSided
            ? HeatBody.Piece(Shape, [.. Sizes.Select(s => s * scale)], food, face, Sizes.Length > 1 ? Math.Min(cells, 8) : cells, Skin)
            : Shape == SolidShape.Slab && Sizes.Length == 1
                ? new HeatBody([new BodyAxis(BodyShape.Slab, [new BodyLayer(food, Sizes[0] * scale, cells), .. Skin], null, face)])
                : throw new ArgumentOutOfRangeException(nameof(scale), Shape, "Only a slab of one size is heated from one side.");
    }

    private ImmutableArray<CoreMoment> Curve(HeatBody body, Duration until)
        => [.. body.Follow(Start, until, 0.02, 120).Moments.Select(m => new CoreMoment(m.Time.TotalMinutes, m.Core, m.Surface))];
}
