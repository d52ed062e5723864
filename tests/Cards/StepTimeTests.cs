using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Which times of a step are waits, storage, repeats or the other way, and what each is of. Readings as a cook gives them: common practice, no source.</summary>
public sealed class StepTimeTests
{
    private static string Times(string step, string lang) => Times(CardReader.ReadStep(step, lang));

    private static string Times(Step s) => string.Join(" ", s.Times.Select(t => FormattableString.Invariant($"{(t.Repeats > 1 ? $"{t.Repeats}x" : "")}{t.MinutesMin ?? t.MinutesMax} {t.Kind}")));

    [Theory]
    [InlineData("Can be frozen for 3 months.", "en", "freezer 90")]
    [InlineData("Store up to 5 days at 4 °C.", "en", "fridge 5")]
    [InlineData("Keep in the fridge for up to 3 days.", "en", "fridge 3")]
    [InlineData("Peut se congeler 3 mois.", "fr", "freezer 90")]
    [InlineData("À conserver 3 jours au frais.", "fr", "fridge 3")]
    [InlineData("Kann 3 Monate eingefroren werden.", "de", "freezer 90")]
    [InlineData("Im Kühlschrank bis zu 3 Tage aufbewahren.", "de", "fridge 3")]
    [InlineData("Se puede congelar 3 meses.", "es", "freezer 90")]
    [InlineData("Guardar en la nevera hasta 3 días.", "es", "fridge 3")]
    [InlineData("Si può congelare per 3 mesi.", "it", "freezer 90")]
    [InlineData("Conservare in frigorifero 3 giorni.", "it", "fridge 3")]
    [InlineData("冷凍で1か月保存できる。", "ja", "freezer 30")]
    public void How_long_a_thing_keeps_is_no_wait(string step, string lang, string want)
    {
        Step s = CardReader.ReadStep(step, lang);

        Assert.Empty(s.Times);
        Assert.Equal(want, FormattableString.Invariant($"{s.Storage[0].Where} {s.Storage[0].Days}"));
    }

