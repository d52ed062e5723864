using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Web;
using Coulisse.Web.Hosting;
using Coulisse.Web.House;
using Coulisse.Web.Live;
using Coulisse.Web.Plans;
using Coulisse.Web.Tests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;

namespace Coulisse.Journeys.Tests;

/// <summary>The live page when things go wrong: no network, wrong clocks, two thumbs, a server that dies.</summary>
public sealed class LiveJourney
{
    private static Plan Long { get; } = HandPlan.Tart with
    {
        SlotLength = Duration.FromMinutes(25),
        RunSheet = [.. Enumerable.Range(0, 5).Select(i => new RunSegment { Number = i + 1, StartSecond = i * 300, Seconds = 300, Show = $"Part {i + 1}", Who = ImmutableSortedDictionary<string, string>.Empty.Add("Ada", $"does {i + 1}") })],
    };

    private static async Task<JsonElement> FrameAsync(IPage page, string run)
        => (await page.EvaluateAsync<JsonElement>("run => fetch('/api/live/' + run, { cache: 'no-store' }).then(r => r.json())", run)).GetProperty("frame");

    private static async Task<IPage> OpenAsync(Bench bench, string address, FlowingClock clock, TimeSpan wrong)
    {
        IPage page = await bench.PageAsync(820);
        await page.Clock.InstallAsync(new() { TimeDate = (clock.GetUtcNow() + wrong).UtcDateTime });
        await page.GotoAsync(address);
        await page.Locator(".lr-tick").WaitForAsync();
        return page;
    }

