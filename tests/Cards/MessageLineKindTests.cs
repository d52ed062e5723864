using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Lines as messages, shopping notes, table rows and old books write them; each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class MessageLineKindTests
{
    private static string[] Line(string line, string lang) =>
        [.. CardReader.ReadLine(line, lang).Foods.Select(f => FormattableString.Invariant($"{f.Amount}{(f.AmountMax is { } m ? $"-{m}" : "")} {f.Unit} {f.Food}{(f.Percent is { } p ? $" {p} % of {f.PercentOf}" : "")}"))];

    [Theory]
    [InlineData("could you grab 2 bunches of parsley please?", "en", "2 bunch parsley")]
    [InlineData("need 2 kg flour", "en", "2 kg flour")]
    [InlineData("don't forget the butter", "en", "  butter")]
    [InlineData("6 limes please", "en", "6 piece limes")]
    [InlineData("pense à prendre 6 œufs stp", "fr", "6 piece œufs")]
    [InlineData("il faut 3 kg de carottes", "fr", "3 kg carottes")]
    [InlineData("kannst du 2 kg Kartoffeln kaufen", "de", "2 kg Kartoffeln")]
    [InlineData("bring 3 Dosen Kokosmilch mit (je 400 ml)", "de", "3 tin Kokosmilch")]
    [InlineData("¿puedes traer 2 limones?", "es", "2 piece limones")]
    [InlineData("ci servono 4 uova", "it", "4 piece uova")]
    [InlineData("レモン3個買ってきて", "ja", "3 piece レモン")]
    [InlineData("need 20 minutes rest", "en", "  need 20 minutes rest")]
    [InlineData("need 4 people", "en", "  need 4 people")]
    [InlineData("il faut 2 heures de repos", "fr", "  il faut 2 heures de repos")]
    [InlineData("Wir brauchen 20 Minuten", "de", "  Wir brauchen 20 Minuten")]
    [InlineData("200 g Mehl mit Backpulver", "de", "200 g Mehl mit Backpulver")]
    public void A_message_around_a_line_is_taken_off(string line, string lang, params string[] foods) => Assert.Equal(foods, Line(line, lang));

    [Theory]
    [InlineData("tin coconut milk x2", "en", "2 tin coconut milk")]
    [InlineData("bunch parsley x 3", "en", "3 bunch parsley")]
    [InlineData("Dose Tomaten x 2", "de", "2 tin Tomaten")]
    [InlineData("eggs x 6", "en", "6 piece eggs")]
    [InlineData("tin foil x2", "en", "2 piece tin foil")]
    [InlineData("bottle gourd x2", "en", "2 piece bottle gourd")]
    [InlineData("Flour, strong white | 12.5 | kg", "en", "12.5 kg Flour")]
    [InlineData("Butter | g | 250 | soft", "en", "250 g Butter")]
    [InlineData("kg | 3 | Kartoffeln", "de", "3 kg Kartoffeln")]
    [InlineData("Flour | 500 g", "en", "500 g Flour")]
    public void A_count_and_a_unit_are_found_where_they_stand(string line, string lang, params string[] foods) => Assert.Equal(foods, Line(line, lang));

    [Theory]
    [InlineData("Of best loaf sugar, one pound", "en", "1 lb best loaf sugar")]
    [InlineData("Of butter, half a pound", "en", "0.5 lb butter")]
    [InlineData("farine, une demi-livre", "fr", "0.5 livre farine")]
    [InlineData("Mehl, ein Pfund", "de", "1 Pfund Mehl")]
    [InlineData("zucchero, mezzo chilo", "it", "0.5 kg zucchero")]
    [InlineData("Oil of cloves, one drop", "en", "1 drop Oil of cloves")]
    [InlineData("onion, one half grated", "en", "  onion")]
    public void Old_books_tell_the_amount_last_and_in_words(string line, string lang, params string[] foods) => Assert.Equal(foods, Line(line, lang));

    [Theory]
    [InlineData("crema pastelera, media receta de la pág. 23", "es", "0.5 batch crema pastelera")]
    [InlineData("Mürbeteig, halbes Rezept von Seite 12", "de", "0.5 batch Mürbeteig")]
    [InlineData("puff pastry, half recipe from p. 23", "en", "0.5 batch puff pastry")]
    [InlineData("frolla, pag. 8", "it", "  frolla")]
    [InlineData("pâte sablée (p. 12)", "fr", "  pâte sablée")]
    [InlineData("Custard (p. 45) 300 g", "en", "300 g Custard")]
    [InlineData("uova 3", "it", "3 piece uova")]
    public void The_number_of_a_page_is_no_amount(string line, string lang, params string[] foods) => Assert.Equal(foods, Line(line, lang));

    [Theory]
    [InlineData("6/8 foglie di salvia", "it", "6-8 leaf salvia")]
    [InlineData("2/3 spicchi d'aglio", "it", "2-3 clove aglio")]
    [InlineData("2/3 sprigs thyme", "en", "2-3 sprig thyme")]
    [InlineData("3/4 Zehen Knoblauch", "de", "3-4 clove Knoblauch")]
    [InlineData("4/6 hojas de laurel", "es", "4-6 leaf laurel")]
    [InlineData("6/8 tomates", "fr", "6-8 piece tomates")]
    [InlineData("3/4 head cauliflower", "en", "0.75 head cauliflower")]
    [InlineData("1/2 foglia di alloro", "it", "0.5 leaf alloro")]
    [InlineData("6/8 cups flour", "en", "0.75 cup flour")]
    [InlineData("3/4 Blatt Gelatine", "de", "0.75 sheet Gelatine")]
    [InlineData("3/4 di tazza di farina", "it", "0.75 cup farina")]
    public void A_stroke_between_counts_is_a_range(string line, string lang, params string[] foods) => Assert.Equal(foods, Line(line, lang));

    [Theory]
    [InlineData("tuorli n. 4, albumi n. 2", "it", "4 piece tuorli", "2 piece albumi")]
    [InlineData("egg yolks 4, egg whites 2", "en", "4 piece egg yolks", "2 piece egg whites")]
    [InlineData("uova n. 3, tuorli n. 2, zucchero g 120", "it", "3 piece uova", "2 piece tuorli", "120 g zucchero")]
    [InlineData("flour 500, 2 eggs, pinch of salt", "en", "500 g flour", "2 piece eggs", "1 pinch salt")]
    [InlineData("Mehl 300, Zucker 150, Butter 100, 2 Eier", "de", "300 g Mehl", "150 g Zucker", "100 g Butter", "2 piece Eier")]
    [InlineData("salt 10 g, pepper", "en", "10 g salt", "  pepper")]
    [InlineData("farina 300 g, 3 uova, sale", "it", "300 g farina", "3 piece uova", "  sale")]
    [InlineData("1 carrot, 1 onion, ½ leek", "en", "1 piece carrot", "1 piece onion", "0.5 piece leek")]
    [InlineData("卵 2個、牛乳", "ja", "2 piece 卵", "  牛乳")]
    [InlineData("玉ねぎ 1個(200g)、薄切り", "ja", "1 piece 玉ねぎ")]
    [InlineData("cod 600 g, 4 portions", "en", "600 g cod")]
    [InlineData("lemon 1, 20 ml juice", "en", "1 piece lemon")]
    [InlineData("rice 300 g, basmati", "en", "300 g rice")]
    [InlineData("butter 200 g, salted", "en", "200 g butter")]
    [InlineData("Weizenmehl 1050", "de", "  Weizenmehl 1050")]
    public void Every_food_of_a_line_is_kept(string line, string lang, params string[] foods) => Assert.Equal(foods, Line(line, lang));

    [Theory]
    [InlineData("1 red and 1 green pepper, diced", "en", "1 piece red pepper", "1 piece green pepper")]
    [InlineData("1 each red and green pepper", "en", "1 piece red pepper", "1 piece green pepper")]
    [InlineData("je 1 rote und gelbe Paprika", "de", "1 piece rote Paprika", "1 piece gelbe Paprika")]
    [InlineData("½ pimiento rojo y ½ verde", "es", "0.5 piece pimiento rojo", "0.5 piece pimiento verde")]
    [InlineData("1 poivron rouge et 1 vert", "fr", "1 piece poivron rouge", "1 piece poivron vert")]
    [InlineData("una pizca de sal y otra de azúcar", "es", "1 pinch sal", "1 pinch azúcar")]
    [InlineData("un pizzico di sale e uno di zucchero", "it", "1 pinch sale", "1 pinch zucchero")]
    [InlineData("2 red and green peppers", "en", "2 piece red and green peppers")]
    [InlineData("1 oignon rouge et 1 carotte", "fr", "1 piece oignon rouge", "1 piece carotte")]
    public void Two_kinds_of_one_noun_are_two_foods(string line, string lang, params string[] foods) => Assert.Equal(foods, Line(line, lang));

    [Theory]
    [InlineData("Salt - 2% of flour weight", "en", "  Salt 2 % of flour")]
    [InlineData("Salz - 2 % vom Mehl", "de", "  Salz 2 % of Mehl")]
    [InlineData("sal - 2% sobre harina", "es", "  sal 2 % of harina")]
    [InlineData("2 cucchiai abbondanti di parmigiano", "it", "2 tbsp parmigiano")]
    [InlineData("2 cucharadas escasas de miel", "es", "2 tbsp miel")]
    [InlineData("200 g scarsi di farina", "it", "200 g farina")]
    [InlineData("100 g de parmesan râpé, ou plus selon goût", "fr", "100 g parmesan")]
    [InlineData("100 g Zucker oder mehr", "de", "100 g Zucker")]
    public void How_full_and_how_much_of_what_belong_to_the_amount(string line, string lang, params string[] foods)
    {
        IngredientLine read = CardReader.ReadLine(line, lang);
        Assert.Equal(foods, Line(line, lang));
        Assert.All(read.Foods, f => Assert.Null(f.Alternative));
    }

    [Theory]
    [InlineData("NB all spoons are level", "en")]
    [InlineData("All spoons are level", "en")]
    [InlineData("Hinweis: alle Löffel gestrichen", "de")]
    [InlineData("Toutes les cuillères sont rases", "fr")]
    [InlineData("Ojo: todas las cucharadas son rasas", "es")]
    [InlineData("Tutti i cucchiai sono rasi", "it")]
    public void What_is_said_of_all_spoons_is_a_note(string line, string lang) => Assert.Equal(LineKind.Note, CardReader.ReadLine(line, lang).Kind);

    [Theory]
    [InlineData("2 Gläser Sauerkirschen (Abtropfgewicht je 350 g)", "de", 700)]
    [InlineData("2 tins chickpeas (drained weight each 240 g)", "en", 480)]
    [InlineData("1 Glas Sauerkirschen (Abtropfgewicht 350 g)", "de", 350)]
    [InlineData("mezza bustina di lievito per dolci (8 g)", "it", 8)]
    [InlineData("½ Päckchen Backpulver (8 g)", "de", 8)]
    [InlineData("1½ tins tomatoes (600 g)", "en", 600)]
    [InlineData("1½ tins tomatoes (400 g)", "en", 600)]
    [InlineData("½ sachet dried yeast (7 g)", "en", 3.5)]
    [InlineData("½ (400 g) tin chickpeas", "en", 200)]
    public void A_weight_behind_packs_is_of_one_or_of_all(string line, string lang, double grams)
    {
        (IngredientLine read, var doubts) = CardReader.ReadLineWithDoubts(line, lang);
        Assert.Equal(grams, read.Foods[0].Grams!.Value, 2);
        Assert.Empty(doubts);
    }

    [Theory]
    [InlineData("½ pack butter (125 g)", "en", 1)]
    [InlineData("250 ml (½ litro) de nata", "es", 1)]
    [InlineData("20 cl (1/4 l) de crème", "fr", 1)]
    [InlineData("500 ml Sahne (½ l)", "de", 0)]
    [InlineData("1 l milk (500 ml for the custard)", "en", 0)]
    [InlineData("2 l (4 x 500 ml) milk", "en", 0)]
    [InlineData("½ pack butter", "en", 0)]
    public void Two_readings_are_asked(string line, string lang, int questions) => Assert.Equal(questions, CardReader.ReadLineWithDoubts(line, lang).Doubts.Length);
}
