using System.Collections.Immutable;
using System.Globalization;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Something that is called while the slot runs, as it is reported.</summary>
/// <param name="Kind">"drop", "early" or "skip".</param>
/// <param name="Subject">Segment number, or "twin 5".</param>
public sealed record SlotCall(string Kind, string Subject)
{
    /// <summary>The segment of a drop or a skip; 0 for a twin.</summary>
    public int Segment => int.TryParse(Subject, NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 0;

    /// <summary>Its droppable seconds are given up.</summary>
    public static SlotCall Drop(int segment) => new("drop", segment.ToString(CultureInfo.InvariantCulture));

    /// <summary>It is not shown.</summary>
    public static SlotCall Skip(int segment) => new("skip", segment.ToString(CultureInfo.InvariantCulture));

    /// <summary>A twin comes in before its cue.</summary>
    public static SlotCall Early(int twin) => new("early", SlotCalls.Name(twin));
}

/// <summary>What the calls of a slot take from its segments.</summary>
/// <remarks>A twin called early takes the place of what was to be shown since the one before it: those seconds are told, not shown. In a segment that runs, only what is still to come of them is saved.</remarks>
public static class SlotCalls
{
    /// <summary>Least seconds a segment keeps in which something is still shown. Common practice, no source.</summary>
    internal const int Shortest = 10;

    /// <summary>A twin as reports name it.</summary>
    public static string Name(int twin) => "twin " + twin.ToString(CultureInfo.InvariantCulture);

    /// <summary>The twin a report speaks of; null when it names none that a segment brings in.</summary>
    public static int? Twin(Plan plan, string subject)
        => subject.StartsWith("twin ", StringComparison.Ordinal) && int.TryParse(subject.AsSpan(5), NumberStyles.None, CultureInfo.InvariantCulture, out int n) && plan.Twins.Any(t => t.Number == n) && plan.RunSheet.Any(s => s.Twins.Contains(n)) ? n : null;

    /// <summary>The call that is taken back by a subject such as "drop 3" or "skip 3"; null when it names none.</summary>
    public static SlotCall? Of(Plan plan, string subject)
        => subject.Split(' ') is ["drop" or "skip", var number] && new SlotCall(subject[..4], number) is { Segment: > 0 } call && plan.RunSheet.Any(s => s.Number == call.Segment) ? call : null;

    /// <summary>The segment in which a reported twin comes in; null when it names none.</summary>
    public static RunSegment? SegmentOf(Plan plan, string subject) => Twin(plan, subject) is { } twin ? plan.RunSheet.First(s => s.Twins.Contains(twin)) : null;

    /// <summary>Seconds taken from each segment by what was called so far.</summary>
    public static ImmutableSortedDictionary<int, int> Saved(Plan plan, LiveState state)
    {
        SortedDictionary<int, int> saved = [];
        foreach (RunSegment s in plan.RunSheet)
        {
            int seconds = state.LeftOut.Contains(s.Number) ? s.Seconds
                : Math.Min(s.Seconds - Math.Min(Shortest, s.Seconds), (state.Dropped.Contains(s.Number) ? s.DroppableSeconds : 0) + s.Twins.Where(state.Early.ContainsKey).Sum(t => Early(plan, s, t, state, state.Early[t])));
            // what may be dropped is the whole of a segment that is only told
            seconds = state.Dropped.Contains(s.Number) ? Math.Max(seconds, s.DroppableSeconds) : seconds;
            if (seconds > 0)
            {
                saved[s.Number] = seconds;
            }
        }

        return saved.ToImmutableSortedDictionary();
    }

    /// <summary>Seconds that a twin saves when it is called at a moment.</summary>
    internal static int Early(Plan plan, RunSegment segment, int twin, LiveState state, LocalDateTime called)
    {
        int cue = Cue(plan, twin) - segment.StartSecond;
        int before = Before(plan, segment, twin) - segment.StartSecond;
        int used = state.Gates.TryGetValue(segment.Number, out LocalDateTime begun) && begun <= called ? (int)Period.Between(begun, called, PeriodUnits.Seconds).Seconds : 0;
        return Math.Max(0, cue - Math.Max(before, used));
    }

    /// <summary>Second of the slot from which a twin could take the place of what is shown: the cue of the one before it, or the start of the segment.</summary>
    internal static int Before(Plan plan, RunSegment segment, int twin)
        => segment.Twins.Select(t => Cue(plan, t)).Where(c => c < Cue(plan, twin)).Append(segment.StartSecond).Max();

    private static int Cue(Plan plan, int twin) => plan.Twins.First(t => t.Number == twin).CueSecond;
}
