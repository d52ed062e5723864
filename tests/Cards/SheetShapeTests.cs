using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Shapes of sheets: parts side by side in one table, rows that name a part, columns of notes, cuts and times, pages of a wiki; each with a near miss. Our own examples.</summary>
public sealed class SheetShapeTests
{
    private static string Outline(string card) => string.Join(" | ", Read(card).Components.Select(c => $"{c.Name}: {string.Join(", ", c.Ingredients.SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}").Trim()))}"));

    [Theory]
    [InlineData("| Scones | | Jam | |\n|---|---|---|---|\n| flour | 450 g | plums | 1 kg |\n| butter | 100 g | sugar | 900 g |\n| eggs | 2 | | |")]
    [InlineData("| | Scones | | Jam |\n|---|---|---|---|\n| 450 g | flour | 1 kg | plums |\n| 100 g | butter | 900 g | sugar |\n| 2 | eggs | | |")]
    [InlineData("Scones                Jam\nflour       450 g     plums    1 kg\nbutter      100 g     sugar    900 g\neggs        2")]
    [InlineData("Scones\t\tJam\t\nflour\t450 g\tplums\t1 kg\nbutter\t100 g\tsugar\t900 g\neggs\t2\t\t")]
    [InlineData("| Scones | | Jam | |\n|---|---|---|---|\n| Ingredient | Qty | Ingredient | Qty |\n| flour | 450 g | plums | 1 kg |\n| butter | 100 g | sugar | 900 g |\n| eggs | 2 | | |")]
    public void Parts_side_by_side_are_both_read(string table) =>
        Assert.Equal("Scones: 450 g flour, 100 g butter, 2 piece eggs | Jam: 1 kg plums, 900 g sugar", Outline($"Cream tea\n\n{table}\n\nBake the scones 12 minutes."));

    [Fact]
    public void A_short_row_far_in_belongs_to_the_right_part()
    {
        string outline = Outline("Cream tea\n\nScones                          Jam\nflour                450 g      plums          1 kg\nbutter               100 g      sugar          900 g\nmilk                 250 ml     pectin         10 g\nsalt                 5 g        vanilla        2 g\n                                lemon juice    30 ml\neggs                 2\n\nBake 12 minutes.");

        Assert.Equal("Scones: 450 g flour, 100 g butter, 250 ml milk, 5 g salt, 2 piece eggs | Jam: 1 kg plums, 900 g sugar, 10 g pectin, 2 g vanilla, 30 ml lemon juice", outline);
    }

    [Fact]
    public void Parts_side_by_side_are_both_read_in_Japanese() =>
        Assert.Equal("生地: 100 g 薄力粉, 3 piece 卵 | クリーム: 200 ml 生クリーム, 2 tbsp 砂糖", Outline("# ケーキ\n\n| 生地 | | クリーム | |\n|---|---|---|---|\n| 薄力粉 | 100g | 生クリーム | 200ml |\n| 卵 | 3個 | 砂糖 | 大さじ2 |\n\n1. 170℃で20分焼く。"));

    [Theory]
    [InlineData("| Layer | Ingredient | Amount |\n|---|---|---|\n| Base | Biscuits | 200 g |\n| | Butter | 90 g |\n| Filling | Cream cheese | 600 g |\n| | Butter | 40 g |\n")]
    [InlineData("| Layer | Ingredient | Amount |\n|---|---|---|\n| Base | Biscuits | 200 g |\n| Base | Butter | 90 g |\n| Filling | Cream cheese | 600 g |\n| Filling | Butter | 40 g |\n")]
    public void A_first_column_that_goes_on_names_parts(string table) =>
        Assert.Equal("Base: 200 g Biscuits, 90 g Butter | Filling: 600 g Cream cheese, 40 g Butter", Outline($"# Cheesecake\n\n{table}\n1. Bake 40 minutes."));

    [Theory]
    [InlineData("| Category | Ingredient | Amount |\n|---|---|---|\n| Dairy | Cream cheese | 600 g |\n| | Butter | 90 g |\n| Dry | Biscuits | 200 g |\n| | Sugar | 40 g |\n")]
    [InlineData("| Aisle | Ingredient | Amount |\n|---|---|---|\n| Dairy | Cream cheese | 600 g |\n| Dry | Biscuits | 200 g |\n| Dry | Sugar | 40 g |\n| Dairy | Butter | 90 g |\n")]
    public void Groups_of_goods_name_no_part(string table) =>
        Assert.Equal("", Assert.Single(Read($"# Cheesecake\n\n{table}\n1. Bake 40 minutes.").Components).Name);

    [Fact]
    public void A_name_told_in_every_row_is_the_part() =>
        Assert.Equal("茶碗蒸し: 6 piece 卵, 900 ml だし | 蟹あん: 200 g ずわい蟹, 12 g 葛粉", Outline("# 茶碗蒸し 蟹あん\n\n| 部分 | 材料 | 分量 |\n|---|---|---|\n| 茶碗蒸し | 卵 | 6個 |\n| 茶碗蒸し | だし | 900ml |\n| 蟹あん | ずわい蟹 | 200g |\n| 蟹あん | 葛粉 | 12g |\n\n1. 18分蒸す。"));

    [Fact]
    public void Sizes_side_by_side_repeat_no_food_as_its_cut() =>
        Assert.Equal(": 500 g flour, 300 g milk", Outline("# Buns\n\n| Ingredient | 10 buns | Ingredient | 20 buns |\n|---|---|---|---|\n| flour | 500 g | flour | 1000 g |\n| milk | 300 g | milk | 600 g |\n\n1. Bake 14 minutes."));

    [Fact]
    public void Parts_side_by_side_take_the_unit_of_their_head() =>
        Assert.Equal("Scones: 450 g flour, 100 g butter | Jam: 1000 g plums, 900 g sugar", Outline("Cream tea\n\n| Scones | g | Jam | g |\n|---|---|---|---|\n| flour | 450 | plums | 1000 |\n| butter | 100 | sugar | 900 |\n\nBake 12 minutes."));

    [Theory]
    [InlineData("| Ingredient | Qty | Ingredient | Qty |\n|---|---|---|---|\n| flour | 450 g | plums | 1 kg |\n| butter | 100 g | sugar | 900 g |\n")]
    [InlineData("| flour | 450 g | plums | 1 kg |\n| butter | 100 g | sugar | 900 g |\n")]
    public void One_list_in_two_halves_stays_one(string table) =>
        Assert.Equal(": 450 g flour, 100 g butter, 1 kg plums, 900 g sugar", Outline($"Cream tea\n\n{table}\nBake 12 minutes."));

    [Theory]
    [InlineData("| Ingredient | Qty | Supplier | Price |\n|---|---|---|---|\n| flour | 450 g | Mill | 1.20 |\n| butter | 100 g | Dairy | 2.40 |")]
    [InlineData("| Ingredient | Qty | Storage | Days |\n|---|---|---|---|\n| flour | 450 g | dry | 90 |\n| butter | 100 g | cold | 20 |")]
    [InlineData("| Ingredient | Qty | Note | Temp |\n|---|---|---|---|\n| flour | 450 g | sifted | 18 °C |\n| butter | 100 g | soft | 20 °C |")]
    public void A_second_column_of_words_is_no_second_list(string table)
    {
        string outline = Outline($"Cream tea\n\n{table}\n\nBake 12 minutes.");

        Assert.StartsWith(": 450 g flour", outline, StringComparison.Ordinal);
        Assert.Contains("100 g butter", outline, StringComparison.Ordinal);
        Assert.DoesNotContain(" | ", outline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Menge\tEinheit\tZutat\tHinweis\nVorteig\t\t\t\n500\tg\tMehl\t\n300\tg\tWasser\t18 °C\nHauptteig\t\t\t\n2500\tg\tMehl\t\n60\tg\tSalz\tfein\n")]
    [InlineData("| Menge | Einheit | Zutat | Hinweis |\n|---|---|---|---|\n| Vorteig | | | |\n| 500 | g | Mehl | |\n| 300 | g | Wasser | 18 °C |\n| Hauptteig | | | |\n| 2500 | g | Mehl | |\n| 60 | g | Salz | fein |\n")]
    public void A_row_of_one_name_heads_a_part_and_a_note_weighs_nothing(string table) =>
        Assert.Equal("Vorteig: 500 g Mehl, 300 g Wasser | Hauptteig: 2500 g Mehl, 60 g Salz", Outline($"Laugenbrezeln\n\n{table}\n14 Min. bei 220 °C backen."));

    [Fact]
    public void Rows_that_sum_what_stands_under_them_name_parts() =>
        Assert.Equal("Sponge: 500 g Flour, 300 g Water | Dough: 1000 g Flour, 250 g Butter", Outline("# Brioche\n\n| Ingredient | Weight |\n|---|---|\n| **Sponge** | **800 g** |\n| Flour | 500 g |\n| Water | 300 g |\n| **Dough** | **1250 g** |\n| Flour | 1000 g |\n| Butter | 250 g |\n\n1. Bake 14 minutes."));

    [Theory]
    [InlineData("| Milk | 500 g |\n| Cream | 250 g |\n| Sugar | 250 g |\n", 3)]
    [InlineData("| Milk | 500 g |\n| Cream | 250 g |\n| Sugar | 250 g |\n| Butter | 200 g |\n| Flour | 120 g |\n| Starch | 80 g |\n", 6)]
    [InlineData("| Sponge | 800 g |\n| Flour | 500 g |\n| Water | 310 g |\n| Dough | 1250 g |\n| Flour | 1000 g |\n| Butter | 250 g |\n", 6)]
    public void Rows_that_happen_to_add_up_stay_foods(string rows, int foods) =>
        Assert.Equal(foods, Read($"# Custard\n\n| Ingredient | Weight |\n|---|---|\n{rows}\n1. Cook 14 minutes.").Components.Sum(c => c.Ingredients.Length));

    [Fact]
    public void A_cut_in_figures_weighs_nothing() =>
        Assert.Equal(": 400 g Carrots, 300 g Leeks", Outline("Stew\n\n| Ingredient | Amount | Cut |\n|---|---|---|\n| Carrots | 400 g | 2 cm |\n| Leeks | 300 g | 1 cm rings |\n\nStew 40 minutes."));

    [Fact]
    public void A_column_of_cuts_alone_holds_the_foods() =>
        Assert.Equal(": 2 kg Brisket, 1.5 kg Short rib", Outline("Roast\n\n| Cut | Weight |\n|---|---|\n| Brisket | 2 kg |\n| Short rib | 1.5 kg |\n\nRoast 4 hours at 140°C."));

    [Fact]
    public void Headings_of_a_wiki_name_and_its_hashes_count_steps()
    {
        Dish d = Read("== Carrot cake ==\n''Serves 12''\n\n=== Cake ===\n* 300 g carrots, grated\n* 4 eggs\n\n=== Frosting ===\n* 300 g cream cheese\n\n=== Method ===\n# Whisk eggs for 4 minutes, then the carrots.\n# Bake for 50 minutes at 160 °C.\n# Beat the cream cheese 3 minutes.");

        Assert.Equal("Carrot cake", d.Title);
        Assert.Equal(12, d.Yields.Single().Amount);
        Assert.Equal(["Cake", "Frosting"], d.Components.Select(c => c.Name));
        Assert.Equal([4, 50, 3], d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times).Select(t => t.MinutesMin!.Value));
    }

    [Theory]
    [InlineData("# Scones\n\n== Dough ==\n- 450 g flour\n- 100 g butter\n\n== Jam ==\n- 1 kg plums\n\n1. Rub in the butter.\n2. Boil the plums 20 minutes.")]
    [InlineData("# Scones\n\n## Dough\n- 450 g flour\n- 100 g butter\n\n## Jam\n- 1 kg plums\n\n## Method\n1. Rub in the butter.\n2. Boil the plums 20 minutes.")]
    public void A_hash_over_all_headings_is_the_title(string card)
    {
        Assert.Equal("Scones", Read(card).Title);
        Assert.Equal("Dough: 450 g flour, 100 g butter | Jam: 1 kg plums", Outline(card));
        Assert.Equal(2, Read(card).Components.SelectMany(c => c.Steps).Count());
    }
}
