using Coulisse.Cards.Reading;
using Coulisse.Matter.Foods;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>More kinds of writing, each beside what looks like it and is none: two foods in one line, what a page hangs around a recipe, figures of heat without their sign, stages of a table. Readings as a cook gives them: common practice, no source.</summary>
public sealed class KitchenKindTests
{
    private static string Line(string line, string lang) => string.Join(" + ", CardReader.ReadLine(line, lang).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}").Trim()));

    [Theory]
    [InlineData("white pepper, lemon juice to taste", "en", "white pepper + lemon juice")]
    [InlineData("soy sauce, rice vinegar to taste", "en", "soy sauce + rice vinegar")]
    [InlineData("Muskat, Zitronensaft nach Geschmack", "de", "Muskat + Zitronensaft")]
    [InlineData("3 Lorbeerblätter, 5 Wacholderbeeren", "de", "3 piece Lorbeerblätter + 5 piece Wacholderbeeren")]
    [InlineData("2 Nelken, 4 Pimentkörner", "de", "2 piece Nelken + 4 piece Pimentkörner")]
    [InlineData("handful each of mint and coriander", "en", "1 handful mint + 1 handful coriander")]
    public void Two_foods_of_one_line(string line, string lang, string want) => Assert.Equal(want, Line(line, lang));

    [Theory]
    [InlineData("butter, softened to taste", "en")]
    [InlineData("2 onions, 1 chopped and 1 sliced", "en")]
    [InlineData("4 Eier, 2 getrennt", "de")]
    [InlineData("2 Zwiebeln, 1 gehackt", "de")]
    [InlineData("1 Brathähnchen, 2 Stunden mariniert", "de")]
    [InlineData("handful of each herb", "en")]
    public void What_is_done_to_a_food_is_no_second_food(string line, string lang) => Assert.Single(CardReader.ReadLine(line, lang).Foods);

    [Theory]
    [InlineData("gelatine, 6 leaves silver", "en", "6 leaf gelatine")]
    [InlineData("Nori x 10 sheets", "en", "10 sheet Nori")]
    [InlineData("Maldon, a good pinch", "en", "1 large pinch Maldon")]
    [InlineData("3 EL Öl zum Braten", "de", "3 tbsp Öl")]
    [InlineData("flour 2C", "en", "2 cup flour")]
    public void Amounts_behind_the_food(string line, string lang, string want) => Assert.Equal(want, Line(line, lang));

    [Theory]
    [InlineData("salt, a little for the water", "en", "salt")]
    [InlineData("1 Pck. Backpulver zum Mehl", "de", "1 pack Backpulver zum Mehl")]
    public void Near_misses_of_them(string line, string lang, string want) => Assert.Equal(want, Line(line, lang));

