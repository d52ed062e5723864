using System.Diagnostics;
using System.Globalization;
using Coulisse.Store;
using Microsoft.Data.Sqlite;

namespace Coulisse.Gauge.Store;

/// <summary>A store of a gigabyte: how long it takes to open (with its check for soundness), and how fast a proven backup is against a plain copy of the same file in the same run.</summary>
internal static class BigStoreGauge
{
    private const int Cards = 10_000;
    private const int Versions = 10;

    public static async Task<int> RunAsync(string[] args)
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-big").FullName;
        string where = Path.Combine(folder, "store");
        try
        {
            await using (KitchenStore made = await KitchenStore.OpenAsync(where, TimeProvider.System))
            {
            }

            await FillAsync(Path.Combine(where, "coulisse.db"));
            double megabytes = new FileInfo(Path.Combine(where, "coulisse.db")).Length / 1048576.0;
            Console.WriteLine($"{Cards} cards of {Versions} versions: {megabytes:0} MB");
            (double median, double worst) = await Stopwatches.MillisecondsAsync(5, async _ =>
            {
                await using KitchenStore again = await KitchenStore.OpenAsync(where, TimeProvider.System);
            });
            Console.WriteLine($"open with check: median {median:0} ms, worst of five {worst:0} ms");
            await using KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System);
            string file = Path.Combine(folder, "backup.db");
            long start = Stopwatch.GetTimestamp();
            TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
            await store.BackupAsync(file);
            double backup = Stopwatch.GetElapsedTime(start).TotalSeconds;
            double processor = (Process.GetCurrentProcess().TotalProcessorTime - before).TotalSeconds;
            start = Stopwatch.GetTimestamp();
            File.Copy(file, file + ".copy");
            double copy = Stopwatch.GetElapsedTime(start).TotalSeconds;
            Console.WriteLine($"backup with its proof: {megabytes / backup:0} MB/s ({backup:0.0} s, {processor:0.0} s of processor); plain copy in the same run: {megabytes / copy:0} MB/s; share {copy / backup:0.00}");
            return 0;
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    // In one transaction and past the store's own class: a hundred thousand kept versions are not what is measured here.
    private static async Task FillAsync(string file)
    {
        await using SqliteConnection c = new($"Data Source={file};Pooling=False");
        await c.OpenAsync();
        await using SqliteTransaction all = (SqliteTransaction)await c.BeginTransactionAsync();
        await using SqliteCommand document = c.CreateCommand();
        document.CommandText = "INSERT INTO document (id, kind, kitchen, title, version, changed_ms) VALUES (@id, 'card', 'main', @title, @v, 0)";
        await using SqliteCommand version = c.CreateCommand();
        version.CommandText = "INSERT INTO document_version (document_id, version, text, who, why, saved_ms, hash) VALUES (@id, @v, @text, 'gauge', '', 0, '')";
        Random random = new(1);
        for (int i = 0; i < Cards; i++)
        {
            string id = i.ToString("x32", CultureInfo.InvariantCulture);
            document.Parameters.Clear();
            document.Parameters.AddWithValue("@id", id);
            document.Parameters.AddWithValue("@title", "card " + id);
            document.Parameters.AddWithValue("@v", Versions);
            await document.ExecuteNonQueryAsync();
            for (int v = 1; v <= Versions; v++)
            {
                version.Parameters.Clear();
                version.Parameters.AddWithValue("@id", id);
                version.Parameters.AddWithValue("@v", v);
                version.Parameters.AddWithValue("@text", new string((char)('a' + random.Next(26)), 10_200));
                await version.ExecuteNonQueryAsync();
            }
        }

        await all.CommitAsync();
    }
}
