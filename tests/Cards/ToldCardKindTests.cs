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
}
