using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Needs;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Views.Web;

/// <summary>The prices of the kitchen: what changed, what that does to every dish, and what each pack cost before.</summary>
/// <param name="Says">What is compared, one sentence.</param>
/// <param name="Faults">What cannot be done, in words.</param>
/// <param name="Items">Items that a price can be tried for.</param>
/// <param name="Item">Item tried; empty for none.</param>
/// <param name="To">Price or percentage tried.</param>
/// <param name="Versions">Kept lists to compare with: key, words, and whether it is the one compared with.</param>
/// <param name="Changed">Packs that changed.</param>
/// <param name="Dishes">Every dish, what moves most first.</param>
/// <param name="Still">How many dishes do not move, in words; empty when all do.</param>
/// <param name="History">Prices of each pack over time.</param>
public sealed record PriceChangeView(
    string Says, ImmutableArray<string> Faults, ImmutableArray<string> Items, string Item, string To, ImmutableArray<(string Key, string Words, bool Chosen)> Versions,
    ImmutableArray<ChangedPriceView> Changed, ImmutableArray<ChangedDishView> Dishes, string Still, ImmutableArray<PriceStepsView> History)
{
    private const int MostDishes = 300;

    /// <summary>Lays a change out.</summary>
    public PriceChangeView With(PriceChange change, string currency, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(change);
        ChangedDish[] moved = [.. change.Dishes.Where(d => d.Before.Amount != d.After.Amount)];
        int still = change.Dishes.Length - moved.Length;
        return this with
        {
            Changed = [.. change.Prices.Select(p => new ChangedPriceView(p.Item, p.Supplier, string.Create(culture, $"{p.Pack.Size:#,0.##} {p.Pack.Unit}"), p.Before is { } b ? Money(b, culture) : "not on offer", p.After is { } a ? Money(a, culture) : "no longer", Percent(p.Percent, culture)))],
            Dishes = [.. moved.Take(MostDishes).Select(d => new ChangedDishView(d.Dish.Title, d.Dish.Unit.Length > 0 ? "each of " + Figures.Number(d.Dish.Makes, culture) + " " + d.Dish.Unit : "the whole card", Money(d.EachBefore.Amount, culture), Money(d.EachAfter.Amount, culture), Percent(d.Percent, culture),
                string.Join(", ", d.Because.Take(3).Select(x => $"{x.Item} {Signed(x.Adds / (decimal)d.Dish.Makes, culture)}")), d.NotPriced.Length == 0 ? "" : d.NotPriced.Length == 1 ? "one line has no price" : d.NotPriced.Length.ToString(culture) + " lines have no price"))],
            Still = still == 0 ? "" : string.Create(culture, $"{(still == 1 ? "One dish does" : $"{still} dishes do")} not move{(moved.Length > MostDishes ? $"; the {MostDishes} that move most are shown of {moved.Length}" : "")}. Figures are in {currency}."),
        };
    }

    /// <summary>Steps of a pack's price, from the list's own dates.</summary>
    public static PriceStepsView Steps(ImmutableArray<PriceRow> rows, CultureInfo culture) => Steps(rows[0], [.. rows.Select(r => (r.Since, r.Price.Amount))], culture);

    /// <summary>Steps of a pack's price: day (null for at first) and price.</summary>
    public static PriceStepsView Steps(PriceRow pack, ImmutableArray<(LocalDate? Since, decimal Price)> steps, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return new($"{pack.Item}, {string.Create(culture, $"{pack.PackSize:#,0.##} {pack.Unit}")}{(pack.Supplier.Length > 0 ? ", " + pack.Supplier : "")}",
            [.. steps.Select((s, i) => (s.Since is { } d ? LocalDatePattern.Iso.Format(d) : "at first", Money(s.Price, culture), i > 0 && steps[i - 1].Price > 0 ? Percent((s.Price - steps[i - 1].Price) / steps[i - 1].Price * 100, culture) : ""))]);
    }

    private static string Money(decimal amount, CultureInfo culture) => amount.ToString("#,0.00##", culture);

    private static string Signed(decimal amount, CultureInfo culture) => amount.ToString("+0.00##;\u22120.00##", culture);

    private static string Percent(decimal? percent, CultureInfo culture) => percent is { } p ? p.ToString("+0.0;\u22120.0;0", culture) + "\u202F%" : "";
}

/// <summary>A pack whose price is another.</summary>
public sealed record ChangedPriceView(string Item, string Supplier, string Pack, string Before, string After, string Percent);

/// <summary>A dish before and after.</summary>
public sealed record ChangedDishView(string Title, string Of, string Before, string After, string Percent, string Because, string Lacking);

/// <summary>Prices of one pack over time: day, price, change.</summary>
public sealed record PriceStepsView(string Pack, ImmutableArray<(string Since, string Price, string Percent)> Steps);
