using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>A predicted curve laid over a measured one by moving one figure: h, or the smallest size.</summary>
/// <param name="Value">Best value, W/(m²·K) or mm.</param>
/// <param name="Low">Lowest value that is nearly as good; null when the curve does not bound it.</param>
/// <param name="High">Highest such value; null when the curve does not bound it (a large h hardly shows).</param>
/// <param name="Misfit">Root of the mean square of the differences, K.</param>
/// <param name="Predicted">Minute and middle of the best.</param>
/// <remarks>Least squares over 60 values from least to most by equal ratios, then a golden section between the neighbours. Nearly as good: a misfit within a tenth and 0.1 K of the best.</remarks>
public sealed record ProbeFit(double Value, double? Low, double? High, double Misfit, ImmutableArray<(double Minute, Temperature At)> Predicted)
{
    /// <summary>Fits.</summary>
    /// <param name="measured">Middle, counted from when it went in; at least five readings that change by 5 K.</param>
    /// <param name="body">Body for a value of the figure, in the medium as it was.</param>
    /// <param name="least">Least value tried, above 0.</param>
    /// <param name="most">Greatest.</param>
    /// <exception cref="ArgumentException">Too few readings, or none that moves.</exception>
    public static ProbeFit Of(ProbeChannel measured, Func<double, HeatBody> body, double least, double most)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(body);
        ImmutableArray<(double Minute, Temperature At)> r = measured.Readings;
        if (r.Length < 5 || r.Max(x => x.At.Celsius) - r.Min(x => x.At.Celsius) < 5 || least is not > 0 || most <= least)
        {
            throw new ArgumentException("A fit needs five readings or more that change by 5 K or more, and a range above 0.", nameof(measured));
        }

        Duration length = Duration.FromMinutes(r[^1].Minute);
        ImmutableArray<BodyMoment> Run(double value) => body(value).Follow(r[0].At, length, 0.02).Moments;
        double Misfit(double value) => Off(Run(value), r);
        const int Count = 60;
        double[] tried = [.. Enumerable.Range(0, Count).Select(i => least * Math.Pow(most / least, i / (Count - 1.0)))];
        double[] off = [.. tried.Select(Misfit)];
        int best = Array.IndexOf(off, off.Min());
        (double value, double misfit) = Golden(Misfit, tried[Math.Max(0, best - 1)], tried[Math.Min(Count - 1, best + 1)]);
        double enough = Math.Max(misfit * 1.1, misfit + 0.1);
        double? low = Enumerable.Range(0, Count).Where(i => tried[i] < value && off[i] > enough).Select(i => (double?)tried[i]).LastOrDefault();
        double? high = Enumerable.Range(0, Count).Where(i => tried[i] > value && off[i] > enough).Select(i => (double?)tried[i]).FirstOrDefault();
        return new ProbeFit(value, low, high, misfit, [.. Run(value).Select(m => (m.Time.TotalMinutes, m.Core))]);
    }

    private static (double Value, double Misfit) Golden(Func<double, double> f, double a, double b)
    {
        const double Ratio = 0.6180339887498949;
        (double c, double d) = (b - (Ratio * (b - a)), a + (Ratio * (b - a)));
        (double fc, double fd) = (f(c), f(d));
        for (int i = 0; i < 24; i++)
        {
            if (fc < fd)
            {
                (b, d, fd) = (d, c, fc);
                c = b - (Ratio * (b - a));
                fc = f(c);
            }
            else
            {
                (a, c, fc) = (c, d, fd);
                d = a + (Ratio * (b - a));
                fd = f(d);
            }
        }

        return fc < fd ? (c, fc) : (d, fd);
    }

    private static double Off(ImmutableArray<BodyMoment> run, ImmutableArray<(double Minute, Temperature At)> r)
    {
        double step = run[1].Time.TotalMinutes - run[0].Time.TotalMinutes;
        double sum = 0;
        foreach ((double minute, Temperature at) in r)
        {
            int i = Math.Min((int)(minute / step), run.Length - 2);
            double x = (minute / step) - i;
            double p = run[i].Core.Celsius + (x * (run[i + 1].Core.Celsius - run[i].Core.Celsius));
            sum += (p - at.Celsius) * (p - at.Celsius);
        }

        return Math.Sqrt(sum / r.Length);
    }
}
