using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Lists in one line parted by bars or dashes, and numbered names over lists that tell their amounts last. Readings as a cook gives them: common practice, no source.</summary>
public sealed class PartedListTests
{
    private static string Foods(string card)
    {
        Dish? dish = CardReader.Read(new CardText(card)).Match<Dish?>(d => d, _ => null);
        Assert.NotNull(dish);
        return string.Join(" | ", dish.Components.Select(c => $"{c.Name}: {string.Join(", ", c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}")))}"));
    }

    [Theory]
    [InlineData("100 g pudding rice / 1 litre whole milk / 60 g sugar / 1 vanilla pod, split / knob of butter / nutmeg")]
    [InlineData("100 g pudding rice - 1 litre whole milk - 60 g sugar - 1 vanilla pod, split - knob of butter - nutmeg")]
    public void A_list_in_one_line_is_all_its_foods(string list)
    {
        string read = Foods($"Rice pudding\n\n{list}\n\nBake for 2 hours.\n");
        Assert.All(["100 g pudding rice", "whole milk", "60 g sugar", "vanilla pod", "butter", "nutmeg"], f => Assert.Contains(f, read, StringComparison.Ordinal));
        Assert.DoesNotContain("/", read, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_measures_of_one_food_part_nothing()
    {
        string read = Foods("Cake\n\n250 g / 9 oz / 2 cups flour\n4 eggs - 2 whole - 2 yolks\n\nBake for 2 hours.\n");
        Assert.Contains("250 g flour", read, StringComparison.Ordinal);
        Assert.Equal(2, read.Split(", ").Length);
    }

    [Theory]
    [InlineData("1. POLPO\npolpo decongelato kg 2,5\nalloro, 3 foglie\n\n2. CREMA\nceci secchi g 500, ammollati 12 ore\nsale\n", "POLPO: 2.5 kg polpo decongelato, 3 leaf alloro | CREMA: 500 g ceci secchi,   sale")]
    [InlineData("1. Polpo\npolpo decongelato 2,5 kg\nalloro, 3 foglie\n\n2. Crema\nceci secchi 500 g\nsale\n", "Polpo: 2.5 kg polpo decongelato, 3 leaf alloro | Crema: 500 g ceci secchi,   sale")]
    public void A_number_and_a_name_head_the_list_under_them(string card, string want) => Assert.Equal(want, Foods(card));

    [Fact]
    public void A_numbered_food_a_page_broke_is_one_food() => Assert.Contains("20 ml Olive oil", Foods("1. Flour 250 g\n2. Olive\noil 20 ml\n3. Sugar 30 g\n"), StringComparison.OrdinalIgnoreCase);

    [Theory]
    [InlineData("8 portions as a main course", 8)]
    [InlineData("4 Portionen als Hauptgang", 4)]
    [InlineData("6 raciones como entrante", 6)]
    [InlineData("Ausbeute: 3 Brote à ca. 900 g", 3)]
    [InlineData("8 moulds of 150 ml", 8)]
    [InlineData("献立カード 12 / 10名様分", 10)]
    public void What_it_makes_is_no_food(string line, double want)
    {
        Dish? dish = CardReader.Read(new CardText($"Dish\n{line}\n\n500 g Mehl\n15 g salt\n\nBake 10 minutes.\n")).Match<Dish?>(d => d, _ => null);
        Assert.Equal(want, Assert.Single(dish!.Yields).Amount);
        Assert.Equal(2, dish.Components.Sum(c => c.Ingredients.Length));
    }

    [Theory]
    [InlineData("Cuocere i ceci 1 ora e 30 con l'aglio.", "it", 90)]
    [InlineData("Cook 1 hour and 20 eggs.", "en", 60)]
    public void A_round_number_behind_an_hour_is_minutes_where_no_noun_follows(string step, string lang, double want) => Assert.Equal(want, Assert.Single(CardReader.ReadStep(step, lang).Times).MinutesMin);
}