    [Fact]
    public async Task Ten_minutes_without_network_and_clocks_ninety_seconds_off_lose_nothing_and_the_first_of_two_ticks_stands()
    {
        FlowingClock clock = new(TimeSpan.Zero);
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Clock = clock });
        string run = await bench.Store.StartRunAsync(await bench.KeepAsync(Long), clock.GetUtcNow(), rehearsal: false);
        string at = $"{bench.Named}/live/{run}";
        IPage chef = await OpenAsync(bench, at, clock, TimeSpan.Zero);
        IPage fast = await OpenAsync(bench, at, clock, TimeSpan.FromSeconds(90));
        IPage slow = await OpenAsync(bench, at, clock, TimeSpan.FromSeconds(-90));
        IPage[] all = [chef, fast, slow];
        async Task LaterAsync(int seconds)
        {
            clock.Forward(TimeSpan.FromSeconds(seconds));
            foreach (IPage page in all)
            {
                await page.Clock.FastForwardAsync(seconds * 1000L);
            }
        }

        await chef.Locator(".lr-tick").ClickAsync();
        await fast.GetByText("Segment 2 begins").WaitForAsync();
        await slow.GetByText("Segment 2 begins").WaitForAsync();
        await fast.Context.SetOfflineAsync(true);
        await slow.Context.SetOfflineAsync(true);

        await LaterAsync(300);
        await slow.Locator(".lr-tick").ClickAsync(); // part 2 at 5:00
        await slow.FillAsync("#lr-note", "crumb is out");
        await slow.GetByRole(AriaRole.Button, new() { Name = "Write it" }).ClickAsync();
        await LaterAsync(20);
        await fast.Locator(".lr-tick").ClickAsync(); // the same part, 20 s later
        await LaterAsync(280);
        await fast.GetByText("Segment 3 begins").WaitForAsync();
        await fast.Locator(".lr-tick").ClickAsync(); // part 3 at 10:00
        await fast.GetByText("2 reports wait here").WaitForAsync();
        // the page has gone on by itself: it counts and shows the plan
        Assert.Matches("^10:[0-5]\\d of 25:00$", await fast.Locator(".lr-clock").InnerTextAsync());
        Assert.Contains("Part 3", await fast.Locator(".lr-now").InnerTextAsync());
        Assert.Equal(1, (await FrameAsync(chef, run)).GetProperty("gates").GetArrayLength());

        await fast.Context.SetOfflineAsync(false);
        await fast.Clock.FastForwardAsync(4000);
        await chef.GetByText("Segment 4 begins").WaitForAsync();
        await slow.Context.SetOfflineAsync(false);
        await slow.Clock.FastForwardAsync(4000);
        await chef.GetByText("crumb is out").WaitForAsync();
        await slow.GetByText("Segment 4 begins").WaitForAsync();

        JsonElement[] gates = [.. (await FrameAsync(chef, run)).GetProperty("gates").EnumerateArray()];
        Assert.Equal([1, 2, 3], gates.Select(g => g.GetProperty("number").GetInt32()));
        Assert.InRange(gates[1].GetProperty("second").GetInt32(), 298, 318); // the slow device's tick, not the one 20 s later
        Assert.InRange(gates[2].GetProperty("second").GetInt32(), 598, 635);
        Assert.Equal(2, (await bench.Store.LogAsync(run, TestContext.Current.CancellationToken)).Events.Count(e => e is { Kind: "gate", Subject: "2" }));
        string[] clocks = await Task.WhenAll(all.Select(p => p.Locator(".lr-clock").InnerTextAsync()));
        double[] seconds = [.. clocks.Select(c => TimeSpan.ParseExact("0:" + c.Split(' ')[0], "h\\:m\\:ss", CultureInfo.InvariantCulture).TotalSeconds)];
        // two of the pages were sent four seconds forward to wake their timers; their clocks are set right again by the next exchange
        Assert.InRange(seconds.Max() - seconds.Min(), 0, 5);
    }

    [Fact]
    public async Task A_prep_day_is_ticked_skipped_and_lost_by_role_link_and_by_two_thumbs_at_once()
    {
        FlowingClock clock = new(TimeSpan.Zero);
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Clock = clock });
        // the prep of this plan lies a day before its slot: now is its first minute
        string run = await bench.Store.StartRunAsync(await bench.KeepAsync(HandPlan.Tart), clock.GetUtcNow().AddDays(1).AddMinutes(-1), rehearsal: false);
        string link = $"{bench.Named}/live/{run}?t={await bench.Services.GetRequiredService<RoleLinks>().MakeAsync(run, "Ada", TestContext.Current.CancellationToken)}";
        IPage ada = await OpenAsync(bench, link, clock, TimeSpan.Zero);
        IPage again = await OpenAsync(bench, link, clock, TimeSpan.Zero);
        await Bench.PictureAsync(ada, "live-prep");

        Assert.Equal(2, await ada.Locator(".lr-list > li").CountAsync());
        Assert.Equal(0, await ada.GetByText("Set up").CountAsync()); // Ben's
        await ada.GetByRole(AriaRole.Button, new() { Name = "Done: Slice onions" }).ClickAsync();
        await again.EvaluateAsync("() => document.querySelector('[data-task=\"done.t1\"]')?.click()");
        await again.GetByText("Done: 1 / 2").WaitForAsync();
        await ada.GetByRole(AriaRole.Button, new() { Name = "Lost: Turn the tart" }).ClickAsync();
        await again.GetByText("All is done.").WaitForAsync();
        await again.GetByText("Done: 2 / 2").ClickAsync();
        await again.GetByRole(AriaRole.Button, new() { Name = "Not done after all: Turn the tart" }).ClickAsync();
        await ada.GetByRole(AriaRole.Button, new() { Name = "Skip: Turn the tart" }).ClickAsync();
        await again.GetByText("skipped").WaitForAsync();

        JsonElement[] tasks = [.. (await FrameAsync(ada, run + new Uri(link).Query)).GetProperty("tasks").EnumerateArray()];
        Assert.Equal(["t1 done", "t4 skipped"], tasks.Select(t => $"{t.GetProperty("id").GetString()} {t.GetProperty("state").GetString()}"));
        Assert.Equal("Ada", (await bench.Store.LogAsync(run, TestContext.Current.CancellationToken)).Events[0].By);
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task A_server_killed_in_the_middle_comes_back_as_it_was_and_gets_what_was_ticked_meanwhile()
    {
        await using Bench bench = await Bench.OpenAsync();
        string folder = Directory.CreateTempSubdirectory("coulisse-killed-").FullName;
        int port = FreePort();
        string run;
        await using (KitchenStore store = await KitchenStore.OpenAsync(folder, TimeProvider.System, cancel: TestContext.Current.CancellationToken))
        {
            SaveOutcome.Saved saved = Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Occasion, null, 0, "Tart", "Tart", "test", ""));
            run = await store.StartRunAsync(await store.KeepPlanAsync(saved.Id, saved.Version, TravelJson.Write(Long), ""), TimeProvider.System.GetUtcNow(), rehearsal: false);
        }

        Process server = await ServeAsync(port, folder);
        try
        {
            IPage page = await bench.PageAsync(820);
            await page.GotoAsync(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}/live/{run}"));
            await page.Locator(".lr-tick").ClickAsync();
            await page.GetByText("Segment 2 begins").WaitForAsync();
            await page.GetByText("In touch with the bench").WaitForAsync();
            server.Kill(); // SIGKILL: no goodbye
            await server.WaitForExitAsync(TestContext.Current.CancellationToken);
            await page.Locator(".lr-tick").ClickAsync();
            await page.GetByText("1 report waits here").WaitForAsync();

            server.Dispose();
            server = await ServeAsync(port, folder);
            await page.GetByText("In touch with the bench").WaitForAsync(new() { Timeout = 30_000 });

            JsonElement[] gates = [.. (await FrameAsync(page, run)).GetProperty("gates").EnumerateArray()];
            Assert.Equal([1, 2], gates.Select(g => g.GetProperty("number").GetInt32()));
        }
        finally
        {
            server.Kill();
            await server.WaitForExitAsync(CancellationToken.None);
            server.Dispose();
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task Where_the_page_is_secure_it_survives_a_reload_without_network_and_elsewhere_it_asks_for_no_worker()
    {
        await using Bench bench = await Bench.OpenAsync();
        string run = await bench.Store.StartRunAsync(await bench.KeepAsync(Long), TimeProvider.System.GetUtcNow(), rehearsal: false);
        IPage page = await bench.PageAsync(820);
        await page.GotoAsync($"{bench.Address}/live/{run}");
        await page.Locator(".lr-tick").WaitForAsync();
        await page.EvaluateAsync("() => navigator.serviceWorker.ready");
        await page.ReloadAsync();
        await page.Locator(".lr-tick").ClickAsync();
        await page.GetByText("Segment 2 begins").WaitForAsync();

        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();
        await page.Locator(".lr-tick").WaitForAsync();
        await page.Locator(".lr-tick").ClickAsync();
        await page.GetByText("reports wait here").Or(page.GetByText("report waits here")).WaitForAsync();
        Assert.Matches("^[0-2]:\\d\\d of 25:00$", await page.Locator(".lr-clock").InnerTextAsync());
        await page.Context.SetOfflineAsync(false);
        await page.GetByText("In touch with the bench").WaitForAsync();

        IPage plain = await bench.PageAsync(820);
        await plain.GotoAsync($"{bench.Named}/live/{run}");
        await plain.Locator(".lr-tick").WaitForAsync();
        Assert.False(await plain.EvaluateAsync<bool>("isSecureContext"));
    }

    [Fact]
    public async Task By_the_kitchens_own_certificate_a_page_on_the_network_can_be_put_on_the_first_screen_and_reloads_without_network()
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-own-").FullName;
        try
        {
            OwnCertificate own = OwnCertificate.InFolder(folder, ["kitchen.test"], TimeProvider.System);
            await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Certificate = own.Server, Root = own.RootPem });
            Assert.StartsWith("https://kitchen.test:", bench.Named, StringComparison.Ordinal);
            string run = await bench.Store.StartRunAsync(await bench.KeepAsync(Long), TimeProvider.System.GetUtcNow(), rehearsal: false);
            IPage page = await bench.PageAsync(820);
            await page.GotoAsync($"{bench.Named}/live/{run}");
            await page.Locator(".lr-tick").WaitForAsync();
            Assert.True(await page.EvaluateAsync<bool>("isSecureContext"));
            await page.EvaluateAsync("() => navigator.serviceWorker.ready");
            await page.ReloadAsync();
            await page.Locator(".lr-tick").WaitForAsync();

            ICDPSession browser = await page.Context.NewCDPSessionAsync(page);
            string manifest = (await browser.SendAsync("Page.getAppManifest"))!.Value.GetRawText();
            Assert.Contains($"/live/{run}", manifest, StringComparison.Ordinal);
            Assert.Contains("\"errors\":[]", manifest.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
            string hinders = (await browser.SendAsync("Page.getInstallabilityErrors"))!.Value.GetRawText();
            // a private window, as each of these is, is the one thing that may stand in the way
            Assert.DoesNotContain("errorId", hinders.Replace("\"errorId\":\"in-incognito\"", "", StringComparison.Ordinal), StringComparison.Ordinal);

            await page.Context.SetOfflineAsync(true);
            await page.ReloadAsync();
            await page.Locator(".lr-tick").ClickAsync();
            await page.GetByText("reports wait here").Or(page.GetByText("report waits here")).WaitForAsync();
            await page.Context.SetOfflineAsync(false);
            await page.GetByText("In touch with the bench").WaitForAsync();
            Assert.Empty(bench.Foul.Where(f => !f.Contains("ERR_INTERNET_DISCONNECTED", StringComparison.Ordinal)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task A_helpers_page_speaks_the_helpers_language_and_words_from_right_to_left_do_not_break_it()
    {
        await using Bench bench = await Bench.OpenAsync();
        Plan plan = Long with { RunSheet = [.. Long.RunSheet.Select(s => s with { Show = "قدّم التارت مع السلطة", Who = ImmutableSortedDictionary<string, string>.Empty.Add("Ada", "تقطيع البصل 30 دقيقة") })] };
        CancellationToken cancel = TestContext.Current.CancellationToken;
        await bench.Services.GetRequiredService<KitchenBook>().KeepAsync(new Dictionary<string, List<string[]>> { ["Hands"] = [["Ada", "helper", "back", "", "all", "", "Polish", ""]] }, 0, "test", cancel);
        KeptOccasion kept = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 25 minutes, Ada and Ben", "# Tart\n\nServes 8.\n\n- 1 kg onions\n\n1. Slice, 30 min.\n", cancel)).Value;
        string run = await bench.Store.StartRunAsync(await bench.Store.KeepPlanAsync(kept.Id, kept.Version, TravelJson.Write(plan), "", cancel), TimeProvider.System.GetUtcNow(), rehearsal: true, cancel);
        IPage page = await bench.PageAsync(390);
        await page.GotoAsync($"{bench.Address}/live/{run}?t={await bench.Services.GetRequiredService<RoleLinks>().MakeAsync(run, "Ada", TestContext.Current.CancellationToken)}");
        await page.Locator(".lr-tick").WaitForAsync();
        await Bench.PictureAsync(page, "live-pl-rtl");

        await page.GetByText("Zapisz").WaitForAsync();
        Assert.Equal("pl", await page.EvaluateAsync<string>("document.documentElement.lang"));
        Assert.Equal("rtl", await page.Locator(".lr-now .lr-mine").EvaluateAsync<string>("e => getComputedStyle(e).direction"));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390);
    }

    private static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task<Process> ServeAsync(int port, string folder)
    {
        Process process = Process.Start(new ProcessStartInfo("dotnet", [typeof(WebBench).Assembly.Location, port.ToString(CultureInfo.InvariantCulture), folder]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        using HttpClient client = new();
        for (int i = 0; i < 120; i++)
        {
            try
            {
                await client.GetStringAsync(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}/healthz"));
                return process;
            }
            catch (HttpRequestException)
            {
                await Task.Delay(250);
            }
        }

        process.Kill();
        throw new TimeoutException("The bench did not come up.");
    }
}
