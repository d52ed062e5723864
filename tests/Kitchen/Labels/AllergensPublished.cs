using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Tests.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Tests.Labels;

/// <summary>Allergen lists of small dishes, worked by hand from Regulation (EU) 1169/2011 Annex II, the FDA guidance of January 2025 and the Food Standards Code, Schedule 9.</summary>
public sealed class AllergensPublished
{
    private static AllergenSheet Sheet(string lines, AllergenRegime regime)
        => Allergens.Of(WeighingTests.Weigh("# A dish\n\n" + string.Join('\n', lines.Split('|').Select(l => "- " + l)) + "\n\n1. Mix.\n"), regime);

    private static string[] Of(AllergenSheet s, AllergenStatus status) => [.. s.Dish.Where(l => l.Status == status).Select(l => l.Name)];

    [Fact]
    public void Pine_nut_is_named_in_the_US_and_ANZ_and_not_in_the_EU()
    {
        const string Sauce = "30 g pine nuts|50 g parmesan|100 g olive oil|60 g basil";

        Assert.Equal(["milk"], Of(Sheet(Sauce, AllergenRegime.Eu), AllergenStatus.Contains));
        Assert.Equal(["eggs"], Of(Sheet(Sauce, AllergenRegime.Eu), AllergenStatus.May));
        Assert.Equal(["milk", "pine nut"], Of(Sheet(Sauce, AllergenRegime.Us), AllergenStatus.Contains).Order(StringComparer.Ordinal));
        Assert.Equal("Contains milk, pine nut", Sheet(Sauce, AllergenRegime.Anz).Summary);
    }

    [Fact]
    public void Soy_sauce_brings_wheat_and_in_ANZ_gluten()
    {
        const string Dish = "120 g scallops|20 g soy sauce";

        Assert.Equal(["cereals containing gluten: wheat", "soybeans", "molluscs"], Of(Sheet(Dish, AllergenRegime.Eu), AllergenStatus.Contains));
        Assert.Equal(["wheat", "soy"], Of(Sheet(Dish, AllergenRegime.Us), AllergenStatus.Contains));
        Assert.Equal("Contains wheat, gluten, soy, mollusc", Sheet(Dish, AllergenRegime.Anz).Summary);
    }

    [Fact]
    public void Oats_barley_and_rye_are_no_US_allergens_and_bring_gluten_to_the_ANZ_summary()
    {
        const string Biscuit = "100 g rolled oats|50 g pearl barley|80 g butter";

        Assert.Equal(["milk"], Of(Sheet(Biscuit, AllergenRegime.Us), AllergenStatus.Contains));
        Assert.Equal(["wheat"], Of(Sheet(Biscuit, AllergenRegime.Us), AllergenStatus.May));
        Assert.Equal("Contains gluten, milk", Sheet(Biscuit, AllergenRegime.Anz).Summary);
    }

    [Fact]
    public void Celery_and_mustard_are_named_in_the_EU_only()
    {
        const string Remoulade = "500 g celeriac|100 g mayonnaise|20 g Dijon mustard";

        Assert.Equal(["eggs", "celery", "mustard"], Of(Sheet(Remoulade, AllergenRegime.Eu), AllergenStatus.Contains));
        Assert.Equal(["egg"], Of(Sheet(Remoulade, AllergenRegime.Us), AllergenStatus.Contains));
    }

    [Fact]
    public void Wheat_glucose_is_exempt_in_the_EU_and_asked_about_elsewhere()
    {
        Assert.DoesNotContain("cereals containing gluten: wheat", Of(Sheet("50 g glucose syrup", AllergenRegime.Eu), AllergenStatus.May));
        Assert.Contains("wheat", Of(Sheet("50 g glucose syrup", AllergenRegime.Us), AllergenStatus.May));
    }

    [Fact]
    public void The_US_summary_names_the_species_of_a_fish()
        => Assert.Equal("Contains: fish (salmon)", Sheet("500 g salmon", AllergenRegime.Us).Summary);

