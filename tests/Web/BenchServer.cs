using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;

namespace Coulisse.Web.Tests;

/// <summary>A bench on a free port with an empty store, gone when the test is.</summary>
internal sealed class BenchServer : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly string? _folder;

    private BenchServer(WebApplication app, string? folder)
    {
        _app = app;
        _folder = folder;
        Address = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First().Replace("[::]", "127.0.0.1", StringComparison.Ordinal));
        Client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = Address };
    }

    public Uri Address { get; }

    public HttpClient Client { get; }

    public static async Task<BenchServer> StartAsync(TimeProvider? clock = null, WebBenchOptions? options = null, string? folder = null)
    {
        bool own = folder is null;
        folder ??= Directory.CreateTempSubdirectory("coulisse-test-").FullName;
        WebApplication app = await WebBench.BuildAsync((options ?? new WebBenchOptions()) with { Port = 0, Store = folder, Clock = clock ?? TimeProvider.System });
        await app.StartAsync();
        return new BenchServer(app, own ? folder : null);
    }

    public Task<string?> OwnerLinkAsync() => WebBench.OwnerLinkAsync(_app);

    public IServiceProvider Services => _app.Services;

    public KitchenStore Store => _app.Services.GetRequiredService<KitchenStore>();

    /// <summary>Keeps a plan under an occasion of its own.</summary>
    public async Task<string> KeepAsync(Plan plan)
    {
        SaveOutcome.Saved saved = Assert.IsType<SaveOutcome.Saved>(await Store.SaveAsync(DocumentKind.Occasion, null, 0, plan.Title, plan.Title, "test", ""));
        return await Store.KeepPlanAsync(saved.Id, saved.Version, TravelJson.Write(plan), "");
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _app.StopAsync();
        await _app.DisposeAsync();
        if (_folder is not null)
        {
            Directory.Delete(_folder, recursive: true);
        }
    }
}
