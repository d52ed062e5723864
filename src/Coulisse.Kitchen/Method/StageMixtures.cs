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

/// <summary>The mixture after each step of a method that changes it: water driven off, alcohol gone, a sugar stage reached.</summary>
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
            double gone = stage.Before.Grams - stage.After.Grams;
            if (gone > 1e-9)
            {
                double kept = stage.Before.Alcohol > 0 && stage.After.Alcohol is { } left ? left / stage.Before.Alcohol.Value : 1;
                now = now is null || stage.After.Unknown.Length > stage.Before.Unknown.Length ? null : Reduced(now, stage.After.Grams, kept);
            }

            ImmutableArray<string> sugar = now is null ? [] : Sugar(stage.Step, now.Composition, metres);
            if (gone > 1e-9 || !stage.Losses.IsEmpty || !sugar.IsEmpty)
            {
                stages.Add(new StageMixture(stage.Step, stage.After.Grams, now?.Composition, [.. stage.Losses, .. sugar]));
            }
        }

        return [.. stages];
    }

    private static Blend? Reduced(Blend now, double grams, double kept)
    {
        double water = (now.Composition.Water ?? 0) * now.Grams / 100;
        double alcohol = (now.Composition.Alcohol ?? 0) * now.Grams / 100 * (1 - kept);
        return now.Grams - grams - alcohol <= water + 1e-6 ? now.Reduced(grams, kept) : null;
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
