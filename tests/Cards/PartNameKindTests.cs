using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>A part that another takes, whose heading says more than its name: read as bought it would be weighed, priced and declared twice. Readings as a cook gives them: common practice, no source.</summary>
public sealed class PartNameKindTests
{
    private static string? From(string heading, string line) => Read($"# Dish\n\n## {heading}\n- 100 g walnuts\n- 50 g oil\n\n## To finish\n- {line}\n").Components[^1].Ingredients[0].Foods[0].FromComponent;

    [Theory]
    [InlineData("For the walnut pesto", "50 g walnut pesto")]
    [InlineData("For the béchamel", "1.5 l béchamel")]
    [InlineData("Ragù (2.5 kg)", "500 g ragù")]
    [InlineData("Ragù (makes 2.5 kg)", "500 g ragù")]
    [InlineData("1. Béchamel", "200 g béchamel")]
    [InlineData("Béchamel – makes 1 l", "200 g béchamel")]
    [InlineData("Béchamel", "200 g béchamel")]
    public void A_part_is_called_by_its_bare_name(string heading, string line) => Assert.Equal(heading.Replace("1. ", "", StringComparison.Ordinal).Replace('–', '-'), From(heading, line)?.Replace('–', '-').Replace("1. ", "", StringComparison.Ordinal));

    [Theory]
    [InlineData("For the walnuts", "20 g walnuts")]
    [InlineData("For the walnut pesto", "50 g pesto")]
    [InlineData("Sauce (for the fish)", "200 g fish")]
    public void A_food_the_part_is_made_of_and_another_food_are_bought(string heading, string line) => Assert.Null(From(heading, line));
}
