using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Method;

/// <summary>Minerals and vitamin C of a component before and after its cooking, mg of the whole.</summary>
/// <param name="Way">How it is cooked.</param>
/// <param name="VitaminCBefore">Vitamin C as mixed; null when a food does not hold it.</param>
/// <param name="VitaminC">After.</param>
/// <param name="PotassiumBefore">Potassium as mixed.</param>
/// <param name="Potassium">After.</param>
/// <param name="IronBefore">Iron as mixed.</param>
/// <param name="Iron">After.</param>
/// <param name="CalciumBefore">Calcium as mixed.</param>
/// <param name="Calcium">After.</param>
/// <param name="WithoutFactor">Foods the source has no factor for; they are carried over whole.</param>
/// <remarks>Yield at the level of the dish, retention at the level of the ingredient (mixed-recipe method). Check: beef in red wine, vitamin C 26.60 to 19.95 mg.</remarks>
public sealed record KeptInCooking(string Way, double? VitaminCBefore, double? VitaminC, double? PotassiumBefore, double? Potassium, double? IronBefore, double? Iron, double? CalciumBefore, double? Calcium, ImmutableArray<string> WithoutFactor)
{
    private static readonly string[] Wet = ["boil_food", "simmer", "braise", "make_stock", "poach", "stir_risotto", "reduce", "cook_rice", "cook_pasta"];
    private static readonly string[] Dry = ["bake", "roast", "gratinate"];
    private static readonly string[] Fat = ["saute", "sear", "deep_fry", "brown_onions", "griddle"];
    private static readonly string[] Parting = ["strain", "hang_drain", "drain"];

    /// <summary>Of a component; null when nothing in it has a weight or its method does not cook.</summary>
    public static KeptInCooking? Of(WeighedComponent component)
    {
        ArgumentNullException.ThrowIfNull(component);
        WeighedLine[] lines = [.. component.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        if (lines.Length == 0 || WayOf(component.Component) is not { } way)
        {
            return null;
        }

        (WeighedLine Line, Composition? Raw, Retention? Factor)[] all = [.. lines.Select(l => (l, LineComposition.Of(l), l.Known is { } f ? Retention.Find(f.Class, way) : null))];
        double? Sum(Func<Composition, double?> of, bool cooked)
        {
            double? sum = 0;
            foreach ((WeighedLine line, Composition? raw, Retention? factor) in all)
            {
                sum += raw is null ? null : line.Grams / 100 * of(cooked && factor is not null ? raw.Kept(factor) : raw);
            }

            return sum;
        }

        return new KeptInCooking(way, Sum(c => c.VitaminCMilligrams, false), Sum(c => c.VitaminCMilligrams, true), Sum(c => c.PotassiumMilligrams, false), Sum(c => c.PotassiumMilligrams, true),
            Sum(c => c.IronMilligrams, false), Sum(c => c.IronMilligrams, true), Sum(c => c.CalciumMilligrams, false), Sum(c => c.CalciumMilligrams, true),
            [.. all.Where(a => a.Factor is null).Select(a => a.Line.Food.Food).Distinct()]);
    }

    /// <summary>The way of cooking a method means; null when it does not cook. Water poured off decides over all else, being the greater loss.</summary>
    internal static string? WayOf(Component component)
    {
        string?[] operations = [.. component.Steps.SelectMany(s => s.Operations.Append(s.Operation))];
        bool wet = operations.Any(o => Wet.Contains(o));
        return wet && operations.Any(o => Parting.Contains(o)) ? "drained"
            : wet ? "simmered"
            : operations.Any(o => Dry.Contains(o)) ? "baked"
            : operations.Any(o => Fat.Contains(o)) ? "fried"
            : operations.Any(o => o is "steam") ? "steamed"
            : null;
    }
}
