using System.CommandLine;
using Coulisse.Store;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse restore FILE: a backup in the place of the embedded store; the old file stays beside it.</summary>
internal static class RestoreCommand
{
    public static Command Create()
    {
        Argument<string> file = new("FILE") { Description = "A file that 'coulisse backup' wrote" };
        Command command = new("restore", "Puts a backup in the place of the embedded store; the old file is kept beside it. Stop the bench first. With --store it goes into an empty PostgreSQL database.\nExample: coulisse restore kitchen-2026-11-25.db") { file, StoreOptions.Data, StoreOptions.Connection };
        command.SetAction(async (parsed, cancel) =>
        {
            try
            {
                string hash = parsed.GetValue(StoreOptions.Connection) is { } database
                    ? await KitchenStore.RestoreIntoAsync(database, parsed.GetRequiredValue(file), TimeProvider.System, cancel).ConfigureAwait(false)
                    : await KitchenStore.RestoreAsync(parsed.GetValue(StoreOptions.Data) ?? StoreOptions.DefaultFolder, parsed.GetRequiredValue(file), TimeProvider.System.GetUtcNow(), cancel).ConfigureAwait(false);
                await Console.Out.WriteLineAsync($"restored; rows {hash[..16]}").ConfigureAwait(false);
                return Exit.Done;
            }
            catch (StoreException e)
            {
                return Input.Fail(Exit.Storage, e.Message);
            }
        });
        return command;
    }
}
