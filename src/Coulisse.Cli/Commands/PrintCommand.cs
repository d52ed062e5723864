using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Planning;
using Coulisse.Papers;
using Coulisse.Papers.Html;
using Coulisse.Papers.Pages;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse print OCCASION|CARD --out DIR: the papers of an occasion, planned first, or of one card.</summary>
internal static class PrintCommand
{
    public static Command Create()
    {
        Argument<string> card = new("WHAT") { Description = "Occasion sheet, or a card; - for a card on standard input" };
        Option<string> folder = new("--out") { Description = "Folder to print into; made when it is not there", Required = true };
        Option<string?> papers = new("--papers") { Description = "Kinds of papers, with commas between: " + string.Join(", ", PaperShelf.Kinds) };
        Option<string> format = new("--format") { Description = "pdf or html", DefaultValueFactory = _ => "pdf" };
        format.AcceptOnlyFromAmong("pdf", "html");
        Option<string> sheet = new("--sheet") { Description = "a4 or letter", DefaultValueFactory = _ => "a4" };
        sheet.AcceptOnlyFromAmong("a4", "letter");
        Option<double?> covers = new("--covers") { Description = "Scale to this many covers; as written when left out" };
        Option<string?> prices = new("--prices") { Description = "Price list for the order of an occasion" };
        Option<double> seconds = new("--seconds") { Description = "Time to look for a better plan", DefaultValueFactory = _ => 10 };
        Option<bool> large = new("--large") { Description = "Large print: no running text under 18 pt" };
        Option<string?> measures = WeighCommand.Measures();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("print", "Prints the papers of an occasion or of a card.\nExample: coulisse print examples/demo/occasion.md --prices examples/demo/prices.csv --out papers") { card, folder, prices, seconds, papers, format, sheet, covers, large, measures, json };
        command.SetAction(parsed =>
        {
            ImmutableArray<string> kinds = [.. (parsed.GetValue(papers) ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
            if (kinds.FirstOrDefault(k => !PaperShelf.Kinds.Contains(k)) is { } strange)
            {
                return Input.Fail(Exit.Usage, $"there is no paper \"{strange}\"; there are {string.Join(", ", PaperShelf.Kinds)}.");
            }

            PaperChoice choice = new() { Kinds = kinds, Large = parsed.GetValue(large), Format = parsed.GetValue(sheet) == "letter" ? PageFormat.Letter : PageFormat.A4 };
            string path = parsed.GetRequiredValue(card);
            if (IsSheet(path))
            {
                return Occasion(path, parsed.GetValue(prices), parsed.GetValue(seconds), choice, parsed.GetRequiredValue(folder), parsed.GetValue(format) == "html", parsed.GetValue(json));
            }

            return WeighCommand.Read(path, parsed.GetValue(measures), weighed => AssessFlow.Assess(weighed.Dish, parsed.GetValue(covers) is { } n ? new ScaleTo.Covers(n) : null, parsed.GetValue(measures), "eu").Match(
                assessed => Write(Bundle(assessed), choice, parsed.GetRequiredValue(folder), parsed.GetValue(format) == "html", parsed.GetValue(json)),
                problems => Input.Fail(path, problems)));
        });
        return command;
    }

    private static PaperBundle Bundle(AssessedDish dish) => new() { Mark = new("", ""), Batches = [dish.Batch], Findings = [dish.Findings] };

    /// <summary>A sheet has a list of dishes and of hands or kit; a card has neither.</summary>
    private static bool IsSheet(string path)
    {
        string[] heads = path != "-" && File.Exists(path) ? [.. File.ReadLines(path).Where(l => l.StartsWith("##", StringComparison.Ordinal)).Select(l => l.Trim('#', ' ').ToLowerInvariant())] : [];
        return heads.Contains("dishes") && heads.Any(h => h is "hands" or "people" or "kit" or "what is shown");
    }

    private static int Occasion(string path, string? prices, double seconds, PaperChoice choice, string folder, bool html, bool json)
    {
        if (PlanCommand.Load([path], null, out int exit) is not { } occasion)
        {
            return exit;
        }

        Order? order = null;
        if (prices is not null)
        {
            if (PriceFile.Read(prices, occasion.Sheet.Currency, out exit) is not { } list)
            {
                return exit;
            }

            order = OccasionNeeds.Of(occasion).Match<Order?>(needs => Order.For(needs.Needs, list), _ => null);
        }

        return PlanFlow.Plan(occasion, new PlanOptions(seconds), "au").Match(
            p =>
            {
                PaperBundle bundle = new() { Mark = new("", ""), Occasion = p.Occasion, Batches = p.Batches, Findings = p.Findings, Plan = p.Outcome as Plan, Order = order, Faults = [.. p.Faults.Select(f => f.Words)] };
                int code = Write(bundle, choice, folder, html, json);
                return code != Exit.Done || (p.Outcome is Plan && p.Faults.IsEmpty) ? code : Input.Fail(Exit.Problems, p.Outcome switch
                {
                    NoPlan no => "no plan exists, so only what needs no plan was printed: " + string.Join("; ", no.Conflicts),
                    NotYet yet => "no plan was found in the time given, so only what needs no plan was printed: " + yet.Why,
                    _ => "the plan has faults; they are printed on its sheets: " + string.Join("; ", p.Faults.Select(f => f.Words)),
                });
            },
            problems => Input.Fail(path, problems));
    }

    /// <summary>Gives the bundle its mark, prints it and writes the files; the mark is a hash of what all its sheets say.</summary>
    internal static int Write(PaperBundle bare, PaperChoice choice, string folder, bool html, bool json)
    {
        string says = string.Join('\n', PaperShelf.Papers(bare).Select(p => p.Id + " " + p.Content));
        ZonedDateTime now = SystemClock.Instance.GetCurrentInstant().InZone(DateTimeZoneProviders.Tzdb.GetSystemDefault());
        PaperBundle bundle = bare with
        {
            Mark = new(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(says)))[..8], now.LocalDateTime.ToString("ddd d MMM uuuu HH:mm", bare.Culture)),
        };
        try
        {
            Directory.CreateDirectory(folder);
            return html ? Html(bundle, choice, folder, json) : Pdf(bundle, choice, folder, json);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Input.Fail(Exit.Storage, $"{folder} cannot be written: {e.Message}");
        }
    }

