using Coulisse.Cards.Writing;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Two sizes of one list: the answer chooses one of them by a sentence, and so may a person; nothing of the table is lost. Our own examples.</summary>
public sealed class SizeAnswerTests
{
    private const string Table = "# Brownies\n\n| | 20 cm tin | 30 cm tin |\n|---|---|---|\n| Butter | 175 g | 390 g |\n| Sugar | 250 g | 560 g |\n| Flour | 80 g | 180 g |\n";
    private const string Steps = "\n1. Mix butter, sugar and flour. Bake at 170 °C 25 min.\n";

    [Theory]
    [InlineData("20 cm tin", 175)]
    [InlineData("30 cm tin", 390)]
    public void An_answer_chooses_its_column_and_keeps_the_table(string size, double butter)
    {
        Doubt asked = Assert.Single(Read(Table + Steps).Doubts);
        string written = AnswerOnCard.WriteSentence(Table + Steps, asked.Candidates.Single(c => c.Text == size).Plain);
        Dish d = Read(written);

        Assert.Contains(Table[11..], written, StringComparison.Ordinal);
        Assert.Empty(d.Doubts);
        Assert.Equal(butter, Assert.Single(d.Components).Ingredients[0].Foods[0].Grams);
        Assert.Equal(3, Assert.Single(d.Variants).Ingredients.Length);
    }

    [Theory]
    [InlineData("The method is for the 30 cm tin.", 390.0)]
    [InlineData("The recipe is for the 30 cm tin.", 390.0)]
    [InlineData("The method is for the 20 cm tin.", 175.0)]
    [InlineData("The method is for a hot oven.", null)]
    [InlineData("The recipe is for people in a hurry.", null)]
    public void A_sentence_under_the_table_chooses_too_and_one_of_something_else_does_not(string sentence, double? butter)
    {
        Dish d = Read(Table + "\n" + sentence + "\n" + Steps);

        Assert.Equal(butter is null, d.Doubts.Length == 1);
        Assert.Equal(butter ?? 175, Assert.Single(d.Components).Ingredients[0].Foods[0].Grams);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\nThe method is for the 20 cm tin.\n")]
    [InlineData("\nThe method is for the 30 cm tin.\n")]
    public void A_card_of_two_sizes_printed_reads_the_same(string sentence)
    {
        Dish d = Read(Table + sentence + Steps);
        Dish again = Read(CardWriter.Write(d));

        Assert.Equal(Lines(d), Lines(again));
        Assert.Equal(Told.Steps(d), Told.Steps(again));
        Assert.Equal(d.Variants.SelectMany(v => v.Ingredients).Select(l => l.Text), again.Variants.SelectMany(v => v.Ingredients).Select(l => l.Text));
        Assert.Equal(d.Notes.Select(n => n.Text).Order(), again.Notes.Select(n => n.Text).Order());
        Assert.Equal(d.Doubts.Length, again.Doubts.Length);
        Assert.Empty(again.Remarks);
    }
}
