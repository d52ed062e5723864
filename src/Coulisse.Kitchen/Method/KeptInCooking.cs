using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Method;

/// <summary>A mineral or vitamin of a component, in the whole of it.</summary>
/// <param name="Name">"vitamin C" …</param>
/// <param name="Unit">mg or µg.</param>
/// <param name="Before">As mixed; null when a food does not hold it.</param>
/// <param name="After">After the cooking; null likewise.</param>
/// <param name="Share">Share kept, 0 to 1, over the foods that hold it.</param>
/// <param name="HasFactor">False where the source has no factor at all: it is carried over whole.</param>
public sealed record KeptNutrient(string Name, string Unit, double? Before, double? After, double Share, bool HasFactor);

/// <summary>Minerals and vitamins of a component before and after its cooking, of the whole.</summary>
/// <param name="Way">How it is cooked; empty where nothing cooks it yet.</param>
/// <param name="Nutrients">Calcium, iron, potassium, vitamins C, A and D.</param>
/// <param name="WithoutFactor">Foods the source has no factor for; they are carried over whole.</param>
/// <remarks>
/// Yield at the level of the dish, retention at the level of the ingredient (mixed-recipe method). Check: beef in red wine, vitamin C 26.60 to 19.95 mg.
/// The source has no factor for vitamin D: it is carried over whole, and said.
/// Of several ways of cooking one after the other the least factor counts; they are not multiplied, as each is from raw to done.
/// </remarks>
public sealed record KeptInCooking(string Way, ImmutableArray<KeptNutrient> Nutrients, ImmutableArray<string> WithoutFactor)
{
    private static readonly string[] Wet = ["boil_food", "simmer", "braise", "make_stock", "poach", "stir_risotto", "reduce", "cook_rice", "cook_pasta"];
    private static readonly string[] Dry = ["bake", "roast", "gratinate"];
    private static readonly string[] Fat = ["saute", "sear", "deep_fry", "brown_onions", "griddle"];
    private static readonly string[] Parting = ["strain", "hang_drain", "drain"];

    private static readonly (string Name, string Unit, Func<Composition, double?> Of, Func<Retention, double>? Factor)[] Held =
    [
        ("calcium", "mg", c => c.CalciumMilligrams, r => r.Calcium), ("iron", "mg", c => c.IronMilligrams, r => r.Iron), ("potassium", "mg", c => c.PotassiumMilligrams, r => r.Potassium),
        ("vitamin C", "mg", c => c.VitaminCMilligrams, r => r.VitaminC), ("vitamin A", "µg", c => c.VitaminAMicrograms, r => r.VitaminA), ("vitamin D", "µg", c => c.VitaminDMicrograms, null),
    ];

    /// <summary>A nutrient by its name.</summary>
    public KeptNutrient this[string name] => Nutrients.First(n => n.Name == name);

    /// <summary>Of a component; null when nothing in it has a weight or its method does not cook.</summary>
    public static KeptInCooking? Of(WeighedComponent component)
    {
        ArgumentNullException.ThrowIfNull(component);
        return WayOf(component.Component) is { } way ? Worked(component, [way]) : null;
    }

    /// <summary>Of a component after each of its steps, one for each; null for all when nothing in it has a weight.</summary>
    /// <remarks>A step that cooks sets the least factor so far; pouring off after wet heat makes it that of food whose water is poured off.</remarks>
    public static ImmutableArray<KeptInCooking?> AfterSteps(WeighedComponent component)
    {
        ArgumentNullException.ThrowIfNull(component);
        List<string> ways = [];
        bool wet = false;
        KeptInCooking? now = Worked(component, ways);
        ImmutableArray<KeptInCooking?>.Builder after = ImmutableArray.CreateBuilder<KeptInCooking?>(component.Component.Steps.Length);
        foreach (Step step in component.Component.Steps)
        {
            string?[] done = [.. step.Operations.Append(step.Operation)];
            wet |= done.Any(o => Wet.Contains(o));
            string? way = wet && done.Any(o => Parting.Contains(o)) ? "drained" : WayOf(done);
            if (way is not null && !ways.Contains(way))
            {
                ways.Add(way);
                now = Worked(component, ways);
            }

            after.Add(now);
        }

        return after.MoveToImmutable();
    }

    /// <summary>The way of cooking a method means; null when it does not cook. Water poured off decides over all else, being the greater loss.</summary>
    internal static string? WayOf(Component component) => WayOf([.. component.Steps.SelectMany(s => s.Operations.Append(s.Operation))]);

    private static string? WayOf(string?[] operations)
    {
        bool wet = operations.Any(o => Wet.Contains(o));
        return wet && operations.Any(o => Parting.Contains(o)) ? "drained"
            : wet ? "simmered"
            : operations.Any(o => Dry.Contains(o)) ? "baked"
            : operations.Any(o => Fat.Contains(o)) ? "fried"
            : operations.Any(o => o is "steam") ? "steamed"
            : null;
    }

    private static KeptInCooking? Worked(WeighedComponent component, List<string> ways)
    {
        WeighedLine[] lines = [.. component.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        if (lines.Length == 0)
        {
            return null;
        }

        (WeighedLine Line, Composition? Raw, Retention[] Factors)[] all = [.. lines.Select(l => (l, LineComposition.Of(l), l.Known is { } f ? ways.Select(w => Retention.Find(f.Class, w)).OfType<Retention>().ToArray() : []))];
        KeptNutrient Nutrient((string Name, string Unit, Func<Composition, double?> Of, Func<Retention, double>? Factor) n)
        {
            (double before, double after, bool lacks) = (0, 0, false);
            foreach ((WeighedLine line, Composition? raw, Retention[] factors) in all)
            {
                if (raw is null || n.Of(raw) is not { } held)
                {
                    lacks = true;
                    continue;
                }

                before += line.Grams / 100 * held;
                after += line.Grams / 100 * held * (n.Factor is null || factors.Length == 0 ? 1 : factors.Min(n.Factor));
            }

            return new KeptNutrient(n.Name, n.Unit, lacks ? null : before, lacks ? null : after, before > 0 ? after / before : 1, n.Factor is not null);
        }

        return new KeptInCooking(ways.Count == 0 ? "" : ways[^1], [.. Held.Select(Nutrient)],
            ways.Count == 0 ? [] : [.. all.Where(a => a.Factors.Length == 0).Select(a => a.Line.Food.Food).Distinct()]);
    }
}
