using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Needs;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Cli;

/// <summary>Options for the terms of an order: stock, minimum orders, delivery days, days of ordering and need.</summary>
internal sealed class OrderTermsOptions
{
    private readonly Option<string?> _stock = new("--stock") { Description = "What is in the larder, CSV: item, amount (g or pieces), since (2026-10-01 or empty); used first, the oldest before the newer" };
    private readonly Option<string[]> _minimum = new("--minimum") { Description = "Least order of a supplier, \"dairy=40\"; may be given again" };
    private readonly Option<string[]> _delivers = new("--delivers") { Description = "Days on which a supplier delivers, \"dairy=Tue,Fri\"; may be given again" };
    private readonly Option<string?> _ordered = new("--ordered") { Description = "Day of ordering, 2026-10-05; with --needed, lead times and delivery days count" };
    private readonly Option<string?> _needed = new("--needed") { Description = "Last day on which goods may come, 2026-10-08" };
    private readonly Option<decimal> _over = new("--over") { Description = "Least share bought over the need of weighed goods, percent", DefaultValueFactory = _ => 1m };

    public void AddTo(Command command)
    {
        foreach (Option option in (ReadOnlySpan<Option>)[_stock, _minimum, _delivers, _ordered, _needed, _over])
        {
            command.Options.Add(option);
        }
    }

    /// <summary>The terms; null, with the exit code, when an option is wrong.</summary>
    public OrderTerms? Read(ParseResult parsed, out int exit)
    {
        exit = Exit.Done;
        if (parsed.GetValue(_over) is < 0 or > 100)
        {
            exit = Input.Fail(Exit.Usage, "--over is a percentage from 0 to 100.");
            return null;
        }

        Dictionary<string, SupplierTerms> suppliers = new(StringComparer.Ordinal);
        foreach (string text in parsed.GetValue(_minimum) ?? [])
        {
            if (Pair(text) is not { } pair || !decimal.TryParse(pair.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal least) || least < 0)
            {
                exit = Input.Fail(Exit.Usage, $"--minimum \"{text}\": write \"SUPPLIER=AMOUNT\", such as \"dairy=40\".");
                return null;
            }

            suppliers[pair.Name] = new SupplierTerms(least, suppliers.TryGetValue(pair.Name, out SupplierTerms? had) ? had.DeliveryDays : []);
        }

        foreach (string text in parsed.GetValue(_delivers) ?? [])
        {
            if (Pair(text) is not { } pair || Weekdays(pair.Value) is not { IsEmpty: false } days)
            {
                exit = Input.Fail(Exit.Usage, $"--delivers \"{text}\": write \"SUPPLIER=DAYS\", such as \"dairy=Tue,Fri\".");
                return null;
            }

            suppliers[pair.Name] = new SupplierTerms(suppliers.TryGetValue(pair.Name, out SupplierTerms? had) ? had.Minimum : 0, days);
        }

        LocalDate? ordered = Day(parsed.GetValue(_ordered));
        LocalDate? needed = Day(parsed.GetValue(_needed));
        if ((parsed.GetValue(_ordered) is not null && ordered is null) || (parsed.GetValue(_needed) is not null && needed is null) || ordered is null != needed is null || needed < ordered)
        {
            exit = Input.Fail(Exit.Usage, "--ordered and --needed are days such as 2026-10-05, given together, the second not before the first.");
            return null;
        }

        return Stock(parsed.GetValue(_stock), out exit) is { } stock
            ? new OrderTerms { LeastMargin = parsed.GetValue(_over) / 100, Stock = stock, Suppliers = suppliers.ToImmutableDictionary(), OrderedOn = ordered, NeededBy = needed }
            : null;
    }

    private static ImmutableArray<StockLot>? Stock(string? path, out int exit)
    {
        exit = Exit.Done;
        if (path is null)
        {
            return [];
        }

        if (Input.Bytes(path, out exit) is not { } bytes)
        {
            return null;
        }

        List<StockLot> lots = [];
        int n = 0;
        foreach (string line in Encoding.UTF8.GetString(bytes).Split('\n', StringSplitOptions.TrimEntries))
        {
            n++;
            if (line.Length == 0 || (n == 1 && line.StartsWith("item", StringComparison.OrdinalIgnoreCase)))
            {
                continue;
            }

            // The item may hold commas ("butter, unsalted"), so amount and day are read from the end.
            string[] cells = line.Split(',', StringSplitOptions.TrimEntries);
            string since = cells.Length > 2 ? cells[^1] : "";
            bool dated = Day(since) is not null || (cells.Length > 2 && since.Length == 0);
            string amount = cells.Length > 1 ? cells[dated ? ^2 : ^1] : "";
            if (!decimal.TryParse(amount, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal grams) || grams <= 0)
            {
                exit = Input.Fail(Exit.Problems, string.Create(CultureInfo.InvariantCulture, $"{path}, line {n}: “{line}” has no amount above 0. Write item, amount in grams or pieces, day."));
                return null;
            }

            lots.Add(new StockLot(string.Join(", ", cells[..^(dated ? 2 : 1)]).Trim('"', ' '), grams, Day(since)));
        }

        return [.. lots];
    }

    private static (string Name, string Value)? Pair(string text) => text.LastIndexOf('=') is > 0 and var at ? (text[..at].Trim(), text[(at + 1)..].Trim()) : null;

    private static LocalDate? Day(string? text) => text is not null && LocalDatePattern.Iso.Parse(text) is { Success: true } day ? day.Value : null;

    private static ImmutableArray<IsoDayOfWeek> Weekdays(string text)
    {
        IsoDayOfWeek[] days = [.. text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(w => Enum.GetValues<IsoDayOfWeek>().FirstOrDefault(d => d != IsoDayOfWeek.None && w.Length >= 2 && d.ToString().StartsWith(w, StringComparison.OrdinalIgnoreCase)))];
        return days.Contains(IsoDayOfWeek.None) ? [] : [.. days];
    }
}
