using Coulisse.Cards.Reading;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Tests;

/// <summary>Foods told by their state, their tin or their trade name: the row of just that, or none; a wrong food is worse than none.</summary>
public sealed class FoodPhraseTests
{
    private static string? Id(string line, string lang) => CardReader.Read(new CardText($"# A\n\n- {line}\n- 100 g {(lang == "de" ? "Mehl und Zucker" : lang == "fr" ? "de farine" : lang == "es" ? "de harina" : lang == "it" ? "di farina" : "flour")}\n")) is Parsed<Dish>.Ok(var d) ? d.Components[0].Ingredients[0].Foods[0].FoodId : null;

    [Theory]
    [InlineData("1 lb minced beef", "beef-mince")]
    [InlineData("500 g minced lamb", "lamb-mince")]
    [InlineData("1 tsp ground coriander", "coriander-seed")]
    [InlineData("1 tsp ground ginger", "ginger-ground")]
    [InlineData("20 g chopped coriander", "coriander-leaf")]
    [InlineData("20 g ginger, ground with the salt", "ginger")]
    [InlineData("2 chopped tomatoes", "tomato")]
    [InlineData("200 g tomatoes, chopped", "tomato")]
    public void A_state_that_makes_another_food_names_it_and_one_that_does_not_stays_a_state(string line, string id) => Assert.Equal(id, Id(line, "en"));

    [Theory]
    [InlineData("1 x 28-oz can tomatoes", "tomato-tinned")]
    [InlineData("400 g can chopped tomatoes", "tomato-tinned")]
    [InlineData("1 tin chickpeas", "chickpea-tinned")]
    [InlineData("2 x 400 g tins kidney beans", "kidney-bean-tinned")]
    [InlineData("1 can tuna, drained", "tuna-tinned")]
    [InlineData("1 small can sweetcorn", "sweetcorn-tinned")]
    [InlineData("1 (14 oz) can black beans", null)]
    [InlineData("1 can coconut milk", "coconut-milk")]
    [InlineData("1 tin condensed milk", "condensed-milk")]
    [InlineData("1 can beer", "beer")]
    [InlineData("400 g tomatoes", "tomato")]
    [InlineData("200 g chickpeas", "chickpeas")]
    public void What_comes_out_of_a_tin_is_not_what_was_dried_or_grew(string line, string? id) => Assert.Equal(id, Id(line, "en"));

    [Theory]
    [InlineData("200 g 70% dark chocolate", "chocolate-70")]
    [InlineData("200 g 72% dark chocolate", "chocolate-70")]
    [InlineData("200 g 50% dark chocolate", null)]
    [InlineData("500 g T55 flour", "plain-flour")]
    [InlineData("1 tbsp heaped cornflour", "cornflour")]
    [InlineData("2 kumara, peeled", "sweet-potato")]
    [InlineData("100 g peaches", "peach")]
    public void Names_of_the_trade_and_of_the_far_side_of_the_world(string line, string? id) => Assert.Equal(id, Id(line, "en"));

    [Theory]
    [InlineData("100 g coco rallado", "es", "coconut-desiccated")]
    [InlineData("100 g noix de coco râpée", "fr", "coconut-desiccated")]
    [InlineData("400 g tomates pelées", "fr", "tomato-tinned")]
    [InlineData("500 g bœuf haché", "fr", "beef-mince")]
    [InlineData("100 g gekochter Schinken", "de", "ham-cooked")]
    [InlineData("400 g passierte Tomaten", "de", "tomato-passata")]
    [InlineData("100 g geriebener Apfel", "de", "apple")]
    [InlineData("100 g carottes râpées", "fr", "carrot")]
    public void States_of_other_languages(string line, string lang, string id) => Assert.Equal((id, lang), (new FoodPhrase(line, lang).Id, lang));

    private sealed record FoodPhrase(string Line, string Lang)
    {
        public string? Id => CardReader.Read(new CardText($"# A\n\n{(Lang switch { "de" => "Die Butter mit dem Zucker und den Eiern verrühren.", "fr" => "Mélanger avec la farine et les œufs dans une casserole.", _ => "Mezclar con la harina y los huevos en una olla." })}\n\n- {Line}\n")) is Parsed<Dish>.Ok(var d) ? d.Components.SelectMany(c => c.Ingredients).First().Foods[0].FoodId : null;
    }

    [Fact]
    public void Kumara_is_found_by_the_search() => Assert.Equal("sweet-potato", FoodSearch.Default.Find("kumara", 3)[0].Id);
}
