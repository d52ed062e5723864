using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using CsCheck;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Planning.Live;

/// <summary>Ten minutes: a gel with a twin, crisps, the plate. Figures by hand.</summary>
public class SlotRecoveryTests
{
    private static readonly LocalDateTime Noon = new(2026, 10, 10, 12, 0);

    private static readonly Plan Show = new()
    {
        Title = "show",
        SlotStart = Noon,
        SlotLength = Duration.FromSeconds(600),
        Tasks = [new PlannedTask { Id = "T1", Text = "set the gel", Kind = TaskKind.Work, Start = Noon.PlusHours(-3), End = Noon.PlusHours(-2) }],
        Twins = [new Twin { Number = 1, Component = "Gel", State = "set block", MadeBy = "T1", ReadyBy = Noon.PlusHours(-2), CueSecond = 140, BroughtBy = "Ben" }],
        RunSheet =
        [
            Segment(1, 0, 60, "", 5),
            Segment(2, 60, 120, "Gel", 3) with { Twins = [1], Who = Who(("Ada", "shows; no talking while the blender runs"), ("Ben", "brings twin 1")) },
            Segment(3, 180, 120, "Crisps", 2) with { DroppableSeconds = 30, DropRank = 1 },
            Segment(4, 300, 240, "Plate", 5),
            Segment(5, 540, 60, "", 5),
        ],
    };

    private static readonly Occasion House = new()
    {
        Title = "show", Sheet = new OccasionSheet { Title = "show" }, SlotStart = Noon, SlotLength = Duration.FromSeconds(600), SlotPlace = "stage", Guests = 4, Covers = 4,
        People = [new Person("Ada", "chef", "stage", [], ["all"], [], [], 1), new Person("Ben", "helper", "stage", [], ["all"], [], [], 1)],
    };

    [Fact]
    public void A_late_slot_has_three_ways_those_that_end_on_time_first()
    {
        // segment 2 begins 90 s late; 30 s may be dropped, the twin saves the 80 s before its cue, the crisps are 120 s
        ImmutableArray<WayOut> ways = SlotRecovery.Ways(Show, Fold(150, Gate(2, 150)));
        Assert.Equal(
        [
            "Bring twin 1 (Gel) in now and tell what leads up to it, shorten segment 3 by 0:10: the slot ends on time.",
            "Leave out segment 3 (Crisps): the slot ends on time.",
            "Shorten segment 3 by 0:30: the slot ends 1:00 late.",
        ], ways.Select(w => w.Sentence));
        Assert.Equal([0, 0, 60], ways.Select(w => w.Late));
        Assert.Equal([new SlotCall("early", "twin 1"), new SlotCall("drop", "3")], ways[0].Calls);
        Assert.Equal([2, 4, 5], ways[1].RunSheet.Select(s => s.Number));
    }

    [Fact]
    public void What_can_be_dropped_comes_before_what_is_not_shown()
    {
        ImmutableArray<WayOut> ways = SlotRecovery.Ways(Show, Fold(80, Gate(2, 80)));
        Assert.Equal("Shorten segment 3 by 0:20: the slot ends on time.", ways[0].Sentence);
        Assert.Equal(3, ways.Length);
        Assert.Empty(SlotRecovery.Ways(Show, Fold(60, Gate(2, 60))));
        Assert.Empty(SlotRecovery.Ways(Show, Fold(64, Gate(2, 64)))); // within five seconds is on time
        Assert.NotEmpty(SlotRecovery.Ways(Show, Fold(65, Gate(2, 65))));
        Assert.Empty(SlotRecovery.Ways(Show, Fold(60)));
    }

    [Fact]
    public void A_twin_saves_only_what_is_still_to_come_before_its_cue()
    {
        // 30 s of segment 2 are used: 50 of the 80 s are left to save; 6 s before the cue nothing is offered
        Assert.StartsWith("Bring twin 1 (Gel) in now and tell what leads up to it, shorten segment 3 by 0:30: the slot ends 0:10 late.", Early(Fold(180, Gate(2, 150))));
        Assert.Null(Early(Fold(224, Gate(2, 150))));
    }

