using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>What is wrong with a page as it is laid out: nothing clipped, nothing over another, targets wide enough, no barrier that axe can see (contrast is one of its rules).</summary>
internal static class PageGeometry
{
    /// <summary>What is wrong.</summary>
    /// <param name="page">Page.</param>
    /// <param name="at">How it is looked at, for the message.</param>
    /// <param name="far">True for a page that is read at two metres: contrast must be 7 to 1 (WCAG 2.2, 1.4.6) instead of 4.5.</param>
    public static async Task<IEnumerable<string>> WrongAsync(IPage page, string at, bool far = false)
        => (await page.EvaluateAsync<string[]>(Script)).Concat(await BarriersAsync(page, far)).Select(w => $"{at}: {w}").ToArray();

    /// <summary>What axe finds on a page of one frame: its script run in the page itself, without the blank page a second frame would need.</summary>
    /// <param name="page">Page.</param>
    /// <param name="far">True for contrast of 7 to 1.</param>
    public static async Task<string[]> BarriersAsync(IPage page, bool far = false)
    {
        await page.EvaluateAsync(Axe);
        return await page.EvaluateAsync<string[]>("async (far) => (await axe.run(document, { resultTypes: ['violations'], rules: { 'color-contrast-enhanced': { enabled: far } } })).violations.map((v) => `${v.id}: ${v.nodes.slice(0, 3).map((n) => n.html).join(' | ')}`)", far);
    }

    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    /// <summary>Sideways scroll of the page, words cut off by their own box, controls over each other, targets under 24 px (WCAG 2.2, 2.5.8), and buttons under 44 px where a finger is used.</summary>
    private const string Script =
        """
        () => {
          const wrong = [];
          const over = document.documentElement.scrollWidth - innerWidth;
          if (over > 0) wrong.push(`the page is ${over} px too wide`);
          const seen = (e) => { const r = e.getBoundingClientRect(); return r.width > 1 && r.height > 1 && getComputedStyle(e).visibility !== 'hidden' && e.checkVisibility(); };
          const all = [...document.querySelectorAll('button, a.do, a.list-link, .reach, nav a, summary, input:not([type=hidden]), select, textarea')].filter((e) => seen(e) && !e.closest('.away, .skip'));
          // a bar that stays at the edge while the page moves under it lies over the page by design
          const stays = (e) => { for (let at = e; at; at = at.parentElement) if (['sticky', 'fixed'].includes(getComputedStyle(at).position)) return true; return false; };
          const coarse = matchMedia('(pointer: coarse)').matches;
          for (const e of all) {
            if (e.matches('input[type=checkbox], input[type=radio]')) continue;
            const r = e.getBoundingClientRect();
            const least = e.matches('button:not(.word):not(.w), a.do') || (coarse && e.matches('button, select, summary, input')) ? 43.5 : 23.5;
            if (r.height < least || r.width < 23.5) wrong.push(`target ${Math.round(r.width)} × ${Math.round(r.height)}: ${e.outerHTML.slice(0, 90)}`);
          }
          const boxes = all.map((e) => e.getBoundingClientRect());
          for (let i = 0; i < all.length; i++) for (let k = i + 1; k < Math.min(all.length, i + 200); k++) {
            const a = boxes[i]; const b = boxes[k];
            const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left); const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
            if (wide <= 2 || high <= 2 || all[i].contains(all[k]) || all[k].contains(all[i]) || stays(all[i]) !== stays(all[k])) continue;
            if (!all[i].closest('.open-weight') && !all[k].closest('.open-weight')) wrong.push(`over each other by ${Math.round(wide)} × ${Math.round(high)}: ${all[i].outerHTML.slice(0, 60)} and ${all[k].outerHTML.slice(0, 60)}`);
          }
          for (const e of document.querySelectorAll('h1, h2, h3, button, label, th, td, p, summary, dt, dd, li')) {
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
