using System.Collections.Immutable;

namespace Coulisse.Kitchen.Labels;

/// <summary>How sure an allergen is. There is no "free of": absence from the sheet says only that the table knows of none.</summary>
public enum AllergenStatus
{
    /// <summary>It is in a food of the list.</summary>
    Contains,

    /// <summary>It depends on make, mill or maker: read the label or ask the supplier.</summary>
    May,

    /// <summary>A food is not in the table, so nothing is known of it.</summary>
    Unknown,
}

/// <summary>One reason: a food of a line that brings an allergen, may bring it, or is not known.</summary>
/// <param name="Code">Allergen code; null for a food that is not known.</param>
/// <param name="Status">How sure.</param>
/// <param name="Component">Component it stands in.</param>
/// <param name="Food">Food as written.</param>
/// <param name="FoodId">Our id; null when not matched.</param>
/// <param name="Line">Card line.</param>
/// <param name="Because">The chain from line to allergen, one sentence.</param>
public sealed record AllergenReason(string? Code, AllergenStatus Status, string Component, string Food, string? FoodId, int Line, string Because);

/// <summary>One allergen of a part or a dish, by its exact name.</summary>
/// <param name="Name">Name in the law asked for; the food for a food that is not known.</param>
/// <param name="Code">Our code; null for a food that is not known.</param>
/// <param name="Status">Surest of its reasons.</param>
/// <param name="Because">Its reasons, surest first.</param>
public sealed record AllergenLine(string Name, string? Code, AllergenStatus Status, ImmutableArray<AllergenReason> Because);

/// <summary>Allergens of one component, those of the components it takes from included.</summary>
/// <param name="Component">Name.</param>
/// <param name="Lines">Allergens: contained first, then possible, then unknown foods.</param>
public sealed record AllergenPart(string Component, ImmutableArray<AllergenLine> Lines);

/// <summary>Allergens of a dish, by part and as a whole.</summary>
/// <param name="Regime">Whose names.</param>
/// <param name="Parts">By component.</param>
/// <param name="Dish">Of the whole.</param>
/// <param name="Summary">The "Contains" sentence of that law; names what is contained only.</param>
public sealed record AllergenSheet(AllergenRegime Regime, ImmutableArray<AllergenPart> Parts, ImmutableArray<AllergenLine> Dish, string Summary);
