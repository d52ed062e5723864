using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Watch;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Needs;

/// <summary>What waits in the fridge: plates on trays, parts at so many a tray, tins.</summary>
public sealed class WaitingLoadTests
{
    private static readonly LocalDateTime Noon = new(2026, 10, 10, 12, 0);

    [Fact]
    public void Fifty_two_plates_at_six_a_tray_take_nine_slots_until_the_slot_P3()
    {
        LoadProfile cold = Cold(Demo.Occasion);

        Assert.Equal(15, cold.Limit); // F1 12, F2 3
        Assert.Equal(9, cold.At(Noon.PlusMinutes(70)));
        Assert.Equal(0, cold.At(Demo.Occasion.SlotStart));
    }

    [Fact]
    public void Half_moons_at_eighty_a_tray_take_four_until_they_are_laid()
        => Assert.Contains("265 at 80 a tray", string.Join(';', Cold(Demo.Occasion).Stretches.First(s => s.Amount == 4).What));

    [Fact]
    public void Discs_on_cloths_take_six_slots_while_they_dry_P23()
    {
        string component = Demo.Occasion.Dishes[0].Dish.Components.Single(c => c.Code == "C2").Name;
        int cloths = Demo.Occasion.Dishes[0].Dish.Components.Single(c => c.Code == "C2").Steps.Single(s => s.Text.Contains("six cloths", StringComparison.Ordinal)).Span.Line;
        int trays = Demo.Occasion.Dishes[0].Dish.Components.Single(c => c.Code == "C2").Steps[^1].Span.Line;
        LoadProfile cold = Cold(Demo.Occasion, new PlannedTask { Id = "d", Text = "lay on cloths", Kind = TaskKind.Work, Start = Noon.PlusHours(-4), End = Noon.PlusHours(-3), Dish = Demo.Occasion.Dishes[0].Name, Component = component, Line = cloths },
            new PlannedTask { Id = "e", Text = "fold", Kind = TaskKind.Work, Start = Noon.PlusHours(-2), End = Noon.PlusHours(-1), Dish = Demo.Occasion.Dishes[0].Name, Component = component, Line = trays });

        Assert.Equal(6, cold.At(Noon.PlusMinutes(-150)));
        Assert.Equal(4, cold.At(Noon.PlusMinutes(-30)));
    }

    [Fact]
    public void Plates_and_boxes_fit_as_their_sizes_say_where_the_kit_gives_no_number()
    {
        var kit = Demo.Occasion.Kit.Select(k => k.Type == "tray" ? k with { CapacityText = "" } : k);

        Assert.Equal(6, TrayRoom.Plates(kit));
        Assert.Null(TrayRoom.Boxes(kit)); // the sheet gives no size of a box: it is not guessed
        Assert.Equal(13, TrayRoom.Boxes([.. kit, kit.First() with { Code = "", What = "box 120 × 90 mm", Type = "other", Millimetres = [120, 90] }])); // 12 in rows, 13 mixed
    }

    private static LoadProfile Cold(Occasion occasion, params PlannedTask[] folded)
    {
        string name = occasion.Dishes[0].Name;
        string Component(string code) => occasion.Dishes[0].Dish.Components.Single(c => c.Code == code).Name;
        string plating = occasion.Dishes[0].Dish.Components.Single(c => c.IsAssembly).Name;
        Plan plan = new()
        {
            Title = "x", SlotStart = occasion.SlotStart, SlotLength = occasion.SlotLength,
            Tasks =
            [
                .. folded.Length > 0 ? folded : [new() { Id = "a", Text = "fold", Kind = TaskKind.Work, Start = Noon.PlusHours(-2), End = Noon.PlusHours(-1), Dish = name, Component = Component("C2") }],
                new() { Id = "c", Text = "dry", Kind = TaskKind.Unattended, Start = Noon.PlusHours(-9), End = Noon.PlusHours(-2), Dish = name, Component = Component("C5") },
                new() { Id = "b", Text = "plate", Kind = TaskKind.Plate, Start = Noon, End = Noon.PlusHours(1), Dish = name, Component = plating },
            ],
        };
        return WaitingLoads.Of(plan, occasion, Assert.IsType<Parsed<ImmutableArray<Batch>>.Ok>(OccasionBatches.Make(occasion)).Value)[0];
    }
}
