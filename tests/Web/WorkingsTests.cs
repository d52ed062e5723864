using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Hosting;

namespace Coulisse.Web.Tests;

public sealed partial class WorkingsTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static async Task<string> KeepAsync(BenchServer bench, string text, string? id = null, int basedOn = 0)
        => await bench.Store.SaveAsync(DocumentKind.Card, id, basedOn, "Card", text, "test", "", Cancel) switch { SaveOutcome.Saved(var key, _) => key, SaveOutcome.Conflict(var key, _, _) => key, _ => "" };

    [Fact]
    public async Task The_core_curve_of_a_bath_step_has_its_limit_its_table_and_the_same_drawing_to_save()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await KeepAsync(bench, EmbeddedFiles.Demo("cards/royale-draft.md")!);

        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync($"/cards/{id}/workings", Cancel));
        string key = CoreKey().Match(page).Value;
        string svg = WebUtility.HtmlDecode(await bench.Client.GetStringAsync($"/cards/{id}/workings/{key}.svg", Cancel));

        Assert.Contains(svg, page);
        Assert.Contains("limit", svg);
        Assert.DoesNotContain("style=", svg);
        // the table begins where the piece begins and rises
        double[] cautious = [.. CoreRow().Matches(page[page.IndexOf("1 °C low, 10 % thicker, °C", StringComparison.Ordinal)..]).Take(5).Select(m => double.Parse(m.Groups["c"].Value, CultureInfo.InvariantCulture))];
        Assert.Equal(5, cautious.Length);
        Assert.Equal(cautious.Order(), cautious);
    }

    [Fact]
    public async Task What_the_workings_say_of_the_middle_is_what_the_finding_in_the_margin_says()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string draft = EmbeddedFiles.Demo("cards/royale-draft.md")!, id = await KeepAsync(bench, draft);
        string card = string.Join('\n', Assert.IsType<Coulisse.Cards.Parsed<(Coulisse.Cards.Dish Dish, Coulisse.Views.Web.MarginsView View)>.Ok>(Desk.CardDesk.Margins(draft, "", "", "au")).Value.View.Lines.SelectMany(l => l.Remarks).Select(r => r.ToString()));
        string workings = WebUtility.HtmlDecode(await bench.Client.GetStringAsync($"/cards/{id}/workings", Cancel));
        string found = Regex.Match(card, @"the middle of 20 mm is at (\d+\.\d) °C after 45 min").Groups[1].Value;
        Assert.NotEmpty(found);
        Assert.Equal(found, Regex.Match(workings, @"After the 45 min of the card the middle is at (\d+\.\d)").Groups[1].Value);
        // half a gram in 1.6 kg is little, not nothing
        Assert.Contains("0.03 %", workings);
    }

    [Fact]
    public async Task Every_chart_has_its_table_for_those_who_do_not_see_it_and_its_drawing_to_save()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        await bench.Client.PostAsync("/kitchen/prices/example", new FormUrlEncodedContent([new("basedOn", "0")]), Cancel);
        string starter = "/cards/" + await KeepAsync(bench, EmbeddedFiles.Demo("cards/starter.md")!) + "/workings";
        string sorbet = "/cards/" + await KeepAsync(bench, "# Sorbet\n\n- 500 g water\n- 150 g sugar\n- 300 g raspberries\n\n1. Churn, then freeze at -18 °C.\n") + "/workings";
        string draft = "/cards/" + await KeepAsync(bench, EmbeddedFiles.Demo("cards/royale-draft.md")!) + "/workings";
        const string heats = "/workings/heat?shape=slab&size=20&start=5&medium=62&minutes=90&organism=listeria-meat&logs=6&code=au";
        const string cools = "/workings/heat?shape=slab&size=25&start=85&medium=3&face=30&code=au";
        foreach ((string at, string key) in new[] { (draft, CoreKey().Match(await bench.Client.GetStringAsync(draft, Cancel)).Value), (starter, "composition"), (starter, "cost"), (starter, "plate"), (sorbet, "ice"), (heats, "curve"), (heats, "kill"), (cools, "cooling") })
        {
            string page = await bench.Client.GetStringAsync(at, Cancel);
            int from = page.IndexOf($"id=\"{key}\"", StringComparison.Ordinal);
            Assert.True(from > 0, $"{at} has no {key}");
            string figure = page[from..page.IndexOf("</figure>", from, StringComparison.Ordinal)];
            Assert.True(Cell().Count(figure) > 2, $"{key} has no table");
            string save = WebUtility.HtmlDecode(Save().Match(figure).Groups["at"].Value);
            HttpResponseMessage drawing = await bench.Client.GetAsync(save, Cancel);
            Assert.Equal("image/svg+xml", drawing.Content.Headers.ContentType!.MediaType);
            Assert.StartsWith("<svg", await drawing.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Lethality_is_drawn_against_the_limit_that_was_asked_for_and_the_card_leads_there_with_its_own_figures()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        async Task<string> AskAsync(string logs, int minutes = 120) => WebUtility.HtmlDecode(await bench.Client.GetStringAsync($"/workings/heat?shape=slab&size=20&start=5&medium=62&minutes={minutes}&organism=listeria-meat&code=au&logs={logs}", Cancel));

        Assert.Contains("wanted 6 log", await AskAsync("6"));
        Assert.Matches("6 log in the cautious case after [0-9]+ min", await AskAsync("6"));
        Assert.Contains("6 log is not reached in the 15 min", await AskAsync("6", 15));
        Assert.DoesNotContain("wanted 6", await AskAsync(""));
        Assert.Contains("“many” is no log reduction", await AskAsync("many"));
        string id = await KeepAsync(bench, EmbeddedFiles.Demo("cards/royale-draft.md")!);
        Assert.Contains("/workings/heat?shape=slab&size=20&start=", WebUtility.HtmlDecode(await bench.Client.GetStringAsync($"/cards/{id}/workings", Cancel)));
    }

    [Fact]
    public async Task Names_in_a_drawing_are_text()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await KeepAsync(bench, "# Soup\n\n## <script>alert(1)</script>\n\n- 100 g butter\n- 100 g sugar\n");

        string page = await bench.Client.GetStringAsync($"/cards/{id}/workings", Cancel);

        Assert.Contains("composition", page);
        Assert.DoesNotContain("<script>alert", page);
        Assert.DoesNotContain("<script>alert", await bench.Client.GetStringAsync($"/cards/{id}/workings/composition.svg", Cancel));
    }

    [Fact]
    public async Task A_question_outside_the_heat_model_is_answered_with_what_is_wrong()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/workings/heat?shape=slab&size=20&start=-5&medium=60&until=58&code=au", Cancel));

        Assert.Contains("Outside the model", page);
        Assert.DoesNotContain("<svg", page);
    }

    [Fact]
    public async Task Cooling_is_judged_by_each_stage_of_the_code()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        string thin = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/workings/heat?shape=slab&size=25&start=85&medium=3&face=30&code=au", Cancel));
        string thick = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/workings/heat?shape=slab&size=150&start=85&medium=3&face=8&code=au", Cancel));

        // FSANZ 3.2.2 clause 7(3): 60 to 21 °C in 2 h, 21 to 5 °C in 4 h
        Assert.Contains("within 2 h", thin);
        Assert.DoesNotContain("not kept", thin);
        Assert.Contains("not kept", thick);
    }

    [Fact]
    public async Task Versions_are_compared_by_weight_in_grams_and_percent_and_by_line()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await KeepAsync(bench, "# Soup\n\n- 100 g butter\n- 300 g leeks\n- 5 g salt\n\n1. Melt.\n");
        await KeepAsync(bench, "# Soup\n\n- 150 g butter\n- 300 g leeks\n- 20 g miso\n\n1. Melt slowly.\n", id, 1);

        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync($"/compare/{id}", Cancel));

        Assert.Contains("+50 g, +50.0 %", page);
        Assert.Contains("24.69", page); // 100 of 405
        Assert.Contains("31.91", page); // 150 of 470
        Assert.Matches("miso.*came", page.Replace("\n", "", StringComparison.Ordinal));
        Assert.Matches("salt.*went", page.Replace("\n", "", StringComparison.Ordinal));
        Assert.Contains("1. Melt slowly.", page);
    }

    [Fact]
    public async Task Two_people_on_one_card_keep_both_texts_see_what_differs_and_may_go_on_from_either()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await KeepAsync(bench, "# Soup\n\n- 100 g butter\n");
        await KeepAsync(bench, "# Soup\n\n- 120 g butter\n", id, 1);

        HttpResponseMessage late = await bench.Client.PostAsync("/cards", new FormUrlEncodedContent([new("id", id), new("basedOn", "1"), new("text", "# Soup\n\n- 90 g butter\n")]), Cancel);
        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync(late.Headers.Location, Cancel));
        Assert.Contains("Both are kept", page);
        Assert.Contains("−30 g", page);
        Assert.Equal("# Soup\n\n- 90 g butter\n", (await bench.Store.OpenDocumentAsync(id, Cancel))!.Text);

        await bench.Client.PostAsync($"/versions/{id}", new FormUrlEncodedContent([new("version", "2"), new("basedOn", "3")]), Cancel);

        Assert.Equal("# Soup\n\n- 120 g butter\n", (await bench.Store.OpenDocumentAsync(id, Cancel))!.Text);
        Assert.Equal("# Soup\n\n- 90 g butter\n", (await bench.Store.VersionAsync(id, 3, Cancel))!.Text);
    }

    [Fact]
    public void A_difference_keeps_every_line_of_both_texts()
    {
        const string a = "one\ntwo\nthree\nfour\nfive";
        const string b = "zero\ntwo\nfour\nfour\nfive\nsix";

        DifferenceLine[] all = [.. TextDifference.Of(a, b)];

        Assert.Equal(a, string.Join('\n', all.Where(l => l.Kind != "in").Select(l => l.Text)));
        Assert.Equal(b, string.Join('\n', all.Where(l => l.Kind != "out").Select(l => l.Text)));
    }

    [GeneratedRegex("<td>[^<]+</td>")]
    private static partial Regex Cell();

    [GeneratedRegex("href=\"(?<at>[^\"]+)\" download", RegexOptions.ExplicitCapture)]
    private static partial Regex Save();

    [GeneratedRegex(@"core-\d+")]
    private static partial Regex CoreKey();

    [GeneratedRegex(@"<tr><td>[\d.]+</td><td>(?<c>[\d.]+)</td>", RegexOptions.ExplicitCapture)]
    private static partial Regex CoreRow();
}
