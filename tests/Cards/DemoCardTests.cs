using System.Text;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Cards.Tests;

/// <summary>The demo cards and sheet as a person reads them (read by hand from examples/demo).</summary>
public sealed class DemoCardTests
{
    private static Dish Card(string name) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(File.ReadAllText(Path.Combine(SharedData.Repository, "examples/demo/cards", name)), name))).Value;

    private static OccasionSheet Sheet() => Assert.IsType<Parsed<OccasionSheet>.Ok>(OccasionReader.Read(File.ReadAllText(Path.Combine(SharedData.Repository, "examples/demo/occasion.md")), new LocalDate(2026, 10, 1))).Value;

    [Fact]
    public void Starter_has_its_eight_components_and_the_plate_up()
    {
        Dish dish = Card("starter.md");

        Assert.Equal(["C1", "C1v", "C2", "C3", "C4", "C5", "C6", "C7", null], dish.Components.Select(c => c.Code));
        Assert.True(dish.Components[^1].IsAssembly);
        Assert.Equal(6, dish.Components[^1].Steps.Length);
        Assert.Equal(53, dish.Yields[0].Amount);
        Assert.Equal(78.6, dish.Plate.Sum(p => p.Grams ?? 0), 1);
        Assert.All(dish.Plate, p => Assert.NotNull(p.Component));
        Assert.True(dish.Doubts.Length <= 3, string.Join("\n", dish.Doubts.Select(d => d.Question)));
    }

    [Fact]
    public void Royale_base_weighs_what_the_card_prints()
    {
        Component royale = Card("starter.md").Components[0];

        Assert.Equal(1489.5, royale.Ingredients.Where(l => l.Group is { } g && g.StartsWith("The base", StringComparison.Ordinal)).SelectMany(l => l.Foods).Sum(f => f.Grams ?? 0), 6);
        Assert.Equal(9, royale.Steps.Length);
        Assert.Equal(215, royale.Ingredients[2].Foods[0].Grams);
        Assert.Equal("egg yolk", royale.Ingredients[2].Foods[0].Food);
        Assert.Contains(royale.Steps[3].Times, t => t.MinutesMin == 45);
        Assert.Equal([15.0, 30.0], royale.Steps[3].TendAt);
        StepTemperature core = Assert.Single(royale.Steps[3].Temperatures, t => t.Of == TemperatureOf.Core);
        Assert.Equal((80, Bound.AtLeast, 10), (core.Celsius, core.Bound, core.HoldMinutes));
        Assert.Equal(15, royale.Steps[2].HandsMinutes);
        Assert.Equal(10, royale.Steps[2].ThicknessMillimetres);
        Assert.Equal(2, royale.Steps[5].People);
        Assert.Contains(royale.Steps[7].Times, t => t.Kind == TimeKind.Limit && t.MinutesMax == 90);
        Assert.Equal((72, 5), (royale.Keeps[0].Hours, royale.Keeps[0].Celsius));
    }

    [Fact]
    public void Opening_bags_is_no_work_on_oysters()
    {
        Component royale = Card("starter.md").Components[0];

        Assert.Equal(["fill_bath", "weigh", "vacuum_fill", "water_bath", "bloom_powder"], royale.Steps.Take(5).Select(s => s.Operation));
        Assert.DoesNotContain("open_oysters", royale.Steps[5].Operations);
        Assert.Equal("open_oysters", CardReader.ReadStep("Open the oysters.", "en").Operation);
    }

    [Fact]
    public void Agar_royale_takes_its_base_from_the_royale() =>
        Assert.StartsWith("C1 ", Card("starter.md").Components[1].Ingredients[2].Foods[0].FromComponent!, StringComparison.Ordinal);

    [Fact]
    public void A_part_that_keeps_like_another_keeps_as_long_and_one_that_keeps_like_nothing_known_says_nothing()
    {
        Dish starter = Card("starter.md");
        Keeping own = Assert.Single(starter.Components[0].Keeps);
        Keeping like = Assert.Single(starter.Components[1].Keeps);
        Assert.Equal((72, 5, "fridge"), (like.Hours!.Value, like.Celsius!.Value, like.Where));
        Assert.NotEqual(own.Span, like.Span);

        const string Two = "# Two\n\n## C1 Base\n\nKeeps 3 days at 5 °C or less.\n\n- 100 g milk\n\n1. Boil.\n\n## C2 Other\n\nKeeps like {0}.\n\n- 100 g milk\n\n1. Boil.\n";
        Keeping[] Of(string other) => [.. Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(Two.Replace("{0}", other, StringComparison.Ordinal), "two.md"))).Value.Components[1].Keeps];
        Assert.Single(Of("C1"));
        Assert.Empty(Of("C10"));
        Assert.Empty(Of("a brick"));
    }

    [Theory]
    [InlineData("slice-buckwheat-plum.md", new[] { "Dough", "Plum filling", "Walnut top" })]
    [InlineData("tray-bake-pear-quark.md", new[] { "Ginger sponge", "Quark layer", "Pears", "Ramekin without gluten" })]
    public void Tray_bakes_have_their_components_and_no_needless_doubt(string card, string[] names)
    {
        Dish dish = Card(card);

        Assert.Equal(names, dish.Components.Select(c => c.Name));
        Assert.All(dish.Components.SelectMany(c => c.Ingredients), l => Assert.NotNull(l.Foods[0].Grams));
        Assert.True(dish.Doubts.Length <= 1);
    }

    [Fact]
    public void Loose_card_keeps_its_cups_and_spoons_as_written()
    {
        Component slice = Assert.Single(Card("slice-buckwheat-plum-loose.md").Components);

        Assert.Equal(7, slice.Steps.Length);
        FoodAmount plum = Assert.Single(slice.Ingredients[7 + 1].Foods);
        Assert.Equal((16, "tbsp"), (plum.Amount, plum.Unit));
        Assert.Equal(["cup", "tbsp"], slice.Ingredients[6].Foods.Select(f => f.Unit));
    }

    [Fact]
    public void Sheet_of_the_demo_is_read_whole()
    {
        OccasionSheet sheet = Sheet();

        Assert.Equal(new LocalDateTime(2026, 10, 10, 14, 0), sheet.SlotStart);
        Assert.Equal(Duration.FromMinutes(25), sheet.SlotLength);
        Assert.Equal("stage", sheet.SlotPlace);
        Assert.Equal((48, 5, 1), (sheet.Guests, sheet.Over, sheet.PlatedLive));
        Assert.Equal(4, sheet.Windows.Length);
        Assert.Equal(new LocalDateTime(2026, 10, 8, 13, 0), sheet.Windows[0].Start);
        Assert.Equal(2, sheet.Meals.Length);
        Assert.Equal(new LocalDateTime(2026, 10, 8, 13, 0), sheet.OrderArrives);
        Assert.Equal(("prices.csv", "D"), (sheet.PricesFile, sheet.Currency));
        Assert.Equal((4, 5, 25, 4, 5, 17), (sheet.Dishes.Length, sheet.People.Length, sheet.Kit.Length, sheet.Circuits.Length, sheet.Diets.Length, sheet.Shows.Length));
        Assert.Equal(["pastry"], sheet.People[1].Without);
        Assert.Equal((2, 2.9, "K1"), (sheet.Kit[0].Shelves, sheet.Kit[0].Kilowatts, sheet.Kit[0].Circuit));
        Assert.Equal(new LocalDateTime(2026, 10, 9, 13, 0), sheet.Kit.First(k => k.Code == "SB").MovesAt);
    }

    [Fact]
    public void One_sentence_is_enough_and_says_what_it_assumed()
    {
        OccasionSheet sheet = Assert.IsType<Parsed<OccasionSheet>.Ok>(OccasionReader.Read("53 plates, Saturday 14:00, 25 minutes, Ilse and two others", new LocalDate(2026, 10, 5))).Value;

        Assert.Equal(new LocalDateTime(2026, 10, 10, 14, 0), sheet.SlotStart);
        Assert.Equal(Duration.FromMinutes(25), sheet.SlotLength);
        Assert.Equal(53, sheet.Guests);
        Assert.Equal(3, sheet.People.Length);
        Assert.Equal("Ilse", sheet.People[0].Name);
        Assert.NotEmpty(sheet.Assumed);
    }

    [Fact]
    public void Wrong_sheets_say_what_would_be_right()
    {
        string sheet = File.ReadAllText(Path.Combine(SharedData.Repository, "examples/demo/occasion.md"));
        Problem heading = Refused(sheet.Replace("## Kit", "## Gadgets", StringComparison.Ordinal));
        Problem outside = Refused(sheet.Replace("| 08:30 to 14:50 | weighing", "| 20:00 to 22:00 | weighing", StringComparison.Ordinal));

        Assert.Equal("OCC004", heading.Code);
        Assert.Equal("OCC006", outside.Code);
        Assert.Equal("OCC001", Refused(" ").Code);
        Assert.Equal("OCC003", Refused("a\0b").Code);

        static Problem Refused(string text) => Assert.IsType<Parsed<OccasionSheet>.Failed>(OccasionReader.Read(text, new LocalDate(2026, 10, 1))).Problems[0];
    }

    [Fact]
    public void No_text_makes_the_reader_throw()
    {
        Random random = new(20261010);
        string seed = File.ReadAllText(Path.Combine(SharedData.Repository, "examples/demo/cards/starter.md"));
        for (int i = 0; i < 300; i++)
        {
            StringBuilder b = new(seed.Substring(random.Next(seed.Length - 600), 600));
            for (int k = 0; k < 40; k++)
            {
                b[random.Next(b.Length)] = (char)random.Next(1, i % 2 == 0 ? 128 : 0x3100);
            }

            Assert.NotNull(CardReader.Read(new CardText(b.ToString())));
            Assert.NotNull(OccasionReader.Read(b.ToString(), new LocalDate(2026, 1, 1)));
        }
    }
}
