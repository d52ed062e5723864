using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Matter.Measures;
using Coulisse.Matter.Quantities;
using Coulisse.Tests;

namespace Coulisse.Kitchen.Tests.Formulas;

/// <summary>Every row of the table of worked values that needs a card, a scale or a price: baker's percentages, shares, scaling, cures by percent, yields, money, spoons.</summary>
public sealed class CheckValuesTests
{
    [Fact]
    public void Every_worked_value_of_this_room_comes_out() => Assert.Empty(CheckValues.Misses(true, Ours(), new Dictionary<string, double>
    {
        // The row takes milk at 87.5 and egg at 75 % water, our table holds 88.1 and 76.2 %; tap water is 99.9 % water.
        ["bp3"] = 0.1, ["bp4"] = 1.1, ["bp5"] = 0.5,
    }));

    [Fact]
    public void Both_rooms_together_answer_for_the_whole_table()
    {
        Assert.Equal(75, CheckValues.Of(true).Length + CheckValues.Of(false).Length);
        Assert.Equal(CheckValues.OfKitchen.Order(StringComparer.Ordinal), Ours().Keys.Order(StringComparer.Ordinal));
    }

    private static Dictionary<string, double[]> Ours()
    {
        const string Bread = "# Dough\n\n- 1000 g bread flour\n- 650 g water\n- 20 g salt\n- 20 g fresh yeast\n- 50 g butter\n\n1. Knead.\n";
        WeighedDish levain = WeighingTests.Weigh("# Bread\n\n## C1 Levain\n\n- 200 g bread flour\n- 200 g water\n\n1. Stir.\n\n## C2 Dough\n\n- 400 g C1 Levain\n- 800 g bread flour\n- 500 g water\n\n1. Knead.\n");
        Percentages risen = Percentages.Of(levain, levain.Components[1])!;
        WeighedDish poolish = WeighingTests.Weigh("# Bread\n\n## C1 Poolish\n\n- 300 g bread flour\n- 300 g water\n\n1. Stir.\n\n## C2 Dough\n\n- 600 g C1 Poolish\n- 700 g bread flour\n- 360 g water\n\n1. Knead.\n");
        WeighedDish rich = WeighingTests.Weigh("# Dough\n\n- 500 g bread flour\n- 200 g whole milk\n- 100 g egg\n- 50 g water\n\n1. Knead.\n");
        WeighedDish jelly = WeighingTests.Weigh("# Jelly\n\n- 850 g apple juice\n- 1.2 % gelatine powder on apple juice\n\n1. Melt.\n");
        WeighedDish part = WeighingTests.Weigh("# Jelly\n\n- 839.8 g apple juice\n- 10.2 g gelatine powder\n\n1. Melt.\n");
        WeighedDish brine = WeighingTests.Weigh("# Brine\n\n- 2000 g beef brisket\n- 1000 g water\n- 45 g salt\n\n1. Lay it in.\n");
        double salt = Percentages.Of(brine, brine.Components[0])!.Lines[2].OfTotal;
        return new Dictionary<string, double[]>
        {
            ["bp1"] = [Of(Bread).Grams], ["bp2"] = [Scaled(Bread, 12 * 420 / 0.99).Components[0].Lines[0].Grams],
            ["bp3"] = [Percentages.Of(poolish, poolish.Components[1])!.Hydration!.Value], ["bp4"] = [risen.Lines[0].Line.Grams, risen.Flour - 200, 500 + (10 * (70 - risen.Hydration!.Value))], ["bp5"] = [Percentages.Of(rich, rich.Components[0])!.Hydration!.Value],
            ["pt1"] = [8.5 * Percentages.Of(part, part.Components[0])!.Lines[1].OfTotal],
            ["pt2"] = [jelly.Components[0].Lines[1].Grams, jelly.Components[0].Grams, Percentages.Of(jelly, jelly.Components[0])!.Lines[1].OfTotal],
            ["sc1"] = [Scaled(Bread, 24 * 80 / 0.89).Factor],
            ["br1"] = [WeighingTests.Weigh("# Cure\n\n- 2500 g beef brisket\n- 2.25 % salt on beef brisket\n\n1. Rub.\n").Components[0].Lines[1].Grams],

            // By share of meat and water, the salt itself left out.
            ["br2"] = [3000 * salt / (100 - salt)],
            ["yi1"] = [(double)Order.For([new Need("onion", 300, "soup") { UsableShare = 0.90 }], Prices("onion,1000,2")).Lines[0].Need],
            ["yi2"] = [(double)Order.For([new Need("beef brisket", 1200, "roast") { UsableShare = 0.70 * 0.85 }], Prices("beef brisket,1000,2")).Lines[0].Need],
            ["mo1"] = [Cost(0.75)], ["mo2"] = [Cost(0.75 * 0.70)],
            ["mo3"] = PackMix.Cheapest(1320, [(500, 3)]) is var packs ? [packs.Packs[0], (double)packs.Bought - 1320] : [],
            ["mo4"] = PackMix.Cheapest(1320, [(500, 3.00m), (1000, 5.20m)]) is var mix ? [mix.Packs[1] * 1000, mix.Packs[0] * 500, (double)mix.Cost] : [],
            ["mo5"] = SellingPrice.Of(new Money(4.20m, "D"), 28, 0, 20) is var price ? [(double)price.Net.Amount, (double)price.Gross.Amount] : [],
            ["mo6"] = SellingPrice.Of(new Money(8.40m, "D"), 28, 0, 10) is var gst ? [(double)gst.Net.Amount, (double)gst.Tax.Amount, (double)(gst.Gross.Amount / gst.Tax.Amount)] : [],
            ["mo7"] = [(double)SellingPrice.Of(new Money(4.20m, "D"), 100, 8).Net.Amount],
            ["un1"] = [Line("2 tbsp honey", "au").Grams],

            // The row's range is of the heap alone; a line's own range holds the density's spread, too.
            ["un2"] = Line("2 heaped tbsp cornflour", "metric") is var heaped && QuantityWord.Find("heaped") is { } word && heaped.Low <= heaped.Grams * word.Low / word.Plan && heaped.High >= heaped.Grams * word.High / word.Plan
                ? [heaped.Grams, heaped.Grams * word.Low / word.Plan, heaped.Grams * word.High / word.Plan] : [],
            ["un3"] = [Line("juice of half a lemon", "metric").Grams],
        };
    }

    private static Percentages Of(string card) => WeighingTests.Weigh(card) is var dish ? Percentages.Of(dish, dish.Components[0])! : null!;

    private static Batch Scaled(string card, double grams) => Scaling.Scale(WeighingTests.Weigh(card), new ScaleTo.Yield(grams)).Match(b => b, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static WeighedLine Line(string line, string measures) => Assert.Single(WeighingTests.Weigh($"# A dish\n\n- {line}\n\n1. Mix.\n", measures).Components[0].Lines);

    private static PriceList Prices(string row) => row.Split(',') is [var item, var pack, var price] ? Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read($"item,supplier,pack,unit,price,currency\n{item},near,{pack},g,{price},D")).Value : throw new ArgumentException(row, nameof(row));

    // 4.80 a kilogram as bought; a kilogram ready to use.
    private static double Cost(double usable) => (double)Costing.Of([new Need("carrot", 1000, "soup") { UsableShare = usable }], Prices("carrot,1000,4.80")).Total.Amount;
}
