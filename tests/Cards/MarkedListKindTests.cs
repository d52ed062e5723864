using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Lists without bullets under marked headings, and names of parts in small letters; each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class MarkedListKindTests
{
    [Fact]
    public void Parts_under_third_level_headings_keep_their_lists_behind_the_first_steps()
    {
        Dish d = Read("# Dish\n\n### Butter\n100 g butter\n40 g hazelnuts\n\nCook the butter.\n\n### Puree\n80 g butter\n300 ml milk\n\nBoil 5 min.\n");

        Assert.Equal(["Butter: 100 g butter", "Butter: 40 g hazelnuts", "Puree: 80 g butter", "Puree: 300 ml milk"], Lines(d));
    }

    [Fact]
    public void Under_the_heading_of_the_method_a_deeper_name_begins_no_list()
    {
        Dish d = Read("# Dish\n\n## Dough\n500 g flour\n300 g water\n\n## Method\nMix it all 5 min.\n\n### Bake\n200 g of steam for each oven.\n");

        Assert.Equal(["Dough: 500 g flour", "Dough: 300 g water"], Lines(d));
    }

    [Theory]
    [InlineData("2 leeks", "Puree: 2 piece leeks")]
    [InlineData("1 celeriac (about 900 g)", "Puree: 1 piece celeriac")]
    [InlineData("3 kohlrabi from the garden", "Puree: 3 piece kohlrabi from the garden")]
    public void A_count_opens_the_list_under_its_name(string first, string line) =>
        Assert.Equal(line, Lines(Read($"# Dish\n\n## Puree\n{first}\n300 ml milk\n80 g butter\n\nBoil 5 min.\n"))[0]);

    [Theory]
    [InlineData("2 at a time in the oven.")]
    [InlineData("3 cooks are needed for this part of the evening")]
    public void A_figure_that_counts_no_food_opens_none(string first) =>
        Assert.Equal(["Puree: 300 ml milk"], Lines(Read($"# Dish\n\n## Puree\n{first}\n\n- 300 ml milk\n\n1. Boil 5 min.\n")));

    [Theory]
    [InlineData("Prefermento todo", "Prefermento")]
    [InlineData("prefermento completo todo", null)]
    public void What_is_taken_whole_by_a_word_behind_it_names_the_part_made_before(string first, string? food)
    {
        Dish d = Read($"ROSCÓN (2 unidades)\n\nPREFERMENTO\nHarina de fuerza 150 g\nLeche 90 g\n\nMASA\n{first}\nHarina de fuerza 500 g\nSal 8 g\n\nMasa: amasar 10 minutos.\n");

        Assert.Equal(food, d.Components.FirstOrDefault(c => c.Name == "MASA")?.Ingredients[0].Foods[0].Food);
    }

    [Theory]
    [InlineData("primo impasto        tutto", "it", "primo impasto")]
    [InlineData("poolish en entier", "fr", "poolish")]
    [InlineData("Vorteig gesamt", "de", "Vorteig")]
    [InlineData("poolish all of it", "en", "poolish")]
    public void Words_for_the_whole_behind_a_name_are_no_part_of_it(string line, string lang, string food) =>
        Assert.Equal(food, Reading.CardReader.ReadLine(line, lang).Foods[0].Food);

    [Theory]
    [InlineData("surtout", "fr", "surtout")]
    [InlineData("Mehl für alles", "de", "Mehl")]
    public void A_word_that_only_ends_so_stays(string line, string lang, string food) =>
        Assert.StartsWith(food, Reading.CardReader.ReadLine(line, lang).Foods[0].Food, StringComparison.Ordinal);

    [Fact]
    public void Names_in_small_letters_that_open_blocks_are_parts()
    {
        Dish d = Read("lamb sandwich\n\nlamb\n2.2kg lamb shoulder\n30g salt\n\nharissa mayo (x2)\n200g mayo\n35g harissa\n\nbread\n8 rolls\n\nsalt lamb night before. 140c 6hrs.\n");

        Assert.Equal(["lamb: 2.2 kg lamb shoulder", "lamb: 30 g salt", "harissa mayo (x2): 200 g mayo", "harissa mayo (x2): 35 g harissa", "bread: 8 piece rolls"], Lines(d));
    }

    [Fact]
    public void One_food_without_an_amount_that_opens_a_list_is_no_name() =>
        Assert.DoesNotContain(Read("lamb sandwich\n\nlettuce\n200g mayo\n35g harissa\n\nmix 2 min\n").Components, c => c.Name == "lettuce");

    [Fact]
    public void A_unit_in_a_capital_makes_no_heading_of_a_food()
    {
        Dish d = Read("定食(10人前)\n\n【味噌汁】\nだし 2L\n味噌 160g\n\n作り方\n1. だしを温め、2分煮る。\n");

        Assert.Equal(["味噌汁: 2 l だし", "味噌汁: 160 g 味噌"], Lines(d));
    }
}
