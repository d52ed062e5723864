using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Web;
using Coulisse.Web.Plans;
using Coulisse.Web.Tests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>What a person changes on the plan and on the occasion: pins, what moved, the list before the day, a remedy by a touch.</summary>
public sealed class PinJourney
{
    private const string Card = "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n- 250 g flour\n\n1. Slice the onions, 30 min.\n2. Bake 45 min at 180 °C.\n";

    private static Plan Keyed { get; } = HandPlan.Tart with { Tasks = [.. HandPlan.Tart.Tasks.Select(t => t with { Key = "onions-" + t.Id })] };

    /// <summary>A planner that is quick and does as it is told: what is pinned moves, and with it nothing else.</summary>
    private static Parsed<PlannedOccasion> Obedient(Kitchen.Occasions.Occasion occasion, PlanOptions options)
        => new Parsed<PlannedOccasion>.Ok(new PlannedOccasion(occasion, [], [], Keyed with
        {
            Edits = options.Edits,
            Tasks = [.. Keyed.Tasks.Select(t => options.Edits.Pins.FirstOrDefault(p => p.Task == t.Key)?.Start is { } at ? t with { Start = at, End = at.Plus(NodaTime.Period.Between(t.Start, t.End)) } : t)],
        }, []));

    private static async Task<string> KeepAsync(Bench bench, bool plan = true)
    {
        KeptOccasion kept = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", Card, TestContext.Current.CancellationToken)).Value;
        return plan ? "/plan/" + await bench.Store.KeepPlanAsync(kept.Id, kept.Version, TravelJson.Write(Keyed), "") : "/occasions/" + kept.Id;
    }

