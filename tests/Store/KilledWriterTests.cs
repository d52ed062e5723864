using System.Diagnostics;
using System.Globalization;
using Coulisse.Kitchen.Planning;
using Coulisse.Tests;

namespace Coulisse.Store.Tests;

/// <summary>A process that is killed at a random moment of writing loses nothing it acknowledged and leaves a sound store.</summary>
public sealed class KilledWriterTests(PostgresServer server) : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-kill").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public Task Killed_writers_lose_no_acknowledged_write_on_the_embedded_store() => KillAsync(i => Path.Combine(_folder, i.ToString(CultureInfo.InvariantCulture)), sharedStore: true);

    [Fact]
    public Task Killed_writers_lose_no_acknowledged_write_on_PostgreSQL()
    {
        string database = server.Fresh();
        return KillAsync(_ => database, sharedStore: true);
    }

    private static async Task KillAsync(Func<int, string> where, bool sharedStore)
    {
        int times = LongRun.On ? 500 : 20;
        const int seed = 20261125;
        Random random = new(seed);
        for (int i = 0; i < times; i++)
        {
            string store = where(sharedStore ? 0 : i);
            List<string> acknowledged = await WriteAndKillAsync(store, TimeSpan.FromMilliseconds(random.Next(5, 250)));
            await using KitchenStore opened = await KitchenStore.OpenAsync(store, TimeProvider.System, cancel: TestContext.Current.CancellationToken);
            await CheckAsync(opened, acknowledged, $"seed {seed}, kill {i}");
        }
    }

    private static async Task<List<string>> WriteAndKillAsync(string store, TimeSpan after)
    {
        string writer = Path.Combine(SharedData.Repository, "artifacts", "bin", "Coulisse.StoreWriter", "release", "Coulisse.StoreWriter.dll");
        ProcessStartInfo info = new("dotnet", [writer, store]) { RedirectStandardOutput = true, UseShellExecute = false };
        using Process process = Process.Start(info)!;
        List<string> lines = [];
        string? first = await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
        Assert.NotNull(first);
        lines.Add(first);
        Task reading = Task.Run(async () =>
        {
            while (await process.StandardOutput.ReadLineAsync() is { } line)
            {
                lines.Add(line);
            }
        });
        await Task.Delay(after, TestContext.Current.CancellationToken);
        process.Kill();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        await reading;
        return lines;
    }

    private static async Task CheckAsync(KitchenStore store, List<string> acknowledged, string when)
    {
        HashSet<string>? events = null;
        List<ControlEntry> control = await store.ControlLogAsync(TestContext.Current.CancellationToken);
        foreach (string[] words in acknowledged.Select(l => l.Split(' ')))
        {
            switch (words[0])
            {
                case "card" when words.Length == 4:
                    DocumentVersion? version = await store.VersionAsync(words[1], int.Parse(words[2], CultureInfo.InvariantCulture), TestContext.Current.CancellationToken);
                    Assert.True(version is not null && version.Text.StartsWith($"text {words[3]} ", StringComparison.Ordinal) && version.Text.Length > 2000, $"{when}: {string.Join(' ', words)}");
                    break;
                case "event" when words.Length == 3:
                    events ??= [.. (await store.LogAsync(words[1], TestContext.Current.CancellationToken)).Events.Select(e => e.Id)];
                    Assert.True(events.Contains(words[2]), $"{when}: {string.Join(' ', words)}");
                    break;
                case "control" when words.Length == 3:
                    Assert.True(control.Any(e => e.Seq == long.Parse(words[1], CultureInfo.InvariantCulture) && e.Json == $"{{\"n\":{words[2]}}}"), $"{when}: {string.Join(' ', words)}");
                    break;
                default:
                    break; // a line cut short by the kill was not acknowledged
            }
        }

        Assert.Empty((await store.CheckControlLogAsync(TestContext.Current.CancellationToken)).Broken);
    }
}
