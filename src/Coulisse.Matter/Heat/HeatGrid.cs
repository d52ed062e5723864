using System.Collections.Immutable;

namespace Coulisse.Matter.Heat;

/// <summary>The volumes of a body: lengths, areas, materials, and the flow of heat between them.</summary>
/// <remarks>Up to three axes; the first may run outward from the middle of a cylinder or sphere. A cell where layers of two axes meet is of the outer layer of the later axis.</remarks>
internal sealed class HeatGrid
{
    private readonly BodyAxis[] _axes;
    private readonly double[][] _half;        // half a cell along its axis, m
    private readonly double[][] _area;        // of each face, for a cross-section of one
    private readonly double[][] _volume;      // of each cell, for a cross-section of one
    private readonly double[][] _cross;       // of each line of an axis: product of the other axes' volumes
    private readonly double[][] _g;           // conductance of each face, line by line
    private readonly double[][] _edge;        // low and high: conductance when last factored
    private readonly double[][] _medium;      // low and high: what a kelvin of the medium moves
    private readonly byte[] _material;
    private readonly HeatMaterial[] _materials;
    private readonly int[] _stride;

    public HeatGrid(ImmutableArray<BodyAxis> axes)
    {
        _axes = [.. axes];
        Count = axes.Aggregate(1, (all, a) => all * a.Layers.Sum(l => l.Cells));
        Cells = [.. axes.Select(a => a.Layers.Sum(l => l.Cells))];
        _stride = [.. Enumerable.Range(0, axes.Length).Select(d => Cells.Take(d).Aggregate(1, (x, y) => x * y))];
        _half = [.. axes.Select(a => a.Layers.SelectMany(l => Enumerable.Repeat(l.Thick.Metres / l.Cells / 2, l.Cells)).ToArray())];
        (_area, _volume) = ([.. axes.Select(_ => Array.Empty<double>())], [.. axes.Select(_ => Array.Empty<double>())]);
        for (int d = 0; d < axes.Length; d++)
        {
            int power = axes[d].Along switch { BodyShape.Slab => 0, BodyShape.Cylinder => 1, _ => 2 };
            double[] at = new double[Cells[d] + 1];
            for (int i = 0; i < Cells[d]; i++)
            {
                at[i + 1] = at[i] + (2 * _half[d][i]);
            }

            _area[d] = [.. at.Select(r => Math.Pow(r, power))];
            _volume[d] = [.. Enumerable.Range(0, Cells[d]).Select(i => (Math.Pow(at[i + 1], power + 1) - Math.Pow(at[i], power + 1)) / (power + 1))];
        }

        _materials = [.. axes.SelectMany(a => a.Layers).Select(l => l.Material).Distinct()];
        BodyLayer main = axes[0].Layers.MaxBy(l => l.Thick.Metres)!;
        Food = (byte)Array.IndexOf(_materials, main.Material);
        _material = new byte[Count];
        Volume = new double[Count];
        for (int c = 0; c < Count; c++)
        {
            byte m = Food;
            double v = 1;
            for (int d = 0; d < axes.Length; d++)
            {
                int i = c / _stride[d] % Cells[d];
                v *= _volume[d][i];
                byte own = (byte)Array.IndexOf(_materials, LayerAt(axes[d], i).Material);
                m = own != Food ? own : m;
            }

            (_material[c], Volume[c]) = (m, v);
        }

        _cross = [.. Enumerable.Range(0, axes.Length).Select(d => Enumerable.Range(0, Count / Cells[d]).Select(line => Volume[First(d, line)] / _volume[d][0]).ToArray())];
        _g = [.. Cells.Select(n => new double[Count / n * (n + 1)])];
        _edge = [.. Cells.Select(n => new double[Count / n * 2])];
        _medium = [.. Cells.Select(n => new double[Count / n * 2])];
        (Celsius, Slope, _conductivity, Flow) = (new double[Count], new double[Count], new double[Count], new double[Count]);
    }

