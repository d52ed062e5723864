using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Two ways of one work, what times come to, and work done in several lots: none of them is added up wrongly. Readings as a cook gives them: common practice, no source.</summary>
public sealed class HeatWayKindTests
{
    private static string Times(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin ?? t.MinutesMax}{(t.Repeats > 1 ? "x" + t.Repeats : "")}")));

    [Theory]
    [InlineData("Cook the pulses 45 min or 15 min in the pressure cooker.", "en", "45", "15 min in the pressure cooker")]
    [InlineData("Cuire 45 min ou 15 min à l'autocuiseur.", "fr", "45", "15 min à l'autocuiseur")]
    [InlineData("Cook either 45 min at 180 °C or 2 h at 120 °C.", "en", "45", "2 h at 120 °C")]
    [InlineData("Heat to 85 °C and hold 2 min, or 72 °C for 10 min.", "en", "2", "72 °C for 10 min")]
    [InlineData("30 Min. bei 65 °C oder 10 Min. bei 72 °C.", "de", "30", "10 Min. bei 72 °C")]
    [InlineData("Bake 20 min (fan oven: 17 min).", "en", "20", "fan oven: 17 min")]
    [InlineData("Bake 35 min (mini tins 18 min).", "en", "35", "mini tins 18 min")]
    [InlineData("Cook 2 h (30 min if pre-soaked).", "en", "120", "30 min if pre-soaked")]
    [InlineData("Bake 30 min (turn after 15 min if browning).", "en", "30", null)]
    [InlineData("Bake 20 min (180 °C fan).", "en", "20", null)]
    [InlineData("Prove 1 h, bake at 200 °C or 180 °C for 30 min.", "en", "60 30", null)]
    [InlineData("Bake 20 min at 200 °C or 180 °C fan, then 10 min at 150 °C.", "en", "20 10", null)]
    [InlineData("Simmer 20 min or 25 min.", "en", "20", null)]
    public void The_other_way_is_kept_and_not_waited_for(string step, string lang, string times, string? other)
    {
        Assert.Equal(other, CardReader.ReadStep(step, lang).Alternative);
        Assert.Equal(times, Times(step, lang));
    }

    [Theory]
    [InlineData("Bake 15 min at 220 °C and 30 min at 180 °C, 45 min altogether.", "15 30")]
    [InlineData("Roast 1 h, of which the last 10 min uncovered.", "60")]
    [InlineData("Cook 10 min in all the stock.", "10")]
    [InlineData("Rest 10 min, 3 h in total.", "10 180")]
    [InlineData("Fry in three batches, 4 min each.", "4x3")]
    [InlineData("Bake in 2 batches of 12 min.", "12x2")]
    [InlineData("Fry twice, 4 min each.", "4x2")]
    [InlineData("Bake the three loaves 40 min each.", "40")]
    [InlineData("Cook in lots of water 10 min.", "10")]
    public void What_times_come_to_is_no_time_and_lots_are_counted(string step, string times) => Assert.Equal(times, Times(step, "en"));

    [Theory]
    [InlineData("Core 75 °C for 30 s", "en", TimeKind.Cook)]
    [InlineData("À cœur 70 °C pendant 2 min", "fr", TimeKind.Cook)]
    [InlineData("Slow-roast the pork at 65 °C for 12 h, core 62 °C.", "en", TimeKind.Oven)]
    [InlineData("Confitar el ajo en aceite a 65 °C 2 h", "es", TimeKind.Cook)]
    [InlineData("Stir 5 min at 24 °C.", "en", TimeKind.Hands)]
    public void A_heat_that_is_held_is_no_handwork(string step, string lang, TimeKind kind) => Assert.Equal(kind, CardReader.ReadStep(step, lang).Times[0].Kind);

    [Theory]
    [InlineData("Take the terrine out at 66 °C; it will rise to 69 °C.", "prove_bulk", false)]
    [InlineData("Leave the dough to rise 1 h.", "prove_bulk", true)]
    [InlineData("Oven set at 160 °C, bake 50 min.", "set_gel", false)]
    [InlineData("Set the jelly in the fridge for 4 hours.", "set_gel", true)]
    public void A_heat_rises_and_an_oven_is_set(string step, string work, bool told) => Assert.Equal(told, CardReader.ReadStep(step, "en").Operations.Contains(work));
}
