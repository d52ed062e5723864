using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;

namespace Coulisse.Gauge.Heat;

/// <summary>The plain way through freezing: forward Euler on the heat content of even cells, temperature and conductivity from tables, the longest step that is stable everywhere.</summary>
internal sealed class PlainFreezing
{
    private const int Count = 4096;
    private readonly double _least;
    private readonly double _per;
    private readonly double[] _celsius = new double[Count];
    private readonly double[] _k = new double[Count];
    private readonly double _fastest;

    public PlainFreezing(HeatMaterial material, ThermalParts parts, Temperature freezing, double from, double to)
    {
        double most = material.HeatContent(Temperature.FromCelsius(to));
        _least = material.HeatContent(Temperature.FromCelsius(from));
        _per = (Count - 1) / (most - _least);
        double t = from;
        for (int i = 0; i < Count; i++)
        {
            double heat = _least + (i / _per);
            while (t < to && material.HeatContent(Temperature.FromCelsius(t)) < heat)
            {
                t = Math.Min(to, t + 0.002);
            }

            _celsius[i] = t;
            _k[i] = ThermalProperties.Of(parts, Temperature.FromCelsius(t), t < 0 ? freezing : null).Slow.WattsPerMetreKelvin;
        }

        // the largest diffusivity met: k·dT/dH
        _fastest = Enumerable.Range(20, Count - 40).Max(i => _k[i] * (_celsius[i + 20] - _celsius[i - 20]) * _per / 40);
    }

    /// <summary>Hours until the middle of a half slab is at a temperature.</summary>
    public double Hours(double half, int cells, double h, double start, double medium, double target)
    {
        double dx = half / cells;
        double dt = dx * dx / (2.0 * _fastest);
        double[] heat = new double[cells];
        double[] t = new double[cells];
        double[] k = new double[cells];
        int at = Array.BinarySearch(_celsius, start);
        Array.Fill(heat, _least + ((at < 0 ? ~at : at) / _per));
        double seconds = 0;
        unchecked
        {
            while (true)
            {
                for (int i = 0; i < cells; i++)
                {
                    double place = Math.Clamp((heat[i] - _least) * _per, 0, Count - 1.001);
                    int p = (int)place;
                    t[i] = _celsius[p] + ((place - p) * (_celsius[p + 1] - _celsius[p]));
                    k[i] = _k[p];
                }

                if (((9 * t[0]) - t[1]) / 8 <= target)
                {
                    return seconds / 3600;
                }

                double enters = 0;
                for (int i = 0; i < cells; i++)
                {
                    double leaves = i < cells - 1 ? (t[i] - t[i + 1]) / ((dx / (2 * k[i])) + (dx / (2 * k[i + 1]))) : (t[i] - medium) / ((dx / (2 * k[i])) + (1 / h));
                    heat[i] += dt * (enters - leaves) / dx;
                    enters = leaves;
                }

                seconds += dt;
            }
        }
    }
}
