using Coulisse.Store;
using Coulisse.Web.Desk;
using Coulisse.Web.Hosting;
using Coulisse.Web.Live;
using Coulisse.Web.Plans;
using Coulisse.Web.Sheets;

namespace Coulisse.Web;

/// <summary>Puts the bench together; the caller runs it.</summary>
public static class WebBench
{
    /// <summary>Opens the store and builds the server; it listens once it is run.</summary>
    /// <exception cref="StoreException">The store cannot be opened.</exception>
    public static async Task<WebApplication> BuildAsync(WebBenchOptions options, CancellationToken cancel = default)
    {
        KitchenStore store = await KitchenStore.OpenAsync(options.Store, options.Clock, cancel: cancel);
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.WebHost.ConfigureKestrel(k =>
        {
            k.AddServerHeader = false;
            k.Limits.MaxRequestBodySize = 12 * 1024 * 1024;
            if (options.Network)
            {
                k.ListenAnyIP(options.Port);
            }
            else
            {
                k.Listen(System.Net.IPAddress.Loopback, options.Port);
            }
        });
        builder.Services.AddSingleton(options);
        // made by a factory so that the container closes it with the server
        builder.Services.AddSingleton(_ => store);
        builder.Services.AddSingleton(options.Clock);
        builder.Services.AddSingleton<OccasionShelf>();
        builder.Services.AddSingleton<KeptPlans>();
        builder.Services.AddSingleton<HungSheets>();
        builder.Services.AddSingleton<PlanDesk>();
        builder.Services.AddSingleton<LiveDesk>();
        builder.Services.AddSingleton<RoleLinks>();
        builder.Services.AddRazorComponents();
        builder.Services.AddProblemDetails();
        WebApplication app = builder.Build();
        app.UseExceptionHandler();
        app.UseGuards();
        app.MapGet("/healthz", () => "ok");
        app.MapGet("/a/{print}/{**file}", (HttpContext context, string file) => EmbeddedFiles.Of.Serve(context, file));
        app.MapDesk();
        app.MapPlans();
        app.MapLive();
        app.MapPapers();
        return app;
    }

    /// <summary>Puts the example occasion on the shelf and begins to plan it, unless it has a plan.</summary>
    /// <returns>Address of the page to open.</returns>
    public static async Task<string> OpenExampleAsync(WebApplication app, CancellationToken cancel = default)
        => await app.Services.GetRequiredService<OccasionShelf>().KeepExampleAsync(cancel) is Cards.Parsed<KeptOccasion>.Ok(var kept)
            ? await app.Services.GetRequiredService<KitchenStore>().NewestPlanAsync(kept.Id, cancel) is { } plan ? "/plan/" + plan.Id : "/planning/" + app.Services.GetRequiredService<PlanDesk>().Begin(kept).Id
            : "/occasions";
}
