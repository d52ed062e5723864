using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>What a dish makes and what a table comes to, by kind, and lines of a list that look like work: each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class MadeKindTests
{
    private const string List = "\n\nIngredients\n600 ml double cream\n150 g caster sugar\n\nMethod\nSimmer 3 minutes.\n";

    private static string Yields(Dish d) => string.Join(" + ", d.Yields.Concat(d.Components.SelectMany(c => c.Makes)).Select(y => FormattableString.Invariant($"{y.Amount} {y.Unit}")));

    [Theory]
    [InlineData("# Cheese buns\n_Two trays of 12_", "2 trays")]
    [InlineData("# Cheese buns\nThree loaves of 800 g", "3 loaves")]
    [InlineData("Toffee – 1 tray, 40 pieces", "40 pieces + 1 tray")]
    [InlineData("Duck terrine. 2 terrines, 16 slices.", "2 terrines + 16 pieces")]
    [InlineData("# Possets\nFills 12 ramekins", "12 ramekins")]
    public void What_a_dish_makes_is_told_in_a_line_of_its_own(string head, string want)
    {
        Dish d = Read(head + List);

        Assert.Equal(want, Yields(d));
        Assert.Equal([": 600 ml double cream", ": 150 g caster sugar"], Lines(d));
    }

    [Theory]
    [InlineData("# Possets\nTwo tins of tomatoes were left over.")]
    [InlineData("# Possets\nFills the ramekins to 3 cm")]
    [InlineData("Possets. The old way, from the north.")]
    public void Words_that_open_like_a_yield_and_count_nothing_are_none(string head) => Assert.Equal("", Yields(Read(head + List)));

    [Fact]
    public void Two_tins_of_a_food_stay_a_food() =>
        Assert.Contains(": 2 tin tomatoes", Lines(Read("Soup\n\nTwo tins of tomatoes\n200 g onions\n\nSimmer 20 minutes.\n")));

    [Theory]
    [InlineData("キーマカレー 30食\n\n豚ひき肉 3kg\n玉ねぎ 10個\n\n20分煮る。\n", "30 portions")]
    [InlineData("キーマカレー(1日3食)\n\n豚ひき肉 3kg\n玉ねぎ 10個\n\n20分煮る。\n", "")]
    public void Meals_of_a_canteen_are_portions(string card, string want) => Assert.Equal(want, Yields(Read(card)));

    [Theory]
    [InlineData("Teigmasse Nord", "Stand: Herbst", "Produktionskarte 112")]
    [InlineData("Lemon possets, burnt sugar", "KITCHEN MANUAL rev. 4", null)]
    public void The_rows_of_a_form_are_no_name_and_no_food(string name, string beside, string? sheet)
    {
        string head = sheet is null ? $"{name}                        {beside}" : $"{sheet}                        {beside}\n{name} – ergibt 25 Portionen à 300 ml";
        Dish d = Read(head + "\n\n600 ml Sahne\n150 g Zucker\n\n3 Minuten kochen.\n");

        Assert.StartsWith(name, d.Title, StringComparison.Ordinal);
        Assert.Equal(2, Lines(d).Length);
    }

    [Fact]
    public void The_row_that_comes_to_all_others_beside_shares_is_no_food_and_a_food_of_that_weight_is()
    {
        const string Rows = "| | Bakers % | 1 batch |\n|---|---|---|\n| Strong flour | 100 | 1,000 g |\n| Water | 60 | 600 g |\n| Salt | 2 | 20 g |\n";
        Assert.Equal(3, Lines(Read("Rolls\n\n" + Rows + "| Dough | 162 | 1,620 g |\n\nMix 8 minutes.\n")).Length);
        Assert.Equal(4, Lines(Read("Rolls\n\n" + Rows + "| Butter | 162 | 1,620 g |\n\nMix 8 minutes.\n")).Length);
        Assert.Equal(4, Lines(Read("Rolls\n\n" + Rows + "| Dough | 150 | 1,500 g |\n\nMix 8 minutes.\n")).Length);
        Assert.Contains(Read("Rolls\n\n" + Rows + "| Total | 162 | 1,620 g |\n\nMix 8 minutes.\n").Components[0].Ingredients, l => l.Kind == LineKind.Total);
    }

    [Fact]
    public void A_food_that_begins_like_work_and_is_weighed_is_an_item_and_work_is_none()
    {
        Dish d = Read("CAKE\n\nBASE\nCarrot                        900 g\nPlain flour                   540 g\n\nFROSTING\nCream cheese                  700 g\nIcing sugar                   350 g\n\nCream the butter with 350 g\n");

        Assert.Equal(["BASE: 900 g Carrot", "BASE: 540 g Plain flour", "FROSTING: 700 g Cream cheese", "FROSTING: 350 g Icing sugar"], Lines(d)[..4]);
        Assert.DoesNotContain(Lines(d), l => l.Contains("Cream the butter", StringComparison.Ordinal));
    }

    [Fact]
    public void A_share_of_a_base_in_a_list_is_an_item_and_a_share_in_work_is_none()
    {
        Dish d = Read("Cured butter\n\ncream: 2 l\nlive buttermilk: 80 g\nsalt: 1.5% of butter weight\n\nReduce the liquid by 20% of its weight.\n");

        Assert.Equal("salt", d.Components[0].Ingredients[^1].Foods[0].Food);
        Assert.Equal(1.5, d.Components[0].Ingredients[^1].Foods[0].Percent);
        Assert.Equal("Reduce the liquid by 20% of its weight.", Assert.Single(d.Components[0].Steps).Text);
    }

    [Theory]
    [InlineData("cipolle 3, bruciate", "it", "cipolle", 3.0)]
    [InlineData("cipolle 2, a fette", "it", "cipolle", 2.0)]
    [InlineData("onions 2, chopped", "en", "onions", 2.0)]
    [InlineData("farina 00, setacciata", "it", "farina 00", null)]
    [InlineData("chapter 2, onions", "en", "chapter 2", null)]
    public void A_count_behind_the_food_and_what_is_done_to_it(string line, string lang, string food, double? amount)
    {
        FoodAmount f = CardReader.ReadLine(line, lang).Foods[0];

        Assert.Equal((food, amount), (f.Food, f.Amount));
    }
}