    [Theory]
    [InlineData("Rate this recipe")]
    [InlineData("Print")]
    [InlineData("Jump to Recipe ↓")]
    [InlineData("Nutrition: kcal 512, fat 42g, sugars 30g")]
    [InlineData("Nährwerte pro Portion: 512 kcal, 42 g Fett")]
    [InlineData("Imprimer la recette")]
    [InlineData("Valori nutrizionali: 312 kcal")]
    public void What_a_page_hangs_around_a_recipe_is_a_remark(string line)
    {
        Dish d = Read($"Lemon posset\n\nIngredients\n600ml double cream\n150g caster sugar\n\nMethod\n1. Simmer 3 minutes.\n2. Chill 4 hours.\n\n{line}\n");

        Assert.Equal(["Simmer 3 minutes.", "Chill 4 hours."], d.Components.SelectMany(c => c.Steps).Select(s => s.Text));
        Assert.Contains(d.Notes.Concat(d.Components.SelectMany(c => c.Notes)), n => n.Text.StartsWith(line[..5], StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Print the outline of the ring on acetate.")]
    [InlineData("Share between six glasses.")]
    [InlineData("Save the cooking liquid.")]
    [InlineData("Pin the cloves to the onion.")]
    public void Work_that_begins_like_a_button_stays_a_step(string line) =>
        Assert.Contains(line, Read($"Lemon posset\n\nIngredients\n600ml double cream\n150g caster sugar\n\nMethod\nSimmer 3 minutes.\n{line}\n").Components.SelectMany(c => c.Steps).Select(s => s.Text));

    [Fact]
    public void A_food_that_begins_like_a_table_of_nutrients_stays_a_food() =>
        Assert.Contains(": 20 g Nutritional yeast", Lines(Read("Crumb\n\nIngredients\nNutritional yeast, 20 g\n100 g bread\n\nMethod\nBlend 2 min.")));

    [Fact]
    public void A_line_that_a_figure_of_heat_opens_is_work_and_cups_are_none()
    {
        Dish d = Read("DUCK\n\n-- duck --\n6 breasts, scored\nsalt 12 g\n2C water\n\n57C bath 75 min, chill, sear skin 4 min\n");

        Assert.Equal(["duck: 57C bath 75 min, chill, sear skin 4 min"], Steps(d));
        Assert.Contains("duck: 2 cup water", Lines(d));
    }

    [Fact]
    public void Names_of_stages_between_the_rows_of_a_table_are_its_components_and_a_stage_that_opens_a_step_takes_it()
    {
        Dish d = Read("Brioche\n\nStage          %     g\nSponge\nstrong flour   30    300\nmilk           18    180\nDough\nstrong flour   70    700\neggs           50    500\n\nSponge 45 min at 28C.\nDough 12 min on second speed, add the sponge.\nAdd the eggs to the sponge, mix 5 min.\n");

        Assert.Equal(["Sponge: 300 g strong flour", "Sponge: 180 g milk", "Dough: 700 g strong flour", "Dough: 500 g eggs"], Lines(d));
        Assert.Equal("Sponge: Sponge 45 min at 28C.", Steps(d)[0]);
        Assert.Contains("Dough: Dough 12 min on second speed, add the sponge.", Steps(d));
    }

    [Fact]
    public void A_row_of_one_word_between_sentences_is_no_stage() =>
        Assert.Equal(["Cake: 300 g flour", "Cake: 200 g milk"], Lines(Read("Bread\n\nCake\nflour          300 g\nmilk           200 g\n\nRest\nLeave it 20 min.\n")));

    [Fact]
    public void A_list_in_one_line_may_end_in_a_food_without_an_amount_and_a_sentence_may_not()
    {
        Assert.Contains("Poisson:  thym", Lines(Read("Lieu jaune\n\nPoisson : 6 pavés de lieu jaune, 30 g de beurre, thym\nSauce : 4 échalotes, 25 cl de vin blanc, 250 g de beurre\n\nCuire à 50 °C à cœur.\n")).Select(l => l.Replace("   ", "  ", StringComparison.Ordinal)));
        Assert.DoesNotContain("Nota", Read("Lieu jaune\n\n200 g de beurre\n4 échalotes\n\nNota : compter 6 assiettes, 30 g de chacun, bien chaudes\n\nCuire 10 min.\n").Components.Select(c => c.Name));
    }

    [Fact]
    public void Two_parts_lists_in_one_line_are_two_components_and_work_behind_a_list_is_none()
    {
        Assert.Equal(["caramelo: 120 g azúcar", "caramelo: 2 tbsp agua", "flan: 300 g queso crema", "flan: 400 ml nata"], Lines(Read("Flan\n\nPara el caramelo: 120 g de azúcar y 2 cucharadas de agua. Para el flan: 300 g de queso crema, 400 ml de nata.\n\nHornear 1 hora.\n")).Select(l => l.Replace("Para el ", "", StringComparison.Ordinal)));
        Dish d = Read("Oils\n\nDill oil: 100 g dill, 200 g oil. Blend at 70 °C for 6 min.\nChive oil: 100 g chives, 200 g oil. Blend 6 min.\n");
        Assert.Equal(["Dill oil", "Chive oil"], d.Components.Select(c => c.Name));
        Assert.Equal("Dill oil: Blend at 70 °C for 6 min.", Steps(d)[0]);
    }

    // Allspice in the trade of spices, a sweet pepper in a kitchen.
    [Theory]
    [InlineData("pimento")]
    [InlineData("pimentos")]
    [InlineData("diced pimentos")]
    public void Pimento_is_two_foods_and_so_none(string name) => Assert.Null(FoodTable.Default.Match(name, "en"));

    [Theory]
    [InlineData("allspice", "en", "allspice")]
    [InlineData("canned pimento", "en", "pimento-tin")]
    [InlineData("Piment", "de", "allspice")]
    public void Its_sure_names_are_known(string name, string lang, string id) => Assert.Equal(id, FoodTable.Default.Match(name, lang)?.Id);
}
