using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Tests;
using CsCheck;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Planning.Slot;

public sealed class LiveSlotTests
{
    private static readonly OccasionSheet Sheet = OccasionReader.Read(File.ReadAllText(Demo("occasion.md")), new LocalDate(2026, 10, 1))
        .Match(s => s, p => throw new InvalidOperationException(string.Join("; ", p)));

    [Fact]
    public void The_demo_slot_sums_to_the_second_and_shows_everything()
    {
        SlotPlan plan = LiveSlot.Decide(Occasion());
        Assert.Equal(1500, plan.Segments.Sum(s => s.Seconds));
        Assert.Empty(plan.NotShown);
        Assert.Equal(plan.Level.Value, plan.Level.Bound);
        Report(plan);
    }

    [Fact]
    public void The_two_bakes_at_two_temperatures_go_to_two_ovens()
    {
        // Worked answer P1 of the demo occasion: 160 °C in the stage oven, 170 °C in the other.
        SlotPlan plan = LiveSlot.Decide(Occasion());
        Assert.Contains(plan.Kit, k => k is { Kit: "SO", Celsius: 160 });
        Assert.Contains(plan.Kit, k => k is { Kit: "BO", Celsius: 170 });
        Assert.Contains(plan.Assumed, a => a.Contains("BO", StringComparison.Ordinal));
    }

    [Fact]
    public void With_one_oven_less_the_second_bake_is_said_not_to_be_baked()
    {
        SlotPlan plan = LiveSlot.Decide(Occasion() with { Kit = [.. Sheet.Kit.Where(k => k.Code != "BO")] });
        Assert.DoesNotContain(plan.Kit, k => k.Celsius == 170);
        Assert.Contains(plan.Assumed, a => a.StartsWith("No oven is free at 170 °C", StringComparison.Ordinal));
    }

    [Fact]
    public void The_blender_never_runs_in_two_segments_in_a_row()
    {
        ImmutableArray<RunSegment> segments = LiveSlot.Decide(Occasion()).Segments;
        Assert.Equal(2, segments.Count(s => s.Silence));
        Assert.DoesNotContain(segments.Zip(segments.Skip(1)), p => p.First.Silence && p.Second.Silence);
    }

    [Theory]
    [InlineData(1500)]
    [InlineData(1200)]
    [InlineData(900)]
    [InlineData(2700)]
    public void Every_length_of_slot_sums_exactly_with_a_tenth_that_can_be_dropped(int seconds)
    {
        SlotPlan plan = LiveSlot.Decide(Occasion() with { SlotLength = Duration.FromSeconds(seconds) });
        Assert.Equal(seconds, plan.Segments.Sum(s => s.Seconds));
        int at = 0;
        foreach (RunSegment s in plan.Segments)
        {
            Assert.Equal(at, s.StartSecond);
            Assert.True(s.Seconds > 0 && s.DroppableSeconds <= s.Seconds);
            at += s.Seconds;
        }

        Assert.True(plan.Segments.Sum(s => s.DroppableSeconds) >= seconds / 10, $"{plan.Segments.Sum(s => s.DroppableSeconds)} s of {seconds} can be dropped");
        Assert.Equal(plan.Segments.Where(s => s.DropRank > 0).Select(s => s.DropRank).Order(), Enumerable.Range(1, plan.Segments.Count(s => s.DropRank > 0)));
    }

    [Fact]
    public void A_shorter_slot_drops_the_lightest_rows_first_and_keeps_what_must_be_seen()
    {
        SlotPlan plan = LiveSlot.Decide(Occasion() with { SlotLength = Duration.FromMinutes(15) });
        Assert.NotEmpty(plan.NotShown);
        Assert.DoesNotContain(plan.NotShown, s => s.Weight == 5);
    }

    [Fact]
    public void Every_twin_comes_in_once_and_every_number_a_segment_names_exists()
    {
        SlotPlan plan = LiveSlot.Decide(Occasion());
        int[] named = [.. plan.Segments.SelectMany(s => s.Twins).Order()];
        Assert.Equal(plan.Twins.Select(t => t.Twin.Number).Order(), named);
        foreach (RunSegment s in plan.Segments)
        {
            Assert.All(plan.Twins.Where(t => s.Twins.Contains(t.Twin.Number)), t => Assert.InRange(t.Twin.CueSecond, s.StartSecond, s.StartSecond + s.Seconds));
        }
    }

