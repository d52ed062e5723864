using System.Net;
using System.Net.Http.Json;
using System.Text.Json;

namespace Coulisse.Web.Tests;

/// <summary>Ways to go on with the planner that ships, on the example occasion: each is solved from where things stand and checked before it is offered.</summary>
public sealed class WaysOutTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private sealed class HandClock : TimeProvider
    {
        // Friday 9 October 2026, 10:00 of the kitchen's own clock, which here stands in UTC
        public DateTimeOffset Now { get; set; } = new(2026, 10, 9, 10, 0, 0, TimeSpan.Zero);

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Now;
    }

    private static async Task<JsonElement> JsonAsync(BenchServer bench, string at, object? post = null)
    {
        HttpResponseMessage answer = post is null ? await bench.Client.GetAsync(at, Cancel) : await bench.Client.PostAsJsonAsync(at, post, Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(Cancel);
    }

    [Fact]
    public async Task When_a_person_goes_on_friday_morning_a_way_is_found_taken_and_holds_and_the_run_goes_on_by_it_after_a_restart()
    {
        HandClock clock = new();
        string folder = Directory.CreateTempSubdirectory("coulisse-ways-").FullName;
        string run;
        string followed;
        await using (BenchServer bench = await BenchServer.StartAsync(clock, new WebBenchOptions { PlanSeconds = 6 }, folder))
        {
            string job = (await bench.Client.PostAsync("/occasions/example", null, Cancel)).Headers.Location!.OriginalString;
            string? plan = null;
            for (int i = 0; i < 240 && plan is null; i++)
            {
                await Task.Delay(250, Cancel);
                JsonElement view = await JsonAsync(bench, "/api" + job);
                Assert.False(view.GetProperty("failed").GetBoolean());
                plan = view.GetProperty("at").GetString();
            }

            run = (await bench.Client.PostAsync(plan + "/live", new FormUrlEncodedContent([new("how", "planned")]), Cancel)).Headers.Location!.OriginalString;
            JsonElement state = await JsonAsync(bench, "/api" + run);
            string first = state.GetProperty("frame").GetProperty("planId").GetString()!;
            Assert.Equal("/plan/" + first, plan);
            // half of what was planned before now was ticked, and Tomasz does not come; ovens and forgetful thumbs tick nothing
            long slot = state.GetProperty("plan").GetProperty("slotStart").GetInt64();
            double now = (clock.Now - new DateTimeOffset(2026, 10, 10, 14, 0, 0, TimeSpan.Zero)).TotalSeconds + slot;
            object[] done = [.. state.GetProperty("plan").GetProperty("bars").EnumerateArray().Where(b => b.GetProperty("end").GetInt64() <= now).Where((_, i) => i % 2 == 0).Select((b, i) => new { id = $"done-{i:0000}", kind = "done", subject = b.GetProperty("id").GetString(), text = "", agoMs = (long)((now - b.GetProperty("end").GetInt64()) * 1000) })];
            Assert.NotEmpty(done);
            await JsonAsync(bench, "/api" + run, done);
            JsonElement frame = await JsonAsync(bench, "/api" + run, new[] { new { id = "gone-0001", kind = "gone", subject = "Tomasz", text = "", agoMs = 0L } });
            Assert.Equal("Tomasz", Assert.Single(frame.GetProperty("gone").EnumerateArray()).GetString());

            JsonElement ways = await JsonAsync(bench, $"/api{run}/ways", new { });
            JsonElement[] offered = [.. ways.GetProperty("ways").EnumerateArray()];
            TestContext.Current.SendDiagnosticMessage("{0} {1}", ways.GetProperty("says").GetString(), string.Join(" | ", offered.Select(w => w.GetProperty("sentence").GetString())));
            Assert.True(offered.Length is >= 1 and <= 3, ways.GetProperty("says").GetString());
            Assert.Contains("Taken to be done, though nobody ticked it", ways.GetProperty("says").GetString());
            frame = await JsonAsync(bench, $"/api{run}/ways/{offered[0].GetProperty("id").GetString()}", new { });
            followed = frame.GetProperty("planId").GetString()!;
            Assert.NotEqual(first, followed);
            Assert.NotEmpty(frame.GetProperty("changes").EnumerateArray());
            // nothing that is still to come is left with the one who has gone
            JsonElement then = (await JsonAsync(bench, "/api" + run)).GetProperty("plan");
            long at = then.GetProperty("slotStart").GetInt64() - slot;
            Assert.DoesNotContain(then.GetProperty("bars").EnumerateArray(), b => b.GetProperty("kind").GetString() != "meal" && b.GetProperty("start").GetInt64() - at > now && b.GetProperty("rows").EnumerateArray().Any(r => r.GetString() == "p:Tomasz") && b.GetProperty("end").GetInt64() <= then.GetProperty("slotStart").GetInt64());
            // a way that was offered before is not taken twice
            Assert.Equal(HttpStatusCode.Conflict, (await bench.Client.PostAsJsonAsync($"/api{run}/ways/{offered[0].GetProperty("id").GetString()}", new { }, Cancel)).StatusCode);
        }

        await using BenchServer again = await BenchServer.StartAsync(clock, folder: folder);
        Assert.Equal(followed, (await JsonAsync(again, "/api" + run)).GetProperty("frame").GetProperty("planId").GetString());
        Assert.NotNull(await again.Store.PlanAsync(followed, Cancel));
        Directory.Delete(folder, recursive: true);
    }
}