    [Fact]
    public void In_a_segment_that_has_not_begun_a_twin_is_called_ahead()
        => Assert.Equal("In segment 2 bring twin 1 (Gel) in 1:20 early and tell what leads up to it: the slot ends on time.", Early(Fold(70, Gate(1, 70))));

    [Fact]
    public void A_twin_that_is_not_there_is_not_called()
    {
        Assert.NotNull(Early(Fold(150, Gate(2, 150))));
        Assert.Null(Early(Fold(150, Gate(2, 150), E("gone", "Ben"))));
        Assert.Null(Early(Fold(150, Gate(2, 150), E("lost", "T1"))));
        Assert.Null(Early(Fold(150, Gate(2, 150), E("skip", "T1"))));
        Plan late = Show with { Twins = [Show.Twins[0] with { ReadyBy = Noon.PlusSeconds(61) }] };
        Assert.DoesNotContain(SlotRecovery.Ways(late, Fold(150, Gate(2, 150))), w => w.Calls.Any(c => c.Kind == "early"));
    }

    [Fact]
    public void A_twin_takes_the_place_of_its_own_lead_up_only_and_of_nothing_that_must_be_seen()
    {
        WayOut? Of(Plan plan) => SlotRecovery.Ways(plan, LiveFold.Fold(House, plan, new LiveLog("r", [Gate(2, 150)]), DateTimeZone.Utc, At(150))).FirstOrDefault(w => w.Calls.Any(c => c.Kind == "early"));
        Plan With(int weight, string other) => Show with
        {
            Twins = [Show.Twins[0], Show.Twins[0] with { Number = 2, Component = other, CueSecond = 60, State = "bag" }],
            RunSheet = Show.RunSheet.SetItem(1, Show.RunSheet[1] with { Weight = weight, Twins = [1, 2] }),
        };
        Assert.NotNull(Of(With(3, "Gel")));
        Assert.Null(Of(With(3, "Crisps")));
        Assert.Null(Of(With(5, "Gel")));
        Assert.Null(Of(With(0, "Gel")));
    }

    [Theory]
    [InlineData(5, "shows")] // must be seen
    [InlineData(0, "shows")] // nobody weighed it
    [InlineData(2, "shows; wash jug, lid and blade, back before the next time it runs")] // work of its own
    public void What_must_be_seen_what_nobody_weighed_and_what_holds_other_work_is_not_left_out(int weight, string does)
    {
        Plan plan = Show with { RunSheet = Show.RunSheet.SetItem(2, Show.RunSheet[2] with { Weight = weight, Who = Who(("Ada", does)) }) };
        Assert.DoesNotContain(SlotRecovery.Ways(plan, Fold(150, Gate(2, 150))), w => w.Calls.Any(c => c.Kind == "skip"));
        Plan near = Show with { RunSheet = Show.RunSheet.SetItem(2, Show.RunSheet[2] with { Weight = 4, Who = Who(("Ada", "shows"), ("Ben", "brings twin 1; into SB at 82 °C, timer 45 min")) }) };
        Assert.Contains(SlotRecovery.Ways(near, Fold(150, Gate(2, 150))), w => w.Calls.Any(c => c.Kind == "skip"));
    }

    [Fact]
    public void What_was_called_counts_and_can_be_taken_back_without_its_gate()
    {
        LiveState called = Fold(150, Gate(2, 150), E("early", "twin 1", 150), E("skip", "3", 150));
        Assert.Equal([(2, 80), (3, 120)], SlotCalls.Saved(Show, called).Select(s => (s.Key, s.Value)));
        Assert.Empty(SlotRecovery.Ways(Show, called));
        LiveState back = Fold(160, Gate(2, 150), E("early", "twin 1", 150), E("skip", "3", 150), E("drop", "2", 151), E("undo", "twin 1", 155), E("undo", "skip 3", 156), E("undo", "drop 2", 157));
        Assert.Empty(SlotCalls.Saved(Show, back));
        Assert.True(back.Gates.ContainsKey(2) && back.NotUnderstood.IsEmpty);
        // a segment that begins after all is not left out
        Assert.Empty(Fold(300, Gate(2, 150), E("skip", "3", 160), Gate(3, 270)).LeftOut);
        Assert.Single(Fold(300, E("early", "twin 9", 150)).NotUnderstood);
    }

