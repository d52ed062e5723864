using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Tests.Formulas;

namespace Coulisse.Kitchen.Tests.Labels;

/// <summary>What a bracket says a thing is made of counts among its allergens; what only looks like it does not. By Regulation (EU) 1169/2011 Annex II and the reading of a cook.</summary>
public sealed class MadeOfTests
{
    private static AllergenSheet Sheet(string line, string title = "A dish", string end = "Mix.")
        => Allergens.Of(WeighingTests.Weigh($"# {title}\n\n- {line}\n- 10 g sugar\n\n1. {end}\n"), AllergenRegime.Eu);

    private static string Codes(AllergenSheet s, AllergenStatus status) => string.Join(' ', s.Dish.Where(l => l.Status == status && l.Code is not null).Select(l => l.Code).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("50 g roux (butter & flour)", "milk wheat")]
    [InlineData("80 g panade (white bread, milk)", "milk wheat")]
    [InlineData("200 g mirepoix (carrot, celery, onion)", "celery")]
    [InlineData("200 g roux (100 g butter, 100 g flour)", "milk wheat")]
    [InlineData("60 g dukkah (hazelnuts, sesame seeds, coriander)", "hazelnut sesame")]
    [InlineData("50 g sauce base [butter & flour]", "milk wheat")]
    [InlineData("50 g paste (made with almonds)", "almond")]
    [InlineData("120 g duxelles (mushrooms and shallot, cold butter)", "milk")]
    public void What_a_bracket_says_a_thing_is_made_of_it_contains(string line, string codes) => Assert.Equal(codes, Codes(Sheet(line), AllergenStatus.Contains));

    [Fact]
    public void What_the_row_is_not_known_to_hold_is_added_and_nothing_is_told_twice()
    {
        AllergenSheet sheet = Sheet("40 g pesto (basil, pine nuts, parmesan, walnuts)");

        Assert.Contains("walnut", Codes(sheet, AllergenStatus.Contains), StringComparison.Ordinal);
        Assert.Single(sheet.Dish.Single(l => l.Code == "milk").Because, r => r.Status == AllergenStatus.Contains);
    }

    [Fact]
    public void The_reason_names_the_line_and_the_words()
    {
        AllergenReason reason = Assert.Single(Sheet("50 g roux (butter & flour)").Dish.Single(l => l.Code == "milk").Because, r => r.Status == AllergenStatus.Contains);

        Assert.Equal(("butter", 3), (reason.Food, reason.Line));
        Assert.Contains("“roux”", reason.Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("100 g frying fat (butter or oil)", "milk")]
    [InlineData("100 g thickener (flour or butter)", "milk wheat")]
    public void Of_two_that_may_be_in_it_each_is_possible_and_none_is_sure(string line, string may)
    {
        AllergenSheet sheet = Sheet(line);

        Assert.Equal("", Codes(sheet, AllergenStatus.Contains));
        Assert.Equal(may, string.Join(' ', Codes(sheet, AllergenStatus.May).Split(' ').Where(c => may.Contains(c, StringComparison.Ordinal))));
    }

    [Theory]
    [InlineData("1 onion (finely chopped)")]
    [InlineData("200 g onions (see p. 3)")]
    [InlineData("2 beetroot (salt-baked)")]
    [InlineData("100 g oil (no nuts)")]
    [InlineData("100 g sorbet base (without milk)")]
    [InlineData("100 g stabiliser (egg-free)")]
    [InlineData("30 g ginger (a piece the size of a walnut)")]
    [InlineData("300 g carrots (for the fish)")]
    [InlineData("200 g ham (cut from the bone)")]
    [InlineData("3 potatoes (peeled, cooked and mashed)")]
    [InlineData("200 g coconut cream, chilled")]
    [InlineData("6 scallions, white and green parts separated")]
    [InlineData("200 g mixed mushrooms (chestnut, oyster, shiitake)")]
    public void What_is_done_to_a_food_or_not_in_it_brings_nothing(string line) => Assert.Equal("", Codes(Sheet(line), AllergenStatus.Contains));

    [Theory]
    [InlineData("50 g Mehlschwitze (Butter und Mehl)", "de", "milk wheat")]
    [InlineData("30 g beurre manié (beurre, farine)", "fr", "milk wheat")]
    [InlineData("100 g Teig (ohne Butter)", "de", "")]
    [InlineData("ふりかけ（ごま、のり） 10g", "ja", "sesame")]
    public void In_each_language(string line, string language, string codes)
    {
        FoodAmount food = Assert.Single(CardReader.ReadLine(line, language).Foods);

        Assert.Equal(codes, string.Join(' ', Allergens.Of(food, language, "", 1, line).Where(r => r.Status == AllergenStatus.Contains).Select(r => r.Code!).Distinct().Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("100 g panko", "wheat")]
    [InlineData("400 g mixed seafood (prawns, mussels, squid)", "crustacean mollusc")]
    [InlineData("20 g dried shrimp", "crustacean")]
    [InlineData("12 lasagne sheets", "wheat")]
    [InlineData("100 g lupin flour", "lupin")]
    [InlineData("100 g smoked eel", "fish")]
    [InlineData("100 g halloumi", "milk")]
    [InlineData("100 g fresh breadcrumbs", "wheat")]
    public void A_food_without_figures_still_tells_what_it_holds(string line, string codes) => Assert.Equal(codes, Codes(Sheet(line), AllergenStatus.Contains));
}
