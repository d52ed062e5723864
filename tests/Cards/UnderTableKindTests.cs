using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>The method behind a table of foods, told in lines without a heading, a number or a stop; beside it remarks and lists that stand there too. Readings as a cook gives them: common practice, no source.</summary>
public sealed class UnderTableKindTests
{
    private const string English = "Olive bread\n\n| Ingredient | Poolish | Dough |\n|---|---|---|\n| Strong flour | 500 g | 1500 g |\n| Water | 500 g | 900 g |\n| Salt | - | 40 g |\n\n";
    private const string Plain = "Coleslaw\n\n| Food | Amount |\n|---|---|\n| Cabbage | 2 kg |\n| Mayonnaise | 500 g |\n\n";

    [Theory]
    [InlineData(English + "Poolish mixed the night before, 14 h at room temp\nDough 10 min on slow\nBulk 90 min\nShape 6 loaves\nProve 45 min\n240°C 35 min with steam\n", 6, "14 h|10 min|90 min||45 min|35 min")]
    [InlineData("Roggenbrot\n\n| Zutat | Sauerteig | Hauptteig |\n|---|---|---|\n| Roggenmehl | 1500 g | 1000 g |\n| Wasser | 1500 g | 900 g |\n\nSauerteig ansetzen, 16 Stunden reifen lassen\nHauptteig 8 Minuten kneten\nTeigruhe 30 Minuten\nBacken 50 Minuten bei 230 °C\n", 4, "16 Stunden|8 Minuten|30 Minuten|50 Minuten")]
    [InlineData("Brioche feuilletée\n\n| Ingrédient | Détrempe | Tourage |\n|---|---|---|\n| Farine | 1000 g | - |\n| Lait | 450 g | - |\n| Beurre | 100 g | 500 g |\n\nPétrir la détrempe 12 minutes\nPointage 1 heure\nTrois tours simples\nCuisson 18 minutes à 180 °C\n", 4, "12 minutes|1 heure||18 minutes")]
    [InlineData("Pan de aceite\n\n| Ingrediente | Masa madre | Masa |\n|---|---|---|\n| Harina | 300 g | 1200 g |\n| Agua | 300 g | 700 g |\n\nAmasar 12 minutos\nReposo de 1 hora\nFormar 4 barras\nHorno a 230 °C, 40 minutos\n", 4, "12 minutos|1 hora||40 minutos")]
    [InlineData("Pane pugliese\n\n| Ingrediente | Biga | Impasto |\n|---|---|---|\n| Semola | 500 g | 1000 g |\n| Acqua | 250 g | 800 g |\n\nBiga 18 ore a 18 °C\nImpastare 15 minuti\nFormare\nCottura 50 minuti a 220 °C\n", 4, "18 ore|15 minuti||50 minuti")]
    [InlineData("クリームパン\n\n| 材料 | 生地 | クリーム |\n|---|---|---|\n| 強力粉 | 1000g | - |\n| 砂糖 | 150g | 220g |\n| 牛乳 | 400g | 1000g |\n\n生地を15分こねる\n一次発酵60分\n分割して休ませる\n190℃で12分焼く\n", 4, "15分|60分||12分")]
    [InlineData("Lemon bars\n\nItem            Base      Filling\nFlour           300 g     60 g\nButter          200 g     -\nEggs            -         6\n\nRub in the base, press into the frame\nBake base 20 min at 180C\nWhisk filling, pour on\nBack in for 25 min at 160C\n", 4, "|20 min||25 min")]
    [InlineData("Stollen\n\nZutat;Menge\nMehl;1000 g\nButter;400 g\nMilch;250 g\n\nTeig kneten 10 Minuten\nRuhen 30 Minuten\nFormen und backen, 55 Minuten bei 180 °C\n", 3, "10 Minuten|30 Minuten|55 Minuten")]
    [InlineData("Tarte\n\n| Ingrédient | Quantité |\n|---|---|\n| Farine | 500 g |\n| Beurre | 250 g |\n\nSablage, repos 2 h\nFonçage\nCuisson à blanc 20 min 170 °C\nPour 12 personnes\n", 3, "2 h||20 min")]
    [InlineData(Plain + "Shred the cabbage and salt it for 20 min\n", 1, "20 min")]
    public void Lines_of_work_behind_a_table_are_steps(string card, int steps, string times)
    {
        Step[] read = [.. Read(card).Components.SelectMany(c => c.Steps).OrderBy(s => s.Span.Line)];

        Assert.Equal(steps, read.Length);
        Assert.Equal(times, string.Join('|', read.Select(s => string.Join(' ', s.Times.Select(t => t.Words)))));
    }

    [Fact]
    public void What_keeps_and_what_is_made_stays_said_among_them()
    {
        Dish d = Read(English + "Mix 10 min\nBake 35 min at 240 °C\nKeeps 3 days\nMakes 6 loaves\n");

        Assert.Equal(2, d.Components.Sum(c => c.Steps.Length));
        Assert.Single(d.Yields);
        Assert.Contains(d.Components.SelectMany(c => c.Keeps), k => k.Text.StartsWith("Keeps 3 days", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Photo taken 5 minutes after mixing\n")]
    [InlineData("Delivery 2 hours before service\nCall Tom on Friday\n")]
    [InlineData("Cost 14.20 per tray\nSold at the summer fair\n")]
    [InlineData("Serves 12\nKeeps 3 days in the fridge\n")]
    [InlineData("Salt\nChopped parsley\n")]
    public void Remarks_behind_a_table_are_no_steps(string behind) => Assert.Empty(Steps(Read(Plain + behind)));

    [Fact]
    public void A_line_under_the_table_of_a_card_that_heads_its_method_stays_a_remark() =>
        Assert.Equal([": Shred the cabbage.", ": Mix it all."], Steps(Read(Plain + "Best dressed 30 min before service\nMixed by hand 5 min\n\n## Method\n\nShred the cabbage.\nMix it all.\n")));

    [Fact]
    public void A_list_that_goes_on_under_the_table_stays_one() =>
        Assert.Contains(": 5 g pepper", Lines(Read(Plain + "pepper 5 g\nchives 20 g\n")));
}
