using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Sheets of costing and of bakeries pasted whole: columns in any order, their heads short, money and shares beside, parts in rows of their own; each beside a near miss. Our own examples.</summary>
public sealed class CostedSheetKindTests
{
    [Theory]
    [InlineData("SCHEDA PIATTO\tPeperonata\t\t\nCoperti\t6\t\t\n\t\t\t\nIngrediente\tQ.tà lorda\tU.M.\tCosto\nPeperoni\t1,5\tkg\t4,00\nCipolle\t400\tg\t0,40\nAceto\t50\tml\t0,10\nTOTALE\t\t\t4,50\n\nProcedimento\t\t\t\nStufare i peperoni 30 minuti\t\t\t\n", "Peperonata", "1.5 kg Peperoni|400 g Cipolle|50 ml Aceto")]
    [InlineData("FICHE TECHNIQUE\t\t\tRatatouille\nNb de couverts\t\t\t8\nDésignation\tUnité\tQté\tPU HT\nAubergines\tkg\t1,200\t2,10\nCourgettes\tkg\t0,900\t1,80\nHuile d'olive\tl\t0,150\t7,90\n\t\t\tTotal HT\nPROGRESSION\nSauter les légumes 20 min.\n", "Ratatouille", "1.2 kg Aubergines|0.9 kg Courgettes|0.15 l Huile d'olive")]
    [InlineData("ESCANDALLO\tPisto\nNº raciones\t10\n\nPRODUCTO\tCANT.\tUD.\tIMPORTE\nCalabacín\t2\tkg\t2,40\nHuevos\t10\tud\t1,80\nAceite\t0,25\tl\t1,10\nTOTAL\t\t\t5,30\n\nELABORACIÓN\nPochar el calabacín 25 minutos\n", "Pisto", "2 kg Calabacín|10 piece Huevos|0.25 l Aceite")]
    [InlineData("Rezeptur\tLinsensuppe\t\nPortionen\t12\t\nMenge\tEinheit\tArtikel\tWert\n1,200\tkg\tLinsen\t2,40\n0,300\tkg\tSpeck\t2,70\n2\tBund\tPetersilie\t1,60\n\t\tje Portion\t0,56\n\nArbeitsablauf\nLinsen 40 Minuten kochen.\n", "Linsensuppe", "1.2 kg Linsen|0.3 kg Speck|2 bunch Petersilie")]
    [InlineData("Sheet\tFish pie\t\t\t\nCovers\t20\t\t\t\nLine\tQty\tUOM\tItem\t£ total\n1\t3.2\tkg\tCod\t38.00\n2\t12\tea\tEggs\t2.40\n3\t1.5\tl\tMilk\t1.20\n\t\t\tCost per cover\t2.08\n\nMethod\t\t\t\t\nPoach the cod 8 min\t\t\t\t\n", "Fish pie", "3.2 kg Cod|12 piece Eggs|1.5 l Milk")]
    public void Columns_in_any_order_are_a_list(string sheet, string title, string lines)
    {
        Dish d = Read(sheet);

        Assert.Equal(title, d.Title);
        Assert.Equal(lines.Split('|'), Foods(d));
        Assert.NotEmpty(d.Yields);
        Assert.NotEmpty(Steps(d));
    }

