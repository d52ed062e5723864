using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Cards told in sentences, whole or in part: no food may be lost between them, and each sentence of a single paragraph is a step. Readings as a cook gives them: common practice, no source.</summary>
public sealed class ToldCardKindTests
{
    [Fact]
    public void Sentences_over_a_labelled_sentence_keep_their_foods()
    {
        Dish d = Read("Omas Linseneintopf\n\nMan nehme 400 g Linsen und koche sie in 1,5 l Wasser 30 Minuten.\nDann 2 Zwiebeln in 40 g Butter 10 Minuten anschwitzen.\n\nSpätzle: 400 g Mehl, 4 Eier und 150 ml Wasser schlagen, bis der Teig Blasen wirft, 20 Minuten ruhen lassen.\nVom Brett schaben, 2 Minuten kochen.");

        Assert.Equal([": 400 g Linsen", ": 1.5 l Wasser", ": 2 piece Zwiebeln", ": 40 g Butter", "Spätzle: 400 g Mehl", "Spätzle: 4 piece Eier", "Spätzle: 150 ml Wasser"], Lines(d));
        Assert.Equal(4, Steps(d).Length);
    }

    [Fact]
    public void Sentences_under_the_title_are_a_part_whatever_list_stands_behind_them()
    {
        Dish d = Read("Supper\n\nBoil 500 g of potatoes in 2 litres of water for 20 minutes.\nMash them with 80 g of butter.\n\nFor the salad\n- 200 g leaves\n- 2 tomatoes");

        Assert.Equal([": 500 g potatoes", ": 2 l water", ": 80 g butter", "For the salad: 200 g leaves", "For the salad: 2 piece tomatoes"], Lines(d));
    }

    [Fact]
    public void A_head_note_over_a_list_stays_a_note() =>
        Assert.Equal([": 200 g leaves", ": 2 piece tomatoes"], Lines(Read("Supper\n\nMy aunt grew 500 g of potatoes and 80 g of butter was all she had.\n\n- 200 g leaves\n- 2 tomatoes\n\nMethod\nToss and serve.")));

    [Theory]
    [InlineData("Œufs pour quatre. Faire revenir 120 g de lardons dans 20 g de beurre 8 minutes. Pour les croûtons, dorer 4 tranches de pain de campagne 6 minutes à 200 °C.", "croûtons: 4 slice pain de campagne")]
    [InlineData("Gallina\n\nSe pone 1 gallina de 1,8 kg a hervir con 3 litros de agua y 2 zanahorias, 1 hora.\nSe cocina con 60 g de nueces 10 minutos.", ": 1 piece gallina")]
    public void A_slice_of_anything_is_a_food_and_the_weight_behind_a_count_is_of_it(string card, string line) => Assert.Contains(line, Lines(Read(card)));

    [Fact]
    public void What_a_food_is_cut_into_is_no_food() =>
        Assert.Equal([": 500 g potatoes", ": 80 g butter"], Lines(Read("Supper\n\nCut 500 g of potatoes into 4 slices of equal size and boil 20 minutes.\nMash them with 80 g of butter.")));

    [Fact]
    public void Each_sentence_of_the_only_paragraph_of_a_method_is_a_step()
    {
        const string List = "Focaccia\n\nImpasto: farina 300 g, acqua 200 g, sale 8 g\n\n";

        Assert.Equal(3, Steps(Read(List + "Impastare tutto 8 minuti. Lievitare 2 ore. Cuocere a 240°C per 25 minuti.\n\nSi mantiene 2 giorni.")).Count(s => s.Contains("minuti", StringComparison.Ordinal) || s.Contains("ore", StringComparison.Ordinal)));
        Assert.Equal(5, Steps(Read("まかない\n\n米 900g\n味噌 180g\n\n米を30分浸水する。豚肉を3分炒める。だしを注ぎ、20分煮る。味噌を溶き入れる。塩をつけてにぎる。")).Length);
    }

    [Theory]
    [InlineData("Cake\n\n200 g flour\n3 eggs\n\nBeat the eggs and the flour. Bake for 30 minutes at 180°C.", 1)]
    [InlineData("Cake\n\n200 g flour\n3 eggs\n\n1. Beat 3 minutes. Rest 10 minutes. Bake 30 minutes.\n2. Cool 20 minutes.", 2)]
    public void Two_sentences_with_one_time_and_numbered_steps_stay_whole(string card, int steps) => Assert.Equal(steps, Steps(Read(card)).Length);

    [Theory]
    [InlineData("Pour half the sauce over the pudding and leave 20 minutes.")]
    [InlineData("poach the haddock in milk 8 min, flake, keep 100ml of the milk")]
    [InlineData("Tartare: mix all with the capers, keeps 3 days chilled.")]
    public void Pouring_keeping_back_and_a_labelled_order_are_work(string step) =>
        Assert.Contains(Read("Pudding\n\n200 g flour\n3 eggs\n\nMethod\nBake for 30 minutes.\n" + step).Components.SelectMany(c => c.Steps), s => s.Text == step);

    [Theory]
    [InlineData("Pour 8 personnes")]
    [InlineData("Keep for 3 days in the fridge.")]
    [InlineData("Keeps 3 days chilled.")]
    public void Yields_and_keeping_are_no_work(string line) =>
        Assert.DoesNotContain(Read("Pudding\n\n200 g flour\n3 eggs\n\nBake for 30 minutes.\n\n" + line).Components.SelectMany(c => c.Steps), s => s.Text == line);

