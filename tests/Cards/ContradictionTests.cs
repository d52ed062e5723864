using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>What a card says against itself, by kind, and beside each kind the cards that only look like it. Our own examples.</summary>
public sealed class ContradictionTests
{
    private static string[] Remarks(string card) => [.. Read(card.Replace("¶", "\n", StringComparison.Ordinal)).Remarks.Select(r => $"{r.Kind}: {r.What}")];

    [Theory]
    [InlineData("# Carrot cake¶¶- 300 g carrots¶- 200 g flour¶- 200 g sugar¶¶1. Beat the eggs and sugar 5 min, fold in the flour, carrots and walnuts.", "eggs (egg", "walnuts (walnut")]
    [InlineData("# A¶¶- 300 g milk¶- 50 g sugar¶¶1. Heat the milk, whisk in the yolks and sugar.", "yolks (egg", null)]
    [InlineData("# A¶¶- 300 g quince¶- 50 g sugar¶¶1. Boil the quince with the sugar, add toasted hazelnuts.", "hazelnuts (hazelnut", null)]
    [InlineData("# Coffee walnut cake¶¶- 200 g butter¶- 200 g sugar¶- 200 g flour¶- 4 eggs¶¶1. Cream the butter and sugar, beat in the eggs, fold in the flour and walnuts.", "walnuts", null)]
    [InlineData("# A¶¶- 300 g rye flour¶- 50 g sugar¶¶1. Mix the flour and sugar. Add the milk and mix.", "milk (milk", null)]
    public void A_food_no_list_holds_is_said_with_its_allergen(string card, string one, string? two)
    {
        string[] said = Remarks(card);

        Assert.All(said, s => Assert.StartsWith("used unlisted", s, StringComparison.Ordinal));
        Assert.Equal(two is null ? 1 : 2, said.Length);
        Assert.Contains(one, said[0], StringComparison.Ordinal);
        Assert.Contains(two ?? one, said[^1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("# A¶¶- 300 g quince¶- 50 g sugar¶¶1. Add water, salt and pepper to the quince and sugar and boil.")]
    [InlineData("# A¶¶- 300 g quince¶- 2 lemons¶- 3 eggs¶¶1. Boil the quince. Add the zest and juice of the lemons, whisk in the yolks and fold in the whites.")]
    [InlineData("# A¶¶- 300 g carrots¶- 20 g coriander¶¶1. Boil the carrots, stir in the cilantro.")]
    [InlineData("# A¶¶- 100 g unsalted butter¶- 100 g caster sugar¶- 100 g plain flour¶¶1. Cream the butter and sugar, fold in the flour.")]
    [InlineData("# A¶¶## Caramel¶- 300 g sugar¶- 90 g double cream¶¶1. Melt the sugar, add the cream.¶¶## Cream¶- 200 g milk¶- 90 g egg yolks¶¶1. Heat the milk, whisk in the egg yolks, add the caramel and mix in the custard.")]
    [InlineData("# A¶¶- 200 g gruyère¶- 100 g crème fraîche¶- 90 g shallots¶¶1. Mix the cheese and cream, add the onions.")]
    [InlineData("# Teig¶¶- 500 g Weizenmehl Type 550¶- 300 g Wasser¶- 10 g Salz¶¶1. Mehl, Wasser und Salz mischen, 10 Minuten kneten.")]
    [InlineData("# A¶¶- 500 g strong flour¶- 300 g milk¶- 10 g salt¶¶1. Mix everything. Add the dough to the bowl and beat until smooth.")]
    [InlineData("# A¶¶- 90 g sour cherries¶- 90 g honey¶¶1. Mix the cherries and honey and serve with toast and couscous. Serve with sour cream and smoked salmon.")]
    [InlineData("# A¶¶- 3 eggs, separated¶- 100 g sugar (60 g for the cake, 40 g for the top)¶¶1. Whisk the yolks with 60 g sugar.¶2. Whisk the whites with 40 g sugar, fold in.")]
    [InlineData("# A¶¶- 90 g walnuts¶- 90 g honey¶¶1. Toss the nuts with the honey.")]
    [InlineData("# A¶¶- 8 chicken thighs¶- 90 g honey¶¶1. Toss the chicken with the honey. Add to the pan until brown.")]
    public void What_is_listed_by_another_name_made_or_in_every_kitchen_is_not_said(string card) => Assert.DoesNotContain(Remarks(card), s => s.StartsWith("used", StringComparison.Ordinal));

    [Theory]
    [InlineData("Mix the rice and cheese.", false)]
    [InlineData("Mix the rice and stock.", true)]
    public void A_general_word_uses_what_is_listed_by_its_kind(string step, bool said) =>
        Assert.Equal(said, Remarks($"# A¶¶## B¶- 200 g rice¶- 50 g Parmesan¶- 300 g stock¶¶1. Boil the rice in the stock. {step}").Any(s => s.StartsWith("listed unused", StringComparison.Ordinal)));

    [Theory]
    [InlineData("# Bread¶¶- 500 g flour¶- 3250 g water¶- 10 g salt¶¶1. Mix flour, water and salt. Knead 10 min. Bake at 220 °C for 35 min.", "3250 g of liquid to 500 g")]
    [InlineData("# Bread¶¶- 500 g flour¶- 32 g water¶- 10 g salt¶¶1. Mix flour, water and salt. Knead 10 min. Bake at 220 °C for 35 min.", "32 g of moist foods to 500 g")]
    [InlineData("# Sponge¶¶- 200 g flour¶- 200 g sugar¶- 2 l milk¶- 4 eggs¶¶1. Beat eggs and sugar, add flour and milk. Bake at 170 °C 30 min.", "2000 g of liquid to 200 g")]
    [InlineData("# Risotto¶¶- 320 g risotto rice¶- 100 ml stock¶- 50 g butter¶¶1. Toast the rice in the butter, ladle in the stock, simmer 18 min.", "100 g of liquid to 320 g")]
    public void Liquid_far_from_what_the_method_can_take_is_said(string card, string figures) => Assert.Contains(figures, Assert.Single(Remarks(card)), StringComparison.Ordinal);

    [Theory]
    [InlineData("# Ciabatta¶¶- 500 g flour¶- 450 g water¶- 10 g salt¶¶1. Mix flour, water and salt. Knead 10 min. Bake at 220 °C for 35 min.")]
    [InlineData("# Shortcrust¶¶- 250 g flour¶- 125 g butter¶- 1 egg¶¶1. Rub flour and butter, add the egg, knead briefly.")]
    [InlineData("# Pasta¶¶- 400 g flour¶- 4 eggs¶¶1. Knead flour and eggs 10 min.")]
    [InlineData("# Bread¶¶- 500 g flour¶- 10 g salt¶¶1. Mix flour and salt with enough water. Knead 10 min.")]
    [InlineData("# Crêpes¶¶- 250 g flour¶- 600 g milk¶- 4 eggs¶¶1. Whisk flour, milk and eggs. Fry.")]
    [InlineData("# Clafoutis¶¶- 60 g flour¶- 300 g milk¶- 4 eggs¶¶1. Whisk flour, milk and eggs. Bake at 180 °C 35 min.")]
    [InlineData("# Tres leches cake¶¶- 120 g flour¶- 200 g sugar¶- 5 eggs¶- 700 g milk¶¶1. Beat eggs and sugar, fold in the flour. Bake at 180 °C 30 min. Soak with the milk.")]
    [InlineData("# Rice¶¶- 300 g rice¶- 50 ml cream¶¶1. Boil the rice in plenty of water, drain, add the cream.")]
    [InlineData("# Rice pudding¶¶- 120 g rice¶- 1 l milk¶¶1. Simmer the rice in the milk 40 min.")]
    [InlineData("# Pan¶¶| Zutat | Biga | Impasto |¶|---|---|---|¶| Farina | 800 g | 200 g |¶| Acqua | 360 g | 340 g |¶¶Impasto: unire biga e resto, impastare 12 minuti.")]
    public void Wet_doughs_batters_and_rice_in_other_water_are_not_said(string card) => Assert.DoesNotContain(Remarks(card), s => s.StartsWith("implausible", StringComparison.Ordinal));

    [Theory]
    [InlineData("Makes 12 rolls.", "Divide into 10 pieces.", "12 roll, this step makes 10")]
    [InlineData("Makes 24 pieces.", "Cut into 20 squares.", "24 piece")]
    [InlineData("Makes 24 pieces.", "Cut 5 × 4.", "makes 20")]
    [InlineData("Makes 12.", "Roll into 16 balls.", "makes 16")]
    [InlineData("Makes 56 bars.", "Cut 8 × 6.", "makes 48")]
    [InlineData("Makes 12 buns of 150 g.", "Shape into 12 balls.", "1800 g; the lines give 960 g")]
    [InlineData("Makes 2 kg.", "Bake the flour and water.", "is 2000 g; the lines give 960 g")]
    [InlineData("Makes 650 g.", "Knead the flour and water.", "")]
    [InlineData("Serves 8.", "Cut the cake into 6 slices.", "this step makes 6")]
    [InlineData("Makes 6 rolls.", "Divide into 6 pieces of 190 g.", "1140 g; the lines give 960 g")]
    public void A_yield_and_what_the_method_makes_are_held_together(string yield, string step, string figures)
    {
        string[] said = Remarks($"# A¶¶{yield}¶¶- 600 g flour¶- 360 g water¶¶1. Mix the flour and water.¶2. {step}");

        Assert.Equal(figures.Length == 0 ? [] : ["yield mismatch"], said.Select(s => s[..s.IndexOf(':')]));
        Assert.Contains(figures, said.FirstOrDefault() ?? "", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Makes 12 rolls.", "Divide into 12 pieces of 78 g.")]
    [InlineData("Makes 12 sandwiches.", "Cut into 24 pieces.")]
    [InlineData("Serves 6.", "Roll into 12 balls, two of each a guest.")]
    [InlineData("Serves 8.", "Cut the cake into 10 slices.")]
    [InlineData("Makes 12 rolls.", "Divide into 2 pieces. Cut each into 6 rolls.")]
    [InlineData("Makes 12 rolls.", "Divide the dough into 3 pieces. Shape into 4 rolls.")]
    [InlineData("Makes 900 g.", "Bake 35 min; it loses 60 g.")]
    [InlineData("Makes 12 rolls.", "Cut the butter into 10 pieces.")]
    [InlineData("Makes 12 rolls.", "Roll out to 5 × 4 cm.")]
    [InlineData("Makes 1 loaf.", "Cut into 10 slices.")]
    public void Two_of_each_halves_and_baking_loss_are_not_said(string yield, string step) =>
        Assert.DoesNotContain(Remarks($"# A¶¶{yield}¶¶- 600 g flour¶- 360 g water¶¶1. Mix the flour and water.¶2. {step}"), s => s.StartsWith("yield", StringComparison.Ordinal));

    [Theory]
    [InlineData("# A¶¶## Dough, 650 g¶- 400 g flour¶- 200 g water¶¶1. Mix flour and water.", "sum mismatch")]
    [InlineData("# A¶¶## B¶¶The dough, 650 g:¶¶- 400 g flour¶- 200 g water¶¶1. Mix flour and water.", "sum mismatch")]
    [InlineData("# A¶¶## Dough, 600 g¶- 400 g flour¶- 200 g water¶¶1. Mix flour and water.", null)]
    [InlineData("# A¶¶## Dough (450 g)¶- 400 g flour¶- 200 g water¶¶1. Mix flour and water.", null)]
    [InlineData("# A¶¶## Dough, 650 g¶- 400 g flour¶- 200 g water¶- 2 eggs¶¶1. Mix flour, water and eggs.", null)]
    [InlineData("# A¶¶## Dough, 24 cm¶- 400 g flour¶- 200 g water¶¶1. Mix flour and water.", null)]
    [InlineData("# A¶¶## B¶- 200 g sugar¶- 90 g milk¶¶1. Boil the milk with 300 g sugar.", "divided uses")]
    [InlineData("# A¶¶## B¶- 200 g sugar¶- 90 g milk¶¶1. Boil half the sugar with the milk.¶2. Melt three quarters of the sugar.", "divided uses")]
    [InlineData("# A¶¶## B¶- 200 g sugar¶- 90 g milk¶¶1. Boil half the sugar with the milk.¶2. Melt the other half of the sugar.", null)]
    [InlineData("# A¶¶## B¶- 200 g sugar¶- 90 g milk¶¶1. Boil the milk with 200 g sugar, dust with another 250 g sugar.", null)]
    [InlineData("# A¶¶## B¶- 200 g caster sugar¶- 150 g icing sugar¶- 90 g milk¶¶1. Boil the milk with 300 g sugar.", null)]
    [InlineData("# A¶¶## Base¶Makes 300 g.¶¶- 200 g sugar¶- 100 g milk¶¶1. Boil milk and sugar.¶¶## Top¶- 500 g Base¶- 20 g butter¶¶1. Melt Base and butter.", "divided uses")]
    [InlineData("# A¶¶## Base¶Makes 300 g.¶¶- 200 g sugar¶- 100 g milk¶¶1. Boil milk and sugar.¶¶## Top¶- 280 g Base¶- 20 g butter¶¶1. Melt Base and butter.", null)]
    public void Sums_of_headings_and_uses_are_held_to_the_list(string card, string? kind) => Assert.Equal(kind is null ? [] : [kind], Remarks(card).Select(s => s[..s.IndexOf(':')]));

    [Theory]
    [InlineData("| | Poolish | Dough | Total |¶|---|---|---|---|¶| Flour | 100 g | 600 g | 750 g |¶| Water | 100 g | 300 g | 400 g |", "add up to 700 g, the total column prints 750 g")]
    [InlineData("| | Poolish | Dough | Total |¶|---|---|---|---|¶| Flour | 100 g | 600 g | 700 g |¶| Water | 100 g | 300 g | 400 g |", null)]
    [InlineData("| | g | % |¶|---|---|---|¶| Flour | 1000 | 100 |¶| Water | 600 | 70 |¶| Salt | 20 | 2 |", "70 % of 1000 g is 700 g, the table prints 600 g")]
    [InlineData("| | g | % |¶|---|---|---|¶| Flour | 1000 | 100 |¶| Water | 705 | 70 |¶| Salt | 18 | 2 |", null)]
    [InlineData("| | g | % fat |¶|---|---|---|¶| Butter | 250 | 82 |¶| Milk | 500 | 3.5 |¶| Flour | 300 | 1 |", null)]
    [InlineData("| | Pieces | Price | Total |¶|---|---|---|---|¶| Flour | 2 | 3 | 6 |¶| Water | 4 | 1 | 4 |", null)]
    public void Total_and_percent_columns_are_held_to_their_rows(string table, string? figures)
    {
        string[] said = [.. Remarks($"# A¶¶{table}¶¶1. Mix everything.").Where(s => s.StartsWith("sum mismatch", StringComparison.Ordinal))];

        Assert.Equal(figures is null ? 0 : 1, said.Length);
        Assert.Contains(figures ?? "", said.FirstOrDefault() ?? "", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("40 g + 10 g butter, that is 60 g", true)]
    [InlineData("40 g + 10 g butter, that is 50 g", false)]
    public void A_sum_told_in_a_line_is_held_to_it(string line, bool said) => Assert.Equal(said, Remarks($"# A¶¶- 100 g flour¶- {line}¶¶1. Mix everything.").Length == 1);

    [Theory]
    [InlineData("500 g juice", "27.5 g gelatine", true)]
    [InlineData("500 g juice", "6 g gelatine", false)]
    [InlineData("1 kg juice", "0.3 g gelatine", true)]
    [InlineData("500 g juice", "40 leaves gelatine", true)]
    [InlineData("500 g juice", "5 leaves gelatine", false)]
    [InlineData("500 g juice", "30 g agar", true)]
    [InlineData("500 g juice", "4 g agar", false)]
    [InlineData("500 g juice", "30 g xanthan", true)]
    [InlineData("500 g juice", "2 g xanthan", false)]
    [InlineData("500 g juice", "100 g pectin", true)]
    [InlineData("500 g juice", "10 tbsp salt", true)]
    [InlineData("500 g juice", "1 tbsp salt", false)]
    [InlineData("500 g caster sugar", "30 g xanthan", false)]
    public void Shares_of_salt_and_of_what_sets_are_held_to_the_part_even_of_two_lines(string one, string two, bool said) =>
        Assert.Equal(said, Remarks($"# A¶¶## B¶- {one}¶- {two}¶¶1. Mix all the ingredients.").Length == 1);

    [Fact]
    public void Gelatine_in_its_own_water_and_what_is_chewed_hold_more()
    {
        Assert.Empty(Remarks("# A¶¶## Gelatine mass¶- 100 g water¶- 20 g gelatine¶¶1. Soak all the ingredients."));
        Assert.Empty(Remarks("# A¶¶## Marshmallow¶- 100 g water¶- 200 g sugar¶- 22 g gelatine¶¶1. Mix all the ingredients."));
    }
}