    [Fact]
    public async Task A_task_is_dragged_and_pinned_the_plan_says_what_moved_and_lets_it_go_again_by_keyboard()
    {
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Planner = (o, options, _, _) => Obedient(o, options) });
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address + await KeepAsync(bench));
        ILocator task = page.Locator(".tp-bar[data-id='t1'] .body").First;
        await task.WaitForAsync();

        LocatorBoundingBoxResult box = (await task.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + 2, box.Y + 5);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + 60, box.Y + 5, new() { Steps = 6 });
        await page.Mouse.UpAsync();
        Assert.NotEqual("2026-03-06T14:00", await page.Locator("#tp-at").InputValueAsync());
        Assert.Equal(1, await page.Locator(".tp-ghost").CountAsync());
        await page.FillAsync("#tp-at", "2026-03-06T13:25");
        await page.GetByRole(AriaRole.Button, new() { Name = "Pin it here" }).ClickAsync();
        await page.ArriveAsync(@"/plan/[^/]+\?since=");

        Assert.Contains("Fri 13:25 instead of Fri 14:00", await page.Locator(".moved").InnerTextAsync());
        Assert.Contains("Slice onions: Fri 13:25", await page.Locator("main").InnerTextAsync());
        await page.Locator(".tp-pin").First.WaitForAsync();
        await Bench.PictureAsync(page, "plan-pinned");
        Assert.Empty(await PageGeometry.BarriersAsync(page));
        await page.Locator(".tp-bar[data-id='t1']").First.FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        Assert.Equal("2026-03-06T13:30", await page.Locator("#tp-at").InputValueAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Let go: Slice onions" }).PressAsync("Enter");
        await page.GetByText("Fri 14:00 instead of Fri 13:25").WaitForAsync();

        Assert.Equal(0, await page.Locator(".tp-pin").CountAsync());
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task A_finger_that_rests_on_a_task_takes_it_along_and_one_that_moves_at_once_pans_the_plan()
    {
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Planner = (o, options, _, _) => Obedient(o, options) });
        IPage page = await bench.PageAsync(820, touch: true);
        await page.GotoAsync(bench.Address + await KeepAsync(bench));
        ILocator task = page.Locator(".tp-bar[data-id='t1'] .body").First;
        await task.WaitForAsync();
        for (int i = 0; i < 3; i++)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Nearer" }).ClickAsync();
        }

        await task.ScrollIntoViewIfNeededAsync();
        ICDPSession finger = await page.Context.NewCDPSessionAsync(page);
        Task TouchAsync(string type, double x, double y) => finger.SendAsync("Input.dispatchTouchEvent", new Dictionary<string, object> { ["type"] = type, ["touchPoints"] = type == "touchEnd" ? Array.Empty<object>() : new object[] { new Dictionary<string, object> { ["x"] = x, ["y"] = y } } });
        async Task SlideAsync(int restMs)
        {
            LocatorBoundingBoxResult box = (await task.BoundingBoxAsync())!;
            double x = Math.Max(box.X, 100) + 20;
            await TouchAsync("touchStart", x, box.Y + 5);
            await page.WaitForTimeoutAsync(restMs);
            for (int i = 1; i <= 8; i++)
            {
                await TouchAsync("touchMove", x - (10 * i), box.Y + 5);
                await page.WaitForTimeoutAsync(16);
            }

            await TouchAsync("touchEnd", 0, 0);
            await page.WaitForTimeoutAsync(100);
        }

        double before = await page.EvaluateAsync<double>("document.querySelector('.tp-pane').scrollLeft");
        await SlideAsync(0);
        Assert.True(await page.EvaluateAsync<double>("document.querySelector('.tp-pane').scrollLeft") > before + 20, "the plan was not panned");
        Assert.Equal(0, await page.Locator(".tp-ghost").CountAsync());

        await page.EvaluateAsync("x => { document.querySelector('.tp-pane').scrollLeft = x; }", before);
        await page.WaitForTimeoutAsync(200);
        before = await page.EvaluateAsync<double>("document.querySelector('.tp-pane').scrollLeft");
        await SlideAsync(600);
        Assert.Equal(before, await page.EvaluateAsync<double>("document.querySelector('.tp-pane').scrollLeft"));
        Assert.Equal(1, await page.Locator(".tp-ghost").CountAsync());
        Assert.True(string.CompareOrdinal(await page.Locator("#tp-at").InputValueAsync(), "2026-03-06T14:00") < 0, "the task was not taken along");
        await page.GetByRole(AriaRole.Button, new() { Name = "Pin it here" }).TapAsync();
        await page.ArriveAsync(@"/plan/[^/]+\?since=");
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task An_impossible_day_offers_remedies_that_are_tried_by_a_touch_and_taken_back()
    {
        string remedy = "Begin 30 min earlier on every day.";
        List<NodaTime.LocalDateTime> begins = [];
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions
        {
            Planner = (o, options, _, _) =>
            {
                begins.Add(o.Windows[0].Start);
                return begins.Count == 1 ? new Parsed<PlannedOccasion>.Ok(new PlannedOccasion(o, [], [], new NoPlan(["The oven is taken."], [remedy]), [])) : Obedient(o, options);
            },
        });
        IPage page = await bench.PageAsync(820);
        await page.GotoAsync(bench.Address + await KeepAsync(bench, plan: false));
        Assert.Matches("stands? between you and Saturday", await page.Locator("#stands").InnerTextAsync());
        Assert.Contains("There is no plan yet.", await page.Locator(".numbered li").First.InnerTextAsync());
        await Bench.PictureAsync(page, "occasion");
        Assert.Empty(await PageGeometry.BarriersAsync(page));

        await page.GetByRole(AriaRole.Button, new() { Name = "Plan it" }).First.ClickAsync();
        await page.GetByText("The oven is taken.").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it: " + remedy }).ClickAsync();
        await page.ArriveAsync("/plan/[^/]+$");
        Assert.Equal(-30, NodaTime.Period.Between(begins[0], begins[1], NodaTime.PeriodUnits.Minutes).Minutes);

        await page.GetByRole(AriaRole.Link, new() { Name = "The occasion" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back: " + remedy }).ClickAsync();
        Assert.Equal(0, await page.GetByText("Changed by a touch").CountAsync());
        Assert.Empty(bench.Foul);
    }
}
