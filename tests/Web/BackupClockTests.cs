using System.Net;
using Coulisse.Store;

namespace Coulisse.Web.Tests;

public sealed class BackupClockTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_running_bench_makes_backups_that_restore_and_keeps_the_newest_and_touches_no_other_file()
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-backups-").FullName;
        try
        {
            await File.WriteAllTextAsync(Path.Combine(folder, "precious.db"), "mine", Cancel);
            await using (BenchServer bench = await BenchServer.StartAsync(options: new WebBenchOptions { BackupTo = folder, BackupEvery = TimeSpan.FromMilliseconds(200), BackupKeep = 2 }))
            {
                await NetworkBench.PostAsync(bench.Client, "/cards", ("text", "# Leek soup\n\n- 600 g leeks"));
                HashSet<string> seen = [];
                for (int i = 0; i < 200 && seen.Count < 4; i++)
                {
                    await Task.Delay(100, Cancel);
                    seen.UnionWith(Directory.GetFiles(folder, "coulisse-*.db"));
                }

                Assert.True(seen.Count >= 4, $"{seen.Count} backups");
            }

            string[] kept = Directory.GetFiles(folder, "coulisse-*.db");
            Assert.InRange(kept.Length, 1, 2);
            Assert.Empty(Directory.GetFiles(folder, "*.unproven"));
            Assert.Equal("mine", await File.ReadAllTextAsync(Path.Combine(folder, "precious.db"), Cancel));
            string restored = Path.Combine(folder, "restored");
            await KitchenStore.RestoreAsync(restored, kept.Max()!, DateTimeOffset.UnixEpoch, Cancel);
            await using KitchenStore store = await KitchenStore.OpenAsync(restored, TimeProvider.System, cancel: Cancel);
            Assert.Equal("Leek soup", Assert.Single(await store.DocumentsAsync(DocumentKind.Card, cancel: Cancel)).Title);
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    [Fact]
    public async Task Health_says_ready_while_the_store_answers()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        Assert.Equal("ok", await bench.Client.GetStringAsync("/healthz", Cancel));
        Assert.Equal((HttpStatusCode.OK, "ready"), ((await bench.Client.GetAsync("/readyz", Cancel)).StatusCode, await bench.Client.GetStringAsync("/readyz", Cancel)));
    }
}
