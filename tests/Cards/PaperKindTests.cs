using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Kinds of paper a fourth blind set showed, each beside what looks like it and is none: narrow pages, letters, pages of a site, notes without stops, columns of units, stages a step takes up. Readings as a cook gives them: common practice, no source.</summary>
public sealed class PaperKindTests
{
    private static Dish Read(string text) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(text))).Value;

    private static string[] Steps(Dish d) => [.. d.Components.SelectMany(c => c.Steps.Select(s => $"{c.Name}: {s.Text}"))];

    private static string[] Lines(Dish d) => [.. d.Components.SelectMany(c => c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{c.Name}: {f.Amount} {f.Unit} {f.Food}")))];

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
}
