using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Threading.Channels;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Plans;
using Coulisse.Web.Sheets;
using NodaTime;

namespace Coulisse.Web.Live;

/// <summary>Runs: takes reports, folds them, tells every screen. All of it is in the store, so a restart loses nothing.</summary>
internal sealed class LiveDesk(KitchenStore store, OccasionShelf shelf, SheetWall wall, TimeProvider clock)
{
    /// <summary>Kind of the event by which a run goes on by another plan; its subject is the kept plan.</summary>
    public const string TakenUp = "plan";

    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(5);
    private readonly ConcurrentDictionary<string, OpenRun?> _open = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ConcurrentDictionary<Channel<LiveFrame>, byte>> _screens = new(StringComparer.Ordinal);

    /// <summary>A run with its plan; null when there is none.</summary>
    public async Task<OpenRun?> OpenAsync(string run, CancellationToken cancel)
    {
        if (_open.GetValueOrDefault(run) is { } there)
        {
            return there;
        }

        if (await store.RunAsync(run, cancel) is not { } kept || await store.PlanAsync(kept.PlanId, cancel) is not { } plan)
        {
            return null;
        }

        return _open[run] = await OpenAsync(run, kept, plan, cancel);
    }

    private async Task<OpenRun> OpenAsync(string run, KeptRun kept, KeptPlan plan, CancellationToken cancel)
    {
        Plan read = TravelJson.Read<Plan>(plan.Json);
        // names of people and kit come from the occasion; when that no longer reads, from the plan itself
        KeptOccasion? occasion = await shelf.OpenAsync(plan, cancel) is Parsed<KeptOccasion>.Ok(var o) ? o : null;
        return new OpenRun(run, kept, plan, read, occasion?.Occasion ?? FromPlan(read), occasion is not null);
    }

    /// <summary>A run may go on by another plan than the one it began with: the newest that was taken up, of those that are there.</summary>
    private async Task<OpenRun> FollowAsync(OpenRun run, LiveLog log, CancellationToken cancel)
    {
        if (log.Events.LastOrDefault(e => e.Kind == TakenUp) is not { } taken || taken.Subject == run.KeptPlan.Id || await store.PlanAsync(taken.Subject, cancel) is not { } plan)
        {
            return run;
        }

        string before = log.Events.LastOrDefault(e => e.Kind == TakenUp && e != taken)?.Subject ?? run.Kept.PlanId;
        OpenRun now = await OpenAsync(run.Id, run.Kept, plan, cancel);
        Plan? old = before == run.KeptPlan.Id ? run.Plan : await store.PlanAsync(before, cancel) is { } was ? TravelJson.Read<Plan>(was.Json) : null;
        return _open[run.Id] = now with { Since = taken.At, Changes = old is null ? [] : ChangeView.From(PlanChanges.Since(old, now.Plan)) };
    }

    /// <summary>The run by the plan that is followed now, and what was reported, on the plan's own clock.</summary>
    public async Task<(OpenRun Run, StateFile.State State)> StandsAsync(OpenRun run, CancellationToken cancel)
    {
        LiveLog log = await store.LogAsync(run.Id, cancel);
        run = await FollowAsync(run, log, cancel);
        // the plan's clock reads the slot's start at second 0, whenever the run was begun: a rehearsal is judged like the day itself
        Duration shift = Shift(run);
        return (run, new StateFile.State((Instant.FromDateTimeOffset(clock.GetUtcNow()) + shift).InUtc().LocalDateTime, log with { Events = [.. log.Events.Where(e => e.Kind != TakenUp).Select(e => e with { At = e.At + shift })] }, null));
    }

    private static Duration Shift(OpenRun run) => run.Plan.SlotStart.InUtc().ToInstant() - Instant.FromDateTimeOffset(run.Kept.Started);

    /// <summary>The state now.</summary>
    public async Task<LiveFrame> FrameAsync(OpenRun run, CancellationToken cancel)
    {
        Instant now = Instant.FromDateTimeOffset(clock.GetUtcNow());
        (run, StateFile.State state) = await StandsAsync(run, cancel);
        Duration shift = Shift(run);
        LiveFrame frame = LiveFrame.From(run.Id, run.Plan, LiveFold.Fold(run.Occasion, run.Plan, state.Log, DateTimeZone.Utc, now + shift), now, Instant.FromDateTimeOffset(run.Kept.Started));
        long back = (long)shift.TotalMilliseconds;
        return frame with { Notes = [.. frame.Notes.Select(n => n with { AtMs = n.AtMs - back })], PlanId = run.KeptPlan.Id, PlanSinceMs = run.Since?.ToUnixTimeMilliseconds() ?? 0, Changes = run.Changes };
    }

