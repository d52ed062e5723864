using System.Collections.Concurrent;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Threading.Channels;
using Coulisse.Cards;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Plans;
using NodaTime;

namespace Coulisse.Web.Live;

/// <summary>Runs: takes reports, folds them, tells every screen. All of it is in the store, so a restart loses nothing.</summary>
internal sealed class LiveDesk(KitchenStore store, OccasionShelf shelf, TimeProvider clock)
{
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

        Plan read = TravelJson.Read<Plan>(plan.Json);
        // names of people and kit come from the occasion; when that no longer reads, from the plan itself
        Occasion occasion = await shelf.OpenAsync(plan, cancel) is Parsed<KeptOccasion>.Ok(var o) ? o.Occasion : FromPlan(read);
        return _open[run] = new OpenRun(run, kept, read, occasion);
    }

    /// <summary>The state now.</summary>
    public async Task<LiveFrame> FrameAsync(OpenRun run, CancellationToken cancel)
    {
        Instant now = Instant.FromDateTimeOffset(clock.GetUtcNow());
        Instant start = Instant.FromDateTimeOffset(run.Kept.Started);
        // the plan's clock reads the slot's start at second 0, whenever the run was begun: a rehearsal is judged like the day itself
        Duration shift = run.Plan.SlotStart.InUtc().ToInstant() - start;
        LiveLog log = await store.LogAsync(run.Id, cancel);
        LiveLog shifted = log with { Events = [.. log.Events.Select(e => e with { At = e.At + shift })] };
        LiveFrame frame = LiveFrame.From(run.Id, run.Plan, LiveFold.Fold(run.Occasion, run.Plan, shifted, DateTimeZone.Utc, now + shift), now, start);
        long back = (long)shift.TotalMilliseconds;
        return frame with { Notes = [.. frame.Notes.Select(n => n with { AtMs = n.AtMs - back })] };
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
internal sealed record OpenRun(string Id, KeptRun Kept, Plan Plan, Occasion Occasion);
