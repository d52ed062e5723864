using System.Diagnostics;

namespace Coulisse.Gauge;

/// <summary>Times by repetition: the median and the 95th of a hundred.</summary>
internal static class Stopwatches
{
    public static (double Median, double P95) Milliseconds(int times, Action<int> work)
    {
        double[] all = new double[times];
        for (int i = 0; i < times; i++)
        {
            long start = Stopwatch.GetTimestamp();
            work(i);
            all[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        return Of(all);
    }

    public static async Task<(double Median, double P95)> MillisecondsAsync(int times, Func<int, Task> work)
    {
        double[] all = new double[times];
        for (int i = 0; i < times; i++)
        {
            long start = Stopwatch.GetTimestamp();
            await work(i);
            all[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        return Of(all);
    }

    private static (double Median, double P95) Of(double[] all)
    {
        Array.Sort(all);
        return (all[all.Length / 2], all[Math.Min(all.Length - 1, (int)Math.Ceiling(all.Length * 0.95) - 1)]);
    }
}
