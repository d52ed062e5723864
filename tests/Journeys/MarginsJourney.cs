using Coulisse.Web.Hosting;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>The margins of a card under what makes them move: faces that come late, a window that changes, a working that opens, a text of thousands of lines.</summary>
public sealed class MarginsJourney
{
    // Looks before every frame is painted: the most that one mark lies over the next, of remarks and of weights.
    private const string Watch =
        """
        window.worst = 0; window.frames_ = 0;
        const look = () => {
          for (const kind of ['.ms-right > .r', '.ms-left > .w']) {
            const boxes = [...document.querySelectorAll(kind)].filter((e) => !e.hidden).map((e) => e.getBoundingClientRect()).filter((r) => r.height > 1).sort((a, b) => a.top - b.top);
            for (let i = 0; i + 1 < boxes.length; i++) window.worst = Math.max(window.worst, boxes[i].bottom - boxes[i + 1].top);
            if (kind === '.ms-right > .r' && boxes.length > 2) window.frames_++;
          }
          requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
        """;

    private static readonly string Full = EmbeddedFiles.Demo("cards/royale-draft.md")! + "\n\n## Dressing\n\nServes 8.\n\n- a glug of walnut oil\n- 2 tbsp cider vinegar and 1 tsp mustard\n- some honey\n- a handful of chervil\n\n1. Whisk the oil, vinegar, honey.\n2. Chill to 4 °C, keep 9 days.\n3. Reheat to 50 °C.\n4. Hold at 45 °C for 5 h.\n";

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Marks_never_lie_over_each_other_whatever_comes_late_or_changes_its_height(int width)
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync(width);
        TaskCompletionSource faces = new();
        int held = 0;
        await page.RouteAsync("**/*.woff2", async route =>
        {
            held++;
            await faces.Task;
            await route.ContinueAsync();
        });
        await page.AddInitScriptAsync(Watch);
        await page.GotoAsync(bench.Address, new() { WaitUntil = WaitUntilState.DOMContentLoaded }); // all of it is loaded only when the faces are
        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", Full);
        await page.Locator(".ms-right > .r").Nth(2).WaitForAsync(new() { State = WaitForSelectorState.Attached });
        Task<double> Worst() => page.EvaluateAsync<double>("() => new Promise((r) => requestAnimationFrame(() => requestAnimationFrame(() => r(window.worst))))");
        double before = await page.EvaluateAsync<double>("document.querySelector('.ms-right > .r').getBoundingClientRect().height");

        faces.SetResult();
        // Asked for once and awaited: polling would evaluate a string in the page, which its content policy forbids.
        Assert.True(await page.EvaluateAsync<bool>("async () => { await Promise.all([document.fonts.load('16px Figures'), document.fonts.load('16px Reading')]); return document.fonts.check('16px Figures') && document.fonts.check('16px Reading'); }"));
        Assert.InRange(await Worst(), 0, 0.6);
        Assert.True(held > 0, "no face was held back");

        await page.SetViewportSizeAsync(width - 60, 900);
        await page.EvaluateAsync("document.querySelector('.ms-right').style.fontSize = '1.6rem'; for (const r of document.querySelectorAll('.ms-right > .r')) r.style.fontSize = '1.6rem'");
        Assert.InRange(await Worst(), 0, 0.6);
        Assert.True(await page.EvaluateAsync<double>("document.querySelector('.ms-right > .r').getBoundingClientRect().height") > before, "the remark did not grow");
        foreach (ILocator working in await page.Locator(".ms-right > .r summary").AllAsync())
        {
            await working.EvaluateAsync("s => s.parentElement.open = true");
        }

        Assert.InRange(await Worst(), 0, 0.6);
        Assert.True(await page.EvaluateAsync<int>("window.frames_") > 10);
        Assert.Empty(bench.Foul);

        // and the check can fail: marks that do not follow one another are seen at once
        await page.EvaluateAsync("for (const r of document.querySelectorAll('.ms-right > .r')) { r.style.position = 'absolute'; r.style.marginTop = '0'; }");
        Assert.True(await Worst() > 5);
    }

    [Fact]
    public async Task A_line_with_two_weights_has_room_for_both_beside_it()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync(1280);
        await page.GotoAsync(bench.Address);
        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", "# Dressing\n\nServes 8.\n\n- 20 g oil and 30 g vinegar\n- 40 g honey\n");
        await page.Locator(".w").Nth(2).WaitForAsync();

        double[][] boxes = await page.EvaluateAsync<double[][]>("[...document.querySelectorAll('.ms-left > .w')].map((e) => { const r = e.getBoundingClientRect(); return [r.top, r.bottom]; })");

        Assert.Equal(3, boxes.Length);
        Assert.All(boxes.Zip(boxes.Skip(1)), p => Assert.True(p.First[1] <= p.Second[0] + 0.6, $"{p.First[1]} over {p.Second[0]}"));
    }

    [Fact]
    public async Task A_text_of_thousands_of_lines_is_typed_in_joined_and_split_where_its_stretches_meet_and_nothing_else_moves()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync(1280);
        await page.GotoAsync(bench.Address);
        string text = "# Long\n\n- 500 g leeks\n\n" + string.Join('\n', Enumerable.Range(0, 4000).Select(i => $"Line {i} of a book."));
        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", text);
        Task<string> TextAsync() => page.EvaluateAsync<string>("document.querySelector('card-manuscript').text");
        Assert.Equal(text, await TextAsync());
        int stretches = await page.Locator(".ms-text > .g").CountAsync();
        Assert.InRange(stretches, 30, 60);

        // the first line of the second stretch is line 101
        await page.EvaluateAsync("() => { const l = document.querySelectorAll('.ms-text > .g')[1].firstElementChild; document.querySelector('.ms-text').focus(); l.scrollIntoView(); getSelection().collapse(l.firstChild, 0); }");
        string[] lines = text.Split('\n');
        await page.Keyboard.PressAsync("Backspace");
        Assert.Equal(string.Join('\n', [.. lines[..99], lines[99] + lines[100], .. lines[101..]]), await TextAsync());
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal(text, await TextAsync());
        await page.Keyboard.TypeAsync("So: ");
        Assert.Equal(string.Join('\n', [.. lines[..100], "So: " + lines[100], .. lines[101..]]), await TextAsync());
        Assert.InRange(await page.Locator(".ms-text > .g").CountAsync(), stretches - 1, stretches);
        // joining two lines, the browser itself tries to carry a look along; the policy refuses it, and the line stays flat
        Assert.All(bench.Foul, f => Assert.StartsWith("console: Applying inline style", f, StringComparison.Ordinal));
    }
}
