using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;

namespace Coulisse.Gauge.Heat;

/// <summary>The plain way with properties that change: forward Euler on the heat content of even cells of half a slab, temperature and conductivity from tables, the longest step that is stable everywhere.</summary>
internal sealed class PlainChanging
{
    private const int Count = 4096;
    private readonly double _least;
    private readonly double _per;
    private readonly double[] _celsius = new double[Count];
    private readonly double[] _k = new double[Count];
    private readonly double _fastest;

    public PlainChanging(HeatMaterial material, ThermalParts parts, double series, double from, double to)
    {
        double most = material.HeatContent(Temperature.FromCelsius(to));
        _least = material.HeatContent(Temperature.FromCelsius(from));
        _per = (Count - 1) / (most - _least);
        double t = from;
        for (int i = 0; i < Count; i++)
        {
            double heat = _least + (i / _per);
            double low = from;
            double high = to;
            for (int b = 0; b < 40; b++)
            {
                t = (low + high) / 2;
                (low, high) = material.HeatContent(Temperature.FromCelsius(t)) < heat ? (t, high) : (low, t);
            }

            ThermalProperties p = ThermalProperties.Of(parts, Temperature.FromCelsius(t));
            (_celsius[i], _k[i]) = (t, 1 / (((1 - series) / p.Fast.WattsPerMetreKelvin) + (series / p.Slow.WattsPerMetreKelvin)));
        }

        _fastest = Enumerable.Range(20, Count - 40).Max(i => _k[i] * (_celsius[i + 20] - _celsius[i - 20]) * _per / 40);
    }

    /// <summary>Middle after a time.</summary>
    public double Core(double half, int cells, double h, double start, double medium, double seconds)
    {
        double dx = half / cells;
        int steps = (int)Math.Ceiling(seconds * 2 * _fastest / (dx * dx));
        double dt = seconds / steps / dx;
        double[] heat = new double[cells];
        double[] t = new double[cells];
        double[] k = new double[cells];
        int at = Array.BinarySearch(_celsius, start);
        Array.Fill(heat, _least + ((at < 0 ? ~at : at) / _per));
        unchecked
        {
            for (int s = 0; s <= steps; s++)
            {
                for (int i = 0; i < cells; i++)
                {
                    double place = Math.Clamp((heat[i] - _least) * _per, 0, Count - 1.001);
                    int p = (int)place;
                    t[i] = _celsius[p] + ((place - p) * (_celsius[p + 1] - _celsius[p]));
                    k[i] = _k[p];
                }

                if (s == steps)
                {
                    break;
                }

                double enters = 0;
                for (int i = 0; i < cells - 1; i++)
                {
                    double leaves = (t[i] - t[i + 1]) * 2 * k[i] * k[i + 1] / (dx * (k[i] + k[i + 1]));
                    heat[i] += dt * (enters - leaves);
                    enters = leaves;
                }

                heat[cells - 1] += dt * (enters - ((t[cells - 1] - medium) / ((dx / (2 * k[cells - 1])) + (1 / h))));
            }
        }

        return ((9 * t[0]) - t[1]) / 8;
    }
}
