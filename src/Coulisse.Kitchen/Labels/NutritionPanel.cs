using System.Collections.Immutable;

namespace Coulisse.Kitchen.Labels;

/// <summary>One row of a panel.</summary>
/// <param name="Name">As the law names it.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Computed">Per 100 g, unrounded.</param>
/// <param name="Declared">Per 100 g as it may be declared.</param>
/// <param name="Serving">Per serving as it may be declared; null without a serving.</param>
public sealed record PanelRow(string Name, string Unit, double Computed, string Declared, string? Serving);

/// <summary>A nutrition panel of the food as mixed or as weighed at the end.</summary>
/// <param name="Regime">Whose form.</param>
/// <param name="Basis">"as mixed" or "weighed at the end, … g".</param>
/// <param name="ServingGrams">Grams of a serving; null without one.</param>
/// <param name="Rows">Rows in the order of the law; empty when a food's composition is not held.</param>
/// <param name="Missing">Why rows are missing or what the figures leave out.</param>
public sealed record NutritionPanel(AllergenRegime Regime, string Basis, double? ServingGrams, ImmutableArray<PanelRow> Rows, ImmutableArray<string> Missing);
