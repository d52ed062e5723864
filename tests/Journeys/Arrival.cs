using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>
/// The page a press leads to, once it has come and is whole.
/// The library's own waits for an address and for a load look first and listen after, on another thread than the one that brings the events, so an event between the two is lost and the wait runs out
/// (microsoft/playwright-dotnet, issues 3364 and 3365). Here the browser itself is asked.
/// </summary>
internal static class Arrival
{
    /// <summary>Waits until the page stands at an address this expression is found in and is loaded.</summary>
    /// <exception cref="PlaywrightException">It does not come within the time; the message says where the page stands.</exception>
    public static async Task ArriveAsync(this IPage page, [StringSyntax(StringSyntaxAttribute.Regex)] string address, int milliseconds = 60_000)
    {
        await Assertions.Expect(page).ToHaveURLAsync(new Regex(address), new() { Timeout = milliseconds });
        await page.LoadedAsync();
    }

    /// <summary>Waits until the page that stands now is loaded.</summary>
    public static Task LoadedAsync(this IPage page) => page.EvaluateAsync("() => document.readyState === 'complete' || new Promise(r => addEventListener('load', () => r(true)))");
}
