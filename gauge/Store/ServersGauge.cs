using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using NodaTime;

namespace Coulisse.Gauge.Store;

/// <summary>Fifty people reading cards and ticking a live run, through two web processes on one PostgreSQL.</summary>
internal static class ServersGauge
{
    private const int Users = 50;
    private const int Cards = 10_000;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(1000);

    public static async Task<int> RunAsync(string[] args)
    {
        if (args is not [var database, var web, ..])
        {
            Console.Error.WriteLine("coulisse gauge servers \"Host=…\" path/to/Coulisse.Web.dll [SECONDS]");
            return 2;
        }

        int seconds = args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 30;
        List<Process> started = [];
        try
        {
            (List<string> ids, string run) = await FillAsync(database);
            HttpClient[] both = [await StartAsync(web, database, started), await StartAsync(web, database, started)];
            ConcurrentBag<double> reads = [];
            ConcurrentBag<double> ticks = [];
            int failed = 0;
            using CancellationTokenSource stop = new(TimeSpan.FromSeconds(seconds));
            await Task.WhenAll(Enumerable.Range(0, Users).Select(user => Task.Run(async () =>
            {
                Random random = new(user);
                HttpClient client = both[user % 2];
                for (int i = 0; !stop.IsCancellationRequested; i++)
                {
                    // a person looks about once a second, and every third time ticks
                    await Task.Delay(TimeSpan.FromMilliseconds(random.NextDouble() * 2 * Pause.TotalMilliseconds));
                    long start = Stopwatch.GetTimestamp();
                    try
                    {
                        using HttpResponseMessage answer = i % 3 == 2
                            ? await client.PostAsJsonAsync("/api/live/" + run, new[] { new { id = $"user-{user:00}-{i:000000}", kind = "gate", subject = random.Next(1, 9).ToString(CultureInfo.InvariantCulture), text = "", agoMs = 0 } })
                            : await client.GetAsync(i % 3 == 0 ? "/cards/" + ids[random.Next(ids.Count)] : "/cards?q=leek+" + (char)('a' + random.Next(26)));
                        answer.EnsureSuccessStatusCode();
                        await answer.Content.ReadAsByteArrayAsync();
                        (i % 3 == 2 ? ticks : reads).Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
                    }
                    catch (HttpRequestException)
                    {
                        Interlocked.Increment(ref failed);
                    }
                }
            })));
            Report("reading", reads);
            Report("ticking", ticks);
            Console.WriteLine($"{Users} people, {seconds} s, {failed} failed; processor of the two web processes {started.Sum(p => p.TotalProcessorTime.TotalSeconds):0.0} s");
            return failed == 0 ? 0 : 1;
        }
        finally
        {
            foreach (Process process in started)
            {
                process.Kill(true);
                process.WaitForExit();
                process.Dispose();
            }
        }
    }

    private static void Report(string what, ConcurrentBag<double> all)
    {
        double[] sorted = [.. all.Order()];
        Console.WriteLine($"{what}: {sorted.Length} times, median {sorted[sorted.Length / 2]:0.0} ms, p95 {sorted[(int)(sorted.Length * 0.95)]:0.0} ms, worst {sorted[^1]:0} ms");
    }

    private static async Task<(List<string>, string)> FillAsync(string database)
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(database, TimeProvider.System);
        List<string> ids = [.. (await store.DocumentsAsync(DocumentKind.Card, Cards)).Select(h => h.Id)];
        for (int i = ids.Count; i < Cards; i++)
        {
            ids.Add(((SaveOutcome.Saved)await store.SaveAsync(DocumentKind.Card, null, 0, $"Leek and {(char)('a' + i % 26)}{i}", $"# Leek and {i}\n\n" + string.Concat(Enumerable.Range(0, 30).Select(n => $"- {n * 7 + i % 90} g hazelnut {n}\n")), "gauge", "")).Id);
        }

        LocalDateTime slot = new(2026, 3, 7, 14, 0);
        Plan plan = new() { Title = "Gauge", SlotStart = slot, SlotLength = Duration.FromMinutes(25) };
        string occasion = ((SaveOutcome.Saved)await store.SaveAsync(DocumentKind.Occasion, null, 0, "Gauge", "sheet", "gauge", "")).Id;
        return (ids, await store.StartRunAsync(await store.KeepPlanAsync(occasion, 1, TravelJson.Write(plan), ""), TimeProvider.System.GetUtcNow(), true));
    }

    private static async Task<HttpClient> StartAsync(string web, string database, List<Process> started)
    {
        int port;
        using (TcpListener free = new(IPAddress.Loopback, 0))
        {
            free.Start();
            port = ((IPEndPoint)free.LocalEndpoint).Port;
        }

        started.Add(Process.Start(new ProcessStartInfo("dotnet", [web, port.ToString(CultureInfo.InvariantCulture), database]) { UseShellExecute = false })!);
        HttpClient client = new() { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
        for (int i = 0; i < 300; i++)
        {
            try
            {
                if ((await client.GetAsync("/readyz")).IsSuccessStatusCode)
                {
                    return client;
                }
            }
            catch (HttpRequestException)
            {
                // not listening yet
            }

            await Task.Delay(100);
        }

        throw new TimeoutException("A web process did not start.");
    }
}
