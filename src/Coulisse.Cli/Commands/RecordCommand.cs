using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Trials;
using Coulisse.Store;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse record: what became of an occasion's food.</summary>
internal static class RecordCommand
{
    public static Command Create() => new("record", "A production record: planned, prepared, served, left, waste.\nExample: coulisse record sheet examples/demo/occasion.md > record.md") { Sheet(), Keep(), List() };

    private static Command Sheet()
    {
        Argument<string> occasion = new("OCCASION") { Description = "Occasion sheet" };
        Option<string[]> trials = TrialFiles.Option();
        Command command = new("sheet", "Prints a sheet to fill in, with what is planned.\nExample: coulisse record sheet examples/demo/occasion.md > record.md") { occasion, trials };
        command.SetAction(parsed => PlanCommand.Load([parsed.GetRequiredValue(occasion)], null, out int exit, parsed.GetValue(trials)) is { } o
            ? OccasionBatches.Make(o).Match(
                batches =>
                {
                    Console.OutputEncoding = new UTF8Encoding(false);
                    Console.Out.Write(ProductionRecord.Blank(o, batches));
                    return Exit.Done;
                },
                problems => Input.Fail(parsed.GetRequiredValue(occasion), problems))
            : exit);
        return command;
    }

    private static Command Keep()
    {
        Argument<string> sheet = new("SHEET") { Description = "The filled sheet" };
        Option<string?> occasion = new("--occasion") { Description = "Title or key of the kept occasion, or its file (default: the one the sheet names)" };
        Option<string> by = new("--by") { Description = "Who keeps it", DefaultValueFactory = _ => "command line" };
        Command command = new("keep", "Keeps a filled sheet beside its occasion.\nExample: coulisse record keep record.md --occasion examples/demo/occasion.md") { sheet, occasion, by, StoreOptions.Data, StoreOptions.Connection, StoreOptions.Kitchen };
        command.SetAction((parsed, cancel) => StoreOptions.WithStoreAsync(parsed, async store =>
        {
            if (Input.Bytes(parsed.GetRequiredValue(sheet), out int exit) is not { } bytes)
            {
                return exit;
            }

            string text = Encoding.UTF8.GetString(bytes);
            if (ProductionRecord.Read(text) is not Parsed<ProductionRecord>.Ok(var record))
            {
                return Input.Fail(parsed.GetRequiredValue(sheet), ((Parsed<ProductionRecord>.Failed)ProductionRecord.Read(text)).Problems);
            }

            string name = parsed.GetValue(occasion) ?? record.Occasion;
            if (await KeptByName.FindAsync(store, DocumentKind.Occasion, name, parsed.GetValue(by), cancel).ConfigureAwait(false) is not { } id)
            {
                return Input.Fail(Exit.Problems, $"There is no kept occasion “{name}”. Name it, or its file, with --occasion.");
            }

            string plan = (await store.NewestPlanAsync(id, cancel).ConfigureAwait(false))?.Id ?? "";
            await Console.Out.WriteLineAsync("kept as record " + await store.KeepRecordAsync(null, "Record of " + record.Occasion, text, parsed.GetValue(by)!, id, plan, cancel).ConfigureAwait(false)).ConfigureAwait(false);
            return Exit.Done;
        }, cancel));
        return command;
    }

    private static Command List()
    {
        Argument<string> words = new("WORDS") { Description = "Words of the record; none for all", Arity = ArgumentArity.ZeroOrOne };
        Command command = new("list", "Kept records, by the beginnings of words.\nExample: coulisse record list") { words, StoreOptions.Data, StoreOptions.Connection, StoreOptions.Kitchen };
        command.SetAction((parsed, cancel) => StoreOptions.WithStoreAsync(parsed, async store =>
        {
            foreach (DocumentHead head in await store.SearchAsync(DocumentKind.Record, parsed.GetValue(words) ?? "", 500, cancel).ConfigureAwait(false))
            {
                await Console.Out.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{head.Id}  {head.Changed:yyyy-MM-dd}  {head.Title}")).ConfigureAwait(false);
            }

            return Exit.Done;
        }, cancel));
        return command;
    }
}
