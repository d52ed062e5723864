using System.Data.Common;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Coulisse.Gauge.Store;

/// <summary>Fills a store with what a busy kitchen keeps in years, in one transaction and past the store's own class: how fast filling is, is not what is measured. The chain is made by the rule of the control log, and the store checks it.</summary>
internal static class YearsOfRecords
{
    public const int Cards = 10_000;
    public const int Occasions = 1_000;
    public const int Records = 100_000;
    private const int AtOnce = 250;

    private static readonly string[] Foods = ["leek", "hazelnut", "trout", "barley", "quince", "celeriac", "rye", "whey", "damson", "kale", "lovage", "medlar"];

    public static string Id(int n) => n.ToString("x32", CultureInfo.InvariantCulture);

    public static string Occasion(int n) => Id(Cards + (n % Occasions));

    /// <summary>One of some two thousand words, the first ones common and the last ones rare, as in a kitchen's own; cards and records have the same.</summary>
    public static string Word(Random random) => Foods[random.Next(Foods.Length)] + ((int)Math.Pow(200, random.NextDouble()) + 10).ToString(CultureInfo.InvariantCulture);

    public static string Text(Random random) => string.Join(' ', Enumerable.Range(0, 60).Select(_ => Word(random)));

    public static async Task FillAsync(string where)
    {
        await using DbConnection c = where.Contains("Host=", StringComparison.Ordinal) ? new NpgsqlConnection(where) : new SqliteConnection($"Data Source={Path.Combine(where, "coulisse.db")};Pooling=False");
        await c.OpenAsync();
        await using DbTransaction all = await c.BeginTransactionAsync();
        Random random = new(1);
        Many document = new(c, all, "document (id, kind, kitchen, title, version, changed_ms)");
        Many version = new(c, all, "document_version (document_id, version, text, who, why, saved_ms, hash)");
        Many search = new(c, all, "search_text (document_id, kind, title, body)");
        Many record = new(c, all, "record (id, occasion_id, plan_id, made_ms)");
        Many reading = new(c, all, "control_log (kitchen, seq, at_ms, who, json, previous, hash)");
        string previous = "";
        for (int i = 0; i < Cards + Occasions + Records; i++)
        {
            string kind = i < Cards ? "card" : i < Cards + Occasions ? "occasion" : "record";
            string text = Text(random);
            await document.AddAsync(Id(i), kind, "main", kind + " " + i.ToString(CultureInfo.InvariantCulture), 1, (long)i);
            await version.AddAsync(Id(i), 1, text, "gauge", "", 0L, "");
            await search.AddAsync(Id(i), kind, kind, text);
            if (kind != "record")
            {
                continue;
            }

            await record.AddAsync(Id(i), Occasion(i), "", (long)i);
            long seq = i - Cards - Occasions + 1;
            string json = $"{{\"point\":\"Cold place\",\"celsius\":{i % 6}}}";
            string hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{seq}\n{seq}\ngauge\n{json}\n{previous}"))));
            await reading.AddAsync("main", seq, seq, "gauge", json, previous, hash);
            previous = hash;
        }

        // what is referred to goes first
        foreach (Many rest in new[] { document, version, search, record, reading })
        {
            await rest.FlushAsync();
        }

        await all.CommitAsync();
    }

    /// <summary>Rows of one table, so many to a statement. Documents fill first, and the numbers above are whole multiples of that, so that what a row refers to is there.</summary>
    private sealed class Many(DbConnection connection, DbTransaction transaction, string table)
    {
        private readonly List<object[]> _rows = [];

        public async Task AddAsync(params object[] row)
        {
            _rows.Add(row);
            if (_rows.Count == AtOnce)
            {
                await FlushAsync();
            }
        }

        public async Task FlushAsync()
        {
            if (_rows.Count == 0)
            {
                return;
            }

            await using DbCommand command = connection.CreateCommand();
            command.Transaction = transaction;
            StringBuilder sql = new($"INSERT INTO {table} VALUES ");
            for (int r = 0; r < _rows.Count; r++)
            {
                sql.Append(r == 0 ? "(" : ", (");
                for (int i = 0; i < _rows[r].Length; i++)
                {
                    DbParameter p = command.CreateParameter();
                    p.ParameterName = string.Create(CultureInfo.InvariantCulture, $"p{command.Parameters.Count}");
                    p.Value = _rows[r][i];
                    sql.Append(i == 0 ? "@" : ", @").Append(p.ParameterName);
                    command.Parameters.Add(p);
                }

                sql.Append(')');
            }

#pragma warning disable CA2100 // names of this class; values are parameters
            command.CommandText = sql.ToString();
#pragma warning restore CA2100
            await command.ExecuteNonQueryAsync();
            _rows.Clear();
        }
    }
}
