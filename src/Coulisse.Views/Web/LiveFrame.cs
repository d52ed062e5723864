using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using NodaTime;

namespace Coulisse.Views.Web;

/// <summary>The state of a run as every screen shows it. Made on the server by the one fold; a screen without network goes on from its last one.</summary>
/// <param name="Run">Run.</param>
/// <param name="NowMs">Server's clock when this was made, ms since 1970.</param>
/// <param name="StartMs">Moment at which second 0 of the slot is.</param>
/// <param name="Late">Seconds behind; negative when ahead.</param>
/// <param name="Drift">The same in words.</param>
/// <param name="Gates">Segments that have begun, with the second they began at.</param>
/// <param name="Dropped">Segments whose droppable seconds are given up.</param>
/// <param name="Ways">At most three solved ways out.</param>
/// <param name="Notes">What people wrote, newest first.</param>
/// <param name="Gone">People who have left.</param>
/// <param name="Unread">Reports that fit nothing in the plan; kept in the log.</param>
public sealed record LiveFrame(
    string Run, long NowMs, long StartMs, int Late, string Drift, ImmutableArray<GateMark> Gates, ImmutableArray<int> Dropped,
    ImmutableArray<WayView> Ways, ImmutableArray<NoteView> Notes, ImmutableArray<string> Gone, int Unread)
{
    /// <summary>Tasks somebody has begun, ended, lost or left out.</summary>
    public ImmutableArray<TaskMark> Tasks { get; init; } = [];

    /// <summary>Kit that broke, by code.</summary>
    public ImmutableArray<string> Broken { get; init; } = [];

    /// <summary>Segments that are not as long as planned, by what was called.</summary>
    public ImmutableArray<SegmentLength> Lengths { get; init; } = [];

    /// <summary>What was called while the slot runs, each of which can be taken back.</summary>
    public ImmutableArray<SlotCall> Calls { get; init; } = [];

    /// <summary>The plan that is followed now: a run may go on by another plan than the one it began with.</summary>
    public string PlanId { get; init; } = "";

    /// <summary>When that plan was taken up, ms since 1970; 0 when it is still the first one.</summary>
    public long PlanSinceMs { get; init; }

    /// <summary>What it changes against the plan before it, person by person; empty for the first one.</summary>
    public ImmutableArray<ChangeView> Changes { get; init; } = [];

    /// <summary>Makes the frame.</summary>
    /// <param name="run">Run.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="state">Folded state; its times are on the plan's own clock.</param>
    /// <param name="now">Server's clock.</param>
    /// <param name="start">Moment of second 0.</param>
    public static LiveFrame From(string run, Plan plan, LiveState state, Instant now, Instant start)
    {
        int late = SlotLateness.At(plan, state)?.Late ?? 0;
        return new LiveFrame(
            run, now.ToUnixTimeMilliseconds(), start.ToUnixTimeMilliseconds(), late, Words(late, state.Gates.IsEmpty),
            [.. state.Gates.Select(g => new GateMark(g.Key, (int)Period.Between(plan.SlotStart, g.Value, PeriodUnits.Seconds).Seconds))],
            [.. state.Dropped],
            [.. SlotRecovery.Ways(plan, state).Select(w => new WayView(w.Sentence, w.Calls, LengthsBy(w.Cuts, plan, SlotCalls.Saved(plan, state))))],
            [.. state.Notes.Reverse().Take(30).Select(n => new NoteView(n.By, n.Text, n.At.ToUnixTimeMilliseconds()))],
            [.. state.Gone.Keys],
            state.NotUnderstood.Length)
        {
            Broken = [.. state.Broken.Keys],
            Lengths = LengthsBy(ImmutableSortedDictionary<int, int>.Empty, plan, SlotCalls.Saved(plan, state)),
            Calls = [.. state.Dropped.Select(SlotCall.Drop), .. state.Early.Keys.Select(SlotCall.Early), .. state.LeftOut.Select(SlotCall.Skip)],
            Tasks = [.. state.Started.Keys.Concat(state.Done.Keys).Concat(state.Lost.Keys).Concat(state.Skipped).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
                .Select(t => new TaskMark(t, state.Lost.ContainsKey(t) ? "lost" : state.Skipped.Contains(t) ? "skipped" : state.Done.ContainsKey(t) ? "done" : "begun"))],
        };
    }

    private static ImmutableArray<SegmentLength> LengthsBy(ImmutableSortedDictionary<int, int> cuts, Plan plan, ImmutableSortedDictionary<int, int> saved)
        => [.. cuts.Keys.Union(saved.Keys).Order().Select(n => new SegmentLength(n, Math.Max(0, plan.RunSheet.First(s => s.Number == n).Seconds - saved.GetValueOrDefault(n) - cuts.GetValueOrDefault(n))))];

    /// <summary>Drift in words: within five seconds is on time.</summary>
    public static string Words(int late, bool before) => before ? "not begun" : Math.Abs(late) < 5
        ? "on time"
        : string.Create(CultureInfo.InvariantCulture, $"{Figures.Lasting(Math.Abs(late), CultureInfo.InvariantCulture)} {(late > 0 ? "behind" : "ahead")}");
}

