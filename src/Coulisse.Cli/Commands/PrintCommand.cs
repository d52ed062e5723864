using System.Collections.Immutable;
using System.CommandLine;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;
using Coulisse.Papers;
using Coulisse.Papers.Pages;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse print OCCASION|CARD --out DIR: the papers of an occasion, planned first, or of one card.</summary>
internal static class PrintCommand
{
    private sealed record Asked(string Path, string Folder, PaperChoice Choice, string As, string? Code, double Seconds, bool Stale, bool Json, PrintWish Wish, bool IfThen);

    public static Command Create()
    {
        Argument<string> card = new("WHAT") { Description = "Occasion sheet, or a card; - for a card on standard input" };
        Option<string> folder = new("--out") { Description = "Folder to print into; made when it is not there", Required = true };
        Option<string?> papers = new("--papers") { Description = "Kinds of papers, with commas between: " + string.Join(", ", PaperShelf.Kinds) };
        Option<string> form = new("--as", "--format") { Description = "pdf, html, or for a table or calendar: xlsx, csv, ics, json; jsonld for the cards as schema.org data", DefaultValueFactory = _ => "pdf" };
        form.AcceptOnlyFromAmong("pdf", "html", "xlsx", "csv", "ics", "json", "jsonld");
        Option<string> sheet = new("--sheet") { Description = "a4 or letter", DefaultValueFactory = _ => "a4" };
        sheet.AcceptOnlyFromAmong("a4", "letter");
        Option<string?> labels = new("--labels") { Description = "Label sheet: " + string.Join(", ", LabelSheet.All.Select(l => l.Name)) + "; eight to cut out when left out" };
        labels.AcceptOnlyFromAmong([.. LabelSheet.All.Select(l => l.Name)]);
        Option<string[]> people = new("--people") { Description = "Only sheets of these people" };
        Option<string[]> days = new("--days") { Description = "Only mise en place lists of these days, 2026-10-09" };
        Option<int> copies = new("--copies") { Description = "Copies of each sheet in its file", DefaultValueFactory = _ => 1 };
        Option<bool> bundle = new("--bundle") { Description = "All sheets in one PDF" };
        Option<double?> covers = new("--covers") { Description = "Scale a card to this many covers; as written when left out" };
        Option<string?> prices = new("--prices") { Description = "Price list for order and cost" };
        Option<string?> code = new("--code") { Description = "Code of practice: au, nz, uk, eu, us; the sheet's own when left out" };
        code.AcceptOnlyFromAmong("au", "nz", "uk", "eu", "us");
        Option<bool> stale = new("--stale") { Description = "Print only the sheets that say something else than those last printed into the folder, and a note of what changed for each helper" };
        Option<double> seconds = new("--seconds") { Description = "Time to look for a better plan", DefaultValueFactory = _ => 10 };
        Option<bool> ifThen = new("--if-then") { Description = "Solve every single failure of kit, absence of a person and short delay, for the if-then sheet; takes a while" };
        Option<bool> large = new("--large") { Description = "Large print: no running text under 18 pt" };
        Option<string?> home = new("--home") { Description = "Spoons and cups of the handout: au, nz, uk, us, jp, metric; those of the code's country when left out" };
        home.AcceptOnlyFromAmong("au", "nz", "uk", "us", "jp", "metric");
        Option<string?> measures = WeighCommand.Measures();
        OrderTermsOptions terms = new();
        Option<string[]> trials = TrialFiles.Option();
        Option<string[]> extra = OrderCommand.ExtraOption();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("print", "Prints the papers of an occasion or of a card.\nExample: coulisse print examples/demo/occasion.md --prices examples/demo/prices.csv --out papers") { card, folder, prices, seconds, papers, form, sheet, labels, people, days, copies, bundle, covers, code, stale, ifThen, large, home, measures, trials, extra, json };
        terms.AddTo(command);
        command.SetAction(parsed =>
        {
            ImmutableArray<string> kinds = [.. (parsed.GetValue(papers) ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
            if (kinds.FirstOrDefault(k => !PaperShelf.Kinds.Contains(k)) is { } strange)
            {
                return Input.Fail(Exit.Usage, $"there is no paper \"{strange}\"; there are {string.Join(", ", PaperShelf.Kinds)}.");
            }

            if (AddedNeeds.Read(parsed.GetValue(extra) ?? []) is not { } added)
            {
                return Input.Fail(Exit.Usage, OrderCommand.ExtraWrong);
            }

            if (parsed.GetValue(copies) is < 1 or > 99)
            {
                return Input.Fail(Exit.Usage, "--copies is a number from 1 to 99.");
            }

            string path = parsed.GetRequiredValue(card);
            string where = parsed.GetRequiredValue(folder);
            PaperChoice choice = new()
            {
                Kinds = kinds, Large = parsed.GetValue(large), Format = parsed.GetValue(sheet) == "letter" ? PageFormat.Letter : PageFormat.A4, Labels = parsed.GetValue(labels) is { } l ? LabelSheet.Find(l) : null,
                People = [.. parsed.GetValue(people) ?? []], Days = [.. parsed.GetValue(days) ?? []], Copies = parsed.GetValue(copies), OneFile = parsed.GetValue(bundle),
            };
            Asked asked = new(path, where, choice, parsed.GetRequiredValue(form), parsed.GetValue(code), parsed.GetValue(seconds), parsed.GetValue(stale), parsed.GetValue(json), new(), parsed.GetValue(ifThen));
            if (IsSheet(path))
            {
                return PlanCommand.Load([path], null, out int exit, parsed.GetValue(trials)) is not { } occasion ? exit
                    : Wish(parsed.GetValue(prices), occasion.Sheet.Currency, terms.Read(parsed, out exit), ref exit) is { } wish ? Occasion(asked with { Wish = wish with { Extra = added, HomeMeasures = parsed.GetValue(home), Translations = TranslateCommand.Stored(path, occasion) } }, occasion) : exit;
            }

            int failed = Exit.Done;
            return Wish(parsed.GetValue(prices), null, new OrderTerms(), ref failed) is not { } cardWish ? failed : WeighCommand.Read(path, parsed.GetValue(measures), weighed => AssessFlow.Assess(weighed.Dish, parsed.GetValue(covers) is { } n ? new ScaleTo.Covers(n) : null, parsed.GetValue(measures), asked.Code ?? CodeOfPractice.Usual).Match(
                assessed => Give(asked, PrintFlow.Bundle(assessed, Now(), cardWish with { Extra = added, HomeMeasures = parsed.GetValue(home) })),
                problems => Input.Fail(path, problems)));
        });
        return command;
    }

    private static PrintWish? Wish(string? prices, string? currency, OrderTerms? terms, ref int exit)
    {
        if (terms is null)
        {
            return null;
        }

        if (prices is null)
        {
            return new PrintWish { Terms = terms };
        }

        return PriceFile.Read(prices, currency, out exit) is { } list ? new PrintWish { Prices = list, Terms = terms } : null;
    }

    private static LocalDateTime Now() => LocalDateTime.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);

    /// <summary>A sheet has a list of dishes and of hands or kit; a card has neither.</summary>
    private static bool IsSheet(string path)
    {
        string[] heads = path != "-" && File.Exists(path) ? [.. File.ReadLines(path).Where(l => l.StartsWith("##", StringComparison.Ordinal)).Select(l => l.Trim('#', ' ').ToLowerInvariant())] : [];
        return heads.Contains("dishes") && heads.Any(h => h is "hands" or "people" or "kit" or "what is shown");
    }

    private static int Occasion(Asked asked, Kitchen.Occasions.Occasion occasion)
    {
        CodeOfPractice code = asked.Code is { } own ? new(own, true, "asked for") : CodeOfPractice.Of(occasion);
        if (!code.Stated)
        {
            Console.Error.WriteLine($"coulisse: {code.Because}; --code says otherwise.");
        }

        return PlanFlow.Plan(occasion, new PlanOptions(asked.Seconds), code.Code).Match(
            p =>
            {
                PrintWish wish = asked.IfThen && p.Outcome is Plan plan ? asked.Wish with { IfThens = PlanStudy.IfThen(p, plan, new PlanOptions(Math.Min(asked.Seconds, 2)), c => Console.Error.WriteLine($"{c.WhatFails}: {c.Answer}")) } : asked.Wish;
                int done = Give(asked, PrintFlow.Bundle(p, Now(), wish));
                return p.Outcome is Plan && p.Faults.IsEmpty ? done : Math.Max(done, Input.Fail(Exit.Problems, p.Outcome switch
                {
                    NoPlan no => "no plan exists, so only what needs no plan was printed: " + string.Join("; ", no.Conflicts),
                    NotYet yet => "no plan was found in the time given, so only what needs no plan was printed: " + yet.Why,
                    _ => "the plan has faults; they are printed on its sheets: " + string.Join("; ", p.Faults.Select(f => f.Words)),
                }));
            },
            problems => Input.Fail(asked.Path, problems));
    }

    private static int Give(Asked asked, PaperBundle bundle)
    {
        try
        {
            int done = PrintReport.Say(bundle, PrintOut.Write(bundle, asked.Choice, asked.Folder, asked.As, asked.Stale), asked.Json);
            ImmutableArray<Cards.Problem> problems = PrintFlow.Problems(bundle);
            return problems.IsEmpty ? done : Input.Fail(asked.Path, problems);
        }
        catch (FormatException e)
        {
            return Input.Fail(Exit.Problems, e.Message);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Input.Fail(Exit.Storage, $"{asked.Folder} cannot be written: {e.Message}");
        }
    }
}
