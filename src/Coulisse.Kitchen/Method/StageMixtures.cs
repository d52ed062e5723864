using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Method;

/// <summary>What a component is after a step that changes it.</summary>
/// <param name="Step">The step.</param>
/// <param name="Grams">Weight after it.</param>
/// <param name="Composition">Per 100 g; null when its parts are not known.</param>
/// <param name="Notes">What went, what was taken for a sugar stage.</param>
public sealed record StageMixture(Step Step, double Grams, Composition? Composition, ImmutableArray<string> Notes)
{
    /// <summary>Water phase; null as for a mixture.</summary>
    public Solution? Phase => Composition is { } c ? Solution.Of(c, Grams) : null;
}

/// <summary>The mixture after each step of a method that changes it: water driven off or taken up, liquid drained, fat skimmed, oil taken up, trimmings gone, alcohol gone, a sugar stage reached.</summary>
public static class StageMixtures
{
    /// <summary>Stages of a component, those that change nothing left out.</summary>
    /// <param name="component">The component.</param>
    /// <param name="mixed">The same as mixed.</param>
    /// <param name="metres">Height above the sea, for boiled sugar.</param>
    public static ImmutableArray<StageMixture> Of(WeighedComponent component, MixedComponent mixed, double metres = 0)
    {
        ArgumentNullException.ThrowIfNull(component);
        ArgumentNullException.ThrowIfNull(mixed);
        Blend? now = mixed.Composition is { } c && mixed.Grams > 0 ? new Blend(mixed.Grams, c, ImmutableDictionary<string, ImmutableArray<string>>.Empty) : null;
        List<StageMixture> stages = [];
        foreach (MethodStage stage in MethodFold.Run(component).Stages)
        {
            double moved = stage.After.Grams - stage.Before.Grams;
            string? bounds = null;
            if (Math.Abs(moved) > 1e-9)
            {
                double kept = stage.Before.Alcohol > 0 && stage.After.Alcohol is { } left ? left / stage.Before.Alcohol.Value : 1;
                (now, bounds) = now is null ? (null, null) : Changed(now, stage, kept);
            }

            ImmutableArray<string> sugar = now is null ? [] : Sugar(stage.Step, now.Composition, metres);
            ImmutableArray<string> bake = BakeLoss.Unsaid(component.Component, stage.Step) is { } unsaid ? [unsaid] : [];
            if (Math.Abs(moved) > 1e-9 || !stage.Losses.IsEmpty || !sugar.IsEmpty || !bake.IsEmpty)
            {
                stages.Add(new StageMixture(stage.Step, stage.After.Grams, now?.Composition, [.. stage.Losses, .. bounds is null ? Array.Empty<string>() : [bounds], .. sugar, .. bake]));
            }
        }

        return [.. stages];
    }

    // The alcohol goes first, by the minutes; then what the step states.
    private static (Blend? After, string? Bounds) Changed(Blend now, MethodStage stage, double alcoholKept)
    {
        double end = stage.After.Grams;
        double alcohol = (now.Composition.Alcohol ?? 0) * now.Grams / 100 * (1 - alcoholKept);
        StepChange change = StepChange.Of(stage.Step, now.Grams - alcohol);
        try
        {
            Blend steamed = change.Kind == StepChangeKind.Drains || alcohol <= 1e-9 || change.Kind is StepChangeKind.Evaporates or StepChangeKind.None ? now : now.Reduced(now.Grams - alcohol, alcoholKept);
            return change.Kind switch
            {
                StepChangeKind.Evaporates or StepChangeKind.None => (now.Reduced(end, alcoholKept), null),
                StepChangeKind.TakesUp => (steamed.Soaked(end - steamed.Grams), null),
                StepChangeKind.Skims => (steamed.Skimmed(steamed.Grams - end), null),
                StepChangeKind.Trims => (steamed.Trimmed(steamed.Grams - end), null),
                StepChangeKind.Fries => (steamed.Fried(Frying.Of(stage.Step).Oil(end), end), null),
                StepChangeKind.Drains => Drained(steamed, end),
                _ => (null, null),
            };
        }
        catch (ArgumentOutOfRangeException)
        {
            // The fold has already said why, in grams; nothing downstream is built on it.
            return (null, null);
        }
    }

    // What dissolves leaves with the liquid somewhere between not at all (a quick rinse) and evenly (a long boil, a brine): both bounds are worked out, the middle is carried on.
    private static (Blend? After, string? Bounds) Drained(Blend now, double end)
    {
        double run = now.Grams - end;
        Blend clear = now.Drained(run, 0);
        Blend even = now.Liquid(1) is not null ? now.Drained(run, 1) : clear;
        Blend middle = now.Liquid(0.5) is not null ? now.Drained(run, 0.5) : clear;
        return (middle, string.Create(CultureInfo.InvariantCulture, $"what dissolves goes with the liquid in part: sugars {even.Composition.Sugars:0.##} to {clear.Composition.Sugars:0.##}, salt {even.Composition.SodiumMilligrams * 2.5 / 1000:0.##} to {clear.Composition.SodiumMilligrams * 2.5 / 1000:0.##} g per 100 g; the middle is taken"));
    }

    /// <summary>Stage of boiled sugar for a step that states a temperature, and where to stop at a height.</summary>
    internal static ImmutableArray<string> Sugar(Step step, Composition c, double metres)
    {
        if (c.Sugars is not > 50 || (c.Fat ?? 0) > 5 || (c.Protein ?? 0) > 5)
        {
            return [];
        }

        return [.. step.Temperatures.Where(t => t.Of is TemperatureOf.Food or TemperatureOf.Pan or TemperatureOf.Core && t.Celsius is >= 105 and <= 180).Select(t =>
        {
            string stage = Syrup.Stage(t.Celsius) ?? "between the named stages";
            string solids = Syrup.BrixBoilingAt(t.Celsius) is { } brix ? string.Create(CultureInfo.InvariantCulture, $", about {brix:0} % sugar") : "";
            return string.Create(CultureInfo.InvariantCulture, $"{t.Celsius:0.#} °C is {stage} at sea level{solids}{(metres > 0 ? $"; at {metres.ToString("0", CultureInfo.InvariantCulture)} m take {(t.Celsius - (metres / 300)).ToString("0.#", CultureInfo.InvariantCulture)} °C" : "")}");
        })];
    }
}
