using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Coulisse.Store.Dialects;

/// <summary>One file in a stated folder: write-ahead log, foreign keys, full synchronisation so that an acknowledged write survives a power cut.</summary>
internal sealed class SqliteDialect(string path) : IDialect
{
    private readonly string _connection = new SqliteConnectionStringBuilder
    {
        DataSource = path,
        Mode = SqliteOpenMode.ReadWriteCreate,
        Cache = SqliteCacheMode.Default,
        Pooling = true,
        DefaultTimeout = 10,
        ForeignKeys = true,
    }.ConnectionString;

    public string Name => "SQLite";

    public string Ordered(string columns) => columns;

    public string MetaExists => "SELECT COUNT(*) FROM sqlite_master WHERE name = 'meta'";

    public string SearchFrom => "search_words JOIN search_text ON search_text.row = search_words.rowid";

    public string SearchWhere => "search_words MATCH @q";

    public string SearchOrder => "bm25(search_words, 0.0, 10.0, 1.0)";

    public async Task<DbConnection> OpenAsync(CancellationToken cancel)
    {
        SqliteConnection connection = new(_connection);
        try
        {
            await connection.OpenAsync(cancel).ConfigureAwait(false);
            await using SqliteCommand pragma = connection.CreateCommand();
            pragma.CommandText = "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA busy_timeout=10000;";
            await pragma.ExecuteNonQueryAsync(cancel).ConfigureAwait(false);
            return connection;
        }
        catch (SqliteException e)
        {
            await connection.DisposeAsync().ConfigureAwait(false);
            throw new StoreException($"The store {path} cannot be opened: {e.Message} Check that the folder exists, may be written and has room.", e);
        }
    }

    public Task TellAsync(DbConnection connection, DbTransaction transaction, string run, CancellationToken cancel) => Task.CompletedTask;

    public IAsyncEnumerable<string> ListenAsync(CancellationToken cancel) => AsyncEnumerable.Empty<string>();

    public IReadOnlyList<string> Migration(int number) => Migrations.Sqlite.Statements(number);

    public async Task CheckAsync(DbConnection connection, CancellationToken cancel)
    {
        try
        {
            await using DbCommand check = connection.CreateCommand();
            check.CommandText = "PRAGMA quick_check(1)";
            if (await check.ExecuteScalarAsync(cancel).ConfigureAwait(false) is not "ok")
            {
                throw new StoreException($"The store {path} is damaged. Nothing was changed. Restore the newest backup with 'coulisse restore'.");
            }
        }
        catch (SqliteException e)
        {
            throw new StoreException($"The store {path} is not a sound SQLite file ({e.Message}). Nothing was changed. Restore the newest backup with 'coulisse restore'.", e);
        }
    }

    public async Task LockForMigrationAsync(DbConnection connection, DbTransaction transaction, CancellationToken cancel)
    {
        // A write inside the transaction takes SQLite's one write lock at once.
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = "CREATE TABLE IF NOT EXISTS meta (key TEXT PRIMARY KEY, value TEXT NOT NULL); INSERT INTO meta (key, value) VALUES ('lock', '') ON CONFLICT (key) DO UPDATE SET value = ''";
        await command.ExecuteNonQueryAsync(cancel).ConfigureAwait(false);
    }

    public string SearchQuery(string kind, IReadOnlyList<string> foldedWords)
        => $"kind : \"{kind}\" AND {{title body}} : ({string.Join(" AND ", foldedWords.Select(w => "\"" + w.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"*"))})";

    public bool IsBusy(DbException e) => e is SqliteException { SqliteErrorCode: 5 or 6 };

    public ValueTask DisposeAsync()
    {
        using SqliteConnection connection = new(_connection);
        SqliteConnection.ClearPool(connection);
        return ValueTask.CompletedTask;
    }
}
