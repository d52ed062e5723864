using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>A chef's own notes without stops or units, and a letter that lists in its sentences, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class NoteKindTests
{
    private static Dish Read(string text) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(text))).Value;

    private static string[] Steps(Dish d) => [.. d.Components.SelectMany(c => c.Steps.Select(s => $"{c.Name}: {s.Text}"))];

    private static string[] Lines(Dish d) => [.. d.Components.SelectMany(c => c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{c.Name}: {f.Amount} {f.Unit} {f.Food}")))];

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
}
