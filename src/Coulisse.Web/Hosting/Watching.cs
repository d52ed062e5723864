using Coulisse.Store;
using Microsoft.AspNetCore.Http.Features;
using OpenTelemetry;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace Coulisse.Web.Hosting;

/// <summary>How a running bench is watched: health, logs, and traces and figures where somebody gathers them.</summary>
internal static class Watching
{
    /// <summary>The name the OpenTelemetry specification gives the address of whoever gathers.</summary>
    private const string Endpoint = "OTEL_EXPORTER_OTLP_ENDPOINT";

    public static void AddWatching(this WebApplicationBuilder builder, WebBenchOptions options)
    {
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        if (options.JsonLog)
        {
            builder.Logging.ClearProviders();
            builder.Logging.AddJsonConsole(o => (o.UseUtcTimestamp, o.TimestampFormat) = (true, "yyyy-MM-ddTHH:mm:ss.fffZ"));
        }

        // Nothing is sent anywhere unless the kitchen says where.
        if (string.IsNullOrWhiteSpace(builder.Configuration[Endpoint]))
        {
            return;
        }

        // Addresses of requests stay out of traces where they carry a link's secret: only the pattern of the route is told.
        builder.Services.AddOpenTelemetry()
            .ConfigureResource(r => r.AddService("coulisse", serviceInstanceId: Environment.MachineName))
            .WithTracing(t => t.AddSource("Microsoft.AspNetCore").AddSource("Npgsql").AddProcessor(new NoSecrets()).AddOtlpExporter())
            .WithMetrics(m => m.AddMeter("Microsoft.AspNetCore.Hosting").AddMeter("Microsoft.AspNetCore.Server.Kestrel").AddMeter("Npgsql").AddMeter("System.Runtime").AddOtlpExporter());
    }

    /// <summary>Tells a trace which pattern of address was asked for, how, and what came of it. The server names neither by itself, so that every trace would read alike.</summary>
    public static void UseRoutesInTraces(this WebApplication app) => app.Use(async (context, next) =>
    {
        // Known before anything else runs; an error page has another.
        string? route = (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText;
        try
        {
            await next(context);
        }
        finally
        {
            if (context.Features.Get<IHttpActivityFeature>()?.Activity is { IsAllDataRequested: true } trace)
            {
                trace.SetTag("http.request.method", context.Request.Method);
                trace.SetTag("http.response.status_code", context.Response.StatusCode);
                trace.SetTag("http.route", route);
                trace.DisplayName = route is null ? context.Request.Method : $"{context.Request.Method} {route}";
            }
        }
    });

    public static void MapHealth(this WebApplication app)
    {
        app.MapGet("/healthz", () => "ok");
        app.MapGet("/readyz", ReadyAsync);
    }

    /// <summary>Ready when the store answers.</summary>
    private static async Task<IResult> ReadyAsync(KitchenStore store, CancellationToken cancel)
    {
        try
        {
            await store.SettingAsync("ready", cancel);
            return Results.Text("ready");
        }
        catch (StoreException)
        {
            return Results.Text("the store does not answer", statusCode: StatusCodes.Status503ServiceUnavailable);
        }
    }

    /// <summary>Takes addresses and queries out of traces: a link's token stands in them, and the pattern says enough.</summary>
    private sealed class NoSecrets : BaseProcessor<System.Diagnostics.Activity>
    {
        public override void OnEnd(System.Diagnostics.Activity data)
        {
            data.SetTag("url.query", null);
            data.SetTag("url.path", null);
            data.SetTag("http.target", null);
            data.SetTag("http.url", null);
        }
    }
}
