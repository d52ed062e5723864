using System.Globalization;
using Coulisse.Store;

namespace Coulisse.Web.Hosting;

/// <summary>Makes a backup at once and then at every interval, restores each into a folder of its own to prove it, and keeps the newest.</summary>
internal sealed class BackupClock(KitchenStore store, WebBenchOptions options, ILogger<BackupClock> log) : BackgroundService
{
    private const string Beginning = "coulisse-";

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await BackUpAsync(stoppingToken);
            }
            catch (Exception e) when (e is StoreException or IOException or UnauthorizedAccessException)
            {
                // The kitchen works on; whoever watches the log, or /readyz of a watcher's own, hears of it.
                log.LogError(e, "The backup failed. The next is tried at its time.");
            }
            catch (OperationCanceledException)
            {
                return;
            }

            try
            {
                await Task.Delay(options.BackupEvery, options.Clock, stoppingToken);
            }
            catch (OperationCanceledException)
            {
                return;
            }
        }
    }

    private async Task BackUpAsync(CancellationToken cancel)
    {
        string folder = options.BackupTo!;
        Directory.CreateDirectory(folder);
        string file = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{Beginning}{options.Clock.GetUtcNow():yyyyMMdd-HHmmss-fff}.db"));
        // under another name until it is proven: a file of the usual name is one that restores
        string unproven = file + ".unproven";
        try
        {
            string hash = await store.BackupAsync(unproven, cancel);
            await KitchenStore.ProveAsync(unproven, hash, options.Clock, cancel);
            File.Move(unproven, file);
        }
        finally
        {
            File.Delete(unproven);
        }

        // Only our own names, sorted by their moment; nothing else in the folder is touched.
        foreach (string old in Directory.GetFiles(folder, Beginning + "????????-??????-???.db").Order(StringComparer.Ordinal).Reverse().Skip(Math.Max(1, options.BackupKeep)))
        {
            File.Delete(old);
        }
    }
}
