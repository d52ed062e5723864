using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Gauge.Web;

/// <summary>A plan of six hundred tasks on three days: drawn by chance, for speed only; nobody could cook it.</summary>
internal static class LargePlan
{
    public static Plan Of(int tasks)
    {
        Random random = new(7);
        LocalDateTime slot = new(2026, 10, 10, 14, 0);
        ImmutableArray<PlannedTask> all = [.. Enumerable.Range(0, tasks).Select(i =>
        {
            LocalDateTime start = slot.PlusDays(-2 + (i * 3 / tasks)).Date.At(new LocalTime(8, 0)).PlusMinutes(random.Next(0, 330));
            bool alone = random.Next(4) == 0;
            return new PlannedTask
            {
                Id = string.Create(CultureInfo.InvariantCulture, $"T{i:000}"), Text = $"Work {i} on part {i % 30}", Kind = alone ? TaskKind.Unattended : TaskKind.Work, Start = start, End = start.PlusMinutes(random.Next(4, alone ? 90 : 25)),
                Component = $"Part {i % 30}", People = alone ? [] : [$"Person {random.Next(8)}"], Kit = [$"K{random.Next(20)}"], Because = "drawn by chance",
            };
        })];
        return new Plan
        {
            Title = "Six hundred tasks", SlotStart = slot, SlotLength = Duration.FromMinutes(25), Tasks = all,
            RunSheet = [.. Enumerable.Range(0, 10).Select(i => new RunSegment { Number = i + 1, StartSecond = i * 150, Seconds = 150, Show = $"Part {i}", Who = ImmutableSortedDictionary<string, string>.Empty.Add("Person 0", "shows") })],
        };
    }
}
