using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Papers.Tests.Travel;

/// <summary>The values that travel go to JSON and come back equal.</summary>
public sealed class TravelJsonTests
{
    [Theory]
    [InlineData("starter.md")]
    [InlineData("slice-buckwheat-plum.md")]
    [InlineData("slice-buckwheat-plum-loose.md")]
    [InlineData("tray-bake-pear-quark.md")]
    [InlineData("royale-draft.md")]
    public void A_dish_and_its_weights_come_back_as_they_went(string card)
    {
        Dish dish = Read(card);
        string once = TravelJson.Write(dish);
        Assert.Equal(once, TravelJson.Write(TravelJson.Read<Dish>(once)));
        string weighed = TravelJson.Write(Weighing.Weigh(dish, null));
        Assert.Equal(weighed, TravelJson.Write(TravelJson.Read<WeighedDish>(weighed)));
        Assert.Contains("\"grams\"", weighed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_comes_back_as_it_went()
    {
        Plan plan = new()
        {
            Title = "t",
            SlotStart = new LocalDateTime(2026, 10, 10, 14, 0),
            SlotLength = Duration.FromMinutes(25),
            Tasks = [new PlannedTask { Id = "a", Text = "weigh", Kind = TaskKind.Work, Start = new LocalDateTime(2026, 10, 9, 8, 0), End = new LocalDateTime(2026, 10, 9, 8, 30), Celsius = 82.5, Slack = Duration.FromMinutes(3) }],
            Objective = [new ObjectiveLevel("shown", 3, 5, "points")],
        };
        string once = TravelJson.Write(plan);
        Assert.Equal(once, TravelJson.Write(TravelJson.Read<Plan>(once)));
        Assert.Equal(Duration.FromMinutes(3), TravelJson.Read<Plan>(once).Tasks[0].Slack);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{\"title\": 3}")]
    [InlineData("[1, 2")]
    public void What_is_no_plan_is_refused_with_its_place(string json)
        => Assert.Throws<FormatException>(() => TravelJson.Read<Plan>(json));

    private static Dish Read(string card) => CardReader.Read(new CardText(File.ReadAllText(Path.Combine(SharedData.Repository, "examples", "demo", "cards", card)), card))
        .Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));
}
