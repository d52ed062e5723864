using System.Data.Common;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;

namespace Coulisse.Store;

/// <content>Backups of the embedded store, taken while it is in use and proven by reading them back.</content>
public sealed partial class KitchenStore
{
    // In the order in which rows refer to each other.
    private static readonly (string Table, string Order)[] Tables =
    [
        ("document", "id"), ("document_version", "document_id, version"), ("plan", "id"), ("run", "id"), ("live_event", "run_id, id"),
        ("trial", "id"), ("control_log", "kitchen, seq"), ("setting", "kitchen, key"),
        ("person", "id"), ("passkey", "credential"), ("session", "id"), ("link", "id"), ("audit_log", "kitchen, seq"), ("record", "id"), ("attachment", "id"),
    ];

    /// <summary>Writes a backup file beside which nothing else is needed, and proves it: every row of every table hashes to the same.</summary>
    /// <param name="file">New file; an existing one is refused.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The hash of all rows.</returns>
    /// <exception cref="StoreException">The file exists or cannot be written, or the proof failed.</exception>
    public async Task<string> BackupAsync(string file, CancellationToken cancel = default)
    {
        if (File.Exists(file))
        {
            throw new StoreException($"{file} exists. A backup never overwrites: name a new file.");
        }

        if (_dialect is not Dialects.SqliteDialect)
        {
            return await BackupByCopyAsync(file, cancel).ConfigureAwait(false);
        }

        string part = file + ".part";
        string before;
        await using (SqliteConnection source = (SqliteConnection)await _dialect.OpenAsync(cancel).ConfigureAwait(false))
        {
            try
            {
                File.Delete(part);
                await using (SqliteConnection target = new(new SqliteConnectionStringBuilder { DataSource = part, Pooling = false }.ConnectionString))
                {
                    await target.OpenAsync(cancel).ConfigureAwait(false);
                    // One read transaction, so that the copy and the hash are of one moment.
                    await using DbTransaction moment = source.BeginTransaction(deferred: true);
                    before = await RowHashAsync(source, moment, c => c, cancel).ConfigureAwait(false);
                    source.BackupDatabase(target);
                    string after = await RowHashAsync(target, null, c => c, cancel).ConfigureAwait(false);
                    if (after != before)
                    {
                        throw new StoreException("The backup did not read back equal to the store; it was thrown away. Try again when fewer people are writing.");
                    }
                }

                File.Move(part, file);
            }
            catch (StoreException)
            {
                File.Delete(part);
                throw;
            }
            catch (Exception e) when (e is SqliteException or IOException or UnauthorizedAccessException)
            {
                if (File.Exists(part))
                {
                    File.Delete(part);
                }

                throw new StoreException($"The backup could not be written to {file}: {e.Message}", e);
            }
        }

        return before;
    }

    /// <summary>Puts a backup in the place of an embedded store that nobody has open; the old file is kept beside it.</summary>
    /// <param name="folder">The store's folder.</param>
    /// <param name="backup">The backup file.</param>
    /// <param name="stamp">Moment, for the name under which the old file is kept.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The hash of all rows, to compare with the one the backup printed.</returns>
    /// <exception cref="StoreException">The backup is missing or damaged.</exception>
    public static async Task<string> RestoreAsync(string folder, string backup, DateTimeOffset stamp, CancellationToken cancel = default)
    {
        if (!File.Exists(backup))
        {
            throw new StoreException($"There is no backup {backup}.");
        }

        string target = FileIn(folder);
        string incoming = target + ".incoming";
        try
        {
            File.Copy(backup, incoming, true);
            string hash;
            await using (SqliteConnection check = new(new SqliteConnectionStringBuilder { DataSource = incoming, Pooling = false }.ConnectionString))
            {
                await check.OpenAsync(cancel).ConfigureAwait(false);
                if (await ScalarAsync<string>(check, null, "PRAGMA quick_check(1)", cancel).ConfigureAwait(false) != "ok")
                {
                    throw new StoreException($"The backup {backup} is damaged. Nothing was changed.");
                }

                hash = await RowHashAsync(check, null, c => c, cancel).ConfigureAwait(false);
            }

            if (File.Exists(target))
            {
                File.Move(target, $"{target}.before-{stamp.ToUnixTimeSeconds().ToString(System.Globalization.CultureInfo.InvariantCulture)}", true);
            }

            // A log of the old file must not be replayed into the new one.
            File.Delete(target + "-wal");
            File.Delete(target + "-shm");
            File.Move(incoming, target);
            return hash;
        }
        catch (Exception e) when (e is SqliteException or IOException or UnauthorizedAccessException)
        {
            File.Delete(incoming);
            throw new StoreException($"The backup {backup} could not be restored: {e.Message} Nothing was changed.", e);
        }
    }

    /// <summary>Hash of every row of every table.</summary>
    public async Task<string> RowHashAsync(CancellationToken cancel = default)
    {
        await using DbConnection connection = await _dialect.OpenAsync(cancel).ConfigureAwait(false);
        return await RowHashAsync(connection, null, _dialect.Ordered, cancel).ConfigureAwait(false);
    }

    private static async Task<string> RowHashAsync(DbConnection connection, DbTransaction? transaction, Func<string, string> ordered, CancellationToken cancel)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach ((string table, string order) in Tables)
        {
            // a backup of an earlier form lacks tables that came later; its hash is of those it has
            if (connection is SqliteConnection && await ScalarAsync<long>(connection, transaction, "SELECT COUNT(*) FROM sqlite_master WHERE type = 'table' AND name = @t", cancel, ("t", table)).ConfigureAwait(false) == 0)
            {
                continue;
            }

            await HashTableAsync(hash, connection, transaction, table, ordered(order), cancel).ConfigureAwait(false);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>Hash of one table's rows; null when this store's form has no such table.</summary>
    internal async Task<string?> TableHashAsync(string table, CancellationToken cancel)
    {
        await using DbConnection connection = await _dialect.OpenAsync(cancel).ConfigureAwait(false);
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        try
        {
            await HashTableAsync(hash, connection, null, table, _dialect.Ordered(Tables.First(t => t.Table == table).Order), cancel).ConfigureAwait(false);
        }
        catch (DbException)
        {
            return null;
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>Names of all tables whose rows count.</summary>
    internal static IEnumerable<string> TableNames => Tables.Select(t => t.Table);

    private static async Task HashTableAsync(IncrementalHash hash, DbConnection connection, DbTransaction? transaction, string table, string order, CancellationToken cancel)
    {
        await using DbCommand command = Command(connection, transaction, $"SELECT * FROM {table} ORDER BY {order}", []);
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancel).ConfigureAwait(false);
        while (await reader.ReadAsync(cancel).ConfigureAwait(false))
        {
            for (int i = 0; i < reader.FieldCount; i++)
            {
                object value = reader.GetValue(i);
                hash.AppendData(value as byte[] ?? Encoding.UTF8.GetBytes(Convert.ToString(value, System.Globalization.CultureInfo.InvariantCulture)!));
                hash.AppendData([0x1f]);
            }
        }

        hash.AppendData([0x1e]);
    }
}
