using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Tests;
using Coulisse.Web;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>A bench on a free port with an empty store and pages of a real browser; every test opens its own bench and its own contexts.</summary>
internal sealed class Bench : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly string _folder;
    private readonly OpenBrowser _open;
    private readonly bool _own;
    private readonly ConcurrentBag<IBrowserContext> _contexts = [];

    private Bench(WebApplication app, string folder, OpenBrowser open, bool own)
    {
        _app = app;
        _folder = folder;
        _open = open;
        _own = own;
        Address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First().Replace("[::]", "127.0.0.1", StringComparison.Ordinal);
    }

    /// <summary>Address by number.</summary>
    public string Address { get; }

    /// <summary>The same bench by a name that is no loopback name, so that the browser treats it as an insecure origin like a kitchen's own network.</summary>
    public string Named => Address.Replace("127.0.0.1", "kitchen.test", StringComparison.Ordinal);

    /// <summary>What any page asked of another origin, or was refused by the policy.</summary>
    public List<string> Foul { get; } = [];

    public static async Task<Bench> OpenAsync(WebBenchOptions? options = null)
    {
        string chromium = Environment.GetEnvironmentVariable("COULISSE_CHROMIUM") ?? (LongRun.On ? null : OnPath("chromium-headless-shell")) ?? OnPath("chromium") ?? OnPath("chromium-headless-shell") ?? "";
        Assert.SkipWhen(chromium.Length == 0, "No chromium on the path; install it to run the browser journeys.");
        string folder = Directory.CreateTempSubdirectory("coulisse-journey-").FullName;
        WebApplication app = await WebBench.BuildAsync((options ?? new WebBenchOptions()) with { Port = 0, Store = folder, Names = ["kitchen.test"] });
        await app.StartAsync();
        // one browser for all, each bench with contexts of its own; trust in a key is given when a browser starts, so that takes another
        bool own = options?.Certificate is not null;
        return new Bench(app, folder, own ? await OpenBrowser.StartAsync(chromium, Trusting(options?.Certificate)) : await OpenBrowser.SharedAsync(chromium), own);
    }

    public async Task<IPage> PageAsync(int width = 1440, int height = 1000, ColorScheme colours = ColorScheme.Light, bool touch = false, float fine = 1)
    {
        IBrowserContext context = await _open.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = colours, HasTouch = touch, DeviceScaleFactor = fine, AcceptDownloads = true });
        context.SetDefaultTimeout(60_000);
        _contexts.Add(context);
        IPage page = await context.NewPageAsync();
        page.Request += (_, r) =>
        {
            if (!r.Url.StartsWith(Address, StringComparison.Ordinal) && !r.Url.StartsWith(Named, StringComparison.Ordinal) && !r.Url.StartsWith("data:", StringComparison.Ordinal) && !r.Url.StartsWith("blob:", StringComparison.Ordinal))
            {
                Foul.Add("asked of elsewhere: " + r.Url);
            }
        };
        page.Console += (_, m) =>
        {
            if (m.Type == "error")
            {
                Foul.Add("console: " + m.Text);
            }
        };
        page.PageError += (_, e) => Foul.Add("script: " + e);
        return page;
    }

    /// <summary>Address by which the first owner comes in, on a bench that is open to a network.</summary>
    public Task<string?> OwnerLinkAsync() => WebBench.OwnerLinkAsync(_app);

    public IServiceProvider Services => _app.Services;

    public KitchenStore Store => _app.Services.GetRequiredService<KitchenStore>();

    /// <summary>Keeps a plan under an occasion of its own.</summary>
    public async Task<string> KeepAsync(Plan plan)
    {
        SaveOutcome.Saved saved = Assert.IsType<SaveOutcome.Saved>(await Store.SaveAsync(DocumentKind.Occasion, null, 0, plan.Title, plan.Title, "test", ""));
        return await Store.KeepPlanAsync(saved.Id, saved.Version, TravelJson.Write(plan), "");
    }

    /// <summary>Keeps a picture when a folder is named, for people to look at.</summary>
    public static async Task PictureAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("COULISSE_PICTURES") is { Length: > 0 } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png"), FullPage = true });
        }
    }

    public async ValueTask DisposeAsync()
    {
        foreach (IBrowserContext context in _contexts)
        {
            await context.CloseAsync();
        }

        if (_own)
        {
            await _open.DisposeAsync();
        }

        await _app.StopAsync();
        await _app.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>As a tablet that trusts the kitchen's root: this one key is accepted, no other.</summary>
    private static string[] Trusting(X509Certificate2? certificate) => certificate is null ? [] : ["--ignore-certificate-errors-spki-list=" + Convert.ToBase64String(SHA256.HashData(certificate.PublicKey.ExportSubjectPublicKeyInfo()))];

    private static string? OnPath(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(p => Path.Combine(p, program)).FirstOrDefault(File.Exists);
}
