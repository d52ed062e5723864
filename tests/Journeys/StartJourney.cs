using System.Text.RegularExpressions;
using Coulisse.Web;
using Coulisse.Web.Tests;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>How a slot is begun: not by one wet thumb, and a page says one thing of a slot that nobody began.</summary>
public sealed class StartJourney
{
    [Fact]
    public async Task A_slot_nobody_began_says_that_its_time_is_over_and_by_how_much_and_nothing_against_it()
    {
        FlowingClock clock = new(TimeSpan.Zero);
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Clock = clock });
        // its five minutes ended nine seconds ago
        string run = await bench.Store.StartRunAsync(await bench.KeepAsync(HandPlan.Tart), clock.GetUtcNow() - HandPlan.Tart.SlotLength.ToTimeSpan() - TimeSpan.FromSeconds(9), rehearsal: false);
        IPage page = await bench.PageAsync(390, touch: true);
        await page.GotoAsync($"{bench.Address}/live/{run}");
        await page.Locator(".lr-clock", new() { HasTextString = " over" }).WaitForAsync();

        Assert.Matches(@"^0:(09|[1-5]\d) over$", (await page.Locator(".lr-clock").InnerTextAsync()).Trim());
        Assert.Equal("no start ticked", (await page.Locator(".lr-drift").InnerTextAsync()).Trim());
        Assert.Equal("The planned time is over; nobody has ticked a start.", (await page.Locator(".lr-now > div").InnerTextAsync()).Trim());
        Assert.Contains(HandPlan.Tart.RunSheet[0].Show, await page.Locator(".lr-next").InnerTextAsync(), StringComparison.Ordinal);
        string all = await page.Locator("live-run").InnerTextAsync();
        Assert.DoesNotContain("not begun", all, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("The slot is over", all, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing more", all, StringComparison.Ordinal);

        // the start can still be ticked, and then the page counts from it
        await page.Locator(".lr-tick").TapAsync();
        await page.GetByText("behind").First.WaitForAsync();
        Assert.DoesNotContain("no start ticked", await page.Locator("live-run").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task Going_live_takes_two_touches_in_two_places_and_comes_after_the_papers()
    {
        await using Bench bench = await Bench.OpenAsync();
        string plan = await bench.KeepAsync(HandPlan.Tart);
        IPage page = await bench.PageAsync(390, touch: true);
        await page.GotoAsync($"{bench.Address}/plan/{plan}");
        await page.Locator(".tp-bar").First.WaitForAsync(); // the drawing under it has its height
        ILocator yes = page.GetByRole(AriaRole.Button, new() { Name = "Yes, begin live in ten seconds" });
        Assert.False(await yes.IsVisibleAsync());
        ILocator first = page.GetByText("Begin live at once");
        LocatorBoundingBoxResult touched = (await first.BoundingBoxAsync())!;
        Assert.True((await page.GetByRole(AriaRole.Link, new() { Name = "Papers", Exact = true }).BoundingBoxAsync())!.Y < touched.Y);

        await first.TapAsync();
        await yes.WaitForAsync();
        // a second touch of the same thumb in the same place shuts it again and begins nothing
        Assert.True((await yes.BoundingBoxAsync())!.Y >= touched.Y + touched.Height);
        await first.TapAsync();
        Assert.False(await yes.IsVisibleAsync());
        Assert.EndsWith($"/plan/{plan}", page.Url, StringComparison.Ordinal);

        await first.TapAsync();
        await yes.ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("/live/[^/]+$"));
        Assert.Empty(bench.Foul);
    }
}
