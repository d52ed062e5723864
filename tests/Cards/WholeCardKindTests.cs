using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Kinds that sixty whole cards showed, each beside what looks like it and is none: names of parts that do not look like names, sums beside stages, a unit told once, a heat told as the same. Readings as a cook gives them: common practice, no source.</summary>
public sealed class WholeCardKindTests
{
    private const string Dough = "Baguette\n\nA - Poolish\n500 g flour\n500 g water\n\nB - Dough\n1 kg flour\n30 g salt\n\n";

    private static string[] Minutes(string step, string lang = "en") => [.. Reading.CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}"))];

    private static double?[] Degrees(Dish d) => [.. d.Components.SelectMany(c => c.Steps).Select(s => s.Temperatures.IsEmpty ? (double?)null : s.Temperatures[^1].Celsius)];

    [Fact]
    public void The_next_letter_heads_a_part_though_nothing_under_it_is_weighed() =>
        Assert.Contains("C - Bench:   Fine semolina", Lines(Read(Dough + "C - Bench\nFine semolina\n\n1. Mix 5 min.\n")));

    [Fact]
    public void A_letter_out_of_its_row_heads_nothing() =>
        Assert.DoesNotContain(Read(Dough + "E - Bench\nFine semolina\n\n1. Mix 5 min.\n").Components, c => c.Name == "E - Bench");

    [Fact]
    public void A_name_in_small_letters_over_bullets_is_a_part()
    {
        Dish d = Read("crab starter - after service\nfor 8\n\ncrab mix\n- 500g white crab meat, picked\n- lime juice, to taste\n\nbrown crab custard\n- 200g brown crab meat\n- 4 yolks\n\nmelba\n- half a sourdough loaf\n- olive oil\n\nmix the crab last minute!!\ncustard: steam at 85 C for 18 min\n");

        Assert.Equal(["crab mix: 500 g white crab meat", "crab mix:   lime juice", "brown crab custard: 200 g brown crab meat", "brown crab custard: 4 piece yolks", "melba: 0.5 piece sourdough loaf", "melba:   olive oil"], Lines(d));
    }

    [Theory]
    [InlineData("you will need")]
    [InlineData("add the rest")]
    [InlineData("salt, to taste")]
    public void Small_words_that_are_a_sentence_name_nothing(string line) =>
        Assert.Equal([""], Read($"crab starter\nfor 8\n\n{line}\n- 500g white crab meat\n- 80g mayonnaise\n\nmix 2 min\n").Components.Where(c => !c.Ingredients.IsEmpty).Select(c => c.Name));

    [Fact]
    public void A_list_that_takes_a_part_first_is_a_part()
    {
        Dish d = Read("Fruit loaf\n\nFIRST DOUGH\nStrong flour .... 720 g\nButter .......... 240 g\n\nSECOND DOUGH\nFirst dough, all of it\nStrong flour .... 180 g\nSalt ............ 11 g\n\n1. Mix 20 minutes.\n");

        Assert.Equal(["FIRST DOUGH: 720 g Strong flour", "FIRST DOUGH: 240 g Butter", "SECOND DOUGH:   First dough", "SECOND DOUGH: 180 g Strong flour", "SECOND DOUGH: 11 g Salt"], Lines(d));
        Assert.Equal("FIRST DOUGH", d.Components[1].Ingredients[0].Foods[0].FromComponent);
    }

    [Fact]
    public void A_food_without_an_amount_that_opens_a_block_heads_nothing() =>
        Assert.Equal([""], Read("Soup\n\n500 g leeks\n30 g butter\n\nSalt\nPepper\n200 ml cream\n\n1. Boil 20 min.\n").Components.Where(c => !c.Ingredients.IsEmpty).Select(c => c.Name));

    [Theory]
    [InlineData("Financiers\n\nBatter\nButter      360 g\nSugar       420 g\n\nFinish\nFreeze-dried raspberry   q.s.\n\nMETHOD\n1. Bake 14 min.\n", "Finish:   Freeze-dried raspberry")]
    [InlineData("## Baccalà, polenta\n\n**Baccalà**\n800 g di baccalà\n\n**Finitura**\n1 mazzetto di prezzemolo\npepe nero q.b.\n\n**Procedimento**\n1. Cuocere 20 minuti.\n", "Finitura:   pepe nero")]
    public void As_needed_is_a_line_of_the_list_it_stands_in(string card, string line) => Assert.Contains(line, Lines(Read(card)));

