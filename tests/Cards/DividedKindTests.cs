using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Kinds of one line: an amount that is divided, two measures that clash, a figure without a unit, a share of a base; each beside what looks like it. Readings as a cook gives them: common practice, no source.</summary>
public sealed class DividedKindTests
{
    [Theory]
    [InlineData("en", "250 g butter, 150 g for the base and 100 g for the crumble", 250)]
    [InlineData("en", "250 g butter: 150 g for the base, 100 g for the crumble", 250)]
    [InlineData("en", "250 g butter - 150 for the base and 100 for the crumble", 250)]
    [InlineData("en", "butter 250 g, divided: 150 g for the base and 100 g for the crumble", 250)]
    [InlineData("en", "250 g butter (150 g base + 100 g crumble)", 250)]
    [InlineData("en", "250 g butter, 150 g cold and 100 g melted", 250)]
    [InlineData("en", "250 g butter, of which 50 g for the tin", 250)]
    [InlineData("en", "butter, 150 g for the base and 100 g for the crumble", 250)]
    [InlineData("en", "5 eggs, 4 for the batter and 1 for glazing", 5)]
    [InlineData("en", "5 tbsp olive oil, 3 tbsp for the pan plus 2 tbsp for the dressing", 5)]
    [InlineData("en", "1 l milk, 700 ml for the custard and 300 ml for the sauce", 1)]
    [InlineData("fr", "250 g de beurre, 150 g pour le fond et 100 g pour le crumble", 250)]
    [InlineData("fr", "250 g de beurre dont 50 g pour le moule", 250)]
    [InlineData("fr", "5 œufs, 4 pour l'appareil et 1 pour la dorure", 5)]
    [InlineData("de", "250 g Butter, 150 g für den Boden und 100 g für die Streusel", 250)]
    [InlineData("de", "5 Eier, 4 für den Teig und 1 zum Bestreichen", 5)]
    [InlineData("es", "250 g de mantequilla, 150 g para la base y 100 g para cubrir", 250)]
    [InlineData("it", "250 g di burro, di cui 50 g per la teglia", 250)]
    [InlineData("it", "5 uova, 4 per l'impasto e 1 per spennellare", 5)]
    [InlineData("en", "7 eggs: 5 whole and 2 yolks", 7)]
    [InlineData("de", "7 Eier: 5 ganze und 2 Eigelb", 7)]
    [InlineData("en", "500 g mixed mushrooms, 300 g chestnut mushrooms and 200 g oyster mushrooms", 500)]
    public void What_divides_an_amount_is_never_added_to_it(string lang, string line, double amount)
    {
        FoodAmount food = Assert.Single(CardReader.ReadLine(line, lang).Foods);

        Assert.Equal(amount, food.Amount);
        Assert.DoesNotContain(CardReader.ReadLineWithDoubts(line, lang).Doubts, _ => true);
    }

    [Theory]
    [InlineData("40 g butter, 25 g flour and 15 g sugar", 3)]
    [InlineData("2 eggs, 1 lemon and 1 orange", 3)]
    [InlineData("3 eggs and 2 egg yolks", 2)]
    [InlineData("7 eggs: 2 whole and 2 yolks", 2)]
    public void Foods_whose_amounts_happen_to_add_up_stay_foods(string line, int foods) => Assert.Equal(foods, CardReader.ReadLine(line, "en").Foods.Length);

    [Fact]
    public void Shares_that_do_not_come_to_their_whole_are_remarked()
    {
        static Remark[] Of(string line) => [.. Read($"# Tart\n\n- {line}\n- 200 g flour\n\n1. Rub the butter into the flour.").Remarks.Where(r => r.Kind == "divided uses")];

        Assert.Contains("240", Assert.Single(Of("250 g butter, 150 g for the base and 90 g for the crumble")).What, StringComparison.Ordinal);
        Assert.Empty(Of("250 g butter, 150 g for the base and 100 g for the crumble"));
        Assert.Empty(Of("250 g butter, 150 g for the base and the rest for the crumble"));
        Assert.Empty(Of("250 g butter, of which 50 g for the tin"));
    }

    [Theory]
    [InlineData("400 g (10 oz) plums", true)]
    [InlineData("250g/6oz leeks", true)]
    [InlineData("400 g (14 oz) plums", false)]
    [InlineData("75g/3oz butter", false)]
    [InlineData("2 kg (800 g net) mussels", false)]
    [InlineData("3 lb crab (500 g meat)", false)]
    public void Grams_and_ounces_that_lie_far_apart_are_asked(string line, bool asked) => Assert.Equal(asked, !CardReader.ReadLineWithDoubts(line, "en").Doubts.IsEmpty);

