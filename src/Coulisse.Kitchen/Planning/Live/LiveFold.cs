using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>The one place where reported events become a state. Order of arrival and repeats change nothing.</summary>
public static class LiveFold
{
    /// <summary>Folds a log.</summary>
    /// <param name="occasion">The occasion, for its people and kit.</param>
    /// <param name="plan">The plan the events speak of.</param>
    /// <param name="log">What was reported.</param>
    /// <param name="zone">Zone of the kitchen's clock.</param>
    /// <param name="now">The moment; events after it are not yet known.</param>
    public static LiveState Fold(Occasion occasion, Plan plan, LiveLog log, DateTimeZone zone, Instant now)
    {
        // A device may send again what it is not sure arrived: one id counts once, and the order is that of the moments.
        LiveEvent[] events = [.. log.Events
            .Where(e => e.At <= now)
            .GroupBy(e => e.Id, StringComparer.Ordinal)
            .Select(g => g.OrderBy(e => e.At).ThenBy(e => e.Kind, StringComparer.Ordinal).ThenBy(e => e.Subject, StringComparer.Ordinal).First())
            .OrderBy(e => e.At)
            .ThenBy(e => e.Id, StringComparer.Ordinal)];
        HashSet<string> tasks = new(plan.Tasks.Select(t => t.Id), StringComparer.Ordinal);
        HashSet<string> people = new(occasion.People.Select(p => p.Name), StringComparer.Ordinal);
        HashSet<string> kit = new(occasion.Kit.Select(k => k.Code), StringComparer.Ordinal);
        HashSet<int> segments = [.. plan.RunSheet.Select(s => s.Number)];
        LiveState state = new() { Now = now.InZone(zone).LocalDateTime };
        foreach (LiveEvent e in events)
        {
            LocalDateTime at = e.At.InZone(zone).LocalDateTime;
            int? segment = int.TryParse(e.Subject, NumberStyles.None, CultureInfo.InvariantCulture, out int n) && segments.Contains(n) ? n : null;
            int? twin = SlotCalls.Twin(plan, e.Subject);
            SlotCall? call = SlotCalls.Of(plan, e.Subject);
            bool task = tasks.Contains(e.Subject);
            state = e.Kind switch
            {
                "start" when task => state with { Started = First(state.Started, e.Subject, at) },
                // What is done was begun: a forgotten start is taken to be the planned length before, never after the end.
                "done" when task => state with { Done = First(state.Done, e.Subject, at), Started = First(state.Started, e.Subject, Begun(plan, e.Subject, at)) },
                "lost" when task => state with { Lost = First(state.Lost, e.Subject, at) },
                "skip" when task => state with { Skipped = state.Skipped.Add(e.Subject) },
                "undo" when task => state with { Started = state.Started.Remove(e.Subject), Done = state.Done.Remove(e.Subject), Lost = state.Lost.Remove(e.Subject), Skipped = state.Skipped.Remove(e.Subject) },
                "gate" when segment is { } s => state with { Gates = First(state.Gates, s, at), LeftOut = state.LeftOut.Remove(s) },
                "skip" when segment is { } s => state.Gates.ContainsKey(s) ? state : state with { LeftOut = state.LeftOut.Add(s) },
                "early" when twin is { } t => state with { Early = First(state.Early, t, at) },
                // a call is taken back by itself; the gate of the same segment stands
                "undo" when call is { Kind: "drop" } c => state with { Dropped = state.Dropped.Remove(c.Segment) },
                "undo" when call is { Kind: "skip" } c => state with { LeftOut = state.LeftOut.Remove(c.Segment) },
                "undo" when twin is { } t => state with { Early = state.Early.Remove(t) },
                "drop" when segment is { } s => state with { Dropped = state.Dropped.Add(s) },
                "undo" when segment is { } s => state with { Gates = state.Gates.Remove(s), Dropped = state.Dropped.Remove(s), LeftOut = state.LeftOut.Remove(s) },
                "gone" when people.Contains(e.Subject) => state with { Gone = First(state.Gone, e.Subject, at) },
                "undo" when people.Contains(e.Subject) => state with { Gone = state.Gone.Remove(e.Subject) },
                "broken" when kit.Contains(e.Subject) => state with { Broken = First(state.Broken, e.Subject, at) },
                "undo" when kit.Contains(e.Subject) => state with { Broken = state.Broken.Remove(e.Subject) },
                "note" => state with { Notes = state.Notes.Add(e) },
                _ => state with { NotUnderstood = state.NotUnderstood.Add(e) },
            };
        }

        return state;
    }

    // The first report of a thing is the one that counts; a second device pressing later does not move it.
    private static ImmutableSortedDictionary<TKey, LocalDateTime> First<TKey>(ImmutableSortedDictionary<TKey, LocalDateTime> held, TKey key, LocalDateTime at)
        where TKey : notnull => held.ContainsKey(key) ? held : held.Add(key, at);

    private static LocalDateTime Begun(Plan plan, string task, LocalDateTime done)
    {
        PlannedTask planned = plan.Tasks.First(t => t.Id == task);
        LocalDateTime asLong = done.Minus(Period.Between(planned.Start, planned.End));
        return planned.Start < done && planned.Start > asLong ? planned.Start : asLong;
    }
}
