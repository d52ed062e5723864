using Coulisse.Cards.Reading;
using Coulisse.Tests;

namespace Coulisse.Cards.Tests;

/// <summary>A long card is read on several cores; what it says may not hang on that.</summary>
public sealed class LongCardTests
{
    private const int Parts = 1_500;

    [Fact]
    public void Each_line_and_step_of_a_long_card_is_what_it_is_alone()
    {
        Dish dish = Read(string.Concat(Enumerable.Range(1, Parts).Select(Part)));

        Assert.Equal(Parts, dish.Components.Length);
        foreach ((Component c, int i) in dish.Components.Select((c, i) => (c, i + 1)))
        {
            Assert.Equal($"Part {i}", c.Name);
            Assert.Equal(Foods($"- {i} g flour, sifted"), c.Ingredients[0].Foods.Select(Plain));
            Assert.Equal(Foods("- 2 glasses white wine or verjus"), c.Ingredients[1].Foods.Select(Plain));
            Step alone = CardReader.ReadStep($"1. Bake {i} min at 180 °C.", "en");
            Assert.Equal(alone.Times, c.Steps[0].Times);
            Assert.Equal(alone.Anchor.Fingerprint, c.Steps[0].Anchor.Fingerprint);
            Assert.Equal(("part " + i, 2), (c.Steps[1].Anchor.Component, c.Steps[1].Anchor.Order));
        }
    }

    [Fact]
    public void Questions_stand_in_the_order_of_the_lines_and_the_heat_of_a_step_goes_on_to_the_next()
    {
        Dish dish = Read(string.Concat(Enumerable.Range(1, Parts).Select(Part)));

        int[] asked = [.. dish.Doubts.Where(d => d.Question.Contains("the glass hold", StringComparison.Ordinal)).Select(d => d.Line)];
        Assert.Equal(Parts, asked.Length);
        Assert.Equal(asked.Order(), asked);
        Assert.All(dish.Components, c => Assert.Equal((180.0, true), (c.Steps[1].Temperatures[0].Celsius, c.Steps[1].Temperatures[0].Inherited)));
    }

    [Fact]
    public void A_footnote_of_a_long_card_finds_its_line()
    {
        Dish dish = Read($"# A\n\n## Jelly\n- 8 g leaf gelatine¹\n\n¹ or 4 g agar\n\n{string.Concat(Enumerable.Range(1, Parts).Select(Part))}");

        Assert.Equal("4 g agar", dish.Components[0].Ingredients[0].Foods[0].Alternative);
    }

    [Fact]
    public void A_food_that_lost_what_few_lines_tell_equals_one_that_never_had_it()
    {
        FoodAmount plain = CardReader.ReadLine("20 g flour", "en").Foods[0];

        Assert.Equal(plain, plain with { Grade = "T55" } with { Grade = null });
        Assert.NotEqual(plain, plain with { Grade = "T55" });
    }

    [Fact]
    public void A_long_card_told_in_sentences_is_cut_as_a_short_one_is()
    {
        Dish one = Read(Sentences(1));
        Dish dish = Read(string.Concat(Enumerable.Range(1, 3 * Parts).Select(Sentences)));

        string[] items = [.. dish.Components.SelectMany(c => c.Ingredients).Select(l => l.Text)];
        Assert.Equal(["20 g leeks", "1 g butter", "30 g cream"], one.Components[0].Ingredients.Select(l => l.Text));
        Assert.Equal(Enumerable.Range(1, 3 * Parts).SelectMany(i => (string[])["20 g leeks", $"{i} g butter", "30 g cream"]), items);
        Assert.Equal(3 * Parts * one.Components[0].Steps.Length, dish.Components.Sum(c => c.Steps.Length));
    }

    [Fact]
    public void Sentences_that_come_again_are_each_in_their_own_place()
    {
        const string line = "Sweat 20 g leeks in 7 g butter for 3 min.";
        Dish one = Read(Sentences(1));
        Dish dish = Read(string.Concat(Enumerable.Repeat(line + "\n", 3 * Parts)));

        Step[] steps = [.. dish.Components.SelectMany(c => c.Steps)];
        IngredientLine[] lines = [.. dish.Components.SelectMany(c => c.Ingredients)];
        Assert.Equal((3 * Parts, 6 * Parts), (steps.Length, lines.Length));
        Assert.Equal(Enumerable.Range(1, 3 * Parts), steps.Select(s => s.Span.Line));
        Assert.Equal(Enumerable.Range(1, 3 * Parts).SelectMany(i => (int[])[i, i]), lines.Select(l => l.Span.Line));
        Assert.All(steps, (s, i) => Assert.Equal((i + 1, line, 3.0), (s.Anchor.Order, s.Text, s.Times[0].MinutesMin)));
        Assert.All(lines, (l, i) => Assert.Equal(i % 2 == 0 ? ("leeks", 20.0) : ("butter", 7.0), (l.Foods[0].Food, l.Foods[0].Grams)));
        Assert.Equal(one.Components[0].Steps[0].Times, steps[^1].Times);
    }

    private static string Sentences(int i) => $"Sweat 20 g leeks in {i} g butter for 3 min. Add 30 g cream and simmer.\n\n";

    private static string Part(int i) => $"## Part {i}\n- {i} g flour, sifted\n- 2 glasses white wine or verjus\n\n1. Bake {i} min at 180 °C.\n2. Bake again 5 min.\n\n";

    private static Dish Read(string text) => CardReader.Read(new CardText(text)).Match(d => d, p => throw new InvalidOperationException(p[0].Message));

    private static IEnumerable<FoodAmount> Foods(string line) => CardReader.ReadLine(line, "en").Foods.Select(Plain);

    private static FoodAmount Plain(FoodAmount f) => f with { FoodId = null, FoodConfidence = 0 };
}
