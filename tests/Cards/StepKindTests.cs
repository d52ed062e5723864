using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Figures of a step without their sign or in a short form, by kind: the middle of a food, ranges of heat, minutes told one after the other, minutes written like a clock. Each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class StepKindTests
{
    private static IEnumerable<double> Cores(string step, string lang) => CardReader.ReadStep(step, lang).Temperatures.Where(t => t.Of == TemperatureOf.Core).Select(t => t.Celsius);

    private static string Times(string step, string lang) => string.Join(' ', CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}")));

    [Theory]
    [InlineData("Rest under foil; the core should read 55.", "en", 55)]
    [InlineData("The probe must show 63 before it leaves the oven.", "en", 63)]
    [InlineData("Rest to 56 in the middle.", "en", 56)]
    [InlineData("Probe in the middle, pull at 52, rest 10 min.", "en", 52)]
    [InlineData("Jusqu'à 57 à cœur, puis repos 10 min.", "fr", 57)]
    [InlineData("La sonde doit indiquer 68.", "fr", 68)]
    [InlineData("Garen, bis der Kern 58 zeigt; Fühler auf 58.", "de", 58)]
    [InlineData("Auf 60 im Kern garen.", "de", 60)]
    [InlineData("El centro debe estar a 70 en el centro.", "es", 70)]
    [InlineData("Cuocere fino a 66 al cuore.", "it", 66)]
    [InlineData("芯温58になったら取り出す。", "ja", 58)]
    [InlineData("中心温度は75を確認する。", "ja", 75)]
    public void The_middle_of_a_food_needs_no_degree_sign(string step, string lang, double celsius) => Assert.Equal([celsius], Cores(step, lang));

    [Theory]
    [InlineData("Put 40 in the centre and 60 around the edge.", "en")]
    [InlineData("Core 54 apples and slice them.", "en")]
    [InlineData("Pull at 52 minutes, the middle stays soft.", "en")]
    [InlineData("Remove at 60, they colour fast.", "en")]
    [InlineData("Poser 40 cœurs d'artichaut, 12 par assiette.", "fr")]
    [InlineData("Den Kern der Mango entfernen, 60 Würfel schneiden.", "de")]
    [InlineData("中心に40個置く。", "ja")]
    public void What_stands_in_the_middle_is_no_heat(string step, string lang) => Assert.Empty(Cores(step, lang));

    [Theory]
    [InlineData("Bake at 180°C in the middle of the oven for 20 min.", "en", 180)]
    [InlineData("Bake in the centre of the oven at 160 for 20 min.", "en", 160)]
    [InlineData("Dry on the middle shelf at 95°C for 2 hours.", "en", 95)]
    [InlineData("Set the tray in the middle, oven at 90°C, 3 hours.", "en", 90)]
    [InlineData("Cuire au centre du four à 180 °C, 20 min.", "fr", 180)]
    [InlineData("Cuocere al centro del forno a 180 °C per 20 min.", "it", 180)]
    public void The_middle_of_the_oven_is_a_place(string step, string lang, double celsius)
    {
        StepTemperature t = Assert.Single(CardReader.ReadStep(step, lang).Temperatures);

        Assert.Equal((TemperatureOf.Oven, celsius), (t.Of, t.Celsius));
    }

    [Theory]
    [InlineData("Roast in the middle of the oven until 54°C at the core.")]
    [InlineData("Roast until 54°C in the middle of the meat.")]
    public void Beside_a_place_the_middle_of_the_food_stays_one(string step) => Assert.Equal([54], Cores(step, "en"));

    [Fact]
    public void A_warm_plate_has_no_core() => Assert.Empty(Cores("Warm the centre of the plate to 60°C.", "en"));

    [Fact]
    public void Before_the_middle_told_in_Japanese_another_heat_is_of_something_else() =>
        Assert.Equal([58], Cores("芯温58°Cになるまで85°Cで40分加熱する。", "ja"));

    [Theory]
    [InlineData("Smoke until the core reads 92-95.", 92.0, 95.0)]
    [InlineData("Bake at 160-170°C for 40 min.", 160.0, 170.0)]
    [InlineData("Cook until 145–150°F in the middle.", 62.8, 65.6)]
    [InlineData("Bake at 160°C for 40 min.", 160.0, null)]
    [InlineData("Freeze at -18 °C.", -18.0, null)]
    public void A_range_of_heat_keeps_both_ends(string step, double low, double? high)
    {
        StepTemperature t = CardReader.ReadStep(step, "en").Temperatures[^1];

        Assert.Equal((low, high), (t.Celsius, t.CelsiusMax));
    }

    [Theory]
    [InlineData("Teig 5 + 3 Min. kneten.", "de", "5-5 3-3")]
    [InlineData("Knead 4+4+2 min.", "en", "4-4 4-4 2-2")]
    [InlineData("Bake 180 + 20 min.", "en", "20-20")]
    [InlineData("Take 6 + 4 eggs and whisk 3 min.", "en", "3-3")]
    [InlineData("Steam 20+ min.", "en", "20-")]
    public void Minutes_told_one_after_the_other_share_their_word(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Backen 00:35 bei 180 °C.", "de", "35-35")]
    [InlineData("Bake at 180°C, 0:45.", "en", "45-45")]
    [InlineData("Hold until 00:30 at 63 °C.", "en", "")]
    [InlineData("Blitz 00:25 with the oil.", "en", "")]
    [InlineData("Bake 1:30 at 180 °C.", "en", "")]
    [InlineData("Mix the flour and water 1:05.", "en", "")]
    [InlineData("Bake at 180C 25 m. Cool.", "en", "25-25")]
    [InlineData("Hornear a 180 °C, 40 m, y enfriar.", "es", "40-40")]
    [InlineData("Tie with 2 m. string, roast at 180 °C.", "en", "")]
    [InlineData("Cut 3 m of string.", "en", "")]
    public void Minutes_like_a_clock_or_with_one_letter(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("chill the custard min 3 hrs", "180-")]
    [InlineData("Boil 5 min 30 sec.", "5.5-5.5")]
    [InlineData("chill the custard 3 hrs", "180-180")]
    public void Min_before_a_time_is_the_least(string step, string want) => Assert.Equal(want, Times(step, "en"));
}
