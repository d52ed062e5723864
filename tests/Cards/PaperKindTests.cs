using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Kinds of paper a fourth blind set showed, each beside what looks like it and is none: narrow pages, letters, pages of a site, notes without stops, columns of units, stages a step takes up. Readings as a cook gives them: common practice, no source.</summary>
public sealed class PaperKindTests
{
    [Fact]
    public void Lines_a_narrow_page_broke_are_one()
    {
        Dish d = Read("Braised short rib,\nceleriac purée\n\nShort rib\n2.4 kg short rib on\nthe bone\n750 ml red\nwine\n1.5 l veal stock\n\nCeleriac purée\n1 celeriac (about\n900 g), peeled\n400 g milk\n\nMethod\n1. Salt the ribs and leave over-\nnight in the fridge.\n\nPage 1 of 1\n");

        Assert.Equal("Braised short rib, celeriac purée", d.Title);
        Assert.Equal(["Short rib: 2.4 kg short rib on the bone", "Short rib: 750 ml red wine", "Short rib: 1.5 l veal stock", "Celeriac purée: 1 piece celeriac", "Celeriac purée: 400 g milk"], Lines(d));
        Assert.Equal(["Short rib: Salt the ribs and leave overnight in the fridge."], Steps(d));
    }

    [Fact]
    public void Lines_that_are_whole_stay_apart()
    {
        Dish d = Read("Thighs\n\n4 chicken thighs, skin on\nolive oil\n200 g flour\nsalt\n30 g butter\nwine\n");

        Assert.Equal([": 4 piece chicken thighs", ":   olive oil", ": 200 g flour", ":   salt", ": 30 g butter", ":   wine"], Lines(d));
    }

    [Fact]
    public void A_letter_names_nothing_and_its_sentences_are_no_items()
    {
        Dish d = Read("Hi chef,\nas promised, the ketchup from last autumn. Makes roughly 1.5 litres.\n\n2 kg flat mushrooms\n60 g salt\n250 ml cider vinegar\n\nSalt the mushrooms and leave them 24 hours.\nAdd the vinegar, simmer 30 min, strain.\n\nCheers, Ana\n");

        Assert.Equal([": 2 kg flat mushrooms", ": 60 g salt", ": 250 ml cider vinegar"], Lines(d));
        Assert.Equal(2, Steps(d).Length);
        Assert.Equal(1.5, Assert.Single(d.Yields).Amount);
        Assert.NotEqual("Hi chef,", d.Title);
    }

    [Fact]
    public void A_name_that_begins_as_a_greeting_does_is_a_title() => Assert.Equal("Ciao bella pizza", Read("Ciao bella pizza\n\n500 g flour\n300 g water\n").Title);

    [Fact]
    public void The_menu_and_the_votes_of_a_site_are_remarks()
    {
        Dish d = Read("Skip to content\nHome   Recipes   About\n★★★★★ 4.8 (36 ratings)\nSkillet Cornbread\nJump to Recipe   Print   Save\nIngredients\n1x  2x  3x\n2 cups cornmeal\n3 star anise\nInstructions\n1. Bake 25 minutes.\n");

        Assert.Equal("Skillet Cornbread", d.Title);
        Assert.Equal([": 2 cup cornmeal", ": 3 piece star anise"], Lines(d));
    }

    [Fact]
    public void A_note_of_work_goes_on_without_stops()
    {
        Dish d = Read("lamb neck, 12 covers\n\nneck fillet 3 kg\nonion x 4, rough chop\nlamb stock 2.5 l\n\ncolour hard, 4 min a side\neverything in, lid on, 150 fan, 3 hrs\nlift out, pass liquor, reduce by half\nhold at 65C\n\nonly for the party of the 12th\n");

        Assert.Equal([": 3 kg neck fillet", ": 4 piece onion", ": 2.5 l lamb stock"], Lines(d));
        Assert.Equal([": colour hard, 4 min a side", ": everything in, lid on, 150 fan, 3 hrs", ": lift out, pass liquor, reduce by half", ": hold at 65C"], Steps(d));
    }

