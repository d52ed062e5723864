using System.Diagnostics;
using Coulisse.Store;

namespace Coulisse.Gauge.Store;

/// <summary>The store with ten thousand cards: search, open, save, start and backup. Names a connection string to gauge PostgreSQL.</summary>
internal static class StoreGauge
{
    private static readonly string[] Words = ["leek", "hazelnut", "brown", "butter", "crème", "quince", "barley", "smoked", "trout", "rye", "caraway", "plum", "walnut", "beet", "horseradish", "fennel", "citrus", "vanilla", "press", "terrine", "crumb", "gel", "purée", "crisp", "ganache", "sorbet", "sponge", "glaze", "pickle", "brine"];

    public static async Task<int> RunAsync(string[] args)
    {
        string? folder = args.Length > 0 ? null : Directory.CreateTempSubdirectory("coulisse-gauge").FullName;
        string where = args.Length > 0 ? args[0] : folder!;
        try
        {
            const int cards = 10_000;
            Random random = new(1);
            List<string> ids = [];
            await using (KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System))
            {
                long fill = Stopwatch.GetTimestamp();
                for (int i = 0; i < cards; i++)
                {
                    ids.Add(((SaveOutcome.Saved)await store.SaveAsync(DocumentKind.Card, null, 0, Title(random, i), Text(random), "gauge", "")).Id);
                }

                Console.WriteLine($"{store.Database}: {cards} cards saved in {Stopwatch.GetElapsedTime(fill).TotalSeconds:0.0} s");
                Report("search, two words, fifty hits", await Stopwatches.MillisecondsAsync(300, async i => await store.SearchAsync(DocumentKind.Card, Words[i % 30][..3] + " " + Words[i * 7 % 30])));
                Report("open a card", await Stopwatches.MillisecondsAsync(300, async i => _ = await store.OpenDocumentAsync(ids[i * 31 % cards]) ?? throw new InvalidOperationException("a saved card is gone")));
                Report("save a version", await Stopwatches.MillisecondsAsync(300, async i => await store.SaveAsync(DocumentKind.Card, ids[i * 17 % cards], 1, "t", Text(random), "gauge", "")));
                if (folder is not null)
                {
                    string file = Path.Combine(folder, "backup.db");
                    long start = Stopwatch.GetTimestamp();
                    await store.BackupAsync(file);
                    double backup = Stopwatch.GetElapsedTime(start).TotalSeconds;
                    start = Stopwatch.GetTimestamp();
                    File.Copy(file, file + ".copy");
                    double copy = Stopwatch.GetElapsedTime(start).TotalSeconds;
                    double megabytes = new FileInfo(file).Length / 1048576.0;
                    Console.WriteLine($"backup with its proof: {megabytes / backup:0} MB/s; plain copy of the same file: {megabytes / copy:0} MB/s ({megabytes:0} MB)");
                }
            }

            (double median, _) = await Stopwatches.MillisecondsAsync(5, async _ =>
            {
                await using KitchenStore again = await KitchenStore.OpenAsync(where, TimeProvider.System);
            });
            Console.WriteLine($"start on that store: median {median:0} ms");
            return 0;
        }
        finally
        {
            if (folder is not null)
            {
                Directory.Delete(folder, true);
            }
        }
    }

    private static void Report(string what, (double Median, double P95) t) => Console.WriteLine($"{what}: median {t.Median:0.00} ms, p95 {t.P95:0.00} ms");

    private static string Title(Random random, int i) => $"{Words[random.Next(30)]} and {Words[random.Next(30)]}, {i}";

    private static string Text(Random random)
    {
        System.Text.StringBuilder b = new("# Card\n\n");
        for (int i = 0; i < 40; i++)
        {
            b.Append("- ").Append(random.Next(1, 900)).Append(" g ").Append(Words[random.Next(30)]).Append(' ').Append(Words[random.Next(30)]).Append('\n');
        }

        return b.ToString();
    }
}
