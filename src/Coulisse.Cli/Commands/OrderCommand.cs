using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse order OCCASION --prices FILE: what to buy, in packs, by supplier.</summary>
internal static class OrderCommand
{
    public static Command Create()
    {
        Argument<string> sheet = new("OCCASION") { Description = "Occasion sheet; its cards lie beside it" };
        Option<string> prices = PricesOption();
        Option<string?> currency = CurrencyOption();
        Option<string[]> extra = ExtraOption();
        OrderTermsOptions terms = new();
        Option<bool> plain = WithoutTwinsOption();
        Option<string[]> trials = TrialFiles.Option();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("order", "What to buy: packs, suppliers, margins.\nExample: coulisse order examples/demo/occasion.md --prices examples/demo/prices.csv --extra \"kohlrabi=1 piece\" --extra \"swede=1 piece\"") { sheet, prices, currency, extra, plain, trials, json };
        terms.AddTo(command);
        command.SetAction(parsed =>
        {
            if (PlanCommand.Load([parsed.GetRequiredValue(sheet)], null, out int exit, parsed.GetValue(trials)) is not { } occasion)
            {
                return exit;
            }

            if (PriceFile.Read(parsed.GetRequiredValue(prices), parsed.GetValue(currency) ?? occasion.Sheet.Currency, out exit) is not { } list)
            {
                return exit;
            }

            if (AddedNeeds.Read(parsed.GetValue(extra) ?? []) is not { } added)
            {
                return Input.Fail(Exit.Usage, ExtraWrong);
            }

            if (terms.Read(parsed, out exit) is not { } asked)
            {
                return exit;
            }

            if (asked.Suppliers.Keys.FirstOrDefault(s => list.Rows.All(r => r.Supplier != s)) is { } nobody)
            {
                return Input.Fail(Exit.Usage, $"no supplier of the price list is called \"{nobody}\"; there are {string.Join(", ", list.Rows.Select(r => r.Supplier).Where(s => s.Length > 0).Distinct())}.");
            }

            return OccasionNeeds.Of(occasion, added, !parsed.GetValue(plain)).Match(
                needs => Give(occasion, needs, Order.For(needs.Needs, list, asked), parsed.GetValue(json)),
                problems => Input.Fail(parsed.GetRequiredValue(sheet), problems));
        });
        return command;
    }

    internal static Option<string> PricesOption() => new("--prices") { Description = "Price list, CSV: item, supplier, pack size, unit, price, currency, lead days, note", Required = true };

    internal static Option<string?> CurrencyOption() => new("--currency") { Description = "Currency of a list that names none" };

    internal const string ExtraWrong = "--extra is \"FOOD=AMOUNT\", such as \"beetroot=500 g\" or \"swede=1 piece\".";

    internal static Option<string[]> ExtraOption() => new("--extra") { Description = "Needed besides, \"FOOD=AMOUNT\"; may be given again", AllowMultipleArgumentsPerToken = false };

    internal static Option<bool> WithoutTwinsOption() => new("--without-twins") { Description = "Leave out what twins and stage batches take" };

    private static int Give(Occasion occasion, NeedsList needs, Order order, bool json)
    {
        Problem[] problems = [.. needs.Problems, .. order.Problems];
        if (json)
        {
            Input.Json(Document(occasion, needs, order, problems));
        }
        else
        {
            Print(occasion, needs, order);
        }

        return problems.Length == 0 ? Exit.Done : Input.Fail(occasion.Title, problems);
    }

    private static object Document(Occasion occasion, NeedsList needs, Order order, Problem[] problems) => new
    {
        schema = "coulisse/order/1", title = occasion.Title, currency = order.Total.Currency, total = order.Total.Amount, complete = problems.Length == 0,
        suppliers = order.BySupplier.Select(s => new { supplier = s.Key, total = s.Value.Amount, orderBy = OrderBy(occasion, order, s.Key), topUp = order.TopUp.GetValueOrDefault(s.Key) }),
        proven = order.Proven, bound = order.Bound,
        packs = order.Lines.SelectMany(l => l.Packs.Select(p => new
        {
            item = l.Item, supplier = p.Row.Supplier, size = p.Row.PackSize, unit = p.Row.Unit, count = p.Count, price = p.Row.Price.Amount, cost = p.Count * p.Row.Price.Amount, leadDays = p.Row.LeadDays, comesOn = p.ComesOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), note = p.Row.Note, anotherArticle = p.Row.MayReplace switch { true => "allowed", false => "not allowed", null => "ask first" },
        })),
        margins = order.Lines.Select(l => new { item = l.Item, need = Math.Round(l.Need, 3), bought = l.Bought, marginPercent = Math.Round(l.Margin * 100, 2), thin = l.Thin, fromStock = l.FromStock.Select(t => new { item = t.Lot.Item, amount = t.Amount, since = t.Lot.Since?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) }), @for = l.Needs.Select(n => n.For).Distinct() }),
        warnings = Warnings(order),
        problems = problems.Select(p => new { p.Code, p.Line, p.Message, p.Hint }),
        notCounted = needs.NotCounted,
    };

    private static string? OrderBy(Occasion occasion, Order order, string supplier)
    {
        int? lead = order.Lines.SelectMany(l => l.Packs).Where(p => p.Row.Supplier == supplier).Max(p => p.Row.LeadDays);
        return lead is { } days && occasion.Sheet.OrderArrives is { } arrives ? arrives.Date.PlusDays(-days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : null;
    }

    private static IEnumerable<string> Warnings(Order order) => order.Lines.Where(l => l.Thin).Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Item}: {l.Bought:0.#} g cover {l.Need:0.#} g with {l.Margin * 100:0.0} % over."));

    private static void Print(Occasion occasion, NeedsList needs, Order order)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        foreach ((string supplier, Coulisse.Matter.Quantities.Money sum) in order.BySupplier)
        {
            string by = OrderBy(occasion, order, supplier) is { } day ? $", order by {day}" : "";
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\n{(supplier.Length > 0 ? supplier : "(no supplier named)")}: {sum.Amount:0.00} {sum.Currency}{by}"));
            foreach (OrderLine line in order.Lines.Where(l => l.Packs.Any(p => p.Row.Supplier == supplier)))
            {
                foreach (OrderedPack pack in line.Packs.Where(p => p.Row.Supplier == supplier))
                {
                    Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {pack.Count,3} × {pack.Row.PackSize:0.##} {pack.Row.Unit,-5} {line.Item,-32} {pack.Count * pack.Row.Price.Amount,8:0.00}   need {line.Need:0.#}, {line.Margin * 100:0.0} % over{(line.Thin ? "  THIN" : "")}"));
                }
            }

            if (order.TopUp.GetValueOrDefault(supplier) is > 0 and var more)
            {
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {more:0.00} short of the minimum order"));
            }
        }

        foreach (OrderLine line in order.Lines)
        {
            foreach (StockTake take in line.FromStock)
            {
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"From stock: {take.Amount:0.#} of {take.Lot.Item}{(take.Lot.Since is { } since ? string.Create(CultureInfo.InvariantCulture, $", there since {since:uuuu-MM-dd}") : "")}"));
            }
        }

        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nTotal {order.Total.Amount:0.00} {order.Total.Currency}{(order.Problems.IsEmpty ? "" : $" without what could not be ordered ({order.Problems.Length}, named below)")}"));
        foreach (string words in needs.NotCounted)
        {
            Console.Out.WriteLine($"Not counted, no amount: {words}");
        }
    }
}
