using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Words of a line that mean one thing or another, and totals without a unit; each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class LineSenseKindTests
{
    private static string[] Line(string line, string lang) => [.. CardReader.ReadLine(line, lang).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}{(f.Percent is { } p ? $" {p} %" : "")}"))];

    [Theory]
    [InlineData("noix hachées", "fr", "  noix")]
    [InlineData("2 noix", "fr", "2 piece noix")]
    [InlineData("6 noix de St Jacques", "fr", "6 piece noix de St Jacques")]
    [InlineData("noix de beurre", "fr", "1 knob beurre")]
    [InlineData("1 noix de beurre", "fr", "1 knob beurre")]
    [InlineData("12 coquilles St Jacques", "fr", "12 piece coquilles St Jacques")]
    [InlineData("1 l de potage St Germain", "fr", "1 l potage St Germain")]
    [InlineData("8 St Jacques", "de", "8 piece St Jacques")]
    [InlineData("3 St Zwiebeln", "de", "3 piece Zwiebeln")]
    [InlineData("4 St. Eier", "de", "4 piece Eier")]
    [InlineData("1 gr. Zwiebel", "de", "1 piece Zwiebel")]
    [InlineData("2 gr. Eier", "de", "2 piece Eier")]
    [InlineData("1 gr. Bund Petersilie", "de", "1 bunch Petersilie")]
    [InlineData("1 gr. Safran", "de", "1 g Safran")]
    [InlineData("10 gr. Salz", "de", "10 g Salz")]
    [InlineData("200 gr. Mehl", "de", "200 g Mehl")]
    [InlineData("Mehl 200 gr.", "de", "200 g Mehl")]
    [InlineData("Eggs 50% 500g", "en", "500 g Eggs 50 %")]
    [InlineData("Eau 65 % 650 g", "fr", "650 g Eau 65 %")]
    [InlineData("Cream 35% 500 g", "en", "500 g Cream 35%")]
    [InlineData("Salt butter 82% 250 g", "en", "250 g Salt butter 82%")]
    [InlineData("olives, almonds", "en", "  olives", "  almonds")]
    [InlineData("herbs, parsley", "en", "  herbs")]
    [InlineData("Salt, pepper, 2 bay leaves, thyme", "en", "  Salt", "  pepper", "2 piece bay leaves", "  thyme")]
    [InlineData("1 cipolla, sedano, carota, sale", "it", "1 piece cipolla", "  sedano", "  carota", "  sale")]
    [InlineData("Salz, Pfeffer, 1 Prise Zucker und Muskat", "de", "  Salz", "  Pfeffer", "1 pinch Zucker", "  Muskat")]
    [InlineData("1 lemon, zest, juice", "en", "1 piece lemon")]
    [InlineData("200 g chocolate, milk, dark", "en", "200 g chocolate")]
    public void A_word_is_read_by_what_stands_beside_it(string line, string lang, params string[] foods) => Assert.Equal(foods, Line(line, lang));

    [Theory]
    [InlineData("no nuts", "en")]
    [InlineData("no nuts, no sesame", "en")]
    [InlineData("sans noix", "fr")]
    [InlineData("ohne Nüsse", "de")]
    [InlineData("ohne Nüsse und Ei", "de")]
    [InlineData("senza noci", "it")]
    [InlineData("sin frutos secos", "es")]
    [InlineData("ナッツなし", "ja")]
    public void What_is_left_out_is_no_food(string line, string lang) => Assert.Equal(LineKind.Note, CardReader.ReadLine(line, lang).Kind);

    [Theory]
    [InlineData("no-salt butter 20 g", "en")]
    [InlineData("without-egg pasta, 200 g", "en")]
    [InlineData("200 g Nudeln ohne Ei", "de")]
    [InlineData("種なしオリーブ 50g", "ja")]
    public void A_food_that_goes_without_is_a_food(string line, string lang) => Assert.Equal(LineKind.Ingredient, CardReader.ReadLine(line, lang).Kind);

    [Fact]
    public void A_food_that_is_a_verb_as_well_opens_no_step()
    {
        Dish d = Read("Stew\n\n2 kg beef\nSalt, pepper, 2 bay leaves, thyme\n4 carrots\n\nSimmer 3 hours.\n");

        Assert.Equal([": 2 kg beef", ":   Salt", ":   pepper", ": 2 piece bay leaves", ":   thyme", ": 4 piece carrots"], Lines(d));
        Assert.Single(d.Components[0].Steps);
    }

    [Fact]
    public void Shares_that_the_weights_bear_out_are_told_apart_from_the_names()
    {
        Dish d = Read("Brioche\nFlour 100% 1000g\nEggs 50% 500g\nButter 40% 400g\nSalt 2% 20g\nMix 10 min. Prove 2 h.\n");

        Assert.Equal([": 1000 g Flour", ": 500 g Eggs", ": 400 g Butter", ": 20 g Salt"], Lines(d));
        Assert.Equal([100, 50, 40, 2], d.Components[0].Ingredients.Select(l => l.Foods[0].Percent));
    }

    [Fact]
    public void How_rich_a_food_is_stays_in_its_name() =>
        Assert.Equal([": 500 g Cream 35%", ": 400 g Chocolate 70%", ": 50 g Butter 82%"], Lines(Read("Ganache\nCream 35% 500 g\nChocolate 70% 400 g\nButter 82% 50 g\nBlend 2 min.\n")));

    [Theory]
    [InlineData("# Dough\n\n| Ingredient | Weight |\n|---|---|\n| Bread flour | 1000 |\n| Water | 650 |\n| Salt | 20 |\n| Total | {0} |\n\n1. Mix 10 min.\n")]
    [InlineData("# Teig\n\n| Zutat | Menge |\n|---|---|\n| Mehl | 1000 |\n| Wasser | 650 |\n| Salz | 20 |\n| Summe | {0} |\n\n1. 10 min kneten.\n")]
    [InlineData("Dough\nBread flour 1000\nWater 650\nSalt 20\nTotal {0}\n\nMix 10 min.\n")]
    public void A_total_without_a_unit_is_held_against_figures_without_one(string card)
    {
        Assert.Single(Read(card.Replace("{0}", "1800", StringComparison.Ordinal)).Remarks, r => r.Kind == "sum mismatch");
        Assert.DoesNotContain(Read(card.Replace("{0}", "1670", StringComparison.Ordinal)).Remarks, r => r.Kind == "sum mismatch");
    }

    [Fact]
    public void A_total_of_pieces_is_no_sum_of_weights() =>
        Assert.DoesNotContain(Read("Dough\nBread flour 1000 g\nWater 650 g\nSalt 20 g\nTotal 1800\n\nMix 10 min.\n").Remarks, r => r.Kind == "sum mismatch");
}
