using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Needs;

/// <summary>A price list: packs on offer, each at the price in force, with all earlier and later prices kept.</summary>
/// <param name="Rows">Packs on offer at the prices in force.</param>
/// <param name="Currency">The one currency of the list.</param>
public sealed record PriceList(ImmutableArray<PriceRow> Rows, string Currency)
{
    /// <summary>Every price the list holds, those in force and the others.</summary>
    public ImmutableArray<PriceRow> All { get; init; } = Rows;

    /// <summary>Reads CSV text; comma, semicolon or tab between cells, quotes doubled inside quotes.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="currency">Currency to take where the list has no such column.</param>
    /// <param name="heads">Heads this kitchen has explained; null for the usual ones alone.</param>
    /// <param name="on">Day whose prices are in force; null for the newest.</param>
    public static Parsed<PriceList> Read(string text, string? currency = null, PriceHeads? heads = null, LocalDate? on = null)
    {
        List<(int Line, List<string> Cells)> lines = CellText.Split(text);
        if (lines.Count == 0)
        {
            return new Parsed<PriceList>.Failed([new("PRI001", 0, "The price list is empty.", "Its first line names the columns: item, pack size, unit, price.")]);
        }

        heads ??= PriceHeads.None;
        Dictionary<string, int> columns = new(StringComparer.Ordinal);
        for (int i = 0; i < lines[0].Cells.Count; i++)
        {
            if (heads.Of(lines[0].Cells[i]) is { Length: > 0 } key)
            {
                columns.TryAdd(key, i);
            }
        }

        ImmutableArray<Problem> missing = [.. PriceHeads.Needed.Where(k => !columns.ContainsKey(k))
            .Select(k => new Problem("PRI001", lines[0].Line, $"The price list has no column for {k}; its columns are {string.Join(", ", lines[0].Cells.Select(c => $"“{c.Trim()}”"))}.", $"Name one of its columns {PriceHeads.Examples(k)}, or say once which column it is."))];
        if (!missing.IsEmpty)
        {
            return new Parsed<PriceList>.Failed(missing);
        }

        List<Problem> problems = [];
        ImmutableArray<PriceRow> all = [.. lines.Skip(1).Select(l => Row(l.Line, k => columns.TryGetValue(k, out int i) && i < l.Cells.Count ? l.Cells[i].Trim() : "", currency, problems)).OfType<PriceRow>()];
        string[] currencies = [.. all.Select(r => r.Price.Currency).Distinct()];
        if (currencies.Length > 1)
        {
            problems.Add(new("PRI004", 0, $"The price list mixes currencies: {string.Join(", ", currencies)}.", "Prices of one order are in one currency."));
        }

        problems.AddRange(Twice(all));
        return problems.Count > 0
            ? new Parsed<PriceList>.Failed([.. problems])
            : new Parsed<PriceList>.Ok(new PriceList(all, currencies.FirstOrDefault() ?? currency ?? "").On(on));
    }

    /// <summary>The list as it stands on a day.</summary>
    /// <param name="day">The day; null for the newest prices.</param>
    public PriceList On(LocalDate? day) => this with
    {
        Rows = [.. All.Where(r => InForce(r, day)).GroupBy(Pack).SelectMany(g => g.Where(r => r.Since == g.Max(x => x.Since))).OrderBy(r => r.Line)],
        All = All,
    };

    /// <summary>Prices of each pack over time, oldest first; only packs that had more than one.</summary>
    public ImmutableArray<ImmutableArray<PriceRow>> History => [.. All.GroupBy(Pack).Select(g => g.OrderBy(r => r.Since ?? LocalDate.MinIsoValue).ToImmutableArray()).Where(g => g.Length > 1)];

    /// <summary>The same list with some packs at other prices.</summary>
    /// <param name="change">New price of a pack; null leaves it as it is.</param>
    public PriceList With(Func<PriceRow, decimal?> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        ImmutableArray<PriceRow> rows = [.. Rows.Select(r => change(r) is { } price ? r with { Price = new Money(price, Currency) } : r)];
        return new PriceList(rows, Currency);
    }

