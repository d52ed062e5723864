using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Planning.Tasks;

/// <summary>An oven turned down within a card is planned at the figure that holds while each of its times runs.</summary>
public sealed class OvenOfTimeTests
{
    private static double?[] Ovens(string method)
    {
        Dish dish = CardReader.Read(new CardText($"# Loaf\n\nServes 10.\n\nOne plate: 80 g loaf.\n\n## Loaf\n\nKeeps 2 days at 20 °C.\n\n- 600 g flour\n- 360 g water\n\n{method}\n")).Match(d => d, p => throw new InvalidOperationException(p[0].Message));
        LocalDateTime noon = new(2026, 10, 10, 12, 0);
        Occasion o = new()
        {
            Title = "t", Sheet = new OccasionSheet { Title = "t" }, SlotStart = noon, SlotLength = Duration.Zero, SlotPlace = "front", Guests = 10, Covers = 10,
            Dishes = [new OccasionDish("Loaf", dish, 10, "plates", "", "card.md")],
            People = [new("Ann", "", "", [new(noon.PlusHours(-30), noon, 1)], ["all"], [], [], 1)],
            Kit = [new SheetKit("O1", "oven", "oven", "back", 1, "", 1) { Shelves = 4 }],
        };
        return [.. TaskBuilder.Build(o, OccasionBatches.Make(o).Match(b => b, p => throw new InvalidOperationException(p[0].Message)), LiveSlot.Decide(o)).Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Celsius is not null).OrderBy(t => t.Line).Select(t => t.Celsius)];
    }

    [Theory]
    [InlineData("1. Mix the flour and water.\n2. Bake at 240 °C for 15 min, turn down to 200 °C and bake 30 min.")]
    [InlineData("1. Mix the flour and water.\n2. Bake at 240 °C for 15 min.\n3. Turn down to 200 °C and bake 30.")]
    [InlineData("1. Mix the flour and water. Oven to 240 °C.\n2. Bake 15 min, then turn down to 200 °C and bake 30 min more.")]
    public void A_second_oven_figure_is_planned_at(string method) => Assert.Equal([240.0, 200.0], Ovens(method));

    [Fact]
    public void One_figure_stays_one() => Assert.Equal([240.0], Ovens("1. Mix the flour and water.\n2. Bake at 240 °C, fan 220 °C, for 35 min."));
}