    /// <summary>What the plan that is followed changes against the copy somebody has: the plan their page last read, else the one their brief was printed from, else the one the run began with.</summary>
    /// <param name="run">Run.</param>
    /// <param name="since">Plan that was read last; empty when the page never read one.</param>
    /// <param name="role">Whose page; empty for the chef's.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<CopyChanges> SinceAsync(OpenRun run, string since, string role, CancellationToken cancel)
    {
        (run, StateFile.State _) = await StandsAsync(run, cancel);
        string inHand = since.Length > 0 ? since : role.Length > 0 ? await wall.PlanInHandAsync(run.KeptPlan.OccasionId, role, cancel) : "";
        inHand = inHand.Length > 0 ? inHand : run.Kept.PlanId;
        if (inHand == run.KeptPlan.Id || await store.PlanAsync(inHand, cancel) is not { } copy || copy.OccasionId != run.KeptPlan.OccasionId)
        {
            return new CopyChanges(run.KeptPlan.Id, "", []);
        }

        bool paper = since.Length == 0 && inHand != run.Kept.PlanId;
        return new CopyChanges(run.KeptPlan.Id, paper ? "paper" : "page", ChangeView.From(PlanChanges.Since(TravelJson.Read<Plan>(copy.Json), run.Plan)));
    }

    /// <summary>Takes reports and tells every screen. A repeat changes nothing.</summary>
    public async Task<LiveFrame> TakeAsync(OpenRun run, IReadOnlyCollection<LiveEvent> events, CancellationToken cancel)
    {
        int added = await store.AppendAsync(run.Id, events, cancel);
        LiveFrame frame = await FrameAsync(run, cancel);
        if (added > 0)
        {
            Show(run.Id, frame);
        }

        return frame;
    }

    /// <summary>Shows a run that another process changed, when a screen here is open on it.</summary>
    public async Task ShowAsync(string run, CancellationToken cancel)
    {
        if (_screens.TryGetValue(run, out ConcurrentDictionary<Channel<LiveFrame>, byte>? screens) && !screens.IsEmpty && await OpenAsync(run, cancel) is { } open)
        {
            Show(run, await FrameAsync(open, cancel));
        }
    }

    private void Show(string run, LiveFrame frame)
    {
        if (_screens.TryGetValue(run, out ConcurrentDictionary<Channel<LiveFrame>, byte>? screens))
        {
            foreach (Channel<LiveFrame> screen in screens.Keys)
            {
                screen.Writer.TryWrite(frame);
            }
        }
    }

    /// <summary>Frames as they come, and one every few seconds so that a dead line is noticed.</summary>
    public async IAsyncEnumerable<SseItem<LiveFrame>> WatchAsync(OpenRun run, [EnumeratorCancellation] CancellationToken cancel)
    {
        // a slow screen skips to the newest frame
        Channel<LiveFrame> screen = Channel.CreateBounded<LiveFrame>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropOldest });
        ConcurrentDictionary<Channel<LiveFrame>, byte> screens = _screens.GetOrAdd(run.Id, _ => new());
        screens[screen] = 0;
        try
        {
            yield return new SseItem<LiveFrame>(await FrameAsync(run, cancel), "frame");
            while (!cancel.IsCancellationRequested)
            {
                using CancellationTokenSource wait = CancellationTokenSource.CreateLinkedTokenSource(cancel);
                wait.CancelAfter(Beat);
                LiveFrame? frame = null;
                try
                {
                    frame = await screen.Reader.ReadAsync(wait.Token);
                }
                catch (OperationCanceledException)
                {
                    if (cancel.IsCancellationRequested)
                    {
                        yield break; // the screen or the bench has gone
                    }

                    // nothing was reported: the beat goes out instead
                }

                yield return new SseItem<LiveFrame>(frame ?? await FrameAsync(run, cancel), "frame");
            }
        }
        finally
        {
            screens.TryRemove(screen, out _);
        }
    }

    private static Occasion FromPlan(Plan plan) => new()
    {
        Title = plan.Title, Sheet = new Cards.Occasions.OccasionSheet { Title = plan.Title }, SlotStart = plan.SlotStart, SlotLength = plan.SlotLength, SlotPlace = "stage", Guests = 0, Covers = 0,
        People = [.. plan.Tasks.SelectMany(t => t.People).Concat(plan.RunSheet.SelectMany(s => s.Who.Keys)).Distinct().Select(p => new Person(p, "", "", [], [], [], [], 1))],
    };
}

/// <summary>A run that is open.</summary>
/// <param name="Id">Run.</param>
/// <param name="Kept">As it was begun.</param>
/// <param name="KeptPlan">The plan it follows, as kept.</param>
/// <param name="Plan">The same, read.</param>
/// <param name="Occasion">Its occasion.</param>
/// <param name="Whole">False when the occasion no longer reads and was made up from the plan: then nothing can be planned again.</param>
internal sealed record OpenRun(string Id, KeptRun Kept, KeptPlan KeptPlan, Plan Plan, Occasion Occasion, bool Whole)
{
    /// <summary>When the plan was taken up; null for the first one.</summary>
    public Instant? Since { get; init; }

    /// <summary>What it changes against the one before.</summary>
    public ImmutableArray<ChangeView> Changes { get; init; } = [];
}
