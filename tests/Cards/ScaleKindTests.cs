using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Heats without their scale, and heats of steam, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class ScaleKindTests
{
    private const string Grams = "500 g flour\n350 g water\n10 g salt\n\n";
    private const string Cups = "2 cups flour\n1 cup butter\n1/2 cup sugar\n\n";

    private static string Heats(Dish d) => string.Join(" ", d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Temperatures).Select(t => FormattableString.Invariant($"{t.Of} {t.Celsius}")));

    [Fact]
    public void The_stone_of_a_card_of_grams_is_in_Celsius_and_asked_once()
    {
        Dish d = Read("Pizza bianca\n\n" + Grams + "1. Bake on the stone at 300° for 8 min.\n2. Finish at 200° for 3 min in the oven.\n");

        Assert.Equal("Oven 300 Oven 200", Heats(d));
        Assert.Equal(["300 °F", "300 °C"], Assert.Single(d.Doubts).Candidates.Select(c => c.Text));
    }

    [Theory]
    [InlineData("Loaf", Grams, "Bake at 200° for 20 min, then 180° for 20 min.", "Oven 200 Oven 180")]
    [InlineData("Loaf", Grams, "Bake at 350° for 20 min.", "Oven 176.7")]
    [InlineData("Pizza", Grams, "Bake at 500°F for 8 min, then at 350° for 3 min.", "Oven 260 Oven 176.7")]
    [InlineData("Cookies", Cups, "Bake at 350° for 12 min.", "Oven 176.7")]
    public void Nothing_is_asked_where_one_scale_is_told_or_possible(string title, string list, string step, string want)
    {
        Dish d = Read($"{title}\n\n{list}1. {step}\n");

        Assert.Equal(want, Heats(d));
        Assert.Empty(d.Doubts);
    }

    [Fact]
    public void On_a_card_of_cups_a_figure_either_oven_has_is_asked() =>
        Assert.Equal(["250 °F", "250 °C"], Assert.Single(Read("Shortbread\n\n" + Cups + "1. Bake at 250° for 40 min.\n").Doubts).Candidates.Select(c => c.Text));

    [Fact]
    public void What_is_baked_after_steaming_is_not_baked_at_the_heat_of_the_steam()
    {
        const string List = "Custard\n\n500 g cream\n8 yolks\n\n";

        Assert.Equal("Oven 85", Heats(Read(List + "1. Steam at 85 °C for 18 min.\n2. Bake the crumble for 12 min.\n")));
        Assert.Equal("Oven 160 Oven 160", Heats(Read(List + "1. Bake at 160 °C with steam for 18 min.\n2. Bake the crumble for 12 min.\n")));
    }

    [Theory]
    [InlineData("1.8 % on the meat")]
    [InlineData("1.2 % on 850 g base")]
    public void A_share_that_names_no_food_stops_nobody(string line) => Assert.Equal("Cure", Read($"Cure\n\nSalt\n- 300 g salt\n- {line}\n\n1. Mix.\n").Title);
}
