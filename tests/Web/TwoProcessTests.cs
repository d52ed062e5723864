using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Text.Json;
using Coulisse.Formats.Travel;
using Coulisse.Store;
using Coulisse.Tests;

namespace Coulisse.Web.Tests;

/// <summary>Two web processes on one PostgreSQL: a tick at one is on the screens of the other at once, and either may be killed.</summary>
public sealed class TwoProcessTests(PostgresServer server) : IClassFixture<PostgresServer>, IDisposable
{
    private readonly List<Process> _started = [];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        foreach (Process process in _started)
        {
            if (!process.HasExited)
            {
                process.Kill(true);
                process.WaitForExit();
            }

            process.Dispose();
        }
    }

    [Fact]
    public async Task A_tick_at_one_is_on_the_screen_of_the_other_before_its_next_beat()
    {
        (string database, string run, _) = await RunAsync();
        (HttpClient one, _) = await StartAsync(database);
        (HttpClient two, _) = await StartAsync(database);
        using HttpResponseMessage stream = await two.GetAsync($"/api/live/{run}/stream", HttpCompletionOption.ResponseHeadersRead, Cancel);
        using StreamReader reader = new(await stream.Content.ReadAsStreamAsync(Cancel));
        await FrameAsync(reader);
        // the listener of a process that has just started may need a moment; a tick every 300 ms shows the first that is heard
        long sent = Stopwatch.GetTimestamp();
        Task<JsonElement> next = FrameAsync(reader);
        for (int i = 0; i < 8 && !next.IsCompleted; i++)
        {
            await PostAsync(one, run, $"tick-{i:00000000}");
            await Task.WhenAny(next, Task.Delay(300, Cancel));
        }

        JsonElement frame = await next;
        Assert.NotEmpty(frame.GetProperty("notes").EnumerateArray());
        Assert.InRange(Stopwatch.GetElapsedTime(sent).TotalSeconds, 0, 4.8); // heard by the store's call, not at the next beat of five seconds
    }

    [Fact]
    public async Task Killed_and_restarted_in_turn_they_lose_no_report_that_was_acknowledged()
    {
        (string database, string run, KitchenStore store) = await RunAsync();
        await using (store)
        {
            (HttpClient Client, Process Process)[] both = [await StartAsync(database), await StartAsync(database)];
            ConcurrentBag<string> acknowledged = [];
            using CancellationTokenSource stop = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
            // Each device keeps a report until somebody has taken it, as the page does, and asks the other process when one does not answer.
            Task[] devices = [.. Enumerable.Range(0, 4).Select(device => Task.Run(async () =>
            {
                for (int i = 0; !stop.IsCancellationRequested; i++)
                {
                    string id = string.Create(CultureInfo.InvariantCulture, $"device-{device}-{i:000000}");
                    for (int attempt = device; !stop.IsCancellationRequested; attempt++)
                    {
                        try
                        {
                            await PostAsync(both[attempt % 2].Client, run, id);
                            acknowledged.Add(id);
                            break;
                        }
                        catch (HttpRequestException)
                        {
                            await Task.Delay(20, Cancel);
                        }
                    }
                }
            }, Cancel))];
            int rounds = LongRun.On ? 20 : 4;
            for (int round = 0; round < rounds; round++)
            {
                await Task.Delay(400, Cancel);
                both[round % 2].Process.Kill();
                await both[round % 2].Process.WaitForExitAsync(Cancel);
                await Task.Delay(200, Cancel);
                both[round % 2] = await StartAsync(database);
            }

            await stop.CancelAsync();
            await Task.WhenAll(devices);
            Assert.True(acknowledged.Count > 20, $"only {acknowledged.Count} reports got through");
            HashSet<string> kept = [.. (await store.LogAsync(run, Cancel)).Events.Select(e => e.Id)];
            Assert.Empty(acknowledged.Except(kept));
            // and both show the same
            JsonElement[] states = await Task.WhenAll(both.Select(b => b.Client.GetFromJsonAsync<JsonElement>("/api/live/" + run, Cancel)));
            string[] notes = [.. states.Select(f => f.GetProperty("frame").GetProperty("notes").GetRawText())];
            Assert.Contains("device-", notes[0]);
            Assert.Equal(notes[0], notes[1]);
        }
    }

    private async Task<(string Database, string Run, KitchenStore Store)> RunAsync()
    {
        string database = server.Fresh();
        KitchenStore store = await KitchenStore.OpenAsync(database, TimeProvider.System, cancel: Cancel);
        string occasion = Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Occasion, null, 0, "o", "sheet", "w", "", Cancel)).Id;
        return (database, await store.StartRunAsync(await store.KeepPlanAsync(occasion, 1, TravelJson.Write(HandPlan.Tart), "", Cancel), TimeProvider.System.GetUtcNow(), true, Cancel), store);
    }

    private static async Task PostAsync(HttpClient client, string run, string id)
    {
        using HttpResponseMessage answer = await client.PostAsJsonAsync("/api/live/" + run, new[] { new { id, kind = "note", subject = "slot", text = id, agoMs = 0 } }, Cancel);
        answer.EnsureSuccessStatusCode();
    }

    private static async Task<JsonElement> FrameAsync(StreamReader reader)
    {
        while (await reader.ReadLineAsync(Cancel) is { } line)
        {
            if (line.StartsWith("data:", StringComparison.Ordinal))
            {
                return JsonDocument.Parse(line["data:".Length..]).RootElement;
            }
        }

        throw new EndOfStreamException();
    }

    private async Task<(HttpClient, Process)> StartAsync(string database)
    {
        int port;
        using (TcpListener free = new(IPAddress.Loopback, 0))
        {
            free.Start();
            port = ((IPEndPoint)free.LocalEndpoint).Port;
        }

        Process process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Coulisse.Web.dll"), port.ToString(CultureInfo.InvariantCulture), database]) { UseShellExecute = false })!;
        _started.Add(process);
        HttpClient client = new() { BaseAddress = new Uri($"http://127.0.0.1:{port.ToString(CultureInfo.InvariantCulture)}"), Timeout = TimeSpan.FromSeconds(20) };
        for (int i = 0; i < 300; i++)
        {
            Assert.False(process.HasExited, "a web process ended by itself");
            try
            {
                if ((await client.GetAsync("/readyz", Cancel)).IsSuccessStatusCode)
                {
                    return (client, process);
                }
            }
            catch (HttpRequestException)
            {
                // not listening yet
            }

            await Task.Delay(100, Cancel);
        }

        throw new TimeoutException("a web process did not start in 30 s");
    }
}
