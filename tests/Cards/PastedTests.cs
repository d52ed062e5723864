using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>What people paste: broken lines, dots that lead to an amount, boxes, labels, sizes with parts, yields in every dress; each with a near miss. Our own examples.</summary>
public sealed class PastedTests
{
    private static string Outline(Dish d) => string.Join(" | ", d.Components.Select(c => $"{c.Name}: {string.Join(", ", c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}").Trim()))}"));

    [Fact]
    public void Items_broken_by_a_window_are_one_again()
    {
        Dish d = Read("Cheeks\n\n•\t10 beef cheeks, about\n280 g each\n•\t2 litres veal\nstock\n\nMethod\n1.\tMarinate for\n24 hours.\n2.\tSear until dark, about\n8 minutes.");

        Assert.Equal(": 10 piece beef cheeks, 2 l veal stock", Outline(d));
        Assert.Equal([1440, 8], d.Components.Single().Steps.Select(s => s.Times.Single().MinutesMin!.Value));
    }

    [Fact]
    public void A_sentence_under_a_list_is_not_drawn_into_it() =>
        Assert.Equal(": 200 g flour, 90 g butter", Outline(Read("Crust\n\n- 200 g flour\n- 90 g butter\nRub the butter into the flour and rest 20 min.")));

    [Theory]
    [InlineData("Xanthan........2.4g", "2.4 g Xanthan")]
    [InlineData("Mehl ........ 1000 g ........ 100 %", "1000 g Mehl")]
    [InlineData("beurre sec … 250 g", "250 g beurre sec")]
    [InlineData("Salt ...", "  Salt ...")]
    public void Dots_lead_to_an_amount(string line, string reading) =>
        Assert.Equal(reading, string.Join(", ", CardReader.ReadLine(line, CardReader.LanguageOf(line)).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}"))));

    [Fact]
    public void Boxes_name_parts() => Assert.Equal("生地: 100 g 薄力粉 | 仕上げ: 5 g 粉糖", Outline(Read("菓子\n\n【生地】\n薄力粉…100g\n\n【仕上げ】\n粉糖…5g\n\n1 薄力粉をふるう。\n2 粉糖をふる。")));

    [Fact]
    public void A_label_with_its_list_in_one_line_is_a_part() =>
        Assert.Equal("Para el caramelo: 120 g azúcar, 2 tbsp agua | Para el flan: 300 g queso crema, 250 ml leche", Outline(Read("Flan\n\nPara el caramelo: 120 g de azúcar y 2 cucharadas de agua.\nPara el flan: 300 g de queso crema y 250 ml de leche.\n\nHacer un caramelo con el azúcar y el agua.\nCocer al baño maría 1 hora.")));

    [Fact]
    public void Sizes_beside_each_other_and_parts_under_each_other_are_kept_apart()
    {
        Dish d = Read("# Tart\n\n| Ingredient | 20 cm tin | 28 cm tin |\n|---|---|---|\n| **Pastry** | | |\n| Flour | 200 g | 390 g |\n| Butter | 100 g | 195 g |\n| **Posset** | | |\n| Cream | 450 g | 880 g |\n| Sugar | 120 g | 235 g |\n\n1. Make the pastry. Boil cream and sugar.");

        Assert.Equal("Pastry: 200 g Flour, 100 g Butter | Posset: 450 g Cream, 120 g Sugar", Outline(d));
        Assert.Equal(2, d.Variants.Length);
        Assert.Single(d.Doubts);
    }

    [Theory]
    [InlineData("# Dal\n\nFeeds four, generously.", 4, "portions")]
    [InlineData("# Cake\n\nA keeper. Cuts into 12 squares.", 12, "squares")]
    [InlineData("# CIABATTA (2 pezzi)", 2, "pezzi")]
    [InlineData("# Flan (8 raciones)", 8, "portions")]
    [InlineData("# Panna cotta - per 6 stampini", 6, "stampini")]
    [InlineData("# Arroz\n\n*4 personas · 50 minutos*", 4, "portions")]
    [InlineData("# Sausages\n\nPrep 10 min | Cook 50 min | Serves 4", 4, "portions")]
    [InlineData("# Blanquette\n\n**Pour 6**", 6, "portions")]
    [InlineData("# 煮物\n\n## 材料(4人分)\n- 砂糖 大さじ2", 4, "portions")]
    public void Yields_are_read_in_every_dress(string card, double amount, string unit) =>
        Assert.Contains(Read(card + "\n\n## Part\n- 200 g flour\n\n1. Mix.").Yields, y => y.Amount == amount && y.Unit == unit);

    [Theory]
    [InlineData("# Mousse cake, 18 cm ring")]
    [InlineData("# Bread (part 2)")]
    [InlineData("# Glaze (250 g)")]
    [InlineData("# Tart\n\nEnough said. For the pastry see page 4.")]
    public void What_is_no_yield_gives_none(string card) => Assert.Empty(Read(card + "\n\n## Part\n- 200 g flour\n\n1. Mix.").Yields);

    [Fact]
    public void Steps_keep_the_day_they_stand_under_and_the_writer_prints_it()
    {
        Dish d = Read("# Verrine\n\n## Compote\n- 200 g cherries\n\n### Day 1\n\n1. Thaw the cherries overnight.\n\n### Day 2\n\n1. Boil 2 min.");

        Assert.Equal(["Day 1", "Day 2"], d.Components.Single().Steps.Select(s => s.Under));
        Assert.Equal(["Day 1", "Day 2"], Read(CardWriter.Write(d)).Components.Single().Steps.Select(s => s.Under));
    }

    [Fact]
    public void A_label_no_line_follows_and_a_footnote_nothing_leads_to_stay_as_written()
    {
        Dish d = Read("# A\n\n## Gel\n- 8 g agar\n\n1. Boil.\n\nMise en place:\n\n¹ or 4 g gellan");

        Assert.Contains(d.Components.Single().Notes, n => n.Text == "Mise en place:");
        Assert.Contains(d.Components.Single().Notes, n => n.Text.Contains("gellan", StringComparison.Ordinal));
    }

    [Fact]
    public void The_oven_that_holds_on_is_the_one_for_any_oven()
    {
        Step[] steps = [.. Read("# A\n\n## B\n- 200 g flour\n- 90 g butter\n\n1. Heat the oven to 180C/160C fan/gas 4. Rub butter into flour.\n2. Bake for 40 minutes.").Components.Single().Steps];

        Assert.Equal([false, true], steps[0].Temperatures.Select(t => t.Fan == true));
        Assert.Equal(180, steps[1].Temperatures.Single().Celsius);
    }

    [Fact]
    public void A_cubed_centimetre_is_no_footnote_and_an_empty_mark_is_no_line() =>
        Assert.Equal(["100 cm³ water", "8 g leaf gelatine"], Read("# A\n\n## B\n- 100 cm³ water\n-\n- 8 g leaf gelatine¹\n\n1. Boil.\n\n¹ or 4 g agar").Components.Single().Ingredients.Select(l => l.Text));

    [Fact]
    public void A_day_under_which_nothing_stands_is_kept_and_written_back_as_it_was()
    {
        Dish d = Read("# A\n\n## B\n- 200 g quince\n\n### Day 1\n\n### Day 2\n\n1. Boil.");

        Assert.Contains(d.Components.Single().Notes, n => n.Text == "No step stands under Day 1.");
        Assert.Equal(CardWriter.Write(d), CardWriter.Write(Read(CardWriter.Write(d))));
    }

    [Fact]
    public void What_a_heading_says_in_brackets_is_kept() =>
        Assert.Contains(Read("# A\n\n## Ingredients (keep the peel)\n- 200 g quince\n\n## Method\n1. Boil.").Notes, n => n.Text == "keep the peel");
}
