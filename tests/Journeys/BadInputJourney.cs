using System.Diagnostics;
using Coulisse.Store;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>What people do to a bench without meaning harm, and what they would do if they did: nothing is lost, nothing is run.</summary>
public sealed class BadInputJourney
{
    private const string Small = "# Leek soup\n\nServes 4.\n\n- 600 g leeks\n- 1 l water\n\n1. Sweat the leeks 10 min.\n";

    private static Task PasteAsync(IPage page, string text) => page.EvaluateAsync(
        "t => { const e = document.querySelector('.ms-text'); e.focus(); const d = new DataTransfer(); d.setData('text/plain', t); e.dispatchEvent(new ClipboardEvent('paste', { clipboardData: d, bubbles: true, cancelable: true })); }", text);

    private static Task DropAsync(IPage page, string on, string name, string type, byte[] bytes) => page.EvaluateAsync(
        """
        ([on, name, type, text]) => {
          const d = new DataTransfer(); d.items.add(new File([Uint8Array.from(atob(text), (c) => c.charCodeAt(0))], name, { type }));
          document.querySelector(on).dispatchEvent(new DragEvent('drop', { dataTransfer: d, bubbles: true, cancelable: true }));
        }
        """, new[] { on, name, type, Convert.ToBase64String(bytes) });

    private static Task<string> TextAsync(IPage page) => page.EvaluateAsync<string>("document.querySelector('card-manuscript').text");

    private static async Task<string> KeepAsync(Bench bench, string text) => Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Leek soup", text, "test", "")).Id;