    [Fact]
    public void A_column_of_units_holds_for_every_stage()
    {
        Dish d = Read("**Quiche**\n\n| Denrées | Unité | Fond | Garniture | Total |\n|---|---|---|---|---|\n| Beurre | kg | 0,125 | 0,050 | 0,175 |\n| Œufs | pièce | 1 | 3 | 4 |\n| Crème | l |  | 0,20 | 0,20 |\n\n1. Laisser reposer 30 min.\n");

        Assert.Equal("Quiche", d.Title);
        Assert.Equal(["Fond: 0.125 kg Beurre", "Fond: 1 piece Œufs", "Garniture: 0.05 kg Beurre", "Garniture: 3 piece Œufs", "Garniture: 0.2 l Crème"], Lines(d));
    }

    [Fact]
    public void The_name_of_a_stage_alone_between_rows_with_bars()
    {
        Dish d = Read("Baguette\n\nStage | g | %\nPoolish\nT65 flour | 300 | 30\nwater | 300 | 30\nDough\nT65 flour | 700 | 70\nsalt | 18 | 1.8\n\nMix the poolish, ferment 12 h at 20C.\nAdd the poolish and salt, mix 5 min.\n");

        Assert.Equal(["Poolish: 300 g T65 flour", "Poolish: 300 g water", "Dough: 700 g T65 flour", "Dough: 18 g salt"], Lines(d));
        Assert.Equal(["Poolish: Mix the poolish, ferment 12 h at 20C.", "Dough: Add the poolish and salt, mix 5 min."], Steps(d));
    }

    [Theory]
    [InlineData("# Loaf\n\n## Levain\n- 100 g rye\n- 20 g starter\n\n## Final dough\n- 900 g wheat\n- 20 g salt\n\n## Method\n1. Mix the levain and leave 12 h.\n2. Add the levain and mix 5 min.\n", "Final dough: Add the levain and mix 5 min.")]
    [InlineData("# Loaf\n\n## Levain\n- 100 g rye\n- 20 g starter\n\n## Final dough\n- 900 g wheat\n- 20 g salt\n\n## Method\n1. Mix the levain and leave 12 h.\n2. Feed the levain again after 6 h.\n", "Levain: Feed the levain again after 6 h.")]
    [InlineData("# Pan\n\n## Masa madre\n- 100 g de centeno\n- 60 g de agua\n\n## Masa final\n- 500 g de harina\n- 10 g de sal\n\n## Elaboración\n1. Refrescar la masa madre y esperar 4 horas.\n2. Incorporar la masa madre y amasar 4 min más.\n", "Masa final: Incorporar la masa madre y amasar 4 min más.")]
    [InlineData("# Zopf\n\n## Vorteig\n- 100 g Mehl\n- 20 g Hefe\n\n## Hauptteig\n- 400 g Dinkel\n- 80 g Butter\n\n## Zubereitung\n1. Vorteig ansetzen und 30 Min. gehen lassen.\n2. Mit dem Vorteig 8 Min. verkneten.\n", "Hauptteig: Mit dem Vorteig 8 Min. verkneten.")]
    public void A_stage_that_a_step_takes_up_is_not_where_it_is_made(string card, string want) => Assert.Equal(want, Steps(Read(card))[^1]);

    [Fact]
    public void A_list_led_into_by_words()
    {
        Dish d = Read("Whipped feta: you want 200 g feta, 120 g thick yoghurt, the zest of a lemon, 30 ml olive oil and a pinch of chilli. Blend everything for 3 minutes, pass and chill 1 hour. Keeps 5 days in the fridge.\n\nPickled grapes: 250 g grapes, 150 g white wine vinegar and 60 g sugar. Boil the vinegar and sugar, pour over the grapes and leave 2 hours.\n");

        Assert.Equal(["Whipped feta: 200 g feta", "Whipped feta: 120 g thick yoghurt", "Whipped feta: 1 piece lemon", "Whipped feta: 30 ml olive oil", "Whipped feta: 1 pinch chilli", "Pickled grapes: 250 g grapes", "Pickled grapes: 150 g white wine vinegar", "Pickled grapes: 60 g sugar"], Lines(d));
        Assert.Equal(2, Steps(d).Length);
        Assert.Equal(120, d.Components[0].Keeps[0].Hours);
    }

