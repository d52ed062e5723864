using System.Collections.Immutable;

namespace Coulisse.Matter.Heat;

/// <summary>Exact series for a body of constant properties, uniform at the start, put into a medium of constant temperature.</summary>
/// <remarks>
/// θ = (T − T_medium)/(T_start − T_medium) = Σ Cₙ·exp(−ζₙ²·Fo), Fo = α·t/L², Bi = h·L/k, L half thickness or radius.
/// Slab ζ·tan ζ = Bi, cylinder ζ·J₁(ζ) = Bi·J₀(ζ), sphere 1 − ζ·cot ζ = Bi (Carslaw and Jaeger's forms, from memory;
/// first roots against Çengel, Heat and Mass Transfer, table 4-2). Finite cylinder and brick are products of these.
/// Range: Bi 0.01 and up, infinite for a surface at once at the medium's temperature. Check: slab, Bi 1, Fo 0.5 → 0.772526.
/// </remarks>
public sealed class ConductionSeries
{
    private const int Terms = 40;
    private readonly ImmutableArray<double> _zeta;
    private readonly ImmutableArray<double> _centre;
    private readonly ImmutableArray<double> _mean;
    private readonly ImmutableArray<double> _surface;

    private ConductionSeries(BodyShape shape, double biot)
    {
        Shape = shape;
        Biot = biot;
        _zeta = [.. Enumerable.Range(1, Terms).Select(n => Root(shape, biot, n))];
        _centre = [.. _zeta.Select(z => Centre(shape, z))];
        _mean = [.. _zeta.Select((z, i) => _centre[i] * MeanFactor(shape, z))];
        _surface = [.. _zeta.Select((z, i) => _centre[i] * (shape switch { BodyShape.Slab => Math.Cos(z), BodyShape.Cylinder => Bessel.J(0, z), _ => Math.Sin(z) / z }))];
    }

    /// <summary>Shape.</summary>
    public BodyShape Shape { get; }

    /// <summary>Biot number h·L/k, dimensionless; infinite for a fixed surface.</summary>
    public double Biot { get; }

    /// <summary>Roots ζ, rising.</summary>
    public IReadOnlyList<double> Roots => _zeta;

    /// <summary>Coefficients of the centre.</summary>
    public IReadOnlyList<double> Coefficients => _centre;

    /// <summary>Works out the series.</summary>
    /// <param name="shape">Shape.</param>
    /// <param name="biot">h·L/k, 0.01 and up, or positive infinity.</param>
    /// <exception cref="ArgumentOutOfRangeException">A Biot number below 0.01 or NaN: outside the model.</exception>
    public static ConductionSeries For(BodyShape shape, double biot) => biot >= 0.01
        ? new ConductionSeries(shape, biot)
        : throw new ArgumentOutOfRangeException(nameof(biot), biot, "Outside the model: the series is used for a Biot number of 0.01 and up.");

    /// <summary>θ at the centre.</summary>
    /// <param name="fourier">α·t/L², 0 and up.</param>
    public double CentreAt(double fourier) => Sum(_centre, fourier);

    /// <summary>θ averaged over the volume.</summary>
    /// <param name="fourier">α·t/L², 0 and up.</param>
    public double MeanAt(double fourier) => Sum(_mean, fourier);

    /// <summary>θ at the surface.</summary>
    /// <param name="fourier">α·t/L², 0 and up.</param>
    /// <remarks>In the first moment (Fo below 0.001) the mean of forty terms is not enough; the surface is then taken as that of Fo 0.001, but 1 at no time at all.</remarks>
    public double SurfaceAt(double fourier) => double.IsPositiveInfinity(Biot) ? (fourier == 0 ? 1 : 0) : fourier == 0 ? 1 : Sum(_surface, Math.Max(fourier, 0.001));

    /// <summary>Fourier number at which the centre has fallen to a given θ.</summary>
    /// <param name="theta">Between 0 and 1, both excluded.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 1.</exception>
    public double FourierTo(double theta)
    {
        if (theta is not (> 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(theta), theta, "A θ between 0 and 1 is reached at some time; others are not.");
        }

        double low = 0;
        double high = 1;
        while (CentreAt(high) > theta)
        {
            high *= 2;
        }

        for (int i = 0; i < 80; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = CentreAt(middle) > theta ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    // Below Fo 0.001 forty terms no longer sum to 1 at the centre, and nothing has reached it yet.
    private double Sum(ImmutableArray<double> coefficients, double fourier)
    {
        if (fourier is not >= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(fourier), fourier, "A Fourier number is 0 or more.");
        }

        if (fourier < 0.001)
        {
            return 1;
        }

        double sum = 0;
        for (int i = 0; i < Terms; i++)
        {
            sum += coefficients[i] * Math.Exp(-_zeta[i] * _zeta[i] * fourier);
        }

        return Math.Clamp(sum, 0, 1);
    }

    private static double Root(BodyShape shape, double biot, int n)
    {
        (double low, double high) = shape switch
        {
            BodyShape.Slab => ((n - 1) * Math.PI, (n - 0.5) * Math.PI),
            BodyShape.Cylinder => (n == 1 ? 0 : Zero(z => Bessel.J(1, z), (n - 0.75) * Math.PI - 0.4, (n - 0.75) * Math.PI + 0.4), Zero(z => Bessel.J(0, z), (n - 0.25) * Math.PI - 0.4, (n - 0.25) * Math.PI + 0.4)),
            _ => ((n - 1) * Math.PI, n * Math.PI),
        };
        if (double.IsPositiveInfinity(biot))
        {
            return high;
        }

        return Zero(
            shape switch
            {
                BodyShape.Slab => z => z * Math.Sin(z) - biot * Math.Cos(z),
                BodyShape.Cylinder => z => z * Bessel.J(1, z) - biot * Bessel.J(0, z),
                _ => z => (1 - biot) * Math.Sin(z) - z * Math.Cos(z),
            },
            low + 1e-9,
            high);
    }

    private static double Zero(Func<double, double> f, double low, double high)
    {
        bool rising = f(low) < 0;
        for (int i = 0; i < 52; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = f(middle) < 0 == rising ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double Centre(BodyShape shape, double z) => shape switch
    {
        BodyShape.Slab => 4 * Math.Sin(z) / (2 * z + Math.Sin(2 * z)),
        BodyShape.Cylinder => 2 / z * Bessel.J(1, z) / (Math.Pow(Bessel.J(0, z), 2) + Math.Pow(Bessel.J(1, z), 2)),
        _ => 4 * (Math.Sin(z) - z * Math.Cos(z)) / (2 * z - Math.Sin(2 * z)),
    };

    private static double MeanFactor(BodyShape shape, double z) => shape switch
    {
        BodyShape.Slab => Math.Sin(z) / z,
        BodyShape.Cylinder => 2 * Bessel.J(1, z) / z,
        _ => 3 * (Math.Sin(z) - z * Math.Cos(z)) / (z * z * z),
    };
}
