using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Amounts of one line that say two things: a part on top for another use, a weight told twice, a weight behind a count, a list behind a name; each beside what looks like it. Readings as a cook gives them: common practice, no source.</summary>
public sealed class LineUseTests
{
    private static string Foods(string lang, string line) => string.Join("; ", CardReader.ReadLine(line, lang).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}{(f.Use is null ? "" : $" [{f.Use}]")}")));

    [Theory]
    [InlineData("en", "250 g butter, plus 50 g for the tin", "250 g butter; 50 g butter [for the tin]")]
    [InlineData("en", "250 g butter + 50 g extra for the tin", "250 g butter; 50 g butter [for the tin]")]
    [InlineData("en", "2 tbsp oil plus 1 tsp for brushing", "2 tbsp oil; 1 tsp oil [for brushing]")]
    [InlineData("en", "100 g butter, plus 20 g melted for brushing", "100 g butter; 20 g butter [for brushing]")]
    [InlineData("en", "1 egg, plus 1 yolk for glazing", "1 piece egg; 1 piece yolk [for glazing]")]
    [InlineData("fr", "4 œufs et 1 pour la dorure", "4 piece œufs; 1 piece œufs [pour la dorure]")]
    [InlineData("de", "200 g Zucker + 30 g für die Form", "200 g Zucker; 30 g Zucker [für die Form]")]
    [InlineData("it", "300 g farina + q.b. per stendere", "300 g farina [extra: q.b. per stendere]")]
    [InlineData("en", "250 g butter, 50 g of it for the tin", "250 g butter")]
    [InlineData("en", "250 g butter, of it 50 g for the tin", "250 g butter")]
    [InlineData("de", "250 g Butter, 50 g davon für die Form", "250 g Butter")]
    [InlineData("en", "1 cup plus 2 tbsp sugar", "1 cup sugar; 2 tbsp sugar")]
    [InlineData("en", "250 g butter plus 50 g lard", "250 g butter; 50 g lard")]
    public void A_part_on_top_is_a_use_of_its_own(string lang, string line, string foods) => Assert.Equal(foods, Foods(lang, line));

    [Theory]
    [InlineData("2 aubergines (about 1 lb/450 g)", 450)]
    [InlineData("5 leeks (2 lb / 900 g total)", 900)]
    [InlineData("5 leeks (900 g/2 lb)", 900)]
    [InlineData("5 leeks, about 2 lb/900 g", 900)]
    [InlineData("2 tins chickpeas (14 oz/400 g)", 800)]
    [InlineData("4 pork chops (7 oz/200 g each)", 800)]
    [InlineData("2 tins chickpeas (400 g/240 g drained)", 480)]
    public void A_weight_told_in_two_units_is_one_weight(string line, double grams) => Assert.Equal(grams, Assert.Single(CardReader.ReadLine(line, "en").Foods).Grams);