    [Fact]
    public void Whatever_was_reported_each_way_adds_up_to_the_second_and_keeps_what_must_be_seen()
    {
        string[] calls = ["drop 3", "skip 3", "early twin 1", ""];
        Gen.Select(Gen.Int[1, 5], Gen.Int[0, 400], Gen.Int[0, 200], Gen.Int[0, 3]).Sample((segment, lateness, used, call) =>
        {
            int gate = Show.RunSheet[segment - 1].StartSecond + lateness;
            string[] words = calls[call].Split(' ', 2);
            LiveState state = Fold(gate + used, [Gate(segment, gate), .. words.Length == 2 ? new[] { E(words[0], words[1], gate) } : []]);
            ImmutableArray<WayOut> ways = SlotRecovery.Ways(Show, state);
            Assert.InRange(ways.Length, 0, 3);
            Assert.Equal(ways.Length, ways.Select(w => w.Sentence).Distinct().Count());
            foreach (WayOut way in ways)
            {
                int at = gate;
                foreach (RunSegment s in way.RunSheet)
                {
                    Assert.Equal(at, s.StartSecond);
                    at += s.Seconds;
                }

                // on time may be early, since a whole segment is left out or none; late is late by just so much
                Assert.True(way.Late > 0 ? at == 600 + way.Late : at <= 600, way.Sentence);
                Assert.True(way.RunSheet[0].Seconds >= used - 0, "time that was used cannot be given back");
                Assert.Equal(Show.RunSheet.Where(s => s.Number >= segment && s.Weight == 5).Select(s => s.Number), way.RunSheet.Where(s => s.Weight == 5).Select(s => s.Number));
                LiveState taken = Fold(gate + used, [Gate(segment, gate), .. words.Length == 2 ? new[] { E(words[0], words[1], gate) } : [], .. way.Calls.Select((c, i) => E(c.Kind, c.Subject, gate + used, "way" + i.ToString(CultureInfo.InvariantCulture)))]);
                Assert.True(SlotRecovery.Ways(Show, taken).Select(w => w.Late).DefaultIfEmpty(0).Min() <= way.Late, way.Sentence);
            }
        });
    }

    private static string? Early(LiveState state) => SlotRecovery.Ways(Show, state).FirstOrDefault(w => w.Calls.Any(c => c.Kind == "early"))?.Sentence;

    private static LiveState Fold(int second, params LiveEvent[] events) => LiveFold.Fold(House, Show, new LiveLog("r", [.. events]), DateTimeZone.Utc, At(second));

    private static Instant At(int second) => Noon.PlusSeconds(second).InUtc().ToInstant();

    private static LiveEvent Gate(int segment, int second) => E("gate", segment.ToString(CultureInfo.InvariantCulture), second);

    private static LiveEvent E(string kind, string subject, int second = 0, string id = "") => new(id.Length > 0 ? id : $"{kind} {subject}", At(second), kind, subject, "Ada");

    private static ImmutableSortedDictionary<string, string> Who(params (string Name, string Does)[] all) => all.ToImmutableSortedDictionary(w => w.Name, w => w.Does, StringComparer.Ordinal);

    private static RunSegment Segment(int number, int start, int seconds, string component, int weight) => new() { Number = number, StartSecond = start, Seconds = seconds, Show = component.Length > 0 ? component : "talk", Component = component, Weight = weight, Who = Who(("Ada", component.Length > 0 ? "shows" : "speaks")) };
}
