using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Coulisse.Web.Live;
using Microsoft.Extensions.DependencyInjection;

namespace Coulisse.Web.Tests;

public sealed class LiveTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private sealed class HandClock(DateTimeOffset now) : TimeProvider
    {
        private DateTimeOffset _now = now;

        public void Forward(double seconds) => _now = _now.AddSeconds(seconds);

        public override DateTimeOffset GetUtcNow() => _now;
    }

    private static HandClock Clock() => new(new DateTimeOffset(2026, 3, 7, 13, 0, 0, TimeSpan.Zero));

    private static async Task<string> BeginAsync(BenchServer bench, string how = "rehearse")
        => (await bench.Client.PostAsync($"/plan/{await bench.KeepAsync(HandPlan.Tart)}/live", new FormUrlEncodedContent([new("how", how)]), Cancel)).Headers.Location!.OriginalString;

    private static object Report(string id, string kind, string subject, double agoSeconds = 0, string text = "") => new { id, kind, subject, text, agoMs = (long)(agoSeconds * 1000) };

    private static async Task<JsonElement> PostAsync(BenchServer bench, string run, params object[] reports)
    {
        HttpResponseMessage answer = await bench.Client.PostAsJsonAsync("/api" + run, reports, Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(Cancel);
    }

    [Fact]
    public async Task Ticks_that_waited_without_network_count_at_the_moment_they_were_made_and_the_first_of_two_stands()
    {
        HandClock clock = Clock();
        await using BenchServer bench = await BenchServer.StartAsync(clock);
        string run = await BeginAsync(bench);

        clock.Forward(10 + 170);
        await PostAsync(bench, run, Report("tick-of-ben-late", "gate", "2", 10));
        JsonElement frame = await PostAsync(bench, run, Report("tick-of-ada-1st", "gate", "2", 20), Report("tick-of-ada-gate-1", "gate", "1", 168));

        JsonElement[] gates = [.. frame.GetProperty("gates").EnumerateArray()];
        Assert.Equal([2, 150], gates.Select(g => g.GetProperty("second").GetInt32()));
        Assert.Equal("30\u202Fs behind", frame.GetProperty("drift").GetString());
        Assert.NotEmpty(frame.GetProperty("ways").EnumerateArray());
    }

    [Fact]
    public async Task A_repeat_of_a_report_changes_nothing()
    {
        HandClock clock = Clock();
        await using BenchServer bench = await BenchServer.StartAsync(clock);
        string run = await BeginAsync(bench);
        clock.Forward(10);

        await PostAsync(bench, run, Report("note-0001", "note", "slot", 0, "more salt"));
        clock.Forward(30);
        JsonElement frame = await PostAsync(bench, run, Report("note-0001", "note", "slot", 0, "more salt"));

        Assert.Equal(1, frame.GetProperty("notes").GetArrayLength());
    }

    [Fact]
    public async Task A_restart_in_the_middle_of_a_run_finds_everything_as_it_was()
    {
        HandClock clock = Clock();
        string folder = Directory.CreateTempSubdirectory("coulisse-test-").FullName;
        string run;
        await using (BenchServer bench = await BenchServer.StartAsync(clock, folder: folder))
        {
            run = await BeginAsync(bench);
            clock.Forward(12);
            await PostAsync(bench, run, Report("gate-0001", "gate", "1"));
        }

        await using BenchServer again = await BenchServer.StartAsync(clock, folder: folder);
        JsonElement state = await again.Client.GetFromJsonAsync<JsonElement>("/api" + run, Cancel);

        Assert.Equal(2, state.GetProperty("frame").GetProperty("gates")[0].GetProperty("second").GetInt32());
        Assert.Equal(5 * 60, state.GetProperty("plan").GetProperty("slotSeconds").GetInt32());
    }

    [Fact]
    public async Task Another_screen_hears_of_a_tick_by_its_stream()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string run = await BeginAsync(bench);
        using StreamReader stream = new(await bench.Client.GetStreamAsync($"/api{run}/stream", Cancel));
        string first = "";
        while (!first.StartsWith("data:", StringComparison.Ordinal))
        {
            first = await stream.ReadLineAsync(Cancel) ?? throw new EndOfStreamException();
        }

        Assert.DoesNotContain("\"number\":1", first);
        await PostAsync(bench, run, Report("gate-0001", "gate", "1"));
        string next = "";
        while (!next.Contains("\"number\":1", StringComparison.Ordinal))
        {
            next = await stream.ReadLineAsync(Cancel) ?? throw new EndOfStreamException();
        }

        Assert.StartsWith("data:", next);
    }

    [Fact]
    public async Task A_role_link_opens_its_own_run_for_half_a_day_and_no_longer_and_not_when_changed()
    {
        HandClock clock = Clock();
        await using BenchServer bench = await BenchServer.StartAsync(clock);
        string run = await BeginAsync(bench);
        string other = await BeginAsync(bench);
        RoleLinks links = bench.Services.GetRequiredService<RoleLinks>();
        string token = await links.MakeAsync(run["/live/".Length..], "Ada", Cancel);

        Assert.Equal(HttpStatusCode.OK, (await bench.Client.GetAsync($"{run}?t={token}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await bench.Client.GetAsync($"{other}?t={token}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await bench.Client.GetAsync($"{run}?t={(token[0] == 'A' ? 'B' : 'A')}{token[1..]}", Cancel)).StatusCode);
        clock.Forward(RoleLinks.Lasts.TotalSeconds + 1);
        Assert.Equal(HttpStatusCode.Forbidden, (await bench.Client.GetAsync($"{run}?t={token}", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_report_by_a_role_link_is_signed_with_that_role()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string run = await BeginAsync(bench);
        string token = await bench.Services.GetRequiredService<RoleLinks>().MakeAsync(run["/live/".Length..], "Ada", Cancel);

        HttpResponseMessage answer = await bench.Client.PostAsJsonAsync($"/api{run}?t={token}", new[] { Report("note-0001", "note", "slot", 0, "<b>hot</b>") }, Cancel);

        Assert.Equal("Ada", (await answer.Content.ReadFromJsonAsync<JsonElement>(Cancel)).GetProperty("notes")[0].GetProperty("by").GetString());
    }

    [Fact]
    public async Task A_report_without_an_id_is_refused_and_nothing_is_taken()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string run = await BeginAsync(bench);

        HttpResponseMessage answer = await bench.Client.PostAsJsonAsync("/api" + run, new[] { Report("note-0001", "note", "slot", 0, "kept?"), Report("", "note", "slot") }, Cancel);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(0, (await bench.Client.GetFromJsonAsync<JsonElement>("/api" + run, Cancel)).GetProperty("frame").GetProperty("notes").GetArrayLength());
    }
}
