using System.Collections.ObjectModel;

namespace Coulisse.Matter.Heat;

/// <summary>Exact series for a body of constant properties, uniform at the start, put into a medium of constant temperature.</summary>
/// <remarks>
/// θ = (T − T_medium)/(T_start − T_medium) = Σ Cₙ·exp(−ζₙ²·Fo), Fo = α·t/L², Bi = h·L/k, L half thickness or radius.
/// Slab ζ·tan ζ = Bi, cylinder ζ·J₁(ζ) = Bi·J₀(ζ), sphere 1 − ζ·cot ζ = Bi (Carslaw and Jaeger's forms, from memory;
/// first roots against Çengel, Heat and Mass Transfer, table 4-2). Finite cylinder and brick are products of these.
/// A root is found when a sum first asks for it, and a sum ends where the next term is below 1e-16: late in a heating two terms are all of it.
/// Range: Bi 0.01 and up, infinite for a surface at once at the medium's temperature. Check: slab, Bi 1, Fo 0.5 → 0.772526.
/// </remarks>
public sealed class ConductionSeries
{
    private const int Terms = 40;
    private const double Nothing = 40;   // exp(-40) is below the last bit of a sum near one
    private readonly double[] _zeta = new double[Terms];
    private readonly double[] _square = new double[Terms];
    private readonly double[] _centre = new double[Terms];
    private volatile int _known;   // terms filled in; two threads may fill the same one, with the same figures

    private ConductionSeries(BodyShape shape, double biot)
    {
        Shape = shape;
        Biot = biot;
    }

    /// <summary>Shape.</summary>
    public BodyShape Shape { get; }

    /// <summary>Biot number h·L/k, dimensionless; infinite for a fixed surface.</summary>
    public double Biot { get; }

    /// <summary>Roots ζ, rising.</summary>
    public IReadOnlyList<double> Roots => All(_zeta);

    /// <summary>Coefficients of the centre.</summary>
    public IReadOnlyList<double> Coefficients => All(_centre);

    /// <summary>Works out the series.</summary>
    /// <param name="shape">Shape.</param>
    /// <param name="biot">h·L/k, 0.01 and up, or positive infinity.</param>
    /// <exception cref="ArgumentOutOfRangeException">A Biot number below 0.01 or NaN: outside the model.</exception>
    public static ConductionSeries For(BodyShape shape, double biot) => biot >= 0.01
        ? new ConductionSeries(shape, biot)
        : throw new ArgumentOutOfRangeException(nameof(biot), biot, "Outside the model: the series is used for a Biot number of 0.01 and up.");

    /// <summary>θ at the centre.</summary>
    /// <param name="fourier">α·t/L², 0 and up.</param>
    public double CentreAt(double fourier) => CentreAt(fourier, out _);

    /// <summary>θ averaged over the volume.</summary>
    /// <param name="fourier">α·t/L², 0 and up.</param>
    public double MeanAt(double fourier) => Sum(fourier, z => MeanFactor(Shape, z));

    /// <summary>θ at the surface.</summary>
    /// <param name="fourier">α·t/L², 0 and up.</param>
    /// <remarks>In the first moment (Fo below 0.001) the mean of forty terms is not enough; the surface is then taken as that of Fo 0.001, but 1 at no time at all.</remarks>
    public double SurfaceAt(double fourier) => double.IsPositiveInfinity(Biot) ? (fourier == 0 ? 1 : 0) : fourier == 0 ? 1
        : Sum(Math.Max(fourier, 0.001), z => Shape switch { BodyShape.Slab => Math.Cos(z), BodyShape.Cylinder => Bessel.J(0, z), _ => Math.Sin(z) / z });

    /// <summary>Fourier number at which the centre has fallen to a given θ.</summary>
    /// <param name="theta">Between 0 and 1, both excluded.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 1.</exception>
    public double FourierTo(double theta)
    {
        if (theta is not (> 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(theta), theta, "A θ between 0 and 1 is reached at some time; others are not.");
        }

        Reach(1);
        return Falling.To(theta, Math.Log(Math.Max(1.0001, _centre[0] / theta)) / _square[0], CentreAt);
    }

    /// <summary>θ at the centre and its slope with the Fourier number.</summary>
    internal double CentreAt(double fourier, out double slope)
    {
        slope = 0;
        if (fourier is not >= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(fourier), fourier, "A Fourier number is 0 or more.");
        }

        // Below Fo 0.001 forty terms no longer sum to 1 at the centre, and nothing has reached it yet.
        if (fourier < 0.001)
        {
            return 1;
        }

        double sum = 0;
        for (int i = 0; i < Terms; i++)
        {
            if (i >= _known)
            {
                Reach(i + 1);
            }

            double falls = _square[i] * fourier;
            if (falls > Nothing)
            {
                // a middle that is all but at the medium is still told by its first term
                sum = i == 0 ? _centre[0] * Math.Exp(-falls) : sum;
                slope = i == 0 ? -_square[0] * sum : slope;
                break;
            }

            double term = _centre[i] * Math.Exp(-falls);
            sum += term;
            slope -= _square[i] * term;
        }

        return Math.Clamp(sum, 0, 1);
    }

    private double Sum(double fourier, Func<double, double> factor)
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
            Reach(i + 1);
            double falls = _square[i] * fourier;
            if (falls > Nothing && i > 0)
            {
                break;
            }

            sum += _centre[i] * factor(_zeta[i]) * Math.Exp(-falls);
        }

        return Math.Clamp(sum, 0, 1);
    }

    private ReadOnlyCollection<double> All(double[] of)
    {
        Reach(Terms);
        return Array.AsReadOnly(of);
    }

    private void Reach(int terms)
    {
        for (int n = _known; n < terms; n++)
        {
            double z = ConductionRoots.Of(Shape, Biot, n + 1);
            (_zeta[n], _square[n], _centre[n]) = (z, z * z, Centre(Shape, z));
            _known = n + 1;
        }
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
