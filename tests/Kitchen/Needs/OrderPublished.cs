using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Needs;
using Coulisse.Tests;
using CsCheck;

namespace Coulisse.Kitchen.Tests.Needs;

/// <summary>The order table of the demo occasion, its needs as stated there; and mixed packs against counting them all.</summary>
public sealed class OrderPublished
{
    // Ready grams and usable share, or whole pieces: the order table of the occasion's plan.
    private const string Stated = """
        butter, unsalted|1205
        crème fraîche 40 %|110
        egg yolk, pasteurised|538
        quark, full fat|365|0.88
        quark, full fat|1582.9
        whipping cream 35 %|960
        whole egg, pasteurised|766.6
        whole milk|1240
        apple juice, cloudy|270
        beetroot juice|400
        beetroot, tops off|710|0.72
        chives|6
        dill|13.5
        green apple juice|540
        horseradish root|32|0.70
        kohlrabi|10 pieces
        lemons, unwaxed|6 pieces
        pears, firm|1410|0.78
        swede|2 pieces
        rye bread|230
        agar powder|5.9
        ascorbic acid|0.5
        baking powder|33
        buckwheat flour|360
        caraway seed|5
        caster sugar|887.6
        cider vinegar 5 % acid|394
        cornflour|109.1
        demerara sugar|60
        fine sea salt|85.4
        gelatine powder 200 bloom|27
        ginger, ground|12
        light brown sugar|390
        plain wheat flour|1240
        plum butter, unsweetened|1290
        pumpkin-seed paste|470
        pumpkin seeds, hulled|4
        rapeseed oil|48
        rolled oats|180
        vanilla paste|12.7
        walnut pieces|270
        white pepper, ground|1
        xanthan gum|0.8
        yellow mustard seed|60
        """;

