using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>A body of one to three axes, layered or not, of properties that change with temperature, followed through time by implicit finite volumes.</summary>
/// <remarks>
/// Unknown: heat content of each cell, so freezing and heat balance need nothing special. Time: the four-stage Rosenbrock W-method of order three of Rang and Angermann (BIT 45, 2005; ROS34PW2, coefficients from memory, its third order is tested), one
/// tridiagonal solve an axis and stage, axes one after the other (approximate factorisation; bounded for any step on a scan of negative eigenvalues in three axes). The embedded second-order answer steers the step. Space: second order.
/// Check: the exact series of <see cref="ConductionSeries"/> and <see cref="SolidBody"/>.
/// </remarks>
public sealed class HeatBody
{
    private const double Gamma = 0.43586652150845900;
    private static readonly double[][] A = [[], [0.87173304301691801], [0.84457060015369423, -0.11299064236484185], [0, 0, 1]];
    private static readonly double[][] C = [[], [-0.87173304301691801], [-0.90338057013044082, 0.054180672388095326], [0.24212380706095346, -1.2232505839045147, 0.54526025533510214]];
    private static readonly double[] B = [0.24212380706095346, -1.2232505839045147, 1.5452602553351020, 0.43586652150845900];
    private static readonly double[] Embedded = [0.37810903145819369, -0.096042292212423178, 0.5, 0.21793326075422950];
    private readonly ImmutableArray<BodyAxis> _axes;

    /// <summary>A body of axes at right angles.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No axis or more than three, a round axis that is not the first, a sphere with a second axis, no layer, a thickness or number of cells outside its range.</exception>
    public HeatBody(ImmutableArray<BodyAxis> axes)
    {
        if (axes.Length is not (>= 1 and <= 3) || axes.Skip(1).Any(a => a.Along != BodyShape.Slab) || (axes[0].Along == BodyShape.Sphere && axes.Length > 1) || (axes[0].Along == BodyShape.Cylinder && axes.Length > 2))
        {
            throw new ArgumentOutOfRangeException(nameof(axes), axes.Length, "A body has one to three axes; only the first may be round, a sphere stands alone and a cylinder has one more at most.");
        }

        if (axes.Any(a => a.Layers.IsEmpty || a.Layers[0].Cells < 2 || a.Layers.Any(l => l.Cells is not (>= 1 and <= 1000) || l.Thick.Metres is not (>= 1e-5 and <= 1))) || axes.Aggregate(1.0, (n, a) => n * a.Layers.Sum(l => l.Cells)) > 200_000)
        {
            throw new ArgumentOutOfRangeException(nameof(axes), axes.Length, "Outside the model: each axis has layers of 0.01 to 1000 mm in 1 to 1000 cells, at least two in the first, 200000 cells in all.");
        }

        _axes = axes;
    }

    /// <summary>Its axes.</summary>
    internal ImmutableArray<BodyAxis> Axes => _axes;

    /// <summary>A piece alike on all sides: slab, endless or cut roll, ball, block.</summary>
    /// <param name="shape">Shape.</param>
    /// <param name="sizes">Full sizes, as for <see cref="SolidBody.Of"/>.</param>
    /// <param name="material">What it is.</param>
    /// <param name="face">What all its faces meet.</param>
    /// <param name="cells">Cells from the middle to a face.</param>
    /// <param name="skin">Layers around it, from the food outward: film, glass, tin.</param>
    /// <exception cref="ArgumentOutOfRangeException">Wrong number of sizes, or outside the model.</exception>
    public static HeatBody Piece(SolidShape shape, ImmutableArray<Length> sizes, HeatMaterial material, BodyFace face, int cells = 24, params ImmutableArray<BodyLayer> skin)
    {
        bool fits = shape switch { SolidShape.Slab or SolidShape.Sphere => sizes.Length == 1, SolidShape.Cylinder => sizes.Length is 1 or 2, _ => sizes.Length == 3 };
        return fits
            ? new HeatBody([.. sizes.Select((s, i) => new BodyAxis(
                i > 0 || shape is SolidShape.Slab or SolidShape.Brick ? BodyShape.Slab : shape == SolidShape.Sphere ? BodyShape.Sphere : BodyShape.Cylinder,
                [new BodyLayer(material, s / 2, cells), .. skin],
                null,
                face))])
            : throw new ArgumentOutOfRangeException(nameof(sizes), sizes.Length, "A slab has one size (thickness), a sphere one (diameter), a cylinder one or two (diameter, length), a brick three.");
    }

