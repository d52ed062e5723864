using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>How cooks head their parts: with what the part makes, with other signs than a colon, with bullets, numbers and small pictures; each beside what looks like it. Readings as a cook gives them: common practice, no source.</summary>
public sealed class HeadKindTests
{
    [Theory]
    [InlineData("Rolls\n\nSAUCE – 1 litre\nTomatoes 400 g\nOnion 120 g\n\nFILLING – 900 g\nChicken breast 650 g\nCoriander 20 g\n\nMethod\nBake for 15 minutes.", "SAUCE - 1 litre: 400 g Tomatoes|SAUCE - 1 litre: 120 g Onion|FILLING - 900 g: 650 g Chicken breast|FILLING - 900 g: 20 g Coriander")]
    [InlineData("Layer cake\n\nSponge ........... 400 g\n  Butter ......... 200 g\n  Sugar .......... 200 g\n\nBake 25 min at 170°C.", "Sponge - 400 g: 200 g Butter|Sponge - 400 g: 200 g Sugar")]
    [InlineData("Tarts\n\nSweet pastry .......... 540 g\nbutter 240 g\nsoft flour 300 g\n\nBake 25 min at 170°C.", "Sweet pastry - 540 g: 240 g butter|Sweet pastry - 540 g: 300 g soft flour")]
    [InlineData("ÎLES\n\n1/ Crème anglaise – 1 kg\nLait entier 700 g\nJaunes 160 g\n\n2/ Caramel\nSucre 150 g\nEau 40 g\n\nCuire 6 min.", "Crème anglaise - 1 kg: 700 g Lait entier|Crème anglaise - 1 kg: 160 g Jaunes|Caramel: 150 g Sucre|Caramel: 40 g Eau")]
    public void A_name_with_its_total_over_a_list_heads_it_and_weighs_nothing(string card, string lines) => Assert.Equal(lines.Split('|'), Lines(Read(card)));

    [Theory]
    [InlineData("Shortbread\n\nButter – 250 g\nFlour – 125 g\nSugar – 125 g\n\nBake 40 minutes.")]
    [InlineData("Shortbread\n\nButter ........ 250 g\nFlour ......... 375 g\nSugar ......... 125 g\n\nBake 40 minutes.")]
    public void The_first_item_of_a_list_with_strokes_stays_an_item(string card) => Assert.Equal(3, Assert.Single(Read(card).Components).Ingredients.Sum(l => l.Foods.Count(f => f.Grams > 0)));

    [Fact]
    public void The_same_name_over_its_work_is_the_same_part()
    {
        Dish d = Read("Rolls\n\nSAUCE – 1 litre\nTomatoes 400 g\nOnion 120 g\n\nFILLING – 900 g\nChicken breast 650 g\nCoriander 20 g\n\nSAUCE\nSimmer the tomatoes for 25 minutes.\nFILLING\nShred the chicken and mix with the coriander.");

        Assert.Equal(["SAUCE - 1 litre: Simmer the tomatoes for 25 minutes.", "FILLING - 900 g: Shred the chicken and mix with the coriander."], Steps(d));
        Assert.Equal(4, Lines(d).Length);
    }

    [Theory]
    [InlineData("Supper\n\nStuffing - 200 g breadcrumbs, 2 apples (grated), 60 g butter.\nGravy - 30 g flour, 300 ml cider.\n\nRoast for 40 minutes.", "Stuffing: 200 g breadcrumbs|Stuffing: 2 piece apples|Stuffing: 60 g butter|Gravy: 30 g flour|Gravy: 300 ml cider")]
    [InlineData("Goulash\n\nThe stew. 1.2 kg beef chuck, in large cubes; 800 g onions, sliced; 60 g lard.\n\nThe dumplings. 300 g stale bread, cubed; 200 ml milk; 2 eggs.\n\nStew for 2 hours.", "The stew: 1.2 kg beef chuck|The stew: 800 g onions|The stew: 60 g lard|The dumplings: 300 g stale bread|The dumplings: 200 ml milk|The dumplings: 2 piece eggs")]
    [InlineData("Sandwiches\n\nCOOKIE • butter 150 g • sugar 180 g • flour 230 g\nBake 11 minutes at 170°C.\n\nFINISH • peanuts 80 g\nFreeze 2 hours.", "COOKIE: 150 g butter|COOKIE: 180 g sugar|COOKIE: 230 g flour|FINISH: 80 g peanuts")]
    [InlineData("まかない 10人前\n\n豚汁 : 豚バラ肉 500g、大根 600g、味噌 180g\nおにぎり : 米 900g、塩 20g\n\n20分煮る。", "豚汁: 500 g 豚バラ肉|豚汁: 600 g 大根|豚汁: 180 g 味噌|おにぎり: 900 g 米|おにぎり: 20 g 塩")]
    public void A_name_before_a_list_on_its_line_is_told_by_a_dash_a_stop_a_dot_or_a_colon(string card, string lines) => Assert.Equal(lines.Split('|'), Lines(Read(card)));

