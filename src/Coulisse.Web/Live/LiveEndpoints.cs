using System.Globalization;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Text;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Views.Papers;
using Coulisse.Views.Web;
using Coulisse.Web.Hosting;
using Coulisse.Web.Pages;
using Coulisse.Web.People;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using NodaTime;
using QRCoder;

namespace Coulisse.Web.Live;

/// <summary>The live page, its stream and its reports.</summary>
internal static class LiveEndpoints
{
    private const int MostText = 400;

    public static void MapLive(this WebApplication app)
    {
        app.MapPost("/plan/{id}/live", BeginAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapGet("/live/worker.js", Worker);
        app.MapGet("/live/{run}", PageAsync);
        app.MapGet("/live/{run}/manifest", ManifestAsync);
        app.MapGet("/live/{run}/links", LinksAsync);
        app.MapPost("/live/{run}/links/end", EndLinkAsync).DisableAntiforgery();
        app.MapGet("/api/live/{run}", StateAsync);
        app.MapGet("/api/live/{run}/stream", StreamAsync);
        app.MapGet("/api/live/{run}/changes", ChangesAsync);
        app.MapPost("/api/live/{run}", TakeAsync);
        app.MapWaysOut();
        app.MapRehearsals();
    }

    private static async Task<IResult> BeginAsync(string id, [FromForm] string? how, KitchenStore store, TimeProvider clock, CancellationToken cancel)
    {
        if (await store.PlanAsync(id, cancel) is not { } kept)
        {
            return Results.NotFound();
        }

        Plan plan = Formats.Travel.TravelJson.Read<Plan>(kept.Json);
        DateTimeOffset start = how == "planned"
            ? new DateTimeOffset(plan.SlotStart.ToDateTimeUnspecified(), clock.LocalTimeZone.GetUtcOffset(plan.SlotStart.ToDateTimeUnspecified()))
            : clock.GetUtcNow().AddSeconds(10);
        return Results.Redirect("/live/" + await store.StartRunAsync(id, start, how == "rehearse", cancel));
    }

    /// <summary>Whose page it is: the chef's own, a signed-in person's, or a person's by a link; null for nobody we know.</summary>
    public static async Task<string?> RoleAsync(HttpContext context, string run, RoleLinks links, CancellationToken cancel)
        => context.Request.Query["t"].ToString() is { Length: > 0 } token
            ? await links.RoleAsync(run, token, cancel)
            : context.IsChef() ? "" : context.User.Identity is { IsAuthenticated: true, Name: { } name } ? name : null;

    /// <summary>The worker that keeps a page for a reload without network. It lies under /live so that it may keep only these pages.</summary>
    private static IResult Worker(HttpContext context)
    {
        IResult file = EmbeddedFiles.Of.Serve(context, "js/live-worker.js");
        context.Response.Headers.CacheControl = "no-cache";
        return file;
    }

    public static IResult Shut() => Results.Problem("This link has run out or belongs to another run. Ask the chef for a new one.", statusCode: StatusCodes.Status403Forbidden);

    private static async Task<IResult> PageAsync(HttpContext context, string run, LiveDesk desk, RoleLinks links, CancellationToken cancel)
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        return await RoleAsync(context, run, links, cancel) is { } role
            ? new RazorComponentResult<LivePage>(new { View = new LivePageView(run, role, context.Request.Query["t"].ToString(), open.Kept.Rehearsal, PlanView.From(open.Plan, [], CultureInfo.GetCultureInfo("en-GB"))) { Language = BriefPhrases.For(open.Occasion.People.FirstOrDefault(p => p.Name == role)?.Languages.FirstOrDefault() ?? "en").Language } })
            : Shut();
    }

    /// <summary>Web application manifest (W3C): a tablet puts this person's page on its first screen, where the page is secure.</summary>
    private static async Task<IResult> ManifestAsync(HttpContext context, string run, LiveDesk desk, RoleLinks links, CancellationToken cancel)
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        if (await RoleAsync(context, run, links, cancel) is not { } role)
        {
            return Shut();
        }

