using CsCheck;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Tests.Formulas;

public sealed class ScalingLaws
{
    private const string Card = "# Cake\n\nServes 8. Makes one tin, 200 × 200 mm.\n\n## Ingredients\n\n- 250 g plain flour\n- 125 g butter\n- 3 g salt\n- 0.4 g xanthan gum\n- 2 eggs\n\n## Method\n\n1. Mix 5 min.\n2. Bake 40 min at 170 °C.\n";

    private static Batch Scale(ScaleTo to, string card = Card, double? step = null)
        => Scaling.Scale(WeighingTests.Weigh(card, "metric"), to, step).Match(b => b, p => throw new InvalidOperationException(p[0].Message));

    private static string Code(ScaleTo to, string card = Card, double? step = null)
        => Scaling.Scale(WeighingTests.Weigh(card, "metric"), to, step).Match(_ => "", p => p[0].Code);

    [Fact]
    public void Scale_by_k_then_by_its_inverse_is_the_card_again()
        => Gen.Double[0.05, 50].Sample(k =>
        {
            Batch there = Scale(new ScaleTo.Factor(k));
            double[] back = [.. there.Components.SelectMany(c => c.Lines).Select(l => l.Grams / k)];
            Assert.Equal([.. there.Components.SelectMany(c => c.Lines).Select(l => l.Weighed.Grams)], back, (a, b) => Math.Abs(a - b) < 1e-9 * Math.Max(1, a));
        });

    [Fact]
    public void Sum_of_scaled_lines_is_the_scaled_sum()
        => Gen.Double[0.05, 50].Sample(k =>
        {
            Batch b = Scale(new ScaleTo.Factor(k));
            Assert.Equal(b.Weighed.Components.Sum(c => c.Grams) * k, b.Components.Sum(c => c.Grams), 1e-6);
        });

    [Fact]
    public void Rounding_is_never_more_than_half_a_step()
        => Gen.Double[0.01, 100].Sample(k =>
        {
            foreach (BatchLine l in Scale(new ScaleTo.Factor(k)).Components.SelectMany(c => c.Lines))
            {
                Assert.True(Math.Abs(l.Rounded - l.Grams) <= (l.StepGrams / 2) + 1e-9, $"{l.Grams} {l.Rounded}");
            }
        });

    [Fact]
    public void Covers_scale_by_what_the_card_serves() => Assert.Equal(2.5, Scale(new ScaleTo.Covers(20)).Factor, 1e-12);

    [Fact]
    public void What_there_is_of_one_ingredient_sets_the_factor()
    {
        Batch b = Scale(new ScaleTo.Have("butter", 400));

        Assert.Equal(3.2, b.Factor, 1e-12);
        Assert.Equal(800, b.Components.SelectMany(c => c.Lines).Single(l => l.Weighed.Food.FoodId == "plain-flour").Grams, 1e-9);
    }

    [Fact]
    public void A_square_tin_of_18_for_a_round_of_20_is_the_worked_factor()
        // Worked value: round 20 cm to square 18 cm at the same depth, 1.0313; here the other way round.
        => Assert.Equal(1.0313, Scale(new ScaleTo.Tin([180, 180]), Card.Replace("200 × 200 mm", "200 mm", StringComparison.Ordinal)).Factor, 0.0001);

    [Fact]
    public void A_dose_below_5_g_keeps_its_hundredths()
    {
        BatchLine gum = Scale(new ScaleTo.Factor(1.3)).Components.SelectMany(c => c.Lines).Single(l => l.Weighed.Food.FoodId == "xanthan");

        Assert.Equal(0.52, gum.Rounded, 1e-9);
    }

    [Fact]
    public void A_step_asked_for_is_used_and_its_error_shown()
    {
        BatchLine salt = Scale(new ScaleTo.Factor(0.5), step: 1).Components.SelectMany(c => c.Lines).Single(l => l.Weighed.Food.FoodId == "salt");

        Assert.Equal(2, salt.Rounded);
        Assert.Equal(33.33, salt.RoundingPercent, 0.01);
    }

    [Fact]
    public void What_cannot_be_scaled_says_why()
    {
        Assert.Equal("WGH003", Code(new ScaleTo.Covers(0)));
        Assert.Equal("WGH003", Code(new ScaleTo.Factor(1), step: 0));
        Assert.Equal("WGH004", Code(new ScaleTo.Covers(10), "# X\n\n- 100 g sugar\n"));
        Assert.Equal("WGH005", Code(new ScaleTo.Have("truffle", 10)));
        Assert.Equal("WGH006", Code(new ScaleTo.Tin([180]), "# X\n\n- 100 g sugar\n"));
    }

    [Fact]
    public void A_component_that_would_run_short_is_lifted_and_its_neighbour_is_not()
    {
        const string Plated = "# Plate\n\nServes 10.\n\nOne plate: 20 g purée, 10 g crumb.\n\n## Purée\n\nMakes 150 g.\n\n- 150 g carrot\n\n## Crumb\n\nMakes 130 g.\n\n- 130 g rye bread\n";

        Batch b = Scale(new ScaleTo.Covers(20), Plated);

        Assert.Equal(20 * 20 / 150.0, b.Components.Single(c => c.Weighed.Component.Name == "Purée").Factor, 1e-9);
        Assert.Equal(2, b.Components.Single(c => c.Weighed.Component.Name == "Crumb").Factor, 1e-9);
    }
}
