using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>Runs a plan many times with durations drawn from their spreads, under the rule the kitchen follows, and counts.</summary>
public static class RiskOfPlan
{
    /// <summary>Tasks and buffers told.</summary>
    private const int Told = 5;

    /// <summary>Buffer tried before each dangerous task, minutes.</summary>
    private const double Buffer = 10;

    /// <summary>Simulates.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="plan">A valid plan of it.</param>
    /// <param name="spread">Spread of a task; null for <see cref="UsualSpreads"/>.</param>
    /// <param name="runs">Runs.</param>
    /// <param name="seed">Seed.</param>
    public static RiskReport Simulate(Occasion occasion, Plan plan, Func<PlannedTask, Spread>? spread = null, int runs = 10_000, int seed = 1)
    {
        Dispatch dispatch = Dispatch.Of(occasion, plan);
        Spread[] spreads = [.. dispatch.Tasks.Select(spread ?? UsualSpreads.For(occasion, plan))];
        Runs all = new(dispatch, spreads, seed);
        double[] late = new double[runs];
        double[] share = new double[dispatch.Tasks.Length];
        int[] binding = new int[dispatch.Tasks.Length];
        for (int run = 0; run < runs; run++)
        {
            late[run] = all.Run(run);
            if (late[run] > 0)
            {
                all.Blame(share, binding);
            }
        }

        int[] lateRuns = [.. Enumerable.Range(0, runs).Where(run => late[run] > 0)];
        int onTime = runs - lateRuns.Length;
        double total = share.Sum();
        int[] order = [.. Enumerable.Range(0, share.Length).Where(i => share[i] > 0).OrderByDescending(i => share[i])];
        (double low, double high) = Wilson(onTime, runs);
        Array.Sort(late);
        return new RiskReport(runs, seed, (double)onTime / runs, low, high)
        {
            LateMedian = Math.Max(0, late[runs / 2]),
            LateNinety = Math.Max(0, late[Math.Min(runs - 1, (int)(0.9 * runs))]),
            Dangerous = [.. order.Take(Told).Select(i => new TaskDanger(dispatch.Tasks[i].Id, share[i] / total, (double)binding[i] / lateRuns.Length))],
            Buffers = [.. Gains(all, binding, lateRuns, runs)],
            Assumed = ["Durations are independent of each other; one bad day that slows everybody is not in the figure.", "The order of the plan is kept; nobody re-plans."],
        };
    }

    /// <summary>A buffer helps before a task only when the task was made to wait, so those most often on the late chain are tried, in the runs that were late.</summary>
    private static IEnumerable<BufferGain> Gains(Runs all, int[] binding, int[] late, int runs)
    {
        int[] tried = [.. Enumerable.Range(0, binding.Length).Where(i => binding[i] > 0).OrderByDescending(i => binding[i]).ThenBy(i => i).Take(2 * Told)];
        int[] saved = new int[tried.Length];
        foreach (int run in late)
        {
            all.Run(run);
            for (int k = 0; k < tried.Length; k++)
            {
                saved[k] += all.Saved(tried[k], Buffer) ? 1 : 0;
            }
        }

        return Enumerable.Range(0, tried.Length).Where(k => saved[k] > 0)
            .Select(k => new BufferGain(all.Id(tried[k]), Buffer, (double)(runs - late.Length + saved[k]) / runs))
            .OrderByDescending(g => g.OnTime).Take(Told);
    }

    /// <summary>Wilson's interval for a share (E. B. Wilson 1927), 95 %.</summary>
    internal static (double Low, double High) Wilson(int hits, int runs)
    {
        const double z = 1.959964;
        double p = (double)hits / runs;
        double middle = (p + (z * z / (2 * runs))) / (1 + (z * z / runs));
        double half = z / (1 + (z * z / runs)) * Math.Sqrt((p * (1 - p) / runs) + (z * z / (4.0 * runs * runs)));
        return (Math.Max(0, middle - half), Math.Min(1, middle + half));
    }
}