    private readonly double[] _conductivity;

    public int Count { get; }

    public int[] Cells { get; }

    public byte Food { get; }

    public double[] Volume { get; }

    public double[] Celsius { get; }

    /// <summary>dT/dH of each cell.</summary>
    public double[] Slope { get; }

    /// <summary>dH/dt of each cell, W/m³.</summary>
    public double[] Flow { get; }

    public byte MaterialOf(int cell) => _material[cell];

    public int Stride(int axis) => _stride[axis];

    public double Uniform(Quantities.Temperature start, int cell) => _materials[_material[cell]].HeatContent(start);

    /// <summary>Cell index of a line's first cell.</summary>
    public int First(int axis, int line) => (line / _stride[axis] * _stride[axis] * Cells[axis]) + (line % _stride[axis]);

    /// <summary>Temperatures and flows of a state at a time; the heat that comes in over all faces, W.</summary>
    public double Evaluate(double[] heat, double seconds)
    {
        unchecked
        {
            for (int c = 0; c < Count; c++)
            {
                _materials[_material[c]].At(heat[c], out Celsius[c], out Slope[c], out _conductivity[c]);
                Flow[c] = 0;
            }

            double inflow = 0;
            for (int d = 0; d < Cells.Length; d++)
            {
                (int n, int s) = (Cells[d], _stride[d]);
                (double[] half, double[] area, double[] volume, double[] g) = (_half[d], _area[d], _volume[d], _g[d]);
                double low = _axes[d].Low?.Medium.At(seconds) ?? 0;
                double high = _axes[d].High.Medium.At(seconds);
                for (int line = 0; line < Count / n; line++)
                {
                    int c = First(d, line);
                    int face = line * (n + 1);
                    double enters = 0;
                    if (_axes[d].Low is { } other)
                    {
                        (enters, g[face], _medium[d][line * 2]) = Across(other, low, Celsius[c], half[0] / _conductivity[c], area[0]);
                        inflow += enters * _cross[d][line];
                    }

                    for (int i = 0; i < n - 1; i++, c += s)
                    {
                        double conducts = area[i + 1] / ((half[i] / _conductivity[c]) + (half[i + 1] / _conductivity[c + s]));
                        g[face + i + 1] = conducts;
                        double leaves = conducts * (Celsius[c] - Celsius[c + s]);
                        Flow[c] += (enters - leaves) / volume[i];
                        enters = leaves;
                    }

                    (double comes, g[face + n], _medium[d][(line * 2) + 1]) = Across(_axes[d].High, high, Celsius[c], half[n - 1] / _conductivity[c], area[n]);
                    Flow[c] += (enters + comes) / volume[n - 1];
                    inflow += comes * _cross[d][line];
                }
            }

            return inflow;
        }
    }

    /// <summary>Prepares (I − step·J) of one axis, from the last evaluated state.</summary>
    public void Factor(int axis, double step, double[] below, double[] pivot, double[] above)
    {
        unchecked
        {
            (int n, int s) = (Cells[axis], _stride[axis]);
            (double[] volume, double[] g) = (_volume[axis], _g[axis]);
            for (int line = 0; line < Count / n; line++)
            {
                int c = First(axis, line);
                int face = line * (n + 1);
                double last = 0;
                double ahead = 0;
                (_edge[axis][line * 2], _edge[axis][(line * 2) + 1]) = (g[face], g[face + n]);
                for (int i = 0; i < n; i++, c += s)
                {
                    double v = step / volume[i];
                    double down = i == 0 ? 0 : -v * g[face + i] * Slope[c - s];
                    below[c] = down * last;
                    pivot[c] = last = 1 / (1 + (v * (g[face + i] + g[face + i + 1]) * Slope[c]) - (below[c] * ahead));
                    above[c] = ahead = i == n - 1 ? 0 : -v * g[face + i + 1] * Slope[c + s];
                }
            }
        }
    }