    [Theory]
    [InlineData("Product\tSeed loaf\t\t\nBatch\t4 loaves\t\t\n\t%\tkg\tCost\nSponge\t\t\t\nWhite flour\t40.0\t0.800\t0.60\nWater\t30.0\t0.600\t\nDough\t\t\t\nBrown flour\t60.0\t1.200\t1.10\nSalt\t2.0\t0.040\t0.01\nTOTAL\t132.0\t2.640\t1.71\nProcess\t\t\t\nBake\t230 C, 38 min\t\t\n", "Sponge: 0.8 kg White flour|Sponge: 0.6 kg Water|Dough: 1.2 kg Brown flour|Dough: 0.04 kg Salt")]
    [InlineData("商品名\tあんぱん\t\t\n出来高\t20個\t\t\n\t%\tg\t原価\n生地\t\t\t\n強力粉\t100\t600\t200\n牛乳\t40\t240\t60\n仕上げ\t\t\t\nつぶあん\t\t800\t400\n合計\t\t1640\t660\n工程\t\t\t\n焼成\t200℃ 11分\t\t\n", "生地: 600 g 強力粉|生地: 240 g 牛乳|仕上げ: 800 g つぶあん")]
    [InlineData("Rezept\tLandbrot\t\t\nStückzahl\t10\t\t\nRohstoff\tAnteil %\tMenge kg\tTemp. °C\nSauerteig\nRoggenmehl\t40\t2,400\t\nWasser\t32\t1,920\t35\nHauptteig\nWeizenmehl\t60\t3,600\t\nWasser\t36\t2,160\t28\n\nAblauf\nBacken\t230 °C, 50 Min.\n", "Sauerteig: 2.4 kg Roggenmehl|Sauerteig: 1.92 kg Wasser|Hauptteig: 3.6 kg Weizenmehl|Hauptteig: 2.16 kg Wasser")]
    public void The_first_part_may_stand_between_the_head_and_its_rows(string sheet, string lines)
    {
        Dish d = Read(sheet);

        Assert.Equal(lines.Split('|'), Lines(d).Where(l => !l.EndsWith(' ')));
        Assert.DoesNotContain(d.Doubts, x => x.Question.Contains("which unit", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Component\tItem\tGross (kg)\tNet (kg)\nFilling\tapples\t4.000\t3.000\n\tsugar\t0.450\t0.450\nTopping\tflour\t1.200\t1.200\n\tbutter\t0.600\t0.600\n\nBake 40 minutes\n", "Filling: 4 kg apples|Filling: 0.45 kg sugar|Topping: 1.2 kg flour|Topping: 0.6 kg butter")]
    [InlineData("Denrées\tPoids brut (kg)\tPoids net (kg)\tValeur\nveau\t2,400\t2,160\t33,12\ncarottes\t0,600\t0,510\t0,66\nbeurre\t0,080\t0,080\t0,72\nTotal denrées\t\t\t34,50\nCoût par portion\t\t\t3,20\n\nCuire 1 h.\n", "Poids brut: 2.4 kg veau|Poids brut: 0.6 kg carottes|Poids brut: 0.08 kg beurre")]
    public void Gross_and_net_are_never_added_nor_is_their_value(string sheet, string lines)
    {
        Dish d = Read(sheet);

        Assert.Equal([.. lines.Split('|').Select(l => l[(l.IndexOf(':', StringComparison.Ordinal) + 2)..])], Foods(d));
        Assert.Contains(d.Doubts, x => x.Question.Contains("another size", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Crumble\t\t\nItem\tQty\tUnit\nFilling\napples\t4\tkg\nTopping\nflour\t1\tkg\nbutter\t500\tg\nTOTAL\t5.5\tkg\nYield\t30 portions\t\n\nMethod\nBake 40 minutes\n", 30, "portions")]
    [InlineData("Torta\t\t\nDescrizione\tUM\tQtà\nFrolla\nFarina\tg\t500\nCrema\nLatte\tl\t1\nZucchero\tg\t200\nResa: 3 torte\t\t\n\nLavorazione\nInfornare 45 minuti\n", 3, "torte")]
    [InlineData("Producto\tPan de leche\nLote\t6 piezas\n\nIngrediente\tg\t%\nHarina\t400\t100\nAgua\t240\t60\nSal\t8\t2\n\nProceso\nHorno\t180 °C, 35 min\n", 6, "piezas")]
    public void What_the_whole_makes_is_told_over_or_under_its_only_list(string sheet, double amount, string unit) =>
        Assert.Contains(Read(sheet).Yields, y => y.Amount == amount && y.Unit == unit);

    [Fact]
    public void What_each_of_two_lists_makes_stays_with_it()
    {
        Dish d = Read("Tart\t\t\nItem\tQty\tUnit\nflour\t500\tg\nbutter\t250\tg\nYield\t2 kg\t\n\nCurd\t\t\nItem\tQty\tUnit\nlemons\t8\tpc\nsugar\t300\tg\nYield\t1 kg\t\n\n1\tBake 30 minutes\t\n");

        Assert.DoesNotContain(d.Yields, y => y.Amount == 1);
    }

    [Theory]
    [InlineData("Stew\t\t\nItem\tQty\tUnit\npork chops, 2 per portion\t20\tpc\nlettuce per plate\t1\tkg\n\nCook 20 min\n", 2)]
    [InlineData("Lote: 240512\n\n500 g de harina\n10 g de sal\n\nHornear 30 minutos.\n", 2)]
    public void Portions_in_a_name_and_numbers_of_a_lot_stay(string card, int foods)
    {
        Dish d = Read(card);

        Assert.Equal(foods, Foods(d).Length);
        Assert.DoesNotContain(d.Yields, y => y.Amount > 1000);
    }

    [Theory]
    [InlineData("Posset\nFor 36 pots\n\n3.6 kg cream\n900 g sugar\n\nBoil 3 min.\n", 36)]
    [InlineData("Rillettes\nPour 6 bocaux\n\n2 kg de porc\n40 g de sel\n\nCuire 5 h.\n", 6)]
    public void For_a_number_of_pots_tells_what_a_card_fills(string card, double amount)
    {
        Dish d = Read(card);

        Assert.Equal(amount, d.Yields.Single().Amount);
        Assert.Equal(2, Foods(d).Length);
    }

    [Theory]
    [InlineData("Recipe:;Chowder\nYield:;20 portions\n;\nIngredient;Unit;Amount;Cost\nHaddock;kg;2,4;31,20\nLeeks;kg;0,9;1,62\nMilk;l;3,0;2,70\nMethod;;;\nSweat the leeks for 10 minutes;;;\n", "2.4 kg Haddock|0.9 kg Leeks|3 l Milk")]
    [InlineData("Chowder\n\n2.4 kg haddock; skinned\n900 g leeks; washed\n3 l milk; cold\n\nSimmer 10 min.\n", "2.4 kg haddock|900 g leeks|3 l milk")]
    public void Semicolons_part_cells_where_no_sentence_has_them(string card, string lines) => Assert.Equal(lines.Split('|'), Foods(Read(card)).Select(l => l.Split(';')[0]));

    [Fact]
    public void How_long_a_sheet_keeps_is_no_step()
    {
        Dish d = Read("Recipe:\tTerrine\t\nItem\tQty\tUnit\npork\t2\tkg\nsalt\t40\tg\n\nStep\tInstruction\t\n1\tBake the pork for 90 minutes\t\nShelf life\t6 days chilled\t\n");

        Assert.Single(Steps(d));
    }

    private static string[] Foods(Dish d) => [.. d.Components.SelectMany(c => c.Ingredients.Where(l => l.Kind == LineKind.Ingredient).SelectMany(l => l.Foods).Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}")))];
}
