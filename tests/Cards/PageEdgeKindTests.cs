namespace Coulisse.Cards.Tests;

/// <summary>What stands at the edges of a page and over a card: running heads, the owner's row, a title far from its yield, titles that count dishes, words cut at a line's end; each beside a near miss. Our own examples.</summary>
public sealed class PageEdgeKindTests
{
    private const string List = "\n\n500 g flour\n100 g butter\n\nBake 12 minutes.\n";

    [Theory]
    [InlineData("La cuisine du dimanche                      p. 32")]
    [InlineData("Die gute Küche          S. 45")]
    [InlineData("Cocina de mercado        pág. 7")]
    [InlineData("42 | Sunday baking")]
    [InlineData("Page 12")]
    [InlineData("Page 12        Sunday baking")]
    public void A_running_head_is_no_food_and_no_title(string head)
    {
        Dish d = Read(head + "\n\nSCONES" + List);

        Assert.Equal("SCONES", d.Title);
        Assert.Equal(["500 g flour", "100 g butter"], Lines(d));
    }

    [Theory]
    [InlineData("Eggs    12\nFlour    500 g\n\nBake 12 minutes.\n", "12 piece Eggs")]
    [InlineData("Scones\n\nBuns\t12\nFlour\t500 g\n\nBake 12 minutes.\n", "12 piece Buns")]
    public void A_food_far_from_its_count_stays_one(string card, string line) => Assert.Equal(line, Lines(Read(card))[0]);

    [Theory]
    [InlineData("RECIPE CARD\nFrom the kitchen of: Grandma\nMEATLOAF                    Serves: 6", "MEATLOAF")]
    [InlineData("Aus der Küche von Oma\nHACKBRATEN          Für 6 Personen", "HACKBRATEN")]
    [InlineData("MEATLOAF\tServes: 6", "MEATLOAF")]
    [InlineData("Sunday lunch\nMEATLOAF        Serves: 6", "Sunday lunch")]
    public void A_yield_far_right_of_the_name_is_the_yield(string head, string title)
    {
        Dish d = Read(head + List);

        Assert.Equal(title, d.Title);
        Assert.Equal(6, d.Yields.Single().Amount);
        Assert.Equal(["500 g flour", "100 g butter"], Lines(d));
    }

    [Fact]
    public void A_dish_of_somebody_keeps_its_name() => Assert.Equal("Recette de crêpes", Read("Recette de crêpes\n\n250 g de farine\n3 œufs\n\nCuire 2 min.\n").Title);

    [Theory]
    [InlineData("Zwei Suppen auf einer Karte", "LAUCHSUPPE\nLauch 2 kg\nSahne 1 l\nLauch in der Sahne 25 Min kochen\n\nERBSENSUPPE\nErbsen 2 kg\nBrühe 3 l\nErbsen in der Brühe 15 Min kochen\n")]
    [InlineData("Two soups on one card", "LEEK SOUP\nleeks 2 kg\ncream 1 l\nBoil 25 min\n\nPEA SOUP\npeas 2 kg\nstock 3 l\nBoil 15 min\n")]
    [InlineData("Trois sauces", "Béarnaise\n200 g beurre\n3 jaunes d'œufs\n\nTartare\n200 g mayonnaise\n30 g câpres\n\nMélanger 2 min.\n")]
    [InlineData("3 salse", "Pesto\n200 g basilico\n100 ml olio\n\nSalsa verde\n100 g prezzemolo\n50 ml olio\n\nFrullare 2 min.\n")]
    public void A_title_may_count_the_dishes_of_its_card(string title, string card)
    {
        Dish d = Read(title + "\n\n" + card);

        Assert.Equal(title, d.Title);
        Assert.Empty(d.Yields);
        Assert.Equal(4, Lines(d).Length);
    }

    [Theory]
    [InlineData("Two onions\n\n200 g butter\n\n300 g flour\n\nMix 2 min.\n", "2 piece onions")]
    [InlineData("3 carottes\n200 g beurre\n\nCuire 5 min.\n", "3 piece carottes")]
    public void A_count_of_foods_over_a_list_is_its_first_line(string card, string line) => Assert.Equal(line, Lines(Read(card))[0]);

    [Theory]
    [InlineData("Soupe de poulet\n\n1 poulet\n1,5 l de bouillon de vo-\nlaille\n40 g de beurre\n\nCuire le poulet pendant 40 minutes.\n", "1.5 l bouillon de volaille")]
    [InlineData("Suppe\n\n250 g Linsen\n1 l Gemüse-\nbrühe\n40 g Butter\n\nLinsen 40 Minuten kochen.\n", "1 l Gemüsebrühe")]
    [InlineData("Suppe\n\n250 g Linsen\n100 g Hasel-\nund Walnüsse\n40 g Butter\n\nLinsen 40 Minuten kochen.\n", "100 g Hasel- und Walnüsse")]
    public void A_word_cut_at_the_end_of_a_line_is_one_again(string card, string line) => Assert.Equal(line, Lines(Read(card))[1]);

    [Fact]
    public void A_line_with_its_own_amount_is_no_rest_of_a_word() =>
        Assert.Equal(3, Lines(Read("Suppe\n\n250 g Linsen\n1 l Brühe -\nsalz 10 g\n\nLinsen 40 Minuten kochen.\n")).Length);

    [Theory]
    [InlineData("Käsespätzle\nBewertung: 4,6 von 5 (98)\n\n400 g Mehl\n4 Eier\n")]
    [InlineData("Leek tart\nRating: 4.8 / 5\n\n400 g flour\n4 eggs\n")]
    [InlineData("Tarta\nValoración: 4,8 de 5\n\n400 g de harina\n4 huevos\n")]
    [InlineData("Revista de la casa, nº 7\n\nTARTA\nPara 4 personas\n\n400 g de harina\n4 huevos\n")]
    public void Votes_and_numbers_of_issues_count_no_food(string card) => Assert.Equal(2, Read(card).Components.Sum(c => c.Ingredients.Length));

    [Theory]
    [InlineData("Omelette\n\nEggs, 7\n400 g flour\n")]
    [InlineData("Omelette\n\n7 eggs\n400 g flour\n")]
    public void Counts_stay_counts(string card) => Assert.Equal(2, Read(card).Components.SelectMany(c => c.Ingredients).Count(l => l.Foods.Any(f => f.Amount is 7 or 400)));

    private static Dish Read(string card) => Told.Read(card);

    private static string[] Lines(Dish d) => [.. Told.Lines(d).Select(l => l.TrimStart(':', ' ').TrimEnd())];
}
