using Coulisse.Store;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

public sealed class WeighJourney
{
    private const string Card = "# Leek soup\n\nServes 4.\n\n- 600 g leeks, sliced\n- 1,200 g stock\n- 4.5 g salt\n- some nutmeg\n\n1. Simmer 20 min.\n";

    private static async Task<IPage> OpenAsync(Bench bench, int width = 390, ColorScheme colours = ColorScheme.Light)
    {
        SaveOutcome.Saved kept = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Leek soup", Card, "test", ""));
        IPage page = await bench.PageAsync(width, 844, colours, touch: true);
        await page.GotoAsync(bench.Named + "/cards/" + kept.Id);
        await page.FillAsync("#for", "8 plates");
        await page.GetByRole(AriaRole.Link, new() { Name = "Weigh it out" }).ClickAsync();
        await page.Locator(".wo-figure").WaitForAsync();
        return page;
    }

    // two touches within 0.4 s are one; a hand takes longer
    private static async Task TickAsync(IPage page)
    {
        await page.WaitForTimeoutAsync(450);
        await page.Locator(".wo-tick").ClickAsync();
    }

    [Fact]
    public async Task Weight_by_weight_the_total_runs_a_reload_changes_nothing_and_tare_starts_it_again()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await OpenAsync(bench);

        Assert.Equal("1,200 g", await page.Locator(".wo-figure").InnerTextAsync());
        await TickAsync(page);
        Assert.Contains("On the scale 1,200 g, then 3,600 g", await page.Locator(".wo-reads").InnerTextAsync());
        await page.ReloadAsync();
        Assert.Contains("stock", await page.Locator(".wo-food").InnerTextAsync());
        Assert.Contains("On the scale 1,200 g, then 3,600 g", await page.Locator(".wo-reads").InnerTextAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Tare" }).ClickAsync();
        await page.FillAsync("#wo-real", "2405");
        await TickAsync(page);
        Assert.Contains("On the scale 2,405 g, then 2,414 g", await page.Locator(".wo-reads").InnerTextAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();

        Assert.Contains("stock", await page.Locator(".wo-food").InnerTextAsync());
        Assert.Contains("On the scale 0 g", await page.Locator(".wo-reads").InnerTextAsync());
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task A_wet_thumb_that_touches_twice_ticks_once_and_what_has_no_weight_asks_for_one()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await OpenAsync(bench);

        await page.EvaluateAsync("() => { const b = document.querySelector('.wo-tick'); b.click(); b.click(); }");
        Assert.Equal("1 of 4 are weighed.", await page.Locator("weigh-out .small > span").InnerTextAsync());
        await TickAsync(page);
        await TickAsync(page);
        Assert.Equal("? g", await page.Locator(".wo-figure").InnerTextAsync());
        await TickAsync(page);
        Assert.Equal("3 of 4 are weighed.", await page.Locator("weigh-out .small > span").InnerTextAsync());
        await page.FillAsync("#wo-real", "0.4");
        await TickAsync(page);

        Assert.Equal("All 4 are weighed.", await page.Locator("weigh-out .small > span").InnerTextAsync());
        Assert.Contains("0.4 g weighed", await page.Locator("tr[data-line]").Last.InnerTextAsync());
    }

    [Theory]
    [InlineData(320, ColorScheme.Dark)]
    [InlineData(820, ColorScheme.Light)]
    public async Task It_fits_has_no_barrier_and_every_button_is_a_thumb_wide(int width, ColorScheme colours)
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await OpenAsync(bench, width, colours);
        await Bench.PictureAsync(page, $"weigh-{width}");

        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        Assert.Empty(await page.EvaluateAsync<string[]>("[...document.querySelectorAll('button, a.do')].filter(b => { const r = b.getBoundingClientRect(); return r.width < 64 || r.height < 64; }).map(b => b.textContent)"));
        Assert.Empty(await PageGeometry.BarriersAsync(page));
    }

    [Fact]
    public async Task By_keyboard_alone_everything_is_weighed()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await OpenAsync(bench, 1440);

        await page.Keyboard.PressAsync("ArrowRight");
        Assert.Contains("stock", await page.Locator(".wo-food").InnerTextAsync());
        await page.Keyboard.PressAsync("ArrowLeft");
        await page.Keyboard.PressAsync("Enter");

        Assert.Equal("1 of 4 are weighed.", await page.Locator("weigh-out .small > span").InnerTextAsync());
    }
}
