using System.Diagnostics;
using Coulisse.Web.Hosting;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

public sealed class CardJourney
{
    private static string Draft => EmbeddedFiles.Demo("cards/royale-draft.md")!;

    private static Task PasteAsync(IPage page, string text) => page.EvaluateAsync(
        """
        t => { const e = document.querySelector('.ms-text'); e.focus(); const d = new DataTransfer(); d.setData('text/plain', t);
               e.dispatchEvent(new ClipboardEvent('paste', { clipboardData: d, bubbles: true, cancelable: true })); }
        """, text);

    [Fact]
    public async Task A_pasted_card_has_grams_and_the_finding_with_its_remedy_in_its_margins()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address);

        long start = Stopwatch.GetTimestamp();
        await PasteAsync(page, Draft);
        await page.Locator(".w", new() { HasTextString = "530" }).First.WaitForAsync();
        ILocator finding = page.Locator(".r.stop, .r.warn").First;
        await finding.Locator(".remedy").WaitForAsync();

        TestContext.Current.SendDiagnosticMessage("margins after a paste: {0:0.0} s", Stopwatch.GetElapsedTime(start).TotalSeconds); // how fast is the gauge's business
        int bath = Array.FindIndex(Draft.Split('\n'), l => l.StartsWith("4. Bath", StringComparison.Ordinal)) + 1;
        Assert.Equal(bath.ToString(System.Globalization.CultureInfo.InvariantCulture), await finding.GetAttributeAsync("data-line"));
        Assert.Contains("°C", await finding.InnerTextAsync());
        Assert.NotEmpty(await finding.Locator(".remedy").InnerTextAsync());
        // the weight stands on its own line
        int milk = Array.FindIndex(Draft.Split('\n'), l => l.StartsWith("- 530 g", StringComparison.Ordinal));
        double weight = (await page.Locator($".w[data-line='{milk + 1}']").BoundingBoxAsync())!.Y;
        double line = (await page.Locator(".ms-text > div").Nth(milk).BoundingBoxAsync())!.Y;
        Assert.InRange(weight - line, -3, 3);
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task The_sentence_above_the_card_rescales_the_margin_and_a_fault_in_it_is_said()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address);
        await PasteAsync(page, Draft);
        await page.Locator(".w").First.WaitForAsync();

        await page.FillAsync("#for", "× 2");
        await page.Locator(".w .now", new() { HasTextString = "1,060" }).WaitForAsync();
        await page.FillAsync("#for", "a lot");
        await page.GetByText("is no amount to scale to").WaitForAsync();

        Assert.Equal(0, await page.Locator(".w .now").CountAsync());
        Assert.Empty(bench.Foul);
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task The_desk_has_no_barrier_that_axe_can_see(ColorScheme colours)
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync(colours: colours);
        await page.GotoAsync(bench.Address);
        await PasteAsync(page, Draft);
        await page.Locator(".r .remedy").First.WaitForAsync();

        Assert.Empty(await PageGeometry.BarriersAsync(page));

        // and the check can fail: a picture without words is seen at once
        await page.EvaluateAsync("document.querySelector('main').append(document.createElement('img'))");
        Assert.Contains(await PageGeometry.BarriersAsync(page), b => b.StartsWith("image-alt", StringComparison.Ordinal));
    }

    [Fact]
    public async Task By_keyboard_alone_a_card_is_typed_its_working_opened_and_the_card_kept()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address);

        await TabToAsync(page, "ms-text");
        await page.Keyboard.TypeAsync("# Leek soup\n\nServes 4.\n\n- 600 g leeks\n");
        await page.Locator(".w").First.WaitForAsync();
        await TabToAsync(page, "w", back: true);
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".open-weight").WaitForAsync();
        await page.Keyboard.PressAsync("Escape");
        Assert.Equal(0, await page.Locator(".open-weight").CountAsync());
        await TabToAsync(page, "main");
        await page.Keyboard.PressAsync("Enter");
        await page.ArriveAsync("/cards/[^/]+$");

        Assert.Equal("Leek soup", await page.Locator("h1").InnerTextAsync());
        Assert.Empty(bench.Foul);
    }

    [Theory]
    [InlineData(320)]
    [InlineData(390)]
    [InlineData(820)]
    [InlineData(1440)]
    public async Task The_desk_never_scrolls_sideways(int width)
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync(width);
        await page.GotoAsync(bench.Address);
        await PasteAsync(page, Draft);
        await page.Locator(".r .remedy").First.WaitForAsync();
        await Bench.PictureAsync(page, $"card-{width}");

        Assert.Equal(0, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth > 0 ? document.documentElement.scrollWidth - innerWidth : 0"));
    }

    [Fact]
    public async Task Hostile_text_is_shown_as_text_and_never_run()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address);
        const string hostile = "# <img src=x onerror=\"window.ran=1\">\n\n- 1 cup <script>window.ran=1</script> milk\n- 2 glasses \"><svg onload=window.ran=1> milk\n";

        await PasteAsync(page, hostile);
        await page.Locator(".w, .r").First.WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this card" }).ClickAsync();
        await page.ArriveAsync("/cards/[^/]+$");
        await page.Locator(".w, .r").First.WaitForAsync();

        Assert.False(await page.EvaluateAsync<bool>("'ran' in window"));
        Assert.Equal(0, await page.Locator("main img, main script, .ms svg").CountAsync());
        Assert.Contains("<img src=x", await page.Locator(".ms-text").InnerTextAsync());
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task Lines_come_back_as_they_went_in_whatever_the_browser_made_of_them()
    {
        await using Bench bench = await Bench.OpenAsync();
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Address);

        string[] wrong = await page.EvaluateAsync<string[]>(
            """
            async () => {
              const src = document.querySelector('script[type=module]').src.replace('bench.js', 'lines.js');
              const { readText, writeText, isFlat, flatLines, caret, setCaret } = await import(src);
              const wrong = [];
              const host = document.createElement('div'); host.contentEditable = 'true'; document.body.append(host);
              for (const t of ['', 'a', 'a\nb', 'a\n\nb', '\na', 'a\n', '\n\n', ' two  spaces ', '<b>x</b>\n&amp;']) {
                writeText(host, t);
                if (!isFlat(host)) wrong.push('not flat: ' + JSON.stringify(t));
                if (flatLines(host).join('\n') !== t) wrong.push('flat: ' + JSON.stringify(t));
                if (readText(host) !== t) wrong.push('read: ' + JSON.stringify(t) + ' gave ' + JSON.stringify(readText(host)));
                for (let i = 0; i <= t.length; i++) { setCaret(host, i); if (caret(host) !== i) wrong.push(`caret ${i} in ${JSON.stringify(t)} gave ${caret(host)}`); }
              }
              for (const [html, want] of [['a<br>b', 'a\nb'], ['a<br><div>b</div>c', 'a\nb\nc'], ['<div>a</div><div>b<div>c</div></div>', 'a\nb\nc'], ['<p>a</p><p>b</p>', 'a\nb'], ['a<div>b</div>', 'a\nb'], ['<div>a<b>c</b></div><div><br></div><div>d</div>', 'ac\n\nd']]) {
                host.innerHTML = html;
                if (readText(host) !== want) wrong.push(html + ' gave ' + JSON.stringify(readText(host)));
              }
              return wrong;
            }
            """);

        Assert.Empty(wrong);
    }

    private static async Task TabToAsync(IPage page, string name, bool back = false)
    {
        for (int i = 0; i < 60; i++)
        {
            if (await page.EvaluateAsync<bool>("c => document.activeElement?.tagName !== 'MAIN' && document.activeElement?.classList.contains(c)", name))
            {
                return;
            }

            await page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
        }

        Assert.Fail($"No element of class {name} is reached by the keyboard.");
    }
}
