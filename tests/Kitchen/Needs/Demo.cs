using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Needs;

/// <summary>The demo occasion read from its sheet, cards and prices.</summary>
internal static class Demo
{
    private static readonly string Folder = Path.Combine(SharedData.Repository, "examples", "demo");

    public static PriceList Prices => Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read(File.ReadAllText(Path.Combine(Folder, "prices.csv")))).Value;

    public static Occasion Occasion
    {
        get
        {
            OccasionSheet sheet = Assert.IsType<Parsed<OccasionSheet>.Ok>(OccasionReader.Read(File.ReadAllText(Path.Combine(Folder, "occasion.md")), new LocalDate(2026, 10, 1))).Value;
            return new Occasion
            {
                Title = sheet.Title, Sheet = sheet, SlotStart = sheet.SlotStart!.Value, SlotLength = sheet.SlotLength!.Value, SlotPlace = sheet.SlotPlace!, Guests = sheet.Guests!.Value,
                Covers = sheet.Guests.Value + sheet.Over!.Value, PlatedLive = sheet.PlatedLive ?? 0, Diets = sheet.Diets, Shows = sheet.Shows, Kit = sheet.Kit, Circuits = sheet.Circuits,
                Dishes = [.. sheet.Dishes.Select(d => new OccasionDish(d.Name, Card(d.CardPath), d.Count, d.Unit, d.For, d.CardPath))],
            };
        }
    }

    /// <summary>The same with its people, as the commands build it: only then is there a live slot with twins.</summary>
    public static Occasion Staffed => Assert.IsType<Parsed<Occasion>.Ok>(OccasionBuilder.Build(Assert.IsType<Parsed<OccasionSheet>.Ok>(OccasionReader.Read(File.ReadAllText(Path.Combine(Folder, "occasion.md")), new LocalDate(2026, 10, 1))).Value, Card)).Value;

    public static Dish Card(string path) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(File.ReadAllText(Path.Combine(Folder, path)), path))).Value;

    public static NeedsList Needs(params Need[] extra) => Assert.IsType<Parsed<NeedsList>.Ok>(OccasionNeeds.Of(Occasion, extra)).Value;
}