    [Fact]
    public void Japanese_lists_with_dots_and_spoons()
    {
        Dish d = Read("抹茶のケーキ\n\n15cm丸型1台分\n\n【生地】\n卵黄…3個分\n薄力粉…20g\n\n【たれ】\nしょうゆ　大さじ2\n粗塩　少々\n酒　大さじ1\n\n1 卵黄を混ぜる。\n2 160℃で40分焼く。\n");

        Assert.Equal(["生地: 3 piece 卵黄", "生地: 20 g 薄力粉", "たれ: 2 tbsp しょうゆ", "たれ:   粗塩", "たれ: 1 tbsp 酒"], Lines(d));
        Assert.Equal("台", Assert.Single(d.Yields).Unit);
    }

    [Fact]
    public void A_line_to_taste_under_a_heading_of_the_list_is_no_part()
    {
        Dish d = Read("Chowder\n\n## Ingredients\n\n- 3 leeks\n- 40 g butter\n- Salt and white pepper, to taste\n\n## Method\n\n1. Salt the leeks and sweat them 5 minutes.\n");

        Assert.Equal([": 3 piece leeks", ": 40 g butter", ":   Salt", ":   white pepper"], Lines(d));
        Assert.Single(Steps(d));
    }

    [Theory]
    [InlineData("Nussecken\n\nFür 1 Blech (ca. 40 Stück)\n\n300 g Mehl\n200 g Butter\n", "1 blech, 40 pieces")]
    [InlineData("Suppe\n\nFür 4 Personen\n\n300 g Mehl\n200 g Butter\n", "4 portions")]
    public void A_tray_feeds_no_one_portion(string card, string want) => Assert.Equal(want, string.Join(", ", Read(card).Yields.Select(y => FormattableString.Invariant($"{y.Amount} {y.Unit}"))));

    [Fact]
    public void A_pan_is_no_bread() =>
        Assert.DoesNotContain(Lines(Read("# Dal\n\nRinse 300 g red lentils.\nPut them in a pan with 1.2 litres water and 1 tsp turmeric.\nHeat 3 tbsp ghee in a small pan.\n")), l => l.EndsWith("pan", StringComparison.Ordinal));

    [Fact]
    public void A_column_that_names_the_part_of_each_row()
    {
        Dish d = Read("# Wedding\n\n| Component | Item | Qty | Unit | Note |\n|---|---|---|---|---|\n| Choux | Water | 500 | g | |\n| | Butter | 225 | g | diced |\n| Diplomat | Milk | 1 | L | |\n| | Yolk | 160 | g | |\n\n1. Choux: bake 30 min at 180C.\n");

        Assert.Equal(["Choux: 500 g Water", "Choux: 225 g Butter", "Diplomat: 1 l Milk", "Diplomat: 160 g Yolk"], Lines(d));
    }

    [Fact]
    public void The_last_column_may_name_it() =>
        Assert.Equal(["Mürbteig: 600 g Weizenmehl 405", "Quarkmasse: 2.5 kg Magerquark", "Quarkmasse: 12 piece Eier"], Lines(Read("# Käsekuchen\n\n| Menge | Zutat | Teil |\n|---|---|---|\n| 600 g | Weizenmehl 405 | Mürbteig |\n| 2,5 kg | Magerquark | Quarkmasse |\n| 12 Stk. | Eier | Quarkmasse |\n")));

