using System.Collections.Immutable;
using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Layouts of real cards, each with a near miss that must stay as it is. Our own examples.</summary>
public sealed class LayoutTests
{
    private static string Outline(Dish d) => string.Join(" | ", d.Components.Select(c => $"{c.Name}: {string.Join(", ", c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{f.Grams} {f.Food}")))}"));

    [Fact]
    public void Stage_columns_are_components_and_the_total_column_is_not_added() =>
        Assert.Equal("Poolish: 100 rye flour, 100 water | Dough: 400 rye flour, 9 salt", Outline(Read("# Loaf\n\n| Item | Poolish | Dough | Total |\n|--|--|--|--|\n| rye flour | 100 g | 400 g | 500 g |\n| water | 100 g | | 100 g |\n| salt | | 9 g | 9 g |")));

    [Fact]
    public void Size_columns_are_alternatives_and_are_asked()
    {
        Dish d = Read("# Tart\n\n| Item | 18 cm | 24 cm |\n|--|--|--|\n| cream | 200 g | 350 g |\n| yolk | 80 g | 140 g |");

        // The size is no name of the only list: it is said beside it.
        Assert.Equal(": 200 cream, 80 yolk", Outline(d));
        Assert.Contains(d.Notes, n => n.Text == "18 cm");
        Assert.Equal("24 cm", Assert.Single(d.Variants).Name);
        Assert.Single(d.Doubts);
    }

    [Fact]
    public void Grams_and_ounces_side_by_side_are_one_amount() =>
        Assert.Equal(": 200 cream, 80 yolk", Outline(Read("# Tart\n\n| Item | g | oz |\n|--|--|--|\n| cream | 200 | 7 |\n| yolk | 80 | 2.8 |")));

    [Fact]
    public void A_table_without_amounts_is_no_list() =>
        Assert.Empty(Read("# Tart\n\n## Base\n- 100 g flour\n\n| Who | What |\n|--|--|\n| Ada | bakes |\n| Ben | plates |").Components.Single().Ingredients.Skip(1));

    [Fact]
    public void Salt_between_amounts_is_no_heading() =>
        Assert.Equal(": 200 flour,  Salt, 90 butter", Outline(Read("Crust\n- 200 g flour\n- Salt\n- 90 g butter")));

    // How many it serves is no line of the list, although a count stands behind a word; "Eggs 4" is one, counted and without grams.
    [Theory]
    [InlineData("# Pot\n\nServes 4.\n\n- 100 g milk\n- 30 g sugar", ": 100 milk, 30 sugar")]
    [InlineData("# Topf\n\nErgibt 12.\n\n- 100 g Milch\n- 30 g Zucker", ": 100 Milch, 30 Zucker")]
    [InlineData("# Pot\n\nEggs 4\nmilk 100 g\nsugar 30 g", ":  Eggs, 100 milk, 30 sugar")]
    public void What_it_serves_is_no_food(string card, string outline) => Assert.Equal(outline, Outline(Read(card)));

    [Fact]
    public void Bare_first_bullet_before_amounts_heads_the_list_but_a_known_food_does_not()
    {
        Assert.Equal("Quince paste: 200 quince", Outline(Read("- Quince paste\n- 200 g quince")));
        Assert.Equal(":  Butter, 200 quince", Outline(Read("- Butter\n- 200 g quince")));
    }

    [Fact]
    public void Two_lists_of_one_part_are_never_summed()
    {
        Dish d = Read("# Pie of 20 cm\n\n## Pastry, 20 cm\n- 200 g flour\n- 100 g lard\n\n## Pastry, 26 cm\n- 340 g flour\n- 170 g lard\n\n1. Rub the lard into the flour.");

        Assert.Equal("Pastry, 20 cm: 200 flour, 100 lard", Outline(d));
        Assert.Empty(d.Doubts);
    }

    [Fact]
    public void Two_parts_with_figures_in_their_names_and_other_foods_stay_two() =>
        Assert.Equal(2, Read("# Cake\n\n## Layer 1\n- 200 g flour\n- 100 g lard\n\n## Layer 2\n- 340 g cream\n- 170 g sugar").Components.Length);

    [Fact]
    public void Steps_of_a_common_method_go_where_their_foods_are()
    {
        ImmutableArray<Component> c = Read("# Plate\n\n## Gel\n- 200 g quince\n- 2 g agar\n\n## Crumb\n- 90 g hazelnut\n\n## Method\n1. Boil quince and agar 2 min.\n2. Roast the hazelnut 10 min.").Components;

        Assert.Equal(["Boil quince and agar 2 min."], c[0].Steps.Select(s => s.Text));
        Assert.Equal(["Roast the hazelnut 10 min."], c[1].Steps.Select(s => s.Text));
    }

    [Theory]
    [InlineData("2% salt (on flour)", 2.0, "flour", "salt")]
    [InlineData("2 % salt on flour", 2.0, "flour", "salt")]
    public void Share_of_a_base_is_no_amount(string line, double percent, string of, string food)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(line, "en").Foods);
        Assert.Equal((percent, of, food), (f.Percent, f.PercentOf, f.Food));
    }

    [Fact]
    public void Footnote_names_the_other_food() =>
        Assert.Equal("5 g agar", Read("Gel\n- 12 g leaf gelatine¹\n- 300 g stock\n¹ or 5 g agar").Components[0].Ingredients[0].Foods[0].Alternative);

    [Theory]
    [InlineData("Makes a big slice tin, cut into 28.", "1 tin, 28 pieces")]
    [InlineData("Makes one large loaf tin (about 12 slices).", "1 loaf, 12 pieces")]
    [InlineData("Makes 2 small cakes.", "2 cakes")]
    [InlineData("Makes 12 slices, cut into 3 cm strips.", "12 slice")]
    [InlineData("Makes 12 large.", "12 pieces")]
    public void A_size_before_what_it_makes_is_no_thing(string sentence, string yields) =>
        Assert.Equal(yields, string.Join(", ", Told.Read($"# A\n\n{sentence}\n\n- 200 g butter\n- 300 g flour\n\n1. Mix.\n").Yields.Select(y => FormattableString.Invariant($"{y.Amount} {y.Unit}"))));
}
