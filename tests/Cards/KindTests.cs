using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Kinds of writing met on real cards, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class KindTests
{
    [Theory]
    [InlineData("Leek tart for 8", 8, "portions")]
    [InlineData("Navarin d'agneau (12 couverts)", 12, "portions")]
    [InlineData("Potage Parmentier 8 pers.", 8, "portions")]
    [InlineData("Käsekuchen, Ø 26 cm, für 12 Personen", 12, "portions")]
    [InlineData("Arroz con conejo para 6 personas", 6, "portions")]
    [InlineData("Coniglio alla ligure per 6 persone", 6, "portions")]
    [InlineData("肉じゃが 4人分", 4, "portions")]
    [InlineData("だし巻き卵 2本分", 2, "本")]
    [InlineData("Pimento cheese - makes 1 gallon", 1, "gallon")]
    [InlineData("Croquetas de jamón - 30 unidades", 30, "unidades")]
    public void A_title_that_tells_the_yield_stays_the_title(string title, double amount, string unit)
    {
        Dish d = Read(title + "\n\n250 g flour\n125 g butter\n\nMix well and bake 20 min at 180 °C.");

        Assert.Equal(title, d.Title);
        Assert.Contains(d.Yields, y => y.Amount == amount && y.Unit == unit);
        Assert.Equal([": 250 g flour", ": 125 g butter"], Lines(d));
    }

    [Theory]
    [InlineData("Serves 4")]
    [InlineData("Für 6 Personen")]
    [InlineData("Cuisson 20 min pour 4 personnes")]
    [InlineData("Enough for 6 people")]
    public void A_line_that_only_tells_the_yield_is_no_title(string line) => Assert.NotEqual(line, Read(line + "\n\n250 g flour\n125 g butter\n\nMix well and bake 20 min.").Title);

    [Fact]
    public void A_list_may_begin_with_pieces() =>
        Assert.Contains(": 12 piece Wachteleier", Lines(Read("Wachteleier, 12 Stück\n100 g Butter\n2 EL Öl\n\nAlles 5 Min. braten.")));

    [Fact]
    public void Two_lists_side_by_side_are_two_components()
    {
        Dish d = Read("Toffee pudding\n\nPudding                 Sauce\n500 g dates, stoned     400 g cream\n2 tsp bicarb            200 g butter\n6 eggs\n\nSoak the dates 30 min.");

        Assert.Equal(["Pudding: 500 g dates", "Pudding: 2 tsp bicarb", "Pudding: 6 piece eggs", "Sauce: 400 g cream", "Sauce: 200 g butter"], Lines(d));
    }

    [Fact]
    public void Without_names_two_lists_in_one_line_are_asked_and_a_name_before_its_amount_is_not()
    {
        Assert.Contains("two amounts", CardReader.ReadLineWithDoubts("2 tsp bicarb            200 g butter", "en").Doubts.Single().Question, StringComparison.Ordinal);
        Assert.Contains("two amounts", CardReader.ReadLineWithDoubts("Dark chocolate 64% 250g 1250g", "en").Doubts.Single().Question, StringComparison.Ordinal);
        Assert.Empty(CardReader.ReadLineWithDoubts("Butter, unsalted        200 g", "en").Doubts);
        Assert.Empty(CardReader.ReadLineWithDoubts("2 x 400 g tins tomatoes", "en").Doubts);
    }

    [Fact]
    public void A_head_of_guests_over_columns_counts_no_food()
    {
        Dish d = Read("Mousse\n\n                 10 pax    50 pax\nDark choc 64%     250g     1250g\nCream             400g     2kg\nEgg yolk           80g     400g\n\nWhip the cream. Fold, chill 4 hrs.");

        Assert.Equal([": 250 g Dark choc 64%", ": 400 g Cream", ": 80 g Egg yolk"], Lines(d));
        Assert.Contains(d.Yields, y => y.Amount == 10);
        Assert.Equal("50 pax", Assert.Single(d.Variants).Name);
    }

    [Fact]
    public void A_bakers_table_by_wide_gaps_keeps_its_foods()
    {
        Dish d = Read("Brioche\n\nIngrédients            1 kg de farine    %\nFarine T45             1000 g            100\nŒufs                   600 g             60\nSel fin                20 g              2\n\nPétrir 12 min.");

        Assert.Equal([": 1000 g Farine T45", ": 600 g Œufs", ": 20 g Sel fin"], Lines(d));
    }

    [Theory]
    [InlineData("Braise 2 h at I60C.", "160")]
    [InlineData("Bake 1O min at 180 °C.", "10")]
    public void Letters_for_digits_in_a_step_are_asked(string step, string meant) =>
        Assert.Contains(Read("# A\n\n- 200 g beef\n\n1. " + step).Doubts, q => q.Candidates.Any(c => c.Text == meant));

    [Theory]
    [InlineData("Boil 2l water 10 min.")]
    [InlineData("Add 5 g salt, cook 1 h at 160C.")]
    public void Litres_and_plain_figures_of_a_step_are_not(string step) => Assert.Empty(Read("# A\n\n- 200 g beef\n\n1. " + step).Doubts);

    [Theory]
    [InlineData("S0 g butter", 50, "g")]
    [InlineData("l00 ml wine", 100, "ml")]
    public void A_letter_before_a_digit_and_a_unit_is_read_and_asked(string line, double amount, string unit)
    {
        (IngredientLine read, System.Collections.Immutable.ImmutableArray<Doubt> doubts) = CardReader.ReadLineWithDoubts(line, "en");

        Assert.Equal((amount, unit), (read.Foods[0].Amount, read.Foods[0].Unit));
        Assert.Single(doubts);
    }

    [Theory]
    [InlineData("Bei 180 °C (Umluft 160) 40 Min. backen.", "de", "180 160fan")]
    [InlineData("Cuire 1 h à 180 °C, chaleur tournante à 160 °C.", "fr", "180 160fan")]
    [InlineData("cuocere coperto 1 ora e 20 a 160 °C", "it", "160")]
    [InlineData("Hornear 1 hora y 20 a 160 °C.", "es", "160")]
    [InlineData("Cook in fat at 82 °C core / 85 °C oven for 8 h.", "en", "82 85")]
    [InlineData("Bei 180 Grad (Gas Stufe 2-3) backen.", "de", "180")]
    public void Degrees_of_a_step(string step, string lang, string want) =>
        Assert.Equal(want, string.Join(' ', CardReader.ReadStep(step, lang).Temperatures.Select(t => FormattableString.Invariant($"{t.Celsius}{(t.Fan == true ? "fan" : "")}"))));

    [Fact]
    public void What_is_taken_of_a_food_is_a_line_and_no_step() =>
        Assert.Contains(": 1 piece orange", Lines(Read("Confit\n\n6 duck legs\n1.2 kg duck fat\nzest of 1 orange, in strips\n\nCook 8 h at 85 °C.")));
}