    [Fact]
    public void Whose_role_says_so_hands_twins_in_and_goes_round_to_guests_with_diets()
    {
        Occasion demo = Occasion() with { Diets = Sheet.Diets };
        SlotPlan plan = LiveSlot.Decide(demo);

        // The sheet says of Noor that she hands swap-outs in and of Tomasz that the allergy round is his.
        Assert.All(plan.Twins.Where(t => !t.Twin.Stands), t => Assert.Equal("Noor", t.Twin.BroughtBy));
        Assert.StartsWith("allergy round: ask at seats 4, 5, 17, 23, 31, 40 ", plan.Segments[1].Who["Tomasz"], StringComparison.Ordinal);
        Assert.Contains("hand over by name: seats 4, 5, 17, 23, 31, 40", plan.Segments[^1].Who["Tomasz"], StringComparison.Ordinal);

        // No such role, or nobody with a diet: nobody is sent round.
        foreach (Occasion other in new[] { demo with { Diets = [] }, demo with { People = [.. demo.People.Select(p => p with { Role = p.Role.Replace("allergy", "lost", StringComparison.Ordinal) })] } })
        {
            Assert.DoesNotContain(LiveSlot.Decide(other).Segments.SelectMany(s => s.Who.Values), w => w.Contains("allergy", StringComparison.Ordinal) || w.Contains("by name", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_row_that_begins_or_finishes_has_the_twin_it_goes_on_from()
    {
        SlotPlan plan = LiveSlot.Decide(Occasion());
        foreach (SheetShow show in plan.Shown.Where(s => s.How is ShowKind.Begin or ShowKind.Finish && s.StepText is not "–"))
        {
            Assert.Contains(plan.Segments, s => s.Show.Contains(show.StepText, StringComparison.Ordinal) && s.Twins.Length > 0);
        }
    }

    [Fact]
    public void A_card_alone_without_a_list_of_what_is_shown_still_makes_a_slot()
    {
        SlotPlan plan = LiveSlot.Decide(Occasion() with { Shows = [], Dishes = [Occasion().Dishes[0]] });
        Assert.Equal(1500, plan.Segments.Sum(s => s.Seconds));
        Assert.Contains(plan.Assumed, a => a.StartsWith("Nothing says what is to be shown", StringComparison.Ordinal));
        Assert.Contains(plan.Shown, s => s.Component == "whole plate");
    }

    [Fact]
    public void The_sum_is_exact_for_any_slot_and_any_choice_of_rows()
        => Gen.Select(Gen.Int[240, 7200], Gen.Bool.Array[Sheet.Shows.Length]).Sample((seconds, keep) =>
        {
            SlotPlan plan = LiveSlot.Decide(Occasion() with { SlotLength = Duration.FromSeconds(seconds), Shows = [.. Sheet.Shows.Where((_, i) => keep[i])] });
            return plan.Segments.Sum(s => s.Seconds) == seconds
                && plan.Segments.All(s => s.Seconds > 0)
                && plan.Twins.Select(t => t.Twin.Number).Order().SequenceEqual(plan.Segments.SelectMany(s => s.Twins).Order());
        }, iter: 200);

    private static void Report(SlotPlan plan)
    {
        foreach (RunSegment s in plan.Segments)
        {
            TestContext.Current.TestOutputHelper?.WriteLine($"{s.Number,2} {s.StartSecond / 60:00}:{s.StartSecond % 60:00} {s.Seconds,4} s drop {s.DroppableSeconds,3} rank {s.DropRank} gate {s.Gate} | {s.Show} | {string.Join(" / ", s.Who.Select(w => w.Key + ": " + w.Value))} | kit {string.Join(",", s.Kit)} | twins {string.Join(",", s.Twins)}");
        }

        foreach (TwinNeed t in plan.Twins)
        {
            TestContext.Current.TestOutputHelper?.WriteLine($"W{t.Twin.Number} {t.Twin.Component}: {t.Twin.State}; {t.Twin.Count} x {t.Twin.Grams} g; {t.Twin.Holds}; {t.Twin.Place}; {t.Twin.BroughtBy}; at {t.Twin.CueSecond}; for {t.Twin.Replaces}; then {t.Twin.Afterwards}; stage {t.StageLine} next {t.NextLine} own {t.OwnBatch}");
        }

        foreach (string a in plan.Assumed.Concat(plan.Fallbacks))
        {
            TestContext.Current.TestOutputHelper?.WriteLine(a);
        }
    }

    private static Occasion Occasion() => new()
    {
        Title = Sheet.Title,
        Sheet = Sheet,
        SlotStart = Sheet.SlotStart!.Value,
        SlotLength = Sheet.SlotLength!.Value,
        SlotPlace = Sheet.SlotPlace!,
        Guests = Sheet.Guests!.Value,
        Covers = Sheet.Guests!.Value + Sheet.Over!.Value,
        PlatedLive = Sheet.PlatedLive ?? 1,
        Dishes = [.. Sheet.Dishes.Select(d => new OccasionDish(d.Name, Card(d.CardPath), d.Count, d.Unit, d.For, d.CardPath))],
        People = [.. Sheet.People.Select(p => new Person(p.Name, p.Role, p.Place, p.Hours, p.Skills, p.Without, p.Languages, p.Speed))],
        Kit = Sheet.Kit,
        Circuits = Sheet.Circuits,
        Windows = Sheet.Windows,
        Meals = Sheet.Meals,
        Diets = Sheet.Diets,
        Shows = Sheet.Shows,
    };

    private static readonly Dictionary<string, Dish> Cards = new(StringComparer.Ordinal);

    private static Dish Card(string path)
    {
        lock (Cards)
        {
            if (!Cards.TryGetValue(path, out Dish? dish))
            {
                Cards[path] = dish = CardReader.Read(new CardText(File.ReadAllText(Demo(path)), path)).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));
            }

            return dish;
        }
    }

    private static string Demo(string path) => Path.Combine(SharedData.Repository, "examples", "demo", path);
}
