using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Matter.Quantities;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse cost CARD|OCCASION --prices FILE: value of what the recipes use, by line, part, plate and piece.</summary>
internal static class CostCommand
{
    private sealed record Asked(string Path, string Prices, string? Currency, decimal? Target, decimal Unlisted, decimal Tax, bool Json, bool Twins, Need[] Extra, string[] Trials);

    /// <summary>A dish as it is costed: how many are made and how many of those are eaten.</summary>
    private sealed record Count(string Title, double Made, double Eaten, string Unit);

    public static Command Create()
    {
        Argument<string> path = new("CARD|OCCASION") { Description = "A card, or an occasion sheet with a table of dishes" };
        Option<string> prices = OrderCommand.PricesOption();
        Option<string?> currency = OrderCommand.CurrencyOption();
        Option<string[]> extra = OrderCommand.ExtraOption();
        Option<decimal?> target = new("--target") { Description = "Share of the net price that food may cost, percent" };
        Option<decimal> unlisted = new("--unlisted") { Description = "Q factor: what no line states, percent of the listed food" };
        Option<decimal> tax = new("--tax") { Description = "GST or VAT, percent" };
        Option<bool> plain = OrderCommand.WithoutTwinsOption();
        Option<string[]> trials = TrialFiles.Option();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("cost", "What a dish or an occasion costs.\nExample: coulisse cost examples/demo/occasion.md --prices examples/demo/prices.csv --target 28 --tax 10") { path, prices, currency, extra, target, unlisted, tax, plain, trials, json };
        command.SetAction(parsed =>
        {
            if (AddedNeeds.Read(parsed.GetValue(extra) ?? []) is not { } added || parsed.GetValue(target) is <= 0 or > 100 || parsed.GetValue(unlisted) < 0 || parsed.GetValue(tax) < 0)
            {
                return Input.Fail(Exit.Usage, "--extra is \"FOOD=AMOUNT\"; --target is a percentage above 0, --unlisted and --tax are percentages.");
            }

            return Run(new Asked(parsed.GetRequiredValue(path), parsed.GetRequiredValue(prices), parsed.GetValue(currency), parsed.GetValue(target), parsed.GetValue(unlisted), parsed.GetValue(tax), parsed.GetValue(json), !parsed.GetValue(plain), [.. added], parsed.GetValue(trials) ?? []));
        });
        return command;
    }

    private static int Run(Asked asked)
    {
        if (Input.Bytes(asked.Path, out int exit) is not { } bytes)
        {
            return exit;
        }

        // A sheet has a table of dishes; a card has none.
        return Encoding.UTF8.GetString(bytes).Split('\n').Any(l => l.Trim().StartsWith("## Dishes", StringComparison.OrdinalIgnoreCase))
            ? PlanCommand.Load([asked.Path], null, out exit, asked.Trials) is { } occasion ? OfOccasion(asked, occasion) : exit
            : WeighCommand.Read(asked.Path, null, weighed => OfCard(asked, weighed));
    }

    private static int OfCard(Asked asked, WeighedDish weighed) => PriceFile.Read(asked.Prices, asked.Currency, out int exit) is not { } list
        ? exit
        : Scaling.Scale(weighed, new ScaleTo.Factor(1)).Match(
            batch =>
            {
                NeedsList needs = NeedsList.From([batch], asked.Extra);
                CardYield? makes = weighed.Dish.Yields.FirstOrDefault(y => y.Unit is "portions" or "plates" or "covers" or "pieces" && y.Amount > 0) ?? weighed.Dish.Yields.FirstOrDefault(y => y.Amount > 0);
                return Give(asked, weighed.Dish.Title, needs, Costing.Of(needs.Needs, list), Order.For(needs.Needs, list), [batch], makes is null ? [] : [new(weighed.Dish.Title, makes.Amount, makes.Amount, makes.Unit)]);
            },
            problems => Input.Fail(asked.Path, problems));

    private static int OfOccasion(Asked asked, Occasion occasion) => PriceFile.Read(asked.Prices, asked.Currency ?? occasion.Sheet.Currency, out int exit) is not { } list
        ? exit
        : OccasionNeeds.Of(occasion, asked.Extra, asked.Twins).Match(
            needs => Give(asked, occasion.Title, needs, Costing.Of(needs.Needs, list), Order.For(needs.Needs, list), OccasionBatches.Make(occasion).Match(b => b, _ => []), [.. occasion.Dishes.GroupBy(d => d.Dish.Title, StringComparer.Ordinal).Select(g => Counted(g.First(), occasion.Guests))]),
            problems => Input.Fail(asked.Path, problems));

    private static Count Counted(OccasionDish dish, int guests)
    {
        double made = dish.Unit != "pieces" ? dish.Count : OccasionBatches.WholeVessels(dish.Dish, dish.Count, dish.Unit) * (dish.Dish.Yields.FirstOrDefault(y => y.Unit == "pieces")?.Amount ?? dish.Count);
        return new(dish.Dish.Title, made, dish.Unit == "pieces" ? dish.Count : Math.Min(dish.Count, guests), dish.Unit);
    }

