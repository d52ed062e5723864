using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Times told in two pieces, by "min" and "max", behind a bare heat, or broken over two lines. Readings as a cook gives them: common practice, no source.</summary>
public sealed class TimeRangeKindTests
{
    private static string Times(Step step) => string.Join(" | ", step.Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}")));

    [Theory]
    [InlineData("en", "Cook for another hour and 15 mins.", "75-75")]
    [InlineData("en", "Bake an hour and 20 minutes.", "80-80")]
    [InlineData("it", "Cuocere un'ora e 15 minuti.", "75-75")]
    [InlineData("en", "Simmer another hour or so.", "60-60")]
    [InlineData("en", "Simmer for an hour and 15 minutes before the end add the peas.", "60-60")]
    [InlineData("en", "Marinate min 6hrs max 24hrs", "360-1440")]
    [InlineData("en", "Prove minimum 2 h maximum 4 h.", "120-240")]
    [InlineData("en", "Marinate 6 h min, max 24 h.", "360-1440")]
    [InlineData("fr", "Laisser mariner 6 h min, 24 h max.", "360-1440")]
    [InlineData("en", "Rest 2 hours max, then bake 20 min.", "-120 | 20-20")]
    [InlineData("fr", "Attendre 3 jours.", "4320-4320")]
    public void A_time_in_two_pieces_is_one(string lang, string step, string want) => Assert.Equal(want, Times(CardReader.ReadStep(step, lang)));

    [Theory]
    [InlineData("375 9-11 min", 190.6, "9-11")]
    [InlineData("180 25 min", 180, "25-25")]
    [InlineData("180 25 min then rest 10 min", 180, "25-25 | 10-10")]
    public void A_bare_figure_before_minutes_is_the_ovens(string step, double heat, string want)
    {
        Step read = CardReader.ReadStep(step, "en");

        Assert.Equal(heat, Assert.Single(read.Temperatures).Celsius);
        Assert.Equal(want, Times(read));
    }

    [Fact]
    public void Such_a_line_under_the_method_is_a_step() => Assert.Equal("9-11", Times(Told.Read("Cookies\n\n200 g butter\n300 g flour\n150 g sugar\n\nMix everything and roll into balls.\n375 9-11 min\n").Components.SelectMany(c => c.Steps).Last()));

    [Theory]
    [InlineData("350 g flour, sifted 10 min ahead")]
    [InlineData("200 2 minute noodles")]
    public void What_is_weighed_or_counted_is_no_oven(string step) => Assert.Empty(CardReader.ReadStep(step, "en").Temperatures);

    [Theory]
    [InlineData("Linsensuppe\n\n200 g Linsen\n1 Zwiebel\n\n1. Die Zwiebel würfeln und in Öl etwa 10\nMinuten glasig dünsten.\n2. Linsen zugeben und alles noch etwa 2\nStunden leise köcheln lassen.\n", "10-10 ; 120-120")]
    [InlineData("Kekse\n\n200 g Butter\n300 g Mehl\n\n1. Teig ausrollen und bei 180 °C etwa 10 bis\n12 Minuten backen.\n", "10-12")]
    [InlineData("Brot\n\n500 g Mehl\n300 g Wasser\n\n1. Kneten.\n2. Bei 180\nGrad 20 Minuten backen.\n", " ; 20-20")]
    [InlineData("Soupe\n\n200 g lentilles\n1 oignon\n\n1. Faire suer l'oignon.\n2. Cuire encore\n40 minutes à feu doux.\n", " ; 40-40")]
    [InlineData("煮物\n\n材料\n大根 300g\n鶏肉 200g\n\n作り方\n1. 大根と鶏肉を鍋に入れて弱火で約20\n分煮る。\n2. 火を止めて約2\n時間おく。\n", "20-20 ; 120-120")]
    public void A_figure_and_its_word_on_the_next_line_are_one_time(string card, string want) => Assert.Equal(want, string.Join(" ; ", Told.Read(card).Components.SelectMany(c => c.Steps).Select(Times)));

    [Theory]
    [InlineData("Mousse\n\n200 g chocolate\n4 eggs\n\nMelt the chocolate over a pan of water.\nyou then fold in the whites\nChill 3 hours.\n", 3)]
    [InlineData("Mousse\n\n200 g chocolat\n4 oeufs\n\nFaire fondre le chocolat.\nensuite vous incorporez les blancs délicatement\nServir.\n", 3)]
    [InlineData("Schaum\n\n200 g Schokolade\n4 Eier\n\nDie Schokolade schmelzen.\ndann hebst du den Eischnee vorsichtig unter\nServieren.\n", 3)]
    public void A_sentence_to_the_cook_is_a_step_without_a_time_too(string card, int steps) => Assert.Equal(steps, Told.Read(card).Components.Sum(c => c.Steps.Length));
}
