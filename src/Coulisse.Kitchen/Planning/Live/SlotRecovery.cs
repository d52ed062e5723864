using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>At most three ways to end a slot on time that runs late, each one sentence, each reckoned to the second: seconds dropped, a twin called in early, something left out.</summary>
/// <remarks>
/// What costs least of what is seen comes first: seconds that the plan marks as droppable; then a twin that takes the place of what
/// leads up to it, which is told; then the least weight left out. A way that ends on time comes before one that does not. Never left
/// out: what must be seen (weight 5), what nobody has weighed, the opening and the close, and a segment in which somebody does what
/// does not belong to its showing (the wash of the jug, the round of the guests). A twin is called only when it stands ready and whoever
/// brings it is there.
/// </remarks>
public static class SlotRecovery
{
    private const int Most = 3;
    private const int MustBeSeen = 5;

    /// <summary>Below this a slot is on time, as its drift says in words; nothing is offered.</summary>
    private const int Noticed = 5;

    /// <summary>Below this a twin early is not worth the noise.</summary>
    private const int LeastSeconds = 15;

    /// <summary>More than so many left out is no showing any more.</summary>
    private const int MostLeftOut = 2;

    /// <summary>The ways; empty when the slot is not late.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="state">What was reported.</param>
    public static ImmutableArray<WayOut> Ways(Plan plan, LiveState state)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(state);
        if (SlotLateness.Behind(plan, state) is not { Late: >= Noticed } behind)
        {
            return [];
        }

        ImmutableArray<WayOut> drops = SlotLateness.WaysOut(plan, state);
        WayOut?[] all = [drops.FirstOrDefault(w => !w.Cuts.IsEmpty), Early(plan, state, behind), Without(behind), drops.Skip(1).FirstOrDefault(w => !w.Cuts.IsEmpty), drops.FirstOrDefault(w => w.Cuts.IsEmpty)];
        return [.. all.OfType<WayOut>().OrderBy(w => w.Late > 0).Take(Most)];
    }

    // Of the twins that end the slot on time the one whose segment weighs least; else the one that saves most, with what may be dropped beside it.
    private static WayOut? Early(Plan plan, LiveState state, SlotBehind behind)
    {
        (RunSegment Segment, Twin Twin, int Seconds)[] may =
        [
            .. from s in behind.Left
               from n in s.Twins
               let made = plan.Twins.FirstOrDefault(t => t.Number == n)
               where made is not null && !state.Early.ContainsKey(n) && Ready(plan, state, s, made)
               let saves = Math.Min(SlotCalls.Early(plan, s, n, state, state.Now), s.Seconds - behind.Saved.GetValueOrDefault(s.Number) - SlotCalls.Shortest)
               where saves >= LeastSeconds
               select (s, made, saves),
        ];
        if (may.Length == 0)
        {
            return null;
        }

        (RunSegment segment, Twin twin, int seconds) = may.OrderBy(x => Math.Max(0, behind.Late - x.Seconds)).ThenBy(x => x.Segment.Weight).ThenBy(x => x.Seconds).First();
        bool runs = segment == behind.Left[0];
        string what = string.Create(CultureInfo.InvariantCulture, $"{(runs ? "bring" : $"in segment {segment.Number} bring")} twin {twin.Number} ({twin.Component}) in {(runs ? "now" : SlotLateness.Clock(seconds) + " early")} and tell what leads up to it");
        return Way(behind, ImmutableSortedDictionary<int, int>.Empty.Add(segment.Number, seconds), what, [SlotCall.Early(twin.Number)]);
    }

    // What it takes the place of must be its own lead-up, and nothing that must be seen.
    private static bool Ready(Plan plan, LiveState state, RunSegment segment, Twin twin)
        => segment.Weight is > 0 and < MustBeSeen
            && plan.Twins.Where(t => segment.Twins.Contains(t.Number) && t.CueSecond < twin.CueSecond).OrderBy(t => t.CueSecond).LastOrDefault() is var before && (before is null || before.Component == twin.Component)
            && twin.ReadyBy <= plan.SlotStart.PlusSeconds(SlotCalls.Before(plan, segment, twin.Number))
            && !(twin.MadeBy is { } task && (state.Lost.ContainsKey(task) || state.Skipped.Contains(task)))
            && !state.Gone.ContainsKey(twin.BroughtBy);

    private static WayOut? Without(SlotBehind behind)
    {
        RunSegment[] may = [.. behind.Left.Skip(1).Where(MayGo)];
        RunSegment[][] sets = [.. may.Select(s => new[] { s }), .. MostLeftOut > 1 ? may.SelectMany((a, i) => may.Skip(i + 1).Select(b => new[] { a, b })) : []];
        if (sets.Length == 0)
        {
            return null;
        }

        int Seconds(RunSegment[] set) => set.Sum(s => s.Seconds - behind.Saved.GetValueOrDefault(s.Number));
        RunSegment[] least = sets.OrderBy(s => Math.Max(0, behind.Late - Seconds(s))).ThenBy(s => s.Sum(x => x.Weight)).ThenBy(Seconds).First();
        string what = "leave out " + string.Join(" and ", least.Select(s => string.Create(CultureInfo.InvariantCulture, $"segment {s.Number} ({s.Component})")));
        return Way(behind, least.ToImmutableSortedDictionary(s => s.Number, s => s.Seconds - behind.Saved.GetValueOrDefault(s.Number)), what, [.. least.Select(s => SlotCall.Skip(s.Number))]);
    }

    private static bool MayGo(RunSegment s) => s.Weight is > 0 and < MustBeSeen && s.Component.Length > 0
        && s.Who.Values.SelectMany(w => w.Split("; ")).All(w => w is "shows" or "speaks" || w.StartsWith("no talking", StringComparison.Ordinal) || w.StartsWith("brings ", StringComparison.Ordinal) || w.StartsWith("into ", StringComparison.Ordinal));

    // What a way does not save by itself is dropped beside it, as far as it goes.
    private static WayOut Way(SlotBehind behind, ImmutableSortedDictionary<int, int> cuts, string what, ImmutableArray<SlotCall> calls)
    {
        int still = behind.Late - cuts.Values.Sum();
        ImmutableSortedDictionary<int, int> beside = SlotLateness.ByRank([.. behind.Drops.Where(d => !cuts.ContainsKey(d.Number))], Math.Max(0, still));
        still -= beside.Values.Sum();
        string also = string.Concat(beside.Select(b => b.Value == behind.Left.First(s => s.Number == b.Key).Seconds
            ? string.Create(CultureInfo.InvariantCulture, $", leave out segment {b.Key}")
            : string.Create(CultureInfo.InvariantCulture, $", shorten segment {b.Key} by {SlotLateness.Clock(b.Value)}")));
        ImmutableSortedDictionary<int, int> all = cuts.AddRange(beside);
        return new WayOut($"{SlotLateness.Capital(what)}{also}: {SlotLateness.Ends(still)}.", Math.Max(0, still), all, SlotLateness.Laid(behind, all)) { Calls = [.. calls, .. beside.Keys.Select(SlotCall.Drop)] };
    }
}