    [Theory]
    [InlineData("Keep in the fridge for 3 days, turning daily.", "en", "4320 Chill")]
    [InlineData("Freeze for 24 h.", "en", "1440 Chill")]
    [InlineData("Ripen for 2 weeks.", "en", "20160 Rest")]
    [InlineData("Infuse for 3 days. Keeps 2 weeks.", "en", "4320 Rest")]
    [InlineData("Laisser mariner 2 jours.", "fr", "2880 Rest")]
    [InlineData("2 Tage ziehen lassen.", "de", "2880 Rest")]
    public void Days_that_are_waited_stay_waits(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Leave it a good 3 hours before you cut it.", "en", "180 Rest")]
    [InlineData("Laisser reposer 1 nuit au frais.", "fr", " Rest")]
    [InlineData("Bake 30 min lid on, lid off another 30.", "en", "30 Oven 30 Oven")]
    [InlineData("Turn down to 200 °C and bake 30.", "en", "30 Oven")]
    [InlineData("Cook until it reads 54 °C in the middle, then rest 10.", "en", "10 Rest")]
    [InlineData("Weigh the rest 10 g at a time.", "en", "")]
    [InlineData("Take it out 30 minutes before serving.", "en", "")]
    [InlineData("Add another 30 raisins.", "en", "")]
    [InlineData("Bake 30 rolls at 200 °C.", "en", "")]
    public void Waits_are_not_lost(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Fold four times, 30 min apart.", "en", "3x30 Rest")]
    [InlineData("Dreimal falten, im Abstand von 30 Minuten.", "de", "2x30 Rest")]
    [InlineData("Bake for 2 x 20 min, turning in between.", "en", "2x20 Oven")]
    [InlineData("Bake 2x20 min.", "en", "2x20 Oven")]
    [InlineData("Smoke 3 x 10 min.", "en", "3x10 Hands")]
    [InlineData("Sear 3 min each side.", "en", "2x3 Cook")]
    [InlineData("Boil 3 times, 2 min each time.", "en", "3x2 Cook")]
    [InlineData("Fold four times, then rest 30 min.", "en", "30 Rest")]
    [InlineData("Cut 2 x 20 cm strips and rest 10 min.", "en", "10 Rest")]
    [InlineData("Sear the side 3 min.", "en", "3 Cook")]
    public void What_comes_more_than_once(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Mix the levain of flour and water. 12 h at 24 °C.", "en", "720 Rest")]
    [InlineData("Sous vide 24h @ 68C.", "en", "1440 Cook")]
    [InlineData("Oven 85 °C, core 58 °C, about 3 h.", "en", "180 Oven")]
    [InlineData("Enfriar al menos 4 horas. Hornear a 200 °C 5 min.", "es", "240 Chill 5 Oven")]
    [InlineData("Far lievitare almeno 3 ore.", "it", "180 Rest")]
    [InlineData("Mehl und Wasser 10 Min. kneten. Zugedeckt 1 Stunde gehen lassen.", "de", "10 Hands 60 Rest")]
    [InlineData("フライパンに油を熱し、中火で皮目から7〜8分焼く。", "ja", "7 Cook")]
    [InlineData("180℃のオーブンで25分焼く。", "ja", "25 Oven")]
    [InlineData("鶏肉に塩をふり、10分おく。", "ja", "10 Rest")]
    [InlineData("Bake in a cool oven, gas 1/2, 2 hours.", "en", "120 Oven")]
    [InlineData("Wait 45 min.", "en", "45 Rest")]
    [InlineData("Preheat the oven to 220 °C. Bake 15 min, reduce to 180 °C, 20 min.", "en", "15 Oven 20 Oven")]
    [InlineData("Bake at 200 °C 20 min. Reduce the sauce 10 min.", "en", "20 Oven 10 Cook")]
    [InlineData("Bake 25 min at 200 °C, turn and give it another 10 min.", "en", "25 Oven 10 Oven")]
    [InlineData("Churn 20 min, harden at -18 °C for 3 h.", "en", "20 Machine 180 Chill")]
    [InlineData("Mix on speed 2 for 4 min.", "en", "4 Machine")]
    [InlineData("Teig 8 Min. in der Küchenmaschine kneten.", "de", "8 Machine")]
    [InlineData("Microwave at 600 W for 2 min.", "en", "2 Cook")]
    [InlineData("Store the dough at 4 °C for 24 h before shaping.", "en", "1440 Chill")]
    [InlineData("Anderthalb Stunden schmoren.", "de", "90 Cook")]
    public void A_time_is_of_its_own_verb(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Fact]
    public void A_minute_or_two_is_one_to_two()
    {
        StepTime t = Assert.Single(CardReader.ReadStep("Rest for a minute or two.", "en").Times);

        Assert.Equal((1, 2), (t.MinutesMin, t.MinutesMax));
        Assert.Equal(1, Assert.Single(CardReader.ReadStep("Rest for a minute, or cut in two.", "en").Times).MinutesMax);
    }

    [Theory]
    [InlineData("Peel the potatoes, 90 min.", "90 Hands")]
    [InlineData("Mix 10 min.", "10 Hands")]
    [InlineData("Cool the cake 2 hours.", "120 Chill")]
    public void Hands_stay_hands_where_they_surely_are(string step, string want) => Assert.Equal(want, Times(step, "en"));

    [Theory]
    [InlineData("Simmer 20 min or heat in the oven at 150 °C 40 min.", "en", "20 Cook", "heat in the oven at 150 °C 40 min")]
    [InlineData("20 Min. kochen oder im Ofen 40 Min. garen.", "de", "20 Cook", "im Ofen 40 Min. garen")]
    [InlineData("Bake 20 min or until golden, then cool 10 min.", "en", "20 Oven 10 Chill", null)]
    [InlineData("Bake 20 or 25 min.", "en", "20 Oven", null)]
    [InlineData("Add the milk or cream and simmer 20 min, then rest 5 min.", "en", "20 Cook 5 Rest", null)]
    public void One_way_or_the_other_is_not_both(string step, string lang, string want, string? other)
    {
        Step s = CardReader.ReadStep(step, lang);

        Assert.Equal(want, Times(s));
        Assert.Equal(other, s.Alternative);
        Assert.True(other is null || s.Temperatures.IsEmpty);
    }

    [Theory]
    [InlineData("Mix the flour, yeast and salt.", "mix")]
    [InlineData("Mix the cream and milk.", "mix")]
    [InlineData("Stir in the zest.", "mix")]
    [InlineData("Mix all the dry ingredients.", "mix")]
    [InlineData("Add the roast peppers.", "add")]
    [InlineData("Salt the fish.", "cure")]
    [InlineData("Rinse, then salt the fish.", "wash_veg cure")]
    [InlineData("Cream the butter and sugar.", "cream_butter")]
    [InlineData("Zest the lemon and dry the peel.", "zest dehydrate")]
    [InlineData("Bring to a simmer.", "simmer")]
    [InlineData("Whisk the milk, cream and butter.", "mix")]
    [InlineData("Whisk the whites, cream the butter, and zest the lemon.", "whisk_whites cream_butter zest")]
    public void A_verb_is_work_and_a_name_is_not(string step, string want) => Assert.Equal(want, string.Join(" ", CardReader.ReadStep(step, "en").Operations));

    [Theory]
    [InlineData("- 2 kg lamb leg", "Roast 20 min per 500 g plus 20 min.", "100 min")]
    [InlineData("- 1 lamb leg", "Roast 20 min per 500 g plus 20 min.", "… min")]
    [InlineData("- 2 kg lamb leg", "Roast 40 minutes per kilo.", "80 min")]
    public void A_time_by_the_weight_is_asked(string line, string step, string want) =>
        Assert.Equal(want, Assert.Single(Read($"# Lamb\n\n{line}\n\n1. {step}\n").Doubts, d => d.Question.Contains("goes by the weight", StringComparison.Ordinal)).Candidates[0].Plain);

    [Theory]
    [InlineData("Roast 100 min, which is 20 min per 500 g plus 20 min.")]
    [InlineData("Roast 20 min per tray.")]
    public void A_time_beside_its_rate_is_not(string step) =>
        Assert.DoesNotContain(Read($"# Lamb\n\n- 2 kg lamb leg\n\n1. {step}\n").Doubts, d => d.Question.Contains("goes by the weight", StringComparison.Ordinal));

    [Fact]
    public void Each_figure_says_what_it_was_taken_from()
    {
        Step s = CardReader.ReadStep("Roast at 425 for 20 min, then rest 10 min. Keeps 2 days in the fridge.", "en");

        Assert.Equal(
            ["Roast operation: roast, the main one", "rest operation: rest_meat", "20 min time: 20 min, oven; of roast", "10 min time: 10 min, rest; of rest_meat", "425 heat: oven 218.3 °C, taken for °F", "fridge keeps: 2 days, no wait"],
            CardReader.Why(s, "en").Select(t => $"{t.Text} {t.Role}: {t.Meaning}"));
    }
}
