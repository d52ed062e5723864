using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using Coulisse.Store;
using Microsoft.Extensions.DependencyInjection;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace Coulisse.Web.Tests;

/// <summary>What a running bench tells whoever watches it: to an address that was named, and to nobody otherwise.</summary>
public sealed class WatchingTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-watch-").FullName;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task Traces_and_figures_go_where_the_endpoint_says_and_without_a_links_secret()
    {
        using HttpListener gathers = new();
        string endpoint = $"http://127.0.0.1:{Free()}";
        gathers.Prefixes.Add(endpoint + "/");
        gathers.Start();
        ConcurrentDictionary<string, ConcurrentBag<byte[]>> sent = new();
        Task gathering = GatherAsync(gathers, sent);
        string port = Free();
        ProcessStartInfo info = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "Coulisse.Web.dll"), port, _folder]) { UseShellExecute = false };
        info.Environment["OTEL_EXPORTER_OTLP_ENDPOINT"] = endpoint;
        info.Environment["OTEL_EXPORTER_OTLP_PROTOCOL"] = "http/protobuf";
        info.Environment["OTEL_BSP_SCHEDULE_DELAY"] = "200";
        info.Environment["OTEL_METRIC_EXPORT_INTERVAL"] = "500";
        using Process process = Process.Start(info)!;
        try
        {
            using HttpClient client = new() { BaseAddress = new Uri("http://127.0.0.1:" + port) };
            await ReadyAsync(client, process);
            (await client.GetAsync("/cards?q=leek", Cancel)).EnsureSuccessStatusCode();
            await client.GetAsync("/api/live/nowhere?t=only-the-tablet-knows-this", Cancel);
            await client.GetAsync("/nothing/only-the-tablet-knows-this", Cancel);
            string[] All(string path) => [.. sent.GetValueOrDefault(path, []).Select(Encoding.Latin1.GetString)];
            for (int i = 0; i < 300 && !(All("/v1/traces").Length > 0 && All("/v1/metrics").Any(m => m.Contains("http.server.request.duration", StringComparison.Ordinal))); i++)
            {
                await Task.Delay(100, Cancel);
            }

            for (int i = 0; i < 100 && !All("/v1/traces").Any(t => t.Contains("/api/live/{run}", StringComparison.Ordinal)); i++)
            {
                await Task.Delay(100, Cancel);
            }

            string traces = string.Concat(All("/v1/traces"));
            Assert.Contains("http.route", traces, StringComparison.Ordinal);
            Assert.Contains("GET /api/live/{run}", traces, StringComparison.Ordinal);
            Assert.Contains("coulisse", traces, StringComparison.Ordinal);
            Assert.DoesNotContain("only-the-tablet-knows-this", traces + string.Concat(All("/v1/metrics")), StringComparison.Ordinal);
            Assert.Contains("http.server.request.duration", string.Concat(All("/v1/metrics")), StringComparison.Ordinal);
        }
        finally
        {
            process.Kill(true);
            await process.WaitForExitAsync(Cancel);
            gathers.Stop();
            await gathering;
        }
    }

    [Fact]
    public async Task A_trace_names_the_pattern_of_its_address_how_it_was_asked_for_and_what_came_of_it()
    {
        ConcurrentBag<Activity> ended = [];
        using ActivityListener listener = new()
        {
            ShouldListenTo = s => s.Name == "Microsoft.AspNetCore",
            Sample = (ref ActivityCreationOptions<ActivityContext> _) => ActivitySamplingResult.AllDataAndRecorded,
            ActivityStopped = ended.Add,
        };
        ActivitySource.AddActivityListener(listener);
        await using BenchServer bench = await BenchServer.StartAsync();
        async Task<Activity> TraceAsync(string address)
        {
            using HttpRequestMessage request = new(HttpMethod.Get, address);
            string trace = ActivityTraceId.CreateRandom().ToHexString();
            request.Headers.Add("traceparent", $"00-{trace}-00f067aa0ba902b7-01");
            await bench.Client.SendAsync(request, Cancel);
            for (int i = 0; i < 100 && !ended.Any(a => a.TraceId.ToHexString() == trace); i++)
            {
                await Task.Delay(20, Cancel);
            }

            return ended.Single(a => a.TraceId.ToHexString() == trace);
        }

        Activity found = await TraceAsync("/api/live/no-such-run");
        Assert.Equal(("/api/live/{run}", "GET", 404, "GET /api/live/{run}"), (found.GetTagItem("http.route"), found.GetTagItem("http.request.method"), found.GetTagItem("http.response.status_code"), found.DisplayName));
        Activity cards = await TraceAsync("/cards?q=leek");
        Assert.Equal(("/cards", 200), (cards.GetTagItem("http.route"), cards.GetTagItem("http.response.status_code")));

        // What no route takes has none, and its address, which anybody may have typed, is told to nobody.
        Activity lost = await TraceAsync("/nothing/only-the-tablet-knows-this");
        Assert.Null(lost.GetTagItem("http.route"));
        Assert.Equal(("GET", 404), (lost.DisplayName, lost.GetTagItem("http.response.status_code")));
        Assert.DoesNotContain(lost.TagObjects, t => t.Value is string s && s.Contains("only-the-tablet", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Nothing_is_gathered_for_anybody_when_no_endpoint_is_named()
    {
        Assert.SkipWhen(Environment.GetEnvironmentVariable("OTEL_EXPORTER_OTLP_ENDPOINT") is not null, "Somebody gathers from this test run itself.");
        await using BenchServer bench = await BenchServer.StartAsync();
        Assert.Null(bench.Services.GetService<TracerProvider>());
        Assert.Null(bench.Services.GetService<MeterProvider>());
    }

    [Fact]
    public async Task A_store_that_does_not_answer_makes_it_not_ready_while_it_still_lives()
    {
        await using BenchServer bench = await BenchServer.StartAsync(folder: _folder);
        await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "t", "text", "w", "", Cancel);
        await ExecuteAsync("DROP TABLE setting");
        HttpResponseMessage ready = await bench.Client.GetAsync("/readyz", Cancel);
        Assert.Equal((HttpStatusCode.ServiceUnavailable, "the store does not answer"), (ready.StatusCode, await ready.Content.ReadAsStringAsync(Cancel)));
        Assert.Equal("ok", await bench.Client.GetStringAsync("/healthz", Cancel));
    }

    private async Task ExecuteAsync(string sql)
    {
        await using Microsoft.Data.Sqlite.SqliteConnection connection = new($"Data Source={Path.Combine(_folder, "coulisse.db")};Pooling=False");
        await connection.OpenAsync(Cancel);
        await using Microsoft.Data.Sqlite.SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // a constant of this class
        command.CommandText = sql;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync(Cancel);
    }

    private static async Task GatherAsync(HttpListener listener, ConcurrentDictionary<string, ConcurrentBag<byte[]>> sent)
    {
        while (true)
        {
            HttpListenerContext context;
            try
            {
                context = await listener.GetContextAsync();
            }
            catch (Exception e) when (e is HttpListenerException or ObjectDisposedException)
            {
                return; // stopped
            }

            using MemoryStream body = new();
            await context.Request.InputStream.CopyToAsync(body);
            sent.GetOrAdd(context.Request.Url!.AbsolutePath, _ => []).Add(body.ToArray());
            context.Response.Close();
        }
    }

    private static string Free()
    {
        using TcpListener free = new(IPAddress.Loopback, 0);
        free.Start();
        return ((IPEndPoint)free.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);
    }

    private static async Task ReadyAsync(HttpClient client, Process process)
    {
        for (int i = 0; i < 300; i++)
        {
            Assert.False(process.HasExited, "the web process ended by itself");
            try
            {
                if ((await client.GetAsync("/readyz", Cancel)).IsSuccessStatusCode)
                {
                    return;
                }
            }
            catch (HttpRequestException)
            {
                // not listening yet
            }

            await Task.Delay(100, Cancel);
        }

        throw new TimeoutException("the web process did not start in 30 s");
    }
}
