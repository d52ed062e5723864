using System.Data.Common;
using System.Globalization;
using Coulisse.Store.Dialects;
using Coulisse.Store.Migrations;

namespace Coulisse.Store;

/// <summary>Everything a kitchen keeps. One class, two databases; nothing that was saved is ever overwritten.</summary>
public sealed partial class KitchenStore : IAsyncDisposable
{
    /// <summary>The kitchen when none is named.</summary>
    public const string MainKitchen = "main";

    private readonly IDialect _dialect;
    private readonly TimeProvider _clock;
    private readonly string _kitchen;

    private KitchenStore(IDialect dialect, TimeProvider clock, string kitchen)
    {
        _dialect = dialect;
        _clock = clock;
        _kitchen = kitchen;
    }

    /// <summary>"SQLite" or "PostgreSQL".</summary>
    public string Database => _dialect.Name;

    /// <summary>Opens (and if need be makes and migrates) the store.</summary>
    /// <param name="where">A folder for the embedded store, or a PostgreSQL connection string ("Host=…").</param>
    /// <param name="clock">The clock that stamps what is saved.</param>
    /// <param name="kitchen">Which kitchen's documents are seen.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="StoreException">It cannot be opened, is damaged, or is newer than this program.</exception>
    public static async Task<KitchenStore> OpenAsync(string where, TimeProvider clock, string kitchen = MainKitchen, CancellationToken cancel = default)
    {
        IDialect dialect = where.Contains("Host=", StringComparison.OrdinalIgnoreCase)
            ? new PostgresDialect(where)
            : new SqliteDialect(FileIn(where));
        KitchenStore store = new(dialect, clock, kitchen);
        try
        {
            await store.PrepareAsync(Numbered.Newest, cancel).ConfigureAwait(false);
        }
        catch
        {
            await dialect.DisposeAsync().ConfigureAwait(false);
            throw;
        }

        return store;
    }

    /// <summary>A name of a fixed document (the kitchen's book, its price list) as this kitchen's own key: keys are one across all kitchens of a store.</summary>
    /// <param name="name">The same in every kitchen.</param>
    public string Own(string name) => _kitchen == MainKitchen ? name : name + "-" + Hash(_kitchen)[..8];

    /// <summary>Opens at an earlier form, to test that later migrations carry data over.</summary>
    internal static async Task<KitchenStore> OpenAtAsync(string where, TimeProvider clock, int version, CancellationToken cancel = default)
    {
        IDialect dialect = where.Contains("Host=", StringComparison.OrdinalIgnoreCase) ? new PostgresDialect(where) : new SqliteDialect(FileIn(where));
        KitchenStore store = new(dialect, clock, MainKitchen);
        await store.PrepareAsync(version, cancel).ConfigureAwait(false);
        return store;
    }

    public ValueTask DisposeAsync() => _dialect.DisposeAsync();

    private static string FileIn(string folder)
    {
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreException($"The folder {folder} cannot be made or written: {e.Message} Name another with --data.", e);
        }

