using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Coulisse.Cards;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Formulas;

/// <summary>How sure a weight is; the worst grade of the inputs shows on every figure built on them.</summary>
public enum WeightGrade
{
    /// <summary>A mass is stated.</summary>
    Weighed,

    /// <summary>A volume or a count times a table value.</summary>
    Converted,

    /// <summary>A word ("a knob") or a wide table value.</summary>
    Estimated,

    /// <summary>No weight can be given; it must be asked.</summary>
    Unknown,
}

/// <summary>A dish whose every line has grams, a range and a reason, or says that it has none.</summary>
/// <param name="Dish">The card as read.</param>
/// <param name="Components">Its components, in order.</param>
/// <param name="Measures">Size system used for spoons and cups: au, nz, uk, us, jp, metric.</param>
public sealed record WeighedDish(Dish Dish, ImmutableArray<WeighedComponent> Components, string Measures)
{
    /// <summary>Doubts that weighing added to those of reading (spoon systems that differ, missing unit weights).</summary>
    public ImmutableArray<Doubt> Doubts { get; init; } = [];

    /// <summary>The foods it was weighed with: those that ship, with the house's own laid over.</summary>
    [JsonIgnore]
    public FoodTable Foods { get; init; } = FoodTable.Default;
}

/// <summary>A component with its weights.</summary>
/// <param name="Component">As read.</param>
/// <param name="Lines">One for each food of each ingredient line, in order.</param>
public sealed record WeighedComponent(Component Component, ImmutableArray<WeighedLine> Lines)
{
    /// <summary>Sum of the lines that have grams and are no totals.</summary>
    public double Grams => Lines.Where(l => l.Grade != WeightGrade.Unknown).Sum(l => l.Grams);

    /// <summary>Worst grade of its lines.</summary>
    public WeightGrade Grade => Lines.IsEmpty ? WeightGrade.Unknown : Lines.Max(l => l.Grade);
}

/// <summary>A food of a line with its grams.</summary>
/// <param name="Source">The line it stands in.</param>
/// <param name="Food">The food as read.</param>
/// <param name="Grams">Best grams; 0 when <paramref name="Grade"/> is unknown.</param>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
/// <param name="Grade">How sure.</param>
/// <param name="Why">Where the grams came from.</param>
public sealed record WeighedLine(IngredientLine Source, FoodAmount Food, double Grams, double Low, double High, WeightGrade Grade, Origin Why)
{
    /// <summary>The row of the food table it was taken for, the house's own where it has one; null when the food is not known or is a part of another component.</summary>
    [JsonIgnore]
    public Food? Known { get; init; }
}
