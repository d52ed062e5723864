using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using CsCheck;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Planning.Live;

public class LiveTests
{
    private static readonly LocalDateTime Noon = new(2026, 10, 10, 12, 0);
    private static readonly Plan Small = new()
    {
        Title = "small",
        SlotStart = Noon,
        SlotLength = Duration.FromSeconds(600),
        Tasks = [Task("T1", 0, 30), Task("T2", 30, 60)],
        RunSheet = [Segment(1, 0, 120), Segment(2, 120, 240, 60, 1), Segment(3, 360, 120, 120, 2), Segment(4, 480, 120)],
    };

    private static readonly Occasion House = new()
    {
        Title = "small",
        Sheet = new OccasionSheet { Title = "small" },
        SlotStart = Noon,
        SlotLength = Duration.FromSeconds(600),
        SlotPlace = "stage",
        Guests = 4,
        Covers = 4,
        People = [new Person("Ada", "chef", "stage", [], ["all"], [], [], 1)],
        Kit = [new SheetKit("O1", "oven", "oven", "back", 1, "", 0)],
    };

    [Fact]
    public void What_is_reported_becomes_a_state()
    {
        LiveState s = Fold([E("a", -20, "start", "T1"), E("b", -5, "done", "T1"), E("c", -4, "gone", "Ada"), E("d", -3, "broken", "O1"), E("e", -2, "note", "T1")]);
        Assert.Equal(Noon.PlusMinutes(-20), s.Started["T1"]);
        Assert.Equal(Noon.PlusMinutes(-5), s.Done["T1"]);
        Assert.False(s.Running("T1"));
        Assert.True(s.Gone.ContainsKey("Ada") && s.Broken.ContainsKey("O1"));
        Assert.Single(s.Notes);
        Assert.Empty(s.NotUnderstood);
    }

    [Fact]
    public void An_undo_takes_a_report_back_and_an_unknown_subject_is_kept()
    {
        LiveState s = Fold([E("a", -20, "start", "T1"), E("b", -5, "undo", "T1"), E("c", -4, "start", "T9"), E("d", -3, "sung", "T1")]);
        Assert.False(s.Running("T1"));
        Assert.Equal(2, s.NotUnderstood.Length);
    }

    [Fact]
    public void What_is_done_without_a_start_began_as_planned_but_never_after_its_end()
    {
        Assert.Equal(Noon, Fold([E("a", 20, "done", "T1")], 25).Started["T1"]);
        Assert.Equal(Noon.PlusMinutes(-40), Fold([E("a", -10, "done", "T1")]).Started["T1"]);
    }