    [Theory]
    [InlineData("Salad\n\nHam - 120 g, diced\nPeas - 200 g, frozen\n\nToss and serve.", 2)]
    [InlineData("Salad\n\nHake - 8 x 140 g portions, skin on\nPeas - 200 g\n\nToss and serve.", 2)]
    public void A_food_and_its_amount_behind_a_dash_is_one_item(string card, int items) => Assert.Equal(items, Assert.Single(Read(card).Components).Ingredients.Length);

    [Fact]
    public void Small_pictures_before_names_and_items_say_nothing()
    {
        Dish d = Read("🌽 Cornbread\n🥚 2 eggs\n250 g cornmeal\n\n🍯 Honey butter\n100 g butter\n30 g honey\n\n👩‍🍳 Method\nBake 22 minutes.");

        Assert.Equal("Cornbread", d.Title);
        Assert.Equal([": 2 piece eggs", ": 250 g cornmeal", "Honey butter: 100 g butter", "Honey butter: 30 g honey"], Lines(d));
    }

    [Theory]
    [InlineData("Dumplings\n\n1. Dough\n   300 g flour\n   155 g water\n2. Filling\n   400 g pork mince\n3. Dip\n   4 tbsp vinegar\n   1 tbsp chilli oil\n\nKnead 6 minutes.", "Dip: 4 tbsp vinegar")]
    [InlineData("Beef\n\n1. Beef\n- Beef cheek: 8.5 kg\n- Salt: 85 g\n\n2. Celeriac puree\n- Celeriac: 6 kg\n- Butter: 400 g\n\nProcess\nBraise 3 h at 140 °C.", "Celeriac puree: 6 kg Celeriac")]
    public void A_numbered_name_in_a_row_of_parts_heads_its_list_though_it_may_be_work(string card, string line) => Assert.Contains(line, Lines(Read(card)));

    [Fact]
    public void Numbered_work_over_what_it_takes_stays_work()
    {
        Dish d = Read("Pancakes\n\n1. Whisk\n- 200 g flour\n- 2 eggs\n2. Rest\n- 1 hour\n3. Fry\n- 30 g butter");

        Assert.Single(d.Components);
    }

    [Fact]
    public void A_card_whose_every_line_is_a_bullet_has_bulleted_heads_where_its_method_is_one()
    {
        Dish d = Read("* PULPO A LA BRASA (6 pax)\n* Pulpo\n* 2 kg pulpo\n* 50 ml aceite de oliva\n* Parmentier\n* 800 g patata\n* 150 g mantequilla\n* Elaboración\n1. Cocer el pulpo 45 min.\n2. Cocer la patata 30 min.");

        Assert.Equal(["Pulpo: 2 kg pulpo", "Pulpo: 50 ml aceite de oliva", "Parmentier: 800 g patata", "Parmentier: 150 g mantequilla"], Lines(d));
        Assert.Equal(6, Assert.Single(d.Yields).Amount);
        Assert.Equal([": Salt", ": Pepper"], Read("Soup\n\n- 300 g leeks\n- Salt\n- 200 g potatoes\n- Pepper\n- 1 l stock\n\nSimmer 20 minutes.").Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Where(f => f.Amount is null).Select(f => ": " + f.Food));
    }

    [Fact]
    public void What_stands_right_under_to_serve_is_served_and_names_no_part() =>
        Assert.Equal(["Mole: 200 g cacahuates", "Mole: 700 ml caldo de pollo", "Para servir:   Arroz blanco", "Para servir: 2 tbsp ajonjolí"], Lines(Read("Mole\n\nMole\n200 g de cacahuates\n700 ml de caldo de pollo\n\nPara servir\nArroz blanco\n2 cdas. de ajonjolí\n\n1) Freír la salsa 10 minutos.")));

