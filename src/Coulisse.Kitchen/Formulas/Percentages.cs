using System.Collections.Immutable;

namespace Coulisse.Kitchen.Formulas;

/// <summary>A line as a share of the whole and of the flour.</summary>
/// <param name="Line">The line.</param>
/// <param name="OfTotal">Percent of the component's weight.</param>
/// <param name="OfFlour">Baker's percent; null without flour.</param>
public sealed record LinePercent(WeighedLine Line, double OfTotal, double? OfFlour);

/// <summary>A component's lines as percentages.</summary>
/// <param name="Component">Name.</param>
/// <param name="Grams">Weight of its weighed lines.</param>
/// <param name="Flour">Grams of flour, that inside a preferment included; 0 without.</param>
/// <param name="Hydration">Water brought by all that is no flour, percent of the flour; null without flour or when a food's water is not held.</param>
/// <param name="Lines">Its weighed lines.</param>
/// <remarks>Milk, egg and butter count with the water they hold, as the dough does. Check: 500 flour, 200 milk at 87.5 % water, 100 egg at 75 %, 50 water is 60 %.</remarks>
public sealed record Percentages(string Component, double Grams, double Flour, double? Hydration, ImmutableArray<LinePercent> Lines)
{
    private static readonly string[] AlsoFlour = ["semolina", "wheat-flour", "rye-meal", "polenta"];

    /// <summary>Percentages of a component; null when nothing in it has a weight.</summary>
    public static Percentages? Of(WeighedDish dish, WeighedComponent component)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ArgumentNullException.ThrowIfNull(component);
        WeighedLine[] weighed = [.. component.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        double grams = weighed.Sum(l => l.Grams);
        if (grams <= 0 || Takes.Circle(dish.Dish) is not null)
        {
            return null;
        }

        double flour = weighed.Sum(l => l.Grams * FlourShare(dish, l));
        double? water = 0;
        foreach (WeighedLine line in weighed)
        {
            double share = FlourShare(dish, line);
            water += share >= 1 ? 0 : line.Food.FromComponent is null
                ? line.Grams * (1 - share) * Blending.CompositionOf(dish, line)?.Water / 100
                : line.Grams * WaterShare(dish, line);
        }

        return new Percentages(component.Component.Name, grams, flour, flour > 0 && water is { } w ? 100 * w / flour : null,
            [.. weighed.Select(l => new LinePercent(l, 100 * l.Grams / grams, flour > 0 ? 100 * l.Grams / flour : null))]);
    }

    /// <summary>True for the flours and meals that a dough is reckoned on.</summary>
    public static bool IsFlour(string? foodId) => foodId is not null && (foodId.EndsWith("-flour", StringComparison.Ordinal) || AlsoFlour.Contains(foodId));

    private static double FlourShare(WeighedDish dish, WeighedLine line) => line.Food.FromComponent is null ? (IsFlour(line.Food.FoodId) ? 1 : 0)
        : From(dish, line) is { } source && Weighed(source) is { Length: > 0 } lines ? lines.Sum(l => l.Grams * FlourShare(dish, l)) / lines.Sum(l => l.Grams) : 0;

    // Water that a taken part holds outside its flour, as a share of its weight; null when it is not held.
    private static double? WaterShare(WeighedDish dish, WeighedLine line)
    {
        if (line.Food.FromComponent is null)
        {
            return IsFlour(line.Food.FoodId) ? 0 : Blending.CompositionOf(dish, line)?.Water / 100;
        }

        if (From(dish, line) is not { } source || Weighed(source) is not { Length: > 0 } lines)
        {
            return null;
        }

        double? sum = 0;
        foreach (WeighedLine l in lines)
        {
            sum += l.Grams * WaterShare(dish, l);
        }

        return sum / lines.Sum(l => l.Grams);
    }

    private static WeighedComponent? From(WeighedDish dish, WeighedLine line) => Takes.Find(dish.Dish, line.Food.FromComponent!) is { } taken ? dish.Components.FirstOrDefault(c => ReferenceEquals(c.Component, taken) && !c.Lines.Contains(line)) : null;

    private static WeighedLine[] Weighed(WeighedComponent c) => [.. c.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
}
