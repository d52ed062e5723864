using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>How fast a food takes heat: a best and a cautious pair of properties and surfaces.</summary>
/// <param name="Best">Best estimate of diffusivity.</param>
/// <param name="Cautious">Slow end.</param>
/// <param name="BestConductivity">Best conductivity.</param>
/// <param name="CautiousConductivity">Conductivity that goes with the slow end.</param>
/// <param name="BestSurface">h; null for a surface at once at the medium's temperature.</param>
/// <param name="CautiousSurface">h of the cautious case.</param>
public sealed record HeatCase(Diffusivity Best, Diffusivity Cautious, Conductivity BestConductivity, Conductivity CautiousConductivity, HeatTransferCoefficient? BestSurface, HeatTransferCoefficient CautiousSurface);

/// <summary>The middle and the face of a piece through a time in one medium, best and cautious, and once more with everything a little off.</summary>
/// <param name="BestToTarget">Time until the middle is at the target, best estimate; null when there is none or it is never reached.</param>
/// <param name="CautiousToTarget">The same in the cautious case.</param>
/// <param name="OffToTarget">Cautious, with the medium 1 K nearer to the start and every size 10 % greater.</param>
/// <param name="Best">Minute, middle and face, best estimate.</param>
/// <param name="Cautious">Minute, middle and face, cautious case.</param>
public sealed record CoreHeating(Duration? BestToTarget, Duration? CautiousToTarget, Duration? OffToTarget, ImmutableArray<CoreMoment> Best, ImmutableArray<CoreMoment> Cautious)
{
    /// <summary>Works it out.</summary>
    /// <param name="shape">Shape.</param>
    /// <param name="sizes">Full sizes, 1 to 900 mm.</param>
    /// <param name="start">Uniform start.</param>
    /// <param name="medium">Medium; below 0 °C nothing is answered, since freezing is not in this model.</param>
    /// <param name="food">Properties and surfaces.</param>
    /// <param name="target">Target of the middle; null for none.</param>
    /// <param name="length">How long; null to stop when the cautious case reaches the target (at most 24 h).</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the model; the message says what.</exception>
    public static CoreHeating Of(SolidShape shape, ImmutableArray<Length> sizes, Temperature start, Temperature medium, HeatCase food, Temperature? target, Duration? length)
    {
        ArgumentNullException.ThrowIfNull(food);
        if (start.Celsius is not (>= 0 and <= 120) || medium.Celsius is not (>= 0 and <= 120))
        {
            throw new ArgumentOutOfRangeException(nameof(medium), medium.Celsius, "Outside the model: start and medium run from 0 °C to 120 °C; freezing, and the wet surface in an oven, are not in it.");
        }

        SolidBody best = SolidBody.Of(shape, sizes, food.Best, food.BestConductivity, food.BestSurface);
        SolidBody slow = SolidBody.Of(shape, sizes, food.Cautious, food.CautiousConductivity, food.CautiousSurface);
        SolidBody thick = SolidBody.Of(shape, [.. sizes.Select(s => s * 1.1)], food.Cautious, food.CautiousConductivity, food.CautiousSurface);
        Temperature off = medium + TemperatureDelta.FromKelvin(start < medium ? -1 : 1);
        Duration? Time(SolidBody body, Temperature at) => target is { } t ? body.TimeTo(start, at, t) : null;
        Duration? cautious = Time(slow, medium);
        Duration until = length ?? cautious ?? Duration.FromHours(6);
        until = until > Duration.FromHours(24) ? Duration.FromHours(24) : until < Duration.FromMinutes(0.1) ? Duration.FromMinutes(0.1) : until;
        return new CoreHeating(Time(best, medium), cautious, Time(thick, off), Curve(best, start, medium, until), Curve(slow, start, medium, until));
    }

    /// <summary>Log reduction of an organism in the cautious case with the medium 1 K nearer to the start and every size a tenth greater, hardest D.</summary>
    public static double OffLog10(SolidShape shape, ImmutableArray<Length> sizes, Temperature start, Temperature medium, HeatCase food, Duration time, Organism organism)
    {
        ArgumentNullException.ThrowIfNull(food);
        ArgumentNullException.ThrowIfNull(organism);
        SolidBody thick = SolidBody.Of(shape, [.. sizes.Select(s => s * 1.1)], food.Cautious, food.CautiousConductivity, food.CautiousSurface);
        return Lethality.Log10(organism.Hardest, History(Curve(thick, start, medium + TemperatureDelta.FromKelvin(start < medium ? -1 : 1), time)), organism.Floor, organism.Ceiling);
    }

    /// <summary>Middle's history as lethality takes it.</summary>
    public static ImmutableArray<(double Minute, Temperature At)> History(ImmutableArray<CoreMoment> curve) => [.. curve.Select(c => (c.Minute, c.Core))];

    private static ImmutableArray<CoreMoment> Curve(SolidBody body, Temperature start, Temperature medium, Duration until)
        => [.. Enumerable.Range(0, 121).Select(i => until * i / 120).Select(t => new CoreMoment(t.TotalMinutes, body.CoreAfter(start, medium, t), body.SurfaceAfter(start, medium, t)))];
}

/// <summary>A moment of a curve.</summary>
/// <param name="Minute">Minutes from the start.</param>
/// <param name="Core">Middle.</param>
/// <param name="Surface">Middle of the nearest face.</param>
public readonly record struct CoreMoment(double Minute, Temperature Core, Temperature Surface);
