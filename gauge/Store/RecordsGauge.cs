using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Coulisse.Store;
using Microsoft.Data.Sqlite;

namespace Coulisse.Gauge.Store;

/// <summary>Years of records: a hundred thousand production records of a thousand occasions and a control log of a hundred thousand readings, in the embedded store.</summary>
internal static class RecordsGauge
{
    private const int Records = 100_000;
    private const int Occasions = 1_000;
    private static readonly string[] Words = ["leek", "hazelnut", "trout", "barley", "quince", "celeriac", "rye", "whey", "damson", "kale", "lovage", "medlar"];

    public static async Task<int> RunAsync()
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-records").FullName;
        try
        {
            await using (KitchenStore made = await KitchenStore.OpenAsync(folder, TimeProvider.System))
            {
            }

            await FillAsync(Path.Combine(folder, "coulisse.db"));
            long start = Stopwatch.GetTimestamp();
            await using KitchenStore store = await KitchenStore.OpenAsync(folder, TimeProvider.System);
            Console.WriteLine($"{Records} records, {Records} readings: {new FileInfo(Path.Combine(folder, "coulisse.db")).Length / 1048576.0:0} MB; opened with its check in {Stopwatch.GetElapsedTime(start).TotalMilliseconds:0} ms");
            Random random = new(2);
            await SayAsync("records of an occasion", i => store.RecordsAsync(Id(i * 37 % Occasions)));
            await SayAsync("search of two words, fifty hits", _ => store.SearchAsync(DocumentKind.Record, Word(random) + " " + Word(random)));
            await SayAsync("keep a record", i => store.KeepRecordAsync(null, "Record", "# Record of a night\n\nserved 52, left 1", "gauge", Id(i % Occasions), ""));
            await SayAsync("write a reading", i => store.LogControlAsync("gauge", $"{{\"point\":\"Cold place\",\"celsius\":{i % 6}}}"));
            start = Stopwatch.GetTimestamp();
            ChainCheck check = await store.CheckControlLogAsync();
            Console.WriteLine($"chain of {check.Entries} readings checked in {Stopwatch.GetElapsedTime(start).TotalMilliseconds:0} ms; broken at {check.Broken.Length}");
            return check.Broken.IsEmpty && check.Entries == Records + Runs ? 0 : 1;
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private const int Runs = 200;

    private static async Task SayAsync(string what, Func<int, Task> doing)
    {
        List<double> times = [];
        for (int i = 0; i < Runs; i++)
        {
            long start = Stopwatch.GetTimestamp();
            await doing(i);
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        times.Sort();
        Console.WriteLine($"{what}: median {times[Runs / 2]:0.0} ms, p95 {times[Runs * 95 / 100]:0.0} ms");
    }

    // some two thousand words, the first ones common and the last ones rare, as in a kitchen's own
    private static string Word(Random random) => Words[random.Next(Words.Length)] + ((int)Math.Pow(200, random.NextDouble()) + 10).ToString(CultureInfo.InvariantCulture);

    private static string Id(int n) => n.ToString("x32", CultureInfo.InvariantCulture);

    // In one transaction and past the store's own class: that filling is fast is not what is measured here. The chain is made by the rule of docs/keeping.md, and the store checks it.
    private static async Task FillAsync(string file)
    {
        await using SqliteConnection c = new($"Data Source={file};Pooling=False");
        await c.OpenAsync();
        await using SqliteTransaction all = (SqliteTransaction)await c.BeginTransactionAsync();
        async Task DoAsync(SqliteCommand command, params object[] values)
        {
            for (int i = 0; i < values.Length; i++)
            {
                command.Parameters[i].Value = values[i];
            }

            await command.ExecuteNonQueryAsync();
        }

        SqliteCommand Made(string sql, int parameters)
        {
            SqliteCommand command = c.CreateCommand();
            command.CommandText = sql;
            for (int i = 0; i < parameters; i++)
            {
                command.Parameters.Add(new SqliteParameter("@p" + i.ToString(CultureInfo.InvariantCulture), ""));
            }

            return command;
        }

        await using SqliteCommand document = Made("INSERT INTO document (id, kind, kitchen, title, version, changed_ms) VALUES (@p0, @p1, 'main', @p2, 1, @p3)", 4);
        await using SqliteCommand version = Made("INSERT INTO document_version (document_id, version, text, who, why, saved_ms, hash) VALUES (@p0, 1, @p1, 'gauge', '', 0, '')", 2);
        await using SqliteCommand search = Made("INSERT INTO search_text (document_id, kind, title, body) VALUES (@p0, @p1, @p2, @p3)", 4);
        await using SqliteCommand record = Made("INSERT INTO record (id, occasion_id, plan_id, made_ms) VALUES (@p0, @p1, '', @p2)", 3);
        await using SqliteCommand reading = Made("INSERT INTO control_log (kitchen, seq, at_ms, who, json, previous, hash) VALUES ('main', @p0, @p1, 'gauge', @p2, @p3, @p4)", 5);
        Random random = new(1);
        string previous = "";
        for (int i = 0; i < Occasions + Records; i++)
        {
            string kind = i < Occasions ? "occasion" : "record";
            string text = string.Join(' ', Enumerable.Range(0, 60).Select(_ => Word(random)));
            await DoAsync(document, Id(i), kind, kind + " " + i.ToString(CultureInfo.InvariantCulture), i);
            await DoAsync(version, Id(i), text);
            await DoAsync(search, Id(i), kind, kind, text);
            if (i < Occasions)
            {
                continue;
            }

            await DoAsync(record, Id(i), Id(i % Occasions), i);
            long seq = i - Occasions + 1;
            string json = $"{{\"point\":\"Cold place\",\"celsius\":{i % 6}}}";
            string hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{seq}\n{seq}\ngauge\n{json}\n{previous}"))));
            await DoAsync(reading, seq, seq, json, previous, hash);
            previous = hash;
        }

        await all.CommitAsync();
    }
}
