using System.Globalization;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Gauge.Planning;

/// <summary>One instance solved in one way, as a line of a log: what a tally is made of.</summary>
/// <param name="Set">Set.</param>
/// <param name="Instance">Instance.</param>
/// <param name="Way">Way of solving.</param>
/// <param name="Limit">Seconds it was given.</param>
/// <param name="Workers">Threads.</param>
/// <param name="Seed">Seed.</param>
/// <param name="What">schedule, infeasible or nothing.</param>
/// <param name="Value">Value reached; 0 without a schedule.</param>
/// <param name="Bound">Bound.</param>
/// <param name="Seconds">Seconds it took.</param>
/// <param name="Fault">What the check step by step found wrong; empty for nothing.</param>
internal sealed record Solved(string Set, string Instance, string Way, double Limit, int Workers, int Seed, string What, long Value, long Bound, double Seconds, string Fault)
{
    /// <summary>What makes two lines the same run.</summary>
    public (string, string, string, double, int, int) Key => (Set, Instance, Way, Limit, Workers, Seed);

    public bool Settled => What == "infeasible" || (What == "schedule" && Value == Bound);

    public static Solved Of(string set, string way, SchedulingProblem problem, Effort effort, EngineOutcome outcome)
    {
        Solved none = new(set, problem.Name, way, effort.Seconds, effort.Workers, effort.Seed, outcome is EngineInfeasible ? "infeasible" : "nothing", 0, 0, outcome.Seconds, "");
        return outcome is EngineSchedule s ? none with { What = "schedule", Value = s.Levels[0].Value, Bound = s.Levels[0].Bound, Fault = ScheduleCheck.Fault(problem, s) ?? "" } : none;
    }

    public string Line() => string.Join('\t', Set, Instance, Way, Limit.ToString(CultureInfo.InvariantCulture), Workers, Seed, What, Value, Bound, Seconds.ToString("0.000", CultureInfo.InvariantCulture), Fault);

    /// <summary>A line read back; null for one that was cut off or is no such line.</summary>
    public static Solved? Read(string line)
    {
        string[] c = line.Split('\t');
        return c.Length == 11
            && double.TryParse(c[3], NumberStyles.Float, CultureInfo.InvariantCulture, out double limit)
            && int.TryParse(c[4], NumberStyles.None, CultureInfo.InvariantCulture, out int workers)
            && int.TryParse(c[5], NumberStyles.None, CultureInfo.InvariantCulture, out int seed)
            && long.TryParse(c[7], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long value)
            && long.TryParse(c[8], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long bound)
            && double.TryParse(c[9], NumberStyles.Float, CultureInfo.InvariantCulture, out double seconds)
            ? new Solved(c[0], c[1], c[2], limit, workers, seed, c[6], value, bound, seconds, c[10])
            : null;
    }

    /// <summary>For people.</summary>
    public string Words() => What != "schedule" ? What : string.Create(CultureInfo.InvariantCulture, $"{Value}{(Settled ? " proven" : $" (bound {Bound})")} in {Seconds:0.0} s");
}
