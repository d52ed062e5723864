using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Several foods in one line, by kind: one amount behind them for each, two for one purpose, a count behind the weight of one, a weight to each kilogram. Each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class SharedAmountKindTests
{
    private static string Said(string line, string lang) => string.Join(" + ", CardReader.ReadLineWithDoubts(line, lang).Line.Foods.Select(f => System.FormattableString.Invariant($"{(f.Amount is { } a ? $"{a} {f.Unit} " : "")}{f.Food}")));

    private static string Ids(string line, string lang) => string.Join(" + ", CardReader.ReadLineWithDoubts(line, lang).Line.Foods.Select(f => f.FoodId ?? "-"));

    [Theory]
    [InlineData("en", "onion, carrot, celery  500g each", "500 g onion + 500 g carrot + 500 g celery")]
    [InlineData("en", "carrot, celery, onion (100g each)", "100 g carrot + 100 g celery + 100 g onion")]
    [InlineData("en", "carrots and celery 100 g each, finely diced", "100 g carrots + 100 g celery")]
    [InlineData("en", "onion, carrot, leek - 2 each", "2 piece onion + 2 piece carrot + 2 piece leek")]
    [InlineData("fr", "carottes, céleri, oignons : 100 g de chaque", "100 g carottes + 100 g céleri + 100 g oignons")]
    [InlineData("it", "sedano, carota, cipolla 50 g ciascuno", "50 g sedano + 50 g carota + 50 g cipolla")]
    [InlineData("de", "Möhren, Sellerie, Lauch (je 100 g)", "100 g Möhren + 100 g Sellerie + 100 g Lauch")]
    [InlineData("de", "Karotten und Lauch je 100 g", "100 g Karotten + 100 g Lauch")]
    [InlineData("es", "zanahoria, apio, cebolla (100 g de cada)", "100 g zanahoria + 100 g apio + 100 g cebolla")]
    [InlineData("es", "100 g de cada: zanahoria, apio y cebolla", "100 g zanahoria + 100 g apio + 100 g cebolla")]
    [InlineData("fr", "100 g de chaque : carottes, céleri", "100 g carottes + 100 g céleri")]
    [InlineData("en", "4 salmon fillets, skin on, 150 g each", "4 piece salmon fillets")]
    [InlineData("en", "lemons, limes and oranges, 3 each, zested", "3 piece lemons + 3 piece limes + 3 piece oranges")]
    [InlineData("en", "chicken breasts, skinless, 150 g each", "150 g chicken breasts")]
    [InlineData("en", "600g each of cod, smoked haddock and salmon", "600 g cod + 600 g smoked haddock + 600 g salmon")]
    public void An_amount_for_each_behind_the_foods_is_of_every_one(string lang, string line, string said) => Assert.Equal(said, Said(line, lang));

    [Theory]
    [InlineData("es", "2 huevos y pan rallado para rebozar", "egg + breadcrumbs")]
    [InlineData("it", "burro e farina per la teglia", "butter + plain-flour")]
    [InlineData("de", "Butter und Brösel für die Form", "butter + breadcrumbs")]
    [InlineData("es", "harina y huevo para rebozar", "plain-flour + egg")]
    [InlineData("en", "butter and flour for the tin", "butter + plain-flour")]
    [InlineData("fr", "beurre et farine pour le moule", "butter + plain-flour")]
    [InlineData("fr", "1 jaune pour dorer", "egg-yolk")]
    [InlineData("en", "flour for dusting", "plain-flour")]
    [InlineData("en", "400 g peas and carrots", "-")]
    [InlineData("en", "2 ham and cheese sandwiches for the children", "-")]
    public void Two_foods_for_one_purpose_are_two(string lang, string line, string ids) => Assert.Equal(ids, Ids(line, lang));

    [Theory]
    [InlineData("en", "S&P TT", "salt + pepper-black")]
    [InlineData("en", "To serve - crusty bread, butter", "white-bread + butter")]
    [InlineData("en", "serve with crusty bread and butter", "white-bread + butter")]
    [InlineData("en", "For garnish - chopped peanuts", "peanut")]
    [InlineData("en", "To serve: 200 ml cream, whipped", "cream-35")]
    [InlineData("de", "1 gute Handvoll Walnüsse", "walnut")]
    [InlineData("fr", "PM : huile, sel", "- + salt")]
    [InlineData("fr", "PM : beurre, farine", "butter + plain-flour")]
    [InlineData("es", "harina, huevo y pan rallado para rebozar", "plain-flour + egg + breadcrumbs")]
    [InlineData("en", "400g mixed seafood (prawns, mussels, squid)", "-")]
    [InlineData("en", "400 g prawns (peeled, deveined)", "prawn")]
    [InlineData("en", "200 g mixed vegetables (chopped, blanched)", "-")]
    [InlineData("de", "200 g Schmand od. saure Sahne", "sour-cream")]
    [InlineData("de", "200 g Butter bzw. Margarine", "butter")]
    [InlineData("de", "2 Stangen Sellerie", "celery")]
    [InlineData("de", "200 g Sellerie", "celeriac")]
    [InlineData("de", "300 g TK-Garnelen", "prawn")]
    [InlineData("fr", "50 g arachides hachées", "peanut")]
    [InlineData("it", "1 acciuga sott'olio", "anchovy-oil")]
    [InlineData("en", "2 gō (360ml) rice", "rice-long")]
    public void Short_words_and_labels_hide_no_food(string lang, string line, string ids) => Assert.Equal(ids, Ids(line, lang));

    [Theory]
    [InlineData("es", "kilo y medio de patatas", 1500)]
    [InlineData("it", "chilo e mezzo di patate", 1500)]
    [InlineData("es", "medio kilo de patatas", 500)]
    public void A_kilo_and_a_half_has_no_figure(string lang, string line, double grams) => Assert.Equal(grams, Assert.Single(CardReader.ReadLine(line, lang).Foods).Grams);

    [Theory]
    [InlineData("it", "Spaghetti\n\n400 g di spaghetti\n1 kg di vongole\nprezzemolo, aglio, olio, peperoncino q.b.\n\nCuocere la pasta 8 minuti. Saltare tutto.\n", 6, 1)]
    [InlineData("it", "Spaghetti\n\n400 g di spaghetti\n1 kg di vongole\nCuocere la pasta, scolare, condire con aglio.\n", 2, 1)]
    public void Names_that_end_with_a_stop_close_the_list_and_are_no_step(string lang, string card, int foods, int least)
    {
        Dish d = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(card))).Value;

        Assert.Equal((lang, foods), (d.Language, d.Components.SelectMany(c => c.Ingredients).Sum(l => l.Foods.Length)));
        Assert.InRange(d.Components.Sum(c => c.Steps.Length), least, 3);
    }

    [Fact]
    public void What_is_added_in_a_bracket_is_added() => Assert.Equal("125 g Beurre + 20 g Beurre", Said("Beurre : 125 g (+ 20 g pour les moules)", "fr"));

    [Theory]
    [InlineData("1 cup minus 1 tablespoon milk", true)]
    [InlineData("1 less ripe banana", false)]
    [InlineData("1 cup milk, less if the dough is wet", false)]
    public void An_amount_with_something_taken_off_is_asked(string line, bool asked)
    {
        (IngredientLine read, var doubts) = CardReader.ReadLineWithDoubts(line, "en");

        Assert.Equal((asked, asked ? "milk" : read.Foods[0].FoodId), (doubts.Any(x => x.Question.Contains("minus", StringComparison.Ordinal)), read.Foods[0].FoodId));
    }

    [Theory]
    [InlineData("Entrée pour 6 personnes", 18, false)]
    [InlineData("Entrée", 3, true)]
    public void So_much_a_head_is_as_many_times_that_as_there_are_guests(string title, double amount, bool asked)
    {
        Dish d = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText($"{title}\n\nIngrédients\n3 noix de Saint-Jacques par pers.\n50 g de beurre\n\nPréparation\nSaisir les noix 2 min dans le beurre.\n"))).Value;
        FoodAmount food = d.Components.SelectMany(c => c.Ingredients).First().Foods[0];

        Assert.Equal(("scallop", amount, asked), (food.FoodId, food.Amount!.Value, d.Doubts.Any(x => x.Question.Contains("each guest", StringComparison.Ordinal))));
    }

    [Fact]
    public void The_count_in_front_of_a_pair_is_of_the_first() => Assert.Equal("2 piece huevos + pan rallado", Said("2 huevos y pan rallado para rebozar", "es"));

    [Theory]
    [InlineData("100 g salmon fillet x 6", 6, 600)]
    [InlineData("3 × 100 g salmon fillets", 3, 300)]
    [InlineData("400 g tin tomatoes x 2", 2, 800)]
    [InlineData("cod 150g portions x 10", 10, 1500)]
    public void A_count_behind_the_weight_of_one_is_how_many(string line, double amount, double grams) => Assert.Equal((amount, (double?)grams), (Assert.Single(CardReader.ReadLine(line, "en").Foods).Amount!.Value, CardReader.ReadLine(line, "en").Foods[0].Grams));

    [Fact]
    public void A_count_behind_a_range_of_weights_keeps_both_ends()
    {
        FoodAmount cod = Assert.Single(CardReader.ReadLineWithDoubts("cod 140-160g portions x 10", "en").Line.Foods);

        Assert.Equal(("cod", 10, 1400, 1600), (cod.FoodId, cod.Amount, cod.Grams, cod.GramsMax));
    }

    [Theory]
    [InlineData("eggs x 6", "6 piece eggs")]
    [InlineData("2 x 400 g tins tomatoes", "2 tin tomatoes")]
    [InlineData("Nori x 10 sheets", "10 sheet Nori")]
    public void A_count_of_things_that_are_not_weighed_stays(string line, string said) => Assert.Equal(said, Said(line, "en"));

    [Theory]
    [InlineData("fr", "Sel nitrité 18 g/kg", 1.8, null, "curing-salt")]
    [InlineData("de", "18 g Nitritpökelsalz/kg", 1.8, null, "curing-salt")]
    [InlineData("de", "10 g Meersalz pro kg Fleisch", 1, "Fleisch", "sea-salt-fine")]
    [InlineData("en", "18 g/kg salt", 1.8, null, "salt")]
    [InlineData("es", "sal 18 g por kg", 1.8, null, "salt")]
    public void A_weight_to_each_kilogram_is_a_share(string lang, string line, double percent, string? of, string id)
    {
        FoodAmount food = Assert.Single(CardReader.ReadLineWithDoubts(line, lang).Line.Foods);

        Assert.Equal((percent, of, null, null), (food.Percent!.Value, food.PercentOf, food.Amount, food.Grams));
        Assert.Equal(id, food.FoodId);
    }

    [Theory]
    [InlineData("fr", "1 kg de porc", 1000)]
    [InlineData("en", "500 g pork per person", 500)]
    [InlineData("de", "500 g Rinderhack 9,90 €/kg", 500)]
    [InlineData("en", "500 g beef mince (12.50/kg)", 500)]
    [InlineData("de", "1 kg Fleisch", 1000)]
    public void A_kilogram_that_nothing_goes_by_is_an_amount(string lang, string line, double grams) => Assert.Equal(grams, Assert.Single(CardReader.ReadLine(line, lang).Foods).Grams);

    [Fact]
    public void What_the_kilograms_are_of_is_asked_with_what_it_comes_to()
    {
        Dish d = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText("Terrine\n\nIngrédients\n1 kg de gorge de porc\n500 g de foie de volaille\nSel nitrité 18 g/kg\n\nPréparation\nHacher le tout. Cuire à 85 °C.\n"))).Value;

        Doubt asked = Assert.Single(d.Doubts, x => x.Asked == "18 g/kg");
        Assert.Equal(["27 g", "18 g", "… g"], asked.Candidates.Select(c => c.Plain));
    }

    [Theory]
    [InlineData("1 tbsp each ground cumin, coriander and smoked paprika", "cumin + coriander-seed + paprika")]
    [InlineData("ground cumin, coriander, ginger", "cumin + coriander-seed + ginger-ground")]
    [InlineData("cumin, coriander, ginger", "cumin + coriander-leaf + ginger")]
    [InlineData("ground pork, ginger, coriander", "pork-mince + ginger + coriander-leaf")]
    public void Ground_is_said_of_the_spices_behind_it(string line, string ids) => Assert.Equal(ids, Ids(line, "en"));

    [Theory]
    [InlineData("fr", "10 brins de persil, 1 gousse d'ail", "parsley + garlic")]
    [InlineData("fr", "4 tomates, 2 coupées en dés", "tomato")]
    [InlineData("de", "dazu: 250 ml Milch", "milk")]
    public void An_amount_behind_a_comma_is_of_a_food_of_its_own(string lang, string line, string ids) => Assert.Equal(ids, Ids(line, lang));
}
