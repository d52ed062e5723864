using Coulisse.Store;
using Coulisse.Web.Desk;
using Coulisse.Web.Hosting;
using Coulisse.Web.House;
using Coulisse.Web.Live;
using Coulisse.Web.People;
using Coulisse.Web.Plans;
using Coulisse.Web.Records;
using Coulisse.Web.Sheets;
using Coulisse.Web.Versions;
using Coulisse.Web.Workings;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Coulisse.Web;

/// <summary>Puts the bench together; the caller runs it.</summary>
public static class WebBench
{
    private const int MostBody = 20 * 1024 * 1024;

    /// <summary>Opens the store and builds the server; it listens once it is run.</summary>
    /// <exception cref="StoreException">The store cannot be opened.</exception>
    public static async Task<WebApplication> BuildAsync(WebBenchOptions options, CancellationToken cancel = default)
    {
        KitchenStore store = await KitchenStore.OpenAsync(options.Store, options.Clock, options.Kitchen, cancel);
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.AddWatching(options);
        // the keys lie in the store, as sessions and password hashes do: who has the store has them all (docs/keeping.md)
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        if (options.Secure)
        {
            builder.WebHost.UseKestrelHttpsConfiguration();
        }

        builder.WebHost.ConfigureKestrel(k =>
        {
            k.AddServerHeader = false;
            k.Limits.MaxRequestBodySize = MostBody;
            void Listen(ListenOptions listen)
            {
                if (options.Certificate is { } certificate)
                {
                    listen.UseHttps(certificate);
                }
            }

            if (options.Network)
            {
                k.ListenAnyIP(options.Port, Listen);
            }
            else
            {
                k.Listen(System.Net.IPAddress.Loopback, options.Port, Listen);
            }
        });
        // a card of 5 MB must be kept whole: as a field of a form it may be three bytes a letter, and the framework's own limit is 4 MB
        builder.Services.Configure<Microsoft.AspNetCore.Http.Features.FormOptions>(f => f.ValueLengthLimit = MostBody);
        builder.Services.AddSingleton(options);
        // made by a factory so that the container closes it with the server
        builder.Services.AddSingleton(_ => store);
        builder.Services.AddSingleton(options.Clock);
        builder.Services.AddSingleton<OccasionShelf>();
        builder.Services.AddSingleton<KitchenBook>();
        builder.Services.AddSingleton<ShowMarks>();
        builder.Services.AddSingleton<PriceShelf>();
        builder.Services.AddSingleton<KeptPlans>();
        builder.Services.AddSingleton<SheetWall>();
        builder.Services.AddSingleton<StepWords>();
        builder.Services.AddSingleton<PaperBundles>();
        builder.Services.AddSingleton<PlanDesk>();
        builder.Services.AddSingleton<WhatIfDesk>();
        builder.Services.AddSingleton<LiveDesk>();
        builder.Services.AddSingleton<WayFinder>();
        builder.Services.AddHostedService<LiveEar>();
        builder.Services.AddSingleton<RoleLinks>();
        builder.Services.AddPeople(options);
        builder.Services.AddRazorComponents();
        builder.Services.AddTroublePages();
        builder.Services.AddProblemDetails();
        builder.Services.AddExceptionHandler<StoreTrouble>();
        if (options.BackupTo is not null)
        {
            builder.Services.AddHostedService<BackupClock>();
        }

        if (options.Warm)
        {
            builder.Services.AddSingleton<Warming>();
            builder.Services.AddHostedService(s => s.GetRequiredService<Warming>());
        }

        WebApplication app = builder.Build();
        if (options.Warm)
        {
            Warming warming = app.Services.GetRequiredService<Warming>();
            app.Use(async (context, next) =>
            {
                await next(context);
                warming.Answered();
            });
        }

        app.UseRoutesInTraces();
        app.UseExceptionHandler();
        app.UseGuards(options.Secure);
        app.UseTroublePages();
        app.UseRateLimiter();
        app.UseDoors(options);
        app.MapHealth();
        app.MapGet("/a/{print}/{**file}", (HttpContext context, string file) => EmbeddedFiles.Of.Serve(context, file));
        if (options.Root is { } root)
        {
            app.MapGet("/" + OwnCertificate.RootFile, () => Results.Bytes(System.Text.Encoding.ASCII.GetBytes(root), "application/x-x509-ca-cert", OwnCertificate.RootFile));
        }

        app.MapDesk();
        app.MapCardsOut();
        app.MapPlans();
        app.MapCorrections();
        app.MapOccasions();
        app.MapWhatIf();
        app.MapLive();
        app.MapPapers();
        app.MapTranslations();
        app.MapTrials();
        app.MapRecords();
        app.MapControlLog();
        app.MapKitchen();
        app.MapPrices();
        app.MapOrders();
        app.MapWorkings();
        app.MapTry();
        app.MapShapes();
        app.MapVersions();
        if (options.Network)
        {
            app.MapPeople();
            app.MapPasskeys();
            app.MapOwner();
        }

        return app;
    }

    /// <summary>Address by which the first owner comes in; null on this machine alone, or when the kitchen has an owner.</summary>
    public static async Task<string?> OwnerLinkAsync(WebApplication app, CancellationToken cancel = default)
        => app.Services.GetRequiredService<WebBenchOptions>().Network
            ? await OwnerEndpoints.FirstOwnerAsync(app.Services.GetRequiredService<KitchenStore>(), app.Services.GetRequiredService<SignedLinks>(), cancel)
            : null;

    /// <summary>Puts the example occasion on the shelf and begins to plan it, unless it has a plan.</summary>
    /// <returns>Address of the page to open.</returns>
    public static async Task<string> OpenExampleAsync(WebApplication app, CancellationToken cancel = default)
        => await app.Services.GetRequiredService<OccasionShelf>().KeepExampleAsync(cancel) is Cards.Parsed<KeptOccasion>.Ok(var kept)
            ? await app.Services.GetRequiredService<KitchenStore>().NewestPlanAsync(kept.Id, cancel) is { } plan ? "/plan/" + plan.Id : "/planning/" + app.Services.GetRequiredService<PlanDesk>().Begin(kept).Id
            : "/occasions";
}
