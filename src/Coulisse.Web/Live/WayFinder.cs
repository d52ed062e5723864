using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Plans;
using NodaTime;

namespace Coulisse.Web.Live;

/// <summary>Ways to go on when food is lost, kit breaks or a person goes: each solved from where things stand and checked before it is offered.</summary>
internal sealed class WayFinder(KitchenStore store, LiveDesk desk, OccasionShelf shelf, WebBenchOptions options) : IDisposable
{
    private const int Most = 3;

    // each takes some seconds, and a kitchen waits: what could be asked for is not all tried
    private const int Tries = 5;
    private readonly ConcurrentDictionary<string, Way> _ways = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>Looks for ways.</summary>
    public async Task<SolvedWays> FindAsync(OpenRun run, CancellationToken cancel)
    {
        await _one.WaitAsync(cancel);
        try
        {
            (run, StateFile.State state) = await desk.StandsAsync(run, cancel);
            if (!run.Whole)
            {
                return new SolvedWays([], "The occasion of this run can no longer be read, so nothing can be planned again.");
            }

            // ways that were offered before speak of a moment that is past
            foreach (string old in _ways.Where(w => w.Value.Run == run.Id).Select(w => w.Key))
            {
                _ways.TryRemove(old, out _);
            }

            return await Task.Run(() => Find(run, state, cancel), cancel);
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>Takes a way: its plan is kept and followed from now on.</summary>
    /// <returns>The new state; null when the way is no longer offered.</returns>
    public async Task<LiveFrame?> TakeAsync(OpenRun run, string id, string by, TimeProvider clock, CancellationToken cancel)
    {
        if (!_ways.TryRemove(id, out Way? way) || way.Run != run.Id)
        {
            return null;
        }

        if (way.Change.Length > 0)
        {
            await shelf.ChangeAsync(run.KeptPlan.OccasionId, way.Change, on: true, cancel);
        }

        string plan = await store.KeepPlanAsync(run.KeptPlan.OccasionId, run.KeptPlan.OccasionVersion, TravelJson.Write(way.Plan), await PlanBasis.ChangedAsync(run.KeptPlan.Versions, way.Change, store, cancel), cancel);
        Instant now = Instant.FromDateTimeOffset(clock.GetUtcNow());
        LiveEvent[] events = [.. way.Skips.Select(t => new LiveEvent(Guid.NewGuid().ToString("N"), now, "skip", t, by)), new LiveEvent(Guid.NewGuid().ToString("N"), now, LiveDesk.TakenUp, plan, by)];
        return await desk.TakeAsync(run, events, cancel);
    }

    public void Dispose() => _one.Dispose();

    private SolvedWays Find(OpenRun run, StateFile.State state, CancellationToken cancel)
    {
        LiveState stands = LiveFold.Fold(run.Occasion, run.Plan, state.Log, DateTimeZone.Utc, state.Now.InUtc().ToInstant());
        (ImmutableArray<LiveEvent> taken, ImmutableArray<string> unticked) = AsPlanned(run.Plan, stands);
        // a note that fits nothing must not stop a kitchen
        StateFile.State read = state with { Log = state.Log with { Events = [.. state.Log.Events.Except(stands.NotUnderstood), .. taken] } };
        ImmutableArray<SolvedWay>.Builder ways = ImmutableArray.CreateBuilder<SolvedWay>();
        List<string> why = [];
        int tried = 0;
        foreach (Candidate c in Candidates(run, read, stands))
        {
            if (ways.Count == Most || tried++ == Tries || cancel.IsCancellationRequested)
            {
                break;
            }

            switch (options.Replanner(c.Occasion, run.Plan, c.State, new PlanOptions(options.ReplanSeconds), cancel))
            {
                case Parsed<ReplannedOccasion>.Failed(var problems):
                    why.AddRange(problems.Select(p => $"{p.Message} ({p.Code})"));
                    break;
                case Parsed<ReplannedOccasion>.Ok(var made) when made.Replanned.Outcome is Plan plan && made.Faults.IsEmpty:
                    string id = Guid.NewGuid().ToString("N");
                    _ways[id] = new Way(run.Id, plan, c.Change, c.Skips);
                    ways.Add(new SolvedWay(id, Sentence(c, run.Plan, plan), ChangeView.From(made.Replanned.Changes)));
                    break;
                case Parsed<ReplannedOccasion>.Ok(var made):
                    why.AddRange(made.Replanned.Outcome switch { NoPlan no => no.Conflicts, NotYet yet => [yet.Why], _ => made.Faults.Select(f => f.Words).Take(1) });
                    break;
            }
        }

        string assumed = unticked.IsEmpty ? "" : $"Taken to be done, though nobody ticked it: {string.Join("; ", unticked.Take(4))}{(unticked.Length > 4 ? string.Create(CultureInfo.InvariantCulture, $"; and {unticked.Length - 4} more") : "")}.";
        return new SolvedWays(ways.ToImmutable(), ways.Count > 0 ? assumed : why.Count > 0 ? "No way was found that holds. " + string.Join(" ", why.Distinct().Take(2)) : "No way was found that holds.");
    }

    /// <summary>What nobody reported is taken to have gone as planned up to now: an oven ticks nothing, and a thumb forgets. What should be done by the hands of somebody who had gone, or on kit that had broken, is not.</summary>
    private static (ImmutableArray<LiveEvent> Taken, ImmutableArray<string> Unticked) AsPlanned(Plan plan, LiveState stands)
    {
        ImmutableArray<LiveEvent>.Builder taken = ImmutableArray.CreateBuilder<LiveEvent>();
        List<string> unticked = [];
        foreach (PlannedTask t in plan.Tasks.Where(t => t.Kind is not TaskKind.Meal && t.Start < stands.Now && !stands.Done.ContainsKey(t.Id) && !stands.Lost.ContainsKey(t.Id) && !stands.Skipped.Contains(t.Id)))
        {
            LocalDateTime? failed = stands.Gone.Where(g => t.People.Contains(g.Key)).Select(g => g.Value).Concat(stands.Broken.Where(b => t.Kit.Contains(b.Key)).Select(b => b.Value)).Cast<LocalDateTime?>().Min();
            if (failed <= t.Start)
            {
                continue;
            }

            bool done = t.End <= stands.Now && !(failed < t.End);
            taken.Add(new LiveEvent("as-planned-" + t.Id, (done ? t.End : t.Start).InUtc().ToInstant(), done ? "done" : "start", t.Id, ""));
            if (done && t.Kind is not (TaskKind.Unattended or TaskKind.Preheat))
            {
                unticked.Add(t.Text);
            }
        }

        return (taken.ToImmutable(), [.. unticked]);
    }

    /// <summary>All of it first; then without what was lost; then what a kitchen gives up most easily on the day itself.</summary>
    private static IEnumerable<Candidate> Candidates(OpenRun run, StateFile.State state, LiveState stands)
    {
        yield return new Candidate(run.Occasion, state, "", [], "Go on with all of it");
        HashSet<string> lost = [.. run.Plan.Tasks.Where(t => stands.Lost.ContainsKey(t.Id) && t.Component is { Length: > 0 }).Select(t => t.Component!)];
        foreach (string component in lost.Order(StringComparer.Ordinal))
        {
            ImmutableArray<string> skips = [.. run.Plan.Tasks.Where(t => t.Component == component && !stands.Done.ContainsKey(t.Id) && t.Kind is not TaskKind.House).Select(t => t.Id)];
            IEnumerable<LiveEvent> events = skips.Select(t => new LiveEvent("way-" + t, state.Now.InUtc().ToInstant(), "skip", t, "chef"));
            yield return new Candidate(run.Occasion, state with { Log = state.Log with { Events = [.. state.Log.Events.Where(e => !(e.Kind == "lost" && skips.Contains(e.Subject))), .. events] } }, "", skips, $"Leave out {component}");
        }

        // later service, earlier days and longer hours are no help on the day; showing less is, and so is what stands in for what is gone
        HashSet<string> broken = [.. run.Occasion.Kit.Where(k => stands.Broken.ContainsKey(k.Code)).Select(k => "kit " + k.Type)];
        foreach (Remedy remedy in RemedyCandidates.Of(run.Occasion, run.Plan.Edits, [])
            .Where(r => r.Kind == "show" || broken.Contains(r.Kind) || (r.Kind == "hands" && !stands.Gone.IsEmpty))
            .DistinctBy(r => r.Kind).OrderBy(r => r.Kind == "show"))
        {
            yield return new Candidate(remedy.Changed, state, remedy.Words, [], remedy.Words.TrimEnd('.'));
        }
    }

    private static string Sentence(Candidate c, Plan before, Plan after)
    {
        Dictionary<string, PlannedTask> old = before.Tasks.ToDictionary(t => t.Id, StringComparer.Ordinal);
        int moved = after.Tasks.Count(t => !old.TryGetValue(t.Id, out PlannedTask? was) || was.Start != t.Start || !was.People.SequenceEqual(t.People) || !was.Kit.SequenceEqual(t.Kit));
        LocalDateTime ready = after.Tasks.Where(t => t.End <= after.SlotStart).Select(t => t.End).DefaultIfEmpty(after.SlotStart).Max();
        return string.Create(CultureInfo.InvariantCulture, $"{c.Words}: {(moved == 0 ? "no task moves" : moved == 1 ? "one task moves" : $"{moved} tasks move")}, the last is done by {ready:ddd HH:mm}.");
    }

    private sealed record Candidate(Kitchen.Occasions.Occasion Occasion, StateFile.State State, string Change, ImmutableArray<string> Skips, string Words);

    private sealed record Way(string Run, Plan Plan, string Change, ImmutableArray<string> Skips);
}
