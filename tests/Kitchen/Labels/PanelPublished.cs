using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Tests.Formulas;
using Coulisse.Matter.Foods;
using Coulisse.Tests;

namespace Coulisse.Kitchen.Tests.Labels;

/// <summary>Rounding cases of three laws; a dish worked by hand after the mixed-recipe method; the demo's box labels.</summary>
public sealed class PanelPublished
{
    [Fact]
    public void All_rounding_cases_of_three_laws_come_out_as_published()
    {
        // Commission guidance December 2012; 21 CFR 101.9(c); Standard 1.2.8.
        IReadOnlyDictionary<string, string>[] cases = [.. SharedData.Rows("data/food/rounding-cases.tsv")];
        Assert.Equal(119, cases.Length);
        Assert.Empty(cases.Where(c => Fault(c) is not null).Select(Fault));
    }

    private static string? Fault(IReadOnlyDictionary<string, string> c)
    {
        AllergenRegime regime = c["regime"] switch { "EU" => AllergenRegime.Eu, "US" => AllergenRegime.Us, _ => AllergenRegime.Anz };
        PanelItem item = c["item"].Split([',', ' '])[0] switch
        {
            "energy" => c["unit"] == "kJ" ? PanelItem.Kilojoules : PanelItem.Kilocalories,
            "calories" => PanelItem.Kilocalories,
            "fat" => PanelItem.Macronutrient,
            "protein" => PanelItem.Macronutrient,
            "saturates" => PanelItem.Saturates,
            "salt" => PanelItem.Salt,
            "sodium" => PanelItem.Sodium,
            "cholesterol" => PanelItem.Cholesterol,
            "total" => c["item"].StartsWith("total fat", StringComparison.Ordinal) ? PanelItem.Fat : PanelItem.Macronutrient,
            _ => throw new InvalidOperationException(c["item"]),
        };
        string got = DeclaredFigure.Text(item, double.Parse(c["computed"], CultureInfo.InvariantCulture), regime);
        return c["declared"].Split(" or ").Contains(got, StringComparer.Ordinal) ? null : $"{c["regime"]} {c["item"]} {c["computed"]}: {got}, published {c["declared"]}";
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.1)]
    public void What_is_no_amount_is_refused(double x) => Assert.Throws<ArgumentOutOfRangeException>(() => DeclaredFigure.Text(PanelItem.Fat, x, AllergenRegime.Eu));

    [Fact]
    public void A_custard_without_loss_has_the_energy_worked_by_hand()
    {
        // Milk 500, cream 500, yolk 200, sugar 200 g of SR28 01077, 01053, 01125, 19335: EU 1031.45 kJ, 247.94 kcal, fat 17.84 g, salt 0.080 g per 100 g.
        WeighedDish dish = WeighingTests.Weigh("# Custard\n\n- 500 g whole milk\n- 500 g whipping cream\n- 200 g egg yolk\n- 200 g caster sugar\n\n1. Cook.\n");
        NutritionPanel panel = Panels.Of(dish, AllergenRegime.Eu).Match(p => p, e => throw new InvalidOperationException(string.Join("; ", e)));

        // The hand took carbohydrate by difference, which falls short of the sugars of milk and cream by 0.25 and 0.18 g: 2.6 kJ.
        Assert.Equal(1031.45 + (5 * (0.25 + 0.18) * 17 / 14), panel.Rows[0].Computed, 0.3);
        Assert.Equal(247.94 + (5 * (0.25 + 0.18) * 4 / 14), panel.Rows[1].Computed, 0.1);
        Assert.Equal(["18", "10", "17", "4.4", "0.08"], panel.Rows.Where(r => r.Name is "Fat" or "of which saturates" or "of which sugars" or "Protein" or "Salt").Select(r => r.Declared));
        Assert.Empty(panel.Missing);
    }

    [Fact]
    public void A_weight_at_the_end_takes_water_only_and_no_more_than_there_is()
    {
        WeighedDish dish = WeighingTests.Weigh("# Syrup\n\n- 500 g water\n- 500 g caster sugar\n\n1. Boil.\n");

        NutritionPanel half = Panels.Of(dish, AllergenRegime.Eu, 750).Match(p => p, e => throw new InvalidOperationException(string.Join("; ", e)));

        Assert.Equal(500 / 7.5, half.Rows.Single(r => r.Name == "Carbohydrate").Computed, 0.1);
        Assert.Equal("MIX002", Panels.Of(dish, AllergenRegime.Eu, 450).Match(_ => "", e => e[0].Code));
        Assert.Equal("MIX002", Panels.Of(dish, AllergenRegime.Eu, 1100).Match(_ => "", e => e[0].Code));
    }

    [Fact]
    public void The_American_panel_states_trans_fat_cholesterol_and_added_sugars_where_every_food_holds_them()
    {
        // SR28 per 100 g: milk 01077 cholesterol 10 mg, no trans fat held; egg yolk 01125 cholesterol 1,085 mg; sugar 19335 99.8 g, all added.
        NutritionPanel panel = Panels.Of(WeighingTests.Weigh("# Sabayon\n\n- 200 g egg yolk\n- 100 g caster sugar\n- 100 g water\n"), AllergenRegime.Us).Match(p => p, e => throw new InvalidOperationException(string.Join("; ", e)));

        Assert.Equal(1085 / 2.0, panel.Rows.Single(r => r.Name == "Cholesterol").Computed, 1);
        Assert.Equal(99.8 / 4, panel.Rows.Single(r => r.Name == "Includes Added Sugars").Computed, 0.1);

        NutritionPanel jam = Panels.Of(WeighingTests.Weigh("# Jam\n\n- 100 g strawberry jam\n- 10 g sugar\n"), AllergenRegime.Us).Match(p => p, e => throw new InvalidOperationException(string.Join("; ", e)));
        Assert.DoesNotContain(jam.Rows, r => r.Name == "Includes Added Sugars");
        Assert.Contains(jam.Missing, m => m.StartsWith("added sugars: not held for strawberry jam", StringComparison.Ordinal));
        NutritionPanel eu = Panels.Of(WeighingTests.Weigh("# Jam\n\n- 100 g strawberry jam\n- 10 g sugar\n"), AllergenRegime.Eu).Match(p => p, e => throw new InvalidOperationException(string.Join("; ", e)));
        Assert.Empty(eu.Missing);
    }

    [Fact]
    public void A_food_that_is_not_known_leaves_no_panel()
    {
        NutritionPanel panel = Panels.Of(WeighingTests.Weigh("# X\n\n- 100 g moon dust\n- 100 g sugar\n"), AllergenRegime.Eu).Match(p => p, e => throw new InvalidOperationException(string.Join("; ", e)));

        Assert.Empty(panel.Rows);
        Assert.Contains("moon dust", Assert.Single(panel.Missing), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("slice-buckwheat-plum.md", "plum-butter", 33.3)]
    [InlineData("tray-bake-pear-quark.md", "quark", 26.6)]
    [InlineData("tray-bake-pear-quark.md", "pear", 23.9)]
    [InlineData("tray-bake-pear-quark.md", "egg", 13.3)]
    [InlineData("tray-bake-pear-quark.md", "sugar", 12.5)]
    public void Box_labels_state_the_shares_worked_by_hand(string card, string food, double percent)
    {
        // Published with the worked scenario (P22), one tin of each, by weight at mixing.
        IngredientList list = Ingredients.Of(Tin(card), AllergenRegime.Eu);

        Assert.Equal(percent, list.Items.Single(i => i.FoodId == food).Percent, 0.06);
        Assert.Equal(list.Items.OrderByDescending(i => i.Grams).Select(i => i.Name), list.Items.Select(i => i.Name));
        Assert.Equal(100, list.Items.Sum(i => i.Percent), 1e-9);
    }

    [Fact]
    public void Allergens_are_emphasised_where_they_stand_or_added()
    {
        string text = Ingredients.Of(WeighingTests.Weigh("# Quark cake\n\n- 200 g quark\n- 100 g rye flour\n- 50 g sugar\n- 2 g agar\n\n1. Mix.\n"), AllergenRegime.Eu).Text;

        Assert.Equal("Ingredients: quark 56.8 % (MILK), RYE flour, sugar, gelling agent (E406): agar.", text);
    }

    [Fact]
    public void Blending_does_not_depend_on_the_order()
    {
        (string, double, Composition)[] foods = [.. new[] { "milk", "egg", "sugar", "plain-flour", "butter" }.Select((id, i) => (id, 50.0 + (i * 37), FoodTable.Default.Find(id)!.Composition))];

        Assert.Equal(Blend.Of(foods).Composition.Water!.Value, Blend.Of(foods.Reverse()).Composition.Water!.Value, 1e-12);
    }

    // One tin: the part that is a dish of its own for one seat is not in the box.
    private static WeighedDish Tin(string card)
    {
        WeighedDish whole = WeighingTests.Weigh(File.ReadAllText(Path.Combine(SharedData.Repository, "examples", "demo", "cards", card)));
        return whole with { Components = [.. whole.Components.Where(c => !c.Component.Name.Contains("Ramekin", StringComparison.Ordinal))] };
    }
}
