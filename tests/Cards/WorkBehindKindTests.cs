using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>What is done to a food, or what it is for, told behind its amount without a comma, as kitchens jot it. The amount was taken into the name and lost in silence.</summary>
public sealed class WorkBehindKindTests
{
    [Theory]
    [InlineData("onions 3 diced", "en", "onions", 3, "piece", "diced")]
    [InlineData("shallots 2 finely diced", "en", "shallots", 2, "piece", "finely diced")]
    [InlineData("oranges 2 zested and juiced", "en", "oranges", 2, "piece", "zested and juiced")]
    [InlineData("eggs 6 separated", "en", "eggs", 6, "piece", "separated")]
    [InlineData("garlic 4 cloves crushed", "en", "garlic", 4, "clove", "crushed")]
    [InlineData("parsley 1 bunch chopped", "en", "parsley", 1, "bunch", "chopped")]
    [InlineData("cream 1 l whipped", "en", "cream", 1, "l", "whipped")]
    [InlineData("butter 200 g softened and cubed", "en", "butter", 200, "g", "softened and cubed")]
    [InlineData("milk 2 l full fat", "en", "milk", 2, "l", "full fat")]
    [InlineData("oignons 3 émincés", "fr", "oignons", 3, "piece", "émincés")]
    [InlineData("œufs 4 battus", "fr", "œufs", 4, "piece", "battus")]
    [InlineData("crème 1 l montée", "fr", "crème", 1, "l", "montée")]
    [InlineData("beurre 250 g en pommade", "fr", "beurre", 250, "g", "en pommade")]
    [InlineData("Zwiebeln 3 fein gewürfelt", "de", "Zwiebeln", 3, "piece", "fein gewürfelt")]
    [InlineData("Butter 200 g zerlassen", "de", "Butter", 200, "g", "zerlassen")]
    [InlineData("Sahne 500 ml steif", "de", "Sahne", 500, "ml", "steif")]
    [InlineData("huevos 6 separados", "es", "huevos", 6, "piece", "separados")]
    [InlineData("patatas 2 kg peladas y cortadas", "es", "patatas", 2, "kg", "peladas y cortadas")]
    [InlineData("uova 3 sbattute", "it", "uova", 3, "piece", "sbattute")]
    [InlineData("burro 200 g a pomata", "it", "burro", 200, "g", "a pomata")]
    public void Leaves_the_amount_its_own(string text, string lang, string food, double amount, string unit, string work)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(text, lang).Foods);

        Assert.Equal((food, amount, unit, work), (f.Food, f.Amount, f.Unit, f.Preparation));
    }

    [Theory]
    [InlineData("butter 200 g for the tin", "en", "butter", 200, "g", "for the tin")]
    [InlineData("eggs 2 for brushing", "en", "eggs", 2, "piece", "for brushing")]
    [InlineData("beurre 50 g pour le moule", "fr", "beurre", 50, "g", "pour le moule")]
    [InlineData("huevos 2 para pintar", "es", "huevos", 2, "piece", "para pintar")]
    [InlineData("butter, 250 g to serve", "en", "butter", 250, "g", "to serve")]
    [InlineData("eggs, 3 for brushing", "en", "eggs", 3, "piece", "for brushing")]
    [InlineData("sucre, 50 g pour la finition", "fr", "sucre", 50, "g", "pour la finition")]
    [InlineData("250 g de farine pour le plan de travail", "fr", "farine", 250, "g", "pour le plan de travail")]
    [InlineData("Mehl, 60 g für die Form", "de", "Mehl", 60, "g", "für die Form")]
    [InlineData("harina, 40 g para espolvorear", "es", "harina", 40, "g", "para espolvorear")]
    [InlineData("3 limones para servir", "es", "limones", 3, "piece", "para servir")]
    [InlineData("burro (30 g), per lo stampo", "it", "burro", 30, "g", "per lo stampo")]
    [InlineData("100 g di zucchero per decorare", "it", "zucchero", 100, "g", "per decorare")]
    [InlineData("sugar (30 g), for dusting", "en", "sugar", 30, "g", "for dusting")]
    public void So_does_what_it_is_for(string text, string lang, string food, double amount, string unit, string use)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(text, lang).Foods);

        Assert.Equal((food, amount, unit, use), (f.Food, f.Amount, f.Unit, f.Use));
    }

    [Fact]
    public void So_does_what_may_stand_for_it() => Assert.Equal(("butter", 200, "g", "margarine"), CardReader.ReadLine("butter 200 g or margarine", "en").Foods[0] is var f ? (f.Food, f.Amount, f.Unit, f.Alternative) : default);

    [Theory]
    [InlineData("onions 2-3", "en", "onions", 2, 3.0)]
    [InlineData("onions 1 1/2", "en", "onions", 1.5, null)]
    [InlineData("lemons 2–3, juiced", "en", "lemons", 2, 3.0)]
    [InlineData("carrots - 2 to 3 peeled & sliced", "en", "carrots", 2, 3.0)]
    [InlineData("citrons 2 à 3 pressés", "fr", "citrons", 2, 3.0)]
    [InlineData("Zitronen 2 bis 3, ausgepresst", "de", "Zitronen", 2, 3.0)]
    [InlineData("Möhren 1½ geschält", "de", "Möhren", 1.5, null)]
    [InlineData("cebollas 2 a 3", "es", "cebollas", 2, 3.0)]
    [InlineData("uova, 2-3 sbattute", "it", "uova", 2, 3.0)]
    public void A_count_of_several_signs_behind_its_food_is_one(string text, string lang, string food, double amount, double? most)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(text, lang).Foods);

        Assert.Equal((food, amount, most), (f.Food, f.Amount, f.AmountMax));
    }

    [Theory]
    [InlineData("garlic (4 cloves)", "en", "garlic", 4, "clove")]
    [InlineData("celery (2 sticks), finely sliced", "en", "celery", 2, "stick")]
    [InlineData("persil (3 brins)", "fr", "persil", 3, "sprig")]
    [InlineData("Petersilie (2 Zweige), gehackt", "de", "Petersilie", 2, "sprig")]
    public void Parts_in_brackets_count_where_nothing_else_does(string text, string lang, string food, double amount, string unit)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(text, lang).Foods);

        Assert.Equal((food, amount, unit), (f.Food, f.Amount, f.Unit));
    }

    [Theory]
    [InlineData("250 ml milk warmed", "en", "milk", "warmed")]
    [InlineData("60 g butter melted and cooled", "en", "butter", "melted and cooled")]
    [InlineData("3 lemons juiced", "en", "lemons", "juiced")]
    [InlineData("2 Zwiebeln fein gehackt", "de", "Zwiebeln", "fein gehackt")]
    [InlineData("500 g Mehl gesiebt", "de", "Mehl", "gesiebt")]
    [InlineData("1.5 kg potatoes, peeled + quartered", "en", "potatoes", "peeled + quartered")]
    public void Work_behind_the_name_is_no_part_of_it(string text, string lang, string food, string work)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(text, lang).Foods);

        Assert.Equal((food, work), (f.Food, f.Preparation));
    }

    [Theory]
    [InlineData("200 g salmon smoked", "en")]
    [InlineData("40 g mushrooms dried", "en")]
    [InlineData("100 g Tomaten getrocknet", "de")]
    [InlineData("150 g butter clarified", "en")]
    public void What_keeps_a_food_makes_another(string text, string lang)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(text, lang).Foods);

        Assert.DoesNotContain(f.FoodId, new[] { "salmon", "mushroom", "tomato", "butter" });
    }

    [Theory]
    [InlineData("200gcaster sugar", "en", 200, "g", "caster sugar")]
    [InlineData("1,5kgMehl", "de", 1.5, "kg", "Mehl")]
    [InlineData("250mlmilk, warm", "en", 250, "ml", "milk")]
    [InlineData("2garlic cloves", "en", 2, "clove", "garlic")]
    [InlineData("3large eggs", "en", 3, "piece", "eggs")]
    public void A_blank_left_out_behind_the_unit_is_put_in_where_a_food_is_left(string text, string lang, double amount, string unit, string food)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(text, lang).Foods);

        Assert.Equal((amount, unit, food), (f.Amount, f.Unit, f.Food));
    }

    // Figures of a name, a type, a place in a row, another food: none of them is a count.
    [Theory]
    [InlineData("flour 00 sifted", "en")]
    [InlineData("Mehl 405 gesiebt", "de")]
    [InlineData("farine T55 tamisée", "fr")]
    [InlineData("water 2 boiled", "en")]
    [InlineData("part 3 chopped", "en")]
    [InlineData("oven 2 hours preheated", "en")]
    [InlineData("flour T55 for dusting", "en")]
    [InlineData("Gas 4-5", "de")]
    [InlineData("Seite 12-14", "de")]
    [InlineData("water 2-3", "en")]
    public void A_figure_of_a_name_stays_there(string text, string lang) => Assert.All(CardReader.ReadLine(text, lang).Foods, f => Assert.Null(f.Amount));

    [Fact]
    public void Two_foods_in_a_row_are_not_one_and_its_work()
    {
        FoodAmount f = CardReader.ReadLine("Zucker 100 g Puderzucker", "de").Foods[0];

        Assert.True(f.Amount is null || f.Preparation is null, $"{f.Food} {f.Amount} {f.Preparation}");
    }

    [Fact]
    public void Clocks_in_brackets_stand_before_messages_of_many_lines()
    {
        Dish d = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText("[12:04] the flatbread please\n[12:05] 400g strong white flour\n250g natural yoghurt\n1 tsp salt\n[12:06] mix, knead a bit\nrest 20 min under a cloth\ndivide in 8 and roll thin\n"))).Value;

        Assert.Equal([(400.0, "strong white flour"), (250.0, "natural yoghurt"), (1.0, "salt")], d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Where(f => f.Amount is not null).Select(f => (f.Amount!.Value, f.Food)));
        Assert.Contains(d.Components.SelectMany(c => c.Steps), s => s.Times.Any(t => t.MinutesMin == 20));
    }

    [Fact]
    public void One_clock_in_brackets_is_no_chat()
    {
        Dish d = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText("# Rolls\n\n- 500 g flour\n- 320 g water\n\n[06:30] Mix and rest 20 min.\nShape and bake 15 min at 220 °C.\n"))).Value;

        Assert.Contains(d.Components.SelectMany(c => c.Steps), s => s.Text.Contains("06:30", StringComparison.Ordinal));
    }
}
