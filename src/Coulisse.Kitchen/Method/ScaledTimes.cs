using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Method;

/// <summary>Minutes of every step of a batch for its own size: from mass, load, thickness and the kitchen's power.</summary>
/// <remarks>
/// What a clock or a thickness decides stays; what power, load or one growing vessel decides is worked out by <see cref="ScaledDurations"/>. Minutes of hands stay as written here: they are planned from the work standards.
/// Each step says which it is and why. A time measured for a step takes the place of the card's.
/// </remarks>
public static class ScaledTimes
{
    private static readonly string[] Reducing = ["reduce", "cook_syrup", "candy_fruit"];
    private static readonly string[] InPan = ["simmer", "boil_food", "make_stock", "cook_custard", "scald_milk", "boil_agar", "braise", "poach", "cook_pasta", "cook_rice", "make_roux_sauce", "blanch_refresh", "sweat"];
    private static readonly string[] InBlender = ["blend", "blend_hot"];

    /// <summary>The batch with each step's minutes worked out.</summary>
    /// <param name="batch">What was scaled.</param>
    /// <param name="kit">The kitchen.</param>
    /// <param name="measured">Minutes measured for a step of the card's own amount, by card line; null for none.</param>
    public static Batch For(Batch batch, KitFacts kit, ImmutableDictionary<int, double>? measured = null)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(kit);
        return batch with
        {
            Components = [.. batch.Components.Select(c =>
            {
                ImmutableArray<MethodStage> stages = MethodFold.Run(c.Weighed).Stages;
                return c with { Steps = [.. c.Steps.Zip(stages, (s, stage) => Step(c, s, stage, kit, measured is not null && measured.TryGetValue(s.Step.Span.Line, out double m) ? m : null))] };
            })],
        };
    }

    private static BatchStep Step(BatchComponent component, BatchStep step, MethodStage stage, KitFacts kit, double? measured)
    {
        if ((measured ?? step.MinutesAsWritten) is not (> 0 and < 1e5 and var written))
        {
            return step;
        }

        double factor = component.Factor;
        Step s = step.Step;
        string[] does = [.. s.Operations.Append(s.Operation).OfType<string>()];
        string from = measured is null ? "" : "from the time measured; ";
        BatchStep Same(string why) => step with { Minutes = written, MinutesCautious = written, Why = from + why };
        BatchStep By(double best, double? cautious, string why) => step with { Minutes = Round(best), MinutesCautious = cautious is { } c ? Round(c) : null, Physical = true, Why = from + why };
        Mass grams = Mass.FromGrams(Math.Max(0, stage.Before.Grams));
        if (Math.Abs(factor - 1) < 0.01 || grams.Grams <= 0)
        {
            return Same("as written: the card's own amount");
        }

        if (does.Contains("fill_bath"))
        {
            return Same("the same at any size: the bath's own water");
        }

        StepTemperature? bath = s.Temperatures.FirstOrDefault(t => t.Of == TemperatureOf.Bath && t.Celsius > 20);
        if (bath is not null && kit.Bath is { } water && (does.Any(o => o is "water_bath" or "confit" or "poach") || s.Times.Any(t => t.Kind is TimeKind.Cook or TimeKind.Machine)))
        {
            (double best, double? slow) = ScaledDurations.Bathed(written, grams, factor, water, Temperature.FromCelsius(bath.Celsius), out int loads);
            return By(best, slow, string.Create(CultureInfo.InvariantCulture, $"bath: the minutes belong to the thickness; {Times(loads, "load")} of {water.Water.Grams / 1000:0.#} l, each pulls the water down"));
        }

        if (s.Temperatures.Any(t => t.Of == TemperatureOf.Oven) && kit.Shelves is { } shelves)
        {
            int tins = Math.Max(1, component.Weighed.Component.Vessels.Sum(v => Math.Max(1, v.Count)));
            (double best, double slow) = ScaledDurations.Baked(written, grams / tins, tins, factor, shelves, kit.Oven, out int loads);
            return By(best, slow, string.Create(CultureInfo.InvariantCulture, $"oven: the minutes belong to one tin; {Times(loads, "load")} of {Times(shelves, "shelf", "shelves")}, a fuller oven is slower"));
        }

        // What is not known well enough to fold still weighs what the card says at the end.
        // What went as alcohol alone is no end weight.
        double end = s.EndGrams ?? (stage.After.Water < stage.Before.Water - 0.5 ? stage.After.Grams : 0);
        // Where the card gives no end weight, what was left in good runs stands for it: the mean for the best case, the driest of them for the cautious.
        bool learnt = end <= 0 && s.LeftShare is { Mean: > 0 and < 1, Least: > 0 };
        end = learnt ? s.LeftShare!.Mean * stage.Before.Grams : end;
        double driest = learnt ? s.LeftShare!.Least * stage.Before.Grams : end;
        if (does.Any(Reducing.Contains) && end > 0 && end < stage.Before.Grams)
        {
            (double, double)? rate = s.BoiledOffPerMinute is { } m ? (m.Mean, m.Least) : null;
            double best = ScaledDurations.Reduced(written, new Reduction(grams, Mass.FromGrams(end)), factor, kit.Ring, kit.Rings, rate).Best;
            double? slow = ScaledDurations.Reduced(written, new Reduction(grams, Mass.FromGrams(driest)), factor, kit.Ring, kit.Rings, rate).Cautious;
            string by = s.BoiledOffPerMinute is { } pace ? $"a pan's own pace ({pace.Words(" g/min")}) and, if that is slower, the ring's power" : "the ring's power";
            string left = learnt ? $"; left of what went in {s.LeftShare!.Words("")}" : "";
            return By(best, slow, string.Create(CultureInfo.InvariantCulture, $"pan: {(stage.Before.Grams - end) * factor:0} g to boil off with {by}{left}"));
        }

        if (does.Any(Reducing.Contains))
        {
            return By(written * Math.Cbrt(factor), written * factor, "pan: the card gives no end weight; between a pan that grows with it and one that does not");
        }

        if (does.Any(InPan.Contains) && !s.Times.Any(t => t.Kind is TimeKind.Chill or TimeKind.Rest))
        {
            (double best, double? slow) = ScaledDurations.Simmered(written, grams, factor, kit.Ring, kit.Rings);
            return By(best, slow, string.Create(CultureInfo.InvariantCulture, $"pan: the cooking stays, coming to the boil is {grams.Grams * factor / 1000:0.#} kg over the ring's power"));
        }

        if (s.Times.Any(t => t.Kind == TimeKind.Chill))
        {
            if (s.ThicknessMillimetres is { } thick)
            {
                return Same(string.Create(CultureInfo.InvariantCulture, $"the same at any size: {thick:0.#} mm thick, only more of them; a full cold place is slower"));
            }

            if (!component.Weighed.Component.Vessels.IsEmpty)
            {
                return Same("the same at any size: more of the card's own vessels; a full cold place is slower");
            }

            (double best, double slow) = ScaledDurations.Chilled(written, grams, factor, HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(8));
            return By(best, slow, "cold: one larger vessel is thicker; in layers of the card's depth it stays as written");
        }

        if (does.Any(InBlender.Contains) && kit.BlenderLitres is { } litres)
        {
            double before = Math.Max(1, Math.Ceiling(grams.Grams / 1000 / litres));
            double loads = Math.Max(1, Math.Ceiling(grams.Grams * factor / 1000 / litres));
            return By(written / before * loads, written / before * loads, string.Create(CultureInfo.InvariantCulture, $"blender: {Times((int)loads, "load")} of {litres:0.#} l"));
        }

        return Same(s.Times.Any(t => t.Kind is TimeKind.Hands) || s.HandsMinutes is not null
            ? "hands: as written here, planned from the work standards"
            : "the same at any size: the clock decides");
    }

    private static string Times(int n, string one, string? many = null) => n.ToString(CultureInfo.InvariantCulture) + " " + (n == 1 ? one : many ?? one + "s");

    private static double Round(double minutes) => minutes < 10 ? Math.Round(minutes, 1) : Math.Round(minutes);
}
