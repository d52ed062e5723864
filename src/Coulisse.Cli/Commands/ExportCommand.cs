using System.CommandLine;
using Coulisse.Flows;
using Coulisse.Store;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse export FILE: every text with all its versions in one zip a person can read.</summary>
internal static class ExportCommand
{
    public static Command Create()
    {
        Argument<string> file = new("FILE") { Description = "New zip file" };
        Command command = new("export", "Writes every card, sheet and price list with all versions into one zip of readable texts, the newest of each as JSON with its schema beside it.\nExample: coulisse export cards.zip") { file, StoreOptions.Data, StoreOptions.Connection, StoreOptions.Kitchen };
        command.SetAction((parsed, cancel) => StoreOptions.WithStoreAsync(parsed, async store =>
        {
            await using FileStream zip = new(parsed.GetRequiredValue(file), FileMode.CreateNew);
            await Archive.ExportAsync(store, zip, ExportForms.Of(LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().Date)), cancel).ConfigureAwait(false);
            return Exit.Done;
        }, cancel));
        return command;
    }
}
