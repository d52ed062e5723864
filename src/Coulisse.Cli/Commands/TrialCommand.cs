using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Trials;
using Coulisse.Store;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse trial: a version of a card, made, and what repeats tell.</summary>
internal static class TrialCommand
{
    public static Command Create() => new("trial", "A trial is a version of a card, made: what was weighed, how long it took, what came out, how it was judged.\nExample: coulisse trial sheet card.md > trial.md") { Sheet(), Keep(), List(), Summary() };

    private static Command Sheet()
    {
        Argument<string> card = new("CARD") { Description = "Card to be made; - for standard input" };
        Option<double> times = new("--times") { Description = "How many times the card's amount", DefaultValueFactory = _ => 1 };
        Command command = new("sheet", "Prints a sheet to fill in: the card's lines, steps and parts with room beside each.\nExample: coulisse trial sheet card.md --times 2 > trial.md") { card, times };
        command.SetAction(parsed => parsed.GetValue(times) is > 0 and <= 1000 and var factor
            ? WeighCommand.Read(parsed.GetRequiredValue(card), null, weighed =>
            {
                Console.OutputEncoding = new UTF8Encoding(false);
                Console.Out.Write(BlankTrial.Of(weighed, factor));
                return Exit.Done;
            })
            : Input.Fail(Exit.Usage, "--times is a number above 0 and at most 1000."));
        return command;
    }

    private static Command Keep()
    {
        Argument<string> sheet = new("SHEET") { Description = "The filled sheet" };
        Option<string?> card = new("--card") { Description = "Title or key of the kept card, or a card file to keep with it (default: the card the sheet names)" };
        Option<string[]> photos = new("--photo") { Description = "Photograph beside it (JPEG, PNG, WebP, 10 MB at most; place, time and owner are taken out)" };
        Option<string[]> probes = new("--probe") { Description = "A probe's file of times and temperatures" };
        Option<string> by = new("--by") { Description = "Who keeps it", DefaultValueFactory = _ => "command line" };
        Command command = new("keep", "Keeps a filled sheet beside its card.\nExample: coulisse trial keep trial.md --card card.md --photo plate.jpg") { sheet, card, photos, probes, by, StoreOptions.Data, StoreOptions.Connection, StoreOptions.Kitchen };
        command.SetAction((parsed, cancel) => StoreOptions.WithStoreAsync(parsed, store => KeepAsync(store, parsed.GetRequiredValue(sheet), parsed.GetValue(card), parsed.GetValue(photos) ?? [], parsed.GetValue(probes) ?? [], parsed.GetValue(by)!, cancel), cancel));
        return command;
    }

    private static async Task<int> KeepAsync(KitchenStore store, string sheet, string? card, string[] photos, string[] probes, string by, CancellationToken cancel)
    {
        if (Input.Bytes(sheet, out int exit) is not { } bytes)
        {
            return exit;
        }

        string text = Encoding.UTF8.GetString(bytes);
        if (TrialSheet.Read(text) is not Parsed<Trial>.Ok(var trial))
        {
            return Input.Fail(sheet, ((Parsed<Trial>.Failed)TrialSheet.Read(text)).Problems);
        }

        if (await KeptByName.FindAsync(store, DocumentKind.Card, card ?? trial.Card, by, cancel).ConfigureAwait(false) is not { } id)
        {
            return Input.Fail(Exit.Problems, $"There is no kept card “{card ?? trial.Card}”. Name it, or its file, with --card.");
        }

        TrialShelf shelf = new(store);
        if (await shelf.KeepAsync(null, id, text, by, cancel).ConfigureAwait(false) is not Parsed<string>.Ok(var key))
        {
            return Input.Fail(sheet, ((Parsed<string>.Failed)await shelf.KeepAsync(null, id, text, by, cancel).ConfigureAwait(false)).Problems);
        }

        int failed = Exit.Done;
        foreach ((string file, bool photo) in photos.Select(p => (p, true)).Concat(probes.Select(p => (p, false))))
        {
            if (Input.Bytes(file, out int unread) is not { } content)
            {
                failed = unread;
                continue;
            }

            Parsed<string> kept = photo ? await shelf.PhotographAsync(key, file, content, cancel).ConfigureAwait(false) : await shelf.ProbeAsync(key, file, content, cancel).ConfigureAwait(false);
            failed = kept.Match(_ => failed, problems => Input.Fail(file, problems));
        }

        await Console.Out.WriteLineAsync("kept as trial " + key).ConfigureAwait(false);
        return failed;
    }

