namespace Coulisse.Cards.Tests;

/// <summary>Lists told in one line or one paragraph, and rates told over a whole list, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class RunInKindTests
{
    private static string[] Shares(Dish d) => [.. d.Components.SelectMany(c => c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{c.Name}: {f.Amount}{(f.Percent is { } p ? $"{p} % of {f.PercentOf}" : "")} {f.Food}")))];

    [Fact]
    public void A_rate_over_a_list_is_of_each_line_and_ends_with_it()
    {
        Dish d = Told.Read("Confit duck leg\nYield: 20 pcs\n\nDry cure (per kg of duck)\n18 g coarse salt\n2 g black pepper\n\n20 duck legs à 280 g\n2 kg duck fat\n\nCure the legs 12–24 hours in the fridge, rinse, dry.");
        Assert.Equal(["Dry cure (per kg of duck): 1.8 % of duck coarse salt", "Dry cure (per kg of duck): 0.2 % of duck black pepper", ": 20 duck legs", ": 2 duck fat"], Shares(d));
        Assert.Contains(d.Doubts, q => q.Question.StartsWith("“18 g coarse salt”", StringComparison.Ordinal) && q.Candidates.Any(c => c.Text.StartsWith("100.8 g", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("Cure per kg of meat:", "- 25 g salt\n- 4 g sugar", "2.5 % of meat salt")]
    [InlineData("Seasoning per kg:", "- 12 g salt\n- 2 g pepper", "1.2 % of  salt")]
    [InlineData("Por kilo de carne:", "- 25 g de sal\n- 4 g de azúcar", "2.5 % of carne de sal")]
    [InlineData("Beize pro kg Fleisch:", "- 25 g Salz\n- 4 g Zucker", "2.5 % of Fleisch Salz")]
    public void A_label_with_a_rate_is_over_the_lines_under_it(string label, string list, string want) =>
        Assert.Contains(Shares(Told.Read($"# Ham\n\n{label}\n{list}\n\n## Ham\n- 4 kg pork leg, boned\n\n1. Rub in and keep at 3 °C for 21 days.")), s => s.Contains(want, StringComparison.Ordinal));

    [Fact]
    public void What_stands_behind_a_list_of_one_line_is_not_of_it()
    {
        Dish d = Told.Read("# Foie gras mi-cuit\n\n- 1 lobe de foie gras de canard (600 g)\n- Assaisonnement au kilo : 12 g de sel, 2 g de poivre, 2 g de sucre\n- 3 cl d'armagnac");
        Assert.Equal([": 1 lobe de foie gras de canard", ": 3 armagnac", "Assaisonnement au kilo: 1.2 % of  sel", "Assaisonnement au kilo: 0.2 % of  poivre", "Assaisonnement au kilo: 0.2 % of  sucre"], Shares(d));
    }

    [Theory]
    [InlineData("# T\n\n## Brine (per litre)\n- 1 l water\n- 60 g salt\n\n1. Boil.", "Brine (per litre): 60 salt")]
    [InlineData("# T\n\n## Dough (per kg)\n- 600 g flour\n- 400 g water\n\n1. Mix.", "Dough (per kg): 600 flour")]
    [InlineData("# T\n\n## Dry cure (per kg of duck)\n- 136.8 g coarse salt, in all\n\n## Duck\n- 5 kg duck legs\n\n1. Rub.", "Dry cure (per kg of duck): 136.8 coarse salt")]
    [InlineData("# T\n\n## Sausage (12 € per kg)\n- 60 g salt\n\n1. Mix.", "Sausage (12 € per kg): 60 salt")]
    public void A_batch_an_answer_and_a_price_are_no_rate(string card, string want) => Assert.Contains(want, Shares(Told.Read(card)));

    [Theory]
    [InlineData("Flour 400 g, icing sugar 150 g, butter 200 g, eggs 100 g.", 4)]
    [InlineData("400 g flour, 150 g icing sugar, 200 g butter, 100 g eggs", 4)]
    [InlineData("2 heads little gem, 100 g pea shoots, 1 pomegranate, 50 g walnuts, vinaigrette (see below)", 5)]
    [InlineData("Flour 400 g, butter 200 g, eggs 100 g, nutmeg", 4)]
    public void A_list_in_one_paragraph_is_a_list(string paragraph, int foods) =>
        Assert.Equal(foods, Told.Read($"# Lemon tart\n\n## Pâte sucrée\n{paragraph}\n\nCream butter and sugar, add eggs, then flour. Chill 2 h.").Components[0].Ingredients.SelectMany(l => l.Foods).Count());

    [Theory]
    [InlineData("Add 400 g flour, 150 g sugar, 200 g butter and knead.")]
    [InlineData("Bake at 160 °C, turn after 10 min, rest 20 min, 30 min in all.")]
    [InlineData("We sold 40 tarts, 20 flans, 12 cakes last week")]
    public void Work_and_talk_are_no_list(string paragraph) =>
        Assert.Equal(2, Told.Lines(Told.Read($"# Lemon tart\n\n## Pâte sucrée\n- 400 g flour\n- 200 g butter\n\n{paragraph}")).Length);

    [Fact]
    public void Strokes_part_the_foods_behind_a_label() =>
        Assert.Equal(["BÉCHAMEL: 120 g butter", "BÉCHAMEL: 150 g flour", "BÉCHAMEL: 1 l milk", "BÉCHAMEL: 200 g Ibérico ham", "BÉCHAMEL:   nutmeg"], Told.Lines(Told.Read("# Croquetas\n\nBÉCHAMEL: 120 g butter / 150 g flour / 1 L milk / 200 g Ibérico ham / nutmeg\n\nMelt the butter, add flour, cook 5 min, add milk.")));

    [Fact]
    public void Numbered_layers_are_parts()
    {
        Dish d = Told.Read("# Trifle\n\nServes 8\n\nLayer 1: 200 g sponge, 50 ml sherry\nLayer 2: 300 g raspberries, 5 leaves gelatine\nLayer 3: 500 ml custard\n\n1. Layer all in a bowl.\n2. Chill 2 h.");
        Assert.Equal(["Layer 1: 200 g sponge", "Layer 1: 50 ml sherry", "Layer 2: 300 g raspberries", "Layer 2: 5 leaf gelatine", "Layer 3: 500 ml custard"], Told.Lines(d));
        Assert.Equal(2, Told.Steps(d).Length);
    }

    [Fact]
    public void Numbered_work_is_no_part() =>
        Assert.Equal(["Cake"], Told.Read("# Cake\n\n## Cake\n- 200 g flour\n- 100 g sugar\n\nStep 1: whisk 100 g sugar, 2 eggs for 5 min\nStep 2: fold in 200 g flour").Components.Select(c => c.Name));
}
