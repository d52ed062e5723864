using Coulisse.Store;
using Coulisse.Web.Hosting;
using Coulisse.Web.Tests;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>Every page at every width, light and dark: nothing scrolls sideways, nothing is clipped, targets are wide enough, axe finds nothing.</summary>
public sealed class EveryPageJourney
{
    private const string Widths = "320,820,1440";

    [Theory]
    [InlineData("/")]
    [InlineData("/cards")]
    [InlineData("/cards/{card}")]
    [InlineData("/cards/{card}/weigh?for=8+plates")]
    [InlineData("/cards/{card}/workings")]
    [InlineData("/cards/{card}/versions")]
    [InlineData("/compare/{card}")]
    [InlineData("/workings/heat")]
    [InlineData("/kitchen")]
    [InlineData("/kitchen/foods?q=cream")]
    [InlineData("/occasions")]
    [InlineData("/control-log")]
    [InlineData("/plan/{plan}")]
    [InlineData("/live/{run}")]
    [InlineData("/live/{run}/links")]
    public async Task A_page_fits_can_be_touched_and_has_no_barrier(string path)
    {
        await using Bench bench = await Bench.OpenAsync();
        string card = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Card", EmbeddedFiles.Demo("cards/royale-draft.md")!, "test", "")).Id;
        await bench.Store.SaveAsync(DocumentKind.Card, card, 1, "Card", EmbeddedFiles.Demo("cards/royale-draft.md")!.Replace("530 g", "540 g", StringComparison.Ordinal), "test", "");
        string plan = await bench.KeepAsync(HandPlan.Tart);
        string run = await bench.Store.StartRunAsync(plan, TimeProvider.System.GetUtcNow(), rehearsal: true);
        string at = bench.Address + path.Replace("{card}", card, StringComparison.Ordinal).Replace("{plan}", plan, StringComparison.Ordinal).Replace("{run}", run, StringComparison.Ordinal);
        List<string> wrong = [];
        foreach (int width in Widths.Split(',').Select(int.Parse))
        {
            ColorScheme colours = width is 820 ? ColorScheme.Dark : ColorScheme.Light;
            IPage page = await bench.PageAsync(width, 900, colours, touch: width < 1000);
            await page.GotoAsync(at);
            await page.WaitForTimeoutAsync(350);
            await Bench.PictureAsync(page, $"page{path.Split('?')[0].Replace('/', '-').Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal)}-{width}");
            wrong.AddRange((await page.EvaluateAsync<string[]>(Geometry)).Select(w => $"{width}: {w}"));
            wrong.AddRange((await page.RunAxe()).Violations.Select(v => $"{width}: {v.Id}: {string.Join(" | ", v.Nodes.Select(n => n.Html).Take(3))}"));
            await page.Context.CloseAsync();
        }

        Assert.Empty(wrong);
        Assert.Empty(bench.Foul);
    }

    /// <summary>Sideways scroll of the page, words cut off by their own box, and targets under 24 px (WCAG 2.2, 2.5.8) or buttons under 44 px.</summary>
    private const string Geometry =
        """
        () => {
          const wrong = [];
          const over = document.documentElement.scrollWidth - innerWidth;
          if (over > 0) wrong.push(`the page is ${over} px too wide`);
          const seen = (e) => { const r = e.getBoundingClientRect(); return r.width > 1 && r.height > 1 && getComputedStyle(e).visibility !== 'hidden'; };
          for (const e of document.querySelectorAll('button, a.do, .reach, nav a, summary, input:not([type=hidden]):not([type=checkbox]), select')) {
            if (!seen(e) || e.closest('.away')) continue;
            const r = e.getBoundingClientRect();
            const least = e.matches('button:not(.word):not(.w), a.do') ? 43.5 : 23.5;
            if (r.height < least || r.width < 23.5) wrong.push(`target ${Math.round(r.width)} × ${Math.round(r.height)}: ${e.outerHTML.slice(0, 90)}`);
          }
          for (const e of document.querySelectorAll('h1, h2, h3, button, label, th, td, p, summary')) {
            if (!seen(e) || e.closest('.away, .scroll, .tp, .chart-draw')) continue;
            const style = getComputedStyle(e);
            if ((style.overflowX === 'hidden' || style.overflowX === 'clip') && e.scrollWidth > e.clientWidth + 1) wrong.push(`cut off: ${e.outerHTML.slice(0, 90)}`);
            const r = e.getBoundingClientRect();
            if (r.right > innerWidth + 1) wrong.push(`reaches out of the page: ${e.outerHTML.slice(0, 90)}`);
          }
          return [...new Set(wrong)].slice(0, 12);
        }
        """;
}
