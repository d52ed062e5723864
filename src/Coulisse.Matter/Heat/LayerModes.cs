using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>A body of one axis, layered, of properties that do not change, in a medium that does not: exact in time, by the modes of the finite volumes.</summary>
/// <remarks>
/// The volumes' heat flows are a symmetric tridiagonal matrix; its eigenvalues are the rates at which the body's modes die out, and what the middle shares of each is told by the first two and the last entry of its eigenvector alone (implicit QL with shifts, Wilkinson and Reinsch's handbook, in our own words): the work grows with the square of the volumes and not with the time.
/// Two meshes, one twice as fine, are taken together to fourth order, as in <see cref="HeatBody.Refined"/>. Check: <see cref="ConductionSeries"/> for one material, <see cref="HeatBody"/> for several.
/// </remarks>
public sealed class LayerModes
{
    private readonly Mesh _coarse;
    private readonly Mesh _fine;

    /// <summary>Works the modes out.</summary>
    /// <param name="axis">Layers of constant materials from the middle, or from a face that nothing passes, outward; the low face is closed and the outer face dry.</param>
    /// <exception cref="ArgumentException">A material that changes with temperature, a wet face, or a low face that is open.</exception>
    public LayerModes(BodyAxis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        if (axis.Low is not null || axis.High.Wet is not null || axis.Layers.IsEmpty || axis.Layers[0].Cells < 2 || !axis.Layers.All(l => l.Material.IsConstant))
        {
            throw new ArgumentException("Modes are those of constant layers, two volumes or more in the first, closed at the low end and dry outside; for the rest follow a HeatBody.", nameof(axis));
        }

        (_coarse, _fine) = (new Mesh(axis, 1), new Mesh(axis, 2));
    }

    /// <summary>Whether a body can be told so.</summary>
    public static bool Fits(BodyAxis axis) => axis.Low is null && axis.High.Wet is null && axis.High.Medium.Steady is not null && axis.Layers.All(l => l.Material.IsConstant);

    /// <summary>Middle after a time.</summary>
    public Temperature CoreAfter(Temperature start, Temperature medium, Duration time) => medium + ((start - medium) * Core(time.TotalSeconds, out _));

    /// <summary>Outer face after a time.</summary>
    public Temperature SurfaceAfter(Temperature start, Temperature medium, Duration time)
        => medium + ((start - medium) * Together(_fine.Left(_fine.Face, time.TotalSeconds, out _), _coarse.Left(_coarse.Face, time.TotalSeconds, out _)));

    /// <summary>Time until the middle reaches a temperature; null when the medium never brings it there.</summary>
    public Duration? TimeTo(Temperature start, Temperature medium, Temperature core)
    {
        double span = start.Celsius - medium.Celsius;
        double theta = span == 0 ? core == start ? 1 : 0 : (core.Celsius - medium.Celsius) / span;
        return theta >= 1 ? Duration.Zero : theta > 0 ? Duration.FromSeconds(Falling.To(theta, _fine.Near(theta), Core)) : null;
    }

    private double Core(double seconds, out double slope)
    {
        double fine = _fine.Left(_fine.Middle, seconds, out double a);
        double coarse = _coarse.Left(_coarse.Middle, seconds, out double b);
        slope = Together(a, b);
        return Together(fine, coarse);
    }

    private static double Together(double fine, double coarse) => fine + ((fine - coarse) / 3);

    private sealed class Mesh
    {
        private readonly double[] _rate;

