namespace Coulisse.Cards.Tests;

/// <summary>Sheets pasted whole: labels over the head, the list, the method in the same columns; each beside what looks like it and is none. Our own examples.</summary>
public sealed class SpreadsheetKindTests
{
    [Theory]
    [InlineData("Base\t\t\t\nYield\t5 l\t\t\nItem\tQty\tUnit\tPrep\noil\t150\tml\t\nonions\t800\tg\tdiced\n\t\t\t\n1\tSweat the onions 20 min\t\t\n2\tBlend\t\t\n", 5, "l")]
    [InlineData("Dish\tSlice\t\nServes\t8\t\nIngredient\tAmount\tNote\noil\t150 ml\t\nonions\t800 g\tdiced\nMethod\t\t\nSweat the onions 20 min.\t\t\n", 8, "portions")]
    [InlineData("Base;;;\nYield;12 portions;;\nItem;Qty;Unit;Prep\noil;150;ml;\nonions;800;g;diced\n;;;\nMethod;;;\n1;Sweat the onions 20 min;;\n", 12, "portions")]
    [InlineData("Base\t\t\nServes\t6\t\noil\t150\tml\nonions\t800\tg\nsalt\t20\tg\n\n1\tSweat the onions in the oil 20 min\t\n", 6, "portions")]
    public void Labels_over_the_list_are_of_the_card_and_numbers_under_it_of_the_steps(string sheet, double amount, string unit)
    {
        Dish d = Read(sheet);

        Assert.Contains(d.Yields, y => y.Amount == amount && y.Unit == unit);
        Assert.Equal(["150 ml oil", "800 g onions"], Lines(d).Take(2));
        Assert.Equal(20, d.Components.Single().Steps[0].Times.Single().MinutesMin);
        Assert.DoesNotContain(Lines(d), l => l.Contains("Sweat", StringComparison.Ordinal) || l.Contains("Qty", StringComparison.Ordinal) || l.Contains("Amount", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Tarta\t\t\nRaciones\t8\t\nIngrediente\tCantidad\tUnidad\nharina\t500\tg\nsal\t10\tg\n\t\t\nRelleno\t\t\nleche\t1\tl\n\t\t\nElaboración\t\t\nCocer 5 minutos\t\t\n", "500 g harina|10 g sal|Relleno: 1 l leche")]
    [InlineData("プリン\t\t\n分量\t6個分\t\n材料\t量\t備考\n卵\t4個\t\n牛乳\t500ml\t\n\t\t\nカラメル\t\t\n砂糖\t80g\t\n\t\t\n作り方\t\t\n1\t砂糖を煮詰める\t\n2\t冷蔵庫で3時間冷やす\t\n", "4 piece 卵|500 ml 牛乳|カラメル: 80 g 砂糖")]
    [InlineData("Pâte\t\t\t\nRendement\t1,2 kg\t\t\nN°\tDenrée\tQuantité\tUnité\n1\tbeurre\t300\tg\n2\tsucre\t200\tg\n3\tœufs\t2\tpièces\nTotal\t\t0,6\tkg\n\t\t\t\n1\tCrémer le beurre et le sucre 5 min\t\t\n", "300 g beurre|200 g sucre|2 piece œufs")]
    [InlineData("Soup\t\t\t\nQty\tUnit\tIngredient\tNotes\n1.5\tkg\tcarrots\tpeeled\n2\t\tonions\tsliced\nsalt\n\t\t\t\n1\tSimmer it all 40 min\t\t\n", "1.5 kg carrots|2 piece onions|salt")]
    [InlineData("Sauce\t\t\nIngrédients\tQuantité\tUnité\nTomates\t4\tkg\nHuile\t15\tcl\nAil\t6\tgousses\n", "4 kg Tomates|15 cl Huile|6 piece Ail")]
    public void One_list_goes_on_over_empty_rows_and_names_of_parts(string sheet, string lines) =>
        Assert.Equal(lines.Split('|'), Read(sheet).Components.SelectMany(c => c.Ingredients.Where(l => l.Kind == LineKind.Ingredient).SelectMany(l => l.Foods).Select(f => (string.IsNullOrEmpty(c.Name) ? "" : c.Name + ": ") + FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}").Trim())));

    [Fact]
    public void A_second_head_under_the_name_of_a_part_begins_its_list()
    {
        Dish d = Read("Pie\t\t\nItem\tQty\tUnit\nleeks\t2\tkg\n\t\t\nPastry\t\t\nItem\tQty\tUnit\nflour\t500\tg\nbutter\t250\tg\n\t\t\n1\tBake the pie for 40 min\t\n");

        Assert.Equal(["2 kg leeks", "Pastry: 500 g flour", "Pastry: 250 g butter"], Lines(d));
    }

    [Fact]
    public void What_a_sheet_tells_of_the_house_is_no_food()
    {
        Dish d = Read("Kitchen A\tSeptember\t\t\nQuiche\t\t\t\nServes\t6\t\t\nIngredient\tQty\tUnit\tCost\nflour\t200\tg\t0.20\neggs\t4\t\t1.00\nCost per portion\t\t\t0.60\n\nBake 35 min at 180C\t\t\t\n");

        Assert.Equal("Quiche", d.Title);
        Assert.Equal(["200 g flour", "4 piece eggs"], Lines(d));
        Assert.Equal(35, d.Components.Single().Steps.Single().Times.Single().MinutesMin);
    }

    [Fact]
    public void A_method_in_columns_has_its_times()
    {
        Dish d = Read("Rezept\tGulasch\t\t\nPortionen\t20\t\t\nMenge\tEinheit\tZutat\tBemerkung\n4\tkg\tRinderschulter\tin Würfeln\n2\tkg\tZwiebeln\t\n\t\t\t\nArbeitsschritt\tDauer\t\t\nZwiebeln anschwitzen\t20 min\t\t\nFleisch zugeben und schmoren\t2 h\t\t\n");

        Assert.Equal("Gulasch", d.Title);
        Assert.Equal(["4 kg Rinderschulter", "2 kg Zwiebeln"], Lines(d));
        Assert.Equal([20, 120], d.Components.Single().Steps.Select(s => s.Times.Single().MinutesMin!.Value));
    }

    [Theory]
    [InlineData("1\tonion\tdiced\n2\tcarrots\tsliced\n3\teggs\tbeaten\n200 g\tbutter\t\n\nFry 5 min.\n", "1 piece onion|2 piece carrots|3 piece eggs|200 g butter")]
    [InlineData("Duck confit\n\n6\tduck legs\n60 g\tsalt\n1 kg\tduck fat\n\nSalt the legs overnight.\n", "6 piece duck legs|60 g salt|1 kg duck fat")]
    [InlineData("oil\t150\tml\t\nonions\t800\tg\tdiced\ngarlic\t12\tcloves\tsliced\n\nSweat the onions 20 min\n", "150 ml oil|800 g onions|12 clove garlic")]
    public void Counts_in_the_first_column_stay_counts_of_foods(string list, string lines) => Assert.Equal(lines.Split('|'), Lines(Read(list)));

    private static Dish Read(string card) => Told.Read(card);

    private static string[] Lines(Dish d) => [.. Told.Lines(d).Select(l => l.TrimStart(':', ' ').TrimEnd())];
}