    [Fact]
    public void An_order_to_season_is_none() =>
        Assert.DoesNotContain(Lines(Read("Soup\n\n500 g leeks\n30 g butter\n\nTo finish\nSeason well and serve hot to taste.\n")), l => l.StartsWith("To finish", StringComparison.Ordinal));

    [Fact]
    public void The_sum_beside_the_stages_is_no_stage_and_one_unit_is_told_for_all()
    {
        Dish d = Read("# Sourdough\n\n| | Levain | Final dough | Formula | % |\n|---|---:|---:|---:|---:|\n| Bread flour | 80 | 720 | 800 | 80 |\n| Whole wheat flour | 20 | 180 | 200 | 20 |\n| Water | 100 | 620 | 720 | 72 |\n| Levain | – | 220 | – | – |\n| Total | 200 | 1740 | 1720 | 172 |\n\nAll weights in grams.\n\n1. Mix 5 min.\n");

        Assert.Equal(["Levain: 80 g Bread flour", "Levain: 20 g Whole wheat flour", "Levain: 100 g Water", "Final dough: 720 g Bread flour", "Final dough: 180 g Whole wheat flour", "Final dough: 620 g Water", "Final dough: 220 g Levain"], Lines(d));
        Assert.Empty(d.Doubts);
    }

    [Theory]
    [InlineData("Dough\n\nAll weights in grams\n\nIngredient     Sponge    Dough\nFlour          80        720\nWater          100       620\nSalt           2         18\n\n1. Mix 5 min.\n", "g")]
    [InlineData("Pâte\n\n| | Levain | Pâte |\n|---|---|---|\n| Farine | 80 | 720 |\n| Eau | 100 | 620 |\n\nPoids en grammes.\n\n1. Pétrir 5 min.\n", "g")]
    [InlineData("Soup\n\n| | Bar | Hall |\n|---|---|---|\n| Leeks | 4 | 18 |\n| Onions | 2 | 11 |\n\nWeigh the bowl, in grams, before you fill it.\n\n1. Boil 20 min.\n", "piece")]
    public void One_unit_beside_a_table_is_told_for_it_and_a_sentence_is_none(string card, string unit) =>
        Assert.All(Read(card).Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods), f => Assert.Equal(unit, f.Unit));

    [Fact]
    public void Three_sizes_of_one_list_are_no_stages_with_their_sum()
    {
        // The third is the sum of the first two in every row, and is a size all the same.
        Dish d = Read("# Loaf\n\n| | 1 loaf | 2 loaves | 3 loaves |\n|---|---:|---:|---:|\n| Flour | 500 g | 1000 g | 1500 g |\n| Water | 350 g | 700 g | 1050 g |\n| Salt | 10 g | 20 g | 30 g |\n\n1. Mix 5 min.\n");

        Assert.Equal(3, Lines(d).Length);
        Assert.Equal(2, d.Variants.Length);
    }

    [Fact]
    public void A_flour_without_a_unit_is_weighed_by_its_figure_and_asked()
    {
        Dish d = Read("# Sourdough\n\n| | Levain | Final dough |\n|---|---:|---:|\n| Bread flour | 80 | 720 |\n| Water | 100 | 620 |\n\n1. Mix 5 min.\n");

        Assert.Equal(["Levain: 80 g Bread flour", "Levain: 100 g Water", "Final dough: 720 g Bread flour", "Final dough: 620 g Water"], Lines(d));
        Assert.Contains(d.Doubts, q => q.Question.Contains("Bread flour", StringComparison.Ordinal));
    }

    [Fact]
    public void A_figure_behind_a_flour_in_a_list_stays_its_type() => Assert.Null(Reading.CardReader.ReadLine("farine type 55", "fr").Foods[0].Amount);

    [Fact]
    public void A_share_in_a_food_s_name_does_not_hide_the_food() =>
        Assert.Equal(["Lamination: 700 g Dry butter 84%"], Lines(Read("# Croissants\n\n| Lamination | |\n|---|---|\n| Dry butter 84% | 700 g |\n\n1. Lock in the butter, rest 45 min.\n")).Select(l => l.Contains("84%", StringComparison.Ordinal) ? l : l + " 84%"));

    [Theory]
    [InlineData("- Pears in syrup 5", "en", 5.0, "Pears in syrup")]
    [InlineData("- Anchois à l'huile 8", "fr", 8.0, "Anchois à l'huile")]
    [InlineData("- Bread in oven 5", "en", null, "Bread in oven 5")]
    [InlineData("- Pears in box 5", "en", null, "Pears in box 5")]
    public void What_a_food_is_kept_in_does_not_hide_its_count(string line, string lang, double? amount, string food)
    {
        FoodAmount read = Assert.Single(Reading.CardReader.ReadLine(line, lang).Foods);

        Assert.Equal((amount, food), (read.Amount, read.Food));
    }

    [Fact]
    public void A_block_of_fish_heads_its_list() =>
        Assert.Equal(["胡麻豆腐: 100 g 練り胡麻", "胡麻豆腐: 3 g 塩", "鯛の昆布締め: 1 block 鯛", "鯛の昆布締め: 6 g 塩"], Lines(Read("八寸\n\n胡麻豆腐\n練り胡麻 100g\n塩 3g\n\n鯛の昆布締め\n鯛 1さく(300g)\n塩 6g\n\n鯛に塩をして20分おく。\n")));

    [Theory]
    [InlineData("Cure 4 hours, cook at 68 °C for 24 hours. Press overnight.", "240-240", "1440-1440", "-")]
    [InlineData("Retard overnight (12-16 hours).", "720-960")]
    [InlineData("Retard overnight in the fridge. 12-16 h.", "720-960")]
    [InlineData("Retard 12 hours, overnight.", "720-720")]
    public void A_night_is_told_in_hours_only_beside_it(string step, params string[] minutes) => Assert.Equal(minutes, Minutes(step));

    [Theory]
    [InlineData("Fill, cut with a 6 cm ring. Holds on semolina 4 hours.", "en")]
    [InlineData("Monter la sauce. Tient 2 heures au chaud.", "fr")]
    [InlineData("Cortar. Aguanta 4 horas en la nevera.", "es")]
    public void How_long_a_thing_holds_is_no_wait(string step, string lang)
    {
        Assert.Empty(Minutes(step, lang));
        Assert.Single(Reading.CardReader.ReadStep(step, lang).Storage);
    }

    [Fact]
    public void To_hold_it_is_one() => Assert.Equal(["240-240"], Minutes("Fill, cut with a 6 cm ring. Hold on ice 4 hours."));

    [Theory]
    [InlineData("1. Crisp 8 min in the oven at 180 °C.\n2. Black pudding, same oven 4 min.\n", 180.0, 180.0)]
    [InlineData("1. Crisp 8 min in the oven at 180 °C.\n2. Mix in the same oven dish 4 min.\n", 180.0, null)]
    [InlineData("1. Cook the eggs in the water bath at 64 °C for 1 h.\n2. Hold the leeks at the same temperature 20 min.\n", 64.0, 64.0)]
    [InlineData("1. Cook the eggs in the water bath at 64 °C for 1 h.\n2. Leeks, same oven 20 min.\n", 64.0, null)]
    [InlineData("1. Cool the syrup to 40 °C.\n2. Add the gel at the same temperature.\n", 40.0, null)]
    public void The_same_heat_is_the_one_told_last(string steps, params double?[] degrees) =>
        Assert.Equal(degrees, Degrees(Read("Plate\n\n- 500 g pork\n- 200 g black pudding\n\n" + steps)));

    [Fact]
    public void A_Spanish_order_to_bake_goes_on_with_the_oven() =>
        Assert.Equal([200, 200, null], Degrees(Read("Tarta\n\n- 600 g de queso\n- 4 huevos\n\nPreparación\n1. Precalienta el horno a 200 °C.\n2. Bate los quesos. Hornea 40 minutos.\n3. Deja reposar 10 minutos.\n")));

    [Fact]
    public void A_bold_first_line_over_its_portions_is_the_title()
    {
        Dish d = Read("**Ravioli, sage butter**\nPortions: 10\n\n**Pasta**\n- 500 g flour\n- 12 egg yolks\n\n**Method**\n1. Work 10 minutes.\n");

        Assert.Equal(("Ravioli, sage butter", 10), (d.Title, Assert.Single(d.Yields).Amount));
        Assert.Equal("Pasta", Assert.Single(d.Components).Name);
    }

    [Fact]
    public void A_bold_first_line_over_its_list_is_a_part() =>
        Assert.Equal(["Pasta", "Filling"], Read("**Pasta**\n500 g flour\n12 egg yolks\n\n**Filling**\n120 g ricotta\n\n1. Work 10 minutes.\n").Components.Select(c => c.Name));
}
