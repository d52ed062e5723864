using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Json;
using Coulisse.Formats.Travel;
using Coulisse.Store;
using Microsoft.Playwright;

namespace Coulisse.Gauge.Web;

/// <summary>The bench as people feel it: start, typing, panning, sixty live screens, the card file. Needs chromium on the path.</summary>
internal static class WebGauge
{
    private const int Cards = 10_000;
    private static readonly string[] Words = ["leek", "hazelnut", "brown", "butter", "quince", "barley", "smoked", "trout", "rye", "caraway", "plum", "walnut", "beet", "fennel", "citrus", "vanilla", "press", "terrine", "crumb", "sorbet"];

    /// <summary>Runs the gauge.</summary>
    /// <param name="only">"start", "card", "search", "typing", "long", "panning" or "sixty" for one part; null for all.</param>
    public static async Task<int> RunAsync(string? only = null)
    {
        bool Wanted(string part) => only is null || only == part;

        string chromium = Environment.GetEnvironmentVariable("COULISSE_CHROMIUM") ?? "/usr/bin/chromium";
        if (!File.Exists(chromium))
        {
            Console.Error.WriteLine("gauge: chromium is missing; name it in COULISSE_CHROMIUM");
            return 3;
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessorCount} processors, {Environment.OSVersion}, .NET {Environment.Version}, load before {LoadAverage()}"));
        string folder = Directory.CreateTempSubdirectory("coulisse-gauge").FullName;
        try
        {
            if (Wanted("start"))
            {
                await ColdStartAsync(folder);
            }

            (string plan, string run, string card) = await FillAsync(folder, Wanted("search") ? Cards : 0);
            using ServedBench bench = await ServedBench.StartAsync(folder);
            using IPlaywright playwright = await Playwright.CreateAsync();
            await using IBrowser browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = chromium, Headless = true, Args = ["--no-sandbox", "--disable-gpu"] });
            if (Wanted("card"))
            {
                await CardGauge.OpenAsync(bench, browser, card);
            }

            if (Wanted("search"))
            {
                await SearchAsync(bench, browser);
            }

            if (Wanted("typing"))
            {
                await TypingAsync(bench, browser);
            }

            if (Wanted("long"))
            {
                await CardGauge.LongAsync(bench, browser);
            }

            if (Wanted("panning"))
            {
                await PanningAsync(bench, browser, plan);
            }

