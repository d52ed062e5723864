using System.Data.Common;

namespace Coulisse.Store;

/// <content>Moving between the databases: every row, from one moment, into a store that is empty.</content>
public sealed partial class KitchenStore
{
    // Rows that refer to others come after them; the search table is copied, too, since what it holds is folded already.
    private static IEnumerable<string> Copied => [.. TableNames, "search_text (document_id, kind, title, body)"];

    /// <summary>Copies every row of every kitchen into an empty store of either kind, and proves it by the hash of all rows.</summary>
    /// <param name="target">A store that holds nothing yet.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The hash of all rows.</returns>
    /// <exception cref="StoreException">The target holds something, cannot be written, or does not read back equal; it is left empty then.</exception>
    public async Task<string> CopyIntoAsync(KitchenStore target, CancellationToken cancel = default)
    {
        try
        {
            await using DbConnection from = await _dialect.OpenAsync(cancel).ConfigureAwait(false);
            await using DbTransaction moment = await from.BeginTransactionAsync(System.Data.IsolationLevel.RepeatableRead, cancel).ConfigureAwait(false);
            await using DbConnection to = await target._dialect.OpenAsync(cancel).ConfigureAwait(false);
            await using DbTransaction all = await to.BeginTransactionAsync(cancel).ConfigureAwait(false);
            foreach (string table in TableNames)
            {
                if (await ScalarAsync<long>(to, all, $"SELECT COUNT(*) FROM {table}", cancel).ConfigureAwait(false) > 0)
                {
                    throw new StoreException($"The store to copy into is not empty ({table} holds rows); nothing was copied. Name a new folder or an empty database.");
                }
            }

            foreach (string table in Copied)
            {
                await CopyTableAsync(from, moment, to, all, table, cancel).ConfigureAwait(false);
            }

            string before = await RowHashAsync(from, moment, _dialect.Ordered, cancel).ConfigureAwait(false);
            if (await RowHashAsync(to, all, target._dialect.Ordered, cancel).ConfigureAwait(false) != before)
            {
                throw new StoreException("The copy did not read back equal to the store; it was thrown away.");
            }

            await all.CommitAsync(cancel).ConfigureAwait(false);
            return before;
        }
        catch (DbException e)
        {
            throw new StoreException($"The store could not be copied: {e.Message} The other store was left empty.", e);
        }
    }

    private static async Task CopyTableAsync(DbConnection from, DbTransaction moment, DbConnection to, DbTransaction all, string table, CancellationToken cancel)
    {
        string name = table.Split(' ')[0];
        string columns = table.Contains('(', StringComparison.Ordinal) ? table[(table.IndexOf('(', StringComparison.Ordinal) + 1)..^1] : "*";
        await using DbCommand read = Command(from, moment, $"SELECT {columns} FROM {name}", []);
        await using DbDataReader reader = await read.ExecuteReaderAsync(cancel).ConfigureAwait(false);
        string[] names = [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetName)];
        await using DbCommand write = Command(to, all, $"INSERT INTO {name} ({string.Join(", ", names)}) VALUES ({string.Join(", ", names.Select(n => "@" + n))})", [.. names.Select(n => (n, (object)DBNull.Value))]);
        while (await reader.ReadAsync(cancel).ConfigureAwait(false))
        {
            for (int i = 0; i < names.Length; i++)
            {
                write.Parameters[i].Value = reader.GetValue(i);
            }

            await write.ExecuteNonQueryAsync(cancel).ConfigureAwait(false);
        }
    }

    /// <summary>A PostgreSQL store as a backup file of the embedded kind, so that one 'restore' serves both.</summary>
    private async Task<string> BackupByCopyAsync(string file, CancellationToken cancel)
    {
        string folder = file + ".part";
        try
        {
            Directory.CreateDirectory(folder);
            string hash;
            await using (KitchenStore embedded = await OpenAsync(folder, _clock, _kitchen, cancel).ConfigureAwait(false))
            {
                hash = await CopyIntoAsync(embedded, cancel).ConfigureAwait(false);
                await using DbConnection connection = await embedded._dialect.OpenAsync(cancel).ConfigureAwait(false);
                // everything into the one file, since the log beside it is left behind
                await ExecuteAsync(connection, null, "PRAGMA wal_checkpoint(TRUNCATE)", cancel).ConfigureAwait(false);
            }

            File.Move(FileIn(folder), file);
            return hash;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreException($"The backup could not be written to {file}: {e.Message}", e);
        }
        finally
        {
            if (Directory.Exists(folder))
            {
                Directory.Delete(folder, true);
            }
        }
    }

    /// <summary>Puts a backup into an empty PostgreSQL database.</summary>
    /// <param name="where">Connection string.</param>
    /// <param name="backup">The backup file.</param>
    /// <param name="clock">Clock of the store.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The hash of all rows.</returns>
    /// <exception cref="StoreException">The backup is missing or damaged, or the database holds something.</exception>
    public static async Task<string> RestoreIntoAsync(string where, string backup, TimeProvider clock, CancellationToken cancel = default)
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-restore-").FullName;
        try
        {
            string hash = await RestoreAsync(folder, backup, clock.GetUtcNow(), cancel).ConfigureAwait(false);
            await using KitchenStore source = await OpenAsync(folder, clock, cancel: cancel).ConfigureAwait(false);
            await using KitchenStore target = await OpenAsync(where, clock, cancel: cancel).ConfigureAwait(false);
            string copied = await source.CopyIntoAsync(target, cancel).ConfigureAwait(false);
            return copied == hash ? copied : throw new StoreException("The restored rows are not those of the backup.");
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    /// <summary>Restores a backup into a folder of its own, opens it as the program would, and compares every row; the folder is gone afterwards.</summary>
    /// <param name="backup">The backup file.</param>
    /// <param name="hash">The hash the backup gave.</param>
    /// <param name="clock">Clock of the store.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="StoreException">It does not restore, or not to the same rows.</exception>
    public static async Task ProveAsync(string backup, string hash, TimeProvider clock, CancellationToken cancel = default)
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-proof-").FullName;
        try
        {
            await RestoreAsync(folder, backup, clock.GetUtcNow(), cancel).ConfigureAwait(false);
            await using KitchenStore restored = await OpenAsync(folder, clock, cancel: cancel).ConfigureAwait(false);
            if (await restored.RowHashAsync(cancel).ConfigureAwait(false) != hash)
            {
                throw new StoreException($"The backup {backup} does not restore to the rows it was made of.");
            }
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }
}
