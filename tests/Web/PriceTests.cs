using System.Net;
using Coulisse.Cards;
using Coulisse.Formats.Out;
using Coulisse.Store;
using Coulisse.Web.Plans;
using Microsoft.Extensions.DependencyInjection;

namespace Coulisse.Web.Tests;

/// <summary>Prices kept over time, a workbook with heads explained once, and the order of an occasion.</summary>
public sealed class PriceTests
{
    private const string List = "item,supplier,pack,unit,price,currency\nonion,hall,1000,g,2.00,D\nbutter,hall,250,g,2.50,D\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static FormUrlEncodedContent Form(params (string Key, string Value)[] fields) => new(fields.Select(f => new KeyValuePair<string, string>(f.Key, f.Value)));

    private static async Task<string> PageAsync(BenchServer bench, string at) => WebUtility.HtmlDecode(await bench.Client.GetStringAsync(at, Cancel));

    [Fact]
    public async Task A_newer_list_shows_what_every_dish_costs_before_and_now_and_a_price_can_be_tried()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Onion tart", "# Onion tart\n\nServes 8.\n\n- 1 kg onion\n- 250 g butter\n\n1. Bake 45 min at 180 °C.\n", "test", "", Cancel);
        await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Boiled water", "# Boiled water\n\nServes 2.\n\n- 1 kg water\n\n1. Boil.\n", "test", "", Cancel);
        await bench.Client.PostAsync("/kitchen/prices", Form(("text", List), ("basedOn", "0")), Cancel);
        await bench.Client.PostAsync("/kitchen/prices", Form(("text", List.Replace("2.50", "4.10", StringComparison.Ordinal)), ("basedOn", "1")), Cancel);

        string page = await PageAsync(bench, "/prices");
        // 2.00 + 2.50 = 4.50 and 2.00 + 4.10 = 6.10, eight portions
        Assert.Contains("<td class=\"num\">0.5625</td><td class=\"num\">0.7625</td>", page);
        Assert.Contains("butter +0.20", page);
        Assert.Contains("One dish does not move", page);
        Assert.Contains("2 prices", page);

        string tried = await PageAsync(bench, "/prices?item=onion&to=%2B10%25");
        Assert.Contains("Nothing of this is kept", tried);
        Assert.Contains("<td class=\"num\">0.7625</td><td class=\"num\">0.7875</td>", tried); // 6.10 and 6.30 over eight
        Assert.Contains("is no price", await PageAsync(bench, "/prices?item=onion&to=dear"));
    }

    [Fact]
    public async Task A_workbook_with_odd_heads_is_asked_about_once()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        byte[] book = await XlsxFile.WriteAsync([new Grid("A", ["Ware", "Gewicht", "EK", "Geld"], [Grid.Row("onion", "1 kg", 2.2m, "D")])], Cancel);
        async Task SendAsync()
        {
            using MultipartFormDataContent form = new() { { new ByteArrayContent(book), "file", "list.xlsx" }, { new StringContent("0"), "basedOn" } };
            Assert.Equal(HttpStatusCode.Redirect, (await bench.Client.PostAsync("/kitchen/prices/file", form, Cancel)).StatusCode);
        }

        await SendAsync();
        Assert.Contains("Say once what the columns are", await PageAsync(bench, "/kitchen"));
        await bench.Client.PostAsync("/kitchen/prices/heads", Form(("head.0", "Gewicht"), ("is.0", "size"), ("head.1", "EK"), ("is.1", "price"), ("head.2", "Ware"), ("is.2", "item"), ("head.3", "Geld"), ("is.3", "currency")), Cancel);
        Assert.Contains("1 packs of 0 suppliers, in D", await PageAsync(bench, "/kitchen"));
        await SendAsync();
        Assert.DoesNotContain("Say once what the columns are", await PageAsync(bench, "/kitchen"));
    }

    [Fact]
    public async Task The_order_of_the_example_is_the_worked_one_and_comes_as_files()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepExampleAsync(Cancel)).Value.Id;
        Assert.Contains("No price list is kept", await PageAsync(bench, "/orders/" + id));
        await bench.Client.PostAsync("/kitchen/prices/example", Form(("basedOn", "0")), Cancel);

        string page = await PageAsync(bench, "/orders/" + id);
        Assert.Contains("no cheaper mix of packs and suppliers covers it", page);
        Assert.Contains("Little to spare", page);
        Assert.Contains("order by", page);
        Assert.Contains("5.0 °C or colder", page.Replace('\u202F', ' ').Replace("5 °C", "5.0 °C", StringComparison.Ordinal));
        byte[] pdf = await bench.Client.GetByteArrayAsync($"/orders/{id}/order.pdf", Cancel);
        Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);
        Assert.Equal("%PDF"u8.ToArray(), (await bench.Client.GetByteArrayAsync($"/orders/{id}/receiving.pdf", Cancel))[..4]);
        string csv = await bench.Client.GetStringAsync($"/orders/{id}/order.csv", Cancel);
        string total = System.Text.RegularExpressions.Regex.Match(page, @"([\d.,]+) D in all").Groups[1].Value;
        Assert.Equal(decimal.Parse(total, System.Globalization.CultureInfo.InvariantCulture), csv.Split("\r\n").Skip(1).Where(l => l.Length > 0).Sum(Sum));
        Assert.Equal(HttpStatusCode.NotFound, (await bench.Client.GetAsync($"/orders/{id}/order.exe", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await bench.Client.GetAsync("/orders/nobody", Cancel)).StatusCode);
    }

    // Column "sum": the seventh cell, quotes counted.
    private static decimal Sum(string line)
    {
        List<string> cells = Coulisse.Kitchen.Needs.CellText.Split(line)[0].Cells;
        return decimal.Parse(cells[6], System.Globalization.CultureInfo.InvariantCulture);
    }
}