    private static (string, string, decimal, string) Pack(PriceRow r) => (r.Item, r.Supplier, r.PackSize, r.Unit);

    private static bool InForce(PriceRow r, LocalDate? day) => day is not { } d ? r.Until is null : (r.Since is not { } s || s <= d) && (r.Until is not { } u || d <= u);

    private static PriceRow? Row(int line, Func<string, string> cell, string? currency, List<Problem> problems)
    {
        string item = cell("item");
        (decimal Size, string Unit)? pack = PriceCells.Pack(cell("size"));
        (decimal Amount, string Currency)? price = PriceCells.Money(cell("price"));
        string stated = cell("unit").Length > 0 ? cell("unit") : pack?.Unit ?? "";
        (string unit, decimal factor) = PriceCells.Unit(stated);
        string money = cell("currency") is { Length: > 0 } column ? column : price?.Currency is { Length: > 0 } beside ? beside : currency ?? "";
        if (item.Length == 0)
        {
            problems.Add(new("PRI003", line, "A price stands without an item.", "Write what is sold, or delete the line."));
        }
        else if (unit.Length == 0 || (pack is { Unit.Length: > 0 } p && cell("unit").Length > 0 && PriceCells.Unit(p.Unit) != (unit, factor)))
        {
            problems.Add(new("PRI002", line, $"\"{item}\" has a price without a unit that is known (\"{(unit.Length > 0 ? cell("size") + " " : "")}{stated}\").", "Write g, kg, ml, l or each."));
        }
        else if (pack is not { Size: > 0 } sized || price is not { Amount: >= 0 } paid)
        {
            problems.Add(new("PRI003", line, $"\"{item}\" has pack size \"{cell("size")}\" and price \"{cell("price")}\".", "Both are plain numbers (1234.50, not 1,234), the pack more than 0."));
        }
        else if (money.Length == 0)
        {
            problems.Add(new("PRI004", line, $"\"{item}\" has no currency.", "Add a currency column, or name the currency with the list."));
        }
        else if (Day("since") is var since && Day("until") is var until && (since.Wrong || until.Wrong || (since.Day is { } a && until.Day is { } b && b < a)))
        {
            problems.Add(new("PRI006", line, $"\"{item}\" has a price from \"{cell("since")}\" to \"{cell("until")}\".", "Write days as 2026-10-08, the end not before the start."));
        }
        else
        {
            int? lead = int.TryParse(cell("lead"), NumberStyles.None, CultureInfo.InvariantCulture, out int days) ? days : null;
            bool? replace = cell("replace").ToLowerInvariant() switch { "yes" or "y" or "ok" or "allowed" => true, "no" or "n" or "not" or "none" => false, _ => null };
            return new(line, item, cell("supplier"), sized.Size * factor, unit, new(paid.Amount, money), lead, cell("note")) { Since = Day("since").Day, Until = Day("until").Day, MayReplace = replace };
        }

        return null;

        (LocalDate? Day, bool Wrong) Day(string key) => cell(key) is not { Length: > 0 } text ? (null, false) : PriceCells.Day(text) is { } d ? (d, false) : (null, true);
    }

    // One pack of one supplier at two prices on the same day: which of them is asked must be said.
    private static IEnumerable<Problem> Twice(ImmutableArray<PriceRow> rows) => rows.Where(r => r.Supplier.Length > 0).GroupBy(r => (Pack(r), r.Since)).Where(g => g.Select(r => r.Price.Amount).Distinct().Count() > 1)
        .Select(g => new Problem("PRI005", g.Last().Line, $"\"{g.First().Item}\" of {g.First().Supplier} has two prices at once, {string.Join(" and ", g.Select(r => r.Price.Amount.ToString("0.00##", CultureInfo.InvariantCulture)).Distinct())}.", "Say since when each holds, or delete one."));
}