    [Theory]
    [InlineData("en", "Rye flour 350", 350)]
    [InlineData("it", "Farina 00 350", 350)]
    [InlineData("fr", "Farine T55 350", 350)]
    [InlineData("es", "Harina de fuerza 350", 350)]
    public void A_bare_figure_behind_a_flour_is_grams_and_asked(string lang, string line, double grams)
    {
        (IngredientLine read, var doubts) = CardReader.ReadLineWithDoubts(line, lang);

        Assert.Equal(grams, Assert.Single(read.Foods).Grams);
        Assert.Single(doubts);
    }

    [Theory]
    [InlineData("en", "Flour type 550")]
    [InlineData("fr", "Farine 65")]
    [InlineData("de", "Mehl 405")]
    public void A_type_of_flour_is_no_amount(string lang, string line) => Assert.Null(Assert.Single(CardReader.ReadLine(line, lang).Foods).Grams);

    [Theory]
    [InlineData("es", "1,8 % de sal sobre la harina", 1.8, "sal")]
    [InlineData("fr", "2 % de sel sur la farine", 2, "sel")]
    [InlineData("de", "2 % Salz auf das Mehl", 2, "Salz")]
    [InlineData("it", "2 % di sale sulla farina", 2, "sale")]
    public void A_share_of_the_flour_is_told_in_every_language(string lang, string line, double percent, string food)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(line, lang).Foods);

        Assert.Equal((percent, food), (f.Percent, f.Food));
    }

    [Theory]
    [InlineData("fr", "35 % crème sur la tarte")]
    [InlineData("es", "35 % nata sobre el pastel")]
    public void What_lies_on_a_dish_is_no_base(string lang, string line) => Assert.Null(Assert.Single(CardReader.ReadLine(line, lang).Foods).Percent);

    [Theory]
    [InlineData("it", "2 barattoli di pelati (240 g), scolati", "pelati", "scolati")]
    [InlineData("en", "1 tin chopped, peeled tomatoes", "tomatoes", null)]
    [InlineData("en", "200 g peeled, chopped tomatoes", "tomatoes", "peeled, chopped")]
    public void Of_words_of_work_alone_the_first_is_the_food(string lang, string line, string food, string? prepared)
    {
        FoodAmount f = Assert.Single(CardReader.ReadLine(line, lang).Foods);

        Assert.EndsWith(food, f.Food, StringComparison.Ordinal);
        Assert.True(prepared is null || f.Preparation == prepared, f.Preparation);
    }

    [Theory]
    [InlineData("en", "Chill for at least 3 hours and up to 1 day.", 180, 1440)]
    [InlineData("en", "Rest at least 20 minutes, no more than 1 hour.", 20, 60)]
    [InlineData("en", "Marinate for 2 hours and for up to 12 hours.", 120, 720)]
    [InlineData("fr", "Laisser reposer au moins 1 heure et jusqu'à 6 heures.", 60, 360)]
    [InlineData("de", "Mindestens 2 Stunden und höchstens 8 Stunden ruhen lassen.", 120, 480)]
    [InlineData("es", "Enfriar al menos 2 horas y hasta 12 horas.", 120, 720)]
    [InlineData("it", "Far riposare almeno 2 ore e fino a 12 ore.", 120, 720)]
    [InlineData("en", "Chill 2 hours minimum, 24 hours maximum.", 120, 1440)]
    [InlineData("en", "Prove for 1 hour at least, 2 hours at most.", 60, 120)]
    [InlineData("ja", "2時間から最大24時間冷やす。", 120, 1440)]
    public void A_low_end_and_its_high_end_are_one_wait(string lang, string step, double from, double to)
    {
        StepTime t = Assert.Single(CardReader.ReadStep(step, lang).Times);

        Assert.Equal((from, to), (t.MinutesMin, t.MinutesMax));
    }

    [Theory]
    [InlineData("en", "Simmer for 30 minutes and rest for up to 1 hour.")]
    [InlineData("en", "Bake 20 minutes at least, rest 30 minutes at most.")]
    [InlineData("ja", "30分以上煮て、2時間冷やす。")]
    public void Two_waits_stay_two(string lang, string step) => Assert.Equal(2, CardReader.ReadStep(step, lang).Times.Length);
}
