using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>The middle of a food and the water around it, told beside the heat they are cooked in: neither is an oven. Readings as a cook gives them: common practice, no source.</summary>
public sealed class MiddleHeatKindTests
{
    private static string Heats(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Temperatures.Select(t => FormattableString.Invariant($"{t.Of} {t.Celsius}")));

    [Theory]
    [InlineData("Bei 170 °C frittieren, Kern 75 °C.", "de", "Pan 170 Core 75")]
    [InlineData("Ofen 120 °C, Fühler 54 °C.", "de", "Oven 120 Core 54")]
    [InlineData("Im Kombidämpfer 80 °C, 100 % Dampf, bis Kern 62 °C.", "de", "Oven 80 Core 62")]
    [InlineData("Bis im Inneren 74 °C erreicht sind.", "de", "Core 74")]
    [InlineData("Hornear a 180 °C 35 minutos o hasta que la temperatura interna llegue a 74 °C.", "es", "Oven 180 Core 74")]
    [InlineData("Cocer al vacío a 65 °C durante 12 horas; temperatura en el corazón 64 °C.", "es", "Bath 65 Core 64")]
    [InlineData("Asar hasta que el corazón alcance 45 °C.", "es", "Core 45")]
    [InlineData("Empanar y freír a 180 °C 2 min; centro a 75 °C.", "es", "Pan 180 Core 75")]
    [InlineData("Infornare a 160 °C, temperatura interna 70 °C.", "it", "Oven 160 Core 70")]
    [InlineData("Cook in the oven at 120 °C until 58 °C on the probe, then rest 10 min.", "en", "Oven 120 Core 58")]
    [InlineData("Roast at 325 until 140 internal.", "en", "Oven 162.8 Core 60")]
    [InlineData("Bake at 170 for 40 min until 96 inside.", "en", "Oven 170 Core 96")]
    [InlineData("Den Kern entfernen und die Aprikosen bei 80 °C trocknen.", "de", "Dryer 80")]
    [InlineData("Bandeja en el centro, hornear a 90 °C 2 horas.", "es", "Oven 90")]
    [InlineData("Teglia al centro del forno, cuocere a 95 °C per 2 ore.", "it", "Oven 95")]
    [InlineData("Den Sirup im Inneren des Topfes bis 85 °C kochen.", "de", "Food 85")]
    public void A_middle_told_beside_its_figure_is_no_oven(string step, string lang, string want) => Assert.Equal(want, Heats(step, lang));

    [Theory]
    [InlineData("Reheat in a 140 °C oven to 75 °C, 12–15 min.", "Oven 140 Food 75")]
    [InlineData("Roast the duck in a 200 °C oven to 54 °C.", "Oven 200 Food 54")]
    [InlineData("Set the oven to 140 °C and roast to 60 °C.", "Oven 140 Food 60")]
    [InlineData("Cook in fat 5 h at 110 °C oven (fat 95 °C).", "Oven 110 Pan 95")]
    [InlineData("Lower the oven from 200 °C to 90 °C.", "Oven 200 Oven 90")]
    [InlineData("Bake at 200 °C, then reduce to 90 °C for 1 hour.", "Oven 200 Oven 90")]
    [InlineData("Core 58 °C, then rest 10 min at 55 °C.", "Core 58 Food 55")]
    [InlineData("Cook the chicken to 75 °C core then hold above 63 °C.", "Core 75 Food 63")]
    [InlineData("Roast at 120 °C to 54 °C core, rest, then sear at 250 °C.", "Oven 120 Core 54 Oven 250")]
    [InlineData("Cool to 5 °C inside 90 minutes.", "Food 5")]
    [InlineData("Warm to 5 °C inside the fridge.", "Food 5")]
    [InlineData("Roast until 54 °C inside, then rest.", "Core 54")]
    [InlineData("Cook the syrup to 96 inside the pan.", "")]
    public void What_the_food_is_brought_to_is_no_second_oven(string step, string want) => Assert.Equal(want, Heats(step, "en"));

    [Theory]
    [InlineData("Cuire au bain à 64 °C pendant 2 h.", "fr", "Bath 64", TimeKind.Cook)]
    [InlineData("Cuire au thermoplongeur à 62 °C 1 h.", "fr", "Bath 62", TimeKind.Cook)]
    [InlineData("Cuire en bain à 64 °C, 1 h 10, à cœur 63 °C.", "fr", "Bath 64 Core 63", TimeKind.Cook)]
    [InlineData("Im Wasserbad bei 62 °C 12 Std. garen", "de", "Bath 62", TimeKind.Cook)]
    [InlineData("63℃の湯せんで1時間30分加熱する", "ja", "Bath 63", TimeKind.Cook)]
    [InlineData("Pastorizzare a bagnomaria a 82 °C per 1 minuto", "it", "Bath 82", TimeKind.Cook)]
    [InlineData("Vacuum pack and pasteurise in a 65 °C bath for 2 h 15.", "en", "Bath 65", TimeKind.Cook)]
    [InlineData("Cook at 63 °C in the immersion bath, 2 hours.", "en", "Bath 63", TimeKind.Cook)]
    [InlineData("Cook the eggs 13 min at 75 °C in the circulator", "en", "Bath 75", TimeKind.Cook)]
    [InlineData("Cuire au four à 90 °C 1 h.", "fr", "Oven 90", TimeKind.Oven)]
    public void Water_around_a_food_is_a_bath_and_no_oven(string step, string lang, string want, TimeKind kind)
    {
        Assert.Equal(want, Heats(step, lang));
        Assert.Equal(kind, CardReader.ReadStep(step, lang).Times[0].Kind);
    }

    [Theory]
    [InlineData("Set over a bain-marie and whisk to 65 °C, about 8 min.", "en", "Food 65")]
    [InlineData("Über dem Wasserbad auf 65 °C aufschlagen.", "de", "Food 65")]
    [InlineData("Das Wasserbad auf 62 °C erhitzen.", "de", "Bath 62")]
    [InlineData("チョコレートを湯せんで50℃まで温める。", "ja", "Food 50")]
    [InlineData("Cook the custard to 82 °C, then cool in an ice bath.", "en", "Food 82")]
    [InlineData("Set the water bath to 62 °C.", "en", "Bath 62")]
    public void What_is_stirred_over_a_bath_is_the_food(string step, string lang, string want) => Assert.Equal(want, Heats(step, lang));

    [Theory]
    [InlineData("Steam 6:30 min.", 6.5)]
    [InlineData("Steam 1:30 h.", 90)]
    public void A_colon_before_minutes_parts_seconds(string step, double minutes) => Assert.Equal(minutes, CardReader.ReadStep(step, "en").Times[0].MinutesMin);
}
