using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Tests.Needs;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Checking;

/// <summary>Shelves, tins, fridge slots, trays and ways between places: each broken by a known amount, each beside a near miss.</summary>
public sealed class RoomAndWayTests
{
    private static readonly LocalDateTime Eight = SmallHouse.Day;

    [Theory]
    [InlineData(2, 1, 1)]
    [InlineData(2, 2, 2)]
    [InlineData(1, 1, 0)]
    public void An_oven_of_two_shelves_takes_two_tins_at_once(int first, int second, int over)
    {
        Occasion occasion = SmallHouse.Occasion with { Kit = [.. SmallHouse.Occasion.Kit.Select(k => k.Code == "OV" ? k with { Shelves = 2 } : k)] };
        Plan plan = SmallHouse.Plan with
        {
            Tasks = SmallHouse.Plan.Tasks.AddRange(
                SmallHouse.Task("one", TaskKind.Unattended, 200, 240, null, 0, null, "OV") with { Celsius = 120, Shelves = first },
                SmallHouse.Task("two", TaskKind.Unattended, 230, 260, null, 0, null, "OV") with { Celsius = 120, Shelves = second }),
        };

        PlanFault[] faults = [.. PlanValidator.Check(occasion, plan).Where(f => f.Code == "shelves-overfull")];
        Assert.Equal(over > 0 ? [over] : [], faults.Select(f => (int)f.By));
    }

    [Theory]
    [InlineData(56, 2, 0)]
    [InlineData(57, 2, 1)]
    [InlineData(57, 0, 0)]
    public void All_the_tins_of_a_dish_find_a_shelf(int pieces, int shelves, int without)
    {
        // 28 pieces a tin: 56 are two tins, 57 are three; a plan that says no shelves is not held to it.
        Component baked = SmallHouse.Card.Components[0] with { Name = "", Code = null, Makes = [] };
        Dish card = SmallHouse.Card with { Title = "Slice", Yields = [new CardYield(28, "pieces", "", default)], Components = [baked] };
        Occasion occasion = SmallHouse.Occasion with { Dishes = [new OccasionDish("Slice", card, pieces, "pieces", "", "slice.md")] };
        Plan plan = SmallHouse.Plan with { Tasks = [SmallHouse.Task("bake", TaskKind.Unattended, 20, 60, null, 11, null, "OV") with { Dish = "Slice", Celsius = 120, Shelves = shelves }] };

        PlanFault[] faults = [.. PlanValidator.Check(occasion, plan).Where(f => f.Code == "tins-without-shelf")];
        Assert.Equal(without > 0 ? [without] : [], faults.Select(f => (int)f.By));
    }

    [Theory]
    [InlineData("back", "front", 4, 2)]
    [InlineData("back", "front", 2, 0)]
    [InlineData("front", "back", 4, 0)]
    [InlineData("back", "cellar", 9, 0)]
    public void What_goes_on_elsewhere_is_carried_there_first(string from, string to, double minutes, double lacking)
    {
        // Baked at the back until 60; chilled at the front from 62 on. One way only: the way back says nothing about the way there.
        Occasion occasion = SmallHouse.Occasion with
        {
            Sheet = SmallHouse.Occasion.Sheet with { Ways = [new SheetWay(from, to, minutes, true, 1)] },
            Kit = SmallHouse.Occasion.Kit.Add(new SheetKit("CH", "blast chiller", "chiller", "front", 1, "", 4)),
        };
        Plan plan = SmallHouse.Plan with { Tasks = [.. SmallHouse.Plan.Tasks.Select(t => t.Id == "chill" ? t with { Start = Eight.PlusMinutes(62), Kit = ["CH"] } : t)] };

        PlanFault[] faults = [.. PlanValidator.Check(occasion, plan).Where(f => f.Code == "carried-too-fast")];
        Assert.Equal(lacking > 0 ? [lacking] : [], faults.Select(f => f.By));
    }

    [Fact]
    public void Plates_that_wait_need_slots_and_trays()
    {
        // 52 plates ahead at 6 a tray are nine trays, from the end of plating until the slot.
        Plan plan = Plated(Demo.Occasion);
        Occasion With(int slots, int trays) => Demo.Occasion with
        {
            Kit = [.. Demo.Occasion.Kit.Where(k => k.Code != "F2").Select(k => k.Code == "F1" ? k with { Shelves = slots } : k.Type == "tray" ? k with { Number = trays } : k)],
        };

        PlanFault full = Assert.Single(Cold(With(7, 18), plan));
        Assert.Equal(("fridge-overfull", 2.0), (full.Code, full.By));
        PlanFault few = Assert.Single(Cold(With(12, 8), plan));
        Assert.Equal(("trays-short", 1.0), (few.Code, few.By));
        Assert.Empty(Cold(With(9, 9), plan));
    }

    private static Plan Plated(Occasion occasion) => new()
    {
        Title = "p", SlotStart = occasion.SlotStart, SlotLength = occasion.SlotLength,
        Tasks = [SmallHouse.Task("plate", TaskKind.Plate, 0, 0, null, 0, null, null) with { Dish = occasion.Dishes[0].Name, Start = occasion.SlotStart.PlusMinutes(-90), End = occasion.SlotStart.PlusMinutes(-30) }],
    };

    private static IEnumerable<PlanFault> Cold(Occasion occasion, Plan plan) => PlanValidator.Check(occasion, plan, OccasionBatches.Make(occasion).Match(b => b, p => throw new InvalidOperationException(string.Join("; ", p)))).Where(f => f.Code is "fridge-overfull" or "trays-short");
}
