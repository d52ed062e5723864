using System.CommandLine;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse backup FILE: a proven copy of the embedded store, taken while it is in use.</summary>
internal static class BackupCommand
{
    public static Command Create()
    {
        Argument<string> file = new("FILE") { Description = "New file; an existing one is never overwritten" };
        Command command = new("backup", "Writes a backup of the embedded store and proves it by reading it back.\nExample: coulisse backup kitchen-2026-11-25.db") { file, StoreOptions.Data, StoreOptions.Connection };
        command.SetAction((parsed, cancel) => StoreOptions.WithStoreAsync(parsed, async store =>
        {
            string hash = await store.BackupAsync(parsed.GetRequiredValue(file), cancel).ConfigureAwait(false);
            await Console.Out.WriteLineAsync($"backed up and read back equal; rows {hash[..16]}").ConfigureAwait(false);
            return Exit.Done;
        }, cancel));
        return command;
    }
}
