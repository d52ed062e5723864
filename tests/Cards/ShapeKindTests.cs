using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Which lines of a whole card are foods, steps, names and remarks, where the card does not say so: each kind beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class ShapeKindTests
{
    private static double?[] Minutes(Dish d) => [.. d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times).Select(t => t.MinutesMin)];

    private static string[] Foods(Dish d) => [.. d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => f.Food)];

    [Theory]
    [InlineData("Broth\n\nIngredients:\n2 kg bones\n3 carrots\nsalt, bay\n\nRoast the bones 40 min. Cover with water, bring to the boil, skim.\nSeason and strain.\n", 2, 4)]
    [InlineData("Broth\n\nIngredients\n- 2 kg bones\n- 3 carrots\n\nRoast the bones for 40 minutes. Add the carrots. Serve.\n", 1, 2)]
    [InlineData("Velouté\n\nIngrédients\n1 kg de potiron\n1 oignon\nSel\n\nDans une cocotte, faire fondre l'oignon 5 min. Ajouter le potiron, couvrir d'eau.\nCuire 25 min à couvert.\n", 2, 3)]
    [InlineData("Plinsen\n\nZutaten\n250 g Mehl\n500 ml Milch\nButter zum Ausbacken\n\nMehl und Milch verrühren und 30 Minuten quellen lassen. In Butter ausbacken.\nMit Apfelmus servieren.\n", 2, 3)]
    [InlineData("Tortilla\n\nIngredientes:\n6 huevos\n500 g de patatas\n\nPelar las patatas. Freír a fuego lento 20 minutos. Batir los huevos y cuajar.\n", 1, 2)]
    [InlineData("Ragù\n\nIngredienti\n500 g di macinato\n1 cipolla\nSoffriggere la cipolla. Unire la carne e rosolare bene. Cuocere 2 ore a fuoco basso.\n", 1, 2)]
    [InlineData("肉豆腐\n\n材料(2人分)\n牛肉 200g\n豆腐 1丁\n\n豆腐を切る。鍋に油を熱し、牛肉を炒める。\n醤油を加えて10分煮る。\n", 2, 2)]
    public void Sentences_of_work_behind_a_list_are_the_method(string card, int steps, int foods)
    {
        Dish d = Read(card);

        Assert.Equal(steps, Steps(d).Length);
        Assert.Equal(foods, Foods(d).Length);
        Assert.NotEmpty(Minutes(d));
    }

    [Theory]
    [InlineData("Cake\n\nIngredients\n250 g flour.\nButter for greasing the tin.\nFlour for dusting.\n\nGrated zest of one lemon.\nChopped almonds to decorate.\n\nBeat the butter until pale, 5 min. Bake 45 min at 180 °C.\n", "flour,Butter,Flour,lemon,almonds")]
    [InlineData("Kuchen\n\nZutaten\n250 g Mehl.\nButter zum Einfetten.\nSemmelbrösel zum Bestreuen.\n\nDie Butter schaumig rühren. 45 Minuten backen.\n", "Mehl,Butter,Semmelbrösel")]
    [InlineData("Curry\n\nIngredients\n1 kg chicken\n\nFor the paste\n2 chillies\nroasted peanuts\n\nPound the paste. Simmer 20 min.\n", "chicken,chillies,peanuts")]
    public void What_a_food_is_for_is_no_method(string card, string foods) => Assert.Equal(foods.Split(','), Foods(Read(card)));

    [Theory]
    [InlineData("Compote\n\n500 g cherries\n80 g sugar\n\nWarm the cherries to 40 °C, rain in the sugar, boil 2 min. Cool. Keeps 1 week.\n", 168)]
    [InlineData("## Sponge\n- 200 g flour\n- 6 eggs\n\nWhip the eggs 8 min, fold in the flour, bake 12 min at 170 °C. Keeps 2 days in the fridge.\n", 48)]
    [InlineData("Crema\n1 l leche\n8 yemas\n200 g azúcar\n\nInfusionar la leche 15 min. Cocer a 84 ºC. Se conserva 3 días en cámara. Quemar con azúcar.\n", 72)]
    [InlineData("Parfait\n\n500 g livers\n300 g butter\n\nMethod\nBlend the livers 4 min. Bake at 110 °C. Keeps 5 days in the fridge. Rest overnight.\n", 120)]
    public void A_paragraph_that_says_how_long_it_keeps_is_still_work(string card, double hours)
    {
        Dish d = Read(card);

        Assert.NotEmpty(Minutes(d));
        Assert.Equal([hours], d.Components.SelectMany(c => c.Keeps).Select(k => k.Hours ?? 0));
        Assert.DoesNotContain(d.Components.SelectMany(c => c.Notes).Concat(d.Notes), n => n.Text.Contains("min", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("Tart\n\n500 g flour\n\nServes 8. Keeps 3 days in a tin.\n\nBake 20 min.\n", 1)]
    [InlineData("Tart\n\n500 g flour\n\nThis is my aunt's tart. Keeps 3 days.\n\nBake 20 min.\n", 1)]
    [InlineData("Rice\n\n200 g rice\n1 onion\n\nFry the onion 10 min. Keep warm for 5 minutes. Pour 200 ml of stock over.\n", 3)]
    public void Remarks_stay_remarks_and_keeping_warm_is_work(string card, int steps) => Assert.Equal(steps, Steps(Read(card)).Length);

    [Fact]
    public void Letters_and_stars_before_japanese_lines_name_a_group_and_no_part()
    {
        Dish d = Read("丼\n\n材料(2人分)\n卵 3個\nA だし汁 150ml\nA 醤油 大さじ2\n☆酒 大さじ1\n★薄力粉 50g\n(B)砂糖 小さじ2\nC｜みりん 大さじ1\n ｜酢 小さじ1\n油 適量\n\n作り方\n1. Aを入れ、3分煮る。\n");

        Assert.Equal(["卵", "だし汁", "醤油", "酒", "薄力粉", "砂糖", "みりん", "酢", "油"], Foods(d));
        Assert.Equal([null, "A", "A", "☆", "★", "B", "C", "C", null], d.Components.SelectMany(c => c.Ingredients).Select(l => l.Group));
    }

    [Fact]
    public void A_letter_over_a_list_still_heads_a_part() =>
        Assert.Equal(["A 生地", "B クリーム"], Read("ロール\n\nA 生地\n卵 4個\n砂糖 80g\n\nB クリーム\n生クリーム 200ml\n砂糖 15g\n\n1. 卵を泡立てる。\n").Components.Select(c => c.Name));

    [Fact]
    public void A_list_headed_for_the_part_and_its_method_under_the_bare_name_are_one_part()
    {
        Dish d = Read("# Set cream\n\n## Ingredients\n\n### For the cream\n- 500 g cream\n- 3 leaves gelatine\n\n### For the plums\n- 400 g plums\n- 100 g sugar\n\n## Method\n\n### Cream\n1. Soak gelatine 5 min.\n\n### Plums\n1. Bake with sugar 20 min at 150 °C.\n");

        Assert.Equal(["Cream", "Plums"], d.Components.Select(c => c.Name));
        Assert.Equal([1, 1], d.Components.Select(c => c.Steps.Length));
        Assert.Null(d.Components[1].Ingredients[0].Foods[0].FromComponent);
    }

    [Fact]
    public void Another_name_or_a_second_list_of_the_name_joins_nothing() =>
        Assert.Equal(["For the cream", "Caramel", "For the plums", "Plums"], Read("# Cups\n\n### For the cream\n- 500 g cream\n\n### Caramel\n1. Boil 5 min.\n\n### For the plums\n- 400 g plums\n\n### Plums\n- 30 g sugar\n\n1. Bake 20 min.\n").Components.Select(c => c.Name));

    [Theory]
    [InlineData("Pasta\n\nPer 4 persone: 320 g di spaghetti, 100 g di pancetta, 4 tuorli, sale e pepe.\n\nCuocere gli spaghetti 9 minuti.\n", "spaghetti,pancetta,tuorli,sale,pepe")]
    [InlineData("Nudeln\n\nFür 4 Personen: 500 g Nudeln, 200 g Speck, 3 Eier, Salz. Die Nudeln 8 Minuten kochen.\n", "Nudeln,Speck,Eier,Salz")]
    [InlineData("Gratin\n\nPour 6 : 1 kg de pommes de terre, 50 cl de crème, 2 œufs.\n\nCuire 50 minutes à 170 °C.\n", "pommes de terre,crème,œufs")]
    public void For_how_many_and_the_whole_list_in_one_sentence(string card, string foods)
    {
        Dish d = Read(card);

        Assert.Equal(foods.Split(','), Foods(d));
        Assert.Single(d.Yields);
        Assert.Single(Steps(d));
    }

    [Fact]
    public void For_how_many_before_a_sentence_lists_nothing() =>
        Assert.Equal(["leeks"], Foods(Read("Soup\n\nFor 4: a light starter, ready in 20 minutes, for hot days.\n\n500 g leeks\n\nBoil 20 min.\n")));

    [Theory]
    [InlineData("Cutlets\n\n4 veal cutlets\n200 g butter\nCoating: egg, flour, breadcrumbs\n\nFry 3 min.\n", "Coating:   egg,Coating:   flour,Coating:   breadcrumbs")]
    [InlineData("Croquetas\n\n150 g mantequilla\n1 l leche\n\nRebozado: huevo, harina, pan rallado\n\nFreír 2 min.\n", "Rebozado:   huevo,Rebozado:   harina,Rebozado:   pan rallado")]
    public void Foods_without_a_figure_behind_the_name_of_a_part_are_its_list(string card, string lines) => Assert.Equal(lines.Split(','), Lines(Read(card))[^3..]);

    [Theory]
    [InlineData("Contains: milk, wheat, egg")]
    [InlineData("Allergens: milk, wheat, egg")]
    [InlineData("Sauce: whisk until thick, then pass")]
    public void What_it_holds_and_what_is_done_is_no_list(string line) => Assert.Equal(2, Foods(Read($"Cutlets\n\n4 veal cutlets\n200 g butter\n\n{line}\n\nFry 3 min.\n")).Length);

    [Fact]
    public void A_part_on_one_line_behind_the_steps_of_another_has_its_foods() =>
        Assert.Contains("For the blini: 5 g yeast", Lines(Read("Tartare\n\n400g trout\n1 shallot\nDice the trout. Season.\n\nFor the blini: 100g flour, 150ml milk, 1 egg, 5g yeast\nmix, leave 1h\n")));

    [Fact]
    public void The_first_line_of_a_sheet_of_names_and_figures_is_a_food_and_what_is_poured_is_weighed()
    {
        Assert.Equal([": 500 g Dark choc", ": 400 g Cream", ": 50 g Glucose"], Lines(Read("Glaze\nDark choc 500\nCream 400\nGlucose 50\n\nBoil the cream, blend.\n")));
        Assert.Equal([": 300 g vinegar", ": 200 g water", ": 2 piece cucumbers"], Lines(Read("Pickle\n\n300 vinegar\n200 water\n2 cucumbers\n\nBoil 2 min.\n")));
        Assert.Equal(["Menu 2: 500 g Cream", "Menu 2: 100 g Butter"], Lines(Read("Lunch\n\nMenu 2\nCream 500\nButter 100\n\nBoil 2 min.\n")));
    }

    [Fact]
    public void Two_columns_of_one_list_are_all_its_foods()
    {
        Dish d = Read("Stew\n\n2 tbsp oil                  1 tsp oregano\n2 onions, chopped           2 x 400g cans tomatoes\n500g beef mince             salt & pepper\n\nFry 8 mins.\n");

        Assert.Equal(["oil", "onions", "beef mince", "oregano", "tomatoes", "salt", "pepper"], Foods(d));
    }

    [Fact]
    public void Two_sizes_side_by_side_are_no_two_foods() =>
        Assert.DoesNotContain("eggs", Foods(Read("Cake\n\n2 eggs            4 eggs\n100 g sugar       200 g sugar\n80 g flour        160 g flour\n\nBake 20 min.\n")).Skip(3));

    [Theory]
    [InlineData("Ramen\n\nTare\n- 200 ml soy sauce\n- 100 ml mirin\nBoil 3 min.\n", 1)]
    [InlineData("# Choux\n\n## Crème\n- 500 g de lait\n\n1. Cuire 2 min.\n\n## Finition\n- 300 g de fondant\n\nGlacer à 35 °C.\n", 2)]
    [InlineData("Pain\nFarine : 1 kg\nLait : 600 g\n\nPétrir 4 min.\nCuisson : 35 min à 190 °C.\n", 2)]
    [InlineData("Pain\nCuisson : 35 min\nFarine : 1 kg\nLait : 600 g\n\nPétrir 4 min.\n", 1)]
    public void A_short_sentence_of_work_under_its_list_is_a_step(string card, int steps) => Assert.Equal(steps, Steps(Read(card)).Length);

    [Theory]
    [InlineData("2 shallots, glass of white wine, 200 g cold butter (diced), few drops lemon juice, salt & white pepper", "shallots,white wine,butter,lemon juice,salt,white pepper")]
    [InlineData("2 onions, finely chopped, 250 g beef, pinch of salt", "onions,beef,salt")]
    public void Measures_without_a_figure_among_amounts_on_one_line_are_foods(string line, string foods) => Assert.Equal(foods.Split(','), Foods(Read($"Sauce\n\n{line}\n\nReduce by half.\n")));

    [Fact]
    public void What_is_done_to_a_food_on_one_line_is_no_food() =>
        Assert.Equal(["trout fillets", "onions"], Foods(Read("Fish\n\n4 trout fillets, 150 g each, skin on\n2 onions, peeled, sliced\n\nFry 5 min.\n")));

    [Fact]
    public void Foods_without_an_amount_in_a_row_of_a_table_head_nothing()
    {
        Assert.Equal(["Kartoffeln", "Sahne", "Salz", "Pfeffer", "Muskat"], Foods(Read("# Gratin\n\n| Menge | Zutat |\n|---|---|\n| 1 kg | Kartoffeln |\n| 400 ml | Sahne |\n| | Salz, Pfeffer, Muskat |\n\n1. Backen 40 Min.\n")));
        Assert.Equal(["Belag"], Read("# Gratin\n\n| Menge | Zutat |\n|---|---|\n| | Belag |\n| 1 kg | Kartoffeln |\n| 400 ml | Sahne |\n\n1. Backen 40 Min.\n").Components.Select(c => c.Name));
    }

    [Theory]
    [InlineData("ショート\n・卵 2個\n・砂糖 60g\nデコレーション\n・生クリーム 200ml\n\n1. 5分泡立てる。\n", "デコレーション:", 1)]
    [InlineData("Cake\n- 2 eggs\n- 60 g sugar\nsifted with flour\n- 200 ml cream\n\n1. Whip 5 min.\n", "sifted", 0)]
    public void A_bare_name_between_bullets_heads_what_is_under_it(string card, string head, int lines) => Assert.Equal(lines, Lines(Read(card)).Count(l => l.StartsWith(head, StringComparison.Ordinal)));

    [Fact]
    public void The_one_cell_over_a_table_is_the_title() =>
        Assert.Equal("Chocolate tart", Read("| Chocolate tart |\n| Dark chocolate | 300 g |\n| Cream | 250 ml |\n\nBake at 120 °C for 30 min.\n").Title);
}
