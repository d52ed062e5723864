using NodaTime;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Half-open stretches of time: what ends at a moment does not meet what begins at it.</summary>
internal static class Overlap
{
    public static double Minutes(LocalDateTime fromA, LocalDateTime toA, LocalDateTime fromB, LocalDateTime toB)
        => Between(fromA > fromB ? fromA : fromB, toA < toB ? toA : toB);

    public static double Between(LocalDateTime from, LocalDateTime to)
        => Math.Max(0, Period.Between(from, to, PeriodUnits.Seconds).Seconds / 60.0);

    /// <summary>A moment shares the hands and kit of the task it lies in, and of no other.</summary>
    public static bool Related(PlannedTask a, PlannedTask b)
        => a.Within == b.Id || b.Within == a.Id;
}