    [Fact]
    public void A_list_that_tells_amounts_last_may_begin_with_a_count_of_any_food() =>
        Assert.Equal(["Fumet: 12 piece Cabezas de carabinero", "Fumet: 150 g Cebolla", "Arroz: 320 g Arroz bomba", "Arroz: 0.3 g Azafrán"], Lines(Read("ARROZ (4 pax)\n\nFumet\nCabezas de carabinero 12\nCebolla 150 g\n\nArroz\nArroz bomba 320 g\nAzafrán 0,3 g\n\nElaboración\nCocer 16 min.")));

    [Theory]
    [InlineData("Confit\n\nCuisses de canard 4\nGros sel 60 g\nGraisse de canard 800 g\n\nCuire 6 heures.", ": 4 piece Cuisses de canard")]
    [InlineData("シフォンケーキ\n\n【生地】\n薄力粉 70g\n\n【メレンゲ】\n卵白 4個分\n砂糖 50g\n\n【作り方】\n4分泡立てる。", "メレンゲ: 4 piece 卵白")]
    [InlineData("Lunch\n\nMarie rose: 1 l mayonnaise, 500 ml ketchup\n6 lettuces\nPaprika, cress to garnish\n60 slices brown bread\n\nMix and serve.", "Marie rose:   Paprika")]
    public void The_first_of_a_list_and_what_a_garnish_is_are_no_names(string card, string line) => Assert.Contains(line, Lines(Read(card)));

    [Fact]
    public void A_side_sauce_told_behind_the_method_is_a_part() =>
        Assert.Equal(["Sauce: 2 tbsp mustard", "Sauce: 1 piece egg yolk", "Sauce: 150 ml oil"], Lines(Read("GRAVLAX\n\n1 kg salmon\n60 g salt\n\nCure for 48 hours in the fridge.\nSlice thinly.\nSauce: 2 tbsp mustard, 1 egg yolk, 150ml oil")).Skip(2));

    [Fact]
    public void Work_behind_a_label_stays_work() =>
        Assert.Equal(2, Steps(Read("GRAVLAX\n\n1 kg salmon\n60 g salt\n\nCure for 48 hours in the fridge.\nSauce: 20 minutes on a low heat, stirring, then cool")).Length);

    [Fact]
    public void The_name_over_the_only_list_is_the_title()
    {
        Dish d = Read("Gulasch\n1 kg Rindfleisch, 800 g Zwiebeln, 500 ml Brühe\n\nFleisch anbraten und 2 Stunden schmoren.");

        Assert.Equal("Gulasch", d.Title);
        Assert.Equal([": 1 kg Rindfleisch", ": 800 g Zwiebeln", ": 500 ml Brühe"], Lines(d));
    }

    [Theory]
    [InlineData("Croquetas\nPara unas 30 croquetas\n\n100 g mantequilla\n1 l leche\n\nCocer 15 minutos.", 30)]
    [InlineData("SATAY SAUCE (batch for 40)\n\n500 g peanuts\n400 ml coconut milk\n\nBlend 3 minutes.", 40)]
    [InlineData("Fish pie mix - 12 ptns\n\n500 g cod\n400 ml milk\n\nPoach 8 minutes.", 12)]
    public void A_yield_is_told_beside_the_title_or_under_it(string card, double amount) => Assert.Equal(amount, Assert.Single(Read(card).Yields).Amount);

    [Fact]
    public void In_a_card_with_marked_heads_a_count_goes_on_in_its_list() =>
        Assert.Equal(["Slaw: 3 cup red cabbage", "Shrimp: 2 tsp smoked paprika", "Shrimp: 8 piece corn tortillas"], Lines(Read("## Tacos\n\n**Slaw**\n\n3 cups shredded red cabbage\n\n**Shrimp**\n\n2 teaspoons smoked paprika\n8 corn tortillas, warmed\n\n**Directions**\n\n1. Sear for 2 minutes.")));

    [Theory]
    [InlineData("900 g", 1)]
    [InlineData("850 g", 0)]
    [InlineData("1 litre", 0)]
    [InlineData("400 g", 0)]
    public void A_total_beside_a_name_is_held_against_its_lines(string total, int remarks) =>
        Assert.Equal(remarks, Read($"Rolls\n\nFILLING – {total}\nChicken breast 650 g\nCoriander 200 g\n\nBake for 15 minutes.").Remarks.Count(r => r.Kind == "sum mismatch"));
}
