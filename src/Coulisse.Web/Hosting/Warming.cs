using System.Text;
using System.Text.Json;

namespace Coulisse.Web.Hosting;

/// <summary>Walks the way of a card once, in the background, so that the first one a person opens does not wait for code that was never run: page, reader, weights, findings, as JSON. It reads the example and keeps nothing.</summary>
internal sealed class Warming(IServiceProvider services, IHostApplicationLifetime life, ILogger<Warming> log) : IHostedService
{
    // The first page goes before: only when it has been answered, or nobody asks for one, is there time for the next.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);
    private readonly TaskCompletionSource _answered = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Says that a page has been answered.</summary>
    public void Answered() => _answered.TrySetResult();

    public Task StartAsync(CancellationToken cancellationToken)
    {
        life.ApplicationStarted.Register(() => _ = SoonAsync(life.ApplicationStopping).ContinueWith(
            t => log.LogDebug(t.Exception, "Warming was given up; the first card takes longer."), CancellationToken.None, TaskContinuationOptions.OnlyOnFaulted, TaskScheduler.Default));
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    private async Task SoonAsync(CancellationToken cancel)
    {
        await Task.WhenAny(_answered.Task, Task.Delay(Longest, cancel));
        await WalkAsync(services, cancel);
    }

    /// <summary>Asks each endpoint of the way once, past the doors, with the answer going nowhere.</summary>
    /// <returns>Each step with the status it was answered with.</returns>
    public static async Task<List<(string Step, int Status)>> WalkAsync(IServiceProvider services, CancellationToken cancel)
    {
        List<(string, int)> done = [];
        string card = EmbeddedFiles.DemoFiles().Where(f => f.StartsWith("cards/", StringComparison.Ordinal)).Select(f => EmbeddedFiles.Demo(f)!).MaxBy(t => t.Length) ?? "";
        byte[] asked = Encoding.UTF8.GetBytes(JsonSerializer.Serialize(new { text = card, code = "au" }));
        foreach ((string method, string route, string query, byte[]? body) in new[] { ("GET", "/", "?example=yes", null), ("POST", "/api/margins", "", asked), ("GET", "/cards/{id}", "", null) })
        {
            if (cancel.IsCancellationRequested || services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().FirstOrDefault(e => e.RoutePattern.RawText == route && e.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods.Contains(method) == true) is not { RequestDelegate: { } answer } endpoint)
            {
                break;
            }

            await using AsyncServiceScope scope = services.CreateAsyncScope();
            DefaultHttpContext context = new() { RequestServices = scope.ServiceProvider, RequestAborted = cancel };
            (context.Request.Method, context.Request.Scheme, context.Request.Host, context.Request.QueryString) = (method, "http", new HostString("localhost"), new QueryString(query));
            context.Request.Path = route.Replace("{id}", "none", StringComparison.Ordinal);
            context.Request.RouteValues["id"] = "none";
            if (body is not null)
            {
                (context.Request.Body, context.Request.ContentType, context.Request.ContentLength) = (new MemoryStream(body), "application/json", body.Length);
                context.Features.Set<Microsoft.AspNetCore.Http.Features.IHttpRequestBodyDetectionFeature>(new HasBody());
            }

            context.SetEndpoint(endpoint);
            await answer(context);
            done.Add(($"{method} {route}", context.Response.StatusCode));
        }

        return done;
    }

    private sealed class HasBody : Microsoft.AspNetCore.Http.Features.IHttpRequestBodyDetectionFeature
    {
        public bool CanHaveBody => true;
    }
}