    [Fact]
    public void Order_of_arrival_and_repeats_change_nothing()
    {
        string[] kinds = ["start", "done", "undo", "lost", "skip", "gone", "broken", "gate", "drop", "note"];
        string[] subjects = ["T1", "T2", "Ada", "O1", "1", "2", "3", "X"];
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 7], Gen.Int[-60, 0], (k, s, m) => (k, s, m)).List[1, 20].Select(Gen.Int[0, 1000], (l, seed) => (l, seed)).Sample((l, seed) =>
        {
            LiveEvent[] events = [.. l.Select((x, i) => E("e" + i, x.m, kinds[x.k], subjects[x.s]))];
            LiveEvent[] again = [.. events, .. events.Take(5)];
            new Random(seed).Shuffle(again);
            return Same(Fold(events), Fold(again));
        });

        static bool Same(LiveState a, LiveState b) => a.Started.SequenceEqual(b.Started) && a.Done.SequenceEqual(b.Done) && a.Lost.SequenceEqual(b.Lost)
            && a.Skipped.SequenceEqual(b.Skipped) && a.Gone.SequenceEqual(b.Gone) && a.Broken.SequenceEqual(b.Broken)
            && a.Gates.SequenceEqual(b.Gates) && a.Dropped.SequenceEqual(b.Dropped) && a.Notes.SequenceEqual(b.Notes) && a.NotUnderstood.SequenceEqual(b.NotUnderstood);
    }

    [Fact]
    public void A_slot_on_time_has_no_ways_out()
    {
        Assert.Empty(SlotLateness.WaysOut(Small, Fold([Gate("a", 1, 0), Gate("b", 2, 120)], 3)));
        Assert.Empty(SlotLateness.WaysOut(Small, Fold([], 3)));
    }

    [Fact]
    public void A_slot_late_by_less_than_a_drop_shortens_that_one_by_rank()
    {
        // Segment 2 begun 45 s late: rank 1 gives 45 of its 60 s, and the slot ends at 10:00.
        LiveState s = Fold([Gate("b", 2, 165)], 3);
        Assert.Equal(45, SlotLateness.At(Small, s)!.Value.Late);
        WayOut first = SlotLateness.WaysOut(Small, s)[0];
        Assert.Equal("Shorten segment 2 by 0:45: the slot ends on time.", first.Sentence);
        Assert.Equal(600, first.RunSheet[^1].StartSecond + first.RunSheet[^1].Seconds);
        Assert.Equal("Shorten segment 3 by 0:45: the slot ends on time.", SlotLateness.WaysOut(Small, s)[1].Sentence);
        WayOut none = SlotLateness.WaysOut(Small, s)[2];
        Assert.Equal("Change nothing: the slot ends 0:45 late.", none.Sentence);
        Assert.Equal(45, none.Late);
    }

    [Fact]
    public void Beyond_all_drops_the_least_over_is_said()
    {
        WayOut first = SlotLateness.WaysOut(Small, Fold([Gate("b", 2, 330)], 6))[0];
        Assert.Equal("Shorten segment 2 by 1:00 and leave out segment 3: the slot ends 0:30 late.", first.Sentence);
        Assert.Equal(30, first.Late);
    }

    [Fact]
    public void A_segment_that_overruns_costs_what_it_has_used_and_cannot_be_cut_below_it()
    {
        // Segment 2 begun on time at 120 s, now at 400 s: 40 s over its 240, nothing of it left to drop.
        LiveState s = new() { Now = Noon.PlusSeconds(400), Gates = ImmutableSortedDictionary<int, LocalDateTime>.Empty.Add(2, Noon.PlusSeconds(120)) };
        WayOut first = SlotLateness.WaysOut(Small, s)[0];
        Assert.Equal("Shorten segment 3 by 0:40: the slot ends on time.", first.Sentence);
        Assert.Equal(400, first.RunSheet[1].StartSecond);
    }

    [Fact]
    public void A_drop_already_called_is_not_offered_again() =>
        Assert.Equal(
            "Shorten segment 3 by 0:20: the slot ends on time.",
            SlotLateness.WaysOut(Small, Fold([Gate("b", 2, 200), E("c", 3, "drop", "2")], 4))[0].Sentence);

    private static LiveState Fold(LiveEvent[] events, int minutes = 0) =>
        LiveFold.Fold(House, Small, new LiveLog("r", [.. events]), DateTimeZone.Utc, At(minutes));

    private static Instant At(int minutes) => Noon.PlusMinutes(minutes).InUtc().ToInstant();

    private static LiveEvent E(string id, int minutes, string kind, string subject) => new(id, At(minutes), kind, subject, "Ada");

    private static LiveEvent Gate(string id, int segment, int second) => new(id, Noon.PlusSeconds(second).InUtc().ToInstant(), "gate", segment.ToString(System.Globalization.CultureInfo.InvariantCulture), "Ada");

    private static PlannedTask Task(string id, int from, int to) => new() { Id = id, Text = id, Kind = TaskKind.Work, Start = Noon.PlusMinutes(from), End = Noon.PlusMinutes(to) };

    private static RunSegment Segment(int number, int start, int seconds, int drop = 0, int rank = 0) => new() { Number = number, StartSecond = start, Seconds = seconds, Show = "s", DroppableSeconds = drop, DropRank = rank };
}
