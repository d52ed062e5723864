using System.Collections.Immutable;
using System.Globalization;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>A way to end the slot on time, or the least over.</summary>
/// <param name="Sentence">One sentence for the person at the clock.</param>
/// <param name="Late">Seconds over the end when it is taken.</param>
/// <param name="Cuts">Seconds taken from each segment, by number.</param>
/// <param name="RunSheet">Segments still to come, with their new starts and lengths.</param>
public sealed record WayOut(string Sentence, int Late, ImmutableSortedDictionary<int, int> Cuts, ImmutableArray<RunSegment> RunSheet)
{
    /// <summary>What is reported when it is taken.</summary>
    public ImmutableArray<SlotCall> Calls { get; init; } = [];
}

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
        if (Behind(plan, state) is not { Late: > 0 } behind)
        {
            return [];
        }

        (int Number, int Seconds, int Rank)[] drops = behind.Drops;
        List<WayOut> ways = [];
        foreach (ImmutableSortedDictionary<int, int> cuts in new[] { ByRank(drops, behind.Late), FewestCuts(drops, behind.Late), ImmutableSortedDictionary<int, int>.Empty })
        {
            if (ways.Any(w => w.Cuts.SequenceEqual(cuts)))
            {
                continue;
            }

            int still = behind.Late - cuts.Values.Sum();
            ways.Add(new WayOut(Sentence(plan, cuts, still), Math.Max(0, still), cuts, Laid(behind, cuts)) { Calls = [.. cuts.Keys.Select(SlotCall.Drop)] });
        }

        return [.. ways];
    }

    /// <summary>Where a slot stands that has begun, as seconds; null before the first gate.</summary>
    internal static SlotBehind? Behind(Plan plan, LiveState state)
    {
        if (state.Gates.IsEmpty)
        {
            return null;
        }

        (int number, LocalDateTime begun) = state.Gates.MaxBy(g => g.Key);
        ImmutableSortedDictionary<int, int> saved = SlotCalls.Saved(plan, state);
        RunSegment[] left = [.. plan.RunSheet.Where(s => s.Number >= number && (s.Number == number || saved.GetValueOrDefault(s.Number) < s.Seconds)).OrderBy(s => s.Number)];
        int used = Math.Max(0, (int)Period.Between(begun, state.Now, PeriodUnits.Seconds).Seconds);
        int at = (int)Period.Between(plan.SlotStart, begun, PeriodUnits.Seconds).Seconds;
        // A segment that overruns its length has already cost what it has used.
        int over = Math.Max(0, used - (left[0].Seconds - saved.GetValueOrDefault(number)));
        int late = at + left.Sum(s => s.Seconds - saved.GetValueOrDefault(s.Number)) + over - (int)plan.SlotLength.TotalSeconds;
        return new SlotBehind(left, at, used, over, late, saved,
            [.. left.Where(s => s.DroppableSeconds > 0 && !state.Dropped.Contains(s.Number))
                .Select(s => (s.Number, Seconds: Math.Min(s.DroppableSeconds, s.Seconds - saved.GetValueOrDefault(s.Number) - (s.Number == number ? used : 0)), s.DropRank))
                .Where(d => d.Seconds > 0)]);
    }

    internal static ImmutableSortedDictionary<int, int> ByRank((int Number, int Seconds, int Rank)[] drops, int late)
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

    /// <summary>The segments still to come with their new starts and lengths; those that are cut to nothing are not among them.</summary>
    internal static ImmutableArray<RunSegment> Laid(SlotBehind behind, ImmutableSortedDictionary<int, int> cuts)
    {
        ImmutableArray<RunSegment>.Builder laid = ImmutableArray.CreateBuilder<RunSegment>();
        int at = behind.At;
        foreach (RunSegment s in behind.Left)
        {
            int gone = behind.Saved.GetValueOrDefault(s.Number) + cuts.GetValueOrDefault(s.Number);
            int seconds = s.Seconds - gone + (s == behind.Left[0] ? behind.Over : 0);
            if (seconds > 0 || s == behind.Left[0])
            {
                laid.Add(s with { StartSecond = at, Seconds = seconds, DroppableSeconds = Math.Max(0, s.DroppableSeconds - gone) });
                at += seconds;
            }
        }

        return laid.ToImmutable();
    }

    private static string Sentence(Plan plan, ImmutableSortedDictionary<int, int> cuts, int still)
    {
        string[] words = [.. cuts.Select(c => c.Value == plan.RunSheet.First(s => s.Number == c.Key).Seconds
            ? string.Create(CultureInfo.InvariantCulture, $"leave out segment {c.Key}")
            : string.Create(CultureInfo.InvariantCulture, $"shorten segment {c.Key} by {Clock(c.Value)}"))];
        string end = Ends(still);
        return words.Length == 0 ? $"Change nothing: {end}." : $"{Capital(string.Join(" and ", words))}: {end}.";
    }

    internal static string Ends(int still) => still > 0 ? $"the slot ends {Clock(still)} late" : "the slot ends on time";

    internal static string Clock(int seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");

    internal static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

/// <summary>Where a slot stands, in seconds.</summary>
/// <param name="Left">Segments from the running one on, without those left out.</param>
/// <param name="At">Second at which the running one began.</param>
/// <param name="Used">Seconds it has used.</param>
/// <param name="Over">Seconds it has used beyond its length.</param>
/// <param name="Late">Seconds by which the end will be missed when nothing is done; negative when there is time over.</param>
/// <param name="Saved">Seconds already taken from each segment by what was called.</param>
/// <param name="Drops">What may still be dropped.</param>
internal sealed record SlotBehind(RunSegment[] Left, int At, int Used, int Over, int Late, ImmutableSortedDictionary<int, int> Saved, (int Number, int Seconds, int Rank)[] Drops);
