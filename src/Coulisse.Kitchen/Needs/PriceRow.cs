using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Needs;

/// <summary>One pack on offer.</summary>
/// <param name="Line">Line of the price list.</param>
/// <param name="Item">Item as written.</param>
/// <param name="Supplier">Supplier; empty when the list names none.</param>
/// <param name="PackSize">Grams, millilitres or pieces in a pack.</param>
/// <param name="Unit">"g", "ml" or "each".</param>
/// <param name="Price">Price of a pack.</param>
/// <param name="LeadDays">Days between ordering and delivery; null when not stated.</param>
/// <param name="Note">As written.</param>
public sealed record PriceRow(int Line, string Item, string Supplier, decimal PackSize, string Unit, Money Price, int? LeadDays, string Note)
{
    /// <summary>First day of the price; null when it was always so.</summary>
    public LocalDate? Since { get; init; }

    /// <summary>Last day of the price; null when it goes on.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>Whether the supplier may send another article in its place; null when the list is silent, and then it may not.</summary>
    public bool? MayReplace { get; init; }

    /// <summary>Price of one gram, millilitre or piece, unrounded.</summary>
    public decimal PerUnit => Price.Amount / PackSize;

}