    [Fact]
    public async Task A_paste_of_nearly_five_megabytes_is_taken_kept_and_comes_back_whole_and_one_beyond_is_refused_in_words()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address);
        string text = "# A whole book\n\n" + string.Concat(Enumerable.Range(0, 52_000).Select(i => $"A line of a book that nobody will ever cook from, number {i:00000}, and then some more of it to fill the page.\n"));
        text = text[..(5 * 1024 * 1024 - 1000)];

        long start = Stopwatch.GetTimestamp();
        await PasteAsync(page, text);
        Assert.Equal(text, await TextAsync(page));
        TestContext.Current.SendDiagnosticMessage("paste of 5 MB: {0:0.0} s", Stopwatch.GetElapsedTime(start).TotalSeconds);
        await PasteAsync(page, new string('x', 2000));
        await page.GetByText("a card is 5 MB at most. Nothing was changed.").WaitForAsync();
        Assert.Equal(text.Length, await page.EvaluateAsync<int>("document.querySelector('card-manuscript').text.length"));

        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this card" }).ClickAsync();
        await page.ArriveAsync("/cards/[^/]+$", 90_000);
        Document kept = Assert.Single(await Task.WhenAll((await bench.Store.DocumentsAsync(DocumentKind.Card, cancel: TestContext.Current.CancellationToken)).Select(async h => (await bench.Store.OpenDocumentAsync(h.Id))!)));
        Assert.Equal(text, kept.Text);
    }

    [Fact]
    public async Task A_text_that_was_not_kept_is_there_again_after_a_reload_however_long_and_a_kept_one_leaves_an_empty_desk()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address);
        string text = "# Long\n\n- 500 g leeks\n\n" + string.Concat(Enumerable.Range(0, 30_000).Select(i => $"A line of a book that nobody will ever cook from, number {i:00000}, and then some more of it.\n")) + "the end";

        await PasteAsync(page, text);
        await page.WaitForTimeoutAsync(1500); // a long text is put away when the keys rest
        await page.ReloadAsync();
        await page.GetByText("Your unsaved text from last time.").WaitForAsync();
        Assert.Equal(text, await TextAsync(page));

        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", Small);
        await page.Locator(".w").First.WaitForAsync();
        await page.ReloadAsync();
        await page.Locator(".w").First.WaitForAsync();
        Assert.Equal(Small, await TextAsync(page));
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this card" }).ClickAsync();
        await page.ArriveAsync("/cards/[^/]+$");
        await page.Locator(".w").First.WaitForAsync();
        await page.GotoAsync(bench.Address);
        Assert.Equal("", await TextAsync(page));
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task A_picture_dropped_on_a_card_is_refused_in_words_and_the_text_stands_and_a_trial_takes_it_as_its_photograph()
    {
        await using Bench bench = await Bench.OpenAsync();
        string card = await KeepAsync(bench, Small);
        IPage page = await bench.PageAsync();
        await page.GotoAsync($"{bench.Address}/cards/{card}");
        await page.Locator(".w").First.WaitForAsync();
        byte[] picture = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==");
        const string hostile = "<img src=x onerror=window.ran=1>.png";

        await DropAsync(page, ".ms-text", hostile, "image/png", picture);
        await page.GetByText("is not a text").WaitForAsync();
        Assert.Contains(hostile, await page.Locator(".ms-refused").InnerTextAsync());
        Assert.Equal(Small, await TextAsync(page));

        // beside the text, as on the rest of the page, a dropped file must not carry the browser away from it
        await page.EvaluateAsync("() => { window.stays = 1; }");
        bool taken = await page.EvaluateAsync<bool>("() => { const d = new DataTransfer(); d.items.add(new File(['x'], 'a.png', { type: 'image/png' })); const e = new DragEvent('drop', { dataTransfer: d, bubbles: true, cancelable: true }); document.querySelector('h1').dispatchEvent(e); return e.defaultPrevented; }");
        Assert.True(taken, "a file dropped beside the card opens in the browser and the text is gone from sight");

        await page.GotoAsync($"{bench.Address}/trials/{card}");
        await page.Locator("#photo").SetInputFilesAsync(new FilePayload { Name = hostile, MimeType = "image/png", Buffer = picture });
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await page.ArriveAsync($"/trials/{card}/[^/]+$");
        Assert.Contains("onerror", await page.Locator("main").InnerTextAsync());
        Assert.Equal(1, await page.Locator("main img").CountAsync());
        Assert.False(await page.EvaluateAsync<bool>("'ran' in window"));
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task Two_people_on_one_card_both_keep_theirs_and_the_second_sees_what_differs()
    {
        await using Bench bench = await Bench.OpenAsync();
        string card = await KeepAsync(bench, Small);
        IPage ada = await bench.PageAsync();
        IPage ben = await bench.PageAsync();
        await ada.GotoAsync($"{bench.Address}/cards/{card}");
        await ben.GotoAsync($"{bench.Address}/cards/{card}");
        await ada.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", Small.Replace("600 g", "650 g", StringComparison.Ordinal));
        await ben.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", Small.Replace("1 l water", "1 l milk", StringComparison.Ordinal));

        await ada.GetByRole(AriaRole.Button, new() { Name = "Keep this card" }).ClickAsync();
        await ada.GetByText("Version 2.").WaitForAsync();
        await ben.GetByRole(AriaRole.Button, new() { Name = "Keep this card" }).ClickAsync(); // his form is stale by now
        await ben.ArriveAsync("/compare/.*both=true");

        string shown = await ben.Locator("main").InnerTextAsync();
        Assert.Contains("650 g leeks", shown);
        Assert.Contains("1 l milk", shown);
        string[] texts = [.. (await Task.WhenAll(Enumerable.Range(1, 3).Select(v => bench.Store.VersionAsync(card, v, TestContext.Current.CancellationToken)))).Select(v => v!.Text)];
        Assert.Contains(texts, t => t.Contains("650 g leeks", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.Contains("1 l milk", StringComparison.Ordinal));
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task A_form_that_lay_open_while_the_kitchen_and_the_sheet_were_changed_loses_neither()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage old = await bench.PageAsync();
        IPage now = await bench.PageAsync();
        await old.GotoAsync(bench.Address + "/kitchen");
        await now.GotoAsync(bench.Address + "/kitchen");
        async Task NameAsync(IPage page, string name)
        {
            await page.Locator("#k-Hands > summary").ClickAsync();
            await page.Locator("input[name='Hands.0.0']").FillAsync(name);
            await page.RunAndWaitForResponseAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Keep the kitchen" }).ClickAsync(), r => r.Request.Method == "POST");
        }

        await NameAsync(now, "Ada");
        await NameAsync(old, "Ben");
        await old.GetByText("Somebody else kept the kitchen since you opened it.").WaitForAsync();

        Assert.Equal("Ben", await old.Locator("input[name='Hands.0.0']").InputValueAsync());
        await old.GetByRole(AriaRole.Link, new() { Name = "See what differs" }).ClickAsync();
        Assert.Contains("Ada", await old.Locator("main").InnerTextAsync());
        Assert.Empty(bench.Foul);
    }
}
