using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Edits;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Checking;

/// <summary>Each row spoils the faultless plan by a known amount, and then by just too little to be a fault.</summary>
public sealed class PlantedFaults
{
    private sealed record Planting(double By, Func<Plan, Plan> Fault, Func<Plan, Plan> Near);

    private static readonly ImmutableSortedDictionary<string, Planting> All = new Dictionary<string, Planting>
    {
        ["pinned-missing"] = new(1, p => p with { Edits = new() { Pins = [new Pin("nowhere", null, "Ann")] } }, Edited("gel", e => e with { Pins = [new Pin("k", null, "Ben")] })),
        ["pin-not-kept"] = new(5, Edited("gel", e => e with { Pins = [new Pin("k", SmallHouse.Day.PlusMinutes(25))] }), Edited("gel", e => e with { Pins = [new Pin("k", SmallHouse.Day.PlusMinutes(20))] })),
        ["forbidden"] = new(4, Edited("gel", e => e with { Forbids = [new Forbid("k", SmallHouse.Day.PlusMinutes(26), SmallHouse.Day.PlusMinutes(90))] }), Edited("gel", e => e with { Forbids = [new Forbid("k", SmallHouse.Day.PlusMinutes(30), SmallHouse.Day.PlusMinutes(90))] })),
        ["order-not-kept"] = new(500, p => On("cut", t => t with { Key = "l" })(Edited("gel", e => e with { Sequences = [new Sequence("l", "k")] })(p)), p => On("cut", t => t with { Key = "l" })(Edited("gel", e => e with { Sequences = [new Sequence("k", "l")] })(p))),
        ["step-not-planned"] = new(1, Without("gel"), Without("wash")),
        ["line-unknown"] = new(1, On("gel", t => t with { Dish = "Custard", Line = 21 }), On("gel", t => t with { Dish = "Custard" })),
        ["steps-out-of-order"] = new(5, On("cut", t => At(t, 495, 520)), On("cut", t => At(t, 500, 520))),
        ["wait-too-short"] = new(10, p => On("cut", t => At(t, 430, 450))(On("chill", t => At(t, 80, 430))(p)), p => On("cut", t => At(t, 440, 450))(On("chill", t => At(t, 80, 440))(p))),
        ["cooked-too-short"] = new(2, On("bake", t => At(t, 20, 58)), On("bake", t => At(t, 20, 62))),
        ["wait-too-long"] = new(5, On("chill", t => At(t, 95, 500)), On("chill", t => At(t, 90, 500))),
        ["kept-too-long"] = new(60, Later(60 + (72 * 60) - 1420), Later((72 * 60) - 1420)),
        ["not-same-day"] = new(1, On("crust", t => At(t, 100, 110)), On("crust", t => At(t, 1440, 1450))),
        ["twin-kept-too-long"] = new(31, p => Ready(1921 - 4320 - 31)(p), Ready(1921 - 4320)),
        ["twin-not-same-day"] = new(1, p => p with { Twins = [p.Twins[0] with { Component = "Crust" }] }, p => p with { Twins = [p.Twins[0] with { Component = "Crust", ReadyBy = SmallHouse.Day.PlusHours(20) }] }),
        ["not-washed"] = new(2, Without("wash"), On("wash", t => t with { Removes = [] })),
        ["set-point-change-too-short"] = new(1.5, Add(SmallHouse.Task("hot", TaskKind.Unattended, 61, 70, null, 0, null, "OV") with { Celsius = 170 }), Add(SmallHouse.Task("hot", TaskKind.Unattended, 63, 70, null, 0, null, "OV") with { Celsius = 170 })),
        ["not-silent"] = new(1, Segment(1, s => s with { Silence = false }), Segment(1, s => s with { Silence = false, Kit = ["OV"] })),
        ["no-gate"] = new(1, Segment(0, s => s with { Gate = false }), p => Segment(1, s => s with { Gate = true })(Segment(0, s => s with { Gate = false })(p))),
        ["drop-unranked"] = new(60, Segment(0, s => s with { DropRank = 0 }), Segment(0, s => s with { DropRank = 0, DroppableSeconds = 0 })),
        ["drop-rank-twice"] = new(1, Segment(0, s => s with { DropRank = 2 }), Segment(0, s => s with { DropRank = 3 })),
        ["drop-too-long"] = new(1, Segment(0, s => s with { DroppableSeconds = 601 }), Segment(0, s => s with { DroppableSeconds = 600 })),
        ["segment-empty"] = new(0, Segment(0, s => s with { Seconds = 0 }), Segment(0, s => s with { Seconds = 1 })),
        ["segment-kit-unknown"] = new(1, Segment(0, s => s with { Kit = ["XX"] }), Segment(0, s => s with { Kit = ["OV"] })),
        ["segment-person-unknown"] = new(1, Segment(0, s => s with { Who = s.Who.Add("Zoe", "") }), Segment(0, s => s with { Who = s.Who.Add("Ben", "") })),
        ["plated-late"] = new(3, On("plate", t => At(t, 1880, 1923)), On("plate", t => At(t, 1920, 1940))),
        ["nobody-on-it"] = new(20, On("cut", t => t with { People = [] }), On("chill", t => t with { People = [] })),
        ["skill-lacking"] = new(1, On("crust", t => t with { People = ["Ben"] }), On("crust", t => t with { People = ["Ann"] })),
        ["too-few-hands"] = new(1, On("crust", t => t with { People = ["Ann"] }), On("crust", t => t with { People = ["Ann", "Flo"] })),
        ["kit-elsewhere"] = new(1, On("blend", t => t with { Place = "cellar" }), On("blend", t => t with { Place = "front" })),
        ["kit-while-moved"] = new(7, Add(SmallHouse.Task("warm", TaskKind.Unattended, 300, 367, null, 0, null, "SB")), Add(SmallHouse.Task("warm", TaskKind.Unattended, 300, 360, null, 0, null, "SB"))),
        ["kit-two-places"] = new(2, Add(SmallHouse.Task("both", TaskKind.Work, 600, 601, null, 0, "Ann", "SB") with { Kit = ["SB", "OV"] }), Add(SmallHouse.Task("both", TaskKind.Work, 300, 301, null, 0, "Ann", "SB") with { Kit = ["SB", "OV"] })),
        ["outside-windows"] = new(10, On("cut", t => At(t, 590, 610)), p => On("cut", t => At(t, 580, 600))(On("chill", t => At(t, 80, 580))(p))),
        ["task-backwards"] = new(5, On("wipe", t => At(t, 95, 90)), On("wipe", t => At(t, 90, 90))),
        ["id-twice"] = new(1, On("wipe", t => t with { Id = "cut" }), On("wipe", t => t with { Id = "cut2" })),
        ["other-set-point"] = new(10, On("bake", t => t with { Celsius = 130 }), On("bake", t => t with { Celsius = null })),
    }.ToImmutableSortedDictionary();

