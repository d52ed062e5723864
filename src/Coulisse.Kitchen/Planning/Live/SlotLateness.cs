using System.Collections.Immutable;
using System.Globalization;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>A way to end the slot on time, or the least over.</summary>
/// <param name="Sentence">One sentence for the person at the clock.</param>
/// <param name="Late">Seconds over the end when it is taken.</param>
/// <param name="Cuts">Seconds taken from each segment, by number.</param>
/// <param name="RunSheet">Segments still to come, with their new starts and lengths.</param>
public sealed record WayOut(string Sentence, int Late, ImmutableSortedDictionary<int, int> Cuts, ImmutableArray<RunSegment> RunSheet);

/// <summary>A slot that runs late: how late, and what to leave out.</summary>
/// <remarks>
/// Only what the plan marks as droppable is cut, in the order of its ranks; a segment already begun is not cut below what it has
/// used. The end of the slot stands. Up to three ways: by rank, the fewest cuts, and nothing cut.
/// </remarks>
public static class SlotLateness
{
    /// <summary>The segment that runs and the seconds by which the slot is late at its start; null before the first gate.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="state">What was reported.</param>
    public static (RunSegment Segment, int Late)? At(Plan plan, LiveState state)
    {
        if (state.Gates.IsEmpty)
        {
            return null;
        }

        (int number, LocalDateTime begun) = state.Gates.MaxBy(g => g.Key);
        RunSegment segment = plan.RunSheet.First(s => s.Number == number);
        return (segment, (int)Period.Between(plan.SlotStart.PlusSeconds(segment.StartSecond), begun, PeriodUnits.Seconds).Seconds);
    }

    /// <summary>Ways to catch up, the one that keeps most of what is shown first; empty when the slot is not late.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="state">What was reported.</param>
    public static ImmutableArray<WayOut> WaysOut(Plan plan, LiveState state)
    {
        if (state.Gates.IsEmpty)
        {
            return [];
        }

        (int number, LocalDateTime begun) = state.Gates.MaxBy(g => g.Key);
        RunSegment[] left = [.. plan.RunSheet.Where(s => s.Number >= number).OrderBy(s => s.Number)];
        int used = Math.Max(0, (int)Period.Between(begun, state.Now, PeriodUnits.Seconds).Seconds);
        int at = (int)Period.Between(plan.SlotStart, begun, PeriodUnits.Seconds).Seconds;
        int[] called = [.. left.Where(s => state.Dropped.Contains(s.Number)).Select(s => s.Number)];
        int needed = left.Sum(s => s.Seconds - (called.Contains(s.Number) ? s.DroppableSeconds : 0));
        // A segment that overruns its length has already cost what it has used.
        int over = Math.Max(0, used - (left[0].Seconds - (called.Contains(number) ? left[0].DroppableSeconds : 0)));
        int late = at + needed + over - (int)plan.SlotLength.TotalSeconds;
        if (late <= 0)
        {
            return [];
        }

        (int Number, int Seconds, int Rank)[] drops = [.. left
            .Where(s => s.DroppableSeconds > 0 && !called.Contains(s.Number))
            .Select(s => (s.Number, Seconds: s.Number == number ? Math.Clamp(s.Seconds - used, 0, s.DroppableSeconds) : s.DroppableSeconds, s.DropRank))
            .Where(d => d.Seconds > 0)];
        ImmutableSortedDictionary<int, int> already = called.ToImmutableSortedDictionary(n => n, n => plan.RunSheet.First(s => s.Number == n).DroppableSeconds);
        List<WayOut> ways = [];
        foreach (ImmutableSortedDictionary<int, int> cuts in new[] { ByRank(drops, late), FewestCuts(drops, late), ImmutableSortedDictionary<int, int>.Empty })
        {
            if (ways.Any(w => w.Cuts.SequenceEqual(cuts)))
            {
                continue;
            }

            int still = late - cuts.Values.Sum();
            ways.Add(new WayOut(Sentence(plan, cuts, still), Math.Max(0, still), cuts, Laid(left, at, over, already, cuts)));
        }

        return [.. ways];
    }

    private static ImmutableSortedDictionary<int, int> ByRank((int Number, int Seconds, int Rank)[] drops, int late)
    {
        ImmutableSortedDictionary<int, int> cuts = ImmutableSortedDictionary<int, int>.Empty;
        foreach ((int number, int seconds, int _) in drops.OrderBy(d => d.Rank))
        {
            int take = Math.Min(seconds, late - cuts.Values.Sum());
            cuts = take > 0 ? cuts.Add(number, take) : cuts;
        }

        return cuts;
    }

    // Fewest segments touched: the longest drops first.
    private static ImmutableSortedDictionary<int, int> FewestCuts((int Number, int Seconds, int Rank)[] drops, int late)
        => ByRank([.. drops.OrderByDescending(d => d.Seconds).ThenBy(d => d.Rank).Select((d, i) => (d.Number, d.Seconds, i))], late);

    private static ImmutableArray<RunSegment> Laid(RunSegment[] left, int at, int over, ImmutableSortedDictionary<int, int> already, ImmutableSortedDictionary<int, int> cuts)
    {
        ImmutableArray<RunSegment>.Builder laid = ImmutableArray.CreateBuilder<RunSegment>();
        foreach (RunSegment s in left)
        {
            int seconds = s.Seconds - already.GetValueOrDefault(s.Number) - cuts.GetValueOrDefault(s.Number) + (laid.Count == 0 ? over : 0);
            laid.Add(s with { StartSecond = at, Seconds = seconds, DroppableSeconds = Math.Max(0, s.DroppableSeconds - already.GetValueOrDefault(s.Number) - cuts.GetValueOrDefault(s.Number)) });
            at += seconds;
        }

        return laid.ToImmutable();
    }

    private static string Sentence(Plan plan, ImmutableSortedDictionary<int, int> cuts, int still)
    {
        string[] words = [.. cuts.Select(c => c.Value == plan.RunSheet.First(s => s.Number == c.Key).Seconds
            ? string.Create(CultureInfo.InvariantCulture, $"leave out segment {c.Key}")
            : string.Create(CultureInfo.InvariantCulture, $"shorten segment {c.Key} by {Clock(c.Value)}"))];
        string end = still > 0 ? $"the slot ends {Clock(still)} late" : "the slot ends on time";
        return words.Length == 0 ? $"Change nothing: {end}." : $"{Capital(string.Join(" and ", words))}: {end}.";
    }

    private static string Clock(int seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
