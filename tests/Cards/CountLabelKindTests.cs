namespace Coulisse.Cards.Tests;

/// <summary>How many a card feeds by the label of a form, by a title that counts, and what only looks so. Readings as a cook gives them: common practice, no source.</summary>
public sealed class CountLabelKindTests
{
    private static string Yields(Dish dish) => string.Join(" | ", dish.Yields.Concat(dish.Components.SelectMany(c => c.Makes)).Select(y => FormattableString.Invariant($"{y.Amount} {y.Unit}")));

    [Theory]
    [InlineData("Coq au vin", "Nombre de couverts : 8", "2 kg poulet", "Cuire le poulet 2 heures.", "8 portions")]
    [InlineData("Coq au vin", "Nb de pièces : 24", "2 kg poulet", "Cuire le poulet 2 heures.", "24 pieces")]
    [InlineData("Coq au vin", "Nombre de couverts : 8   Temps : 2 h", "2 kg poulet", "Cuire le poulet 2 heures.", "8 portions")]
    [InlineData("Stew", "Number of covers: 12", "2 kg beef", "Braise the beef 2 hours.", "12 portions")]
    [InlineData("Stew", "No. of portions: 12", "2 kg beef", "Braise the beef 2 hours.", "12 portions")]
    [InlineData("Gulasch", "Anzahl Portionen: 10", "2 kg Rindfleisch", "Das Fleisch 2 Stunden schmoren.", "10 portions")]
    [InlineData("Gulasch", "Personenzahl: 10", "2 kg Rindfleisch", "Das Fleisch 2 Stunden schmoren.", "10 portions")]
    [InlineData("Guiso", "Nº de raciones: 8", "2 kg ternera", "Guisar la ternera 2 horas.", "8 portions")]
    [InlineData("Guiso", "Número de comensales: 8", "2 kg ternera", "Guisar la ternera 2 horas.", "8 portions")]
    [InlineData("Brasato", "Numero di coperti: 8", "2 kg manzo", "Brasare il manzo 2 ore.", "8 portions")]
    [InlineData("Brasato", "N. porzioni: 8", "2 kg manzo", "Brasare il manzo 2 ore.", "8 portions")]
    [InlineData("煮物", "人数：8名", "鶏肉 200g", "鶏肉を20分煮る。", "8 portions")]
    [InlineData("煮物", "仕込み数：40個", "鶏肉 200g", "鶏肉を20分煮る。", "40 個")]
    public void A_label_of_guests_or_pieces_is_the_yield_and_no_food(string title, string label, string food, string step, string want)
    {
        Dish dish = Told.Read($"# {title}\n\n{label}\n\n- {food}\n\n1. {step}\n");

        Assert.Equal(want, Yields(dish));
        Assert.Single(dish.Components.SelectMany(c => c.Ingredients));
    }

    [Theory]
    [InlineData("Number of eggs: 8")]
    [InlineData("Number of tins: 2")]
    public void What_is_no_guest_feeds_nobody(string line) => Assert.Equal("", Yields(Told.Read($"# Stew\n\n- 2 kg beef\n- {line}\n\n1. Braise the beef 2 hours.\n")));

    [Theory]
    [InlineData("(enough for 5kg thigh)", "")]
    [InlineData("Enough for 2 l of stock.", "")]
    [InlineData("Pour 8 personnes (doubler pour 16)", "8 portions")]
    [InlineData("Enough for 2 trays", "2 trays")]
    [InlineData("Enough for 12", "12 portions")]
    [InlineData("Note: for 20 people make 2.5 x", "")]
    [InlineData("For 40 people, double the recipe.", "")]
    [InlineData("Serves 8, double for 16", "8 portions")]
    [InlineData("For 8 people", "8 portions")]
    public void What_it_is_enough_for_or_is_multiplied_to_is_no_yield(string line, string want) => Assert.Equal(want, Yields(Told.Read($"# Rub\n\n- 50 g paprika\n- 30 g salt\n\n1. Mix the paprika and the salt.\n\n{line}\n")));

    [Fact]
    public void A_title_tells_what_it_is_enough_for_and_no_yield() => Assert.Equal("", Yields(Told.Read("Chicken marinade - enough for 5kg thigh\n\n500 g yoghurt\n50 g garlic\n\nMix.\n")));

    [Fact]
    public void A_label_over_the_title_leaves_it_one()
    {
        Dish dish = Told.Read("Nombre de couverts : 8\nCoq au vin\n\n2 kg poulet\n1 l vin\n\nCuire 2 heures.\n");

        Assert.Equal(("Coq au vin", "8 portions"), (dish.Title, Yields(dish)));
    }

    [Theory]
    [InlineData("Remarque : pour 20 personnes, faire 2,5 x")]
    [InlineData("Hinweis: für 20 Personen 2,5-fach ansetzen")]
    [InlineData("Nota: para 20 personas hacer 2,5 x")]
    [InlineData("Nota: per 20 persone fare 2,5 x")]
    [InlineData("注：20人分は2.5倍で作る")]
    public void In_other_languages_too(string line) => Assert.Equal("", Yields(Told.Read($"# {(line[0] == '注' ? "合わせ塩" : "Sal")}\n\n- {(line[0] == '注' ? "塩 30g" : "30 g sal")}\n\n{line}\n")));

    [Theory]
    [InlineData("焼き餃子 40個\n\n豚ひき肉 300g\nキャベツ 400g\n餃子の皮 40枚\n\n1. 混ぜる。\n2. 包んで焼く。\n", "焼き餃子 40個", "40 個", 3)]
    [InlineData("大福 12個\n材料\n白玉粉 100g\n砂糖 30g\n作り方\n混ぜて包む。\n", "大福 12個", "12 個", 2)]
    [InlineData("Gyoza 40 pieces\n\n300 g pork mince\n400 g cabbage\n\n1. Mix.\n2. Wrap and fry 6 min.\n", "Gyoza 40 pieces", "40 pieces", 2)]
    [InlineData("鶏もも肉 2枚\n\n醤油 大さじ2\nみりん 大さじ2\n\n1. 鶏肉を焼く。\n", "Untitled", "", 3)]
    [InlineData("卵 4個\n牛乳 500ml\n砂糖 100g\n\n1. 混ぜて焼く。\n", "Untitled", "", 3)]
    public void A_title_that_counts_tells_the_yield(string card, string title, string want, int lines)
    {
        Dish dish = Told.Read(card);

        Assert.Equal(title, dish.Title);
        Assert.Equal(want, Yields(dish));
        Assert.Equal(lines, dish.Components.Sum(c => c.Ingredients.Length));
    }
}
