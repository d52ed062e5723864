using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>What a part takes told in a sentence with a verb: "For the dough you need 500 g flour and …"; beside it orders that open alike. Readings as a cook gives them: common practice, no source.</summary>
public sealed class PartSentenceKindTests
{
    [Theory]
    [InlineData("Cinnamon buns\n\nFor the dough you need 1 kg strong flour, 500 ml milk and 20 g salt.\nFor the filling you'll need 200 g butter and 200 g brown sugar.\n\nMix the dough for 10 minutes.\n", "For the dough: 1 kg strong flour|For the dough: 500 ml milk|For the dough: 20 g salt|For the filling: 200 g butter|For the filling: 200 g brown sugar")]
    [InlineData("Bienenstich\n\nFür den Teig braucht man 500 g Mehl, 250 ml Milch und 1 Ei.\nFür die Creme werden 500 ml Milch und 40 g Stärke benötigt.\n\nTeig 8 Minuten kneten.\n", "Für den Teig: 500 g Mehl|Für den Teig: 250 ml Milch|Für den Teig: 1 piece Ei|Für die Creme: 500 ml Milch|Für die Creme: 40 g Stärke")]
    [InlineData("Tarte aux pommes\n\nPour la pâte il faut 250 g de farine, 125 g de beurre et 1 œuf.\nPour le sirop, il faut 100 g de sucre.\n\nCuire 35 minutes à 180 °C.\n", "Pour la pâte: 250 g farine|Pour la pâte: 125 g beurre|Pour la pâte: 1 piece œuf|Pour le sirop: 100 g sucre")]
    [InlineData("Empanadas\n\nPara la masa hacen falta 500 g de harina, 150 g de mantequilla y 10 g de sal.\nPara el relleno se necesitan 600 g de ternera, 3 cebollas y 2 huevos.\n\nAmasar 10 minutos.\n", "Para la masa: 500 g harina|Para la masa: 150 g mantequilla|Para la masa: 10 g sal|Para el relleno: 600 g ternera|Para el relleno: 3 piece cebollas|Para el relleno: 2 piece huevos")]
    [InlineData("Maritozzi\n\nPer l'impasto servono 1 kg di farina manitoba, 450 ml di latte e 4 uova.\nPer lo sciroppo occorrono 200 g di zucchero e 200 ml di acqua.\n\nImpastare per 18 minuti.\n", "Per l'impasto: 1 kg farina manitoba|Per l'impasto: 450 ml latte|Per l'impasto: 4 piece uova|Per lo sciroppo: 200 g zucchero|Per lo sciroppo: 200 ml acqua")]
    [InlineData("あんぱん\n\n生地には強力粉500g、砂糖60gを使う。\nフィリングにはあんこ400g、くるみ50gを使います。\n\n生地を15分こねる。\n", "生地: 500 g 強力粉|生地: 60 g 砂糖|フィリング: 400 g あんこ|フィリング: 50 g くるみ")]
    public void The_verb_stands_between_the_part_and_its_list(string card, string lines) => Assert.Equal(lines.Split('|'), Lines(Read(card)));

    [Theory]
    [InlineData("Stew\n\nFor 10 people you need 2 kg beef and 1 kg onions.\n\nBrown the beef.\nSimmer for 2 hours.\n", 10, ": 2 kg beef|: 1 kg onions")]
    [InlineData("Nudeln\n\nFür 4 Personen braucht man 500 g Mehl, 5 Eier und 10 g Salz.\n\nMehl und Eier 10 Minuten kneten.\n", 4, ": 500 g Mehl|: 5 piece Eier|: 10 g Salz")]
    [InlineData("Gratin\n\nPour 6 personnes il faut 1 kg de carottes et 500 ml de lait.\n\nCuire 40 minutes à 180 °C.\n", 6, ": 1 kg carottes|: 500 ml lait")]
    [InlineData("Arroz\n\nPara 6 personas hacen falta 600 g de arroz y 2 l de agua.\n\nCocer 18 minutos.\n", 6, ": 600 g arroz|: 2 l agua")]
    [InlineData("Risotto\n\nPer 4 persone servono 320 g di riso e 1 l di acqua.\n\nCuocere 18 minuti.\n", 4, ": 320 g riso|: 1 l acqua")]
    public void Behind_those_who_eat_the_verb_leads_the_list_of_the_dish(string card, double guests, string lines)
    {
        Dish d = Read(card);

        Assert.Equal((guests, "portions"), (Assert.Single(d.Yields).Amount, d.Yields[0].Unit));
        Assert.Equal(lines.Split('|'), Lines(d));
    }

    [Fact]
    public void No_word_of_the_sentence_is_lost() =>
        Assert.All(Read("Buns\n\nFor the dough you need 1 kg flour and 500 ml milk.\n\nMix 10 minutes.\n").Components[0].Ingredients, l => Assert.Equal("you need", l.Group));

    [Theory]
    [InlineData("For the mackerel take 40 g of salt mixed with 20 g of sugar; cure 25 minutes.")]
    [InlineData("For the sauce take 200 ml of the stock and boil for 10 minutes.")]
    [InlineData("For the best crust use 2 pans.")]
    [InlineData("For 10 people you need 2 hours.")]
    public void An_order_that_opens_so_names_no_part(string line) =>
        Assert.DoesNotContain(Read($"Stew\n\n2 kg beef\n1 kg onions\n\nBrown the beef.\n{line}\n").Components, c => c.Name.StartsWith("For", StringComparison.Ordinal));

    [Fact]
    public void Work_that_goes_on_behind_the_verb_stays_one_sentence() =>
        Assert.DoesNotContain(Read("Für meine Rouladen nehme ich 4 Rouladen, bestreiche sie mit 2 EL Senf und belege sie mit 8 Scheiben Speck. Aufrollen und in 2 EL Butterschmalz 8 Minuten anbraten.").Components, c => c.Name.StartsWith("Für", StringComparison.Ordinal));
}
