using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>Watches core, mean and face while a body is followed, and lays them on even moments by cubics through value and slope.</summary>
internal sealed class BodyWatch
{
    private readonly HeatGrid _grid;
    private readonly bool[] _faced;
    private readonly double[] _share;
    private readonly double _end;
    private readonly bool _heats;
    private readonly List<(double At, double Core, double CoreSlope, double Mean, double MeanSlope, double Face)> _nodes = [];

    public BodyWatch(HeatGrid grid, ImmutableArray<BodyAxis> axes, Temperature start, double end)
    {
        (_grid, _end) = (grid, end);
        _faced = [.. axes.Select(a => a.Low is not null)];
        double all = 0;
        for (int c = 0; c < grid.Count; c++)
        {
            all += grid.MaterialOf(c) == grid.Food ? grid.Volume[c] : 0;
        }

        _share = [.. Enumerable.Range(0, grid.Count).Select(c => grid.MaterialOf(c) == grid.Food ? grid.Volume[c] / all : 0)];
        _heats = axes.Max(a => a.High.Medium.At(0)) >= start.Celsius;
    }

    public void Note(double at)
    {
        double mean = 0;
        double slope = 0;
        for (int c = 0; c < _share.Length; c++)
        {
            mean += _share[c] * _grid.Celsius[c];
            slope += _share[c] * _grid.Slope[c] * _grid.Flow[c];
        }

        (double core, double coreSlope) = Core(_grid.Cells.Length - 1, 0);
        _nodes.Add((at, core, coreSlope, mean, slope, _grid.Face(at)));
    }

    public ImmutableArray<BodyMoment> Even(int points)
    {
        List<BodyMoment> even = new(points + 1);
        int i = 0;
        for (int p = 0; p <= points; p++)
        {
            double at = _end * p / points;
            while (i < _nodes.Count - 2 && _nodes[i + 1].At < at)
            {
                i++;
            }

            var (a, b) = (_nodes[i], _nodes[i + 1]);
            double h = b.At - a.At;
            double x = Math.Clamp((at - a.At) / h, 0, 1);
            even.Add(new BodyMoment(
                Duration.FromSeconds(at),
                Temperature.FromCelsius(Cubic(x, h, a.Core, a.CoreSlope, b.Core, b.CoreSlope)),
                Temperature.FromCelsius(Cubic(x, h, a.Mean, a.MeanSlope, b.Mean, b.MeanSlope)),
                Temperature.FromCelsius(a.Face + (x * (b.Face - a.Face)))));
        }

        return [.. even];
    }

    private static double Cubic(double x, double h, double a, double slopeA, double b, double slopeB)
    {
        double y = 1 - x;
        double v = (a * (1 + (2 * x)) * y * y) + (b * (3 - (2 * x)) * x * x) + (h * x * y * ((slopeA * y) - (slopeB * x)));

        // where the curve bends sharply (ice goes) a cubic may swing past its ends; the slowest point does not
        return Math.Clamp(v, Math.Min(a, b), Math.Max(a, b));
    }

    /// <summary>Slowest point: at the low end where nothing passes there (a parabola through two cells), else the extreme cell of the line.</summary>
    private (double Value, double Slope) Core(int axis, int cell)
    {
        if (axis < 0)
        {
            return (_grid.Celsius[cell], _grid.Slope[cell] * _grid.Flow[cell]);
        }

        int s = _grid.Stride(axis);
        if (!_faced[axis])
        {
            (double a, double da) = Core(axis - 1, cell);
            (double b, double db) = Core(axis - 1, cell + s);
            return (((9 * a) - b) / 8, ((9 * da) - db) / 8);
        }

        (double value, double slope) = Core(axis - 1, cell);
        (double left, double right, int at) = (double.NaN, double.NaN, 0);
        for (int i = 1; i < _grid.Cells[axis]; i++)
        {
            (double v, double d) = Core(axis - 1, cell + (i * s));
            if (_heats ? v < value : v > value)
            {
                (value, slope, at) = (v, d, i);
            }
        }

        if (at > 0 && at < _grid.Cells[axis] - 1)
        {
            left = Core(axis - 1, cell + ((at - 1) * s)).Value;
            right = Core(axis - 1, cell + ((at + 1) * s)).Value;
            double bend = right - (2 * value) + left;
            value -= Math.Abs(bend) > 1e-9 ? (right - left) * (right - left) / (8 * bend) : 0;
        }

        return (value, slope);
    }
}
