using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>What kind of piece it is.</summary>
public enum SolidShape
{
    /// <summary>Flat piece, one size: thickness.</summary>
    Slab,

    /// <summary>Roll, one size for an endless one (diameter) or two (diameter, length).</summary>
    Cylinder,

    /// <summary>Ball, one size: diameter.</summary>
    Sphere,

    /// <summary>Block, three sizes.</summary>
    Brick,
}

/// <summary>A piece of food of constant properties in a medium of constant temperature: slab, roll, ball or block.</summary>
/// <remarks>Exact series; the roll of a given length and the block are products of them. Sizes 1 to 1000 mm. With one face kept warm (a tray on a poor conductor) give twice the thickness.</remarks>
public sealed class SolidBody
{
    private readonly ImmutableArray<(ConductionSeries Series, double Half)> _axes;
    private readonly double _alpha;

    private SolidBody(ImmutableArray<(ConductionSeries, double)> axes, double alpha)
    {
        _axes = axes;
        _alpha = alpha;
    }

    /// <summary>Makes a body.</summary>
    /// <param name="shape">Shape.</param>
    /// <param name="sizes">Full sizes: thickness; diameter and perhaps length; diameter; three edges.</param>
    /// <param name="diffusivity">1e-9 to 1e-5 m²/s.</param>
    /// <param name="conductivity">0.01 to 50 W/(m·K).</param>
    /// <param name="surface">h; null for a surface at the medium's temperature at once.</param>
    /// <exception cref="ArgumentOutOfRangeException">Wrong number of sizes, or anything outside its range; the message says which.</exception>
    public static SolidBody Of(SolidShape shape, ImmutableArray<Length> sizes, Diffusivity diffusivity, Conductivity conductivity, HeatTransferCoefficient? surface)
    {
        bool fits = shape switch { SolidShape.Slab or SolidShape.Sphere => sizes.Length == 1, SolidShape.Cylinder => sizes.Length is 1 or 2, _ => sizes.Length == 3 };
        if (!fits)
        {
            throw new ArgumentOutOfRangeException(nameof(sizes), sizes.Length, "A slab has one size (thickness), a sphere one (diameter), a cylinder one or two (diameter, length), a brick three.");
        }

        if (sizes.Any(s => s.Millimetres is not (>= 1 and <= 1000)))
        {
            throw new ArgumentOutOfRangeException(nameof(sizes), "Outside the model: sizes run from 1 mm to 1000 mm.");
        }

        if (diffusivity.SquareMetresPerSecond is not (>= 1e-9 and <= 1e-5) || conductivity.WattsPerMetreKelvin is not (>= 0.01 and <= 50))
        {
            throw new ArgumentOutOfRangeException(nameof(diffusivity), "Outside the model: diffusivity 1e-9 to 1e-5 m²/s, conductivity 0.01 to 50 W/(m·K).");
        }

        ConductionSeries Along(BodyShape along, double half) => ConductionSeries.For(along, surface is { } h ? h.WattsPerSquareMetreKelvin * half / conductivity.WattsPerMetreKelvin : double.PositiveInfinity);
        return new SolidBody([.. sizes.Select((s, i) =>
        {
            BodyShape along = shape switch { SolidShape.Sphere => BodyShape.Sphere, SolidShape.Cylinder when i == 0 => BodyShape.Cylinder, _ => BodyShape.Slab };
            double half = s.Metres / 2;
            return (Along(along, half), half);
        })], diffusivity.SquareMetresPerSecond);
    }

    /// <summary>Middle after a time.</summary>
    public Temperature CoreAfter(Temperature start, Temperature medium, Duration time) => medium + ((start - medium) * Theta(time.TotalSeconds, surface: false));

    /// <summary>Middle of the nearest face after a time.</summary>
    public Temperature SurfaceAfter(Temperature start, Temperature medium, Duration time) => medium + ((start - medium) * Theta(time.TotalSeconds, surface: true));

    /// <summary>What is left of the difference to the medium in the middle, 1 to 0.</summary>
    internal double CoreShare(double seconds) => Core(seconds, out _);

    /// <summary>The same on the whole.</summary>
    internal double MeanShare(double seconds) => seconds <= 0 ? 1 : _axes.Aggregate(1.0, (all, a) => all * a.Series.MeanAt(_alpha * seconds / (a.Half * a.Half)));

    /// <summary>Time until the middle reaches a temperature; null when the medium never brings it there.</summary>
    public Duration? TimeTo(Temperature start, Temperature medium, Temperature core)
    {
        double span = start.Celsius - medium.Celsius;
        if (span == 0)
        {
            return core == start ? Duration.Zero : null;
        }

        double theta = (core.Celsius - medium.Celsius) / span;
        if (theta >= 1 || theta is not > 0)
        {
            return theta >= 1 ? Duration.Zero : null;
        }

        return Duration.FromSeconds(Falling.To(theta, Nearly(theta), Core));
    }

    /// <summary>First guess: the first terms of all axes together, read off at Fo 1, where the others have gone.</summary>
    private double Nearly(double theta)
    {
        double rate = 0;
        double lag = 1;
        foreach ((ConductionSeries series, double half) in _axes)
        {
            double centre = series.CentreAt(1, out double slope);
            double fall = centre > 0 ? -slope / centre : 0;
            rate += fall * _alpha / (half * half);
            lag *= centre * Math.Exp(fall);
        }

        return Math.Log(Math.Max(1.0001, lag / theta)) / rate;
    }

    private double Core(double seconds, out double slope)
    {
        double theta = 1;
        double share = 0;
        foreach ((ConductionSeries series, double half) in _axes)
        {
            double per = _alpha / (half * half);
            double one = series.CentreAt(per * seconds, out double falls);
            theta *= one;
            share += one > 0 ? falls * per / one : 0;
        }

        slope = theta * share;
        return theta;
    }

    private double Theta(double seconds, bool surface)
    {
        int nearest = 0;
        for (int i = 1; i < _axes.Length; i++)
        {
            nearest = _axes[i].Half < _axes[nearest].Half ? i : nearest;
        }

        double theta = 1;
        for (int i = 0; i < _axes.Length; i++)
        {
            (ConductionSeries series, double half) = _axes[i];
            double fourier = _alpha * seconds / (half * half);
            theta *= surface && i == nearest ? series.SurfaceAt(fourier) : series.CentreAt(fourier);
        }

        return theta;
    }
}
