using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>What many runs of the slot under chance say.</summary>
/// <param name="Runs">How many runs.</param>
/// <param name="OnTime">Share that ends in time when nothing is left out.</param>
/// <param name="OnTimeWithDrops">Share that ends in time when what may be dropped is dropped by rank as soon as the clock shows it late.</param>
/// <param name="Low">Low end of the 95 % interval of <paramref name="OnTimeWithDrops"/> (Wilson).</param>
/// <param name="High">High end of it.</param>
public sealed record SlotRiskReport(int Runs, double OnTime, double OnTimeWithDrops, double Low, double High)
{
    /// <summary>Segments in order.</summary>
    public ImmutableArray<SegmentRisk> Segments { get; init; } = [];

    /// <summary>What was assumed, in words.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];
}

/// <summary>A segment under chance.</summary>
/// <param name="Number">Segment.</param>
/// <param name="Records">Rehearsals that tell its length; 0 or 1 when the spread is assumed.</param>
/// <param name="Median">Seconds it takes in half of the runs at most.</param>
/// <param name="Ninety">Seconds it takes in nine runs of ten at most.</param>
/// <param name="Dropped">Share of runs in which something of it is dropped.</param>
public sealed record SegmentRisk(int Number, int Records, double Median, double Ninety, double Dropped);

/// <summary>Runs the slot many times with the lengths of its segments drawn from rehearsals, under the rule the time-keeper follows.</summary>
/// <remarks>
/// The rule: at the start of each segment what is left by plan is added up; when it would end late, droppable seconds of this and later
/// segments are dropped in the order of their ranks, as many as are needed. Segments are independent of each other.
/// </remarks>
public static class SlotRisk
{
    /// <summary>Simulates.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="rehearsed">Seconds that segments took, by number.</param>
    /// <param name="runs">Runs.</param>
    /// <param name="seed">Seed.</param>
    public static SlotRiskReport Simulate(Plan plan, ImmutableSortedDictionary<int, ImmutableArray<double>> rehearsed, int runs = 10_000, int seed = 1)
    {
        RunSegment[] sheet = [.. plan.RunSheet.OrderBy(s => s.Number)];
        double slot = plan.SlotLength.TotalSeconds;
        Spread[] spreads = [.. sheet.Select<RunSegment, Spread>(s => rehearsed.GetValueOrDefault(s.Number) is { IsDefault: false, Length: >= 2 } records ? new Recorded(records) : Usual(s.Seconds))];
        int[] dropped = new int[sheet.Length];
        int plain = 0;
        int withDrops = 0;
        Random random = new(seed);
        double[] lengths = new double[sheet.Length];
        for (int run = 0; run < runs; run++)
        {
            for (int i = 0; i < sheet.Length; i++)
            {
                lengths[i] = spreads[i].Quantile(random.NextDouble());
            }

            plain += lengths.Sum() <= slot + 1e-9 ? 1 : 0;
            withDrops += Kept(sheet, lengths, slot, dropped) <= slot + 1e-9 ? 1 : 0;
        }

        (double low, double high) = RiskOfPlan.Wilson(withDrops, runs);
        int recorded = sheet.Count(s => rehearsed.GetValueOrDefault(s.Number) is { IsDefault: false, Length: >= 2 });
        return new SlotRiskReport(runs, (double)plain / runs, (double)withDrops / runs, low, high)
        {
            Segments = [.. sheet.Select((s, i) => new SegmentRisk(s.Number, rehearsed.GetValueOrDefault(s.Number) is { IsDefault: false } r ? r.Length : 0, spreads[i].Quantile(0.5), spreads[i].Quantile(0.9), (double)dropped[i] / runs))],
            Assumed = [.. recorded < sheet.Length ? ["Segments without two rehearsals spread from 0.9 to 1.25 of their planned seconds (common practice, no source)."] : Array.Empty<string>(), "Segments are independent of each other; a dropped second is saved whole."],
        };
    }

    /// <summary>Seconds at the end when drops are called by the rule.</summary>
    private static double Kept(RunSegment[] sheet, double[] lengths, double slot, int[] dropped)
    {
        double[] cut = new double[sheet.Length];
        double clock = 0;
        for (int i = 0; i < sheet.Length; i++)
        {
            double late = clock + Enumerable.Range(i, sheet.Length - i).Sum(k => sheet[k].Seconds - cut[k]) - slot;
            foreach (int k in Enumerable.Range(i, sheet.Length - i).Where(k => sheet[k].DroppableSeconds > cut[k]).OrderBy(k => sheet[k].DropRank))
            {
                if (late <= 0)
                {
                    break;
                }

                double take = Math.Min(late, sheet[k].DroppableSeconds - cut[k]);
                dropped[k] += cut[k] <= 0 ? 1 : 0;
                (cut[k], late) = (cut[k] + take, late - take);
            }

            clock += Math.Max(0, lengths[i] - cut[i]);
        }

        return clock;
    }

    // Talk runs over more readily than it ends early. Common practice, no source; two rehearsals replace it.
    private static Triangular Usual(int seconds) => new(0.9 * seconds, seconds, 1.25 * seconds);
}
