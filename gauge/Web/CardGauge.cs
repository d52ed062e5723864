using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;

namespace Coulisse.Gauge.Web;

/// <summary>The card page: until it can be worked with, and with as long a text as a card may be.</summary>
internal static class CardGauge
{
    private const int Openings = 12;
    private const int Longest = 5 * 1024 * 1024;

    /// <summary>From the click on a link to margins that are laid, on the example's starter: then every line can be typed in and every weight opened.</summary>
    public static async Task OpenAsync(ServedBench bench, IBrowser browser, string card)
    {
        List<double> all = [];
        for (int i = 0; i < Openings; i++)
        {
            await using IBrowserContext context = await browser.NewContextAsync();
            IPage page = await context.NewPageAsync();
            await page.AddInitScriptAsync("new MutationObserver((_, o) => { if (document.querySelector('.ms-left .w')) { window.laidAt = performance.now(); o.disconnect(); } }).observe(document, { childList: true, subtree: true })");
            await page.GotoAsync($"{bench.Address}/cards/{card}");
            await page.Locator(".ms-left .w").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
            all.Add(await page.EvaluateAsync<double>("window.laidAt"));
        }

        // The first one meets a server to which no person has shown a card yet; it has walked the way itself by then, while the browser starts.
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"card page of the starter, the first after the start: {all[0]:0} ms"));
        WebGauge.Report("card page of the starter, navigation to margins that are laid, an empty browser cache", all[1..], 1000);
    }

    /// <summary>Five megabytes: how long the margins take, and whether one can type all the while.</summary>
    public static async Task LongAsync(ServedBench bench, IBrowser browser)
    {
        IPage page = await browser.NewPageAsync();
        await page.GotoAsync(bench.Address + "/");
        // a book that somebody pasted by mistake, with one card in front of it
        string lines = string.Concat(Enumerable.Range(0, 52_000).Select(i => string.Create(CultureInfo.InvariantCulture, $"A line of a book that nobody will ever cook from, number {i:00000}, and then some more of it to fill the page.\n")));
        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", ("# Long\n\n- 500 g leeks\n- 100 g butter\n\n" + lines)[..(Longest - 2000)]);
        long start = Stopwatch.GetTimestamp();
        await page.Locator(".ms-left .w").First.WaitForAsync(new() { Timeout = 120_000, State = WaitForSelectorState.Attached });
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"card of 5 MB: margins laid after {Stopwatch.GetElapsedTime(start).TotalSeconds:0.0} s"));
        await page.EvaluateAsync(
            """
            () => {
              window.long = [];
              new PerformanceObserver((l) => window.long.push(...l.getEntries().map((e) => e.duration))).observe({ entryTypes: ['longtask'] });
              const s = getSelection(); s.selectAllChildren(document.querySelectorAll('.ms-text div:not(.g)')[2]); s.collapseToEnd();
            }
            """);
        await page.FocusAsync(".ms-text");
        List<double> keys = [];
        for (int i = 0; i < 20; i++)
        {
            long key = Stopwatch.GetTimestamp();
            await page.Keyboard.PressAsync("x");
            await page.EvaluateAsync("() => new Promise((r) => requestAnimationFrame(() => setTimeout(r)))");
            keys.Add(Stopwatch.GetElapsedTime(key).TotalMilliseconds);
        }

        WebGauge.Report("card of 5 MB: key to the next frame", keys, 0);
        double[] tasks = await page.EvaluateAsync<double[]>("window.long");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"card of 5 MB: {tasks.Length} tasks over 50 ms for 20 keys, longest {tasks.DefaultIfEmpty(0).Max():0} ms"));
        await page.CloseAsync();
    }
}
