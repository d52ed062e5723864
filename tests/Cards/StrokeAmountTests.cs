using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>A stroke between two figures: from one to the other of what is counted or weighed, a fraction of a cup or spoon, and always one behind a whole number. Readings as a cook gives them: common practice, no source.</summary>
public sealed class StrokeAmountTests
{
    [Theory]
    [InlineData("6/8 foglie di salvia", "it", 6, 8.0, "salvia")]
    [InlineData("6/8 sage leaves", "en", 6, 8.0, "sage leaves")]
    [InlineData("4/6 oz beef", "en", 4, 6.0, "beef")]
    [InlineData("6/8 cups flour", "en", 0.75, null, "flour")]
    [InlineData("1 6/8 cups flour", "en", 1.75, null, "flour")]
    [InlineData("1 4/8 tsp salt", "en", 1.5, null, "salt")]
    [InlineData("3/4 cup milk", "en", 0.75, null, "milk")]
    public void A_stroke_is_read_by_what_it_counts(string line, string lang, double low, double? high, string food)
    {
        FoodAmount read = Assert.Single(CardReader.ReadLine(line, lang).Foods);
        Assert.Equal((low, high, food), (read.Amount, read.AmountMax, read.Food));
    }
}