    /// <summary>The same body with so many times the cells.</summary>
    public HeatBody Finer(int times) => new([.. _axes.Select(a => a with { Layers = [.. a.Layers.Select(l => l with { Cells = l.Cells * times })] })]);

    /// <summary>Follows it twice, once with twice the cells, and takes the two together to fourth order; says how far the finer one was off.</summary>
    /// <returns>The run of the finer mesh with its core extrapolated, and the mesh's greatest error in the core, K.</returns>
    public (BodyRun Run, double MeshError) Refined(Temperature start, Duration length, double perStep = 0.005, int points = 240)
    {
        BodyRun coarse = Follow(start, length, perStep, points);
        BodyRun fine = Finer(2).Follow(start, length, perStep, points);
        double worst = 0;
        BodyMoment[] both = [.. fine.Moments.Zip(coarse.Moments, (f, c) =>
        {
            double off = (f.Core.Celsius - c.Core.Celsius) / 3;
            worst = Math.Max(worst, Math.Abs(off));
            return f with { Core = f.Core + TemperatureDelta.FromKelvin(off) };
        })];
        return (fine with { Moments = [.. both] }, worst);
    }

    /// <summary>Follows the body from a uniform start.</summary>
    /// <param name="start">Uniform start.</param>
    /// <param name="length">How long, above 0 and up to 30 days.</param>
    /// <param name="perStep">Error allowed in a step, K.</param>
    /// <param name="points">Moments reported, evenly spaced.</param>
    /// <exception cref="ArgumentOutOfRangeException">A material is not described at the start or at a medium's temperature; a length or error outside its range.</exception>
    public BodyRun Follow(Temperature start, Duration length, double perStep = 0.005, int points = 240)
    {
        double end = length.TotalSeconds;
        if (end is not (> 0 and <= 2_592_000) || perStep is not (> 0 and <= 10) || points is not (>= 2 and <= 100_000))
        {
            throw new ArgumentOutOfRangeException(nameof(length), length, "A run is longer than nothing and up to 30 days, with an error a step above 0 and up to 10 K, and 2 to 100000 moments.");
        }

        Check(start, end);
        HeatGrid grid = new(_axes);
        BodyWatch watch = new(grid, _axes, start, end);
        int n = grid.Count;
        int axes = _axes.Length;
        double[] heat = [.. Enumerable.Range(0, n).Select(c => grid.Uniform(start, c))];
        double[] before = [.. heat];
        double[] trial = new double[n];
        double[] sums = new double[n];
        double[] slope = new double[n];
        double[] flow = new double[n];
        double[][] k = [.. Enumerable.Range(0, 4).Select(_ => new double[n])];
        double[][][] factors = [.. Enumerable.Range(0, axes).Select(_ => Enumerable.Range(0, 3).Select(_ => new double[n]).ToArray())];
        double[] breaks = [.. _axes.SelectMany(a => new[] { a.Low, a.High }).OfType<BodyFace>().SelectMany(f => f.Medium.Breaks).Select(b => b.TotalSeconds).Where(b => b > 0 && b < end).Append(end).Distinct().Order()];
        int next = 0;
        double at = 0;
        double step = Math.Min(1, end / 100);
        double taken = 0;
        int accepted = 0;
        double enters = grid.Evaluate(heat, 0);
        watch.Note(0);
        while (at < end)
        {
            double room = breaks[next] - at;
            bool lands = step >= room * 0.999;
            double h = lands ? room : step > room / 2 ? room / 2 : step;
            Array.Copy(grid.Slope, slope, n);
            Array.Copy(grid.Flow, flow, n);
            double error = double.PositiveInfinity;
            double came = 0;
            while (true)
            {
                for (int d = 0; d < axes; d++)
                {
                    grid.Factor(d, Gamma * h, factors[d][0], factors[d][1], factors[d][2]);
                }

                came = Stages(grid, heat, trial, sums, k, factors, slope, flow, enters, at, h);
                error = 0;
                (double e0, double e1, double e2, double e3) = (B[0] - Embedded[0], B[1] - Embedded[1], B[2] - Embedded[2], B[3] - Embedded[3]);
                for (int c = 0; c < n; c++)
                {
                    error = Math.Max(error, Math.Abs(((e0 * k[0][c]) + (e1 * k[1][c]) + (e2 * k[2][c]) + (e3 * k[3][c])) * slope[c]));
                }

                if (error <= perStep || h < 1e-4)
                {
                    break;
                }

                h *= Math.Clamp(0.85 * Math.Cbrt(perStep / error), 0.1, 0.9);
                lands = false;

                // The factors need the slopes and conductances of the step's start again.
                grid.Evaluate(heat, at);
            }

            for (int c = 0; c < n; c++)
            {
                heat[c] += (B[0] * k[0][c]) + (B[1] * k[1][c]) + (B[2] * k[2][c]) + (B[3] * k[3][c]);
            }

            taken += came;
            at = lands ? breaks[next] : at + h;
            next = lands ? next + 1 : next;
            accepted++;
            step = h * Math.Clamp(0.85 * Math.Cbrt(perStep / Math.Max(error, 1e-12)), 0.2, 4);
            enters = grid.Evaluate(heat, at);
            watch.Note(at);
        }

        double stored = 0;
        for (int c = 0; c < n; c++)
        {
            stored += (heat[c] - before[c]) * grid.Volume[c];
        }

        return new BodyRun(watch.Even(points), stored / 1000, taken / 1000, accepted);
    }