    [Fact]
    public void Stages_with_their_unit_in_the_head_are_no_second_measure()
    {
        Dish d = Read("Rosemary focaccia, 2 trays\n\n| | % | Poolish (g) | Dough (g) |\n|---|---|---|---|\n| Flour 00 | 100 | 300 | 700 |\n| Water | 75 | 300 | 450 |\n| Salt | 2.2 | | 22 |\n\nPoolish: leave 12 h at 18C.\nDough: mix 6 min slow, 3 min fast, to 24C. Bulk 90 min.\n");

        Assert.Equal(["Poolish: 300 g Flour 00", "Poolish: 300 g Water", "Dough: 700 g Flour 00", "Dough: 450 g Water", "Dough: 22 g Salt"], Lines(d));
        Assert.Equal(["Poolish: Poolish: leave 12 h at 18C.", "Dough: Dough: mix 6 min slow, 3 min fast, to 24C. Bulk 90 min."], Steps(d));
        Assert.Equal("Rosemary focaccia, 2 trays", d.Title);
    }

    [Fact]
    public void Weights_in_two_measures_stay_one_amount() =>
        Assert.Equal([": 200 g cream"], Lines(Read("# Tart\n\n| Item | Weight (g) | Weight (oz) |\n|--|--|--|\n| cream | 200 | 7 |\n")));

    [Fact]
    public void A_row_of_one_cell_is_a_name_in_whatever_column()
    {
        Dish d = Read("Ham pithivier\n\nQty\tUnit\tIngredient\nFILLING\n400\tg\tham hock\n3\tea\tshallots\nPASTRY\n800\tg\tpuff pastry\n2\tea\tyolks\n");

        Assert.Equal(["FILLING: 400 g ham hock", "FILLING: 3 piece shallots", "PASTRY: 800 g puff pastry", "PASTRY: 2 piece yolks"], Lines(d));
    }

    [Fact]
    public void Japanese_tables_with_spoons_and_boxes() =>
        Assert.Equal(["鶏: 2 piece 鶏もも肉", "鶏: 2 tsp サラダ油", "たれ: 4 tbsp しょうゆ", "仕上げ:   白いりごま"], Lines(Read("鶏の照り焼き丼(4人分)\n\n| 材料 | 分量 |\n|---|---|\n| 【鶏】 | |\n| 鶏もも肉 | 2枚(600g) |\n| サラダ油 | 小さじ2 |\n| 【たれ】 | |\n| しょうゆ | 大さじ4 |\n| 【仕上げ】 | |\n| 白いりごま | 少々 |\n\n1. 焼く。\n")));

    [Fact]
    public void What_a_table_takes_to_taste_is_not_lost() =>
        Assert.Contains(Lines(Read("# Pasta\n\n| Ingrediente | Impasto | Ripieno |\n|---|---|---|\n| Farina | 400 g | |\n| Ricotta | | 250 g |\n| Sale | q.b. | q.b. |\n")), l => l.EndsWith("Sale", StringComparison.Ordinal));

    [Fact]
    public void Two_items_in_every_line_with_their_amounts_behind_them()
    {
        Dish d = Read("OYSTER DRESSINGS\n\nPonzu\nSoy sauce 200 ml        Mirin 60 ml\nRice vinegar 80 ml      Yuzu juice 120 ml\n\nPonzu: mix cold, steep 24 h in the fridge, strain.\n");

        Assert.Equal(["Ponzu: 200 ml Soy sauce", "Ponzu: 60 ml Mirin", "Ponzu: 80 ml Rice vinegar", "Ponzu: 120 ml Yuzu juice"], Lines(d));
        Assert.Empty(d.Doubts);
    }

    [Fact]
    public void With_the_amounts_in_front_they_may_be_two_lists_and_are_asked() =>
        Assert.NotEmpty(Read("Tart\n\n500 g flour        200 g cream\n250 g butter       4 eggs\n\nBake 40 min.\n").Doubts);