    [Theory]
    [InlineData("1 turkey 5 kg", "turkey", 5000, false)]
    [InlineData("1 pork belly 2.5kg, boned", "pork belly", 2500, false)]
    [InlineData("6 quail 180 g each", "quail", 1080, false)]
    [InlineData("6 quail 1.2 kg in all", "quail", 1200, false)]
    [InlineData("6 quail 180 g", "quail", 180, true)]
    [InlineData("1 tart case 20 cm", "tart case 20 cm", null, false)]
    public void A_weight_behind_a_count_is_the_weight_of_it(string line, string food, object? grams, bool asked)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(line, "en").Foods);

        Assert.Equal(food, f.Food);
        Assert.Equal(grams is int g ? g : null, f.Grams);
        Assert.Equal(asked, !CardReader.ReadLineWithDoubts(line, "en").Doubts.IsEmpty);
    }

    [Theory]
    [InlineData("200 g panade (equal parts flour & milk)", "equal parts flour & milk", null)]
    [InlineData("1 kg soffritto (3:2:1 onion, carrot, celery)", "3:2:1 onion, carrot, celery", null)]
    [InlineData("80 g ghee (from 100 g butter)", "from 100 g butter", null)]
    [InlineData("400 g beans (tinned will do)", "tinned will do", null)]
    [InlineData("400 g beans (2 cups)", null, "2 cup")]
    [InlineData("400 g crab (from 1 kg whole)", null, null)]
    public void What_a_bracket_remarks_is_kept_and_measures_nothing(string line, string? prepared, string? second)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(line, "en").Foods);

        Assert.Equal((prepared, second), (f.Preparation, f.SecondMeasure));
    }

    [Theory]
    [InlineData("en", "30 ml olive or walnut oil", "olive oil", "30 ml walnut oil")]
    [InlineData("en", "100 ml double or whipping cream", "double cream", "100 ml whipping cream")]
    [InlineData("en", "30 g butter or olive oil", "butter", "30 g olive oil")]
    [InlineData("en", "2 shallots, diced or 1 tbsp onion powder", "shallots", "1 tbsp onion powder")]
    [InlineData("en", "2 shallots, cut into 2 or 3 pieces", "shallots", null)]
    public void An_alternative_may_share_the_last_word_or_stand_behind_the_work(string lang, string line, string food, string? other)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(line, lang).Foods);

        Assert.Equal((food, other), (f.Food, f.Alternative));
    }

    [Theory]
    [InlineData("es", "aceite y vinagre", "aceite; vinagre")]
    [InlineData("fr", "beurre et huile", "beurre; huile")]
    [InlineData("it", "olio e burro", "olio; burro")]
    [InlineData("de", "Essig und Öl", "Essig; Öl")]
    [InlineData("en", "oil and vinegar", "oil; vinegar")]
    [InlineData("en", "bread and butter pickles", "bread and butter pickles")]
    [InlineData("en", "Base: 200 g flour, 100 g butter, 1 egg yolk", "flour; butter; egg yolk")]
    [InlineData("en", "Cheese: 200 g, grated", "Cheese")]
    public void Two_names_are_two_foods(string lang, string line, string foods) => Assert.Equal(foods, string.Join("; ", CardReader.ReadLine(line, lang).Foods.Select(f => f.Food)));

    [Theory]
    [InlineData("zest of 1 lime + juice of 2", "2 piece lime")]
    [InlineData("juice of 1 lime + juice of 2", "3 piece lime")]
    [InlineData("zest of 1 lime and 40 ml juice", "1 piece lime; 40 ml lime juice")]
    [InlineData("grated zest of 2 limes, plus 40 ml juice", "2 piece limes; 40 ml lime juice")]
    [InlineData("zest of 1 lime and 40 g sugar", null)]
    [InlineData("pared rind of a lime", "1 piece lime")]
    [InlineData("1 shallot stuck with 3 cloves", "1 piece shallot; 3 piece cloves")]
    [InlineData("1 joint of ham studded with care", null)]
    [InlineData("equal parts white wine and mirin", "  white wine [equal parts];   mirin [equal parts]")]
    [InlineData("1 part vinegar to 3 parts olive oil", "1 part vinegar; 3 part olive oil")]
    [InlineData("1 part-baked baguette", null)]
    [InlineData("300+60 g sugar", "360 g sugar")]
    [InlineData("250 grms sugar", "250 g sugar")]
    [InlineData("good glug of olive oil", "1 glug olive oil")]
    [InlineData("good bread", "  good bread")]
    [InlineData("6\" cinnamon stick", "6 inch cinnamon stick")]
    [InlineData("6'' piece of kombu", "6 inch kombu")]
    [InlineData("6 'Maris' potatoes", null)]
    [InlineData("12 oz bottle pale ale", "12 floz pale ale")]
    [InlineData("12 oz bottle tomato purée", "12 oz tomato purée")]
    [InlineData("few drops Worcester", "  Worcester [few drops]")]
    public void Foods_told_by_each_other_are_all_read(string line, string? foods)
    {
        string read = Foods("en", line);
        if (foods is null)
        {
            Assert.DoesNotContain(";", read, StringComparison.Ordinal);
        }
        else
        {
            Assert.Equal(foods, read);
        }

        Assert.DoesNotContain(CardReader.ReadLineWithDoubts(line, "en").Doubts, _ => true);
    }

    [Theory]
    [InlineData("3 EL gehackte Mandeln", "3 tbsp Mandeln")]
    [InlineData("12 noix de Saint-Jacques", "12 piece noix de Saint-Jacques")]
    [InlineData("2 bouquets garnis", "2 piece bouquets garnis")]
    [InlineData("20 g noix de beurre", null)]
    public void A_line_alone_tells_its_language_by_its_units(string line, string? foods)
    {
        string read = string.Join("; ", CardReader.ReadLine(line, CardReader.LanguageOf(line)).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}")));
        Assert.Equal(foods ?? "20 g noix de beurre", read);
    }

    [Fact]
    public void Egg_wash_and_Worcester_keep_their_allergens_and_a_small_cup_its_question()
    {
        Dish d = Told.Read("# Glaze\n\n- egg wash\n- dash of Worcester\n- 200 g flour\n\n1. Brush.");
        Assert.Equal(["egg", "worcestershire"], d.Components[0].Ingredients.Take(2).Select(l => l.Foods[0].FoodId));
        Assert.Equal("small cup", Assert.Single(CardReader.ReadLine("3 tazzine di caffè", "it").Foods).Unit);
        Assert.NotEmpty(CardReader.ReadLineWithDoubts("3 tazzine di caffè", "it").Doubts);
    }
}
