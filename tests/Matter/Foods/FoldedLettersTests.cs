using Coulisse.Matter.Foods;

namespace Coulisse.Matter.Tests.Foods;

/// <summary>Folding by our own table of letters against folding by the platform's Unicode library.</summary>
public sealed class FoldedLettersTests
{
    [Fact]
    public void Every_character_folds_as_the_Unicode_library_says_alone_and_among_others()
    {
        List<string> wrong = [];
        // The last two are no characters: both refuse them.
        for (int code = 0; code < 0xFFFE; code++)
        {
            char c = (char)code;
            if (char.IsSurrogate(c))
            {
                continue;
            }

            foreach (string text in (string[])[$"{c}", $"a{c}b", $"7{c}%", $"{c} {c}{c}", $"か{c}\u3099e\u0301{c}"])
            {
                if (FoodName.Fold(text) != PlainRule.Fold(text))
                {
                    wrong.Add($"U+{code:X4} in \"{text}\": {FoodName.Fold(text)}, should be {PlainRule.Fold(text)}");
                }
            }
        }

        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("Crème FRAÎCHE 35 %", "creme fraiche 35%")]
    [InlineData("œufs d’oie – ½ Süßrahm", "oeufs doie 1 2 sussrahm")]
    [InlineData("ガラムマサラ", "カ\u3099ラムマサラ")]
    [InlineData("ﾊﾞﾀｰ", "ハ\u3099ター")]
    [InlineData("молоко́", "молоко")]
    public void A_name_folds_in_any_script(string name, string folded) => Assert.Equal(folded, FoodName.Fold(name));

    [Fact]
    public void A_name_may_be_longer_than_any_room_set_aside()
    {
        string name = string.Concat(Enumerable.Repeat("Æpfel½ ", 400)) + new string('ガ', 700);

        Assert.Equal(PlainRule.Fold(name), FoodName.Fold(name));
        Assert.Equal(PlainRule.Singular(PlainRule.Fold(name)), FoodName.Singular(FoodName.Fold(name)));
        Assert.Throws<ArgumentException>(() => FoodName.Fold("half a pair \ud800"));
    }
}