    public static TheoryData<string> Codes => [.. All.Keys];

    [Fact]
    public void A_batch_begun_by_hand_and_cooking_by_itself_is_one_batch_and_is_done_when_it_has_cooked()
    {
        // Bake is put in by hand and bakes by itself; of the step before a second, later batch is made for the stage.
        Plan p = SmallHouse.Plan with
        {
            Tasks = [.. SmallHouse.Plan.Tasks, SmallHouse.Task("in by hand", TaskKind.Work, 18, 20, "D1", 11, "Ben", null), SmallHouse.Task("for the stage", TaskKind.Work, 1500, 1505, "Custard", 10, "Ben", null)],
        };
        Assert.DoesNotContain(PlanValidator.Check(SmallHouse.Occasion, p), f => f.Code == "steps-out-of-order");

        // Chilled 10 minutes before the oven is done, although the hands were done long before.
        PlanFault early = Assert.Single(PlanValidator.Check(SmallHouse.Occasion, On("chill", t => At(t, 50, 500))(p)), f => f.Code == "steps-out-of-order");
        Assert.Equal(10, early.By, 1e-9);
    }

    [Fact]
    public void The_plan_before_anything_is_spoilt_has_no_fault_at_all()
    {
        Assert.Empty(PlanValidator.Check(SmallHouse.Occasion, SmallHouse.Plan));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_fault_planted_in_a_good_plan_is_found_by_its_size_and_its_near_miss_is_silent(string code)
    {
        Planting planting = All[code];

        PlanFault fault = Assert.Single(PlanValidator.Check(SmallHouse.Occasion, planting.Fault(SmallHouse.Plan)), f => f.Code == code);
        Assert.Equal(planting.By, fault.By, 6);
        Assert.NotEmpty(fault.Words);
        Assert.DoesNotContain(PlanValidator.Check(SmallHouse.Occasion, planting.Near(SmallHouse.Plan)), f => f.Code == code);
    }

    [Fact]
    public void At_least_forty_kinds_of_fault_are_planted_in_all()
    {
        Assert.True(All.Keys.Concat(ValidatorTests.Planted.Select(r => r.Data.Item1)).Distinct().Count() >= 40);
    }

    [Fact]
    public void A_bath_cannot_climb_faster_than_its_power_allows()
    {
        // 20 L from 62 to 82 °C at 1.4 kW: 20 · 20 · 4.18 / 1.4 / 60 = 19.9 min (specific heat of water 4.18 kJ/(kg·K), CRC Handbook).
        Plan Bath(int gap) => Add(SmallHouse.Task("one", TaskKind.Unattended, 0, 10, null, 0, null, "SB") with { Celsius = 62 })(
            Add(SmallHouse.Task("two", TaskKind.Unattended, 10 + gap, 60, null, 0, null, "SB") with { Celsius = 82 })(SmallHouse.Plan));

        PlanFault fault = Assert.Single(PlanValidator.Check(SmallHouse.Occasion, Bath(10)));
        Assert.Equal("set-point-change-too-short", fault.Code);
        Assert.Equal(9.905, fault.By, 3);
        Assert.Empty(PlanValidator.Check(SmallHouse.Occasion, Bath(20)));
    }

    [Fact]
    public void Somebody_who_leaves_in_the_slot_is_missed_in_its_segment()
    {
        Occasion early = SmallHouse.Occasion with { People = [.. SmallHouse.Occasion.People.Select(p => p.Name == "Ann" ? p with { Hours = [new(SmallHouse.Day, SmallHouse.Day.PlusHours(32).PlusMinutes(9), 1)] } : p)] };

        PlanFault fault = Assert.Single(PlanValidator.Check(early, SmallHouse.Plan));
        Assert.Equal(("segment-person-away", 60.0), (fault.Code, fault.By));
    }

    [Theory]
    [InlineData(null, 1)]
    [InlineData(25.0, 0)]
    public void A_wait_inside_the_hands_of_its_step_shrinks_with_the_batch_and_any_other_does_not(double? hands, int faults)
    {
        Component custard = SmallHouse.Card.Components[0];
        Step stirred = custard.Steps[0] with { HandsMinutes = hands, Times = [new StepTime(23, 23, TimeKind.Chill, "about 23 min")] };
        Dish card = SmallHouse.Card with { Components = SmallHouse.Card.Components.SetItem(0, custard with { Steps = custard.Steps.SetItem(0, stirred) }) };
        Occasion occasion = SmallHouse.Occasion with { Dishes = [SmallHouse.Occasion.Dishes[0] with { Dish = card }] };

        // Blending starts at 0, the bake at 20.
        PlanFault[] found = [.. PlanValidator.Check(occasion, SmallHouse.Plan)];
        Assert.Equal(faults, found.Length);
        Assert.All(found, f => Assert.Equal(("wait-too-short", 3.0), (f.Code, f.By)));
    }

    [Fact]
    public void Floor_hands_do_not_cook_but_may_carry_plates()
    {
        PlanFault fault = Assert.Single(PlanValidator.Check(SmallHouse.Occasion, On("cut", t => t with { People = ["Flo"] })(SmallHouse.Plan)));
        Assert.Equal("skill-lacking", fault.Code);
    }

    private static PlannedTask At(PlannedTask t, int from, int to) => t with { Start = SmallHouse.Day.PlusMinutes(from), End = SmallHouse.Day.PlusMinutes(to) };

    private static Func<Plan, Plan> On(string id, Func<PlannedTask, PlannedTask> change) => p => p with { Tasks = [.. p.Tasks.Select(t => t.Id == id ? change(t) : t)] };

    private static Func<Plan, Plan> Edited(string id, Func<PlanEdits, PlanEdits> edit) => p => On(id, t => t with { Key = "k" })(p) with { Edits = edit(PlanEdits.None) };

    private static Func<Plan, Plan> Without(string id) => p => p with { Tasks = p.Tasks.RemoveAll(t => t.Id == id) };

    private static Func<Plan, Plan> Add(PlannedTask task) => p => p with { Tasks = p.Tasks.Add(task) };

    private static Func<Plan, Plan> Segment(int index, Func<RunSegment, RunSegment> change) => p => p with { RunSheet = p.RunSheet.SetItem(index, change(p.RunSheet[index])) };

    private static Func<Plan, Plan> Ready(int minute) => p => p with { Twins = [p.Twins[0] with { ReadyBy = SmallHouse.Day.PlusMinutes(minute) }] };

    // The last step of the custard ends at minute 520; everything is eaten at minute 1940.
    private static Func<Plan, Plan> Later(int minutes) => p => p with { SlotStart = p.SlotStart.PlusMinutes(minutes) };
}