    /// <summary>The four stages; returns the heat that crossed the faces.</summary>
    private static double Stages(HeatGrid grid, double[] heat, double[] trial, double[] sums, double[][] k, double[][][] factors, double[] slope, double[] flow, double enters, double at, double h)
    {
        int n = heat.Length;
        double came = 0;
        for (int i = 0; i < 4; i++)
        {
            double stage = h * enters;
            double[] f = flow;
            double[] mine = k[i];
            if (i > 0)
            {
                double share = 0;
                for (int j = 0; j < i; j++)
                {
                    share += A[i][j];
                }

                Lay(heat, trial, A[i], k, i, 1);
                Lay(null, sums, C[i], k, i, 1 / Gamma);

                // a hair before the end of the step: a jump there belongs to the next one
                stage = h * grid.Evaluate(trial, at + (share * h) - (share >= 1 ? 1e-6 : 0));
                f = grid.Flow;
            }
            else
            {
                Array.Clear(sums);
            }

            for (int c = 0; c < n; c++)
            {
                mine[c] = (h * f[c]) + sums[c];
            }

            double weight = Gamma + C[i].Sum();
            stage += grid.Drift(at, h, weight * h * h, mine);
            for (int d = 0; d < factors.Length; d++)
            {
                stage += grid.Solve(d, Gamma * h, factors[d][0], factors[d][1], factors[d][2], slope, mine);
            }

            for (int c = 0; c < n; c++)
            {
                mine[c] -= sums[c];
            }

            came += B[i] * stage;
        }

        return came;
    }

    // base + Σ weightⱼ·kⱼ, the whole scaled; one loop a stage, since this is half of the work of a thin body
    private static void Lay(double[]? from, double[] to, double[] weight, double[][] k, int stage, double scale)
    {
        double[] k0 = k[0];
        double w0 = weight[0] * scale;
        if (stage == 1)
        {
            for (int c = 0; c < to.Length; c++)
            {
                to[c] = w0 * k0[c];
            }
        }
        else if (stage == 2)
        {
            double[] k1 = k[1];
            double w1 = weight[1] * scale;
            for (int c = 0; c < to.Length; c++)
            {
                to[c] = (w0 * k0[c]) + (w1 * k1[c]);
            }
        }
        else
        {
            (double[] k1, double[] k2) = (k[1], k[2]);
            (double w1, double w2) = (weight[1] * scale, weight[2] * scale);
            for (int c = 0; c < to.Length; c++)
            {
                to[c] = (w0 * k0[c]) + (w1 * k1[c]) + (w2 * k2[c]);
            }
        }

        for (int c = 0; from is not null && c < to.Length; c++)
        {
            to[c] += from[c];
        }
    }

    private void Check(Temperature start, double end)
    {
        foreach (BodyFace face in _axes.SelectMany(a => new[] { a.Low, a.High }).OfType<BodyFace>())
        {
            for (int i = 0; i <= 20; i++)
            {
                Described(Temperature.FromCelsius(face.Wet is { } wet && face.Medium.At(end * i / 20) is >= 0 and var air ? wet.WetBulb(air) : face.Medium.At(end * i / 20)));
            }
        }

        Described(start);
    }

    private void Described(Temperature at)
    {
        foreach (HeatMaterial material in _axes.SelectMany(a => a.Layers).Select(l => l.Material))
        {
            _ = material.HeatContent(at);
        }
    }
}