        context.Response.Headers.CacheControl = "no-store";
        return Results.Json(new
        {
            name = (role.Length > 0 ? role + ", " : "") + open.Plan.Title,
            short_name = role.Length > 0 ? role : "Live",
            start_url = "/live/" + run + context.Request.QueryString,
            scope = "/live/",
            display = "standalone",
            background_color = "#0c0d0e",
            theme_color = "#0c0d0e",
            icons = new[] { new { src = EmbeddedFiles.Of.At("mark.svg"), sizes = "any", type = "image/svg+xml" } },
        }, contentType: "application/manifest+json");
    }

    private static async Task<IResult> StateAsync(HttpContext context, string run, LiveDesk desk, RoleLinks links, CancellationToken cancel)
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        if (await RoleAsync(context, run, links, cancel) is null)
        {
            return Shut();
        }

        LiveFrame frame = await desk.FrameAsync(open, cancel);
        open = await desk.OpenAsync(run, cancel) ?? open; // the frame may have found a newer plan
        return Results.Ok(new
        {
            frame,
            people = open.Occasion.People.Select(p => p.Name),
            kit = open.Occasion.Kit.Where(k => k.Code.Length > 0).Select(k => new { code = k.Code, what = k.What }),
            plan = PlanView.From(open.Plan, [], CultureInfo.GetCultureInfo("en-GB")) with { Threads = [], Rows = [], Stretches = [] },
        });
    }

    /// <summary>A change note for one page: only what changed since the copy it, or its reader, has.</summary>
    private static async Task<IResult> ChangesAsync(HttpContext context, string run, LiveDesk desk, RoleLinks links, CancellationToken cancel, string since = "")
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        return await RoleAsync(context, run, links, cancel) is { } role ? Results.Ok(await desk.SinceAsync(open, since, role, cancel)) : Shut();
    }

    private static async Task<IResult> StreamAsync(HttpContext context, string run, LiveDesk desk, RoleLinks links, IHostApplicationLifetime life, CancellationToken cancel)
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        if (await RoleAsync(context, run, links, cancel) is null)
        {
            return Shut();
        }

        CancellationTokenSource both = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, life.ApplicationStopping);
        context.Response.RegisterForDispose(both);
        return TypedResults.ServerSentEvents(desk.WatchAsync(open, both.Token));
    }

    private static async Task<IResult> TakeAsync(HttpContext context, string run, LiveReport[] reports, LiveDesk desk, RoleLinks links, TimeProvider clock, CancellationToken cancel)
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        if (await RoleAsync(context, run, links, cancel) is not { } role)
        {
            return Shut();
        }

        if (reports.Length > 500 || reports.Any(r => r.Id is not { Length: > 7 and < 65 } || r.Kind is not { Length: > 0 and < 20 } || r.Kind == LiveDesk.TakenUp || r.Subject is not { Length: < 200 } || r.Text is { Length: > MostText }))
        {
            return Results.Problem("A report has no id, no kind, or is too long; nothing was taken.", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        // How long ago, not when: a device's own clock may be minutes off, the time since its tick is not.
        Instant now = Instant.FromDateTimeOffset(clock.GetUtcNow());
        LiveEvent[] events = [.. reports.Select(r => new LiveEvent(r.Id, now - Duration.FromMilliseconds(Math.Clamp(r.AgoMs, 0, 86_400_000)), r.Kind, r.Subject, role.Length > 0 ? role : context.Name() is "bench" ? "chef" : context.Name(), r.Text ?? ""))];
        return Results.Ok(await desk.TakeAsync(open, events, cancel));
    }

    private static async Task<IResult> LinksAsync(HttpContext context, string run, LiveDesk desk, RoleLinks links, WebBenchOptions options, CancellationToken cancel)
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        if (await RoleAsync(context, run, links, cancel) is not "")
        {
            return Shut();
        }

        string host = context.Request.Host.Host is "localhost" or "127.0.0.1" or "[::1]" && options.Network && NetworkAddress() is { } address ? string.Create(CultureInfo.InvariantCulture, $"{address}:{context.Request.Host.Port}") : context.Request.Host.Value!;
        List<LiveLink> all = [];
        foreach (string name in open.Occasion.People.Select(p => p.Name).Append("Time-keeper").Append("Stage").Distinct(StringComparer.Ordinal))
        {
            string at = $"{context.Request.Scheme}://{host}/live/{run}?t={await links.MakeAsync(run, name, cancel)}";
            (int size, string path) = Square(at);
            all.Add(new LiveLink(name, at, size, path));
        }

        return new RazorComponentResult<LiveLinksPage>(new { View = new LiveLinksView(run, open.Plan.Title, options.Network, [.. all]) });
    }

    private static async Task<IResult> EndLinkAsync(HttpContext context, string run, [FromForm] string? who, RoleLinks links, KitchenStore store, CancellationToken cancel)
    {
        if (!context.IsChef())
        {
            return Shut();
        }

        await links.EndAsync(run, who ?? "", cancel);
        await store.AuditAsync(context.Name(), "took back a live link", who ?? "", cancel);
        return Results.Redirect("/live/" + Uri.EscapeDataString(run) + "/links");
    }

    private static string? NetworkAddress() => NetworkInterface.GetAllNetworkInterfaces()
        .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
        .SelectMany(n => n.GetIPProperties().UnicastAddresses).FirstOrDefault(a => a.Address.AddressFamily == AddressFamily.InterNetwork)?.Address.ToString();

    private static (int, string) Square(string text)
    {
        using QRCodeGenerator generator = new();
        using QRCodeData data = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        StringBuilder path = new();
        for (int y = 0; y < data.ModuleMatrix.Count; y++)
        {
            for (int x = 0; x < data.ModuleMatrix[y].Length; x++)
            {
                if (data.ModuleMatrix[y][x])
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
                }
            }
        }

        return (data.ModuleMatrix.Count, path.ToString());
    }

    internal sealed record LiveReport(string Id, string Kind, string Subject, string? Text, long AgoMs);
}