    [Fact]
    public void The_head_of_a_message_and_its_marks()
    {
        Dish d = Read("From: Aunt's e-mail\nCornbread dressing (serves 10)\n\n> 6 cups cornbread, crumbled\n> 2 onions, chopped\n> 3 cups turkey broth\n\n> Cook the onions 10 min.\n> Bake at 350 F for 45 min.\n");

        Assert.Equal("Cornbread dressing (serves 10)", d.Title);
        Assert.Equal([": 6 cup cornbread", ": 2 piece onions", ": 3 cup turkey broth"], Lines(d));
        Assert.Equal(2, Steps(d).Length);
    }

    [Fact]
    public void Parts_dressed_as_bullets_also_by_a_word_that_is_a_food()
    {
        Dish d = Read("- Crémeux citron\n- jus de citron 200 g\n- sucre 180 g\n- Meringue\n- blancs 120 g\n- sucre 120 g\n- sel\n- Crémeux : cuire à 84 °C, mixer 3 min.\n");

        Assert.Equal(["Crémeux citron: 200 g jus de citron", "Crémeux citron: 180 g sucre", "Meringue: 120 g blancs", "Meringue: 120 g sucre", "Meringue:   sel"], Lines(d));
    }

    [Fact]
    public void Times_behind_the_name_of_a_part_are_work_and_no_list()
    {
        Dish d = Read("ARROZ DE PATO - 10 pax\n\nSOFRITO\nTomate rallado 800 g\nAjo 6 dientes\nAOVE 150 ml\n\nARROZ\nArroz bomba 1 kg\nSal c/s\n\nSofrito: 45 min a fuego lento.\nArroz: 18 min en total, 10 fuerte y 8 en horno a 220 ºC. Reposar 5 min.\n");

        Assert.Equal(2, Steps(d).Length);
        Assert.Equal(["SOFRITO: 800 g Tomate", "SOFRITO: 6 clove Ajo", "SOFRITO: 150 ml AOVE", "ARROZ: 1 kg Arroz bomba", "ARROZ:   Sal"], Lines(d));
    }

