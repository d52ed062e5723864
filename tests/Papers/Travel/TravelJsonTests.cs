using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;
using Coulisse.Kitchen.Trials;
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
            Objective = [new ObjectiveLevel("shown", 3, 5, "points"), new ObjectiveLevel("fresh", 3, null, "hours")],
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

    /// <summary>The schemas in docs/schemas are what the program writes; a change of form shows here before it surprises a reader.</summary>
    [Theory]
    [InlineData("dish")]
    [InlineData("weighed-dish")]
    [InlineData("batch")]
    [InlineData("findings")]
    [InlineData("occasion-sheet")]
    [InlineData("plan")]
    [InlineData("live-log")]
    [InlineData("trial")]
    [InlineData("production-record")]
    public void The_published_schema_is_the_form_that_travels(string name)
    {
        string now = (name switch
        {
            "dish" => TravelJson.SchemaOf<Dish>(),
            "weighed-dish" => TravelJson.SchemaOf<WeighedDish>(),
            "batch" => TravelJson.SchemaOf<Batch>(),
            "findings" => TravelJson.SchemaOf<ImmutableArray<Finding>>(),
            "occasion-sheet" => TravelJson.SchemaOf<OccasionSheet>(),
            "plan" => TravelJson.SchemaOf<Plan>(),
            "trial" => TravelJson.SchemaOf<Trial>(),
            "production-record" => TravelJson.SchemaOf<ProductionRecord>(),
            _ => TravelJson.SchemaOf<LiveLog>(),
        }).ReplaceLineEndings("\n") + "\n";
        string path = Path.Combine(SharedData.Repository, "docs", "schemas", name + ".json");
        string published = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        if (now != published)
        {
            File.WriteAllText(path + ".received.json", now);
        }

        Assert.True(now == published, $"docs/schemas/{name}.json is not the form that travels; the form now is in {name}.json.received.json: when the change is meant, move it over.");
    }

    private static Dish Read(string card) => CardReader.Read(new CardText(File.ReadAllText(Path.Combine(SharedData.Repository, "examples", "demo", "cards", card)), card))
        .Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));
}
