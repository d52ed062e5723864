using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Tests;

namespace Coulisse.Kitchen.Tests.Formulas;

public sealed class WeighingTests
{
    internal static WeighedDish Weigh(string card, string? measures = null) => CardReader.Read(new CardText(card)).Match(
        dish => Weighing.Weigh(dish, measures), problems => throw new InvalidOperationException(string.Join("; ", problems)));

    private static WeighedLine Line(string line, string measures = "metric")
        => Assert.Single(Weigh($"# A dish\n\n## Ingredients\n\n- {line}\n\n## Method\n\n1. Mix.\n", measures).Components.SelectMany(c => c.Lines));

    [Fact]
    public void The_letter_from_a_country_of_20_mL_spoons_is_asked_about_exactly_once()
    {
        // Published with the worked scenario: 16 tablespoons at 1.34 g/mL are 428.8 g by 20 mL spoons, 321.6 g by 15 mL.
        string card = File.ReadAllText(Path.Combine(SharedData.Repository, "examples", "demo", "cards", "slice-buckwheat-plum-loose.md"));

        WeighedDish weighed = Weigh(card);

        Doubt asked = Assert.Single(weighed.Doubts);
        Assert.Equal("429 g or 322 g of plum butter", asked.Moves);
        Assert.Equal("au", weighed.Measures);
        Assert.Equal(428.8, weighed.Components.SelectMany(c => c.Lines).Single(l => l.Food.FoodId == "plum-butter").Grams, 0.1);
        Assert.Equal(321.6, Weigh(card, "metric").Components.SelectMany(c => c.Lines).Single(l => l.Food.FoodId == "plum-butter").Grams, 0.1);
        Assert.DoesNotContain(weighed.Components.SelectMany(c => c.Lines), l => l.Grade == WeightGrade.Unknown);
    }

    [Fact]
    public void An_answered_question_written_into_the_card_is_not_asked_again()
    {
        string card = File.ReadAllText(Path.Combine(SharedData.Repository, "examples", "demo", "cards", "slice-buckwheat-plum-loose.md"));
        Candidate answer = Assert.Single(Weigh(card).Doubts).Candidates[1];

        WeighedDish again = Weigh(card.Replace("Not weighed yet.", "Not weighed yet. " + answer.Plain, StringComparison.Ordinal));

        Assert.Empty(again.Doubts);
        Assert.Equal("metric", again.Measures);
    }

    [Fact]
    public void A_card_in_grams_asks_nothing()
        => Assert.Empty(Weigh("# Sponge\n\nFrom Hobart.\n\n- 200 g plain flour\n- 150 g butter\n").Doubts);

    [Fact]
    public void Small_spoons_alone_are_no_reason_to_ask()
        => Assert.Empty(Weigh("# Sponge\n\nFrom Hobart.\n\n- 200 g plain flour\n- 1 teaspoon salt\n").Doubts);

    [Theory]
    [InlineData("2 tbsp honey", "au", 57.3, 0.1)]
    [InlineData("2 heaped tbsp cornflour", "metric", 37.3, 0.2)]
    [InlineData("juice of half a lemon", "metric", 24, 0.1)]
    [InlineData("1 cup plain flour", "us", 125, 0.1)]
    [InlineData("1 lb butter", "us", 453.59237, 1e-4)]
    [InlineData("250 ml whole milk", "metric", 257.8, 0.3)]
    [InlineData("3 gold leaves gelatine", "metric", 6.0, 0.01)]
    [InlineData("6 leaves of gelatine, 160 bloom", "metric", 15.0, 0.01)]
    [InlineData("1 stick butter", "us", 113.4, 0.01)]
    public void Measures_match_worked_values(string line, string measures, double grams, double tolerance)
        => Assert.Equal(grams, Line(line, measures).Grams, tolerance);

    [Theory]
    [InlineData("1 cup plain flour")]
    [InlineData("2-3 tbsp honey")]
    [InlineData("3 eggs")]
    [InlineData("a pinch of salt")]
    [InlineData("1 onion")]
    [InlineData("2 cloves garlic")]
    public void The_range_holds_the_best_figure_and_is_not_a_point(string line)
    {
        WeighedLine l = Line(line);

        Assert.True(l.Low < l.Grams && l.Grams < l.High, $"{l.Low} {l.Grams} {l.High} {l.Why.Text}");
        Assert.NotEqual(WeightGrade.Weighed, l.Grade);
    }

    [Fact]
    public void A_stated_mass_is_exact_and_weighed()
    {
        WeighedLine l = Line("250 g butter");

        Assert.Equal((250, 250, 250, WeightGrade.Weighed), (l.Grams, l.Low, l.High, l.Grade));
    }

    [Fact]
    public void A_cup_of_something_unknown_has_no_weight_and_is_asked()
    {
        WeighedDish w = Weigh("# X\n\n- 1 cup moon dust\n- 100 g sugar\n", "us");

        Assert.Equal(WeightGrade.Unknown, w.Components[0].Lines[0].Grade);
        Assert.Equal(WeightGrade.Unknown, w.Components[0].Grade);
        Assert.Equal(100, w.Components[0].Grams);
        Assert.Single(w.Doubts);
    }

    [Fact]
    public void To_taste_has_no_weight_and_is_not_asked()
        => Assert.Empty(Weigh("# X\n\n- salt to taste\n- 100 g sugar\n").Doubts);

    [Fact]
    public void Leaves_without_a_grade_are_asked_and_with_one_are_not()
    {
        Assert.Single(Weigh("# X\n\n- 4 leaves gelatine\n").Doubts);
        Assert.Empty(Weigh("# X\n\n- 4 gold leaves gelatine\n").Doubts);
    }

    [Fact]
    public void Measures_that_are_none_of_ours_are_refused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => Weigh("# X\n\n- 1 cup sugar\n", "roman"));

    [Fact]
    public void A_bird_is_no_country()
        => Assert.Equal("metric", Weigh("# Roast turkey\n\n- 2 cups milk\n").Measures);
}
