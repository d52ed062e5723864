using System.Collections.Immutable;

namespace Coulisse.Kitchen.Labels;

/// <summary>What one row of the diets table comes to, dish by dish.</summary>
/// <param name="Seats">Seats.</param>
/// <param name="Declared">As declared.</param>
/// <param name="Codes">Allergen codes the declaration closes off; empty when its words name none.</param>
/// <param name="Plates">One for each dish the seat gets.</param>
/// <param name="Line">Sheet line.</param>
public sealed record GuestRow(ImmutableArray<int> Seats, string Declared, ImmutableArray<string> Codes, ImmutableArray<GuestPlate> Plates, int Line);

/// <summary>A dish as a seat gets it.</summary>
/// <param name="Dish">Dish.</param>
/// <param name="Text">What the sheet says about it; empty when it says nothing.</param>
/// <param name="Served">False when the seat gets none of it.</param>
/// <param name="Without">Components left out.</param>
/// <param name="Instead">Foods and components that come instead, as written.</param>
/// <param name="Found">Declared allergens still on this plate, contained, possible or hidden in a food that is not known.</param>
/// <param name="All">All allergens of this plate, what comes instead included.</param>
/// <param name="CrossContact">Parts of the same dish that this plate does not carry but that hold a declared allergen: a matter of tools and order of plating, not of contents.</param>
/// <param name="Minds">Cautions of the sheet, as written.</param>
public sealed record GuestPlate(string Dish, string Text, bool Served, ImmutableArray<string> Without, ImmutableArray<string> Instead, ImmutableArray<AllergenLine> Found, ImmutableArray<AllergenLine> All, ImmutableArray<string> CrossContact, ImmutableArray<string> Minds);

/// <summary>A food that only the diets table names.</summary>
/// <param name="Food">Food as read.</param>
/// <param name="GramsEach">Grams for one seat; null when no weight is stated.</param>
/// <param name="Seats">Seats that get it.</param>
/// <param name="Dish">Column of the table it stands in.</param>
/// <param name="Line">Sheet line.</param>
public sealed record DietFood(Cards.FoodAmount Food, double? GramsEach, ImmutableArray<int> Seats, string Dish, int Line);
