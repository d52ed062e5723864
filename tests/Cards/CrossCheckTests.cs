using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Each contradiction is said with both figures; each near miss stays silent. Our own examples.</summary>
public sealed class CrossCheckTests
{
    private static string[] Remarks(string text) => [.. Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(text))).Value.Remarks.Select(r => $"{r.Kind}@{r.Line}: {r.What}")];

    [Theory]
    [InlineData("# A\n\n## B\n- 200 g quince\n- 5 g lime zest\n\n1. Boil the quince 20 min.", "listed unused@5", "lime zest")]
    [InlineData("# A\n\n## B\n- 200 g quince\n\n1. Boil the quince 20 min.\n2. Stir in the coconut cream.", "used unlisted@7", "coconut cream")]
    [InlineData("# A\n\n## B\n- 200 g quince\n- 50 g honey\n- Total: 260 g\n\n1. Boil quince and honey.", "sum mismatch@6", "add up to 250 g, the card prints 260 g")]
    [InlineData("# A\nServes 4\n\n## B\n- 200 g quince\n\n1. Boil the quince, set in 6 glasses.", "yield mismatch@7", "4 portions, this step makes 6")]
    [InlineData("# A\n\n## B\n- 95 g sugar, divided\n- 200 g egg white\n\n1. Whip the egg white with 65 g of the sugar.\n2. Fold in the remaining 40 g.", "divided uses@4", "95 g are listed, the steps use 105 g")]
    [InlineData("# A\n\n## B\n- 500 g/9 oz quince\n\n1. Boil the quince.", "measures clash@4", "500 g and 255.1 g")]
    [InlineData("# A\n\n## B\n- 500 g quince\n\n1. Roast the quince at 180 °C (400 °F) for 20 min.", "temperatures clash@6", "204")]
    [InlineData("# A\n\n## B\n- 500 g flour\n- 300 g milk\n- 8 g yeast\n\n1. Mix flour, milk and yeast. Bake at 22°C for 18 minutes.", "implausible@8", "22 °C")]
    [InlineData("# A\n\n## B\n- 500 g flour\n- 300 g milk\n- 100 g salt\n\n1. Mix flour, milk and salt.", "implausible@6", "11.1 %")]
    [InlineData("# A\n\n## B\n- 200 g juice\n- 50 g sugar\n- 20 g agar\n\n1. Boil juice, sugar and agar.", "implausible@6", "7.4 %")]
    [InlineData("# A\n\n| Food | Poolish | Dough | Total |\n|---|---|---|---|\n| Rye flour | 100 g | 200 g | 300 g |\n| Water | 100 g | 50 g | 150 g |\n| Sum | 200 g | 250 g | 470 g |\n\n1. Poolish: mix, leave 12 hours.\n2. Dough: knead everything.", "sum mismatch@7", "add up to 450 g, the card prints 470 g")]
    public void Contradictions_are_said_with_both_figures(string card, string where, string figures)
    {
        string remark = Assert.Single(Remarks(card));

        Assert.StartsWith(where, remark, StringComparison.Ordinal);
        Assert.Contains(figures, remark, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("# A\n\n## B\n- 200 g quinces\n- 5 g lime zest\n- 3 egg yolks\n\n1. Boil the quince 20 min, add zest and yolk.")]
    [InlineData("# A\n\n## B\n- 200 g quince\n- 5 g lime zest\n\n1. Mix everything.")]
    [InlineData("# A\n\n## B\n- 200 g quince\n\n1. Add water to the quince and boil.")]
    [InlineData("# A\n\n## B\n- 200 g quince\n- 50.4 g honey\n- Total: 250 g\n\n1. Boil quince and honey.")]
    [InlineData("# A\n\n## B\n- 200 g quince\n- 1 lemon\n- Total: 260 g\n\n1. Boil quince and lemon.")]
    [InlineData("# A\nServes 6\n\n## B\n- 200 g quince\n\n1. Boil the quince, set in 6 glasses.")]
    [InlineData("# A\nServes 4\n\n## B\n- 200 g quince\n\n1. Boil the quince in 2 pans.")]
    [InlineData("# A\n\n## B\n- 95 g sugar, divided\n- 200 g egg white\n\n1. Whip the egg white with 65 g of the sugar.\n2. Fold in the remaining 30 g.")]
    [InlineData("# A\n\n## B\n- 250 g/9 oz quince\n\n1. Boil the quince.")]
    [InlineData("# A\n\n## B\n- 500 g quince\n\n1. Roast the quince at 180 °C (350 °F) for 20 min.")]
    [InlineData("# A\n\n## B\n- 500 g flour\n- 300 g milk\n- 8 g yeast\n\n1. Mix flour, milk and yeast, prove at 26 °C for an hour. Bake at 220°C for 18 minutes.")]
    [InlineData("# A\n\n## Cure\n- 500 g trout\n- 100 g salt\n- 60 g sugar\n\n1. Cover the trout with salt and sugar.")]
    [InlineData("# A\n\n## B\n- 200 g juice\n- 50 g sugar\n- 2 g agar\n\n1. Boil juice, sugar and agar.")]
    [InlineData("# A\n\n## B\n- 200 g rye flour\n- 9 g baking powder\n- 90 g butter\n\n1. Sift, rub in the butter.")]
    [InlineData("# A\n\n## Quince gel\n- 200 g quince\n- 2 g agar\n\n1. Boil with the agar.")]
    [InlineData("# A\n\n## B\nMakes 56 bars.\n\n- 200 g quince\n\n1. Boil the quince. Cut 8 × 7 bars.")]
    [InlineData("# A\n\n## Purée\n- 710 g beetroot, roasted\n- 70 g apple juice\n- 7 g salt\n\n1. Roast the beets 85 min.\n2. Blend beet, juice and salt.")]
    [InlineData("# A\n\n## Layer\n- 500 g quark\n- 90 g sugar\n- 25 g cornflour\n- 5 g lemon zest\n\n1. Whisk till smooth.\n2. Pour over the hot sponge.")]
    [InlineData("# A\n\n## Teig\n- 200 g Semmelbrösel\n- 90 g Butter\n- 3 Eier\n\n1. Brösel mit Butter und Ei mischen.")]
    [InlineData("# A\n\n| Zutat | Vorteig | Teig |\n|---|---|---|\n| Roggenmehl | 200 g | 250 g |\n| Wasser | 200 g | 150 g |\n\nGesamtteig 800 g\n\n1. Vorteig 12 Stunden reifen lassen.\n2. Alles kneten.")]
    public void Near_misses_stay_silent(string card) => Assert.Empty(Remarks(card));

    [Fact]
    public void A_line_longer_than_any_step_is_said_and_nothing_of_it_is_lost()
    {
        string word = new('a', 120);
        string card = "# A\n\n## B\n- 200 g quince\n\n1. Boil the quince. " + string.Join(". ", Enumerable.Repeat(word, 60)) + ".";
        Dish d = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(card))).Value;

        Assert.Contains(d.Remarks, r => r is { Kind: "long line", Line: 6 });
        Assert.Equal(60, d.Components.Sum(c => c.Steps.Concat([]).Sum(s => Count(s.Text, word)) + c.Notes.Sum(n => Count(n.Text, word))));

        static int Count(string s, string w) => (s.Length - s.Replace(w, "", StringComparison.Ordinal).Length) / w.Length;
    }
}
