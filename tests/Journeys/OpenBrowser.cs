using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>A real browser that runs. Starting one takes seconds, a context of its own milliseconds.</summary>
internal sealed class OpenBrowser : IAsyncDisposable
{
    private static readonly SemaphoreSlim Turn = new(1);
    private static OpenBrowser? _shared;

    private readonly IPlaywright _playwright;

    private OpenBrowser(IPlaywright playwright, IBrowser browser)
    {
        _playwright = playwright;
        Browser = browser;
    }

    /// <summary>The browser.</summary>
    public IBrowser Browser { get; }

    /// <summary>The browser that the journeys share; started again when it has gone.</summary>
    public static async Task<OpenBrowser> SharedAsync(string chromium)
    {
        await Turn.WaitAsync();
        try
        {
            return _shared is { Browser.IsConnected: true } runs ? runs : _shared = await StartAsync(chromium, []);
        }
        finally
        {
            Turn.Release();
        }
    }

    /// <summary>Starts a browser.</summary>
    /// <param name="chromium">Program.</param>
    /// <param name="more">Arguments beside the usual ones.</param>
    public static async Task<OpenBrowser> StartAsync(string chromium, string[] more)
    {
        IPlaywright playwright = await Playwright.CreateAsync();
        return new OpenBrowser(playwright, await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = chromium,
            Headless = true,
            Args = [.. more, "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--host-resolver-rules=MAP kitchen.test 127.0.0.1"],
        }));
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        _playwright.Dispose();
    }
}
