using System.Text.Json;
using Microsoft.Playwright;

namespace Coulisse.Gauge.Web;

/// <summary>What the page's main thread did, frame by frame, from the browser's own trace.</summary>
/// <param name="Frames">Milliseconds of script, style and layout in each frame the page's main thread made.</param>
/// <param name="Paints">Milliseconds of painting, layering and commit in the same frames; not part of the bound.</param>
/// <param name="LongestTask">Longest task of the main thread, ms.</param>
/// <param name="Events">How many script, style and layout events the trace holds: 0 means that nothing was seen.</param>
internal sealed record FrameTrace(IReadOnlyList<double> Frames, IReadOnlyList<double> Paints, double LongestTask, int Events)
{
    private static readonly HashSet<string> Work = new(StringComparer.Ordinal)
    {
        "Layout", "UpdateLayoutTree", "FunctionCall", "EvaluateScript", "EventDispatch", "FireAnimationFrame", "TimerFire", "HitTest", "RunMicrotasks", "v8.run",
    };

    private static readonly HashSet<string> Paint = new(StringComparer.Ordinal) { "PrePaint", "Paint", "Layerize", "Commit", "UpdateLayer", "CompositeLayers" };

    /// <summary>Records while something happens on the page.</summary>
    /// <param name="browser">The browser.</param>
    /// <param name="page">The page whose main thread counts; it must be the only busy one.</param>
    /// <param name="happens">What happens.</param>
    public static async Task<FrameTrace> OfAsync(IBrowser browser, IPage page, Func<Task> happens)
    {
        ICDPSession cdp = await browser.NewBrowserCDPSessionAsync();
        List<JsonElement> events = [];
        TaskCompletionSource whole = new();
        cdp.Event("Tracing.dataCollected").OnEvent += (_, e) => { lock (events) { events.AddRange(e!.Value.GetProperty("value").EnumerateArray().Select(x => x.Clone())); } };
        cdp.Event("Tracing.tracingComplete").OnEvent += (_, _) => whole.TrySetResult();
        await cdp.SendAsync("Tracing.start", new Dictionary<string, object>
        {
            ["transferMode"] = "ReportEvents",
            ["traceConfig"] = new Dictionary<string, object> { ["includedCategories"] = new[] { "devtools.timeline", "disabled-by-default-devtools.timeline", "disabled-by-default-devtools.timeline.frame", "toplevel", "blink", "cc" } },
        });
        string mark = "gauge-" + Guid.NewGuid().ToString("N");
        await page.EvaluateAsync("m => console.timeStamp(m)", mark);
        await happens();
        await cdp.SendAsync("Tracing.end");
        await whole.Task;
        await cdp.DetachAsync();
        return From(events, mark);
    }

    private static FrameTrace From(List<JsonElement> events, string mark)
    {
        (int, int) Thread(JsonElement e) => (e.GetProperty("pid").GetInt32(), e.GetProperty("tid").GetInt32());
        // the thread on which our own mark was made is the page's main thread
        (int, int)? main = events.Where(e => e.GetProperty("name").GetString() == "TimeStamp" && e.TryGetProperty("args", out JsonElement a) && a.GetRawText().Contains(mark, StringComparison.Ordinal)).Select(e => ((int, int)?)Thread(e)).FirstOrDefault();
        (string Name, double From, double To)[] all = [.. events
            .Where(e => Thread(e) == main && e.GetProperty("ph").GetString() is "X" && e.TryGetProperty("dur", out _))
            .Select(e => (e.GetProperty("name").GetString()!, e.GetProperty("ts").GetDouble() / 1000, (e.GetProperty("ts").GetDouble() + e.GetProperty("dur").GetDouble()) / 1000))];
        double[] frames = [.. events.Where(e => Thread(e) == main && e.GetProperty("name").GetString() is "BeginMainThreadFrame").Select(e => e.GetProperty("ts").GetDouble() / 1000).Order()];
        double LongestTask() => all.Where(e => e.Name is "RunTask" or "ThreadControllerImpl::RunTask").Select(e => e.To - e.From).DefaultIfEmpty(0).Max();
        double[] Each(HashSet<string> names)
        {
            // an event inside another of the same set is counted once
            (double From, double To)[] spans = [.. Outermost(all.Where(e => names.Contains(e.Name)))];
            return [.. frames.Skip(1).Select((at, i) => spans.Where(s => s.From >= frames[i] && s.From < at).Sum(s => s.To - s.From))];
        }

        return new FrameTrace(Each(Work), Each(Paint), LongestTask(), all.Count(e => Work.Contains(e.Name)));
    }

    private static IEnumerable<(double From, double To)> Outermost(IEnumerable<(string Name, double From, double To)> all)
    {
        double until = double.NegativeInfinity;
        foreach ((string _, double from, double to) in all.OrderBy(e => e.From).ThenByDescending(e => e.To))
        {
            if (from >= until)
            {
                yield return (from, to);
                until = to;
            }
        }
    }
}