        return Path.Combine(folder, "coulisse.db");
    }

    private async Task PrepareAsync(int newest, CancellationToken cancel)
    {
        await using DbConnection connection = await _dialect.OpenAsync(cancel).ConfigureAwait(false);
        await _dialect.CheckAsync(connection, cancel).ConfigureAwait(false);
        try
        {
            // A store that is in order is opened without a write, so that a full disk or a busy writer keeps nobody from reading.
            if (await ScalarAsync<long>(connection, null, _dialect.MetaExists, cancel).ConfigureAwait(false) > 0 && await FormAsync(connection, null, cancel).ConfigureAwait(false) >= newest)
            {
                return;
            }

            await using DbTransaction transaction = await connection.BeginTransactionAsync(cancel).ConfigureAwait(false);
            await _dialect.LockForMigrationAsync(connection, transaction, cancel).ConfigureAwait(false);
            int at = await FormAsync(connection, transaction, cancel).ConfigureAwait(false);
            for (int number = at + 1; number <= newest; number++)
            {
                foreach (string statement in _dialect.Migration(number))
                {
                    await ExecuteAsync(connection, transaction, statement, cancel).ConfigureAwait(false);
                }

                await ExecuteAsync(connection, transaction, "INSERT INTO meta (key, value) VALUES ('form', @v) ON CONFLICT (key) DO UPDATE SET value = @v", cancel, ("v", number.ToString(CultureInfo.InvariantCulture))).ConfigureAwait(false);
            }

            await transaction.CommitAsync(cancel).ConfigureAwait(false);
        }
        catch (DbException e)
        {
            throw new StoreException($"The store could not be prepared: {e.Message} Check that its folder may be written and has room.", e);
        }
    }

    private static async Task<int> FormAsync(DbConnection connection, DbTransaction? transaction, CancellationToken cancel)
    {
        int at = int.Parse(await ScalarAsync<string>(connection, transaction, "SELECT value FROM meta WHERE key = 'form'", cancel).ConfigureAwait(false) ?? "0", CultureInfo.InvariantCulture);
        return at > Numbered.Newest
            ? throw new StoreException(string.Create(CultureInfo.InvariantCulture, $"This store has form {at}; this program knows forms up to {Numbered.Newest}. Use a newer Coulisse. Nothing was changed."))
            : at;
    }

    private long NowMs => _clock.GetUtcNow().ToUnixTimeMilliseconds();

    private static DateTimeOffset FromMs(long ms) => DateTimeOffset.FromUnixTimeMilliseconds(ms);

    private static DbCommand Command(DbConnection connection, DbTransaction? transaction, string sql, (string Name, object Value)[] values)
    {
        DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
#pragma warning disable CA2100 // every statement is a constant of this class; values are parameters
        command.CommandText = sql;
#pragma warning restore CA2100
        foreach ((string name, object value) in values)
        {
            DbParameter parameter = command.CreateParameter();
            parameter.ParameterName = name;
            parameter.Value = value;
            command.Parameters.Add(parameter);
        }

        return command;
    }

    private static async Task<int> ExecuteAsync(DbConnection connection, DbTransaction? transaction, string sql, CancellationToken cancel, params (string Name, object Value)[] values)
    {
        await using DbCommand command = Command(connection, transaction, sql, values);
        return await command.ExecuteNonQueryAsync(cancel).ConfigureAwait(false);
    }

    private static async Task<T?> ScalarAsync<T>(DbConnection connection, DbTransaction? transaction, string sql, CancellationToken cancel, params (string Name, object Value)[] values)
    {
        await using DbCommand command = Command(connection, transaction, sql, values);
        object? value = await command.ExecuteScalarAsync(cancel).ConfigureAwait(false);
        return value is null or DBNull ? default : (T)Convert.ChangeType(value, Nullable.GetUnderlyingType(typeof(T)) ?? typeof(T), CultureInfo.InvariantCulture);
    }

    private async Task<List<T>> ListAsync<T>(string sql, Func<DbDataReader, T> row, CancellationToken cancel, params (string Name, object Value)[] values)
    {
        await using DbConnection connection = await _dialect.OpenAsync(cancel).ConfigureAwait(false);
        try
        {
            await using DbCommand command = Command(connection, null, sql, values);
            await using DbDataReader reader = await command.ExecuteReaderAsync(cancel).ConfigureAwait(false);
            List<T> rows = [];
            while (await reader.ReadAsync(cancel).ConfigureAwait(false))
            {
                rows.Add(row(reader));
            }

            return rows;
        }
        catch (DbException e)
        {
            throw new StoreException($"The store could not be read: {e.Message}", e);
        }
    }

    /// <summary>Runs a write in one transaction; tries again a few times when another writer was there first.</summary>
    private async Task<T> WriteAsync<T>(Func<DbConnection, DbTransaction, Task<T>> work, CancellationToken cancel)
    {
        for (int attempt = 1; ; attempt++)
        {
            await using DbConnection connection = await _dialect.OpenAsync(cancel).ConfigureAwait(false);
            try
            {
                await using DbTransaction transaction = await connection.BeginTransactionAsync(System.Data.IsolationLevel.Serializable, cancel).ConfigureAwait(false);
                T result = await work(connection, transaction).ConfigureAwait(false);
                await transaction.CommitAsync(cancel).ConfigureAwait(false);
                return result;
            }
            catch (DbException e) when (_dialect.IsBusy(e) && attempt < 20)
            {
                await Task.Delay(TimeSpan.FromMilliseconds(10 * attempt), _clock, cancel).ConfigureAwait(false);
            }
            catch (DbException e)
            {
                throw new StoreException($"It could not be saved: {e.Message} Nothing was half-written.", e);
            }
        }
    }
}
