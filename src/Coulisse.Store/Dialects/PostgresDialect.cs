using System.Collections.Concurrent;
using System.Data.Common;
using System.Runtime.CompilerServices;
using Npgsql;

namespace Coulisse.Store.Dialects;

/// <summary>One PostgreSQL for many kitchens.</summary>
internal sealed class PostgresDialect(string connectionString) : IDialect
{
    private readonly NpgsqlDataSource _source = NpgsqlDataSource.Create(connectionString);

    public string Name => "PostgreSQL";

    public string Ordered(string columns) => string.Join(", ", columns.Split(", ").Select(c => c is "version" or "seq" ? c : c + " COLLATE \"C\""));

    public string MetaExists => "SELECT COUNT(*) FROM information_schema.tables WHERE table_schema = current_schema() AND table_name = 'meta'";

    public string SearchFrom => "search_text";

    public string SearchWhere => "words @@ (CAST('''' || ':' || @kind || '''' AS tsquery) && to_tsquery('simple', @q))";

    public string SearchOrder => "ts_rank(words, to_tsquery('simple', @q)) DESC";

    public async Task<DbConnection> OpenAsync(CancellationToken cancel)
    {
        try
        {
            return await _source.OpenConnectionAsync(cancel).ConfigureAwait(false);
        }
        catch (NpgsqlException e)
        {
            throw new StoreException($"PostgreSQL cannot be reached: {e.Message} Check host, port, user and database of --store.", e);
        }
    }

    public async Task TellAsync(DbConnection connection, DbTransaction transaction, string run, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = "SELECT pg_notify('coulisse_live', @run)";
        command.Parameters.Add(new NpgsqlParameter("run", run));
        await command.ExecuteNonQueryAsync(cancel).ConfigureAwait(false);
    }

    public async IAsyncEnumerable<string> ListenAsync([EnumeratorCancellation] CancellationToken cancel)
    {
        await using NpgsqlConnection line = await _source.OpenConnectionAsync(cancel).ConfigureAwait(false);
        ConcurrentQueue<string> heard = [];
        line.Notification += (_, e) => heard.Enqueue(e.Payload);
        await using (NpgsqlCommand listen = line.CreateCommand())
        {
            listen.CommandText = "LISTEN coulisse_live";
            await listen.ExecuteNonQueryAsync(cancel).ConfigureAwait(false);
        }

        while (true)
        {
            await line.WaitAsync(cancel).ConfigureAwait(false);
            while (heard.TryDequeue(out string? run))
            {
                yield return run;
            }
        }
    }

    public IReadOnlyList<string> Migration(int number) => Migrations.Postgres.Statements(number);

    public Task CheckAsync(DbConnection connection, CancellationToken cancel) => Task.CompletedTask;

    public async Task LockForMigrationAsync(DbConnection connection, DbTransaction transaction, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        // An arbitrary number of ours; every process of this program takes the same one.
        command.CommandText = "SELECT pg_advisory_xact_lock(716253401); CREATE TABLE IF NOT EXISTS meta (key TEXT PRIMARY KEY, value TEXT NOT NULL)";
        await command.ExecuteNonQueryAsync(cancel).ConfigureAwait(false);
    }

    // the kind stands in the clause itself: the parser of words would take its colon off
    public string SearchQuery(string kind, IReadOnlyList<string> foldedWords)
        => string.Join(" & ", foldedWords.Select(w => "'" + w.Replace("'", "''", StringComparison.Ordinal).Replace("\\", "", StringComparison.Ordinal) + "':*"));

    public bool IsBusy(DbException e) => e is PostgresException { SqlState: "40001" or "40P01" };

    public ValueTask DisposeAsync() => _source.DisposeAsync();
}