/// <summary>A task somebody has reported on.</summary>
/// <param name="Id">Task.</param>
/// <param name="State">begun, done, skipped or lost.</param>
public sealed record TaskMark(string Id, string State);

/// <summary>What a new plan changes for one person.</summary>
/// <param name="Who">Name; "By itself" for what nobody has hands on.</param>
/// <param name="What">Only what changed.</param>
public sealed record ChangeView(string Who, string What)
{
    /// <summary>Splits the sentences that tell what moved ("Ada: x at 10:00 instead of 09:40.").</summary>
    public static ImmutableArray<ChangeView> From(IEnumerable<string> sentences)
        => [.. sentences.Select(s => s.IndexOf(": ", StringComparison.Ordinal) is int at and > 0 ? new ChangeView(s[..at], s[(at + 2)..]) : new ChangeView("", s))];
}

/// <summary>What a plan changes against the copy somebody has.</summary>
/// <param name="PlanId">The plan followed now.</param>
/// <param name="Copy">"paper" for a printed brief, "page" for what a page showed; empty when the copy holds.</param>
/// <param name="Changes">Person by person.</param>
public sealed record CopyChanges(string PlanId, string Copy, ImmutableArray<ChangeView> Changes);

/// <summary>A way to go on, solved and checked: taking it makes its plan the one that is followed.</summary>
/// <param name="Id">By which it is taken.</param>
/// <param name="Sentence">One sentence.</param>
/// <param name="Changes">What it changes, person by person.</param>
public sealed record SolvedWay(string Id, string Sentence, ImmutableArray<ChangeView> Changes);

/// <summary>Ways to go on, or why there is none.</summary>
/// <param name="Ways">At most three.</param>
/// <param name="Says">What is to be known of them.</param>
public sealed record SolvedWays(ImmutableArray<SolvedWay> Ways, string Says);

/// <summary>A segment that has begun.</summary>
/// <param name="Number">Segment.</param>
/// <param name="Second">Second of the slot.</param>
public sealed record GateMark(int Number, int Second);

/// <summary>A way out.</summary>
/// <param name="Sentence">One sentence.</param>
/// <param name="Calls">What is reported when it is taken.</param>
/// <param name="Lengths">Segments that are then not as long as planned.</param>
public sealed record WayView(string Sentence, ImmutableArray<SlotCall> Calls, ImmutableArray<SegmentLength> Lengths);

/// <summary>How long a segment is by what was called.</summary>
/// <param name="Number">Segment.</param>
/// <param name="Seconds">Seconds; 0 when it is left out.</param>
public sealed record SegmentLength(int Number, int Seconds);

/// <summary>A note.</summary>
/// <param name="By">Who.</param>
/// <param name="Text">What.</param>
/// <param name="AtMs">When.</param>
public sealed record NoteView(string By, string Text, long AtMs);

/// <summary>The page of a run, for one person.</summary>
/// <param name="Run">Run.</param>
/// <param name="Role">Whose page; empty for the chef's own machine.</param>
/// <param name="Token">Role link; empty on the chef's own machine.</param>
/// <param name="Rehearsal">True for a rehearsal.</param>
/// <param name="Plan">The plan as shown.</param>
public sealed record LivePageView(string Run, string Role, string Token, bool Rehearsal, PlanView Plan)
{
    /// <summary>Language of the phrases, ISO 639-1; the plan's own words stay as the card has them.</summary>
    public string Language { get; init; } = "en";
}

/// <summary>The links of a run.</summary>
/// <param name="Run">Run.</param>
/// <param name="Title">Occasion.</param>
/// <param name="Network">Whether tablets can reach the bench; if not, only this machine opens the links.</param>
/// <param name="Links">One a person.</param>
public sealed record LiveLinksView(string Run, string Title, bool Network, ImmutableArray<LiveLink> Links);

/// <summary>A person's link as an address and as a square code.</summary>
/// <param name="Name">Whose.</param>
/// <param name="Address">Address.</param>
/// <param name="Size">Modules a side.</param>
/// <param name="Path">Dark modules as an SVG path.</param>
public sealed record LiveLink(string Name, string Address, int Size, string Path);
