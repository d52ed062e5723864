using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Occasions;

/// <summary>A usual small kitchen, for an occasion that lists none. Common practice, no source; every piece is shown as assumed.</summary>
public static class DefaultKitchen
{
    /// <summary>Kit of a small demonstration kitchen.</summary>
    /// <param name="place">Name of the place where the slot is.</param>
    public static ImmutableArray<SheetKit> Kit(string place) =>
    [
        Heated("O1", "fan oven", "oven", place, 2, 30, 250, 3.0),
        Heated("O2", "convection oven", "oven", "back", 4, 30, 250, null),
        new SheetKit("H1", "hob, four rings", "hob", "back", 4, "one pan a ring", 0),
        new SheetKit("H2", "induction ring", "hob", place, 1, "one pan", 0) { Kilowatts = 2.0 },
        Heated("W1", "water bath", "bath", place, 1, 30, 95, 1.4) with { Litres = 20 },
        new SheetKit("B1", "jug blender", "blender", place, 1, "2 L", 0) { Kilowatts = 1.2 },
        new SheetKit("V1", "vacuum sealer", "sealer", place, 1, "one pouch", 0) { Kilowatts = 0.6 },
        Heated("D1", "dehydrator", "dehydrator", "back", 6, 35, 70, null),
        new SheetKit("C1", "blast chiller", "chiller", "back", 1, "3 GN 1/1", 0) { Shelves = 3 },
        new SheetKit("F1", "upright fridge", "fridge", "back", 1, "12 slots", 0) { Shelves = 12 },
        new SheetKit("F2", "under-counter fridge", "fridge", place, 1, "3 shelves", 0) { Shelves = 3 },
    ];

    /// <summary>Prep windows: the afternoon two days before, the whole day before, the morning of the day.</summary>
    public static ImmutableArray<SheetWindow> Windows(LocalDateTime slot, Duration length)
    {
        LocalDate day = slot.Date;
        LocalDateTime early = day.At(new LocalTime(8, 0)) < slot.PlusHours(-2) ? day.At(new LocalTime(8, 0)) : slot.PlusHours(-5);
        return
        [
            new SheetWindow(day.PlusDays(-2).At(new LocalTime(13, 0)), day.PlusDays(-2).At(new LocalTime(17, 0)), 0),
            new SheetWindow(day.PlusDays(-1).At(new LocalTime(8, 0)), day.PlusDays(-1).At(new LocalTime(17, 0)), 0),
            new SheetWindow(early, slot, 0),
            new SheetWindow(slot.PlusSeconds((long)length.TotalSeconds), slot.PlusSeconds((long)length.TotalSeconds).PlusMinutes(25), 0),
        ];
    }

    private static SheetKit Heated(string code, string what, string type, string place, int shelves, double from, double to, double? kilowatts)
        => new(code, what, type, place, 1, "", 0) { Shelves = shelves, CelsiusMin = from, CelsiusMax = to, Kilowatts = kilowatts };
}
