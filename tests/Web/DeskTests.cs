using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Desk;
using Coulisse.Web.Hosting;

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
    public async Task A_search_finds_notes_of_trials_records_occasions_and_foods_too_accents_or_not()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        await using BenchServer bench = await BenchServer.StartAsync();
        string card = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Tart", "# Tart", "t", "", cancel)).Id;
        string occasion = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Occasion, null, 0, "Crème night", "8 plates", "t", "", cancel)).Id;
        string trial = await bench.Store.KeepTrialAsync(null, "Trial of Tart", "the crème split at 84", "t", card, 1, "{}", cancel);
        string record = await bench.Store.KeepRecordAsync(null, "Record of the night", "crème: 3 left", "t", occasion, "", cancel);
        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/cards?q=creme", cancel));
        Assert.Contains($"/trials/{card}/{trial}", page);
        Assert.Contains($"/records/{occasion}/{record}", page);
        Assert.Contains("/occasions/" + occasion, page);
        Assert.Contains("/kitchen/foods?q=", page);
        Assert.DoesNotContain("<h2>", await bench.Client.GetStringAsync("/cards", cancel));
        Assert.DoesNotContain("<h2>", await bench.Client.GetStringAsync("/cards?q=zzzzqq", cancel));
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
    [InlineData("- 1 cup soup\n- salt", 1, "1 cup", "240 ml", "- 240 ml soup\n- salt")]
    [InlineData("1. Bake\n2. Rest", 2, "Rest", "Rest 10 min", "1. Bake\n2. Rest 10 min")]
    [InlineData("- 3 leaves gelatine", 1, "3 leaves gelatine", "3 leaves gelatine, gold", "- 3 leaves gelatine, gold")]
    [InlineData("- 1 glass of very cold milk, warmed", 1, "1 glass", "200 ml", "- 200 ml of very cold milk, warmed")]
    [InlineData("- 200 g manteca, fría", 1, "manteca", "manteca de cerdo", "- 200 g manteca de cerdo, fría")]
    [InlineData("1. Rub butter and flour. Bake at 180 for 30 minutes.", 1, "at 180", "at 180 °C", "1. Rub butter and flour. Bake at 180 °C for 30 minutes.")]
    public void An_answer_takes_the_place_of_the_words_asked_about(string text, int line, string asked, string plain, string expected)
        => Assert.Equal(expected, Answering.Write(text, line, plain, asked));

    [Theory]
    [InlineData("- 1180 g soup", 1, "180")]
    [InlineData("- salt\n- 20 g milk", 3, "20 g")]
    [InlineData("- 1 glass milk", 1, "2 glasses")]
    public void Words_that_are_not_there_change_nothing(string text, int line, string asked)
        => Assert.Null(Answering.Write(text, line, "90 g", asked));

    [Fact]
    public void A_sentence_about_the_whole_card_goes_under_the_title_and_leaves_the_line()
        => Assert.Equal("# Cake\n\nMeasures are metric.\n\n- 2 tbsp milk", Answering.Write("# Cake\n\n- 2 tbsp milk", 3, "Measures are metric.", null));

    [Fact]
    public void An_answer_to_a_line_that_is_gone_changes_nothing() => Assert.Null(Answering.Write("salt", 4, "2 g salt", "salt"));

    [Theory]
    [InlineData("53 plates", 53.0 / 4)]
    [InlineData("8", 2)]
    [InlineData("× 1.5", 1.5)]
    [InlineData("1.2 kg leeks", 2)]
    [InlineData("300 g leeks at hand", 0.5)]
    public void The_sentence_above_the_card_scales_every_known_weight(string words, double factor)
    {
        MarginsView view = Assert.IsType<Parsed<(Dish Dish, MarginsView View)>.Ok>(CardDesk.Margins(Card, words, "metric", "au")).Value.View;

        Assert.Empty(view.Faults);
        Assert.Equal("×" + factor.ToString("0.###", CultureInfo.InvariantCulture), view.Factor);
        Assert.All(view.Lines.SelectMany(l => l.Weights), w => Assert.Equal(w.Grade != "unknown", w.Scaled is not null));
    }

    [Theory]
    [InlineData("0 plates")]
    [InlineData("lots")]
    [InlineData("500 g saffron")]
    public void What_cannot_be_scaled_to_is_said_and_the_card_stands_as_written(string words)
    {
        MarginsView view = Assert.IsType<Parsed<(Dish Dish, MarginsView View)>.Ok>(CardDesk.Margins(Card, words, "", "au")).Value.View;

        Assert.NotEmpty(view.Faults);
        Assert.All(view.Lines.SelectMany(l => l.Weights), w => Assert.Null(w.Scaled));
    }

    [Fact]
    public void A_bath_step_that_misses_its_own_limit_is_found_on_its_line_with_a_remedy_and_a_thinner_bag_is_not()
    {
        string draft = EmbeddedFiles.Demo("cards/royale-draft.md")!;
        string thin = draft.Replace("nowhere thicker than 20 mm", "nowhere thicker than 10 mm", StringComparison.Ordinal);
        int bath = Array.FindIndex(draft.Split('\n'), l => l.StartsWith("4. Bath", StringComparison.Ordinal)) + 1;

        MarginsView found = Assert.IsType<Parsed<(Dish Dish, MarginsView View)>.Ok>(CardDesk.Margins(draft, "", "", "au")).Value.View;
        MarginsView silent = Assert.IsType<Parsed<(Dish Dish, MarginsView View)>.Ok>(CardDesk.Margins(thin, "", "", "au")).Value.View;

        RemarkView stop = Assert.Single(found.Lines.Single(l => l.Line == bath).Remarks, r => r.Kind is "stop" or "warn");
        Assert.NotEmpty(stop.Remedy);
        Assert.NotEmpty(found.Caution);
        Assert.DoesNotContain(silent.Lines.SelectMany(l => l.Remarks), r => r.Kind is "stop" or "warn");
    }
}