    [Fact]
    public void A_food_that_is_not_in_the_table_is_unknown_and_never_free()
    {
        AllergenLine line = Assert.Single(Sheet("100 g sugar|20 g moon dust", AllergenRegime.Eu).Dish);

        Assert.Equal((AllergenStatus.Unknown, "moon dust"), (line.Status, line.Name));
        Assert.Equal(4, line.Because[0].Line);
    }

    [Fact]
    public void An_unknown_food_whose_name_says_an_allergen_is_suspected_of_it()
        => Assert.Equal(["nuts: hazelnuts"], Of(Sheet("20 g hazelnut moonbeam", AllergenRegime.Eu), AllergenStatus.May));

    [Fact]
    public void A_dish_of_plain_foods_stays_silent()
        => Assert.Empty(Sheet("100 g sugar|200 g water|300 g apple|3 g fine salt", AllergenRegime.Eu).Dish);

    [Fact]
    public void Gelatine_of_an_animal_that_is_named_is_not_asked_about_fish()
    {
        Assert.Contains("fish", Of(Sheet("10 g gelatine powder", AllergenRegime.Eu), AllergenStatus.May));
        Assert.DoesNotContain("fish", Of(Sheet("10 g gelatine powder, bovine", AllergenRegime.Eu), AllergenStatus.May));
    }

    [Fact]
    public void A_part_carries_what_the_part_it_takes_from_carries()
    {
        WeighedDish dish = WeighingTests.Weigh("# A dish\n\n## C1 Custard\n\n- 100 g cream\n- 20 g egg yolk\n\n1. Cook.\n\n## C2 Topped\n\n- 50 g C1 Custard\n- 20 g sugar\n\n1. Top.\n");

        AllergenPart topped = Allergens.Of(dish, AllergenRegime.Eu).Parts.Single(p => p.Component.Contains("Topped", StringComparison.Ordinal));

        Assert.Equal(["eggs", "milk"], topped.Lines.Where(l => l.Status == AllergenStatus.Contains).Select(l => l.Name));
        Assert.All(topped.Lines.SelectMany(l => l.Because), b => Assert.Contains("Custard", b.Component, StringComparison.Ordinal));
        Assert.Null(Takes.Circle(dish.Dish));
    }

    [Fact]
    public void Parts_that_take_from_one_another_are_refused_with_the_line()
    {
        Dish dish = WeighingTests.Weigh("# A dish\n\n## C1 Base\n\n- 100 g C2\n- 20 g egg yolk\n\n1. Cook.\n\n## C2 Topped\n\n- 50 g C1\n- 20 g sugar\n\n1. Top.\n").Dish;

        Problem circle = Assert.IsType<Problem>(Takes.Circle(dish));

        Assert.Equal("WGH007", circle.Code);
        Assert.Contains(circle.Line, new[] { 5, 12 });
    }

    [Fact]
    public void Every_code_of_the_food_table_has_a_row_of_names()
    {
        string[] codes = [.. FoodTable.Default.Ids.Select(i => FoodTable.Default.Find(i)!).SelectMany(f => f.Contains.Concat(f.Depends)).Distinct()];

        Assert.NotEmpty(codes);
        Assert.Empty(codes.Except(AllergenNames.Codes));
    }

    [Theory]
    [InlineData("coeliac disease", "wheat rye barley oats")]
    [InlineData("walnut and other tree nuts", "almond hazelnut walnut cashew pecan brazil pistachio macadamia pinenut")]
    [InlineData("nut allergy", "peanut almond hazelnut walnut cashew pecan brazil pistachio macadamia pinenut")]
    [InlineData("mustard allergy", "mustard")]
    [InlineData("Senf", "mustard")]
    [InlineData("pregnant", "")]
    [InlineData("likes coconut and nutmeg", "")]
    public void A_declaration_closes_off_its_codes(string declared, string codes)
        => Assert.Equal(codes.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToImmutableArray(), Declared.Codes(declared));
}