    [Fact]
    public void A_page_breaks_sentences_too()
    {
        Dish d = Read("Smoked haddock chowder\nServes 6\n\nIngredients\n600 g smoked haddock, skin\non\n400 g potatoes, in 1 cm\ndice\n150 ml double\ncream\n\nMethod\nPoach the haddock in the milk for\n8 minutes. Lift it out and flake it.\nSweat the leek in the butter for 6\nminutes, add the potatoes and simmer 15-20\nminutes.\n");

        Assert.Equal([": 600 g smoked haddock", ": 400 g potatoes", ": 150 ml double cream"], Lines(d));
        Assert.Equal([8, 6, 15], d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times).Select(t => t.MinutesMin!.Value));
    }

    [Fact]
    public void Prose_counts_vessels_and_bends_its_foods()
    {
        Assert.Contains(": 2 tin tomatoes", Lines(Read("# Stew\n\nSweat 600g onions in 100ml oil for 10 minutes.\nStir in 2kg lentils and 2 x 2.5kg tins tomatoes, then simmer for 40 min.\n")));
        Assert.Contains(Lines(Read("# Knödel\n\nMan weiche 300 g Semmeln in 1/4 l heißer Milch ein.\nDann mische man alles mit 3 Eiern und 5 g Salz.\n")), l => l.StartsWith(": 3 piece Eier", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("CATERING Fri 60 guests - canapes\n\nBlini\n- flour 300 g\n- milk 900 ml\n", 60)]
    [InlineData("Muffins\nServings 12 muffins\n\n200 g flour\n100 g butter\n", 12)]
    [InlineData("Hi both, staff lunch tomorrow is for 25, please do the stew.\n\nSweat 600g onions and 400g carrots in 100ml oil for 10 minutes.\n", 25)]
    public void Yields_in_the_middle_of_a_line(string card, double want) => Assert.Equal(want, Assert.Single(Read(card).Yields).Amount);

    [Fact]
    public void Bullets_over_numbered_steps_are_items_whatever_they_tell()
    {
        Dish d = Read("# Tuile\n\n## Malt tuile\n\n- malt flour 50 g\n- egg white 50 g\n- grapeseed oil. Blend 4 minutes at 60°C\n\n1. Bake 7 minutes.\n");

        Assert.Equal(3, d.Components[0].Ingredients.Length);
        Assert.Single(Steps(d));
    }

    [Fact]
    public void The_head_of_a_form_is_no_item()
    {
        Dish d = Read("SEA BASS\nMenu: spring 24   Station: fish   Portions: 8\n\nFennel puree\n3 heads fennel\n100g butter\n\nFENNEL: sweat 15 min, add cream, cook 10, blend 3 min.\n");

        Assert.Equal(["Fennel puree: 3 head fennel", "Fennel puree: 100 g butter"], Lines(d));
        Assert.Equal(8, Assert.Single(d.Yields).Amount);
        Assert.Equal([15, 10, 3], d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times).Select(t => t.MinutesMin!.Value));
    }

    [Fact]
    public void A_list_with_labels_and_weights_stays_a_list() =>
        Assert.Equal([": 500 g flour", ": 300 g water"], Lines(Read("Dough\n\nflour: 500 g  \nwater: 300 g\n")));

    [Fact]
    public void Numbered_parts_in_capitals_over_their_lists()
    {
        Dish d = Read("1. SALSA VERDE\n   Parsley 100g\n   Olive oil 200ml\n   Blitz, season.\n2. ROAST LAMB\n   Lamb rump 2kg\n   Rosemary 10g\n   Roast 200C 25min, rest 15min.\n");

        Assert.Equal(["SALSA VERDE: 100 g Parsley", "SALSA VERDE: 200 ml Olive oil", "ROAST LAMB: 2 kg Lamb rump", "ROAST LAMB: 10 g Rosemary"], Lines(d));
    }

    [Fact]
    public void Numbered_steps_stay_steps() =>
        Assert.Equal(2, Steps(Read("Salsa\n\n- 100 g parsley\n- 200 ml oil\n\n1. BLITZ THE PARSLEY\n2. ADD THE OIL\n")).Length);

    [Fact]
    public void A_name_with_bars_over_the_head_of_its_table()
    {
        Dish d = Read("Sourdough | 10 loaves @ 900g\n| ingredient | bakers % | weight |\n| strong white | 80% | 4.0 kg |\n| water | 72% | 3.6 kg |\n| salt | 2% | 100 g |\n\nAutolyse 1h. Add levain + salt. Bulk 4h @ 25c. Bake 20min @ 250c.\n");

        Assert.StartsWith("Sourdough", d.Title, StringComparison.Ordinal);
        Assert.Equal([": 4 kg strong white", ": 3.6 kg water", ": 100 g salt"], Lines(d));
        Assert.Equal([": Autolyse 1h.", ": Add levain + salt.", ": Bulk 4h @ 25c.", ": Bake 20min @ 250c."], Steps(d));
    }

    [Fact]
    public void The_first_part_of_a_table_may_stand_in_its_first_row() =>
        Assert.Equal(["Dough: 1 kg plain flour", "Dough: 150 g ghee", "Filling: 300 g peas"], Lines(Read("# Samosa\n\nDough | \nplain flour | 1 kg\nghee | 150 g\nFilling |\npeas | 300 g\n")));

    [Fact]
    public void A_tip_behind_the_steps_is_a_remark() =>
        Assert.Single(Steps(Read("# Suppe\n\n## Zutaten\n\n- 200 g Linsen\n- 1 Zwiebel\n\n## Zubereitung\n\nLinsen 40 Min. kochen.\nTipp: schmeckt am nächsten Tag noch besser.\n")));

    [Fact]
    public void A_batch_behind_two_strokes_is_a_yield()
    {
        Dish d = Read("Burger sauce // batch 2L\nketchup 400 g\nmustard 80 g\n\nMix 5 min.\n");

        Assert.Equal([": 400 g ketchup", ": 80 g mustard"], Lines(d));
        Assert.Equal(2, Assert.Single(d.Yields).Amount);
    }
}
