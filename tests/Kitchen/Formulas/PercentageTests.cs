using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Tests.Formulas;

/// <summary>Baker's and total percentages, and the rules of balance with their near misses.</summary>
public sealed class PercentageTests
{
    private static Percentages Of(string card, int component = 0)
    {
        WeighedDish dish = WeighingTests.Weigh(card);
        return Percentages.Of(dish, dish.Components[component])!;
    }

    [Fact]
    public void A_dough_by_percent_weighs_what_the_sum_says()
    {
        // [bp1] flour 1000 g; water 65, salt 2, fresh yeast 2, butter 5 %: 1,740 g.
        Percentages p = Of("# Dough\n\n- 1000 g bread flour\n- 650 g water\n- 20 g salt\n- 20 g fresh yeast\n- 50 g butter\n\n1. Knead.\n");

        Assert.Equal(1740, p.Grams, 1e-9);
        Assert.Equal([100, 65, 2, 2, 5], p.Lines.Select(l => Math.Round(l.OfFlour!.Value, 9)));
        Assert.Equal(100, p.Lines.Sum(l => l.OfTotal), 1e-9);
    }

    [Fact]
    public void Flour_and_water_of_a_preferment_count()
    {
        // [bp3] poolish 300 flour + 300 water, final 700 flour + 360 water: 66.0 %.
        Percentages p = Of("# Bread\n\n## C1 Poolish\n\n- 300 g bread flour\n- 300 g water\n\n1. Stir.\n\n## C2 Dough\n\n- 600 g C1 Poolish\n- 700 g bread flour\n- 360 g water\n\n1. Knead.\n", 1);

        Assert.Equal(1000, p.Flour, 1e-6);
        Assert.Equal(66.0, p.Hydration!.Value, 0.1); // tap water of the table is 99.9 % water
    }

    [Fact]
    public void Milk_and_egg_count_with_their_water()
    {
        // [bp5] flour 500, milk 200, egg 100, water 50 is 60.0 % with milk at 87.5 and egg at 75 %; our rows hold 88.13 and 76.15 %.
        Percentages p = Of("# Dough\n\n- 500 g bread flour\n- 200 g whole milk\n- 100 g egg\n- 50 g water\n\n1. Knead.\n");

        Assert.Equal(60.0 + ((200 * 0.0063) + (100 * 0.0115)) / 5, p.Hydration!.Value, 0.02);
    }

    [Theory]
    [InlineData(200, 200, 200, 200, "", "")] // a pound cake balances
    [InlineData(200, 200, 200, 90, "", "as much egg as fat")]
    [InlineData(200, 360, 100, 200, "- 200 g whole milk\n", "about the most")]
    [InlineData(200, 280, 100, 150, "- 140 g whole milk\n", "")] // high-ratio, balanced
    [InlineData(200, 280, 200, 150, "- 140 g whole milk\n", "egg goes above fat")]
    [InlineData(200, 280, 100, 150, "", "reach the sugar")]
    [InlineData(200, 200, 200, 200, "- 20 g baking powder\n", "baking powder")]
    [InlineData(200, 200, 200, 200, "- 8 g baking powder\n", "")]
    public void A_cake_is_told_what_the_trade_would_say(double flour, double sugar, double butter, double egg, string more, string remark)
    {
        WeighedDish dish = WeighingTests.Weigh(FormattableString.Invariant($"# Cake\n\n- {flour} g plain flour\n- {sugar} g caster sugar\n- {butter} g butter\n- {egg} g egg\n{more}\n1. Beat.\n2. Bake at 170 °C for 40 min.\n"));
        ImmutableArray<string> said = BalanceRules.Of(dish, dish.Components[0]);

        if (remark.Length == 0)
        {
            Assert.Empty(said);
        }
        else
        {
            Assert.Contains(said, s => s.Contains(remark, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData(20, 0)]
    [InlineData(30, 1)]
    public void Salt_of_bread_is_remarked_on_only_when_it_is_far_off(double salt, int remarks)
    {
        WeighedDish dish = WeighingTests.Weigh(FormattableString.Invariant($"# Bread\n\n- 1000 g bread flour\n- 650 g water\n- {salt} g salt\n- 20 g fresh yeast\n\n1. Knead.\n2. Bake at 230 °C for 35 min.\n"));
        Assert.Equal(remarks, BalanceRules.Of(dish, dish.Components[0]).Length);
    }

    [Fact]
    public void A_sauce_with_flour_is_no_cake()
    {
        WeighedDish dish = WeighingTests.Weigh("# Sauce\n\n- 40 g plain flour\n- 40 g butter\n- 500 g whole milk\n\n1. Simmer.\n");
        Assert.Empty(BalanceRules.Of(dish, dish.Components[0]));
    }

    [Fact]
    public void Agents_are_judged_by_what_the_card_says()
    {
        string Card(string fruit, string step) => $"# Jelly\n\n- 500 g apple juice\n- 100 g {fruit}\n- 8 g gelatine powder, 250 bloom\n\n1. {step}\n2. Melt the gelatine in it and chill.\n";
        ImmutableArray<string> Said(string card) => Blending.Of(WeighingTests.Weigh(card)).Match(m => m[0].Agents[0].Remarks, _ => []);

        Assert.Contains(Said(Card("pineapple", "Stir.")), r => r.StartsWith("raw pineapple", StringComparison.Ordinal));
        Assert.DoesNotContain(Said(Card("pineapple", "Boil the pineapple in the juice 2 min.")), r => r.StartsWith("raw", StringComparison.Ordinal));
        Assert.DoesNotContain(Said(Card("pineapple, tinned", "Stir.")), r => r.StartsWith("raw", StringComparison.Ordinal));
        Assert.Contains(Said(Card("apple", "Stir, the juice is at pH 3.2.")), r => r.StartsWith("pH 3.2", StringComparison.Ordinal));
        Assert.Contains(Said(Card("apple", "Stir.")), r => r.Contains("√bloom", StringComparison.Ordinal));
    }

    [Fact]
    public void Agar_that_is_never_boiled_is_said_and_a_filling_baked_elsewhere_is_not()
    {
        ImmutableArray<string> Said(string card) => Blending.Of(WeighingTests.Weigh(card)).Match(m => m[0].Agents[0].Remarks, _ => []);

        Assert.Contains(Said("# Gel\n\n- 500 g water\n- 4 g agar\n\n1. Stir it in cold and chill.\n"), r => r.StartsWith("it must boil", StringComparison.Ordinal));
        Assert.DoesNotContain(Said("# Gel\n\n- 500 g water\n- 4 g agar\n\n1. Bring to the boil, simmer 2 min.\n"), r => r.StartsWith("it must boil", StringComparison.Ordinal));
        Assert.DoesNotContain(Said("# Tart\n\n## Filling\n\n- 500 g quark\n- 20 g cornflour\n\n1. Mix.\n\n## Putting together\n\n1. Fill and bake at 170 °C for 40 min.\n"), r => r.StartsWith("it must boil", StringComparison.Ordinal));
    }

    [Fact]
    public void Fat_by_volume_of_a_mayonnaise_is_the_published_one()
    {
        // 80 % oil by mass is φ 0.82 (measured against 1.05 g/mL of the water phase); with plain water 0.813.
        MixedComponent m = Blending.Of(WeighingTests.Weigh("# Emulsion\n\n- 800 g sunflower oil\n- 200 g water\n\n1. Blend.\n")).Match(x => x[0], _ => null!);
        Assert.Equal(81.5, m.FatByVolume!.Value, 0.7);
    }
}
