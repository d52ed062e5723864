using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Tests.Formulas;
using Coulisse.Kitchen.Trials;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Tests.Labels;

/// <summary>The panel of what the method leaves: stated losses, weighed trials, what a kind of bake loses; trim; minerals and vitamins; daily values.</summary>
public sealed class MadePanelTests
{
    private static NutritionPanel Panel(string card, AllergenRegime regime = AllergenRegime.Eu, UnstatedLoss? loss = null, bool asMixed = false)
        => Panels.Of(WeighingTests.Weigh(card), regime, unstated: loss, asMixed: asMixed).Match(p => p, e => throw new InvalidOperationException(string.Join("; ", e)));

    private static double Row(NutritionPanel panel, string name) => panel.Rows.First(r => r.Name == name).Computed;

    private const string Cake = "# Cake\n\n- 250 g plain flour\n- 250 g caster sugar\n- 250 g butter\n- 250 g egg\n\n1. Beat.\n";

    [Fact]
    public void A_stated_weight_after_the_oven_goes_into_the_panel()
    {
        NutritionPanel raw = Panel(Cake), baked = Panel(Cake + "2. Bake at 170 °C for 40 min until it weighs about 900 g.\n");

        Assert.Equal("as mixed", raw.Basis);
        Assert.Equal("as its method leaves it, 900 g of 1000 g mixed", baked.Basis);
        Assert.Equal(Row(raw, "Fat") / 0.9, Row(baked, "Fat"), 1e-9);
        Assert.Equal(Row(raw, "Energy") / 0.9, Row(baked, "Energy"), 1e-6);
        Assert.All(baked.Rows, r => Assert.Null(r.Range));
        Assert.All(raw.Rows.Zip(Panel(Cake + "2. Bake at 170 °C for 40 min until it weighs about 900 g.\n", asMixed: true).Rows), r => Assert.Equal(r.First.Computed, r.Second.Computed, 1e-9));
    }

    [Fact]
    public void A_bake_that_states_nothing_loses_what_its_kind_does_with_its_range_and_source()
    {
        // Cake: 10 % in the oven, 8 to 12 (a published measurement, 10.3 %).
        NutritionPanel raw = Panel(Cake), baked = Panel(Cake + "2. Bake at 170 °C for 40 min.\n");

        Assert.Equal("as its method leaves it, 900 g (880 to 920 g) of 1000 g mixed", baked.Basis);
        Assert.Equal(Row(raw, "Fat") / 0.9, Row(baked, "Fat"), 1e-9);
        (double low, double high) = baked.Rows.Single(r => r.Name == "Fat").Range!.Value;
        Assert.Equal(Row(raw, "Fat") / 0.92, low, 1e-9);
        Assert.Equal(Row(raw, "Fat") / 0.88, high, 1e-9);
        Assert.Contains(baked.Changes, c => c.Contains("loses about 10 % (8 to 12 %), as cake does, not weighed", StringComparison.Ordinal));

        // Without leave to take a kind's figure, and for what is no kind of bake, nothing is taken.
        Assert.Equal("as mixed", Panel(Cake + "2. Bake at 170 °C for 40 min.\n", loss: UnstatedLoss.None).Basis);
        Assert.Equal("as mixed", Panel("# Gratin\n\n- 500 g potato\n- 250 g whole milk\n\n1. Bake at 170 °C for 40 min.\n").Basis);
    }

    [Fact]
    public void A_weighed_trial_goes_before_the_kind_and_the_card_before_the_trial()
    {
        Dish dish = WeighingTests.Weigh(Cake + "2. Bake at 170 °C for 40 min.\n").Dish;
        Trial Made(double outGrams, bool? good = true) => new() { Card = "Cake", Good = good, Yields = [new("Cake", 2000, outGrams, null, 1)] };
        UnstatedLoss loss = TrialLosses.Of(dish, [Made(1740), Made(1700), Made(1200, false)]);

        NutritionPanel baked = Panel(Cake + "2. Bake at 170 °C for 40 min.\n", loss: loss);
        Assert.Equal("as its method leaves it, 860 g (850 to 870 g) of 1000 g mixed", baked.Basis);
        Assert.Contains(baked.Changes, c => c.Contains("loses about 14 % (13 to 15 %), as weighed in 2 trials", StringComparison.Ordinal));
        Assert.Equal("as its method leaves it, 900 g of 1000 g mixed", Panel(Cake + "2. Bake at 170 °C for 40 min until it weighs about 900 g.\n", loss: loss).Basis);

        // What came out heavier, and what nobody weighed going in, tell no loss.
        Assert.Empty(TrialLosses.Of(dish, [Made(2100), new Trial { Card = "Cake", Yields = [new("Cake", null, 900, null, 1)] }]).Weighed);
    }

