using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Coulisse.Web.Desk;

namespace Coulisse.Web.Tests;

public sealed class DeskTests
{
    private const string Card = "# Leek soup\n\nServes 4.\n\n- 600 g leeks\n- 2 cups stock\n\n1. Simmer 20 min.\n";

    [Fact]
    public async Task A_stated_weight_stands_on_its_own_line()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        HttpResponseMessage answer = await bench.Client.PostAsJsonAsync("/api/margins", new { text = Card }, TestContext.Current.CancellationToken);

        JsonElement view = await answer.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken);
        JsonElement line = Assert.Single(view.GetProperty("lines").EnumerateArray(), l => l.GetProperty("line").GetInt32() == 5);
        Assert.Equal("600\u202Fg", line.GetProperty("weights")[0].GetProperty("grams").GetString());
    }

    [Fact]
    public async Task A_kept_card_is_found_by_the_beginning_of_a_word_and_opens_with_its_text()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        HttpResponseMessage kept = await bench.Client.PostAsync("/cards", new FormUrlEncodedContent([new("text", Card)]), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        Assert.Contains("Leek soup", await bench.Client.GetStringAsync("/cards?q=lee", TestContext.Current.CancellationToken));
        Assert.DoesNotContain("Leek soup", await bench.Client.GetStringAsync("/cards?q=plum", TestContext.Current.CancellationToken));
        Assert.Contains("- 600 g leeks", await bench.Client.GetStringAsync(kept.Headers.Location, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Markup_in_a_card_is_shown_as_text()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        HttpResponseMessage kept = await bench.Client.PostAsync("/cards", new FormUrlEncodedContent([new("text", "# <script>alert(1)</script></textarea>\n\n- 1 g salt")]), TestContext.Current.CancellationToken);
        string page = await bench.Client.GetStringAsync(kept.Headers.Location, TestContext.Current.CancellationToken);

        Assert.DoesNotContain("<script>alert", page);
        Assert.Contains("&lt;script&gt;alert", page);
    }

    [Fact]
    public async Task A_post_from_another_site_is_refused_and_one_from_here_is_not()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        using HttpRequestMessage foreign = new(HttpMethod.Post, "/cards") { Content = new FormUrlEncodedContent([new("text", Card)]), Headers = { { "Origin", "http://elsewhere.test" } } };
        using HttpRequestMessage own = new(HttpMethod.Post, "/cards") { Content = new FormUrlEncodedContent([new("text", Card)]), Headers = { { "Origin", bench.Address.GetLeftPart(UriPartial.Authority) } } };

        Assert.Equal(HttpStatusCode.Forbidden, (await bench.Client.SendAsync(foreign, TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await bench.Client.SendAsync(own, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Every_page_says_that_nothing_comes_from_elsewhere()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        HttpResponseMessage page = await bench.Client.GetAsync("/", TestContext.Current.CancellationToken);

        Assert.Contains("default-src 'self'", page.Headers.GetValues("Content-Security-Policy").Single());
        string text = await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain("http://", text);
        Assert.DoesNotContain("https://", text);
        Assert.DoesNotContain(" style=", text);
    }

    [Fact]
    public async Task An_empty_card_is_refused_in_words()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        HttpResponseMessage kept = await bench.Client.PostAsync("/cards", new FormUrlEncodedContent([new("text", "  \n")]), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, kept.StatusCode);
        Assert.Contains("nothing was kept", await kept.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("- 1 cup soup\n- salt", 1, "240 ml soup", "- 240 ml soup\n- salt")]
    [InlineData("1. Bake\n2. Rest", 2, "Rest 10 min", "1. Bake\n2. Rest 10 min")]
    [InlineData("salt", 1, "2 g salt", "2 g salt")]
    public void An_answer_is_written_into_its_line_behind_the_bullet(string text, int line, string plain, string expected)
        => Assert.Equal(expected, Answering.Write(text, line, plain));

    [Fact]
    public void An_answer_to_a_line_that_is_gone_changes_nothing() => Assert.Null(Answering.Write("salt", 4, "2 g salt"));
}