    private static int Give(Asked asked, string title, NeedsList needs, Costing costing, Order order, ImmutableArray<Batch> batches, Count[] counts)
    {
        Problem[] problems = [.. needs.Problems, .. costing.Problems];

        // what is paid for and left in the packs; it belongs to the house, not to the dish
        decimal surplus = order.Total.Amount - costing.Total.Amount;
        decimal? Kilo(PartCost p) => p.Role == NeedRole.Served && batches.Where(b => b.Weighed.Dish.Title == p.Dish).SelectMany(b => b.Components.Where(c => c.Weighed.Component.Name == p.Component).Select(c => PartBalance.GramsMade(b, c))).FirstOrDefault() is > 0 and var made ? p.Value.Amount * 1000 / (decimal)made : null;
        var dishes = counts.Select(c =>
        {
            Money sum = new(costing.Parts.Where(p => p.Dish == c.Title && p.Role == NeedRole.Served && !Alone(c, p, needs)).Sum(p => p.Value.Amount), costing.Currency);
            Money made = sum * (1 / (decimal)c.Made);
            Money eaten = sum * (1 / (decimal)c.Eaten);
            SellingPrice? price = asked.Target is { } target ? SellingPrice.Of(eaten, target, asked.Unlisted, asked.Tax) : null;
            return (Count: c, Sum: sum, Made: made, Eaten: eaten, Price: price);
        }).ToArray();
        if (asked.Json)
        {
            Input.Json(new
            {
                schema = "coulisse/cost/1", title, currency = costing.Currency, total = Cents(costing.Total), exact = costing.Total.Amount,
                served = Cents(costing.For(NeedRole.Served)), diets = Cents(costing.For(NeedRole.Diet)), twins = Cents(costing.For(NeedRole.Twin)), added = Cents(costing.For(NeedRole.Added)), trim = Cents(costing.Trim), surplus = Math.Round(surplus, 2), order = Cents(order.Total),
                dishes = dishes.Select(d => new
                {
                    title = d.Count.Title, cost = Cents(d.Sum), made = d.Count.Made, eaten = d.Count.Eaten, unit = d.Count.Unit, perMade = Math.Round(d.Made.Amount, 4), perEaten = Math.Round(d.Eaten.Amount, 4),
                    unlisted = d.Price is null ? null : (decimal?)Math.Round(d.Price.Unlisted.Amount, 4), net = d.Price is null ? null : (decimal?)Cents(d.Price.Net), tax = d.Price is null ? null : (decimal?)Cents(d.Price.Tax), gross = d.Price is null ? null : (decimal?)Cents(d.Price.Gross),
                }),
                parts = costing.Parts.Select(p => new { dish = p.Dish, part = p.Component, role = p.Role, cost = Math.Round(p.Value.Amount, 4), perKiloMade = Kilo(p) is { } k ? (decimal?)Math.Round(k, 3) : null }),
                lines = costing.Lines.Select(l => new { dish = l.Need.Dish, part = l.Need.Component, food = l.Need.Food, grams = Math.Round(l.Need.Grams, 3), item = l.Item, amount = Math.Round(l.Amount, 4), cost = Math.Round(l.Value.Amount, 5), trim = Math.Round(l.Trim.Amount, 5) }),
                problems = problems.Select(p => new { p.Code, p.Line, p.Message, p.Hint }), notCounted = needs.NotCounted,
            });
        }
        else
        {
            Console.OutputEncoding = new UTF8Encoding(false);
            foreach (var d in dishes)
            {
                string price = d.Price is null ? "" : string.Create(CultureInfo.InvariantCulture, $"; price {d.Price.Net.Amount:0.00} + tax {d.Price.Tax.Amount:0.00} = {d.Price.Gross.Amount:0.00}");
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\n{d.Count.Title}: {d.Sum.Amount:0.00} {costing.Currency}; {d.Made.Amount:0.000} each of {d.Count.Made:0.##} {d.Count.Unit} made, {d.Eaten.Amount:0.000} each of {d.Count.Eaten:0.##} eaten{price}"));
                foreach (PartCost p in costing.Parts.Where(p => p.Dish == d.Count.Title))
                {
                    Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {p.Value.Amount,9:0.00}  {(p.Component.Length > 0 ? p.Component : "(the dish)")}{(p.Role == NeedRole.Served ? "" : $", {p.Role.ToString().ToLowerInvariant()}")}{(Kilo(p) is { } k ? string.Create(CultureInfo.InvariantCulture, $", {k:0.00} a kilo made") : "")}"));
                }
            }

            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nServed {costing.For(NeedRole.Served).Amount:0.00}, diets {costing.For(NeedRole.Diet).Amount:0.00}, twins {costing.For(NeedRole.Twin).Amount:0.00}, added {costing.For(NeedRole.Added).Amount:0.00}; together {costing.Total.Amount:0.00} {costing.Currency}{(costing.Problems.IsEmpty ? "" : $" without what has no price ({costing.Problems.Length}, named below)")}\nOf it cut away before use {costing.Trim.Amount:0.00}; besides, left in packs {surplus:0.00} (the order is {order.Total.Amount:0.00})"));
        }

        return problems.Length == 0 ? Exit.Done : Input.Fail(title, problems);
    }

    // A part made alone for one guest ("one ramekin") is not in the cost of the other pieces of its card.
    private static bool Alone(Count count, PartCost part, NeedsList needs) => count.Unit == "pieces" && part.Component.Length > 0 && needs.Alone.Contains((part.Dish, part.Component));

    private static decimal Cents(Money money) => money.ToCents().Amount;
}
