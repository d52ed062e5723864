using System.Net;

namespace Coulisse.Web.Tests;

/// <summary>A refusal is a page for a person and JSON for a program.</summary>
public sealed class TroublePageTests
{
    private const string Browser = "text/html,application/xhtml+xml,*/*;q=0.8";

    [Theory]
    [InlineData("/nothing-here")]
    [InlineData("/plan/none")]
    [InlineData("/cards/none")]
    public async Task An_address_where_nothing_is_answers_a_browser_with_a_page_and_the_way_back(string at)
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        HttpResponseMessage page = await AskAsync(bench, at, Browser);
        HttpResponseMessage program = await AskAsync(bench, at, "*/*");

        Assert.Equal(HttpStatusCode.NotFound, page.StatusCode);
        string words = await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("<h1>Nothing is here</h1>", words);
        Assert.Contains("href=\"/cards\"", words);
        Assert.True(page.Headers.Contains("Content-Security-Policy"));
        Assert.Equal(HttpStatusCode.NotFound, program.StatusCode);
        Assert.DoesNotContain("<h1>", await program.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_live_link_that_has_run_out_says_so_in_words_on_the_phone_that_holds_it()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await bench.KeepAsync(HandPlan.Tart);
        HttpResponseMessage begun = await bench.Client.PostAsync($"/plan/{id}/live", new FormUrlEncodedContent([new("how", "rehearse")]), TestContext.Current.CancellationToken);
        string run = begun.Headers.Location!.ToString().Split('?')[0];

        HttpResponseMessage page = await AskAsync(bench, run + "?t=forged", Browser);
        HttpResponseMessage program = await AskAsync(bench, run + "?t=forged", "application/json");

        Assert.Equal(HttpStatusCode.Forbidden, page.StatusCode);
        string words = await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("Ask the chef for a new one.", words);
        Assert.Contains("<h1>Not open to you</h1>", words);
        Assert.Equal("application/problem+json", program.Content.Headers.ContentType!.MediaType);
    }

    private static async Task<HttpResponseMessage> AskAsync(BenchServer bench, string at, string accept)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, at);
        request.Headers.TryAddWithoutValidation("Accept", accept);
        return await bench.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
