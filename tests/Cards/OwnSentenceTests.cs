using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Several sentences in one step: the place, the kind and the heat of one are not those of the next; and what keeps is no wait. Readings as a cook gives them: common practice, no source.</summary>
public sealed class OwnSentenceTests
{
    private static string Times(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{(t.Repeats > 1 ? $"{t.Repeats}x" : "")}{t.MinutesMin ?? t.MinutesMax} {t.Kind}")));

    private static string Heats(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Temperatures.Select(t => FormattableString.Invariant($"{t.Of} {t.Celsius}")));

    private static string Kept(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Storage.Select(t => FormattableString.Invariant($"{(t.Where.Length > 0 ? t.Where : "?")} {t.Days}")));

    [Theory]
    [InlineData("Cure the belly 10 h in the fridge. Roast at 140C for 5 h. Rest 20 min in the cold room. Crisp at 230C for 12 min.", "en", "Oven 140 Oven 230")]
    [InlineData("Mix and rest 2 h in the fridge. Pipe and bake 9 min at 170 °C fan.", "en", "Oven 170")]
    [InlineData("Keep the paste in the fridge, then bake at 165 °C for 20 min.", "en", "Oven 165")]
    [InlineData("Score the skin. SV 62 °C 50 min.", "en", "Bath 62")]
    [InlineData("Cook until the core is 54 °C. Finish at 240 °C for 4 min.", "en", "Core 54 Oven 240")]
    [InlineData("Keep in the fridge at 4 °C.", "en", "Fridge 4")]
    [InlineData("Freeze in the freezer at -20 °C.", "en", "Freezer -20")]
    [InlineData("Check the core. 63 °C.", "en", "Core 63")]
    public void A_heat_is_of_its_own_sentence(string step, string lang, string want) => Assert.Equal(want, Heats(step, lang));

    [Theory]
    [InlineData("Cure the belly 10 h in the fridge. Roast at 140C for 5 h. Rest 20 min in the cold room. Crisp at 230C for 12 min.", "en", "600 Rest 300 Oven 20 Rest 12 Oven")]
    [InlineData("Boil and chill. Brine the birds 10 hrs.", "en", "600 Rest")]
    [InlineData("Simmer the stock 3 h. Leave overnight in the fridge.", "en", "180 Cook  Chill")]
    [InlineData("Simmer the stock 3 h. Steep overnight.", "en", "180 Cook  Rest")]
    [InlineData("Blitz the lot, hang overnight in a cloth.", "en", " Rest")]
    [InlineData("Cook overnight at 75 °C.", "en", " Cook")]
    [InlineData("Impastare 10 minuti. Altri 30 minuti di lievitazione.", "it", "10 Machine 30 Rest")]
    [InlineData("Simmer in vinegar, sugar and salt for 25 min.", "en", "25 Cook")]
    [InlineData("Simmer the sauce. Another 20 min, lid off.", "en", "20 Cook")]
    [InlineData("Leave out of the fridge for 90 minutes.", "en", "90 Rest")]
    [InlineData("Leave in the fridge for 90 minutes.", "en", "90 Chill")]
    [InlineData("Leave the cultured cream at 40 °C for 8 h, then chill.", "en", "480 Rest")]
    [InlineData("Chill for 8 h.", "en", "480 Chill")]
    [InlineData("Score, render the fat 6 min, SV 60 °C 40 min.", "en", "6 Hands 40 Cook")]
    public void A_time_is_of_its_own_sentence(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Good for 4 days in the walk-in.", "en", "fridge 4")]
    [InlineData("Lasts 2 weeks in the walk-in.", "en", "fridge 14")]
    [InlineData("Boil and blend. Storage: up to 2 days at 3C, covered.", "en", "fridge 2")]
    [InlineData("Strain. Use within 3 days.", "en", "? 3")]
    [InlineData("Serve at once or keep for up to 2 days.", "en", "? 2")]
    [InlineData("Freeze 1 h, then slice. Keeps 3 days.", "en", "? 3")]
    [InlineData("Bake in a tin. Use within 2 days.", "en", "? 2")]
    [InlineData("Keep at room temperature for up to 2 days.", "en", "room 2")]
    [InlineData("Keeps 4 days in the fridge or 2 months frozen.", "en", "fridge 4 freezer 60")]
    [InlineData("Keeps airtight 3 days, or freeze for up to 1 month.", "en", "airtight 3 freezer 30")]
    [InlineData("Congelar hasta 3 meses.", "es", "freezer 90")]
    [InlineData("Conservation : 4 jours.", "fr", "? 4")]
    [InlineData("Freeze for 2 days.", "en", "")]
    [InlineData("Freeze up to 2 days before you fry them.", "en", "")]
    [InlineData("Good for a quick lunch: fry 3 min.", "en", "")]
    public void What_keeps_is_no_wait_and_its_place_is_not_guessed(string step, string lang, string want) => Assert.Equal(want, Kept(step, lang));

    [Theory]
    [InlineData("Innerhalb von 2 Std. verbrauchen.", "de", "120 Limit")]
    [InlineData("Poach at 62°C for 1 hr 20 (core 60°C).", "en", "80 Cook")]
    [InlineData("Braise 3 hrs 30 or until soft.", "en", "210 Cook")]
    [InlineData("Braise 1 hr 20 g of butter at the end.", "en", "60 Cook")]
    public void An_hour_does_not_lose_its_minutes(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("300g ghee (warm, 50C)", "50C", null)]
    [InlineData("300g cold butter (cubed, 5C)", "5C", null)]
    [InlineData("300 ml milk (38C)", "38C", null)]
    [InlineData("250g flour (2C)", null, "2 cup")]
    [InlineData("250g onions (chopped, 2C)", null, "2 cup")]
    public void Degrees_in_brackets_are_no_cups(string line, string? state, string? second)
    {
        FoodAmount food = CardReader.ReadLine(line, "en").Foods[0];

        Assert.Equal((state, second), (food.State, food.SecondMeasure));
    }
}