    [Theory]
    [InlineData("Aioli\n\n3 egg yolks\n300 ml oil\n1 lemon\nEmulsify.\nRest.\nServe.", 3, 3)]
    [InlineData("Nudeln\n\n400 g Mehl\n4 Eier\nSalz\nKneten.\nAusrollen.\nServieren.", 3, 3)]
    [InlineData("Pâte\n\n400 g farine\n200 g beurre\n1 œuf\n\nSabler.\nFraser.\nFilmer.", 3, 3)]
    [InlineData("Crème\n\n500 ml crème\n80 g sucre\n\nMixer.\nRectifier.\nStocker.", 2, 3)]
    public void Short_orders_behind_a_list_are_work(string card, int foods, int steps)
    {
        Dish d = Read(card);

        Assert.Equal(foods, Lines(d).Length);
        Assert.Equal(steps, Steps(d).Length);
    }

    [Theory]
    [InlineData("Gel\n\n500 ml Saft\n6 g Agar\nSalz n. G.\nSaft 2 Min. kochen, kalt stellen.", 3)]
    [InlineData("Pie\n\n250 g flour.\n125 g butter.\nSalt.\n\nMix and bake 30 minutes.", 3)]
    public void A_food_with_a_stop_is_no_order(string card, int foods) => Assert.Equal(foods, Lines(Read(card)).Length);

    [Theory]
    [InlineData("Waldorf salad\n\nCelery\nApples\nWalnuts\nMayonnaise\n\nChop everything. Mix and serve.", ": Celery|: Apples|: Walnuts|: Mayonnaise")]
    [InlineData("Salade niçoise\n\nLaitue\nThon\nAnchois\nŒufs durs\n\nDisposer le tout et servir.", ": Laitue|: Thon|: Anchois|: Œufs durs")]
    public void A_list_without_amounts_under_the_title_is_one(string card, string foods)
    {
        Dish d = Read(card);

        Assert.Equal(foods.Split('|'), d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => ": " + f.Food));
        Assert.Single(Steps(d));
    }

    [Fact]
    public void Three_lines_that_name_no_foods_are_no_list() => Assert.Empty(Lines(Read("Garden party\n\nSummer\nTables\nFriends\n\nServe everything cold.")));

    [Theory]
    [InlineData("Moussaka\n\nFilling\n500 g lamb\n1 onion\n\nBéchamel\n50 g butter\n50 g flour\n\nBake 40 minutes.\n\nServes 12.", 12)]
    [InlineData("Eggs Benedict x2\n\n4 eggs\n2 muffins\n60 g butter\n\nPoach the eggs 3 minutes.", 2)]
    public void Guests_told_behind_the_last_part_and_a_count_in_the_title_are_of_the_dish(string card, double guests)
    {
        Dish d = Read(card);

        Assert.Equal(guests, Assert.Single(d.Yields).Amount);
        Assert.Equal(guests, Assert.Single(Read(Writing.CardWriter.Write(d)).Yields).Amount);
    }

    [Theory]
    [InlineData("1.500 kg de moules", 1.5, "kg")]
    [InlineData("1kg2 de crevettes", 1.2, "kg")]
    [InlineData("1L5 de lait", 1.5, "l")]
    [InlineData("1 c. s. de moutarde", 1, "tbsp")]
    [InlineData("2 c. c. de sel", 2, "tsp")]
    [InlineData("1.500 g de farine", 1500, "g")]
    [InlineData("12 kg de moules", 12, "kg")]
    [InlineData("500 g de T55", 500, "g")]
    public void French_hands_write_the_unit_or_a_point_where_the_comma_stands(string line, double amount, string unit)
    {
        FoodAmount food = Assert.Single(Reading.CardReader.ReadLine(line, "fr").Foods);

        Assert.Equal((amount, unit), (food.Amount ?? 0, food.Unit));
    }

    [Theory]
    [InlineData("1 ají", "es")]
    [InlineData("Stocker", "fr")]
    public void A_word_that_looks_like_a_fish_is_none(string line, string lang) => Assert.DoesNotContain(Reading.CardReader.ReadLine(line, lang).Foods, f => f.FoodId is not null && f.FoodId.Contains("mackerel", StringComparison.Ordinal));

    [Theory]
    [InlineData("Gâteau au yaourt\n\nVerser un pot de yaourt dans un saladier. Ajouter 2 pots de sucre, 3 œufs et 3 pots de farine. Cuire 35 minutes à 180°.", ": 1 jar yaourt|: 2 jar sucre|: 3 piece œufs|: 3 jar farine")]
    [InlineData("Fish stew\n\nSweat 2 onions in 50 ml of olive oil. Add a tin of tomatoes and 500 g of cod, simmer 10 minutes. Tip it into a tin lined with paper.", ": 2 piece onions|: 50 ml olive oil|: 1 tin tomatoes|: 500 g cod")]
    public void A_pot_and_a_tin_of_a_food_are_amounts_in_sentences_and_the_tin_it_is_put_in_is_none(string card, string foods) => Assert.Equal(foods.Split('|'), Lines(Read(card)));

    [Fact]
    public void A_sentence_that_lasts_is_work_in_whatever_person_its_verb_stands() =>
        Assert.Contains(Read("Ragù\n\nSoffriggete 1 cipolla in 50 g di burro. Aggiungete 500 g di macinato e 400 g di passata. Cuocete per un'ora.").Components.SelectMany(c => c.Steps).SelectMany(s => s.Times), t => t.MinutesMin == 60);
}
