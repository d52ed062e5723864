using System.Collections.Immutable;
using NodaTime;

namespace Coulisse.Kitchen.Needs;

/// <summary>Something in the larder.</summary>
/// <param name="Item">As the price list or a card names it.</param>
/// <param name="Amount">Grams, or pieces of what is sold by the piece; more than 0.</param>
/// <param name="Since">When it came or was made; null when nobody knows, and it is then used last.</param>
public sealed record StockLot(string Item, decimal Amount, LocalDate? Since);

/// <summary>Stock used for an item.</summary>
/// <param name="Lot">From which lot.</param>
/// <param name="Amount">How much.</param>
public sealed record StockTake(StockLot Lot, decimal Amount);

/// <summary>What a supplier asks for.</summary>
/// <param name="Minimum">Least order, money.</param>
/// <param name="DeliveryDays">Days on which it delivers; empty for any day.</param>
public sealed record SupplierTerms(decimal Minimum, ImmutableArray<IsoDayOfWeek> DeliveryDays);

/// <summary>Terms of an order.</summary>
public sealed record OrderTerms
{
    /// <summary>Weighed goods are bought with at least this over, as a share; 0.01 covers what sticks to the pack (common practice, no source).</summary>
    public decimal LeastMargin { get; init; } = 0.01m;

    /// <summary>Below this share over, the line is flagged.</summary>
    public decimal ThinMargin { get; init; } = 0.05m;

    /// <summary>What is in the larder: used first, the oldest before the newer.</summary>
    public ImmutableArray<StockLot> Stock { get; init; } = [];

    /// <summary>Suppliers' terms, by name as the price list writes it.</summary>
    public ImmutableDictionary<string, SupplierTerms> Suppliers { get; init; } = ImmutableDictionary<string, SupplierTerms>.Empty;

    /// <summary>Day of ordering; null when time is not looked at.</summary>
    public LocalDate? OrderedOn { get; init; }

    /// <summary>Last day on which goods may come; null when time is not looked at.</summary>
    public LocalDate? NeededBy { get; init; }

    /// <summary>Latest day in time on which an offer can come; null when none is, or when time is not looked at.</summary>
    /// <param name="row">The offer.</param>
    public LocalDate? ComesOn(PriceRow row)
    {
        if (OrderedOn is not { } from || NeededBy is not { } by)
        {
            return null;
        }

        LocalDate first = from.PlusDays(row.LeadDays ?? 0);
        ImmutableArray<IsoDayOfWeek> days = Suppliers.TryGetValue(row.Supplier, out SupplierTerms? terms) ? terms.DeliveryDays : [];
        for ((LocalDate day, int back) = (by, 0); day >= first && back < 7; day = day.PlusDays(-1), back++)
        {
            if (days.IsDefaultOrEmpty || days.Contains(day.DayOfWeek))
            {
                return day;
            }
        }

        return null;
    }

    /// <summary>True when an offer comes in time, or time is not looked at.</summary>
    /// <param name="row">The offer.</param>
    public bool InTime(PriceRow row) => OrderedOn is null || NeededBy is null || ComesOn(row) is not null;
}
