using Coulisse.Web.Tests;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

public sealed class PlanJourney
{
    [Theory]
    [InlineData(320, ColorScheme.Light)]
    [InlineData(820, ColorScheme.Dark)]
    [InlineData(1440, ColorScheme.Light)]
    public async Task A_kept_plan_is_drawn_without_a_barrier_at_every_width(int width, ColorScheme colours)
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync(width, colours: colours);
        await page.GotoAsync(bench.Address + "/plan/" + await bench.KeepAsync(HandPlan.Tart));
        await page.Locator(".tp-bar").First.WaitForAsync();
        await Bench.PictureAsync(page, $"plan-{width}-{colours}");

        // a moment and a task stand in each row they hold: t1 1, t2 1, t3 1, t4 2, t5 1, t6 1
        Assert.Equal(7, await page.Locator(".tp-bar").CountAsync());
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        Assert.Empty(await PageGeometry.BarriersAsync(page));
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task The_arrow_keys_walk_from_task_to_task_and_each_says_why_it_stands_there()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address + "/plan/" + await bench.KeepAsync(HandPlan.Tart));
        await page.Locator(".tp-bar").First.WaitForAsync();

        await page.Locator(".tp-bar[tabindex='0']").FocusAsync();
        Assert.Contains("before the pan is hot", await page.Locator(".tp-why").InnerTextAsync());
        await page.Keyboard.PressAsync("ArrowRight");
        Assert.Contains("Turn the tart", await page.Locator(".tp-why").InnerTextAsync());
        await page.Keyboard.PressAsync("ArrowDown");
        Assert.Contains("Set up", await page.Locator(".tp-why").InnerTextAsync());
    }

    [Fact]
    public async Task The_zoom_goes_from_days_to_seconds_of_the_slot()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address + "/plan/" + await bench.KeepAsync(HandPlan.Tart));
        await page.Locator(".tp-bar").First.WaitForAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "The slot" }).ClickAsync();

        await page.Locator(".tp-twin circle").WaitForAsync();
        await page.GetByText("14:02:00").First.WaitForAsync();
        await Bench.PictureAsync(page, "plan-slot");
        Assert.Empty(bench.Foul);
    }
}
