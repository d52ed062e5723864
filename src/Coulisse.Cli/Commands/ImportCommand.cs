using System.CommandLine;
using Coulisse.Store;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse import FILE: merges an export; nothing here is overwritten.</summary>
internal static class ImportCommand
{
    public static Command Create()
    {
        Argument<string> file = new("FILE") { Description = "A zip that 'coulisse export' wrote" };
        Command command = new("import", "Merges an export into the store. Where texts differ both are kept and the card is named.\nExample: coulisse import cards.zip") { file, StoreOptions.Data, StoreOptions.Connection, StoreOptions.Kitchen };
        command.SetAction((parsed, cancel) => StoreOptions.WithStoreAsync(parsed, async store =>
        {
            await using FileStream zip = File.OpenRead(parsed.GetRequiredValue(file));
            Archive.Import done = await Archive.ImportAsync(store, zip, "import", cancel).ConfigureAwait(false);
            await Console.Out.WriteLineAsync(FormattableString.Invariant($"{done.Added} new, {done.Same} the same, {done.Conflicts.Count} that differ (both texts kept)")).ConfigureAwait(false);
            foreach (string title in done.Conflicts)
            {
                await Console.Out.WriteLineAsync("  differs: " + title).ConfigureAwait(false);
            }

            return Exit.Done;
        }, cancel));
        return command;
    }
}
