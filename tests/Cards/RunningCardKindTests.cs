using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Cards told in few lines: Japanese ones in one breath, parts by their labels, a first sentence that opens with its weight; each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class RunningCardKindTests
{
    [Theory]
    [InlineData("肉じゃが 材料（4人分）じゃがいも4個、牛肉200g、醤油大さじ3 作り方 じゃがいもを切る。牛肉を炒める。20分煮る。", "肉じゃが", 3, ": 4 piece じゃがいも", ": 200 g 牛肉", ": 3 tbsp 醤油")]
    [InlineData("だし巻き卵\n材料は卵3個、だし50ml、砂糖小さじ1です。作り方：卵を溶き、だしと混ぜる。中火で3分焼く。", "だし巻き卵", 2, ": 3 piece 卵", ": 50 ml だし", ": 1 tsp 砂糖")]
    [InlineData("【きんぴら】材料：ごぼう1本、人参1/2本、ごま油大さじ1。作り方：①ごぼうを切る。②ごま油で5分炒める。③人参を加える。", "きんぴら", 3, ": 1 piece ごぼう", ": 0.5 piece 人参", ": 1 tbsp ごま油")]
    [InlineData("おひたし 材料 ほうれん草200g 醤油小さじ2 作り方 1分茹でる。醤油をかける。", "おひたし", 2, ": 200 g ほうれん草", ": 2 tsp 醤油")]
    [InlineData("ポテトサラダ\n材料：じゃがいも3個／きゅうり1/2本／マヨネーズ大さじ4\n手順：じゃがいもを15分茹でて潰す。全部混ぜる。", "ポテトサラダ", 2, ": 3 piece じゃがいも", ": 0.5 piece きゅうり", ": 4 tbsp マヨネーズ")]
    [InlineData("親子丼【材料】鶏もも肉 200g、A（醤油大さじ2、みりん大さじ2）【作り方】1.鶏肉を切る。2.Aを煮立て、5分煮る。", "親子丼", 2, ": 200 g 鶏もも肉", ": 2 tbsp 醤油", ": 2 tbsp みりん")]
    public void A_Japanese_card_in_one_breath_has_its_list_and_its_steps(string card, string title, int steps, params string[] lines)
    {
        Dish d = Read(card);

        Assert.Equal(title, d.Title);
        Assert.Equal(lines, Lines(d));
        Assert.Equal(steps, d.Components.Sum(c => c.Steps.Length));
    }

    [Fact]
    public void The_guests_behind_the_word_are_the_yield() => Assert.Equal(4, Assert.Single(Read("肉じゃが 材料（4人分）じゃがいも4個、牛肉200g 作り方 20分煮る。").Yields).Amount);

    [Fact]
    public void Words_of_a_sentence_begin_no_list()
    {
        Dish d = Read("煮物\n\n材料\n- じゃがいも 4個\n\n作り方\n1. 材料を全部入れ、作り方を確かめて10分煮る。\n");

        Assert.Equal([": 4 piece じゃがいも"], Lines(d));
        Assert.Single(d.Components.SelectMany(c => c.Steps));
    }

    [Fact]
    public void An_amount_grown_onto_its_food_is_an_item_without_a_heading() =>
        Assert.Equal([": 4 piece じゃがいも", ": 200 g 牛肉", ": 8 piece 海老", ":   塩"], Lines(Read("煮物\n\nじゃがいも4個\n牛肉200g\n海老8尾\n塩少々\n\n1. 20分煮る。\n")));

    [Theory]
    [InlineData("Empanadas\nMasa: 500 g harina, 10 g sal, 300 ml agua\nRelleno: 400 g carne picada, 2 cebollas\nMezclar la masa y dejar reposar 30 min.\n", "Empanadas", "Masa: 500 g harina", "Masa: 10 g sal", "Masa: 300 ml agua", "Relleno: 400 g carne", "Relleno: 2 piece cebollas")]
    [InlineData("Zwiebelkuchen\nTeig: 500 g Mehl, 1 Pck. Hefe\nBelag: 1 kg Zwiebeln, 200 g Speck\nDen Teig 60 min gehen lassen.\n", "Zwiebelkuchen", "Teig: 500 g Mehl", "Teig: 1 pack Hefe", "Belag: 1 kg Zwiebeln", "Belag: 200 g Speck")]
    [InlineData("天ぷら\n衣：卵黄1個、冷水150ml、薄力粉100g\n天つゆ：だし200ml、醤油50ml\n1. 衣を混ぜる。\n", "天ぷら", "衣: 1 piece 卵黄", "衣: 150 ml 冷水", "衣: 100 g 薄力粉", "天つゆ: 200 ml だし", "天つゆ: 50 ml 醤油")]
    [InlineData("Fritto\nPastella: farina, birra, uovo\nVerdure: zucchine, carote, cipolle\nFriggere a 180 °C per 3 minuti.\n", "Fritto", "Pastella:   farina", "Pastella:   birra", "Pastella:   uovo", "Verdure:   zucchine", "Verdure:   carote", "Verdure:   cipolle")]
    [InlineData("House burger\nBun: brioche 1\nPatty: beef mince 180 g, salt 2 g\nGrill the patty 3 min each side.\n", "House burger", "Bun: 1 piece brioche", "Patty: 180 g beef mince", "Patty: 2 g salt")]
    [InlineData("Burger night\nBun - 4 brioche buns\nPatties: 600g beef mince, 1 tsp salt\nSauce: mayo, ketchup, gherkins, shallot\nGrill patties 3 min a side.\n", "Burger night", "Bun: 4 piece brioche buns", "Patties: 600 g beef mince", "Patties: 1 tsp salt", "Sauce:   mayo", "Sauce:   ketchup", "Sauce:   gherkins", "Sauce:   shallot")]
    public void A_name_before_its_list_is_a_part_and_the_line_over_it_the_title(string card, string title, params string[] lines)
    {
        Dish d = Read(card);

        Assert.Equal(title, d.Title);
        Assert.Equal(lines, Lines(d));
    }

    [Theory]
    [InlineData("Chicken salad\nContains: milk, egg, mustard\nMay contain: almonds, sesame\nTags: chicken, rice\n\n500 g chicken\n100 g mayonnaise\n\nMix and chill 1 hour.\n")]
    [InlineData("Chicken salad\nServe with: rice, carrots\nGoes with: butter, onions\n\n500 g chicken\n100 g mayonnaise\n\nMix and chill 1 hour.\n")]
    public void What_is_told_of_the_whole_is_no_part(string card) => Assert.Equal([": 500 g chicken", ": 100 g mayonnaise"], Lines(Read(card)));

    [Fact]
    public void A_name_over_its_list_is_still_a_part() =>
        Assert.Equal(["OIL: 100 g chive", "OIL: 200 g grapeseed"], Lines(Read("Trout\n\nOIL\nchive 100 g, grapeseed 200 g. blitz 70C 6 min\n")));

    [Fact]
    public void A_figure_may_open_the_first_sentence()
    {
        Dish d = Read("Linsen mit Saiten\n\n500 g Linsen in 1 l Brühe 40 Minuten kochen. Mit 2 EL Essig abschmecken und 8 Saitenwürste 10 Minuten darin ziehen lassen.\n");

        Assert.Equal([": 500 g Linsen", ": 1 l Brühe", ": 2 tbsp Essig", ": 8 piece Saitenwürste"], Lines(d));
        Assert.Equal(2, d.Components[0].Steps.Length);
    }

    [Theory]
    [InlineData("Linsen\n\n500 g Linsen in 1 l Brühe 40 Minuten kochen. Mit 2 EL Essig abschmecken und in 8 Portionen teilen, 3 Stunden kühlen.\n")]
    public void Counts_of_no_food_stay_in_the_sentence(string card) => Assert.Equal([": 500 g Linsen", ": 1 l Brühe", ": 2 tbsp Essig"], Lines(Read(card)));

    [Theory]
    [InlineData("Sunday pork\n\nThe joint - pork loin, rind scored, 2.5 kg - rub it with 20 g salt and 5 g fennel seed. Roast at 160 C for 3 hours.\n", ": 2.5 kg pork loin", ": 20 g salt", ": 5 g fennel seed")]
    [InlineData("Sunday pork\n\nRub the joint (pork loin, 2.5 kg) with 20 g salt and 5 g fennel seed. Roast at 160 C for 3 hours.\n", ": 2.5 kg pork loin", ": 20 g salt", ": 5 g fennel seed")]
    public void A_weight_that_closes_an_aside_is_of_what_the_aside_names(string card, params string[] lines) => Assert.Equal(lines, Lines(Read(card)));
}