    /// <summary>Solves with what was prepared; returns the heat the outer faces took by it.</summary>
    public double Solve(int axis, double step, double[] below, double[] pivot, double[] above, double[] slope, double[] x)
    {
        unchecked
        {
            (int n, int s) = (Cells[axis], _stride[axis]);
            double[] edge = _edge[axis];
            double taken = 0;
            for (int line = 0; line < Count / n; line++)
            {
                int first = First(axis, line);
                int c = first;
                for (int i = 1; i < n; i++)
                {
                    c += s;
                    x[c] -= below[c] * x[c - s];
                }

                int last = c;
                x[c] *= pivot[c];
                for (int i = 1; i < n; i++)
                {
                    c -= s;
                    x[c] = (x[c] - (above[c] * x[c + s])) * pivot[c];
                }

                taken -= ((edge[line * 2] * slope[first] * x[first]) + (edge[(line * 2) + 1] * slope[last] * x[last])) * _cross[axis][line];
            }

            return taken * step;
        }
    }

    /// <summary>Adds to each outer cell what the media's change in a second moves, times a weight; returns it as heat.</summary>
    public double Drift(double seconds, double step, double weight, double[] x)
    {
        double all = 0;
        for (int d = 0; d < Cells.Length; d++)
        {
            int n = Cells[d];
            double Rate(BodyFace? face) => face is null ? 0 : (face.Medium.At(seconds + step - 1e-6) - face.Medium.At(seconds)) / step;
            (double low, double high) = (Rate(_axes[d].Low), Rate(_axes[d].High));
            if (low == 0 && high == 0)
            {
                continue;
            }

            for (int line = 0; line < Count / n; line++)
            {
                int first = First(d, line);
                double a = weight * low * _medium[d][line * 2];
                double b = weight * high * _medium[d][(line * 2) + 1];
                x[first] += a / _volume[d][0];
                x[first + ((n - 1) * _stride[d])] += b / _volume[d][n - 1];
                all += (a + b) * _cross[d][line];
            }
        }

        return all;
    }

    /// <summary>Temperature of the outer face of the first axis, on its middle line.</summary>
    public double Face(double seconds)
    {
        int c = Cells[0] - 1;
        double resistance = _half[0][c] / _conductivity[c];
        BodyFace face = _axes[0].High;
        return Celsius[c] + (Across(face, face.Medium.At(seconds), Celsius[c], resistance, 1).Enters * resistance);
    }

    private static (double Enters, double Conducts, double Medium) Across(BodyFace face, double medium, double cell, double resistance, double area)
    {
        double h = face.Surface?.WattsPerSquareMetreKelvin ?? double.PositiveInfinity;
        if (face.Wet is not { } wet || double.IsPositiveInfinity(h))
        {
            double plain = area / (resistance + (1 / h));
            return (plain * (medium - cell), plain, plain);
        }

        // The wet face settles where what conducts in equals what arrives less what evaporates: a falling function, halved.
        double low = Math.Min(cell, -10);
        double high = Math.Max(cell, medium);
        for (int i = 0; i < 40; i++)
        {
            double t = (low + high) / 2;
            (low, high) = h * (medium - t - wet.Spent(t)) > (t - cell) / resistance ? (t, high) : (low, t);
        }

        double at = (low + high) / 2;
        double slope = h * (1 + ((wet.Spent(at + 0.01) - wet.Spent(at - 0.01)) / 0.02));
        return (area * (at - cell) / resistance, area / (resistance + (1 / slope)), area * h / (1 + (resistance * slope)));
    }

    private static BodyLayer LayerAt(BodyAxis axis, int cell)
    {
        foreach (BodyLayer layer in axis.Layers)
        {
            if (cell < layer.Cells)
            {
                return layer;
            }

            cell -= layer.Cells;
        }

        throw new ArgumentOutOfRangeException(nameof(cell));
    }
}
