using System.Net;
using Coulisse.Web.Plans;
using Microsoft.Extensions.DependencyInjection;
using static Coulisse.Web.Tests.NetworkBench;

namespace Coulisse.Web.Tests;

/// <summary>Readings are judged, signed and only ever added.</summary>
public sealed class ControlLogTests
{
    private const string Card = "# Potted ham\n\nServes 8.\n\n- 1 kg ham\n\n1. Poach the ham in the bath at 75 °C until the core is at least 70 °C, 2 hours.\n2. Cool to 3 °C and keep at 3 °C for 3 days.\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_reading_within_its_limit_is_written_down_and_one_beyond_it_asks_what_was_done_and_loses_nothing()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(bench.Client, "/control-log", ("point", "0"), ("subject", "fridge 2"), ("celsius", "4,5"), ("done", ""))).StatusCode);
        HttpResponseMessage asked = await PostAsync(bench.Client, "/control-log", ("point", "0"), ("subject", "fridge <2>"), ("celsius", "8"), ("done", ""));
        string page = WebUtility.HtmlDecode(await asked.Content.ReadAsStringAsync(Cancel));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        Assert.Contains("8 °C does not keep 5 °C or less.", page);
        Assert.Contains("value=\"8\"", page);
        Assert.Contains("fridge <2>", page);
        Assert.Single(await bench.Store.ControlLogAsync(Cancel));
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(bench.Client, "/control-log", ("point", "0"), ("subject", ""), ("celsius", "8"), ("done", "moved to the walk-in, 20 min"))).StatusCode);

        page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/control-log", Cancel));
        Assert.Contains("2 entries, each as it was written: none was altered or taken out since.", page);
        Assert.Contains("Cold place, fridge 2", page);
        Assert.Contains("<td>missed</td>", page);
        string csv = await bench.Client.GetStringAsync("/control-log.csv", Cancel);
        Assert.Contains("fridge 2,5 °C or less,4.5,yes", csv);
    }

    [Theory]
    [InlineData("warm", "CTL001")]
    [InlineData("450", "CTL002")]
    [InlineData("", "CTL001")]
    public async Task What_is_no_reading_is_refused_in_words(string celsius, string code)
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        HttpResponseMessage refused = await PostAsync(bench.Client, "/control-log", ("point", "0"), ("celsius", celsius));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains(code, await refused.Content.ReadAsStringAsync(Cancel));
        Assert.Empty(await bench.Store.ControlLogAsync(Cancel));
    }

    [Fact]
    public async Task An_occasions_own_control_points_are_offered_and_core_and_cold_are_judged_the_right_way_round()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = Assert.IsType<Coulisse.Cards.Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", Card, Cancel)).Value.Id;
        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/control-log?occasion=" + id, Cancel));
        Assert.Contains("A reading for Potted ham", page);
        Assert.Contains("70 °C in the middle", page);
        string core = System.Text.RegularExpressions.Regex.Match(page, "<option value=\"(\\d+)\"[^>]*>[^<]*70 °C in the middle").Groups[1].Value;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await PostAsync(bench.Client, "/control-log", ("occasion", id), ("point", core), ("celsius", "68.9"))).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(bench.Client, "/control-log", ("occasion", id), ("point", core), ("celsius", "70"))).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await PostAsync(bench.Client, "/control-log", ("occasion", id), ("point", "99"), ("celsius", "70"))).StatusCode);
    }

    [Fact]
    public async Task On_a_network_a_reading_is_signed_by_who_is_signed_in_an_auditor_only_reads_and_the_chef_says_how_long()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using HttpClient helper = await bench.JoinAsync(owner, "Hal", "helper");
        using HttpClient auditor = await bench.JoinAsync(owner, "Aud", "auditor");
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(helper, "/control-log", ("point", "1"), ("celsius", "66"))).StatusCode);
        Assert.Equal("Hal", Assert.Single(await bench.Store.ControlLogAsync(Cancel)).Who);
        Assert.Equal(HttpStatusCode.Forbidden, (await PostAsync(auditor, "/control-log", ("point", "1"), ("celsius", "66"))).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await PostAsync(helper, "/control-log/keep", ("months", "1"))).StatusCode);
        Assert.Contains("kept without end", await auditor.GetStringAsync("/control-log", Cancel));
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(owner, "/control-log/keep", ("months", "24"))).StatusCode);
        Assert.Contains("at least 24 months", await auditor.GetStringAsync("/control-log", Cancel));
    }
}
