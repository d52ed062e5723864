using System.Net;
using Coulisse.Cards;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Web.Plans;
using Coulisse.Web.Sheets;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace Coulisse.Web.Tests;

/// <summary>What is written beside a step in the browser is kept beside its card, printed in the brief of whoever reads it, and never printed when it lacks a figure.</summary>
public sealed class TranslationPageTests
{
    private const string Bake = "Bake 45 min at 180 °C.";
    private const string Card = "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n\n1. Slice the onions, 30 min.\n2. " + Bake + "\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static async Task<string> CardAsync(BenchServer bench) => Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Onion tart", Card, "test", "", Cancel)).Id;

    private static FormUrlEncodedContent Written(string document, params (string Step, string Translation)[] pairs)
        => new([new("language", "pl"), .. pairs.SelectMany((p, i) => new KeyValuePair<string, string>[] { new(TranslationEndpoints.Field("text", document, i), p.Step), new(TranslationEndpoints.Field("is", document, i), p.Translation) })]);

    private static async Task<string> PageAsync(BenchServer bench, string at) => WebUtility.HtmlDecode(await bench.Client.GetStringAsync(at, Cancel));

    [Fact]
    public async Task Every_step_stands_beside_its_translation_or_says_that_it_has_none()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string card = await CardAsync(bench);
        string at = $"/cards/{card}/translations?language=pl";
        Assert.Contains("2 of 2 not translated", await PageAsync(bench, at));

        HttpResponseMessage kept = await bench.Client.PostAsync($"/cards/{card}/translations", Written(card, ("Slice the onions, 30 min.", ""), (Bake, "Piec 45 min w 180 °C.")), Cancel);

        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        string page = await PageAsync(bench, at);
        Assert.Contains("1 of 2 not translated", page);
        Assert.Contains("Piec 45 min w 180 °C.</textarea>", page);
        Assert.Contains("2 of 2 not translated", await PageAsync(bench, $"/cards/{card}/translations?language=de"));

        // The same text as the file beside a card, and it reads back.
        StepTranslations file = StepTranslations.Read(await bench.Client.GetStringAsync($"/cards/{card}/translations/pl.txt", Cancel), "pl");
        Assert.Equal("Piec 45 min w 180 °C.", file.Find(Bake));
        Assert.Empty(file.Problems);
        Assert.Equal(HttpStatusCode.NotFound, (await bench.Client.GetAsync("/cards/nothing/translations", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await bench.Client.PostAsync($"/cards/{card}/translations", new FormUrlEncodedContent([new("language", "tlh")]), Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_translation_that_lacks_a_figure_is_kept_as_written_named_and_not_used()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string card = await CardAsync(bench);
        await bench.Client.PostAsync($"/cards/{card}/translations", Written(card, (Bake, "Piec 45 min w 18 °C.")), Cancel);

        string page = await PageAsync(bench, $"/cards/{card}/translations?language=pl");
        Assert.Contains("Piec 45 min w 18 °C.</textarea>", page);
        Assert.Contains("not translated: it lacks 180, which the step has", page);
        StepTranslations stored = await bench.Services.GetRequiredService<StepWords>().OfAsync(card, "pl", Cancel);
        Assert.Null(stored.Find(Bake));
        Assert.Equal("TRN002", Assert.Single(stored.Problems).Code);
    }

    [Fact]
    public async Task A_step_that_changed_since_loses_its_translation_and_the_kitchen_does_not()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string card = await CardAsync(bench);
        await bench.Client.PostAsync($"/cards/{card}/translations", Written(card, (Bake, "Piec 45 min w 180 °C.")), Cancel);
        await bench.Store.SaveAsync(DocumentKind.Card, card, 1, "Onion tart", Card.Replace("45 min", "50 min", StringComparison.Ordinal), "test", "", Cancel);
        await bench.Client.PostAsync($"/cards/{card}/translations", Written(card, ("Slice the onions, 30 min.", "Pokroić cebulę, 30 min.")), Cancel);

        Assert.Contains("1 of 2 not translated", await PageAsync(bench, $"/cards/{card}/translations?language=pl"));
        Document kept = (await bench.Store.OpenDocumentAsync(StepWords.Key(card, "pl"), Cancel))!;
        Assert.Contains("# Of steps that have changed since, not used:", kept.Text, StringComparison.Ordinal);
        Assert.Contains("Piec 45 min w 180 °C.", kept.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_brief_prints_what_was_written_and_marks_the_rest_and_becomes_stale_by_it()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        await bench.Client.PostAsync("/kitchen", new FormUrlEncodedContent([new("basedOn", "0"), .. new[] { "Ada", "", "", "", "", "", "Polish", "" }.Select((c, i) => new KeyValuePair<string, string>($"Hands.0.{i}", c))]), Cancel);
        KeptOccasion kept = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", Card, Cancel)).Value;
        LocalDateTime ten = new(2026, 3, 7, 10, 0);
        PlannedTask Task(string id, string text) => new() { Id = id, Text = text, Kind = TaskKind.Work, Start = ten, End = ten.PlusMinutes(5), People = ["Ada"] };
        Plan made = HandPlan.Tart with { Tasks = [Task("a", Bake), Task("b", "Slice the onions, 30 min.")] };
        string plan = await bench.Store.KeepPlanAsync(kept.Id, kept.Version, TravelJson.Write(made), "", Cancel);
        string pages = $"/plan/{plan}/papers/pages?sheets=brief-ada";
        Assert.Contains("[nie przetłumaczono] " + Bake, await PageAsync(bench, pages));
        await bench.Client.PostAsync($"/plan/{plan}/papers", new FormUrlEncodedContent([new("sheet", "brief-ada"), new("as", "pages")]), Cancel);

        string card = kept.Cards.Keys.Single();
        Assert.Contains("Ada", kept.Occasion.People.Select(p => p.Name));
        await bench.Client.PostAsync($"/occasions/{kept.Id}/translations", Written(card, (Bake, "Piec 45 min w 180 °C.")), Cancel);

        string brief = await PageAsync(bench, pages);
        Assert.Contains("Piec 45 min w 180 °C.", brief);
        Assert.DoesNotContain(Bake, brief);
        Assert.Contains("[nie przetłumaczono] Slice the onions, 30 min.", brief);
        Assert.Contains("1 on the wall says something else by now", await PageAsync(bench, $"/plan/{plan}/papers"));
    }
}
