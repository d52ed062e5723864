using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>Reads from the logs of rehearsals and runs how long each segment really took.</summary>
public static class Rehearsals
{
    /// <summary>Seconds of each segment, by its number, one figure a log in which both its own gate and the next segment's were reported.</summary>
    /// <remarks>A segment whose drop was called, that was left out or whose twin came early, and a gate reported after a later one, tell nothing of its length and are left out.</remarks>
    /// <param name="plan">The plan that was rehearsed.</param>
    /// <param name="logs">Logs; moments need only agree within one log.</param>
    public static ImmutableSortedDictionary<int, ImmutableArray<double>> Seconds(Plan plan, IEnumerable<LiveLog> logs)
    {
        SortedDictionary<int, List<double>> seconds = [];
        foreach (LiveLog log in logs)
        {
            Dictionary<int, double> gates = [];
            foreach (LiveEvent e in log.Events.Where(e => e.Kind == "gate").OrderBy(e => e.At))
            {
                if (int.TryParse(e.Subject, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
                {
                    gates.TryAdd(number, e.At.ToUnixTimeTicks() / (double)NodaTime.NodaConstants.TicksPerSecond);
                }
            }

            HashSet<string> cut = [.. log.Events.Where(e => e.Kind is "drop" or "skip").Select(e => e.Subject), .. log.Events.Where(e => e.Kind == "early").Select(e => Live.SlotCalls.SegmentOf(plan, e.Subject)?.Number.ToString(CultureInfo.InvariantCulture) ?? "")];
            foreach (int number in plan.RunSheet.Select(s => s.Number).Where(n => !cut.Contains(n.ToString(CultureInfo.InvariantCulture))))
            {
                if (gates.TryGetValue(number, out double begun) && gates.TryGetValue(number + 1, out double next) && next > begun)
                {
                    (seconds.TryGetValue(number, out List<double>? list) ? list : seconds[number] = []).Add(next - begun);
                }
            }
        }

        return seconds.ToImmutableSortedDictionary(s => s.Key, s => s.Value.ToImmutableArray());
    }
}
