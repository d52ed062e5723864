using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>What hangs on a food in one line, by kind: a share with its base, the weight of one piece or pack, the class it is sold in, how it comes. Each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class LineKindTests
{
    private static FoodAmount One(string line, string lang) => Assert.Single(CardReader.ReadLine(line, lang).Foods);

    [Theory]
    [InlineData("Salz 1,8 % auf Mehl", "de", "Salz", 1.8, "Mehl")]
    [InlineData("1,8 % Salz auf das Gesamtmehl", "de", "Salz", 1.8, "Mehl")]
    [InlineData("Hefe, 3 % vom Mehlgewicht", "de", "Hefe", 3.0, "Mehl")]
    [InlineData("Salz 2 % auf Weizenmehl", "de", "Salz", 2.0, "Weizenmehl")]
    [InlineData("2% salt of the water", "en", "salt", 2.0, "water")]
    [InlineData("sel 1,9 % sur la farine", "fr", "sel", 1.9, "farine")]
    [InlineData("1,9 % de sel sur le poids de farine", "fr", "sel", 1.9, "farine")]
    [InlineData("sal 2 % del peso del pescado", "es", "sal", 2.0, "pescado")]
    [InlineData("sale 2,8% sul peso della carne", "it", "sale", 2.8, "carne")]
    [InlineData("lievito 1,5% (sulla farina)", "it", "lievito", 1.5, "farina")]
    [InlineData("Diastatic malt 0.5% (on flour)", "en", "Diastatic malt", 0.5, "flour")]
    [InlineData("pectin, 1.2% on the fruit", "en", "pectin", 1.2, "fruit")]
    public void A_share_names_its_base_before_or_behind_the_food(string line, string lang, string food, double percent, string of)
    {
        FoodAmount f = One(line, lang);

        Assert.Equal((food, percent, of), (f.Food, f.Percent, f.PercentOf));
        Assert.Null(f.Amount);
    }

    [Theory]
    [InlineData("Sahne 30 % auf Eis", "de")]
    [InlineData("crème 35 % sur glace", "fr")]
    [InlineData("panna 35% sul gelato", "it")]
    [InlineData("Emmentaler 45 % auf Trockenmasse", "de")]
    [InlineData("lait 3,5 % de matière grasse", "fr")]
    [InlineData("cream 35% on top", "en")]
    [InlineData("chocolate 70% (on the side)", "en")]
    public void A_percent_without_a_base_is_of_the_food(string line, string lang) => Assert.Null(One(line, lang).Percent);

    [Theory]
    [InlineData("8–10 scampi, 60–70 g apiece", "en", "scampi", 480.0, 700.0)]
    [InlineData("6 quails, 180 g each", "en", "quails", 1080.0, null)]
    [InlineData("4 pigeons, 400-450 g pièce", "fr", "pigeons", 1600.0, 1800.0)]
    [InlineData("4 orate, 300 g l'una", "it", "orate", 1200.0, null)]
    [InlineData("4 Forellen (300-350 g das Stück)", "de", "Forellen", 1200.0, 1400.0)]
    [InlineData("2 Becher Quark à 250 g", "de", "Quark", 500.0, null)]
    [InlineData("2 tins of tomatoes of 400 g each", "en", "tomatoes", 800.0, null)]
    [InlineData("3 vasetti di yogurt da 125 g", "it", "yogurt", 375.0, null)]
    [InlineData("2 boîtes de pois chiches de 400 g", "fr", "pois chiches", 800.0, null)]
    public void What_one_weighs_is_no_second_food_and_all_weigh_as_many_times_that(string line, string lang, string food, double grams, double? most)
    {
        (IngredientLine read, var doubts) = CardReader.ReadLineWithDoubts(line, lang);
        FoodAmount f = Assert.Single(read.Foods);

        Assert.Equal((food, grams, most), (f.Food, f.Grams, f.GramsMax));
        Assert.Empty(doubts);
    }

    [Fact]
    public void Two_foods_with_their_amounts_stay_two_and_a_weight_of_another_food_is_no_content()
    {
        Assert.Equal(2, CardReader.ReadLine("10 scampi, 80 g butter", "en").Foods.Length);
        Assert.Null(One("2 Becher Quark zu 200 g Mehl", "de").PackGrams);
    }

    [Theory]
    [InlineData("帆立貝柱 8個(正味200g)", "ja", 200.0, null)]
    [InlineData("鶏もも肉 300g(正味250g)", "ja", 250.0, 300.0)]
    [InlineData("500 g chickpeas (drained weight 300 g)", "en", 300.0, 500.0)]
    [InlineData("500 g peas (about 490 g)", "en", 500.0, null)]
    public void The_net_weight_is_used_and_the_gross_bought(string line, string lang, double grams, double? bought)
    {
        FoodAmount f = One(line, lang);

        Assert.Equal((grams, bought), (f.Grams, f.BoughtGrams));
    }

    [Theory]
    [InlineData("120 g grade A maple syrup", "en", "maple syrup", "grade A")]
    [InlineData("1 kg Handelsklasse I Äpfel", "de", "Äpfel", "Handelsklasse I")]
    [InlineData("24 huîtres n° 3", "fr", "huîtres", "n° 3")]
    [InlineData("8 carabineros del nº 1", "es", "carabineros", "n° 1")]
    [InlineData("4 feuilles de gélatine or 200 blooms", "fr", "gélatine", "or 200 blooms")]
    [InlineData("4 fogli di gelatina oro", "it", "gelatina", "oro")]
    public void The_class_a_food_is_sold_in_is_no_part_of_its_name(string line, string lang, string food, string grade)
    {
        FoodAmount f = One(line, lang);

        Assert.Equal((food, grade), (f.Food, f.Grade));
    }

    [Theory]
    [InlineData("500 g first class bread", "en", "first class bread")]
    [InlineData("200 g sashimi-grade tuna", "en", "sashimi-grade tuna")]
    [InlineData("2 g gold leaf", "en", "gold leaf")]
    [InlineData("100 g gelatina di ribes", "it", "gelatina di ribes")]
    public void Near_misses_of_a_class(string line, string lang, string food) => Assert.Equal(food, One(line, lang).Food);

    [Theory]
    [InlineData("a few drops rose water", "en", "rose water", "a few drops")]
    [InlineData("a few sprigs thyme", "en", "thyme", "a few sprigs")]
    [InlineData("a few drop scones", "en", "drop scones", "a few")]
    [InlineData("a few bay leaves", "en", "bay leaves", "a few")]
    public void A_few_of_a_measure(string line, string lang, string food, string use)
    {
        FoodAmount f = One(line, lang);

        Assert.Equal((food, use), (f.Food, f.Use));
    }

    [Theory]
    [InlineData("2 kg de mejillones sin limpiar", "es", "mejillones", "sin limpiar")]
    [InlineData("1 kg d'asperges non épluchées", "fr", "asperges", "non épluchées")]
    [InlineData("800 g carciofi non puliti", "it", "carciofi", "non puliti")]
    [InlineData("1 kg Spargel, ungeschält", "de", "Spargel", "ungeschält")]
    [InlineData("200 g galletas sin gluten", "es", "galletas sin gluten", null)]
    public void What_is_not_done_is_told_beside_the_food(string line, string lang, string food, string? prep)
    {
        FoodAmount f = One(line, lang);

        Assert.Equal((food, prep), (f.Food, f.Preparation));
    }

    [Theory]
    [InlineData("1 cup (280 g) icing sugar", 1)]
    [InlineData("1 cup (140 g) icing sugar", 0)]
    [InlineData("250 ml (450 g) milk", 1)]
    [InlineData("250 ml (260 g) milk", 0)]
    [InlineData("1 cup (20 g) parsley leaves", 0)]
    [InlineData("1 cup (85 g) spinach", 0)]
    [InlineData("2 tbsp (40 g) butter", 0)]
    [InlineData("600 g (2 lb 10 oz) plums", 1)]
    [InlineData("600 g (1 lb 5 oz) plums", 0)]
    [InlineData("600 g (400 g) plums", 0)]
    public void Two_measures_that_cannot_be_one_amount_are_asked(string line, int asked) =>
        Assert.Equal(asked, CardReader.ReadLineWithDoubts(line, "en").Doubts.Length);

    [Theory]
    [InlineData("Digital scales, 3 half trays, blowtorch", "en", LineKind.Note)]
    [InlineData("Stabmixer, feines Sieb, 2 Spritzbeutel", "de", LineKind.Note)]
    [InlineData("calamari, onion rings", "en", LineKind.Ingredient)]
    [InlineData("200 g butter, blowtorch", "en", LineKind.Ingredient)]
    [InlineData("1 ox heart, sliced off the knife", "en", LineKind.Ingredient)]
    public void A_line_of_nothing_but_tools_is_no_food(string line, string lang, LineKind kind) => Assert.Equal(kind, CardReader.ReadLine(line, lang).Kind);

    [Fact]
    public void An_answer_leaves_one_of_the_two_measures()
    {
        Doubt d = Assert.Single(CardReader.ReadLineWithDoubts("1 cup (280 g) icing sugar", "en").Doubts);

        Assert.Equal(["1 cup", "280 g"], d.Candidates.Select(c => c.Text));
    }
}
