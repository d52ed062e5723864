using System.Text;
using Coulisse.Store;
using Coulisse.Web;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>From an empty store to a plan and its live page, with the planner that ships, as a person would go.</summary>
public sealed class FromNothingJourney
{
    private const string Tart = "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n- 250 g flour\n- 125 g butter\n\n1. Slice the onions, 20 min.\n2. Rub the butter into the flour, 10 min.\n3. Bake 45 min at 180 °C.\n";

    [Fact]
    public async Task A_dropped_card_is_kept_found_compared_printed_saved_planned_asked_and_rehearsed()
    {
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { PlanSeconds = 3 });
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address);

        // a card by dropping a file
        await page.EvaluateAsync(
            "text => { const d = new DataTransfer(); d.items.add(new File([text], 'tart.md', { type: 'text/markdown' })); document.querySelector('.ms-text').dispatchEvent(new DragEvent('drop', { dataTransfer: d, bubbles: true, cancelable: true })); }", Tart);
        await page.Locator(".w", new() { HasTextString = "1,000" }).WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this card" }).ClickAsync();
        await page.ArriveAsync("/cards/[^/]+$");
        string card = page.Url.Split('/')[^1];

        // found as one types, opened, changed, compared
        await page.GetByRole(AriaRole.Link, new() { Name = "Card file" }).ClickAsync();
        await page.Locator("#q").PressSequentiallyAsync("oni ta");
        await page.Locator(".list-link", new() { HasTextString = "Onion tart" }).ClickAsync();
        await page.Locator(".w").First.WaitForAsync();
        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", Tart.Replace("125 g butter", "140 g butter", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this card" }).ClickAsync();
        await page.GetByText("Version 2.").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Versions" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Compare with the newest" }).ClickAsync();
        Assert.Contains("+15", (await page.Locator("main").InnerTextAsync()).Replace("\u202f", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal));

        // on paper and as files, scaled as it stands on the page
        await page.GotoAsync($"{bench.Address}/cards/{card}");
        await page.FillAsync("#for", "× 2");
        await page.Locator(".w .now", new() { HasTextString = "280" }).WaitForAsync();
        await page.GetByText("Save as a file").ClickAsync();
        IDownload weights = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Weights (CSV)" }).ClickAsync());
        Assert.Equal("onion-tart.csv", weights.SuggestedFilename);
        string[] rows = (await File.ReadAllTextAsync((await weights.PathAsync())!, Encoding.UTF8, TestContext.Current.CancellationToken)).Split('\n');
        Assert.Contains(rows, r => r.Contains("butter,140,280", StringComparison.Ordinal));
        IDownload text = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "The text (Markdown)" }).ClickAsync());
        Assert.Equal((await bench.Store.OpenDocumentAsync(card, TestContext.Current.CancellationToken))!.Text, await File.ReadAllTextAsync((await text.PathAsync())!, TestContext.Current.CancellationToken));
        await page.GetByRole(AriaRole.Link, new() { Name = "Print", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Back to the card" }).WaitForAsync();
        Assert.Contains("280", await page.Locator("body").InnerTextAsync());
        await Bench.PictureAsync(page, "card-print");

        // one sentence makes an occasion of this very card; it is planned with what is shown while it runs
        await page.GotoAsync($"{bench.Address}/cards/{card}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the step on line 10 live" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "the whole step" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Line 10, shown live. Change it." }).WaitForAsync();
        await page.FillAsync("#sentence", "8 plates, Saturday 14:00, 10 minutes, Ada and Ben");
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan it" }).ClickAsync();
        await page.ArriveAsync("/plan/[^/]+$");
        await page.Locator(".tp-bar").First.WaitForAsync();
        Assert.Contains("Rub the butter", await page.Locator("#s1, #s2, #s3").AllInnerTextsAsync() is { } sheet ? string.Join('\n', sheet) : "");
        Assert.Single(await bench.Store.DocumentsAsync(DocumentKind.Card, cancel: TestContext.Current.CancellationToken));

        // why, and what if
        await page.Locator(".tp-bar[tabindex='0']").FocusAsync();
        Assert.NotEmpty(await page.Locator(".tp-why p").AllInnerTextsAsync());
        string plan = page.Url;
        await page.GetByRole(AriaRole.Link, new() { Name = "What if" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Ask what if" }).ClickAsync();
        await page.Locator("look-again li").First.WaitForAsync();
        await Bench.PictureAsync(page, "what-if");
        await page.GetByRole(AriaRole.Button, new() { Name = "Stop and keep what is solved" }).Or(page.GetByText("Each is solved from the night before.")).First.ClickAsync();

        // a rehearsal: the same page with a flag
        await page.GotoAsync(plan);
        await page.GetByRole(AriaRole.Button, new() { Name = "Rehearse now" }).ClickAsync();
        await page.Locator(".lr-flag").WaitForAsync();
        await page.Locator(".lr-tick").ClickAsync();
        await page.GetByText("Segment 2 begins").Or(page.GetByText("All segments have begun")).WaitForAsync();
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task Whoever_has_nothing_at_hand_starts_from_an_example_card()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync(390, touch: true);
        await page.GotoAsync(bench.Address);
        await page.GetByRole(AriaRole.Link, new() { Name = "Start from an example card" }).ClickAsync();

        await page.Locator(".r .remedy").First.WaitForAsync();
        Assert.True(await page.Locator(".w").CountAsync() > 5);
        Assert.Empty(await bench.Store.DocumentsAsync(DocumentKind.Card, cancel: TestContext.Current.CancellationToken)); // kept only when asked
        Assert.Empty(bench.Foul);
    }
}
