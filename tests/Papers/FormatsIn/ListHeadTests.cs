using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.In;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>Names of parts where recipe data and pages have no place of their own for them: in the list of foods, underlined over a list, as a term over its descriptions. Our own examples.</summary>
public sealed class ListHeadTests
{
    private static Dish Read(string text) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(Assert.IsType<Parsed<CardText>.Ok>(Incoming.ToCard(text)).Value)).Value;

    private static string Outline(string text) => string.Join(" | ", Read(text).Components.Select(c => $"{c.Name}: {string.Join(", ", c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}").Trim()))}"));

    private static string Data(string[] list, params object[] steps) => JsonSerializer.Serialize(new Dictionary<string, object> { ["@type"] = "Recipe", ["name"] = "Traybake", ["recipeIngredient"] = list, ["recipeInstructions"] = steps });

    [Theory]
    [InlineData("DRIZZLE")]
    [InlineData("For the drizzle")]
    [InlineData("For the drizzle:")]
    public void A_name_in_the_list_heads_what_stands_under_it(string name) =>
        Assert.Equal($": 225 g butter, 225 g caster sugar, 275 g self-raising flour | {name.TrimEnd(':')}: 175 g granulated sugar, 90 ml lemon juice", Outline(Data(["225 g butter", "225 g caster sugar", "275 g self-raising flour", name, "175 g granulated sugar", "90 ml lemon juice"], "Bake 35 minutes.")));

    [Theory]
    [InlineData("SALT")]
    [InlineData("For dusting, flour")]
    public void A_food_in_capitals_or_for_a_use_stays_a_food(string line)
    {
        Component only = Assert.Single(Read(Data(["225 g butter", "225 g caster sugar", "275 g self-raising flour", line, "175 g granulated sugar"], "Bake 35 minutes.")).Components);
        Assert.Equal(5, only.Ingredients.Length);
    }

    [Fact]
    public void A_name_without_an_amount_under_it_heads_nothing() =>
        Assert.Equal(4, Assert.Single(Read(Data(["225 g butter", "225 g caster sugar", "275 g self-raising flour", "VANILLA"], "Bake 35 minutes.")).Components).Ingredients.Length);

    [Fact]
    public void A_step_may_show_the_name() =>
        Assert.Equal(": 225 g butter, 275 g self-raising flour | Caramel: 175 g granulated sugar", Outline(Data(["225 g butter", "275 g self-raising flour", "Caramel", "175 g granulated sugar"], "Bake 35 minutes.", "Caramel: melt the sugar.")));

    [Fact]
    public void A_section_of_the_steps_goes_with_its_part()
    {
        Dish d = Read(Data(["PARA LA TARTA", "250 g de almendra molida", "5 huevos", "PARA LA CREMA", "300 ml de zumo de naranja", "80 g de azúcar"],
            new Dictionary<string, object> { ["@type"] = "HowToSection", ["name"] = "Tarta", ["itemListElement"] = new[] { new Dictionary<string, string> { ["@type"] = "HowToStep", ["text"] = "Hornear 30 minutos." } } },
            new Dictionary<string, object> { ["@type"] = "HowToSection", ["name"] = "Crema", ["itemListElement"] = new[] { new Dictionary<string, string> { ["@type"] = "HowToStep", ["text"] = "Cocer 4 minutos." } } }));

        Assert.Equal(["PARA LA TARTA", "PARA LA CREMA"], d.Components.Select(c => c.Name));
        Assert.Equal([30, 4], d.Components.Select(c => c.Steps.Single().Times.Single().MinutesMin!.Value));
    }

    [Theory]
    [InlineData("<p><u>Bechamel</u></p>")]
    [InlineData("<p><b>Bechamel</b></p>")]
    [InlineData("<p><span><strong>Bechamel</strong></span></p>")]
    [InlineData("<div><strong><u>Bechamel</u></strong></div>")]
    public void Stressed_words_over_a_list_head_it(string head) =>
        Assert.Equal("Bechamel: 90 g mantequilla, 1 l leche | Rebozado: 3 piece huevos", Outline($"<h3>Croquetas</h3>{head}<ul><li>90 g de mantequilla</li><li>1 litro de leche</li></ul>{head.Replace("Bechamel", "Rebozado", StringComparison.Ordinal)}<ul><li>3 huevos</li></ul><ol><li>Cocer 15 minutos.</li></ol>"));

    [Theory]
    [InlineData("<p>All from <u>the garden</u>.</p>")]
    [InlineData("<p><u>We cook it every week.</u></p>")]
    public void Stressed_words_in_a_sentence_head_nothing(string line) =>
        Assert.Equal(": 90 g butter, 1 l milk", Outline($"<h1>Sauce</h1>{line}<ul><li>90 g butter</li><li>1 l milk</li></ul><ol><li>Cook 15 minutes.</li></ol>"));

    [Fact]
    public void A_term_over_a_list_names_it_and_a_term_with_one_amount_is_a_food()
    {
        Assert.Equal("Sponge: 200 g butter, 200 g sugar | Custard: 500 ml milk", Outline("<h1>Trifle</h1><dl><dt>Sponge</dt><dd>200 g butter</dd><dd>200 g sugar</dd><dt>Custard</dt><dd><ul><li>500 ml milk</li></ul></dd></dl><ol><li>Bake 20 minutes.</li></ol>"));
        Assert.Equal(": 500 g Strong flour, 330 g Water, 10 g Salt", Outline("<h1>Bread</h1><dl><dt>Strong flour</dt><dd>500 g</dd><dt>Water:</dt><dd>330 g</dd><dt>Salt</dt><dd>10 g</dd></dl><ol><li>Knead 10 minutes.</li></ol>"));
    }
}
