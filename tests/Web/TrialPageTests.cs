using System.Net;
using System.Net.Http.Headers;
using System.Text;
using static Coulisse.Web.Tests.NetworkBench;

namespace Coulisse.Web.Tests;

public sealed class TrialPageTests
{
    private const string Card = "# Leek soup\n\nServes 4.\n\n- 600 g leeks\n\n1. Slice the leeks.\n";
    private const string Sheet = "# Trial of Leek soup\n\nMade on 2026-03-01 by Ada. Good run.\n\n## Times\n| Part | Step | Minutes |\n|---|---|---|\n| | Slice the leeks. | 11 |\n\n## Notes\n<script>alert(1)</script>\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // one pixel, IHDR to IEND, with a place in it
    private static readonly byte[] Png = [0x89, 80, 78, 71, 13, 10, 26, 10, 0, 0, 0, 13, 73, 72, 68, 82, 0, 0, 0, 1, 0, 0, 0, 1, 8, 6, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 6, 116, 69, 88, 116, 80, 108, 97, 99, 101, 33, 0, 0, 0, 0, 0, 0, 0, 0, 73, 69, 78, 68, 0, 0, 0, 0];

    private static MultipartFormDataContent Form(string sheet, params (string Name, byte[] Bytes, string File)[] files)
    {
        MultipartFormDataContent form = new() { { new StringContent(sheet), "sheet" } };
        foreach ((string name, byte[] bytes, string file) in files)
        {
            ByteArrayContent content = new(bytes);
            content.Headers.ContentType = new MediaTypeHeaderValue("text/html");
            form.Add(content, name, file);
        }

        return form;
    }

    private static async Task<string> CardAsync(HttpClient client) => (await PostAsync(client, "/cards", ("text", Card))).Headers.Location!.OriginalString["/cards/".Length..];

    [Fact]
    public async Task A_sheet_is_filled_in_kept_with_its_photograph_and_shown_as_text()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string card = await CardAsync(bench.Client);
        Assert.Contains("Slice the leeks.", await bench.Client.GetStringAsync("/trials/" + card, Cancel));
        HttpResponseMessage kept = await bench.Client.PostAsync("/trials/" + card, Form(Sheet, ("photo", Png, "../../etc/passwd.png"), ("probe", "minutes,core\n0,20\n10,60\n"u8.ToArray(), "probe.csv")), Cancel);
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        string page = await bench.Client.GetStringAsync(kept.Headers.Location, Cancel);
        Assert.DoesNotContain("<script>alert", page);
        Assert.Contains("passwd.png", page);
        Assert.DoesNotContain("../", page);
        Assert.Contains("warmest 60", page);
        string at = System.Text.RegularExpressions.Regex.Match(page, "img src=\"([^\"]+)\"").Groups[1].Value;
        HttpResponseMessage picture = await bench.Client.GetAsync(at, Cancel);
        // what it is stands in its bytes, not in what the sender called it
        Assert.Equal("image/png", picture.Content.Headers.ContentType!.MediaType);
        Assert.Contains("sandbox", string.Join("", picture.Headers.GetValues("Content-Security-Policy")));
        Assert.DoesNotContain("Place", Encoding.Latin1.GetString(await picture.Content.ReadAsByteArrayAsync(Cancel)));
        Assert.Contains("needs 3", await bench.Client.GetStringAsync("/trials/" + card, Cancel));
    }

    [Fact]
    public async Task A_refused_photograph_or_sheet_keeps_nothing_and_loses_no_typing()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string card = await CardAsync(bench.Client);
        HttpResponseMessage svg = await bench.Client.PostAsync("/trials/" + card, Form(Sheet, ("photo", "<svg onload='alert(1)'/>"u8.ToArray(), "p.png")), Cancel);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, svg.StatusCode);
        string page = await svg.Content.ReadAsStringAsync(Cancel);
        Assert.Contains("FMT112", page);
        Assert.Contains("made on 2026-03-01", page, StringComparison.OrdinalIgnoreCase);
        HttpResponseMessage wrong = await bench.Client.PostAsync("/trials/" + card, Form(Sheet.Replace("| 11 |", "| soon |", StringComparison.Ordinal)), Cancel);
        Assert.Contains("TRI002", await wrong.Content.ReadAsStringAsync(Cancel));
        Assert.Empty(await bench.Store.TrialsAsync(card, Cancel));
    }

    [Fact]
    public async Task A_trial_or_its_files_are_not_opened_under_another_card_and_a_helper_may_keep_one()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using HttpClient helper = await bench.JoinAsync(owner, "Ben", "helper");
        using HttpClient buyer = await bench.JoinAsync(owner, "Cem", "buyer");
        string card = await CardAsync(owner);
        string other = (await PostAsync(owner, "/cards", ("text", "# Other\n\n- 1 g salt"))).Headers.Location!.OriginalString["/cards/".Length..];
        HttpResponseMessage kept = await helper.PostAsync("/trials/" + card, Form(Sheet, ("photo", Png, "p.png")), Cancel);
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        string id = kept.Headers.Location!.OriginalString.Split('/')[^1];
        string file = Assert.Single(await bench.Store.FilesAsync(id, Cancel)).Id;
        Assert.Equal(HttpStatusCode.OK, (await helper.GetAsync($"/trials/{card}/{id}/{file}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await helper.GetAsync($"/trials/{other}/{id}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await helper.GetAsync($"/trials/{other}/{id}/{file}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await buyer.PostAsync("/trials/" + card, Form(Sheet), Cancel)).StatusCode);
        using HttpClient stranger = bench.Browser();
        Assert.Equal(HttpStatusCode.Redirect, (await stranger.GetAsync($"/trials/{card}/{id}/{file}", Cancel)).StatusCode);
        Assert.Contains("by Ben", await owner.GetStringAsync($"/trials/{card}/{id}", Cancel));
    }

    [Fact]
    public async Task A_record_is_kept_beside_its_occasion()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string plan = await bench.KeepAsync(HandPlan.Tart);
        string occasion = (await bench.Store.PlanAsync(plan, Cancel))!.OccasionId;
        Assert.Contains("Nothing is recorded yet.", await bench.Client.GetStringAsync("/records/" + occasion, Cancel));
        HttpResponseMessage kept = await PostAsync(bench.Client, "/records/" + occasion, ("sheet", "# Record of Lunch\n\n## Food\n| Dish | Part | Planned, g | Prepared, g | Served, g | Left, g | Waste, g |\n|---|---|---|---|---|---|---|\n| Tart | Base | 400 | 410 | 380 | 20 | 10 |\n"));
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        Assert.Contains("380", await bench.Client.GetStringAsync(kept.Headers.Location, Cancel));
        Assert.Equal(plan, Assert.Single(await bench.Store.RecordsAsync(occasion, Cancel)).PlanId);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await PostAsync(bench.Client, "/records/" + occasion, ("sheet", "nothing"))).StatusCode);
    }
}