    private static Command List()
    {
        Argument<string> card = new("CARD") { Description = "Title or key of a kept card" };
        Command command = new("list", "Trials of a kept card, the newest first.\nExample: coulisse trial list \"Leek soup\"") { card, StoreOptions.Data, StoreOptions.Connection, StoreOptions.Kitchen };
        command.SetAction((parsed, cancel) => StoreOptions.WithStoreAsync(parsed, async store =>
        {
            if (await KeptByName.FindAsync(store, DocumentKind.Card, parsed.GetRequiredValue(card), null, cancel).ConfigureAwait(false) is not { } id)
            {
                return Input.Fail(Exit.Problems, $"There is no kept card “{parsed.GetRequiredValue(card)}”.");
            }

            foreach ((KeptTrial kept, Trial trial) in await new TrialShelf(store).OfAsync(id, cancel).ConfigureAwait(false))
            {
                int files = (await store.FilesAsync(kept.Id, cancel).ConfigureAwait(false)).Count;
                await Console.Out.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{kept.Id}  version {kept.CardVersion}  {trial.Made?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? "no day"}  {trial.By}  {trial.Good switch { true => "good run", false => "not a good run", null => "not judged" }}{(files > 0 ? FormattableString.Invariant($"  {files} files") : "")}")).ConfigureAwait(false);
            }

            return Exit.Done;
        }, cancel));
        return command;
    }

    private static Command Summary()
    {
        Argument<string[]> sheets = new("SHEET") { Description = "Filled sheets of one version; none with --card", Arity = ArgumentArity.ZeroOrMore };
        Option<string?> card = new("--card") { Description = "Title or key of a kept card: its newest tried version" };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("summary", "Mean and spread over repeats, and whether the version is standardised (three good runs, the same yield).\nExample: coulisse trial summary first.md second.md third.md") { sheets, card, json, StoreOptions.Data, StoreOptions.Connection, StoreOptions.Kitchen };
        command.SetAction(async (parsed, cancel) =>
        {
            string[] files = parsed.GetValue(sheets) ?? [];
            if (parsed.GetValue(card) is { } name)
            {
                return await StoreOptions.WithStoreAsync(parsed, async store => await KeptByName.FindAsync(store, DocumentKind.Card, name, null, cancel).ConfigureAwait(false) is { } id && await new TrialShelf(store).SummaryAsync(id, null, cancel).ConfigureAwait(false) is { } summary
                    ? Print(summary, parsed.GetValue(json))
                    : Input.Fail(Exit.Problems, $"There is no kept card “{name}” with trials."), cancel).ConfigureAwait(false);
            }

            return TrialFiles.Read(files, out int exit) is { } trials ? trials.Count == 0 ? Input.Fail(Exit.Usage, "Name filled sheets, or a kept card with --card.") : Print(TrialSummary.Of(trials), parsed.GetValue(json)) : exit;
        });
        return command;
    }

    private static int Print(TrialSummary s, bool json)
    {
        if (json)
        {
            return Input.Json(new { schema = "coulisse/trial-summary/1", trials = s.Trials, good = s.Good, standardised = s.Standardised, why = s.Why, figures = s.Figures.Select(f => new { what = f.What, unit = f.Unit, count = f.Count, mean = f.Mean, deviation = f.Deviation, least = f.Least, most = f.Most }) });
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{s.Trials} trials. {(s.Standardised ? "Standardised: " : "Not standardised: ")}{s.Why}"));
        foreach (Repeated f in s.Figures)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {f.Mean,8:0.#} {f.Unit,-5} {(f.Deviation is { } d ? FormattableString.Invariant($"± {d:0.#}, {f.Least:0.#} to {f.Most:0.#}, {f.Count} times") : "once, which tells no spread"),-34} {f.What}"));
        }

        return Exit.Done;
    }
}
