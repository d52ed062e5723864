using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Labels;

/// <summary>The demo's diets table against its cards: what each declared seat still meets, and what only that table names.</summary>
public sealed class GuestsTests
{
    private static readonly string Demo = Path.Combine(SharedData.Repository, "examples", "demo");

    private static Occasion Occasion()
    {
        OccasionSheet sheet = OccasionReader.Read(File.ReadAllText(Path.Combine(Demo, "occasion.md")), new LocalDate(2026, 10, 1)).Match(s => s, p => throw new InvalidOperationException(string.Join("; ", p)));
        return new Occasion
        {
            Title = "Demo", Sheet = sheet, SlotStart = default, SlotLength = Duration.Zero, SlotPlace = "", Guests = 48, Covers = 53, Diets = sheet.Diets,
            Dishes = [.. sheet.Dishes.Select(d => new OccasionDish(d.Name, Card(d.CardPath), d.Count, d.Unit, d.For, d.CardPath))],
        };
    }

    private static Dish Card(string path) => CardReader.Read(new CardText(File.ReadAllText(Path.Combine(Demo, path)), path)).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static GuestPlate Plate(int seat, string dish, AllergenRegime regime = AllergenRegime.Eu)
        => Guests.Of(Occasion(), regime).Single(r => r.Seats.Contains(seat)).Plates.Single(p => p.Dish.StartsWith(dish, StringComparison.Ordinal));

    [Fact]
    public void A_seed_named_only_in_a_diets_row_reaches_the_order()
    {
        Need need = Assert.Single(DietNeeds.Of(Occasion().Diets), n => n.For.Contains("seat 17", StringComparison.Ordinal));

        Assert.Equal((4.0, true), (need.Grams, need.Food.Contains("pumpkin seed", StringComparison.Ordinal)));
        Order order = Order.For([need], PriceList.Read(File.ReadAllText(Path.Combine(Demo, "prices.csv"))).Match(p => p, e => throw new InvalidOperationException(string.Join("; ", e))));
        OrderedPack pack = Assert.Single(Assert.Single(order.Lines).Packs);
        Assert.Equal((1, 100m), (pack.Count, pack.Row.PackSize));
    }

    [Fact]
    public void The_same_seed_is_on_the_allergen_sheet_of_that_seat()
    {
        GuestPlate plate = Plate(17, "Pumpkin");

        Assert.Contains(plate.Instead, i => i.Contains("pumpkin seed", StringComparison.Ordinal));
        Assert.Contains(plate.All.SelectMany(l => l.Because), b => b.Component == "instead" && b.Code == "sesame");
    }

    [Fact]
    public void Without_the_rye_crumb_no_cereal_is_contained_but_its_tools_are_named()
    {
        GuestPlate plate = Plate(17, "Pumpkin");

        Assert.DoesNotContain(plate.Found, l => l.Code is "wheat" or "rye" or "barley" or "oats" && l.Status == AllergenStatus.Contains);
        Assert.Contains(plate.CrossContact, c => c.Contains("rye", StringComparison.Ordinal));
        Assert.NotEmpty(plate.Minds);
    }

    [Fact]
    public void The_mustard_seat_is_without_the_condiment()
    {
        GuestPlate plate = Plate(23, "Pumpkin");

        Assert.DoesNotContain(plate.Found, l => l.Code == "mustard" && l.Status == AllergenStatus.Contains);
        Assert.Contains(plate.CrossContact, c => c.Contains("mustard", StringComparison.Ordinal));
    }

    [Fact]
    public void The_walnut_slice_is_not_served_to_the_nut_seat_and_is_to_others()
    {
        Assert.False(Plate(31, "Buckwheat").Served);
        Assert.True(Plate(23, "Buckwheat").Served);
    }

    [Fact]
    public void The_vegetarian_seat_gets_the_variant_and_no_gelatine()
    {
        GuestPlate plate = Plate(4, "Pumpkin");

        Assert.DoesNotContain(plate.Found, l => l.Code == "meat");
        Assert.Contains(Plate(40, "Pumpkin").All, l => l.Code == "milk");
    }

    [Theory]
    [InlineData("without C6, 4 g toasted pumpkin seeds instead; plated first, clean tools", 1, 1, 2)]
    [InlineData("as the others", 0, 0, 1)]
    [InlineData("C1v in place of C1", 1, 1, 0)]
    [InlineData("none", 0, 0, 0)]
    public void A_cell_of_the_diets_table_loses_no_clause(string text, int without, int instead, int minds)
    {
        DietText read = DietText.Read(text, "en");

        Assert.Equal((without, instead, minds), (read.Without.Length, read.Instead.Length, read.Minds.Length));
    }
}
