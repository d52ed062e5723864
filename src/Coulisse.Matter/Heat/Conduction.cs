using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>A moment of a heating or cooling body.</summary>
/// <param name="Time">Since the start.</param>
/// <param name="Core">Middle.</param>
/// <param name="Mean">Mean over the volume.</param>
public readonly record struct BodyMoment(Duration Time, Temperature Core, Temperature Mean);

/// <summary>Implicit finite volumes for a slab, long cylinder or sphere in a medium whose temperature may change in time.</summary>
/// <remarks>
/// Constant properties. Each step is taken once whole and twice half (backward Euler) and the two are combined to second order;
/// their difference, kept under twenty times the error asked for, steers the step. Properties that vary with temperature,
/// layers and one-sided heating are not here yet. Check: the exact series of <see cref="ConductionSeries"/>, within 0.05 K.
/// </remarks>
/// <param name="Shape">Shape.</param>
/// <param name="Size">Half thickness or radius.</param>
/// <param name="Diffusivity">m²/s.</param>
/// <param name="Conductivity">W/(m·K).</param>
/// <param name="Surface">h, W/(m²·K).</param>
public sealed record Conduction(BodyShape Shape, Length Size, double Diffusivity, double Conductivity, HeatTransferCoefficient Surface)
{
    /// <summary>Follows the body from a uniform start.</summary>
    /// <param name="start">Uniform start.</param>
    /// <param name="medium">Temperature of the medium at a time since the start.</param>
    /// <param name="length">How long.</param>
    /// <param name="cells">Volumes, 10 to 1000.</param>
    /// <param name="perStep">Error allowed in a step, K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Cells, size or properties outside their ranges.</exception>
    public ImmutableArray<BodyMoment> Follow(Temperature start, Func<Duration, Temperature> medium, Duration length, int cells = 100, double perStep = 0.001)
    {
        ArgumentNullException.ThrowIfNull(medium);
        if (cells is not (>= 10 and <= 1000) || Size.Millimetres is not (>= 0.1 and <= 1000) || Diffusivity is not (>= 1e-9 and <= 1e-4) || Conductivity is not (>= 0.01 and <= 500) || perStep is not > 0)
        {
            throw new ArgumentOutOfRangeException(nameof(cells), "Outside the model: 10 to 1000 cells, size 0.1 to 1000 mm, diffusivity 1e-9 to 1e-4 m²/s, conductivity 0.01 to 500 W/(m·K), error above 0 K.");
        }

        double r = Size.Metres;
        double dx = r / cells;
        int power = Shape switch { BodyShape.Slab => 0, BodyShape.Cylinder => 1, _ => 2 };
        double[] face = [.. Enumerable.Range(0, cells + 1).Select(i => Math.Pow(i * dx, power))];
        double[] volume = [.. Enumerable.Range(0, cells).Select(i => (Math.Pow((i + 1) * dx, power + 1) - Math.Pow(i * dx, power + 1)) / (power + 1))];
        double outer = face[cells] / (dx / (2 * Conductivity) + 1 / Surface.WattsPerSquareMetreKelvin) * Diffusivity / Conductivity;
        double[] t = [.. Enumerable.Repeat(start.Celsius, cells)];
        double seconds = 0;
        double step = Math.Min(1, length.TotalSeconds);
        List<BodyMoment> history = [Moment(0)];

        double[] Euler(double[] from, double end, double dt)
        {
            double[] c = new double[cells];
            double[] d = new double[cells];
            for (int i = 0; i < cells; i++)
            {
                double left = i == 0 ? 0 : face[i] * Diffusivity / dx * dt / volume[i];
                double right = i == cells - 1 ? outer * dt / volume[i] : face[i + 1] * Diffusivity / dx * dt / volume[i];
                double rhs = from[i] + (i == cells - 1 ? right * medium(Duration.FromSeconds(end)).Celsius : 0);
                double pivot = 1 + left + right - (i == 0 ? 0 : left * c[i - 1]);
                c[i] = right / pivot;
                d[i] = (rhs + (i == 0 ? 0 : left * d[i - 1])) / pivot;
            }

            for (int i = cells - 2; i >= 0; i--)
            {
                d[i] += c[i] * d[i + 1];
            }

            return d;
        }

        BodyMoment Moment(double at)
        {
            double mean = 0;
            double all = 0;
            for (int i = 0; i < cells; i++)
            {
                mean += t[i] * volume[i];
                all += volume[i];
            }

            // The middle lies half a cell inside the first: a parabola through two cells finds it.
            return new BodyMoment(Duration.FromSeconds(at), Temperature.FromCelsius((9 * t[0] - t[1]) / 8), Temperature.FromCelsius(mean / all));
        }

        while (seconds < length.TotalSeconds - 1e-9)
        {
            step = Math.Min(step, length.TotalSeconds - seconds);
            double[] whole = Euler(t, seconds + step, step);
            double[] half = Euler(Euler(t, seconds + step / 2, step / 2), seconds + step, step / 2);
            double error = 0;
            for (int i = 0; i < cells; i++)
            {
                error = Math.Max(error, Math.Abs(half[i] - whole[i]));
            }

            // The whole-against-half difference is the error of the first-order answer; the combined one is far better.
            double allowed = perStep * 20;
            if (error <= allowed || step < 1e-3)
            {
                for (int i = 0; i < cells; i++)
                {
                    t[i] = 2 * half[i] - whole[i];
                }

                seconds += step;
                history.Add(Moment(seconds));
            }

            step *= Math.Clamp(0.9 * Math.Sqrt(allowed / Math.Max(error, 1e-12)), 0.2, 2);
        }

        return [.. history];
    }
}