    private static int Html(PaperBundle bundle, PaperChoice choice, string folder, bool json)
    {
        ImmutableArray<Paper> papers = PaperPrinter.Papers(bundle, choice);
        string file = Path.Combine(folder, "papers.html");
        File.WriteAllText(file, HtmlPaper.Write(papers, choice.Format));
        return Say(bundle, [.. papers.Select(p => (p, file, 0, ImmutableArray<string>.Empty))], json);
    }

    private static int Pdf(PaperBundle bundle, PaperChoice choice, string folder, bool json)
    {
        List<(Paper, string, int, ImmutableArray<string>)> written = [];
        foreach (PrintedPaper p in PaperPrinter.Print(bundle, choice))
        {
            string file = Path.Combine(folder, p.Paper.Id + ".pdf");
            File.WriteAllBytes(file, p.Pdf.Bytes);
            written.Add((p.Paper, file, p.Pdf.Pages, p.Pdf.Remarks));
        }

        return Say(bundle, written, json);
    }

    private static int Say(PaperBundle bundle, List<(Paper Paper, string File, int Pages, ImmutableArray<string> Remarks)> written, bool json)
    {
        if (json)
        {
            return Input.Json(new { schema = "coulisse/print/1", title = bundle.Title, version = bundle.Mark.Version, papers = written.Select(w => new { id = w.Paper.Id, kind = w.Paper.Kind, title = w.Paper.Title, file = w.File, pages = w.Pages == 0 ? null : (int?)w.Pages, content = w.Paper.Content, remarks = w.Remarks }) });
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        foreach ((Paper paper, string file, int pages, ImmutableArray<string> remarks) in written)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{file}  {paper.Title}{(pages > 0 ? pages == 1 ? ", 1 page" : $", {pages} pages" : "")}"));
            foreach (string remark in remarks)
            {
                Console.Error.WriteLine("coulisse: " + remark);
            }
        }

        return Exit.Done;
    }
}
