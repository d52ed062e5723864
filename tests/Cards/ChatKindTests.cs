using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Recipes told in the messages of a chat and in letters: lists in sentences, who sits at the table, talk that is no food. Readings as a cook gives them: common practice, no source.</summary>
public sealed class ChatKindTests
{
    private const string Beans = "[21:02] Ida: how do you do the peas\n[21:03] Max: soak 400g marrowfat peas overnight. next day drain and put them in a pot with 1 head of garlic and 80 ml olive oil, water to cover\n[21:04] Max: hold it at 92c for an hour and a half\n[21:05] Max: then 10g salt and let them sit in the liquid 20 min off the heat\n[21:06] Ida: how many does that do\n[21:07] Max: 6 as a side. keeps 4 days in the fridge\n[21:08] Ida: ta. train in 5 min, see you at 7";

    [Fact]
    public void Sentences_of_a_chat_hold_foods_and_work_and_talk_holds_none()
    {
        Dish d = Read(Beans);

        Assert.Equal([": 400 g marrowfat peas", ": 1 head garlic", ": 80 ml olive oil", ":   water", ": 10 g salt"], Lines(d));
        Assert.Equal((6, "portions"), (Assert.Single(d.Yields).Amount, d.Yields[0].Unit));
        Assert.Contains(d.Components.SelectMany(c => c.Steps), s => s.Temperatures.Any(t => t.Celsius == 92));
        Assert.Contains(d.Components.SelectMany(c => c.Steps), s => s.Times.Any(t => t.MinutesMin == 20));
        Assert.DoesNotContain(d.Components.SelectMany(c => c.Steps), s => s.Times.Any(t => t.MinutesMin == 5));
    }

    [Fact]
    public void A_list_in_one_message_leaves_the_foods_of_the_others()
    {
        Dish d = Read("[18:02] Lea: come fai il tonnato?\n[18:05] Ugo: 1,5 kg di girello, 1 litro di vino bianco e 2 carote, e lo lascio marinare tutta la notte\n[18:06] Ugo: poi lo cuocio a 85 gradi per un'ora, al cuore 62\n[18:07] Ugo: per la salsa 250 g di tonno, 3 tuorli e 150 ml di olio\n[18:08] Lea: per quanti?\n[18:09] Ugo: ci mangiamo in 8. Sta 3 giorni in frigo");

        Assert.Equal(6, Lines(d).Length);
        Assert.Contains("salsa: 250 g tonno", Lines(d));
        Assert.Equal(8, Assert.Single(d.Yields).Amount);
        Assert.Contains(d.Components.SelectMany(c => c.Steps), s => s.Times.Any(t => t.MinutesMin == 60));
    }

    [Theory]
    [InlineData("On est 8 à table en général.", "fr", 8)]
    [InlineData("Ci mangiamo in 10.", "it", 10)]
    [InlineData("Wir sitzen zu 6 am Tisch.", "de", 6)]
    [InlineData("Basta per 6 persone, e dura 5 giorni in frigo.", "it", 6)]
    public void Who_sits_at_the_table_eats_it(string sentence, string lang, double guests) => Assert.Equal(guests, Reading(sentence, lang));

    [Theory]
    [InlineData("On est 8 dans la brigade.", "fr")]
    [InlineData("See you Thursday, table 3 is booked for 20 people.", "en")]
    [InlineData("8 as a garnish", "en")]
    public void Others_are_fed_by_nothing(string sentence, string lang) => Assert.Null(Reading(sentence, lang));

    [Theory]
    [InlineData("Cuire 35 minutes, pas plus.", "fr", null, 35.0)]
    [InlineData("Bake 20 minutes, no longer.", "en", null, 20.0)]
    [InlineData("20 Minuten, nicht länger, ziehen lassen.", "de", null, 20.0)]
    [InlineData("Cuire 35 minutes, pas plus haut.", "fr", 35.0, 35.0)]
    public void Not_more_behind_a_time_is_its_end(string step, string lang, double? from, double? to)
    {
        StepTime time = Assert.Single(CardReader.ReadStep(step, lang).Times);

        Assert.Equal((from, to), (time.MinutesMin, time.MinutesMax));
    }

    private static double? Reading(string sentence, string lang) => ToldYields.In(sentence, default, lang)?.Amount ?? YieldWords.In(sentence, default, lang)?.Amount;
}
