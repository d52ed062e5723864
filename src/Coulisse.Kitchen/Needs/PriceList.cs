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

        PriceTable table = PriceTable.Find(lines, heads ?? PriceHeads.None);
        ImmutableArray<Problem> missing = table.Missing;
        if (!missing.IsEmpty)
        {
            return new Parsed<PriceList>.Failed(missing);
        }

        List<Problem> problems = [];
        ImmutableArray<PriceRow> all = [.. table.Rows.Select(l => PriceLine.Read(l.Line, table.Packed, k => table.Cell(l.Cells, k), currency, problems)).OfType<PriceRow>()];
        Gather(problems);
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

    // A whole list without a currency is one thing to say, not one a line.
    private static void Gather(List<Problem> problems)
    {
        Problem[] bare = [.. problems.Where(p => p.Code == "PRI004")];
        if (bare.Length > 1)
        {
            problems.RemoveAll(p => p.Code == "PRI004");
            problems.Insert(0, bare[0] with { Message = string.Create(CultureInfo.InvariantCulture, $"{bare.Length} lines have no currency, this one is the first.") });
        }
    }

    // One pack of one supplier at two prices on the same day: which of them is asked must be said.
    private static IEnumerable<Problem> Twice(ImmutableArray<PriceRow> rows) => rows.Where(r => r.Supplier.Length > 0).GroupBy(r => (Pack(r), r.Since)).Where(g => g.Select(r => r.Price.Amount).Distinct().Count() > 1)
        .Select(g => new Problem("PRI005", g.Last().Line, $"\"{g.First().Item}\" of {g.First().Supplier} has two prices at once, {string.Join(" and ", g.Select(r => r.Price.Amount.ToString("0.00##", CultureInfo.InvariantCulture)).Distinct())}.", "Say since when each holds, or delete one."));
}
