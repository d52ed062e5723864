using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Kinds of tables and columns a sixth blind set showed, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class TableKindTests
{
    private static Doubt[] Asked(string text) => [.. Read(text).Doubts];

    private static string Said(Dish d) => string.Join("\n", d.Notes.Concat(d.Components.SelectMany(c => c.Notes)).Select(n => n.Text));

    [Fact]
    public void Pounds_and_ounces_in_two_columns_are_one_amount()
    {
        Dish d = Read("Macaroni\n\nINGREDIENTS              LB    OZ\n-------------------------------------\nElbow macaroni            4     8\nButter                          12\nCheddar cheese            5\nSalt                            2\n\n1. Bake 30 min at 350 F.\n");

        Assert.Equal([": 4.5 lb Elbow macaroni", ": 12 oz Butter", ": 5 lb Cheddar cheese", ": 2 oz Salt"], Lines(d));
    }

    [Fact]
    public void Kilos_and_grams_in_two_columns_are_one_amount() =>
        Assert.Equal([": 1.25 kg Mehl", ": 800 g Wasser", ": 3 kg Butter"], Lines(Read("Teig\n\n| Zutat | kg | g |\n|---|---|---|\n| Mehl | 1 | 250 |\n| Wasser |  | 800 |\n| Butter | 3 |  |\n\n1. 10 min kneten.\n")));

    [Fact]
    public void Grams_and_ounces_of_the_same_are_two_measures_and_are_not_added()
    {
        Dish d = Read("Dough\n\n| Ingredient | g | oz |\n|---|---|---|\n| Flour | 500 | 17.6 |\n| Water | 300 | 10.6 |\n\n1. Mix 5 min.\n");

        Assert.Equal([500, 300], d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => f.Grams));
    }

    [Theory]
    [InlineData("Ice\n\nIngredient          Weight g    Fat g   Sugars g   Solids g\nWhole milk              2500       90          0        315\nCream                    900      360          0        405\nSucrose                  480        0        480        480\n\nPasteurise 85 °C, 2 min.\n", ": 2500 g Whole milk", ": 900 g Cream", ": 480 g Sucrose")]
    [InlineData("Glace\n\n| Ingrédient | Poids (g) | MG | Sucres |\n|---|---|---|---|\n| Lait | 2500 | 90 | 0 |\n| Crème | 900 | 315 | 0 |\n\n1. Pasteuriser 2 min à 85 °C.\n", ": 2500 g Lait", ": 900 g Crème")]
    [InlineData("Gelato\n\n| Ingrediente | Peso (g) | Grassi | Zuccheri |\n|---|---|---|---|\n| Latte | 2500 | 90 | 0 |\n| Panna | 900 | 315 | 0 |\n\n1. Pastorizzare 2 min a 85 °C.\n", ": 2500 g Latte", ": 900 g Panna")]
    public void What_a_food_is_made_of_is_no_amount_of_it(string card, params string[] lines)
    {
        Dish d = Read(card);

        Assert.Equal(lines, Lines(d));
        Assert.Contains("315", Said(d), StringComparison.Ordinal);
    }

    [Fact]
    public void Fat_and_sugar_that_stand_in_doughs_are_amounts() =>
        Assert.Contains("Fat: 40 g Brioche", Lines(Read("Doughs\n\n| Dough | Flour | Fat |\n|---|---|---|\n| Brioche | 100 g | 40 g |\n| Bun | 100 g | 12 g |\n\n1. Mix 5 min.\n")));

    [Theory]
    [InlineData("Wurst\n\n| Gewürz | g/kg | Ansatz |\n|---|---|---|\n| Salz | 18 | 180 g |\n| Pfeffer | 2,5 | 25 g |\n\n1. 3 min kneten.\n")]
    [InlineData("Saucisse\n\n| Ingrédient | par kg | Lot |\n|---|---|---|\n| Sel | 18 | 180 g |\n| Poivre | 2,5 | 25 g |\n\n1. Mélanger 3 min.\n")]
    public void A_rate_beside_the_batch_is_no_amount(string card) =>
        Assert.Equal(["180 g", "25 g"], Read(card).Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit}")));

    [Theory]
    [InlineData("Eel\n\nElement            per plate     x30\nEel                35 g          1050 g\nApple gel          12 g          360 g\nDill oil           4 ml          120 ml\n\n1. Warm 2 min.\n", 3)]
    [InlineData("Aal\n\n| Zutat | je Teller | gesamt |\n|---|---|---|\n| Aal | 35 g | 1050 g |\n| Gel | 12 g | 360 g |\n| Öl | 4 g | 120 g |\n\n1. 2 min kochen.\n", 3)]
    [InlineData("Salmorejo\n\n| Producto | P. bruto | P. neto |\n|---|---|---|\n| Tomate | 2000 g | 1800 g |\n| Ajo | 20 g | 16 g |\n\n1. Triturar 2 min.\n", 2)]
    [InlineData("Soup\n\n| Ingredient | Bar | Hall |\n|---|---|---|\n| Leek | 100 g | 500 g |\n| Potato | 300 g | 1500 g |\n| Cream | 50 g | 250 g |\n\n1. Boil 20 min.\n", 3)]
    public void One_list_in_two_sizes_is_asked_and_never_added(string card, int foods)
    {
        Dish d = Read(card);

        Assert.Equal(foods, Lines(d).Length);
        Assert.Equal(foods, Assert.Single(d.Variants).Ingredients.Length);
        Assert.Contains(Asked(card), q => q.Question.Contains("Which is meant", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_doughs_side_by_side_are_stages_whatever_number_they_bear()
    {
        const string card = "COLOMBA\n\nIngredienti          1° impasto    2° impasto\n                         g             g\nFarina forte           1200           300\nLievito madre           350            -\nBurro                   360           340\nUvetta                   -            600\nTotale                 1910          1240\n\n1. Lievitare 12 ore.\n";
        Dish d = Read(card);

        Assert.Equal(["1° impasto: 1200 g Farina forte", "1° impasto: 350 g Lievito madre", "1° impasto: 360 g Burro", "2° impasto: 300 g Farina forte", "2° impasto: 340 g Burro", "2° impasto: 600 g Uvetta"], Lines(d));
        Assert.Empty(d.Variants);
    }

    [Fact]
    public void Versions_with_numbers_are_not_added()
    {
        Dish d = Read("Dough\n\n| Ingredient | Version 1 | Version 2 |\n|---|---|---|\n| Flour | 500 g | 450 g |\n| Water | 300 g | 330 g |\n\n1. Mix 5 min.\n");

        Assert.Equal(2, Lines(d).Length);
        Assert.Single(d.Variants);
    }

    [Fact]
    public void Numbers_of_goods_prices_and_allergens_are_no_amounts()
    {
        Dish d = Read("Menü 2\n\nPos  Art.-Nr.  Artikel              Menge    EK €/kg   Allerg.\n--- GULASCH ---\n10   20031     Rinderwade           18 kg      9,40\n20   31007     Zwiebeln             9 kg       0,80\n--- SPÄTZLE ---\n50   50001     Weizenmehl           8 kg       0,60     a\n60   50210     Vollei               4,5 kg     3,90     c\n\n1. 40 min rösten.\n");

        Assert.Equal(["GULASCH: 18 kg Rinderwade", "GULASCH: 9 kg Zwiebeln", "SPÄTZLE: 8 kg Weizenmehl", "SPÄTZLE: 4.5 kg Vollei"], Lines(d));
        Assert.Contains("Weizenmehl a; Vollei c", Said(d), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Cake\n\n| Item | Cost | Qty |\n|---|---|---|\n| Flour | 1.20 | 500 g |\n| Butter | 8.40 | 250 g |\n\n1. Bake 20 min.\n")]
    [InlineData("Tarte\n\n| Produit | Prix | Quantité |\n|---|---|---|\n| Farine | 1,20 | 500 g |\n| Beurre | 8,40 | 250 g |\n\n1. Cuire 20 min.\n")]
    [InlineData("Torta\n\n| Prodotto | Costo | Peso |\n|---|---|---|\n| Farina | 1,20 | 500 g |\n| Burro | 8,40 | 250 g |\n\n1. Cuocere 20 min.\n")]
    [InlineData("生地\n\n| 材料 | 単価 | 分量 |\n|---|---|---|\n| 薄力粉 | 120 | 500g |\n| バター | 840 | 250g |\n\n1. 20分焼く。\n")]
    public void A_price_is_never_an_amount(string card) =>
        Assert.Equal([500, 250], Read(card).Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => f.Grams));

    [Fact]
    public void A_head_of_two_columns_names_the_part_and_the_unit()
    {
        Dish d = Read("Mischbrot\n\nSauerteig                        kg\nRoggenmehl 1150                  12,000\nWasser                            9,600\n                                 ------\n                                 21,600\nHauptteig                        kg\nWeizenmehl 812                   12,000\nSalz                              0,800\n\n1. Kneten 6 min\n");

        Assert.Equal(["Sauerteig: 12 kg Roggenmehl 1150", "Sauerteig: 9.6 kg Wasser", "Hauptteig: 12 kg Weizenmehl 812", "Hauptteig: 0.8 kg Salz"], Lines(d));
        Assert.Empty(d.Remarks);
    }

    [Fact]
    public void A_numbered_part_over_its_column_begins_behind_a_method_too() =>
        Assert.Equal(["CARRILLERA: 2.5 kg Carrillera", "CARRILLERA: 0.8 kg Cebolla", "PURÉ: 1.5 kg Boniato", "PURÉ: 0.012 kg Sal"], Lines(Read("FICHA 27\n\nELABORACIÓN 1: CARRILLERA\nGénero                 Cantidad (kg)\nCarrillera             2,500\nCebolla                0,800\nProceso\nDorar y guisar 2 h 30 min tapado.\n\nELABORACIÓN 2: PURÉ\nGénero                 Cantidad (kg)\nBoniato                1,500\nSal                    0,012\nProceso\nAsar el boniato 60 min a 180 ºC.\n")));

    [Fact]
    public void The_size_of_a_batch_gives_no_figure_its_unit()
    {
        const string card = "Rub\n\nSPICE             batch 10 kg\nSalt              180\nPaprika           250\n\nMix 3 min.\n";

        Assert.Equal(["SPICE: 180 g Salt", "SPICE: 250 g Paprika"], Lines(Read(card)));
        Assert.NotEmpty(Asked(card));
    }

    [Fact]
    public void Empty_cells_of_a_pasted_sheet_go_on_with_the_part_above() =>
        Assert.Equal(["Brownie: 320 g Chocolate", "Brownie: 240 g Butter", "Cream: 250 g Mascarpone", "Cream: 45 g Malt powder"], Lines(Read("Part\tIngredient\tg\tRemark\nBrownie\tChocolate\t320\t\n\tButter\t240\t\nCream\tMascarpone\t250\t\n\tMalt powder\t45\tsift\n\tSUM\t855\t\n\nBake 22 min at 170°C.\n")).Select(l => l.Replace(", sift", "", StringComparison.Ordinal)));

    [Fact]
    public void A_unit_told_over_the_foods_holds_for_every_column() =>
        Assert.Equal(["Poolish: 300 g Flour", "Poolish: 300 g Water", "Dough: 700 g Flour", "Dough: 320 g Water"], Lines(Read("Bread\n\n| Ingredients (g) | Poolish | Dough |\n|---|---|---|\n| Flour | 300 | 700 |\n| Water | 300 | 320 |\n\n1. Mix 5 min.\n")));

    [Fact]
    public void Figures_whose_unit_nobody_tells_are_asked()
    {
        const string card = "Bread\n\n| Ingredients | Poolish | Dough |\n|---|---|---|\n| Flour | 300 | 700 |\n| Water | 300 | 320 |\n\n1. Mix 5 min.\n";

        Assert.NotEmpty(Asked(card));
    }

    [Fact]
    public void Numbers_of_an_outline_belong_to_no_name()
    {
        Dish d = Read("4.7 Honey madeleines\n\n4.7.1 Batter\n   Eggs 300 g\n   Sugar 240 g\n\n4.7.2 Glaze\n   Honey 80 g\n   Lemon juice 25 g\n\n4.7.3 Procedure\n4.7.3.1 Whisk eggs and sugar.\n4.7.3.2 Bake 9 minutes at 200 °C.\n");

        Assert.Equal("Honey madeleines", d.Title);
        Assert.Equal(["Batter: 300 g Eggs", "Batter: 240 g Sugar", "Glaze: 80 g Honey", "Glaze: 25 g Lemon juice"], Lines(d));
        Assert.Equal(["Whisk eggs and sugar.", "Bake 9 minutes at 200 °C."], d.Components.SelectMany(c => c.Steps).Select(s => s.Text));
    }

    [Fact]
    public void An_amount_inside_an_outline_keeps_its_figure() =>
        Assert.Contains("1.5 kg flour", string.Join("\n", Lines(Read("Rolls\n\n1.5.1 Dough\n1.5 kg flour\n20 g salt\n\n1.5.2 Glaze\n80 g honey\n25 g water\n\n1.5.3 Method\nBake 9 minutes.\n"))), StringComparison.Ordinal);

    [Fact]
    public void Amounts_with_a_point_are_no_outline() =>
        Assert.Equal([": 1.5 kg flour", ": 1.6 l water"], Lines(Read("Dough\n\n1.5 kg flour\n1.6 l water\n\n1. Mix 5 min.\n")));

    [Fact]
    public void Shares_and_prices_alone_weigh_nothing()
    {
        Dish d = Read("# Dough\n\n| Item | % |\n|---|---|\n| Flour | 100 |\n| Water | 65 |\n\nMix.\n");

        Assert.Equal(["Flour", "Water"], Lines(d).Select(l => l[(l.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim()));
        Assert.Contains("Water: 65 %", Said(d), StringComparison.Ordinal);
        Assert.Empty(d.Doubts);
        Assert.DoesNotContain(Lines(Read("# Stock\n\n| Item | Price |\n|---|---|\n| Butter | 840 |\n| Flour | 120 |\n\nMix.\n")), l => l.Any(char.IsAsciiDigit));
    }

    [Fact]
    public void Grams_to_the_kilogram_alone_are_shares()
    {
        Dish d = Read("# Farce\n\n| Item | g/kg |\n|---|---|\n| Salt | 18 |\n| Pepper | 3 |\n\nMix.\n");

        Assert.DoesNotContain(Lines(d), l => l.Contains("piece", StringComparison.Ordinal) || l.Contains(" g ", StringComparison.Ordinal));
        Assert.Equal([1.8, 0.3], d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Select(f => f.Percent));
    }

    [Fact]
    public void Shares_beside_a_weight_leave_it_the_amount() =>
        Assert.Equal(["1000 g Flour", "650 g Water"], Lines(Read("# Dough\n\n| Item | % | g |\n|---|---|---|\n| Flour | 100 | 1000 |\n| Water | 65 | 650 |\n\nMix.\n")).Select(l => l[(l.IndexOf(": ", StringComparison.Ordinal) + 2)..]));
}