            if (Wanted("sixty"))
            {
                await SixtyAsync(bench, browser, run);
            }

            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"server, most memory over all of it: {bench.PeakMegabytes:0} MB"));
            return 0;
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static string LoadAverage() => File.Exists("/proc/loadavg") ? string.Join(' ', File.ReadAllText("/proc/loadavg").Split(' ').Take(3)) : "unknown";

    private static async Task ColdStartAsync(string folder)
    {
        List<double> all = [];
        for (int i = 0; i < 7; i++)
        {
            using ServedBench bench = await ServedBench.StartAsync(Path.Combine(folder, "start"));
            all.Add(bench.ToFirstPage);
        }

        Report("process start to the whole first page", all, 2000);
    }

    private static async Task<(string Plan, string Run, string Card)> FillAsync(string folder, int cards)
    {
        Random random = new(1);
        await using KitchenStore store = await KitchenStore.OpenAsync(folder, TimeProvider.System);
        for (int i = 0; i < cards; i++)
        {
            string title = $"{Words[random.Next(Words.Length)]} {Words[random.Next(Words.Length)]} {i}";
            await store.SaveAsync(DocumentKind.Card, null, 0, title, $"# {title}\n\nServes {random.Next(2, 60)}.\n\n" + string.Concat(Enumerable.Range(0, 12).Select(_ => $"- {random.Next(5, 900)} g {Words[random.Next(Words.Length)]}\n")), "gauge", "");
        }

        SaveOutcome.Saved saved = (SaveOutcome.Saved)await store.SaveAsync(DocumentKind.Occasion, null, 0, "Six hundred", "Six hundred", "gauge", "");
        string plan = await store.KeepPlanAsync(saved.Id, saved.Version, TravelJson.Write(LargePlan.Of(600)), "");
        string starter = await File.ReadAllTextAsync(Path.Combine(Start.StartGauge.Root(), "examples", "demo", "cards", "starter.md"));
        string card = ((SaveOutcome.Saved)await store.SaveAsync(DocumentKind.Card, null, 0, "Starter", starter, "gauge", "")).Id;
        return (plan, await store.StartRunAsync(plan, TimeProvider.System.GetUtcNow(), rehearsal: true), card);
    }

    private static async Task SearchAsync(ServedBench bench, IBrowser browser)
    {
        using HttpClient client = new() { BaseAddress = new Uri(bench.Address) };
        List<double> all = [];
        for (int i = 0; i < 240; i++)
        {
            long start = Stopwatch.GetTimestamp();
            await client.GetStringAsync($"/cards?q={Words[i % 20][..3]}+{Words[i * 7 % 20]}");
            all.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        Report("card file of 10,000, two words, whole answer", [.. all.Skip(40)], 50);
        IPage page = await browser.NewPageAsync();
        await page.GotoAsync(bench.Address + "/cards");
        double[] typed = await page.EvaluateAsync<double[]>(
            """
            async () => {
              const out = []; const f = document.querySelector('input[type=search]');
              for (const word of ['lee', 'leek', 'haz', 'brow', 'but', 'quin', 'trou', 'rye', 'car', 'plu', 'wal', 'beet', 'fen', 'cit', 'van', 'pre', 'terr', 'cru', 'sor', 'bar'])
                for (let n = 1; n <= word.length; n++) {
                  f.value = word.slice(0, n); const t = performance.now();
                  const done = new Promise((r) => document.addEventListener('found', r, { once: true }));
                  f.dispatchEvent(new Event('input')); await done; out.push(performance.now() - t);
                }
              return out;
            }
            """);
        Report("card file, key to found list in the browser", typed, 50);
        await page.CloseAsync();
    }

    private static async Task TypingAsync(ServedBench bench, IBrowser browser)
    {
        IPage page = await browser.NewPageAsync();
        await page.GotoAsync(bench.Address + "/");
        string card = await File.ReadAllTextAsync(Path.Combine(Start.StartGauge.Root(), "examples", "demo", "cards", "starter.md"));
        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", card);
        await page.Locator(".w").First.WaitForAsync();
        await page.EvaluateAsync(
            """
            () => {
              window.asked = []; window.long = [];
              new PerformanceObserver((l) => window.long.push(...l.getEntries().map((e) => e.duration))).observe({ entryTypes: ['longtask'] });
              const plain = window.fetch; window.fetch = async (...a) => { const t = performance.now(); const r = await plain(...a); if (String(a[0]).includes('margins')) { await r.clone().text(); window.asked.push(performance.now() - t); } return r; };
              const line = [...document.querySelectorAll('.ms-text > div')].find((d) => d.textContent.startsWith('- 530')); const s = getSelection(); s.selectAllChildren(line); s.collapseToEnd();
            }
            """);
        await page.FocusAsync(".ms-text");
        await page.Keyboard.TypeAsync(" and then a little more of it, whisked slowly while the other pan warms, tasted twice, and set aside until the bath is ready", new() { Delay = 100 });
        await page.WaitForTimeoutAsync(600);
        Report("answer for the margins while typing 10 characters a second", await page.EvaluateAsync<double[]>("window.asked"), 150);
        double[] tasks = await page.EvaluateAsync<double[]>("window.long");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"tasks over 50 ms while typing: {tasks.Length} (longest {tasks.DefaultIfEmpty(0).Max():0} ms; wanted 0)"));
        await page.CloseAsync();
    }

    private static async Task PanningAsync(ServedBench bench, IBrowser browser, string plan)
    {
        IPage page = await browser.NewPageAsync();
        await page.GotoAsync($"{bench.Address}/plan/{plan}");
        await page.Locator(".tp-bar").First.WaitForAsync();
        for (int i = 0; i < 3; i++)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Nearer" }).ClickAsync();
        }

        LocatorBoundingBoxResult pane = (await page.Locator(".tp-pane").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(pane.X + (pane.Width / 2), pane.Y + 120);
        await TracedAsync("panned by the wheel", browser, page, async () =>
        {
            // one turn of the wheel a frame, forth and back, as a hand on a touch pad does it
            for (int i = 0; i < 240; i++)
            {
                await page.Mouse.WheelAsync(i < 120 ? 24 : -24, 0);
                await page.EvaluateAsync("() => new Promise((r) => requestAnimationFrame(r))");
            }
        });
        await page.Locator(".tp-bar[tabindex='0']").FocusAsync();
        await TracedAsync("walked by the arrow keys", browser, page, async () =>
        {
            for (int i = 0; i < 60; i++)
            {
                await page.Keyboard.PressAsync("ArrowRight");
                await page.EvaluateAsync("() => new Promise((r) => requestAnimationFrame(r))");
            }
        });
        await page.CloseAsync();
    }

    private static async Task TracedAsync(string how, IBrowser browser, IPage page, Func<Task> happens)
    {
        FrameTrace trace = await FrameTrace.OfAsync(browser, page, happens);
        if (trace.Events == 0 || trace.Frames.Count < 30)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"time plan of 600 tasks, {how}: NOT measured, the trace holds {trace.Frames.Count} frames and {trace.Events} events"));
            return;
        }

        Report($"time plan of 600 tasks, {how}: script, style and layout a frame", trace.Frames, 8);
        Report($"time plan of 600 tasks, {how}: painting and layers a frame", trace.Paints, 0);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"time plan of 600 tasks, {how}: longest task {trace.LongestTask:0} ms, {trace.Events} events seen (wanted no task over 50 ms: {(trace.LongestTask <= 50 ? "kept" : "NOT kept")})"));
    }

    private static async Task SixtyAsync(ServedBench bench, IBrowser browser, string run)
    {
        const int protocol = 57;
        using HttpClient client = new() { BaseAddress = new Uri(bench.Address), Timeout = Timeout.InfiniteTimeSpan };
        using CancellationTokenSource stop = new();
        long[] seen = new long[protocol];
        Task[] readers = [.. Enumerable.Range(0, protocol).Select(n => Task.Run(async () =>
        {
            using StreamReader stream = new(await client.GetStreamAsync($"/api/live/{run}/stream", stop.Token));
            while (await stream.ReadLineAsync(stop.Token) is { } line)
            {
                int at = line.IndexOf("tick ", StringComparison.Ordinal);
                if (at > 0)
                {
                    Volatile.Write(ref seen[n], long.Parse(line.AsSpan(at + 5, 3), CultureInfo.InvariantCulture));
                }
            }
        }))];
        List<IPage> pages = [];
        for (int i = 0; i < 3; i++)
        {
            IPage page = await browser.NewPageAsync();
            await page.GotoAsync($"{bench.Address}/live/{run}");
            await page.Locator(".lr-tick").WaitForAsync();
            pages.Add(page);
        }

        List<double> all = [];
        for (int i = 100; i < 160; i++)
        {
            string text = string.Create(CultureInfo.InvariantCulture, $"tick {i}");
            Task[] screens = [.. pages.Select(p => p.WaitForFunctionAsync("t => document.querySelector('live-run').frame.notes.some((n) => n.text === t)", text, new() { PollingInterval = 5 }))];
            await Task.Delay(30);
            long start = Stopwatch.GetTimestamp();
            (await client.PostAsJsonAsync($"/api/live/{run}", new[] { new { id = $"gauge-{i}-tick", kind = "note", subject = "slot", text, agoMs = 0 } })).EnsureSuccessStatusCode();
            await Task.WhenAll(screens);
            while (seen.Any(s => s < i))
            {
                await Task.Delay(1);
            }

            all.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        Report("tick to all of 60 screens (3 browsers, 57 protocol clients)", all, 250);
        await stop.CancelAsync();
        await Task.WhenAll(readers.Select(r => r.ContinueWith(_ => { }, TaskScheduler.Default)));
    }

    internal static void Report(string what, IReadOnlyList<double> all, double wanted)
    {
        double[] sorted = [.. all.Order()];
        double p95 = sorted[Math.Min(sorted.Length - 1, (int)Math.Ceiling(sorted.Length * 0.95) - 1)];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: median {sorted[sorted.Length / 2]:0.0} ms, p95 {p95:0.0} ms of {sorted.Length}{(wanted > 0 ? $" (wanted p95 under {wanted:0}: {(p95 < wanted ? "kept" : "NOT kept")})" : "")}"));
    }
}
