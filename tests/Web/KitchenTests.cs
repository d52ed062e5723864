using System.Net;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Web.House;
using Coulisse.Web.Plans;
using Microsoft.Extensions.DependencyInjection;

namespace Coulisse.Web.Tests;

public sealed class KitchenTests
{
    private const string Card = "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n\n1. Slice the onions, 30 min.\n2. Bake 45 min at 180 °C.\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static FormUrlEncodedContent Book(int basedOn, params (string Field, string Value)[] cells)
        => new([new("basedOn", basedOn.ToString(System.Globalization.CultureInfo.InvariantCulture)), .. cells.Select(c => new KeyValuePair<string, string>(c.Field, c.Value))]);

    private static (string, string)[] Row(string table, int row, params string[] cells) => [.. cells.Select((c, i) => ($"{table}.{row}.{i}", c))];

    private static async Task<Occasion> SayAsync(BenchServer bench, string sentence)
        => Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync(sentence, Card, Cancel)).Value.Occasion;

    [Fact]
    public async Task Kept_kit_and_people_lie_under_the_next_sentence_and_a_usual_kitchen_before_that()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        Assert.Contains(await SayAsync(bench, "8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben") is { } before ? before.Assumed : [], a => a.Contains("usual small kitchen", StringComparison.Ordinal));

        HttpResponseMessage kept = await bench.Client.PostAsync("/kitchen", Book(0,
            [.. Row("Hands", 0, "Ada", "pastry", "back", "Thu to Sun 08:00 to 16:00", "oven, knife", "20 % slower", "French", ""), .. Row("Kit", 0, "X1", "deck oven", "back", "1", "3 shelves", "to 300 °C", "8 up, 3 down", "6", "K9"), .. Row("Kit", 1, "", "", "", "", "", "", "", "", ""), .. Row("Circuits", 0, "K9", "32", "230", "7.36", "X1")]), Cancel);
        Occasion after = await SayAsync(bench, "8 plates, 8 March 2026 14:00, 5 minutes, Ada and Ben");

        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        Assert.Equal(["X1"], after.Kit.Select(k => k.Code));
        Assert.Equal(3, after.Kit[0].Shelves);
        Assert.Equal(["French"], after.People.Single(p => p.Name == "Ada").Languages);
        Assert.Equal(["English"], after.People.Single(p => p.Name == "Ben").Languages);
        Assert.Equal((8.0, 3.0), (after.Kit[0].RisePerMinute, after.Kit[0].FallPerMinute));
        // 8 March 2026 is a Sunday; her week has Thursday to Sunday, of the two days before Friday and Saturday
        Person ada = after.People.Single(p => p.Name == "Ada");
        Assert.Equal(1.2, ada.Speed, 12);
        Assert.Equal([(6, 8, 16), (7, 8, 16), (8, 8, 16)], ada.Hours.Select(h => (h.Start.Day, h.Start.Hour, h.End.Hour)));
        Assert.Contains(after.Assumed, a => a == "Ada is there by the usual week: Thu to Sun 08:00 to 16:00.");
        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/kitchen", Cancel));
        // 6 kW at 230 V: 26.1 A
        Assert.Contains("26.1 A of 32 A on K9", page);
        Assert.Contains("Thu to Sun 08:00 to 16:00; takes 20 % longer; can do oven, knife", page);
        Assert.Contains("heats 8 °C a minute, cools 3 °C a minute", page);
    }

    [Fact]
    public async Task Two_people_who_keep_the_kitchen_both_keep_what_they_wrote()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        await bench.Client.PostAsync("/kitchen", Book(0, Row("Hands", 0, "Ada", "", "", "", "", "", "", "")), Cancel);
        await bench.Client.PostAsync("/kitchen", Book(1, Row("Hands", 0, "Ben", "", "", "", "", "", "", "")), Cancel);

        HttpResponseMessage third = await bench.Client.PostAsync("/kitchen", Book(1, Row("Hands", 0, "Cleo", "", "", "", "", "", "", "")), Cancel);

        Assert.Equal("/kitchen?both=2", third.Headers.Location!.OriginalString);
        Assert.Equal(["Ada", "Ben", "Cleo"], new[] { 1, 2, 3 }.Select(v => BookText.Read(bench.Store.VersionAsync("kitchen-book", v, Cancel).Result!.Text)["Hands"][0].Cells[0]));
    }

    [Fact]
    public async Task Two_kitchens_of_one_store_have_each_their_own_hands_kit_prices_code_and_example()
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-two-").FullName;
        try
        {
            await using BenchServer north = await BenchServer.StartAsync(options: new WebBenchOptions { Kitchen = "north" }, folder: folder);
            await using BenchServer south = await BenchServer.StartAsync(options: new WebBenchOptions { Kitchen = "south" }, folder: folder);
            foreach ((BenchServer bench, string name, string code) in new[] { (north, "Ada", "uk"), (south, "Ben", "us") })
            {
                HttpResponseMessage kept = await bench.Client.PostAsync("/kitchen", Book(0, Row("Hands", 0, name, "", "", "", "", "", "", "")), Cancel);
                Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
                await bench.Services.GetRequiredService<KitchenBook>().KeepPricesAsync($"item,price,unit\nsalt,{(name == "Ada" ? 1 : 2)}.00,1 kg\n", 0, name, Cancel);
                await bench.Services.GetRequiredService<KitchenBook>().SetAsync(code, "", Cancel);
                Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepExampleAsync(Cancel));
            }

            foreach ((BenchServer bench, string mine, string theirs, string code) in new[] { (north, "Ada", "Ben", "uk"), (south, "Ben", "Ada", "us") })
            {
                string page = await bench.Client.GetStringAsync("/kitchen", Cancel);
                Assert.Contains($"value=\"{mine}\"", page);
                Assert.DoesNotContain($"value=\"{theirs}\"", page);
                Assert.Equal(code, await bench.Services.GetRequiredService<KitchenBook>().CodeAsync(Cancel));
                Assert.Contains(mine == "Ada" ? "1.00" : "2.00", page);
                Assert.Single(await bench.Store.DocumentsAsync(Coulisse.Store.DocumentKind.Occasion, cancel: Cancel));
            }
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    [Fact]
    public async Task Hours_and_a_speed_that_cannot_be_read_are_named_by_row_and_kept_as_written()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        await bench.Client.PostAsync("/kitchen", Book(0, [.. Row("Hands", 0, "Ada", "", "", "Tuseday 8 to 16", "", "1.2", "", ""), .. Row("Kit", 0, "O1", "oven", "back", "1", "2 shelves", "to 250 °C", "quick", "", "")]), Cancel);
        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/kitchen", Cancel));

        Assert.Contains("Hands, row 1: The hours of Ada cannot be read: “Tuseday” is no day of the week.", page);
        Assert.Contains("Hands, row 1: The speed of Ada cannot be read: “1.2” is no speed: slower or faster, and by how much?", page);
        Assert.Contains("Kit, row 1: How fast O1 oven heats and cools cannot be read", page);
        Assert.Contains("value=\"Tuseday 8 to 16\"", page);
    }

    [Fact]
    public async Task A_book_kept_before_its_tables_had_hours_and_speed_is_read_by_its_heads()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        await bench.Store.SaveAsync(Coulisse.Store.DocumentKind.Kitchen, "kitchen-book", 0, "Kitchen", "# Kitchen\n\n## Hands\n\n| Name | Role | Place | Skills | Language | Notes |\n|---|---|---|---|---|---|\n| Ada | pastry | back | oven, knife | French | left-handed |\n", "test", "", Cancel);

        (_, string[] cells) = Assert.Single(BookText.Read((await bench.Store.OpenDocumentAsync("kitchen-book", Cancel))!.Text)["Hands"]);

        Assert.Equal(["Ada", "pastry", "back", "", "oven, knife", "", "French", "left-handed"], cells);
        Assert.Equal(["French"], (await SayAsync(bench, "8 plates, 8 March 2026 14:00, 5 minutes, Ada and Ben")).People[0].Languages);
    }

    [Theory]
    [InlineData("creme fraiche", "crème fraîche")]
    [InlineData("CREME FRAÎCHE", "crème fraîche")]
    [InlineData("fraiche creme", "crème fraîche")]
    [InlineData("buter", "butter")]
    [InlineData("Butter", "butter")]
    public void The_foods_page_finds_by_the_one_search_accents_order_and_a_wrong_letter_do_not_matter(string typed, string food)
        => Assert.Contains(Views.Web.FoodsView.Find(Matter.Foods.FoodTable.Default, typed, System.Globalization.CultureInfo.InvariantCulture).Rows, r => r.Name.Contains(food, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void A_word_no_food_has_finds_none_and_nearly_is_called_nearly()
    {
        Views.Web.FoodsView Find(string q) => Views.Web.FoodsView.Find(Matter.Foods.FoodTable.Default, q, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Empty(Find("xyzzyqq").Rows);
        Assert.Contains("Spelled nearly so", Find("buter").Says);
        Assert.DoesNotContain("nearly", Find("butter").Says);
        Assert.Contains("the first 60", Find("").Says);
    }

    [Fact]
    public async Task Each_site_of_a_kitchen_has_its_own_kit_and_larder_chosen_for_an_occasion_and_a_plan_stays_with_its_own()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: new WebBenchOptions { Planner = (o, options, progress, cancel) => Coulisse.Flows.PlanFlow.Plan(o, options with { FirstOnly = true, Workers = 1 }, "au", progress, cancel) });
        // both sites call their oven O1; the ring is at neither, so at both
        await bench.Client.PostAsync("/kitchen", Book(0,
        [
            .. Row("Hands", 0, "Ada", "pastry", "back", "", "all", "", "English", ""),
            .. Row("Kit", 0, "O1", "deck oven", "back", "1", "3 shelves", "to 300 °C", "", "6", "", "Harbour"), .. Row("Kit", 1, "O1", "oven", "back", "1", "2 shelves", "to 250 °C", "", "3", "", "Hill"), .. Row("Kit", 2, "H1", "induction ring", "back", "1", "", "", "", "2", "", ""),
            .. Row("Larder", 0, "onions", "5 kg", "", "Harbour"), .. Row("Larder", 1, "onions", "700 g", "", "Hill"), .. Row("Larder", 2, "salt", "1 kg", "", ""),
        ]), Cancel);
        KitchenBook book = bench.Services.GetRequiredService<KitchenBook>();
        OccasionShelf shelf = bench.Services.GetRequiredService<OccasionShelf>();
        Assert.Equal(["Harbour", "Hill"], await book.SitesAsync(Cancel));
        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/kitchen", Cancel));
        Assert.DoesNotContain("pieces of kit have the code", page);
        Assert.Contains("oven, 3 shelves", page);
        Assert.Contains("oven, 2 shelves", page);

        HttpResponseMessage said = await bench.Client.PostAsync("/occasions", new FormUrlEncodedContent([new("sentence", "8 plates, 8 March 2026 14:00, 5 minutes, Ada"), new("card", Card), new("site", "hill")]), Cancel);
        Assert.Equal(HttpStatusCode.Redirect, said.StatusCode);
        string id = Assert.Single(await bench.Store.DocumentsAsync(Coulisse.Store.DocumentKind.Occasion, cancel: Cancel)).Id;
        async Task<KeptOccasion> OpenAsync() => Assert.IsType<Parsed<KeptOccasion>.Ok>(await shelf.OpenAsync(id, null, Cancel)).Value;
        KeptOccasion hill = await OpenAsync();
        Assert.Equal([("O1", 2), ("H1", null)], hill.Occasion.Kit.Select(k => (k.Code, k.Shelves)));
        Assert.Contains(hill.Occasion.Assumed, a => a.Contains("Hill", StringComparison.Ordinal));
        Assert.Equal([("onions", 700m), ("salt", 1000m)], (await book.TermsAsync("Hill", Cancel)).Stock.Select(s => (s.Item, s.Amount)));
        Assert.Equal([("onions", 5000m), ("salt", 1000m)], (await book.TermsAsync("Harbour", Cancel)).Stock.Select(s => (s.Item, s.Amount)));

        Coulisse.Store.KeptPlan? plan = null;
        for (int i = 0; i < 600 && plan is null; i++)
        {
            await Task.Delay(100, Cancel);
            plan = await bench.Store.NewestPlanAsync(id, Cancel);
        }

        Assert.Equal(HttpStatusCode.Redirect, (await bench.Client.PostAsync($"/occasions/{id}/site", new FormUrlEncodedContent([new("site", "Harbour")]), Cancel)).StatusCode);
        Assert.Equal((3, "Harbour"), ((await OpenAsync()).Occasion.Kit[0].Shelves, (await OpenAsync()).Occasion.Site));
        Assert.Equal(2, Assert.IsType<Parsed<KeptOccasion>.Ok>(await shelf.OpenAsync(plan!, Cancel)).Value.Occasion.Kit[0].Shelves);
        Assert.Contains("The plan is for Hill, the occasion is now at Harbour.", WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/occasions/" + id, Cancel)));
        // a site the kitchen does not have chooses the first
        await bench.Client.PostAsync($"/occasions/{id}/site", new FormUrlEncodedContent([new("site", "<b>nowhere</b>")]), Cancel);
        Assert.Equal("Harbour", (await OpenAsync()).Basis.Site);
    }

    [Fact]
    public async Task A_kitchen_of_one_place_is_asked_for_no_site()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        await bench.Client.PostAsync("/kitchen", Book(0, Row("Kit", 0, "O1", "deck oven", "back", "1", "3 shelves", "to 300 °C", "", "6", "", "")), Cancel);
        Assert.DoesNotContain("name=\"site\"", await bench.Client.GetStringAsync("/", Cancel), StringComparison.Ordinal);
        Assert.Equal("", Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 8 March 2026 14:00, 5 minutes, Ada", Card, Cancel)).Value.Basis.Site);
    }

    [Fact]
    public async Task Every_group_is_one_line_with_what_is_in_it_and_a_piece_of_kit_asks_only_for_what_its_kind_has()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        AngleSharp.Html.Dom.IHtmlDocument page = await new AngleSharp.Html.Parser.HtmlParser().ParseDocumentAsync(await bench.Client.GetStringAsync("/kitchen", Cancel), Cancel);
        string Line(string id) => page.QuerySelector($"#{id} > summary .soft")!.TextContent;
        string?[] Spare(string what) => [.. page.QuerySelectorAll("#k-Kit tbody tr").First(r => r.QuerySelectorAll("input").Any(i => i.GetAttribute("value") == what)).QuerySelectorAll("td.spare").Select(d => d.GetAttribute("data-head"))];

        Assert.Equal("Chef, Helper 1, Helper 2", Line("k-Hands"));
        Assert.Equal("none written", Line("k-Larder"));
        Assert.Equal("none kept", Line("prices"));
        Assert.All(page.QuerySelectorAll("details.part"), d => Assert.False(d.HasAttribute("open")));
        Assert.Equal(["Capacity", "Temperatures", "Heats, °C/min", "Power, kW", "Circuit", "Site"], Spare("scale 5 kg × 1 g"));
        Assert.Equal(["Site"], Spare("fan oven"));

        // what was written is shown whatever the kind, and a group with a fault stands open
        await bench.Client.PostAsync("/kitchen", Book(0, [.. Row("Hands", 0, "Ada", "", "", "Tuseday 8 to 16", "", "", "", ""), .. Row("Kit", 0, "", "scale 5 kg × 1 g", "back", "1", "2 L", "", "", "", "", "")]), Cancel);
        page = await new AngleSharp.Html.Parser.HtmlParser().ParseDocumentAsync(await bench.Client.GetStringAsync("/kitchen", Cancel), Cancel);
        Assert.DoesNotContain("Capacity", Spare("scale 5 kg × 1 g"));
        Assert.True(page.QuerySelector("#k-Hands")!.HasAttribute("open"));
        Assert.False(page.QuerySelector("#k-Kit")!.HasAttribute("open"));
    }

    [Fact]
    public async Task A_bar_in_a_cell_does_not_break_the_book()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        await bench.Client.PostAsync("/kitchen", Book(0, Row("Hands", 0, "Ada | <b>x</b>\n## Kit", "", "", "", "", "", "", "")), Cancel);

        (_, string[] cells) = Assert.Single(BookText.Read((await bench.Store.OpenDocumentAsync("kitchen-book", Cancel))!.Text)["Hands"]);
        Assert.Equal("Ada / <b>x</b> ## Kit", cells[0]);
        Assert.DoesNotContain("<b>x</b>", await bench.Client.GetStringAsync("/kitchen", Cancel));
    }

    [Fact]
    public async Task A_price_list_that_cannot_be_read_is_kept_as_written_and_says_where()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        await bench.Client.PostAsync("/kitchen/prices", new FormUrlEncodedContent([new("text", "item,size,unit,price,currency\nbutter,250,g,2.45,D\nmilk,1,bucket,2,D\n")]), Cancel);
        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/kitchen", Cancel));

        Assert.Contains("milk,1,bucket", page);
        Assert.Contains("Line 3", page);
        Assert.Null(await bench.Services.GetRequiredService<KitchenBook>().PricesAsync(Cancel));
    }

    [Fact]
    public async Task Own_foods_go_before_those_that_ship_in_margins_and_plans_and_a_line_that_cannot_be_read_is_named()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        FormUrlEncodedContent Foods(string text) => new([new("basedOn", "0"), new("text", text)]);

        await bench.Client.PostAsync("/kitchen/own-foods", Foods("name,source,water,contains\nhouse curd,label,300,milk\n"), Cancel);
        Assert.Contains("Line 2: water is", WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/kitchen", Cancel)), StringComparison.Ordinal);

        await bench.Client.PostAsync("/kitchen/own-foods", new FormUrlEncodedContent([new("basedOn", "1"), new("text", "name,source,water,protein,fat,carbohydrate,ash,density,contains\nhouse curd,dairy's label,70,12,14,3,1,1.1,milk\n")]), Cancel);
        Assert.Contains("1 own foods go before", WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/kitchen", Cancel)), StringComparison.Ordinal);
        Assert.True((await bench.Services.GetRequiredService<KitchenBook>().FoodsAsync(Cancel)).Match("house curd", "en") is not null);

        Occasion occasion = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", "# Curd\n\nServes 8.\n\n- 1 cup house curd\n\n1. Spoon it out, 5 min.\n", Cancel)).Value.Occasion;
        Kitchen.Formulas.WeighedLine line = Kitchen.Formulas.Weighing.Weigh(occasion.Dishes[0].Dish).Components[0].Lines[0];
        Assert.Equal(("dairy's label", true), (line.Known?.Source, line.Grams is > 230 and < 290));
    }
}
