using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Tests.Formulas;
using Coulisse.Kitchen.Tests.Needs;

namespace Coulisse.Kitchen.Tests.Labels;

/// <summary>Sulphites, date marks, batches for diets.</summary>
public sealed class MarksTests
{
    private static Sulphites? Of(string card, AllergenRegime regime = AllergenRegime.Eu, double? final = null) => Sulphites.Of(WeighingTests.Weigh(card), regime, final);

    [Theory]
    [InlineData(60, 900, true)]  // 60 · 150 / 960 = 9.4 mg/kg
    [InlineData(150, 850, false)] // 150 · 150 / 1000 = 22.5 mg/kg
    public void Sulphites_are_summed_from_what_the_law_allows(double wine, double rest, bool below)
    {
        Sulphites s = Of(FormattableString.Invariant($"# Rice\n\n- {wine} g red wine\n- {rest} g water\n\n1. Boil.\n"))!;

        Assert.Equal(wine * 150 / (wine + rest), s.MostMilligramsPerKilogram!.Value, 0.01);
        Assert.Equal(below, s.BelowLimit);
        Assert.Equal(2 * s.MostMilligramsPerKilogram!.Value, Of(FormattableString.Invariant($"# Rice\n\n- {wine} g red wine\n- {rest} g water\n\n1. Boil.\n"), AllergenRegime.Eu, (wine + rest) / 2)!.MostMilligramsPerKilogram!.Value, 1e-9);
    }

    [Fact]
    public void Exactly_the_limit_is_declared_in_one_law_and_not_in_the_other()
    {
        // 10.0 mg/kg: from 10 in Australia and New Zealand, above 10 in the EU.
        const string Card = "# Sauce\n\n- 100 g red wine\n- 1400 g water\n\n1. Boil.\n";
        Assert.True(Of(Card)!.BelowLimit);
        Assert.False(Of(Card, AllergenRegime.Anz)!.BelowLimit);
    }

    [Fact]
    public void A_food_without_a_figure_leaves_the_sum_unsaid_and_a_dish_without_sulphites_has_none()
    {
        Assert.Null(Of("# Sauce\n\n- 100 g red wine\n- 100 g moon dust\n\n1. Boil.\n")!.BelowLimit);
        Assert.Null(Of("# Custard\n\n- 100 g whole milk\n- 10 g sugar\n\n1. Boil.\n"));
    }

    [Fact]
    public void The_shortest_keeping_makes_the_date_mark()
    {
        WeighedDish dish = WeighingTests.Weigh("# Tart\n\n## Case\n\nKeeps 5 days airtight.\n\n- 100 g plain flour\n\n1. Bake.\n\n## Cream\n\nKeeps 2 days at 4 °C.\n\n- 100 g cream\n\n1. Whip.\n");
        DateMark mark = DateMark.Of(dish)!;

        Assert.Equal(("Use by", 48.0, 4.0, "Cream"), (mark.Mark, mark.Hours!.Value, mark.Celsius!.Value, mark.Component));
        Assert.Null(DateMark.Of(WeighingTests.Weigh("# Tart\n\n- 100 g plain flour\n\n1. Bake.\n")));
        Assert.Equal("Best before", DateMark.Of(WeighingTests.Weigh("# Biscuit\n\nKeeps 14 days airtight.\n\n- 100 g plain flour\n\n1. Bake.\n"))!.Mark);
    }

    [Fact]
    public void The_variant_for_a_diet_is_made_in_the_cards_own_batch()
    {
        // The demo's vegetarian variant makes six bars; the sheet gives it to fewer seats than that.
        Occasions.Occasion occasion = Demo.Occasion;
        DietBatch batch = Assert.Single(DietBatches.Of(occasion, Guests.Of(occasion, AllergenRegime.Anz), AllergenRegime.Anz), b => b.Component.Contains("Agar", StringComparison.Ordinal));

        Assert.Equal((6.0, 1), (batch.Makes!.Value, batch.Batches));
        Assert.True(batch.Needed is > 0 and <= 6);
        Assert.Contains(batch.Allergens, a => a.Name == "egg");
        Assert.DoesNotContain(batch.Allergens, a => a.Code == "meat" && a.Status == AllergenStatus.Contains);
    }
}
