using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Tests;
using CsCheck;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Needs;

/// <summary>Price lists as suppliers send them, prices over time, and what a change does to every dish.</summary>
public sealed class PriceTests
{
    private const string Dated = "item,supplier,pack,unit,price,currency,since,until\nbutter,A,250,g,2.00,D,,\nbutter,A,250,g,2.50,D,2026-03-01,\nbutter,A,250,g,3.00,D,2026-09-01,\nflour,A,1000,g,1.00,D,,2026-06-30\n";

    private static PriceList Read(string text, string? currency = null, PriceHeads? heads = null, LocalDate? on = null) => Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read(text, currency, heads, on)).Value;

    private static ImmutableArray<string> Codes(string text) => [.. Assert.IsType<Parsed<PriceList>.Failed>(PriceList.Read(text, "D")).Problems.Select(p => p.Code)];

    [Theory]
    [InlineData("2026-02-28", "2.00")]
    [InlineData("2026-03-01", "2.50")]
    [InlineData("2026-08-31", "2.50")]
    [InlineData("2026-09-01", "3.00")]
    public void The_price_in_force_is_the_last_that_has_begun(string day, string price)
        => Assert.Equal(decimal.Parse(price, CultureInfo.InvariantCulture), Read(Dated, on: NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value).Rows.Single(r => r.Item == "butter").Price.Amount);

    [Fact]
    public void A_price_that_has_ended_is_no_longer_on_offer_and_all_of_them_are_kept()
    {
        PriceList july = Read(Dated, on: new LocalDate(2026, 7, 1));

        Assert.Equal(["butter"], july.Rows.Select(r => r.Item));
        Assert.Contains("flour", july.On(new LocalDate(2026, 6, 30)).Rows.Select(r => r.Item));
        Assert.Equal([2.00m, 2.50m, 3.00m], Assert.Single(july.History).Select(r => r.Price.Amount));
        Assert.Equal(4, july.All.Length);
    }

    [Fact]
    public void Heads_in_other_languages_packs_in_words_and_money_beside_the_price_are_read()
    {
        PriceRow row = Assert.Single(Read("Artikel;Lieferant;Inhalt;Preis;gültig ab;Ersatz\n\"Mehl, Typ 550\";Mühle;6 x 1 kg;8,40 €;1.10.2026;no").Rows);

        Assert.Equal(("Mehl, Typ 550", "Mühle", 6000m, "g", 8.40m, "EUR"), (row.Item, row.Supplier, row.PackSize, row.Unit, row.Price.Amount, row.Price.Currency));
        Assert.Equal(new LocalDate(2026, 10, 1), row.Since);
        Assert.False(row.MayReplace);
    }

    [Fact]
    public void A_head_that_was_explained_once_is_known_in_the_next_list()
    {
        const string Odd = "Ware XY,Gewicht,EK netto\nbutter,250 g,2.45";
        Assert.Equal(["PRI001", "PRI001", "PRI001"], Codes(Odd));
        PriceHeads heads = PriceHeads.Read(PriceHeads.None.With("Ware XY", "item").With("gewicht", "size").With("EK  netto", "price").Write());

        Assert.Equal(250m, Read(Odd, "D", heads).Rows.Single().PackSize);
        Assert.Equal("price", heads.Of("EK netto (EUR)"));
        Assert.Null(PriceHeads.None.Of("Gewicht"));
    }

    [Theory]
    [InlineData("item,pack,unit,price\nbutter,250,,2.45", "PRI002")] // a price without a unit
    [InlineData("item,pack,unit,price\nbutter,250 g,kg,2.45", "PRI002")] // two units that differ
    [InlineData("item,pack,unit,price\nbutter,\"1,000\",g,2.45", "PRI003")] // one gram, or a thousand
    [InlineData("item,pack,unit,price\nbutter,0,g,2.45", "PRI003")]
    [InlineData("item,pack,unit,price\nbutter,-5,g,2.45", "PRI003")]
    [InlineData("item,pack,unit,price\nbutter,250,g,-2", "PRI003")]
    [InlineData("item,pack,unit,price\n,250,g,2", "PRI003")]
    [InlineData("item,pack,unit,price,currency\nbutter,250,g,2,D\nflour,1,kg,1,E", "PRI004")] // two currencies
    [InlineData("item,supplier,pack,unit,price\nbutter,A,250,g,2\nbutter,A,250,g,3", "PRI005")] // two prices at once
    [InlineData("item,pack,unit,price,since\nbutter,250,g,2,03/04/2026", "PRI006")] // March or April
    [InlineData("item,pack,unit,price,since,until\nbutter,250,g,2,2026-05-01,2026-04-01", "PRI006")]
    public void What_may_be_two_things_is_asked_and_never_assumed(string text, string code) => Assert.Contains(code, Codes(text));

    [Theory]
    [InlineData("Item,Unit,Net price\nleeks,1 kg,3.20", 1000, "g", "3.20")] // the unit column holds the pack
    [InlineData("Item,Unit,Net price\nleeks,kg,3.20", 1000, "g", "3.20")]
    [InlineData("Item,Price/kg\nleeks,3.20", 1000, "g", "3.20")]
    [InlineData("Item,Pack,Price (per kg)\nleeks,5 kg,3.20", 5000, "g", "16.00")] // not 3.20 for five kilograms
    [InlineData("Artikel;Gebinde;Preis pro l\nmilk;250 ml;1,20", 250, "ml", "0.30")]
    [InlineData("Artikel;Preis je Stück\nlemon;0,60", 1, "each", "0.60")]
    [InlineData("Item,Pack size (kg),Price\nflour,25,21", 25000, "g", "21")]
    [InlineData("Green Lane Produce,,\nPrices of October,,\nItem,Pack,Price\nleeks,5 kg,16", 5000, "g", "16")] // heads under a title
    public void What_a_price_is_for_is_taken_from_wherever_the_list_says_it(string text, int size, string unit, string price)
    {
        PriceRow row = Assert.Single(Read(text, "D").Rows);

        Assert.Equal((size, unit, decimal.Parse(price, CultureInfo.InvariantCulture)), (row.PackSize, row.Unit, row.Price.Amount));
    }

    [Theory]
    [InlineData("Item,Pack,Price incl. VAT\nleeks,5 kg,16", "PRI001")] // food cost goes by the price without tax
    [InlineData("Item,Pack,Price per bunch\nleeks,5 kg,16", "PRI001")]
    [InlineData("Item,Pack,Price/kg\nlemons,6 pcs,3.20", "PRI002")] // six pieces at so much a kilogram
    [InlineData("Item,Unit,Price\nleeks,bunch,3.20", "PRI002")]
    [InlineData("Item,Pack,Unit,Price\nbutter,,g,2.45", "PRI003")] // an empty pack is not one gram
    public void And_where_it_does_not_say_it_the_list_is_asked(string text, string code) => Assert.Contains(code, Codes(text));

    [Fact]
    public void A_list_without_a_currency_says_so_once()
        => Assert.Equal(["PRI004"], Assert.IsType<Parsed<PriceList>.Failed>(PriceList.Read("item,pack,unit,price\nbutter,250,g,2\nflour,1,kg,1\nsalt,1,kg,1")).Problems.Select(p => p.Code));

    [Fact]
    public void No_list_however_spoiled_stops_the_reader()
    {
        const string Whole = "Produce of the lane,,\nItem,Pack (kg),Unit,Price,Price/kg,currency,since,until\nbutter,6 x 250 g,g,\"2,45\",9.80,EUR,2026-03-01,1.4.2026\nmilk,1,l,€ 1.20,,,,\n";
        Gen.Select(Gen.Int[0, Whole.Length - 1], Gen.Int[0, 20], Gen.String["0123456789.,;\"\n\t€xkg-() \u00A0é漢\uD83C"], Gen.Bool).Sample((at, cut, put, currency) =>
        {
            string spoiled = Whole.Remove(at, Math.Min(cut, Whole.Length - at)).Insert(at, put);
            return PriceList.Read(spoiled, currency ? "EUR" : null).Match(l => l.All.All(r => r.PackSize > 0 && r.Price.Amount >= 0), p => p.Length > 0 && p.All(x => x.Message.Length > 0 && x.Hint.Length > 0));
        }, iter: LongRun.On ? 1_000_000 : 20_000);
    }

    [Theory] // near misses that stay silent
    [InlineData("item,pack,unit,price\nbutter,\"0,250\",kg,2.45")]
    [InlineData("item,pack,unit,price\nbutter,250 g,g,2.45")]
    [InlineData("item,pack,unit,price,since\nbutter,250,g,2,13/04/2026")]
    [InlineData("item,supplier,pack,unit,price\nbutter,A,250,g,2\nbutter,B,250,g,3")]
    [InlineData("item,supplier,pack,unit,price,since\nbutter,A,250,g,2,\nbutter,A,250,g,3,2026-01-01")]
    public void And_what_can_only_be_one_thing_is_read(string text) => Assert.NotEmpty(Read(text, "D").Rows);

    [Fact]
    public void One_item_ten_percent_dearer_moves_a_dish_by_a_tenth_of_its_share()
        => Gen.Select(Gen.Int[1, 900], Gen.Int[1, 900], Gen.Int[-50, 200]).Sample((a, b, percent) =>
        {
            PriceList list = Read("item,pack,unit,price,currency\napples,1000,g,2,D\npears,500,g,3,D");
            ShelvedDish[] dishes = [new("tart", [new Need("apples", a, "x"), new Need("pears", b, "x")], 8, "portions"), new("jam", [new Need("pears", b, "x")], 1, "")];
            PriceChange change = PriceChange.Of(dishes, list, list.With(r => r.Item == "apples" ? r.Price.Amount * (1 + (percent / 100m)) : null));
            ChangedDish tart = change.Dishes.Single(d => d.Dish.Title == "tart");
            decimal share = a * 2m / 1000;
            return Math.Abs(tart.After.Amount - tart.Before.Amount - (share * percent / 100)) < 1e-12m && tart.EachAfter.Amount * 8 == tart.After.Amount
                && change.Dishes.Single(d => d.Dish.Title == "jam") is { Percent: 0 } && tart.Because.Sum(x => x.Adds) == tart.After.Amount - tart.Before.Amount
                && change.Prices.Length == (percent == 0 ? 0 : 1);
        });

    [Fact]
    public void The_same_list_moves_nothing_and_costs_what_the_cost_sheet_says()
    {
        ImmutableArray<Batch> batches = Assert.IsType<Parsed<ImmutableArray<Batch>>.Ok>(OccasionBatches.Make(Demo.Occasion)).Value;
        ShelvedDish[] dishes = [.. batches.Select(ShelvedDish.Of)];
        PriceChange change = PriceChange.Of(dishes, Demo.Prices, Demo.Prices);

        Assert.Empty(change.Prices);
        Assert.All(change.Dishes, d => Assert.Equal(d.Before, d.After));
        Assert.All(dishes, d => Assert.Equal(Costing.Of(d.Needs, Demo.Prices).Total, change.Dishes.Single(c => c.Dish == d).Before));
    }

    [Fact]
    public void Lists_of_two_currencies_are_not_compared()
        => Assert.Throws<ArgumentException>(() => PriceChange.Of([], Read("item,pack,unit,price\nbutter,250,g,2", "D"), Read("item,pack,unit,price\nbutter,250,g,2", "E")));
}
