using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>What many runs of the plan under chance say.</summary>
/// <param name="Runs">How many runs.</param>
/// <param name="Seed">Seed; the same seed gives the same report.</param>
/// <param name="OnTime">Share of runs in which all that must be ready for the slot is.</param>
/// <param name="OnTimeLow">Low end of its 95 % interval (Wilson).</param>
/// <param name="OnTimeHigh">High end of its 95 % interval.</param>
public sealed record RiskReport(int Runs, int Seed, double OnTime, double OnTimeLow, double OnTimeHigh)
{
    /// <summary>Minutes late, over all runs (0 when in time): the median.</summary>
    public double LateMedian { get; init; }

    /// <summary>Minutes late that nine runs of ten do not exceed.</summary>
    public double LateNinety { get; init; }

    /// <summary>Tasks by how much of the lateness they bring, the worst first.</summary>
    public ImmutableArray<TaskDanger> Dangerous { get; init; } = [];

    /// <summary>Where a buffer pays, the best first; empty when nothing would be gained.</summary>
    public ImmutableArray<BufferGain> Buffers { get; init; } = [];

    /// <summary>What was assumed, in words.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];
}

/// <summary>A task that endangers the slot.</summary>
/// <param name="TaskId">Task.</param>
/// <param name="Share">Share of all late runs' binding overruns that are its own, 0 to 1.</param>
/// <param name="Binding">Share of late runs in which it lies on the chain that made them late.</param>
public sealed record TaskDanger(string TaskId, double Share, double Binding);

/// <summary>What a buffer before a task would gain.</summary>
/// <param name="BeforeTaskId">All it waits for is done this much earlier.</param>
/// <param name="Minutes">Minutes of buffer.</param>
/// <param name="OnTime">Share on time with it.</param>
public sealed record BufferGain(string BeforeTaskId, double Minutes, double OnTime);
