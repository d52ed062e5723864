using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Risk;
using Coulisse.Kitchen.Planning.Slot;
using NodaTime;

namespace Coulisse.Solver.Tests;

/// <summary>What could be shown instead, what rehearsals tell, what a buffer buys.</summary>
public sealed class ChoiceTests
{
    [Fact]
    public void With_few_rows_the_frontier_is_what_trying_every_choice_gives()
    {
        Occasion few = DemoOccasion.Occasion with { Shows = [.. DemoOccasion.Occasion.Shows.Where((_, i) => i % 3 == 0)] };
        Assert.InRange(few.Shows.Length, 4, ShowFrontier.Exhaustive);
        ImmutableArray<ShowPoint> points = ShowFrontier.Of(few);
        (double Value, int Twins, double Grams)[] all = [.. Enumerable.Range(1, (1 << few.Shows.Length) - 1).Select(bits =>
        {
            SlotPlan slot = LiveSlot.Decide(few with { Shows = [.. few.Shows.Where((_, i) => (bits >> i & 1) == 1)] });
            return ((double)slot.Shown.Sum(s => s.Weight), slot.Twins.Length, slot.Twins.Where(t => t.OwnBatch || t.Beyond).Sum(t => t.Twin.Grams ?? 0));
        })];
        foreach (ShowPoint p in points)
        {
            Assert.Contains((p.Value, p.Twins, p.Grams), all);
        }

        foreach ((double value, int twins, double grams) in all)
        {
            Assert.Contains(points, p => p.Value >= value && p.Twins <= twins && p.Grams <= grams + 1e-9);
        }
    }

    [Fact]
    public void No_point_of_the_whole_frontier_beats_another_and_the_first_shows_what_the_slot_shows()
    {
        ImmutableArray<ShowPoint> points = ShowFrontier.Of(DemoOccasion.Occasion);
        Assert.True(points.Length >= 5);
        Assert.Equal(LiveSlot.Decide(DemoOccasion.Occasion).Shown.Sum(s => s.Weight), points[0].Value);
        Assert.All(points, p => Assert.DoesNotContain(points, q => q != p && q.Value >= p.Value && q.Twins <= p.Twins && q.Grams <= p.Grams));

        // Picking a point is planning its rows: all of them are shown again.
        ShowPoint middle = points[points.Length / 2];
        Assert.Equal(middle.Shows.AsEnumerable(), LiveSlot.Decide(DemoOccasion.Occasion with { Shows = middle.Shows }).Shown);
    }

    [Fact]
    public void Rehearsals_give_the_seconds_between_gates_and_leave_out_what_was_dropped()
    {
        Plan plan = Slot();
        LiveLog one = Log((1, 0), (2, 70), (3, 190));
        LiveLog two = Log((1, 10), (2, 90), (3, 200));
        LiveLog dropped = new("r", [.. Log((1, 0), (2, 30), (3, 100)).Events, new LiveEvent("d", Instant.FromUnixTimeSeconds(5), "drop", "1", "")]);
        ImmutableSortedDictionary<int, ImmutableArray<double>> seconds = Rehearsals.Seconds(plan, [one, two, dropped]);
        Assert.Equal([70, 80], seconds[1]);
        Assert.Equal([120, 110, 70], seconds[2]);
        Assert.False(seconds.ContainsKey(3));
    }

    [Theory]
    [InlineData(60, 100, 1, 1)] // as planned: always in time
    [InlineData(75, 100, 0, 1)] // 15 s over, 20 s may be dropped later
    [InlineData(90, 100, 0, 0)] // 30 s over, 20 s may be dropped: too late
    public void The_slot_under_rehearsed_lengths_is_what_one_reckons_by_hand(double first, double second, double plain, double withDrops)
    {
        SlotRiskReport r = SlotRisk.Simulate(Slot(), ImmutableSortedDictionary<int, ImmutableArray<double>>.Empty.Add(1, [first, first]).Add(2, [second, second]).Add(3, [20, 20]), 200);
        Assert.Equal((plain, withDrops), (r.OnTime, r.OnTimeWithDrops));
        Assert.Equal(withDrops > plain || withDrops == 0 ? 1 : 0, r.Segments[1].Dropped);
    }

    [Fact]
    public void Everything_due_earlier_is_a_valid_plan_that_is_no_less_sure()
    {
        Plan plain = Planned(0);
        Plan early = Planned(20);
        Assert.Empty(Kitchen.Planning.Checking.PlanValidator.Check(DemoOccasion.Occasion, early).Select(f => f.Words));
        RiskReport before = RiskOfPlan.Simulate(DemoOccasion.Occasion, plain, runs: 2000);
        RiskReport after = RiskOfPlan.Simulate(DemoOccasion.Occasion, early, runs: 2000);
        Assert.True(after.OnTimeHigh >= before.OnTimeLow, $"{before.OnTime} and with a buffer {after.OnTime}");
        LocalDateTime Last(Plan p) => p.Tasks.Where(t => t.Kind == TaskKind.Plate).Max(t => t.End);
        Assert.True(Last(early) <= DemoOccasion.Occasion.SlotStart.PlusMinutes(-Kitchen.Planning.Tasks.TaskBuilder.ReadyBefore - 20));
    }

    private static Plan Planned(int buffer) => Assert.IsType<Plan>(new CpSatPlanner().Plan(DemoOccasion.Occasion, DemoOccasion.Batches, new PlanOptions(60) { FirstOnly = true, Buffer = buffer }));

    private static Plan Slot() => new()
    {
        Title = "three segments",
        SlotStart = new LocalDateTime(2026, 3, 7, 14, 0),
        SlotLength = Duration.FromSeconds(180),
        RunSheet =
        [
            new RunSegment { Number = 1, StartSecond = 0, Seconds = 60, Show = "one" },
            new RunSegment { Number = 2, StartSecond = 60, Seconds = 100, Show = "two", DroppableSeconds = 20, DropRank = 1 },
            new RunSegment { Number = 3, StartSecond = 160, Seconds = 20, Show = "three" },
        ],
    };

    private static LiveLog Log(params (int Segment, int Second)[] gates)
        => new("r", [.. gates.Select(g => new LiveEvent(g.Segment.ToString(System.Globalization.CultureInfo.InvariantCulture), Instant.FromUnixTimeSeconds(1000 + g.Second), "gate", g.Segment.ToString(System.Globalization.CultureInfo.InvariantCulture), ""))]);
}
