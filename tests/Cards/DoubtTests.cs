using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Questions that keep a wrong figure from being taken in silence, each with the near miss that raises none. Our own examples.</summary>
public sealed class DoubtTests
{
    [Theory]
    [InlineData("− 5 g salt", false)]
    [InlineData("−5 g salt", true)]
    [InlineData("- -5 g salt", true)]
    [InlineData("salt -5 g", true)]
    [InlineData("salt: −5 g", true)]
    [InlineData("-5 g salt", false)]
    [InlineData("- 5 g salt", false)]
    [InlineData("salt - 5 g", false)]
    [InlineData("60 -75 g vinegar", false)]
    [InlineData("200 g ice at -5 °C", false)]
    public void A_minus_before_an_amount_is_asked_and_the_mark_of_an_item_is_not(string line, bool asked)
    {
        (IngredientLine read, System.Collections.Immutable.ImmutableArray<Doubt> doubts) = CardReader.ReadLineWithDoubts(line, "en");

        Assert.Equal(asked, !doubts.IsEmpty);
        Assert.Equal(asked, read.Confidence < 1);
    }

    [Theory]
    [InlineData("75g/3oz caster sugar", false)]
    [InlineData("30 g (1 oz) butter", false)]
    [InlineData("150g/5oz flour", false)]
    [InlineData("75g/2½oz caster sugar", false)]
    [InlineData("80g/2½oz caster sugar", true)]
    [InlineData("250g/8oz flour", true)]
    public void Ounces_as_books_print_them_are_one_amount_and_others_are_asked(string line, bool asked)
    {
        Dish dish = Read($"# A\n\n## B\n- {line}\n\n1. Mix the flour, sugar and butter.");

        Assert.Equal(asked, dish.Doubts.Length + dish.Remarks.Count(r => r.Kind == "measures clash") > 0);
    }

    [Theory]
    [InlineData("1 Glas Sauerkirschen", true)]
    [InlineData("1 Glas Sauerkirschen (720 ml)", false)]
    public void A_glass_whose_content_is_told_is_not_asked(string line, bool asked) =>
        Assert.Equal(asked, !CardReader.ReadLineWithDoubts(line, "de").Doubts.IsEmpty);

    [Fact]
    public void A_minus_in_a_table_is_asked() =>
        Assert.Single(Read("# A\n\n| Item | Amount |\n|---|---|\n| flour | 500 g |\n| salt | -5 g |\n").Doubts);

    [Fact]
    public void A_bare_oven_figure_beside_cups_is_asked_and_one_beside_grams_or_another_degree_is_not()
    {
        const string Bake = "\n1. Mix flour and butter. Bake at 220 for 20 min.";
        Doubt doubt = Assert.Single(Read("# A\n\n## B\n- 2 cups flour\n- 1 stick butter\n" + Bake).Doubts);
        Assert.Equal("220 °C or 104 °C", doubt.Moves);
        Assert.Empty(Read("# A\n\n## B\n- 240 g flour\n- 113 g butter\n" + Bake).Doubts);
        Assert.Empty(Read("# A\n\n## B\n- 2 cups flour\n- 1 stick butter\n" + Bake + "\n2. Cool to 30 °C.").Doubts);
        Assert.Empty(Read("# A\n\n## B\n- 240 g farine\n- 113 g de beurre\n\n1. Mélanger la farine et le beurre, cuire au four à 220 pendant 20 min.").Doubts);
    }

    [Theory]
    [InlineData("Total time: 50 min.", true)]
    [InlineData("Total time: 4 h.", false)]
    [InlineData("Prep 10 min | Cook 30 min | Serves 4", true)]
    [InlineData("Cook 30 min", false)]
    public void A_head_that_promises_less_than_its_steps_is_said(string head, bool said)
    {
        Dish d = Read($"# A\n\n{head}\n\n## B\n- 200 g quince\n\n1. Boil the quince 20 min.\n2. Set the quince 3 h in the fridge.");

        Assert.Equal(said, d.Remarks.Any(r => r.Kind == "time mismatch"));
    }

    [Theory]
    [InlineData("2S0 g ricotta")]
    [InlineData("I tbsp tomato puree")]
    [InlineData("30 q fresh yeast")]
    public void Print_damage_is_mended_and_asked(string line) => Assert.Single(CardReader.ReadLineWithDoubts(line, "en").Doubts);

    [Theory]
    [InlineData("5 Sichuan peppercorns")]
    [InlineData("1 quail")]
    [InlineData("I like it hot")]
    public void What_only_looks_like_it_is_not(string line) => Assert.Empty(CardReader.ReadLineWithDoubts(line, "en").Doubts);

    [Theory]
    [InlineData("4 cloves", true)]
    [InlineData("4 cloves (spice)", false)]
    [InlineData("4 whole cloves", false)]
    [InlineData("4 cloves garlic", false)]
    public void Cloves_are_asked_until_the_line_says_which(string line, bool asked) => Assert.Equal(asked, !CardReader.ReadLineWithDoubts(line, "en").Doubts.IsEmpty);

    [Theory]
    [InlineData("100 g sugar (60 g for the cake, 40 g for the top)", 0)]
    [InlineData("100 g sugar (60 g)", 1)]
    [InlineData("1 kg (2 lb 3 oz) potatoes", 0)]
    [InlineData("1 kg (2 lb 13 oz) potatoes", 1)]
    [InlineData("1 kg/2 lb 3 oz potatoes", 0)]
    public void A_bracket_that_divides_and_a_weight_in_two_units_clash_with_nothing(string line, int said)
    {
        Dish dish = Read($"# A\n\n## B\n- {line}\n\n1. Boil the potatoes with the sugar.");

        Assert.Equal(said, dish.Remarks.Count(r => r.Kind == "measures clash"));
    }

    [Fact]
    public void Three_foods_in_one_line_are_asked_as_foods_and_parted_by_the_answer()
    {
        Doubt asked = Assert.Single(CardReader.ReadLineWithDoubts("100g icing sugar 100 g flour 100g melted butter", "en").Doubts);

        Assert.Contains("two foods", asked.Question, StringComparison.Ordinal);
        string line = "100g icing sugar 100 g flour 100g melted butter".Replace(asked.Asked!, asked.Candidates[0].Plain, StringComparison.Ordinal);
        Assert.Equal(["icing sugar", "flour", "butter"], CardReader.ReadLine(line, "en").Foods.Select(f => f.Food));
    }

    [Theory]
    [InlineData("All weights in grams.", 0)]
    [InlineData("Chop in big pieces.", 1)]
    public void A_bare_figure_is_not_asked_on_a_card_that_says_all_is_in_grams(string said, int asked) =>
        Assert.Equal(asked, Read($"# A\n\n{said}\n\n## B\n- 100 butter\n- 200 g flour\n\n1. Mix butter and flour.").Doubts.Length);
}