    private static PriceList Prices => Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read(File.ReadAllText(Path.Combine(SharedData.Repository, "examples", "demo", "prices.csv")))).Value;

    private static PriceList List => Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read("item,pack,unit,price,currency,note\nsnow roots,1,each,1,D,\nbutter,250,g,2,D,\nswede,1,each,1,D,900 g")).Value;

    private static IEnumerable<Need> Needs => Stated.Split('\n').Select(l => l.Trim().Split('|')).Select(c => c[1].EndsWith("pieces", StringComparison.Ordinal)
        ? new Need(c[0], 0, "order table") { Pieces = int.Parse(c[1].Split(' ')[0], CultureInfo.InvariantCulture) }
        : new Need(c[0], double.Parse(c[1], CultureInfo.InvariantCulture), "order table") { UsableShare = c.Length > 2 ? double.Parse(c[2], CultureInfo.InvariantCulture) : 1 });

    [Fact]
    public void The_demo_order_costs_181_35_with_its_sub_totals()
    {
        Order order = Order.For(Needs, Prices);

        Assert.Empty(order.Problems);
        Assert.Equal(181.35m, order.Total.Amount);
        Assert.Equal([2.90m, 53.45m, 89.50m, 35.50m], order.BySupplier.Values.Select(m => m.Amount));
    }

    [Fact]
    public void Thin_margins_are_flagged_and_no_others()
    {
        Order order = Order.For(Needs, Prices);

        Assert.Equal(
            [("beetroot, tops off", 1.4m), ("butter, unsalted", 3.7m), ("plum butter, unsweetened", 4.7m)],
            order.Lines.Where(l => l.Thin).Select(l => (l.Item, Math.Round(l.Margin * 100, 1))).Order());
    }

    [Fact]
    public void Four_tubs_of_quark_would_leave_too_little_so_five_are_bought_P14()
    {
        OrderLine bare = Order.For(Needs, Prices, leastMargin: 0).Lines.Single(l => l.Item == "quark, full fat");
        OrderLine safe = Order.For(Needs, Prices).Lines.Single(l => l.Item == "quark, full fat");

        Assert.Equal((2000m, 2500m), (bare.Bought, safe.Bought));
        Assert.True(bare.Thin);
        Assert.Equal(2.4, (double)(bare.Bought - bare.Need), 0.2); // expected.json P14, its absolute tolerance
    }

    [Fact]
    public void With_two_percent_over_a_second_bag_of_beetroot_makes_it_183_25_P13()
        => Assert.Equal(183.25m, Order.For(Needs, Prices, leastMargin: 0.02m).Total.Amount);

    [Fact]
    public void Mixed_packs_cost_8_20() // worked example mo4 of the measures
    {
        PackMix mix = PackMix.Cheapest(1320, [(500, 3.00m), (1000, 5.20m)]);

        Assert.Equal((8.20m, 1500m), (mix.Cost, mix.Bought));
        Assert.Equal([1, 1], mix.Packs);
    }

    [Fact]
    public void The_cheapest_mix_equals_counting_every_mix()
        => Gen.Select(Gen.Int[1, 3000], Gen.Select(Gen.Int[50, 1200], Gen.Int[20, 900]).Array[1, 3]).Sample((need, packs) =>
        {
            PackMix mix = PackMix.Cheapest(need, [.. packs.Select(p => ((decimal)p.Item1, p.Item2 / 100m))]);
            decimal brute = Brute(need, packs, 0);
            bool least = mix.Packs.Select((n, i) => (n, i)).Where(x => x.n > 0).All(x => mix.Bought - packs[x.i].Item1 < need);
            return mix.Cost == brute && mix.Bought >= need && least;
        }, iter: 200);

    [Fact]
    public void Grams_needed_of_a_thing_sold_by_the_piece_are_asked_about()
    {
        Order order = Order.For([new Need("snow roots", 950, "x"), new Need("butter", 10, "near miss"), new Need("swede", 300, "near miss: its note gives the weight of one")], List);

        Assert.Equal("ORD002", Assert.Single(order.Problems).Code);
        Assert.Equal([1m, 250m], order.Lines.Select(l => l.Bought).Order());
    }

    [Fact]
    public void A_name_that_fits_two_items_is_asked_about()
        => Assert.Equal("ORD001", Assert.Single(Order.For([new Need("apple juice", 10, "x")], Prices).Problems).Code);

    [Fact]
    public void A_food_without_a_price_is_asked_about_once_with_what_it_is_for()
    {
        Order order = Order.For([new Need("quinces", 100, "jam"), new Need("quinces", 250.5, "paste"), new Need("quinces", 50, "jam"), new Need("medlars", 0, "plate") { Pieces = 4 }, new Need("butter", 10, "near miss")], List);

        Assert.Equal(["\"quinces\" is not in the price list; 400.5 g are needed for jam, paste.", "\"medlars\" is not in the price list; 4 pieces are needed for plate."], order.Problems.Select(p => p.Message));
    }

    [Theory]
    [InlineData("item,pack,unit,price,currency\nsalt,500,,0.90,D", "PRI002")]
    [InlineData("item,pack,unit,price,currency\nsalt,500,g,0.90,D\noil,1,l,5,E", "PRI004")]
    [InlineData("item,pack,unit,price,currency\nsalt,0,g,0.90,D", "PRI003")]
    [InlineData("item,price\nsalt,0.90", "PRI001")]
    public void A_bad_price_list_says_what_is_wrong(string text, string code)
        => Assert.Contains(Assert.IsType<Parsed<PriceList>.Failed>(PriceList.Read(text)).Problems, p => p.Code == code);

    [Fact]
    public void Semicolons_and_decimal_commas_are_read()
        => Assert.Equal(0.90m, Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read("Article;Pack;Unit;Price\n\"salt; fine\";0,5;kg;0,90", "EUR")).Value.Rows.Single(r => r.Item == "salt; fine" && r.PackSize == 500m).Price.Amount);

    private static decimal Brute(int left, (int Size, int Price)[] packs, int at)
    {
        if (left <= 0)
        {
            return 0;
        }

        if (at == packs.Length)
        {
            return decimal.MaxValue / 4;
        }

        decimal best = decimal.MaxValue / 4;
        for (int n = 0; n <= (left / packs[at].Size) + 1; n++)
        {
            best = Math.Min(best, (n * packs[at].Price / 100m) + Brute(left - (n * packs[at].Size), packs, at + 1));
        }

        return best;
    }
}
