using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Lines that were misread without a word, each beside one that looks like it. Readings as a cook gives them: common practice, no source.</summary>
public sealed class LineSlipTests
{
    [Theory]
    [InlineData("juice of 1 orange and 2 lemons", "en", "1 orange; 2 lemons")]
    [InlineData("zest of 1 lemon and 1 orange", "en", "1 lemon; 1 orange")]
    [InlineData("jus de 1 orange et 2 citrons", "fr", "1 orange; 2 citrons")]
    [InlineData("juice of 1 orange and a little sugar", "en", null)]
    [InlineData("zest and juice of 2 limes", "en", "2 limes")]
    [InlineData("1 1 / 2 cups milk", "en", "1.5 milk")]
    [InlineData("1 1 litre bottle wine", "en", null)]
    [InlineData("1lb2oz flour", "en", "1.125 flour")]
    [InlineData("7up 330 ml", "en", "330 7up")]
    [InlineData("2eggs", "en", "2 eggs")]
    [InlineData("noix de muscade", "fr", " noix de muscade")]
    [InlineData("1 noix de beurre", "fr", "1 beurre")]
    [InlineData("35 % cream, 250 g", "en", "250 35 % cream")]
    public void An_amount_goes_with_its_food(string line, string lang, string? foods)
    {
        string read = string.Join("; ", CardReader.ReadLine(line, lang).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Food}")));

        if (foods is null)
        {
            Assert.DoesNotContain(";", read, StringComparison.Ordinal);
        }
        else
        {
            Assert.Equal(foods, read);
        }
    }

    [Fact]
    public void Every_fruit_of_a_shared_part_keeps_it() => Assert.All(CardReader.ReadLine("juice of 1 orange and 2 lemons", "en").Foods, f => Assert.Equal("juice", f.Preparation));

    [Theory]
    [InlineData("170/6min", true)]
    [InlineData("160 fan 12 min", true)]
    [InlineData("Read the notes on tempering first", true)]
    [InlineData("6 minute steaks", false)]
    [InlineData("2 lamb mince", false)]
    public void A_setting_of_the_oven_and_a_pointer_are_no_foods(string line, bool none) => Assert.Equal(none, CardReader.ReadLine(line, "en").Kind != LineKind.Ingredient);

    [Fact]
    public void A_list_without_commas_ends_where_the_work_begins()
    {
        Dish d = Told.Read("Note from tonight\n\nroyale: 300 cream 200 milk 5 yolks salt, bake 95C 40min. then chill overnight\n");

        Assert.Equal(["royale: 300 g cream", "royale: 200 g milk", "royale: 5 piece yolks", "royale:   salt"], Told.Lines(d));
        Assert.Equal(2, d.Components[0].Steps.Length);
    }
}
