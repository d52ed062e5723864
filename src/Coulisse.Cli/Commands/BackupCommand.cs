using System.CommandLine;
using Coulisse.Store;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse backup FILE: a proven copy of the store, taken while it is in use.</summary>
internal static class BackupCommand
{
    public static Command Create()
    {
        Argument<string> file = new("FILE") { Description = "New file; an existing one is never overwritten" };
        Option<bool> prove = new("--restore") { Description = "Also restore it into a folder of its own, open it and compare every row" };
        Command command = new("backup", "Writes a backup of either store as one file and proves it by reading it back.\nExample: coulisse backup kitchen-2026-11-25.db") { file, prove, StoreOptions.Data, StoreOptions.Connection, StoreOptions.Kitchen };
        command.SetAction((parsed, cancel) => StoreOptions.WithStoreAsync(parsed, async store =>
        {
            string hash = await store.BackupAsync(parsed.GetRequiredValue(file), cancel).ConfigureAwait(false);
            if (parsed.GetValue(prove))
            {
                await KitchenStore.ProveAsync(parsed.GetRequiredValue(file), hash, TimeProvider.System, cancel).ConfigureAwait(false);
            }

            await Console.Out.WriteLineAsync($"backed up and read back equal{(parsed.GetValue(prove) ? ", restored and equal" : "")}; rows {hash[..16]}").ConfigureAwait(false);
            return Exit.Done;
        }, cancel));
        return command;
    }
}
