namespace Coulisse.Cards.Tests;

/// <summary>Lines of a whole card that tell of heat, of waiting and of keeping: as steps or statements, never as foods. Readings as a cook gives them: common practice, no source.</summary>
public sealed class KeepLineTests
{
    private const string Cream = "Chou\n\n250 g eau\n200 g beurre\n300 g farine\n\nCrème :\n1 l lait\n200 g sucre\n200 g jaunes\n\nBouillir l'eau et le beurre, ajouter la farine.\n";

    [Theory]
    [InlineData("Pour la crème, bouillir le lait... cuire 3 min après ébullition. Refroidir rapidement à coeur +10°C en moins de 2h.")]
    [InlineData("Bouillir le lait… cuire 3 min après ébullition, puis refroidir.")]
    public void Three_dots_in_a_sentence_lead_to_no_amount(string line)
    {
        Dish dish = Told.Read(Cream + line + "\n");

        Assert.DoesNotContain(dish.Components.SelectMany(c => c.Ingredients), l => l.Text.Contains("bouillir", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(dish.Components.SelectMany(c => c.Steps), s => s.Times.Any(t => t.MinutesMin == 3));
    }

    [Theory]
    [InlineData("Lait... 500 g")]
    [InlineData("Lait ........ 500 g")]
    public void Dots_before_an_amount_lead_to_it(string line) => Assert.Contains(Told.Read("Chou\n\n250 g eau\n" + line + "\n200 g beurre\n\nBouillir l'eau.\n").Components.SelectMany(c => c.Ingredients), l => l.Foods.Any(f => f.Amount == 500));

    [Theory]
    [InlineData("Keeps for a year.", "? 8760")]
    [InlineData("Shelf life 3 days @ 38F.", "fridge 72")]
    [InlineData("Keeps in the fridge for a week or freeze for up to a month.", "fridge 168 | freezer 720")]
    [InlineData("Good for 2 weeks in the fridge.", "fridge 336")]
    [InlineData("Best eaten within 2 days.", "? 48")]
    [InlineData("Soak the beans 2 days in the fridge first.", "")]
    [InlineData("Good for 4 people.", "")]
    [InlineData("Keeps on the shelf 3 days.", "room 72")]
    public void Each_place_has_its_own_time(string sentence, string want) => Assert.Equal(want, string.Join(" | ", Told.Read($"# Jam\n\n- 500 g plums\n- 300 g sugar\n\n1. Boil 20 min.\n\n{sentence}\n").Components
        .SelectMany(c => c.Keeps).Select(k => FormattableString.Invariant($"{(k.Where.Length > 0 ? k.Where : "?")} {k.Hours}"))));

    [Theory]
    [InlineData("Ça se garde deux jours au frais.", "fridge 48")]
    [InlineData("DLC 3 jours à +3°C.", "fridge 72")]
    [InlineData("Laisser mariner deux jours au frais avant de cuire.", "")]
    public void In_french_too(string sentence, string want) => Assert.Equal(want, string.Join(" | ", Told.Read($"Clafoutis\n\n- 500 g cerises\n- 3 oeufs\n- 100 g sucre\n\n1. Battre les oeufs et le sucre.\n2. Cuire 30 min à 180°C.\n\n{sentence}\n").Components
        .SelectMany(c => c.Keeps).Select(k => FormattableString.Invariant($"{k.Where} {k.Hours}"))));

    [Theory]
    [InlineData("Total cooking time: 2 hours.", 2)]
    [InlineData("Total weight: cook 2 kg, 20 minutes.", 3)]
    public void What_the_times_come_to_is_no_step(string line, int steps) => Assert.Equal(steps, Told.Read($"Hollandaise\n\n500 g butter\n50 ml vinegar\n\nReduce the vinegar 5 min.\nAdd the butter, whisk 10 min.\n{line}\n").Components.Sum(c => c.Steps.Length));

    [Fact]
    public void A_japanese_line_of_keeping_is_divided_by_its_comma() => Assert.Equal("fridge 72 | freezer 720", string.Join(" | ", Told.Read("# 味噌煮\n\n材料\nさば 4切れ\n味噌 大さじ3\n\n作り方\n1. 10分煮る。\n\n保存期間：冷蔵で3日、冷凍で1ヶ月。\n").Components
        .SelectMany(c => c.Keeps).Select(k => FormattableString.Invariant($"{k.Where} {k.Hours}"))));
}
