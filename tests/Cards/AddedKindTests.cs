using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Cups and spoons added to each other with the weight of both, and names that share what is said of the last, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class AddedKindTests
{
    private static string Foods(string line, string lang) => string.Join("; ", CardReader.ReadLine(line, lang).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}{(f.Grams is { } g ? $" = {g} g" : "")}{(f.Use is { } use ? $" [{use}]" : "")}").Trim()));

    [Theory]
    [InlineData("en", "1 cup plus 2 tablespoons (170 g) flour", "1.125 cup flour = 170 g")]
    [InlineData("en", "1 cup + 2 tbsp (170 g) flour", "1.125 cup flour = 170 g")]
    [InlineData("en", "1/2 cup plus 1 tablespoon (135 ml) milk", "0.5625 cup milk")]
    [InlineData("fr", "1 tasse et 2 c. à soupe (170 g) de farine", "1.125 cup farine = 170 g")]
    [InlineData("es", "1 taza más 2 cucharadas (170 g) de harina", "1.125 cup harina = 170 g")]
    public void A_weight_that_the_spoons_alone_cannot_have_is_of_both(string lang, string line, string want) => Assert.Equal(want, Foods(line, lang));

    [Theory]
    [InlineData("en", "1 cup plus 2 tbsp (18 g) flour", "1 cup flour; 2 tbsp flour = 18 g")]
    [InlineData("en", "1 cup plus 2 tbsp flour", "1 cup flour; 2 tbsp flour")]
    [InlineData("en", "⅓ cup plus 1 tbsp sugar", "0.3333333333333333 cup sugar; 1 tbsp sugar")]
    [InlineData("fr", "1 tasse plus 2 c. à s. de farine", "1 cup farine; 2 tbsp farine")]
    [InlineData("es", "1 taza más 2 cucharadas de azúcar", "1 cup azúcar; 2 tbsp azúcar")]
    [InlineData("it", "1 tazza più 2 cucchiai di zucchero", "1 cup zucchero; 2 tbsp zucchero")]
    [InlineData("es", "2 huevos más 1 yema", "2 piece huevos; 1 piece yema")]
    [InlineData("it", "100 g di burro più quello per la teglia", "100 g burro = 100 g [extra: quello per la teglia]")]
    public void Without_one_both_are_kept_as_told(string lang, string line, string want) => Assert.Equal(want, Foods(line, lang));

    [Fact]
    public void Cups_and_spoons_behind_a_weight_are_one_second_measure() =>
        Assert.Equal("1.125 cup", Assert.Single(CardReader.ReadLine("170 g (1 cup plus 2 tbsp) flour", "en").Foods).SecondMeasure);

    [Theory]
    [InlineData("en", "salt, pepper, sumac – to taste", "salt [to taste]; pepper [to taste]; sumac [to taste]")]
    [InlineData("en", "Salt, pepper & sumac, to taste", "Salt [to taste]; pepper [to taste]; sumac [to taste]")]
    [InlineData("en", "salt, pepper, urfa chilli, black lime - to taste", "salt [to taste]; pepper [to taste]; urfa chilli [to taste]; black lime [to taste]")]
    [InlineData("en", "basil, mint, parsley, to serve", "basil [to serve]; mint [to serve]; parsley [to serve]")]
    [InlineData("de", "Salz, Pfeffer, Sumach – nach Geschmack", "Salz [to taste]; Pfeffer [to taste]; Sumach [to taste]")]
    [InlineData("fr", "sel, poivre, sumac – à volonté", "sel [à volonté]; poivre [à volonté]; sumac [à volonté]")]
    public void What_is_said_of_the_last_name_is_said_of_all(string lang, string line, string want) => Assert.Equal(want, Foods(line, lang));

    [Theory]
    [InlineData("salt, flaky - to taste", "salt [to taste]")]
    [InlineData("Salt, flaky, to taste", "Salt [to taste]")]
    [InlineData("basil, torn, to serve", "basil [to serve]")]
    [InlineData("tomatoes, chopped, salted - to taste", "tomatoes [to taste]")]
    [InlineData("butter, softened & whipped", "butter")]
    public void What_is_done_to_a_food_is_no_food(string line, string want) => Assert.Equal(want, Foods(line, "en"));
}