        public Mesh(BodyAxis axis, int times)
        {
            int n = axis.Layers.Sum(l => l.Cells * times);
            int power = axis.Along switch { BodyShape.Slab => 0, BodyShape.Cylinder => 1, _ => 2 };
            double[] root = new double[n];      // √ of what each volume holds for a kelvin
            double[] half = new double[n];      // K/W from its middle to its face, over the area
            double[] area = new double[n];      // outer face
            double at = 0;
            int c = 0;
            foreach (BodyLayer layer in axis.Layers)
            {
                layer.Material.At(0, out _, out double slope, out double k);
                double dx = layer.Thick.Metres / (layer.Cells * times);
                for (int i = 0; i < layer.Cells * times; i++, c++)
                {
                    double next = at + dx;
                    (double inner, double outer) = power switch { 0 => (at, next), 1 => (at * at / 2, next * next / 2), _ => (at * at * at / 3, next * next * next / 3) };
                    root[c] = Math.Sqrt((outer - inner) / slope);
                    half[c] = dx / (2 * k);
                    area[c] = power switch { 0 => 1, 1 => next, _ => next * next };
                    at = next;
                }
            }

            double film = axis.High.Surface is { } h ? 1 / h.WattsPerSquareMetreKelvin : 0;
            double outside = area[n - 1] / (half[n - 1] + film);
            double[] d = new double[n];
            double[] e = new double[n];
            double before = 0;
            for (int i = 0; i < n; i++)
            {
                double passes = i == n - 1 ? outside : area[i] / (half[i] + half[i + 1]);
                d[i] = (before + passes) / (root[i] * root[i]);
                e[i] = i == n - 1 ? 0 : -passes / (root[i] * root[i + 1]);
                before = passes;
            }

            double[] first = new double[n];
            double[] second = new double[n];
            double[] last = new double[n];
            (first[0], second[1], last[n - 1]) = (1, 1, 1);
            Settle(d, e, first, second, last);
            _rate = d;
            Middle = new double[n];
            Face = new double[n];
            double face = film > 0 ? film / (half[n - 1] + film) : 0;
            for (int j = 0; j < n; j++)
            {
                // all volumes alike at the start: only the outer one feels the medium, so each mode's weight is its last entry's
                double weight = outside * last[j] / (d[j] * root[n - 1]);
                Middle[j] = ((9 * first[j] / root[0]) - (second[j] / root[1])) / 8 * weight;
                Face[j] = face * last[j] / root[n - 1] * weight;
            }
        }

        public double[] Middle { get; }

        public double[] Face { get; }

        /// <summary>What is left of the difference to the medium.</summary>
        public double Left(double[] share, double seconds, out double slope)
        {
            double sum = 0;
            slope = 0;
            for (int j = 0; j < _rate.Length; j++)
            {
                double falls = _rate[j] * seconds;
                if (falls < 700)
                {
                    double term = share[j] * Math.Exp(-falls);
                    sum += term;
                    slope -= _rate[j] * term;
                }
            }

            return sum;
        }

        public double Near(double theta)
        {
            int slowest = 0;
            for (int j = 1; j < _rate.Length; j++)
            {
                slowest = _rate[j] < _rate[slowest] ? j : slowest;
            }

            return Math.Log(Math.Max(1.0001, Middle[slowest] / theta)) / _rate[slowest];
        }

        /// <summary>Turns the matrix to its eigenvalues, in the diagonal; three rows of the turning are kept.</summary>
        private static void Settle(double[] d, double[] e, double[] x, double[] y, double[] z)
        {
            int n = d.Length;
            for (int low = 0; low < n; low++)
            {
                for (int turn = 0; turn < 60; turn++)
                {
                    int high = low;
                    while (high < n - 1 && Math.Abs(e[high]) > 1e-16 * (Math.Abs(d[high]) + Math.Abs(d[high + 1])))
                    {
                        high++;
                    }

                    if (high == low)
                    {
                        break;
                    }

                    double g = (d[low + 1] - d[low]) / (2 * e[low]);
                    g = d[high] - d[low] + (e[low] / (g + Math.CopySign(Math.Sqrt((g * g) + 1), g)));
                    (double s, double c, double p) = (1, 1, 0);
                    int i = high - 1;
                    for (; i >= low; i--)
                    {
                        (double f, double b) = (s * e[i], c * e[i]);
                        double r = Math.Sqrt((f * f) + (g * g));
                        e[i + 1] = r;
                        if (r == 0)
                        {
                            d[i + 1] -= p;
                            e[high] = 0;
                            break;
                        }

                        (s, c) = (f / r, g / r);
                        g = d[i + 1] - p;
                        r = ((d[i] - g) * s) + (2 * c * b);
                        p = s * r;
                        d[i + 1] = g + p;
                        g = (c * r) - b;
                        (x[i + 1], x[i]) = ((s * x[i]) + (c * x[i + 1]), (c * x[i]) - (s * x[i + 1]));
                        (y[i + 1], y[i]) = ((s * y[i]) + (c * y[i + 1]), (c * y[i]) - (s * y[i + 1]));
                        (z[i + 1], z[i]) = ((s * z[i]) + (c * z[i + 1]), (c * z[i]) - (s * z[i + 1]));
                    }

                    if (i < low)
                    {
                        d[low] -= p;
                        e[low] = g;
                        e[high] = 0;
                    }
                }
            }
        }
    }
}
