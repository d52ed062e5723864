using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Checking;

/// <summary>A small house with one card of three components and a plan of it that has no fault: every planted fault starts from here.</summary>
internal static class SmallHouse
{
    public static readonly LocalDateTime Day = new(2026, 10, 9, 8, 0);

    public static readonly Dish Card = new()
    {
        Title = "Set custard",
        Components =
        [
            new Component
            {
                Name = "Custard", Code = "D1", Keeps = [new Keeping(72, 5, "fridge", "", default)], Ingredients = [Line("whole milk", "milk"), Line("egg", "egg")],
                Steps =
                [
                    Step("Custard", 1, 10, "Blend milk and egg.", "blend"),
                    Step("Custard", 2, 11, "Bake 40 min at 120 °C.", "bake") with { Times = [new StepTime(40, 40, TimeKind.Oven, "")], Temperatures = [new StepTemperature(TemperatureOf.Oven, 120, "")] },
                    Step("Custard", 3, 12, "Chill within 30 min, then at least 6 h.", "blast_chill") with { Times = [new StepTime(null, 30, TimeKind.Limit, "") { Bound = Bound.AtMost }, new StepTime(360, null, TimeKind.Chill, "") { Bound = Bound.AtLeast }] },
                    Step("Custard", 4, 13, "Cut.", "cut_slab"),
                    Step("Custard", 5, 14, "Meanwhile wipe the plates.", "wipe_plates") with { Meanwhile = true },
                ],
            },
            new Component { Name = "Gel", Ingredients = [Line("apple juice", "apple_juice")], Steps = [Step("Gel", 1, 20, "Blend.", "blend")] },
            new Component
            {
                Name = "Crust", Keeps = [new Keeping(24, null, "", "same day", default) { SameDay = true }], Ingredients = [Line("plain flour", "wheat_flour")],
                Steps = [Step("Crust", 1, 30, "Rub in, two people.", "rub_in") with { People = 2 }],
            },
        ],
    };

    public static readonly Occasion Occasion = new()
    {
        Title = "small", Sheet = new OccasionSheet { Title = "small" }, SlotStart = Day.PlusHours(32), SlotLength = Duration.FromMinutes(20), SlotPlace = "front", Guests = 1, Covers = 1,
        Dishes = [new OccasionDish("Custard", Card, 1, "plates", "", "card.md")],
        People =
        [
            new("Ann", "", "", Hours(), ["all"], [], [], 1),
            new("Ben", "", "", Hours(), ["knife"], ["pastry"], [], 1),
            new("Flo", "", "", Hours(), ["service", "boxes"], [], [], 1),
        ],
        Kit =
        [
            new SheetKit("OV", "oven", "oven", "back", 1, "", 1) { CelsiusMax = 250 },
            new SheetKit("BL", "jug blender; shared with the back", "blender", "front", 1, "", 2),
            new SheetKit("SB", "bath", "bath", "front", 1, "", 3) { CelsiusMax = 95, Litres = 20, Kilowatts = 1.4, EarlierPlace = "back", MovesAt = Day.PlusHours(6) },
        ],
        Windows = [new(Day, Day.PlusHours(10), 1), new(Day.PlusHours(24), Day.PlusHours(32), 2)],
    };

    public static readonly Plan Plan = new()
    {
        Title = "p", SlotStart = Occasion.SlotStart, SlotLength = Occasion.SlotLength,
        Tasks =
        [
            Task("blend", TaskKind.Work, 0, 10, "Custard", 10, "Ann", "BL") with { Place = "back" },
            Task("wash", TaskKind.Wash, 10, 15, null, 0, "Ann", "BL") with { Removes = ["egg", "milk"] },
            Task("gel", TaskKind.Work, 20, 30, "Gel", 20, "Ben", "BL"),
            Task("bake", TaskKind.Unattended, 20, 60, "D1", 11, null, "OV") with { Celsius = 120 },
            Task("load", TaskKind.Moment, 19, 20, "D1", 11, "Ann", "OV") with { Within = "bake" },
            Task("chill", TaskKind.Unattended, 80, 500, "Custard", 12, null, null),
            Task("cut", TaskKind.Work, 500, 520, "Custard", 13, "Ben", null),
            Task("wipe", TaskKind.Work, 90, 95, "Custard", 14, "Ben", null),
            Task("crust", TaskKind.Work, 1500, 1510, "Crust", 30, "Ann", null) with { People = ["Ann", "Ben"] },
            Task("plate", TaskKind.Plate, 1880, 1920, null, 0, "Flo", null),
        ],
        Twins = [new Twin { Number = 1, Component = "Custard", State = "set", MadeBy = "cut", ReadyBy = Day.PlusMinutes(520), CueSecond = 60 }],
        RunSheet =
        [
            new RunSegment { Number = 1, StartSecond = 0, Seconds = 600, Show = "a", Twins = [1], DroppableSeconds = 60, DropRank = 1, Gate = true, Who = ImmutableSortedDictionary<string, string>.Empty.Add("Ann", "talks") },
            new RunSegment { Number = 2, StartSecond = 600, Seconds = 600, Show = "b", DroppableSeconds = 60, DropRank = 2, Kit = ["BL"], Silence = true },
        ],
    };

    public static PlannedTask Task(string id, TaskKind kind, int from, int to, string? component, int line, string? person, string? kit) => new()
    {
        Id = id, Text = id, Kind = kind, Start = Day.PlusMinutes(from), End = Day.PlusMinutes(to), Component = component, Line = line,
        People = person is null ? [] : [person], Kit = kit is null ? [] : [kit],
    };

    private static ImmutableArray<SheetWindow> Hours() => [new(Day.PlusHours(-2), Day.PlusHours(40), 1)];

    private static IngredientLine Line(string food, string id) => new() { Span = default, Text = food, Foods = [new FoodAmount { Food = food, FoodId = id }] };

    private static Step Step(string component, int order, int line, string text, string operation) => new() { Span = new Span(0, 0, line), Text = text, Anchor = new Anchor(component, order, ""), Operation = operation };
}
