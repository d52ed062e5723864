using System.Diagnostics;
using System.Globalization;
using Coulisse.Store;

namespace Coulisse.Gauge.Store;

/// <summary>Years of a kitchen in one store of either kind: ten thousand cards, a thousand occasions, a hundred thousand production records and a control log of a hundred thousand readings. Names a connection string to gauge PostgreSQL.</summary>
internal static class RecordsGauge
{
    private const int Runs = 200;

    public static async Task<int> RunAsync(string[] args)
    {
        string? folder = args.Length > 0 ? null : Directory.CreateTempSubdirectory("coulisse-records").FullName;
        string where = args.Length > 0 ? args[0] : folder!;
        try
        {
            await using (KitchenStore made = await KitchenStore.OpenAsync(where, TimeProvider.System))
            {
            }

            long start = Stopwatch.GetTimestamp();
            await YearsOfRecords.FillAsync(where);
            Console.WriteLine($"{YearsOfRecords.Cards} cards, {YearsOfRecords.Occasions} occasions, {YearsOfRecords.Records} records, {YearsOfRecords.Records} readings, filled in {Stopwatch.GetElapsedTime(start).TotalSeconds:0} s");
            start = Stopwatch.GetTimestamp();
            await using KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System);
            Console.WriteLine($"{store.Database}{(folder is null ? "" : $", {new FileInfo(Path.Combine(folder, "coulisse.db")).Length / 1048576.0:0} MB")}: opened with its check in {Stopwatch.GetElapsedTime(start).TotalMilliseconds:0} ms");
            Random random = new(2);
            string Words() => YearsOfRecords.Word(random) + " " + YearsOfRecords.Word(random);
            await SayAsync("search cards, two words, fifty hits", _ => store.SearchAsync(DocumentKind.Card, Words()));
            await SayAsync("search cards, one beginning of three letters", _ => store.SearchAsync(DocumentKind.Card, YearsOfRecords.Word(random)[..3]));
            await SayAsync("search records, two words, fifty hits", _ => store.SearchAsync(DocumentKind.Record, Words()));
            await SayAsync("search records, one beginning of three letters", _ => store.SearchAsync(DocumentKind.Record, YearsOfRecords.Word(random)[..3]));
            await SayAsync("open a card", async i => _ = await store.OpenDocumentAsync(YearsOfRecords.Id(i * 37 % YearsOfRecords.Cards)) ?? throw new InvalidOperationException("a card is gone"));
            await SayAsync("save a version of a card", i => store.SaveAsync(DocumentKind.Card, YearsOfRecords.Id(i * 37 % YearsOfRecords.Cards), 1, "card", YearsOfRecords.Text(random), "gauge", ""));
            await SayAsync("records of an occasion", i => store.RecordsAsync(YearsOfRecords.Occasion(i * 37)));
            await SayAsync("keep a record", i => store.KeepRecordAsync(null, "Record", "# Record of a night\n\nserved 52, left 1", "gauge", YearsOfRecords.Occasion(i), ""));
            await SayAsync("write a reading", i => store.LogControlAsync("gauge", $"{{\"point\":\"Cold place\",\"celsius\":{i % 6}}}"));
            start = Stopwatch.GetTimestamp();
            ChainCheck check = await store.CheckControlLogAsync();
            Console.WriteLine($"chain of {check.Entries} readings checked in {Stopwatch.GetElapsedTime(start).TotalMilliseconds:0} ms; broken at {check.Broken.Length}");
            return check.Broken.IsEmpty && check.Entries == YearsOfRecords.Records + Runs ? 0 : 1;
        }
        finally
        {
            if (folder is not null)
            {
                Directory.Delete(folder, true);
            }
        }
    }

    private static async Task SayAsync(string what, Func<int, Task> doing)
    {
        (double median, double p95) = await Stopwatches.MillisecondsAsync(Runs, doing);
        Console.WriteLine($"{what}: median {median:0.0} ms, p95 {p95:0.0} ms");
    }
}
