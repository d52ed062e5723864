using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Labels;

/// <summary>One row of a panel.</summary>
/// <param name="Name">As the law names it.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Computed">Per 100 g, unrounded.</param>
/// <param name="Declared">Per 100 g as it may be declared.</param>
/// <param name="Serving">Per serving as it may be declared; null without a serving.</param>
public sealed record PanelRow(string Name, string Unit, double Computed, string Declared, string? Serving)
{
    /// <summary>Percent of the law's daily value in a serving, in 100 g without one; null where that law has none for it.</summary>
    public string? DailyValue { get; init; }

    /// <summary>Per 100 g at the least and the most loss, unrounded, where a loss was taken from a range; null else.</summary>
    public (double Low, double High)? Range { get; init; }
}

/// <summary>A nutrition panel of the food as mixed, as its method leaves it, or as weighed at the end.</summary>
/// <param name="Regime">Whose form.</param>
/// <param name="Basis">"as mixed", "as its method leaves it, … g of … g mixed" or "weighed at the end, … g".</param>
/// <param name="ServingGrams">Grams of a serving; null without one.</param>
/// <param name="Rows">Rows in the order of the law; empty when a food's composition is not held.</param>
/// <param name="Missing">Why rows are missing or what the figures leave out.</param>
public sealed record NutritionPanel(AllergenRegime Regime, string Basis, double? ServingGrams, ImmutableArray<PanelRow> Rows, ImmutableArray<string> Missing)
{
    /// <summary>What of the method was taken into account, by component and card line.</summary>
    public ImmutableArray<string> Changes { get; init; } = [];

    /// <summary>Rows the law asks for that cannot be stated, by name: unknown, never 0.</summary>
    public ImmutableArray<string> NotStated { get; init; } = [];

    /// <summary>Worst grade of the weights it is built on.</summary>
    public WeightGrade Grade { get; init; }

    /// <summary>Weight of the food the panel is of, g; null without rows.</summary>
    public double? Grams { get; init; }
}
