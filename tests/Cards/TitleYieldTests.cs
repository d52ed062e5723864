using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>How many a card makes, told in its title, in its last line, in brackets or beside another count; each with a near miss. Our own examples.</summary>
public sealed class TitleYieldTests
{
    private const string Body = "\n\n- 500 g flour\n- 40 g butter\n\n1. Mix for 4 minutes.";

    private static string Made(string card) => string.Join(", ", Read(card) is var d ? d.Yields.Concat(d.Components.SelectMany(c => c.Makes)).Select(y => FormattableString.Invariant($"{y.Amount} {y.Unit}")) : []);

    [Theory]
    [InlineData("# CROISSANTS, 40 pc", "40 pc")]
    [InlineData("# Tacos de cochinita · 30 tacos", "30 pieces")]
    [InlineData("# CROISSANTS · 40 croissants", "40 pieces")]
    [InlineData("# Apfelstrudel - 2 Strudel, 12 Portionen", "12 portions, 2 pieces")]
    [InlineData("# WALNUT CAKE        1 cake, 12 portions", "12 portions, 1 cake")]
    [InlineData("# duck pancakes 6cov", "6 portions")]
    [InlineData("# Focaccia, 2 trays of 12", "2 trays")]
    [InlineData("# BUTTERMILK VERRINE / 30 glasses", "30 glasses")]
    [InlineData("# Baccalà con polenta (scheda n. 8 - 10 porzioni antipasto)", "10 portions")]
    [InlineData("# ショートケーキ 15cm丸型1台", "1 台")]
    public void A_title_tells_it(string title, string made) => Assert.Equal(made, Made(title + Body));

    [Theory]
    [InlineData("# Egg curry · 12 eggs")]
    [InlineData("# Roast pork, 2 ways")]
    [InlineData("# Brioche · 24 h")]
    [InlineData("# 型抜きクッキー")]
    public void A_title_that_counts_something_else_tells_none(string title) => Assert.Equal("", Made(title + Body));

    [Theory]
    [InlineData("Product: BUTTERMILK VERRINE / 30 glasses", "BUTTERMILK VERRINE / 30 glasses", 30)]
    [InlineData("CROISSANTS, 40 pc", "CROISSANTS, 40 pc", 40)]
    [InlineData("Zwetschgenkuchen (ergibt ca. 24 Stück)", "Zwetschgenkuchen (ergibt ca. 24 Stück)", 24)]
    public void A_first_line_that_counts_is_the_title(string line, string title, double made)
    {
        Dish d = Read(line + Body);

        Assert.Equal(title, d.Title);
        Assert.Equal(made, d.Yields.Single().Amount);
        Assert.Equal(2, d.Components.Single().Ingredients.Length);
    }

    [Theory]
    [InlineData("Does 8 of us.", 8)]
    [InlineData("Does 6.", 6)]
    [InlineData("Will serve six.", 6)]
    [InlineData("Alcanza para 6.", 6)]
    [InlineData("(8 portions, the sauce can be frozen up to 3 months)", 8)]
    public void The_last_line_tells_it(string line, double made)
    {
        Dish d = Read($"Pie{Body}\n\n{line}");

        Assert.Equal(made, d.Yields.Concat(d.Components.SelectMany(c => c.Makes)).Single().Amount);
        Assert.Single(d.Components.SelectMany(c => c.Steps));
    }

    [Theory]
    [InlineData("Does 8 minutes in the oven.")]
    [InlineData("Serve 2 per person.")]
    [InlineData("(8 g of salt will do)")]
    public void Another_figure_in_the_last_line_feeds_nobody(string line) => Assert.Equal("", Made($"Pie{Body}\n{line}"));

    [Theory]
    [InlineData("Serves 4 (about 16 pancakes)", "4 portions, 16 pieces")]
    [InlineData("Serves 4 (about 6 children)", "4 portions")]
    [InlineData("Serves 4 (about 30 minutes)", "4 portions")]
    [InlineData("Makes 14 scones and 4 jars of jam.", "14 scones, 4 jars")]
    [InlineData("Makes 14 scones and 400 g of jam.", "14 scones")]
    public void Brackets_and_a_second_count_tell_more(string line, string made) => Assert.Equal(made, Made($"# Cream tea\n\n{line}{Body}"));

    [Fact]
    public void What_counts_another_part_is_told_of_the_dish()
    {
        Dish d = Read("Cream tea\n\nScones\n450 g flour\n100 g butter\n\nJam\n1 kg strawberries\n900 g sugar\n\nMakes 14 scones and 4 jars of jam.\n\n1. Rub in the butter.\n2. Boil the jam 15 minutes.");

        Assert.Equal([14, 4], d.Yields.Select(y => y.Amount));
        Assert.All(d.Components, c => Assert.Empty(c.Makes));
    }

    [Fact]
    public void The_yield_of_a_dough_is_no_food()
    {
        Dish d = Read("# Kaisersemmeln\n\nTeigausbeute 160 · 40 Stück\n\n- 2000 g Mehl\n- 1200 g Wasser\n- 42 g Salz\n\n1. 6 Minuten kneten.");

        Assert.Equal(40, d.Yields.Single().Amount);
        Assert.Equal(["Mehl", "Wasser", "Salz"], d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => f.Food));
    }

    [Theory]
    [InlineData("30 tacos", 30, "tacos")]
    [InlineData("2 Strudel", 2, "Strudel")]
    public void A_count_in_a_list_stays_a_food(string line, double amount, string food)
    {
        Dish d = Read($"Party plate\n\n- 500 g cheese\n- {line}\n- 40 g butter\n\n1. Warm for 4 minutes.");

        Assert.Empty(d.Yields);
        Assert.Contains(d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods), f => f.Food == food && f.Amount == amount);
    }

    [Fact]
    public void A_flagged_word_for_the_method_is_no_food()
    {
        Dish d = Read("親子丼\n\n●割り下\nだし…150ml\n砂糖…小さじ2\n\n●ごはん\nごはん…400g\n\n●作り方\n割り下を煮立て、3分煮る。\n卵の3分の2を回し入れ、ふたをして1分、残りを入れて30秒。");

        Assert.Equal(["だし", "砂糖", "ごはん"], d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => f.Food));
        Assert.Equal([3, 1, 0.5], d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times).Select(t => t.MinutesMin!.Value));
    }

    [Theory]
    [InlineData("卵の3分の2を入れる。", "")]
    [InlineData("牛乳の3分の1を加えて混ぜる。", "")]
    [InlineData("5分の加熱で火を止める。", "5")]
    [InlineData("中火で3分煮る。", "3")]
    public void Two_thirds_are_no_minutes(string step, string minutes) =>
        Assert.Equal(minutes, string.Join(' ', CardReader.ReadStep(step, "ja").Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}"))));
}
