using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>A chef's own notes without stops or units, and a letter that lists in its sentences, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class NoteKindTests
{
    [Fact]
    public void Work_behind_a_single_line_is_work()
    {
        Dish d = Read("TURBOT, SORREL   8 pax\n\nturbot 1.3 kg\nbrine 8% / 12 min\n50C bath, 14 mins, pat dry\n\nSORREL SAUCE\nnoilly 200 g\nsorrel 120 g\n\nblend 3 min\n");

        Assert.Equal([": 1.3 kg turbot", "SORREL SAUCE: 200 g noilly", "SORREL SAUCE: 120 g sorrel"], Lines(d));
        Assert.Equal([": brine 8% / 12 min", ": 50C bath, 14 mins, pat dry", "SORREL SAUCE: blend 3 min"], Steps(d));
        Assert.Equal(50, Assert.Single(d.Components[0].Steps[1].Temperatures).Celsius);
    }

    [Fact]
    public void A_brine_that_is_weighed_is_an_item() =>
        Assert.Equal([": 1.3 kg turbot", ": 500 g brine"], Lines(Read("Turbot\n\nturbot 1.3 kg\nbrine 500 g\n\nServe at once.\n")));

    [Fact]
    public void A_list_of_bare_figures_under_its_name_is_a_part()
    {
        Dish d = Read("LAMB\n\nlamb rump 1.2 kg\nsalt 14 g\n\nroast 25 min\n\nOIL\nchives 100, grapeseed 200. blitz 70C 6 min, hang o/n\n");

        Assert.Equal(["OIL: 100 g chives", "OIL: 200 g grapeseed"], Lines(d)[2..]);
        Assert.Equal("OIL: blitz 70C 6 min, hang o/n.", Steps(d)[^1]);
        Assert.Equal(2, d.Doubts.Length);
    }

    [Fact]
    public void Figures_of_no_food_under_a_name_are_no_list() =>
        Assert.Equal(2, Lines(Read("LAMB\n\nlamb rump 1.2 kg\nsalt 14 g\n\nroast 25 min\n\nTABLES\nwindow 4, terrace 12. seat late ones inside\n")).Length);

    [Fact]
    public void A_letter_tells_its_list_and_its_oven_in_sentences()
    {
        Dish d = Read("Apple cake\n\nYou need 250g butter, the same weight of caster sugar, 5 eggs and 3 cooking apples. Cream the butter and sugar for 5 mins, add the eggs. 170 (150 fan) for an hour and a quarter. Three friends came, the same weight of laughter each.\n");

        Assert.Equal([": 250 g butter", ": 250 g caster sugar", ": 5 piece eggs", ": 3 piece cooking apples"], Lines(d));
        Step bake = d.Components[0].Steps.Single(s => s.Text.StartsWith("170", StringComparison.Ordinal));
        Assert.Equal([170, 150], bake.Temperatures.Select(t => t.Celsius));
        Assert.Equal(75, Assert.Single(bake.Times).MinutesMin);
    }

    [Fact]
    public void A_title_may_tell_its_loaves_and_a_heading_its_hours_in_brackets()
    {
        Dish d = Read("Sourdough country loaf (2 x 900g)\n\nLevain (night before, 12h @ 24°C)\n- 40g ripe starter\n- 100g water\n\nFinal dough\n- 800g strong white flour\n- 20g salt\n\nBake 40 min at 230°C.\n");

        Assert.StartsWith("Sourdough country loaf", d.Title, StringComparison.Ordinal);
        Assert.Equal(2, d.Components.Length);
        Assert.StartsWith("Levain", d.Components[0].Name, StringComparison.Ordinal);
    }

    [Fact]
    public void The_number_of_a_recipe_is_no_step_and_a_first_step_is()
    {
        Assert.Equal("Chocolate tart", Read("2. Chocolate tart\n\nFor the pastry:\n225g plain flour\n140g cold butter\n\nMethod\nRub in and chill 30 mins.\n").Title);
        Assert.Equal(2, Steps(Read("1. Rub the butter into the flour\n\n2. Chill 30 min\n")).Length);
    }

    [Fact]
    public void What_is_served_beside_is_a_list_and_a_sentence_is_not()
    {
        Assert.Equal(["To serve:   crème fraîche", "To serve:   raspberries"], Lines(Read("Tart\n\nFilling:\n300 g chocolate\n200 g cream\n\nTo serve: crème fraîche and raspberries\n"))[2..]);
        Assert.Equal(2, Lines(Read("Tart\n\nFilling:\n300 g chocolate\n200 g cream\n\nTo serve: warm the tart and cut it small\n")).Length);
    }

    [Theory]
    [InlineData("500 water", true)]
    [InlineData("12 grapes", false)]
    public void A_bare_figure_beside_what_nobody_counts_is_asked(string line, bool asked) =>
        Assert.Equal(asked, !CardReader.ReadLineWithDoubts(line, "en").Doubts.IsEmpty);
}