    [Fact]
    public void Trim_leaves_less_of_the_same_and_a_part_taken_is_as_its_own_method_leaves_it()
    {
        NutritionPanel trimmed = Panel(Cake + "2. Bake at 170 °C for 40 min until it weighs about 900 g.\n3. Trim the edges level; it weighs 800 g.\n");
        Assert.Equal("as its method leaves it, 800 g of 1000 g mixed", trimmed.Basis);
        Assert.Equal(Row(Panel(Cake), "Fat") / 0.9, Row(trimmed, "Fat"), 1e-9);

        // 600 g of syrup boiled down to 400 g (300 g of sugar), all of it taken with 100 g of water: 60 g of sugar in 100 g.
        const string Taken = "# Drink\n\n## C1 Syrup\n\n- 300 g caster sugar\n- 300 g water\n\n1. Boil and reduce until it weighs about 400 g.\n\n## C2 Glass\n\n- 400 g C1 Syrup\n- 100 g water\n\n1. Stir.\n";
        NutritionPanel drink = Panel(Taken);
        Assert.Equal("as its method leaves it, 500 g of 700 g mixed", drink.Basis);
        Assert.Equal(300 * 0.998 / 5, Row(drink, "of which sugars"), 0.05);
        WeighedDish weighed = WeighingTests.Weigh(Taken);
        Assert.Equal(300 * 0.998 / 5, MadeDish.Parts(weighed).Match(m => m[1].Mixed.Composition!.Sugars!.Value, _ => 0), 0.05);
        Assert.Equal(400 * 300 * 0.998 / 600 / 5, Blending.Of(weighed).Match(m => m[1].Composition!.Sugars!.Value, _ => 0), 0.05);
    }

    [Fact]
    public void A_dish_scaled_and_made_is_the_dish_made_and_scaled_and_its_parts_sum_as_before()
    {
        CsCheck.Check.Sample(CsCheck.Gen.Select(CsCheck.Gen.Double[0.2, 5], CsCheck.Gen.Int[2, 25], CsCheck.Gen.Int[0, 30]), (factor, loss, trim) =>
        {
            string Card(double k) => FormattableString.Invariant($"# Cake\n\n- {250 * k:0.######} g plain flour\n- {250 * k:0.######} g caster sugar\n- {250 * k:0.######} g butter\n- {250 * k:0.######} g egg\n\n1. Beat.\n2. Bake at 170 °C for 40 min; it loses {loss} %.\n3. Trim it; it loses {trim} %.\n");
            NutritionPanel one = Panel(Card(1)), more = Panel(Card(factor));
            double solids(NutritionPanel p) => p.Grams!.Value / 100 * (Row(p, "Fat") + Row(p, "Carbohydrate") + Row(p, "Protein"));
            return one.Rows.Zip(more.Rows).All(r => Math.Abs(r.First.Computed - r.Second.Computed) < 1e-4 * Math.Max(1, r.First.Computed))
                && Math.Abs((more.Grams!.Value / one.Grams!.Value / factor) - 1) < 1e-5
                && Math.Abs((solids(one) / solids(Panel(Cake)) / (1 - (trim / 100.0))) - 1) < 1e-9;
        }, iter: 60);
    }

    [Fact]
    public void A_loss_that_cannot_be_refuses_the_panel_with_its_line()
    {
        WeighedDish dish = WeighingTests.Weigh("# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil until it weighs about 400 g.\n");
        Assert.Equal(("MIX002", 6), Panels.Of(dish, AllergenRegime.Eu).Match(_ => ("", 0), p => (p[0].Code, p[0].Line)));
        Assert.Equal("", Panels.Of(WeighingTests.Weigh("# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil until it weighs about 550 g.\n"), AllergenRegime.Eu).Match(_ => "", p => p[0].Code));
    }

    [Fact]
    public void A_weight_that_may_be_of_one_of_several_lists_is_no_fault_and_is_not_built_on()
    {
        // 500 g of juice boiled to 100 g beside 500 g of sugar: of both lists together that would take more water than there is.
        NutritionPanel panel = Panel("# Jelly\n\n## Jelly\n\nThe reduction:\n\n- 500 g apple juice\n\nThe sugar:\n\n- 500 g caster sugar\n\n1. Boil and reduce the juice until it weighs about 100 g.\n2. Stir in the sugar.\n");
        Assert.Equal("as mixed", panel.Basis);
        Assert.NotEmpty(panel.Rows);
        Assert.Contains(panel.Missing, m => m.Contains("the weight may be of one of them", StringComparison.Ordinal) && m.Contains("taken as mixed", StringComparison.Ordinal));
    }

    [Fact]
    public void What_stays_in_a_sieve_is_not_guessed()
    {
        NutritionPanel panel = Panel("# Stock\n\n- 500 g carrot\n- 1000 g water\n\n1. Simmer 60 min.\n2. Strain; it weighs 900 g.\n");
        Assert.Equal("as mixed", panel.Basis);
        Assert.Contains(panel.Missing, m => m.Contains("strained off; its parts are not known", StringComparison.Ordinal) && m.Contains("taken as mixed", StringComparison.Ordinal));
    }

