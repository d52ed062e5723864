using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>What a figure of heat in a step is of, in which scale, and whose fan it is. Readings as a cook gives them: common practice, no source.</summary>
public sealed class StepHeatTests
{
    private static string Heats(Step s) => string.Join(" ", s.Temperatures.Select(t => FormattableString.Invariant($"{t.Of} {t.Celsius:0.#}{(t.Fan == true ? " fan" : "")}")));

    private static Dish Chicken(string method) => Read($"# Chicken\n\n- 1 chicken\n- 1 cup stock\n\n{method}\n");

    private static string All(Dish d) => string.Join(" | ", d.Components.SelectMany(c => c.Steps).Select(Heats));

    [Theory]
    [InlineData("1. Roast the chicken in a 325 degree oven to 165 degrees inside.", "Oven 162.8 Core 73.9")]
    [InlineData("1. Roast the chicken in a 325 degree oven to 145 degrees in the middle.", "Oven 162.8 Core 62.8")]
    [InlineData("1. Roast at 425 for 20 min.\n2. Reduce the oven to 250 and roast to a core of 150.", "Oven 218.3 | Oven 121.1 Core 65.6")]
    [InlineData("1. Roast at 350 °F until the core reads 165.", "Oven 176.7 Core 73.9")]
    [InlineData("1. Roast to 165 degrees inside.", "Core 73.9")]
    [InlineData("1. Preheat oven to 400 degrees.\n2. Internal temp should be 195.", "Oven 204.4 | Core 90.6")]
    public void Figures_without_a_scale_are_of_the_scale_of_the_oven(string method, string want)
    {
        Dish d = Chicken(method);

        Assert.Equal(want, All(d));
        Assert.All(d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Temperatures), t => Assert.True(t.Of != TemperatureOf.Core || t.Celsius <= 100));
    }

    [Theory]
    [InlineData("1. Roast the chicken at 180 °C until the core reads 74.", "Oven 180 Core 74")]
    [InlineData("1. Roast at 350 °F (180 °C) until the core reads 74.", "Oven 176.7 Core 74")]
    [InlineData("1. Roast at 350 °F for 1 h. Chill to 4.", "Oven 176.7 Food 4")]
    public void Celsius_stays_celsius_and_is_not_asked(string method, string want)
    {
        Dish d = Chicken(method);

        Assert.StartsWith(want[..6], All(d), StringComparison.Ordinal);
        Assert.Contains(want.Split(' ')[^1], All(d), StringComparison.Ordinal);
        Assert.DoesNotContain(d.Doubts, q => q.Question.Contains("which scale", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("1. Roast at 425 for 20 min, until the core reads 63.", "63")]
    [InlineData("1. Fry the chicken in 200 °C oil to a core of 165.", "165")]
    public void A_figure_that_fits_neither_scale_of_its_card_is_asked(string method, string figure) =>
        Assert.Contains(Chicken(method).Doubts, q => q.Question.Contains($"{figure} of which scale", StringComparison.Ordinal) && q.Candidates.Length == 2);

    [Fact]
    public void A_middle_over_a_hundred_degrees_in_celsius_is_remarked() =>
        Assert.Contains(Chicken("1. Roast at 180 °C until the core reads 165 °C.").Remarks, r => r.Kind == "implausible" && r.What.Contains("165", StringComparison.Ordinal) && r.What.Contains("73.9", StringComparison.Ordinal));

    [Fact]
    public void A_middle_under_a_hundred_is_not() =>
        Assert.DoesNotContain(Chicken("1. Roast at 180 °C until the core reads 96 °C.").Remarks, r => r.Kind == "implausible");

    [Fact]
    public void An_oven_no_kitchen_has_is_read_as_written_and_remarked()
    {
        Dish d = Read("# Bread\n\n- 500 g flour\n- 325 g water\n\n1. Mix flour and water.\n2. Bake at 425 °C for 35 min.\n");

        Assert.Equal(" | Oven 425", All(d));
        Assert.Contains(d.Remarks, r => r.Kind == "implausible" && r.What.Contains("425", StringComparison.Ordinal));
        Assert.DoesNotContain(Read("# Bread\n\n- 500 g flour\n- 325 g water\n\n1. Bake at 250 °C for 35 min.\n").Remarks, r => r.Kind == "implausible");
    }

    [Theory]
    [InlineData("Bei 180 °C Umluft 25 Minuten backen.", "de", "Oven 180 fan")]
    [InlineData("Hornear a 200º C con ventilador 20 min.", "es", "Oven 200 fan")]
    [InlineData("Infornare a 180 °C ventilato 25 minuti.", "it", "Oven 180 fan")]
    [InlineData("Enfourner à 180 °C chaleur tournante 35 min.", "fr", "Oven 180 fan")]
    [InlineData("Bei 200 °C (Umluft 180 °C) 25 Minuten backen.", "de", "Oven 200 Oven 180 fan")]
    [InlineData("Bake at 200 °C, fan 180 °C, 20 min.", "en", "Oven 200 Oven 180 fan")]
    public void A_fan_is_of_the_figure_it_stands_with(string step, string lang, string want) => Assert.Equal(want, Heats(CardReader.ReadStep(step, lang)));

    [Fact]
    public void An_oven_set_before_keeps_its_fan()
    {
        Assert.EndsWith("Oven 180 fan", All(Read("# Bread\n\n- 500 g flour\n\n1. Oven to 180 °C fan.\n2. Mix the flour.\n3. Bake 12 min.\n")), StringComparison.Ordinal);
        Assert.EndsWith("Oven 180", All(Read("# Bread\n\n- 500 g flour\n\n1. Oven to 180 °C.\n2. Mix the flour.\n3. Bake 12 min.\n")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Bake at 190 °C (375 °F) for 20 min until it is 93-96 °C (200-205 °F) inside.", "Oven 190 Core 93")]
    [InlineData("Bake at 190 °C (375 °F) for 20 min.", "Oven 190")]
    [InlineData("Bake in a bain-marie at 110 °C for 35 min.", "Oven 110")]
    [InlineData("Hold in a bain-marie at 65 °C for 35 min.", "Bath 65")]
    [InlineData("Set the water bath to 62.", "Bath 62")]
    [InlineData("Set 62 moulds in the water bath.", "")]
    public void A_figure_is_of_what_stands_behind_it_or_around_it(string step, string want) => Assert.Equal(want, Heats(CardReader.ReadStep(step, "en")));

    [Theory]
    [InlineData("Bake at 200°C/gas 8 for 20 min.", true)]
    [InlineData("Bake at 220/gas 4 for 20 min.", true)]
    [InlineData("Bake at 200°C/180°C fan/gas 6 for 20 min.", false)]
    [InlineData("Bake at 180°C/gas 4 for 20 min.", false)]
    [InlineData("Bake at 170°C/gas 3 for 20 min.", false)]
    [InlineData("Bake at 240°C for 10 min, then at gas 4 for 20 min.", false)]
    public void Degrees_and_a_mark_that_clash_are_remarked(string step, bool clash) =>
        Assert.Equal(clash, Read($"# Bread\n\n- 500 g flour\n- 300 g water\n\n1. {step}\n").Remarks.Any(r => r.Kind == "temperatures clash"));

    [Theory]
    [InlineData("Bake at 220 °C for 15 min, reduce to 180 °C, bake 20 min.", "220 180")]
    [InlineData("Bake 15 min at 220 °C, then 20 min at 180 °C.", "220 180")]
    [InlineData("Bake at 200 °C, fan 180 °C, 25 min, then bake 5 min.", "200 200")]
    [InlineData("Bake at 200 °C/180 °C fan for 25 min.", "200")]
    [InlineData("Bake 15 min, then bake 20 min at 180 °C.", "180 180")]
    public void Each_time_has_the_oven_that_holds_then(string step, string want)
    {
        Step s = CardReader.ReadStep(step, "en");

        Assert.Equal(want, string.Join(" ", s.Times.Select(t => StepHeats.At(s, t, TemperatureOf.Oven)?.Celsius)));
    }

    [Fact]
    public void What_is_turned_down_began_at_the_oven_set_before()
    {
        Step s = Read("# Bread\n\n- 500 g flour\n\n1. Oven to 220 °C.\n2. Bake 20 min, then turn down to 160 °C and bake 30 min more.\n3. Bake 10 min.\n").Components[0].Steps[1];

        Assert.Equal("220 160", string.Join(" ", s.Times.Select(t => StepHeats.At(s, t, TemperatureOf.Oven)?.Celsius)));
        Assert.Equal("160", string.Join(" ", Read("# Bread\n\n- 500 g flour\n\n1. Oven to 220 °C.\n2. Bake 20 min at 160 °C.\n").Components[0].Steps[1].Temperatures.Select(t => t.Celsius)));
    }

    [Fact]
    public void A_page_that_broke_degrees_and_minutes_off_is_one_step()
    {
        Assert.Equal([": Mix the flour and water, bake at 200 °C for 12-14 min."], Steps(Read("# Bread\n\n- 500 g flour\n- 300 g water\n\nMethod\nMix the flour and water, bake at 200\n°C for 12–14\nmin.\n")));
        Assert.Equal(2, Steps(Read("# Bread\n\n- 500 g flour\n- 300 g water\n\nMethod\nMix the flour and water 10 min.\nBake at 200 °C for 12 min.\n")).Length);
    }
}
