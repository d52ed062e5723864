using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Amounts, guests and degrees in written Japanese numerals; beside them names and counts of times that hold such a numeral and are none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class WrittenNumeralKindTests
{
    [Theory]
    [InlineData("練り胡麻　百五十グラム", "150 g 練り胡麻")]
    [InlineData("蛤　十二個", "12 piece 蛤")]
    [InlineData("卵白　二個分", "2 piece 卵白")]
    [InlineData("醤油　大さじ三", "3 tbsp 醤油")]
    [InlineData("出汁　六百cc", "600 ml 出汁")]
    [InlineData("鯛　一尾（約八百グラム）", "1 piece 鯛")]
    [InlineData("三温糖　大匙二", "2 tbsp 三温糖")]
    [InlineData("三つ葉　一束", "1 bunch 三つ葉")]
    [InlineData("八丁味噌　二十グラム", "20 g 八丁味噌")]
    public void An_amount_in_numerals_is_one(string line, string want) =>
        Assert.Equal(want, string.Join("; ", CardReader.ReadLine(line, "ja").Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit ?? "piece"} {f.Food}"))));

    [Theory]
    [InlineData("一番出汁　適量", "一番出汁")]
    [InlineData("七味唐辛子　少々", "七味唐辛子")]
    [InlineData("九条ねぎ", "九条ねぎ")]
    public void A_name_keeps_its_numeral(string line, string food)
    {
        FoodAmount one = Assert.Single(CardReader.ReadLine(line, "ja").Foods);

        Assert.Equal((food, null), (one.Food, one.Amount));
    }

    [Theory]
    [InlineData("八十五度の湯で火を通す。", 85)]
    [InlineData("百七十度の油で揚げる。", 170)]
    [InlineData("二百度のオーブンで焼く。", 200)]
    [InlineData("五度以下で冷やす。", 5)]
    public void Degrees_in_numerals_are_a_heat(string step, double celsius) => Assert.Equal(celsius, Assert.Single(CardReader.ReadStep(step, "ja").Temperatures).Celsius);

    [Theory]
    [InlineData("二度揚げする。")]
    [InlineData("三度に分けて加える。")]
    [InlineData("もう一度沸かす。")]
    public void How_often_is_none(string step) => Assert.Empty(CardReader.ReadStep(step, "ja").Temperatures);

    [Fact]
    public void A_card_in_numerals_has_its_guests_its_lists_and_its_steps()
    {
        Dish d = Read("椀　海老真薯\n六人前\n\n真薯地\n　すり身　三百グラム\n　海老　十尾\n　卵白　一個分\n吸地\n　出汁　千二百cc\n　薄口醤油　小さじ二\n\n一、すり身と卵白をよく練る。\n一、八十五度の湯で火を通す。\n一、椀に盛り、吸地を張る。");

        Assert.Equal((6, "portions"), (Assert.Single(d.Yields).Amount, d.Yields[0].Unit));
        Assert.Equal(["真薯地: 300 g すり身", "真薯地: 10 piece 海老", "真薯地: 1 piece 卵白", "吸地: 1200 ml 出汁", "吸地: 2 tsp 薄口醤油"], Lines(d).Select(l => l.Replace("  ", " piece ", StringComparison.Ordinal)));
        Assert.Equal(3, d.Components.Sum(c => c.Steps.Length));
    }
}
