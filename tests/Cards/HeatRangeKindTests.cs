using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Ranges of heat keep both their ends, however they are written. Readings as a cook gives them: common practice, no source.</summary>
public sealed class HeatRangeKindTests
{
    private static string Heats(string step, string lang) => string.Join(" | ", CardReader.ReadStep(step, lang).Temperatures.Select(t => FormattableString.Invariant($"{t.Celsius}{(t.CelsiusMax is { } most ? $"..{FormattableString.Invariant($"{most}")}" : "")}")));

    [Theory]
    [InlineData("en", "Freeze at -18 to -22 °C.", "-22..-18")]
    [InlineData("en", "Store at -18°C to -22°C.", "-22..-18")]
    [InlineData("en", "Keep at -2 to +2 °C.", "-2..2")]
    [InlineData("en", "Hold between 60 and 65 °C for 30 min.", "60..65")]
    [InlineData("fr", "Cuire entre 160 et 170 °C 20 min.", "160..170")]
    [InlineData("de", "Zwischen 80 und 85 °C garen.", "80..85")]
    [InlineData("it", "Cuocere tra 160 e 170 °C per 20 minuti.", "160..170")]
    [InlineData("en", "Bake at 180°C-190°C for 10 min.", "180..190")]
    [InlineData("en", "Bake at 350°F to 375°F for 10 min.", "176.7..190.6")]
    [InlineData("en", "Temper at 31/32 °C.", "31..32")]
    [InlineData("en", "Bake 180/190 °C, 20 min.", "180..190")]
    [InlineData("en", "Bake at 160-170 for 20 min.", "160..170")]
    [InlineData("en", "Cook sous vide 63-65, 45 min.", "63..65")]
    public void Both_ends_are_kept(string lang, string step, string want) => Assert.Equal(want, Heats(step, lang));

    [Theory]
    [InlineData("Raise the oven from 160 °C to 180 °C.", "160 | 180")]
    [InlineData("Heat from 40 °C to 60 °C.", "40 | 60")]
    [InlineData("Roast at 120 °C to 56 °C core.", "120 | 56")]
    [InlineData("Bake at 200 °C for 10 min, then 180 °C to finish.", "200 | 180")]
    [InlineData("GN 1/1 160 °C 20 min.", "160")]
    [InlineData("Speed 4/90 °C 5 min.", "90")]
    [InlineData("Bake 120-140 rolls.", "")]
    public void A_way_from_one_heat_to_another_is_no_range(string step, string want) => Assert.Equal(want, Heats(step, "en"));
}