    [Fact]
    public void Vitamins_ride_with_the_steps_and_are_not_lost_twice()
    {
        // USDA retention factors, release 6: roots simmered, water used (3456) vitamin C 75 %; water poured off (3455) 65 %; each is from raw to done, so not multiplied.
        static double VitaminC(string steps)
        {
            WeighedDish dish = WeighingTests.Weigh($"# Carrots\n\n- 1000 g carrot\n- 500 g water\n\n{steps}\n");
            MixedComponent mixed = Blending.Of(dish).Match(m => m[0], _ => null!);
            return StageMixtures.Of(dish.Components[0], mixed)[^1] is { } s ? s.Composition!.VitaminCMilligrams!.Value * s.Grams / (mixed.Composition!.VitaminCMilligrams!.Value * mixed.Grams) : 0;
        }

        Assert.Equal(0.75, VitaminC("1. Simmer for 20 min until it weighs about 1200 g."), 1e-9);
        Assert.Equal(0.65, VitaminC("1. Boil for 20 min.\n2. Drain; they weigh 1000 g."), 1e-9);
        Assert.Equal(0.75 * 0.5, VitaminC("1. Simmer for 20 min until it weighs about 1200 g.\n2. Trim; it weighs 600 g."), 1e-9);
    }

    [Fact]
    public void Vitamin_D_stands_on_the_American_panel_where_every_food_holds_it_and_else_is_said_to_be_unknown()
    {
        // SR28 per 100 g: egg yolk 01125 vitamin D 5.4 µg, whole milk 01077 0.1 (unfortified), sugar none.
        NutritionPanel held = Panel("# Sabayon\n\n- 200 g egg yolk\n- 100 g caster sugar\n- 100 g water\n", AllergenRegime.Us);
        PanelRow d = held.Rows.Single(r => r.Name == "Vitamin D");
        Assert.Equal((5.4 / 2, "µg", "2.7", "15"), (Math.Round(d.Computed, 2), d.Unit, d.Declared, d.DailyValue));
        Assert.DoesNotContain("Vitamin D", held.NotStated);

        // Quince of SR28 holds no vitamin D: no row, never 0.
        NutritionPanel lacking = Panel("# Paste\n\n- 500 g quince\n- 500 g caster sugar\n", AllergenRegime.Us);
        Assert.DoesNotContain(lacking.Rows, r => r.Name == "Vitamin D");
        Assert.Contains("Vitamin D", lacking.NotStated);
        Assert.Contains(lacking.Missing, m => m.StartsWith("vitamin D: not held for quince", StringComparison.Ordinal));
        Assert.Empty(Panel("# Paste\n\n- 500 g quince\n- 500 g caster sugar\n").NotStated);
    }

    [Fact]
    public void Fibre_that_a_food_does_not_hold_is_not_stated_as_if_it_were_none()
    {
        NutritionPanel panel = Panel("# Purslane\n\n- 500 g purslane\n", AllergenRegime.Us);
        Assert.DoesNotContain(panel.Rows, r => r.Name == "Dietary Fiber");
        Assert.Contains("Dietary Fiber", panel.NotStated);
        Assert.Contains(Panel("# Milk\n\n- 500 g whole milk\n", AllergenRegime.Us).Rows, r => r.Name == "Dietary Fiber");
    }

    [Theory]
    // The sample label of 21 CFR 101.9(d): amount and percent as printed there (from memory).
    [InlineData("Total Fat", 8, "10")]
    [InlineData("Saturated Fat", 1, "5")]
    [InlineData("Sodium", 160, "7")]
    [InlineData("Total Carbohydrate", 37, "13")]
    [InlineData("Dietary Fiber", 4, "14")]
    [InlineData("Includes Added Sugars", 10, "20")]
    [InlineData("Vitamin D", 2, "10")]
    [InlineData("Calcium", 260, "20")]
    [InlineData("Iron", 8, "45")]
    [InlineData("Potassium", 235, "6")]
    [InlineData("Trans Fat", 1, null)]
    [InlineData("Total Sugars", 12, null)]
    [InlineData("Protein", 3, null)]
    public void Daily_values_are_those_of_the_sample_label(string row, double amount, string? percent) => Assert.Equal(percent, DailyValue.Percent(row, amount));

    [Fact]
    public void A_suppliers_vitamin_D_and_minerals_reach_the_panel()
    {
        FoodTable foods = OwnFoods.Read("name,source,water,protein,fat,carbohydrate,calcium,iron,potassium,vitd\nhouse milk,dairy's sheet,88,3.4,3.6,4.8,120,0.1,150,1.5\n", AllergenNames.Codes).Match(t => t, p => throw new InvalidOperationException(p[0].Message));
        WeighedDish dish = Coulisse.Cards.Reading.CardReader.Read(new CardText("# Milk\n\n- 500 g house milk\n")).Match(d => Weighing.Weigh(d, null, foods), _ => null!);
        NutritionPanel panel = Panels.Of(dish, AllergenRegime.Us).Match(p => p, _ => null!);

        Assert.Equal((1.5, 120, 0.1, 150), (Row(panel, "Vitamin D"), Row(panel, "Calcium"), Row(panel, "Iron"), Row(panel, "Potassium")));
    }
}
