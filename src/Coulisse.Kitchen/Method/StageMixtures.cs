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
    /// <summary>Weight at the least and the most loss, where one was taken from a range; else the weight.</summary>
    public (double Low, double High) GramsRange { get; init; } = (Grams, Grams);

    /// <summary>True when the step moves weight; a stage may also only name a sugar stage or what cooking keeps.</summary>
    public bool Moves { get; init; }

    /// <summary>Why the step cannot be; null where it can. Nothing may be built on a card with one.</summary>
    public Problem? Fault { get; init; }

    /// <summary>Minerals and vitamins left; null when nothing has a weight.</summary>
    public KeptInCooking? Kept { get; init; }

    /// <summary>Water phase; null as for a mixture.</summary>
    public Solution? Phase => Composition is { } c ? Solution.Of(c, Grams) : null;
}

/// <summary>The mixture after each step of a method that changes it: water driven off or taken up, liquid drained, fat skimmed, oil taken up, trimmings gone, alcohol gone, a sugar stage reached.</summary>
public static class StageMixtures
{
    internal const string SeveralLists = "all its lists taken as put together; the weight may be of one of them";

    /// <summary>Stages of a component, those that change nothing left out.</summary>
    /// <param name="component">The component.</param>
    /// <param name="mixed">The same as mixed.</param>
    /// <param name="metres">Height above the sea, for boiled sugar.</param>
    /// <param name="unstated">Where a loss comes from that the card does not state; null takes none.</param>
    public static ImmutableArray<StageMixture> Of(WeighedComponent component, MixedComponent mixed, double metres = 0, UnstatedLoss? unstated = null)
    {
        ArgumentNullException.ThrowIfNull(component);
        ArgumentNullException.ThrowIfNull(mixed);
        Mixture start = Mixing.Of(component, mixed);
        MethodRun run = MethodFold.Run(component, unstated, start);
        ImmutableArray<KeptInCooking?> kept = KeptInCooking.AfterSteps(component with { Lines = [.. component.Lines.Where(l => l.Food.FromComponent is null)] });
        // A part with several lists is folded as if all of them were put together at once; a weight may be of one of them, so it is no fault of the card.
        bool several = component.Lines.Select(l => l.Source.Group).Distinct().Count() > 1;
        bool ranged = run.Stages.Any(s => s.Unstated is not null);
        MethodRun least = ranged ? MethodFold.Run(component, unstated! with { End = LossEnd.Least }, start) : run;
        MethodRun most = ranged ? MethodFold.Run(component, unstated! with { End = LossEnd.Most }, start) : run;
        Blend? now = mixed.Composition is { } c && mixed.Grams > 0 ? new Blend(mixed.Grams, c, ImmutableDictionary<string, ImmutableArray<string>>.Empty) : null;
        (double trimmed, double skimmed) = (1, 1);
        List<StageMixture> stages = [];
        for (int i = 0; i < run.Stages.Length; i++)
        {
            MethodStage stage = run.Stages[i];
            double moved = stage.After.Grams - stage.Before.Grams;
            string? bounds = null;
            if (Math.Abs(moved) > 1e-9)
            {
                double share = stage.Before.Alcohol > 0 && stage.After.Alcohol is { } left ? left / stage.Before.Alcohol.Value : 1;
                (now, bounds) = now is null ? (null, null) : Changed(now, stage, share);
                trimmed *= stage.Change.Kind == StepChangeKind.Trims ? stage.After.Grams / stage.Before.Grams : 1;
                skimmed *= stage.Change.Kind == StepChangeKind.Skims && stage.Before.Fat > 0 && stage.After.Fat is { } fat ? fat / stage.Before.Fat.Value : 1;
            }

            ImmutableArray<string> sugar = now is null ? [] : Sugar(stage.Step, now.Composition, metres);
            ImmutableArray<string> bake = stage.Unstated is null && unstated?.Of(component.Component, stage.Step) is null && BakeLoss.Unsaid(component.Component, stage.Step) is { } unsaid ? [unsaid] : [];
            string? cooked = Cooked(kept[i], i == 0 ? null : kept[i - 1]);
            if (Math.Abs(moved) > 1e-9 || !stage.Losses.IsEmpty || !sugar.IsEmpty || !bake.IsEmpty || cooked is not null)
            {
                stages.Add(new StageMixture(stage.Step, stage.After.Grams, now is null ? null : Left(now, mixed, kept[i], trimmed, skimmed), [.. stage.Losses, .. new[] { bounds, several && stage.Change.Kind != StepChangeKind.None && stage.Unstated is null ? SeveralLists : null, cooked }.OfType<string>(), .. sugar, .. bake])
                {
                    GramsRange = (Math.Min(most.Stages[i].After.Grams, stage.After.Grams), Math.Max(least.Stages[i].After.Grams, stage.After.Grams)), Kept = kept[i], Moves = Math.Abs(moved) > 1e-9, Fault = several ? null : MethodFold.Fault(stage),
                });
            }
        }

        return [.. stages];
    }

    // Retention is of the whole amount, so it does not ride on the balance of water: minerals and vitamins are those mixed, times what cooking keeps, times what was not trimmed away.
    private static Composition Left(Blend now, MixedComponent mixed, KeptInCooking? kept, double trimmed, double skimmed)
    {
        if (kept is null || kept.Way.Length == 0)
        {
            return now.Composition;
        }

        Composition c = mixed.Composition!;
        double k = mixed.Grams / now.Grams * trimmed;
        return now.Composition with
        {
            CalciumMilligrams = c.CalciumMilligrams * k * kept["calcium"].Share, IronMilligrams = c.IronMilligrams * k * kept["iron"].Share, PotassiumMilligrams = c.PotassiumMilligrams * k * kept["potassium"].Share,
            VitaminCMilligrams = c.VitaminCMilligrams * k * kept["vitamin C"].Share, VitaminAMicrograms = c.VitaminAMicrograms * k * kept["vitamin A"].Share * skimmed, VitaminDMicrograms = c.VitaminDMicrograms * k * skimmed,
        };
    }

    // Said where a step takes vitamin C and there is any to speak of.
    private static string? Cooked(KeptInCooking? now, KeptInCooking? before)
    {
        if (now is null || now.Way.Length == 0 || now["vitamin C"] is not { Before: > 1, Share: var share } || share >= (before?["vitamin C"].Share ?? 1) - 1e-9)
        {
            return null;
        }

        return string.Create(CultureInfo.InvariantCulture, $"{now.Way}: {string.Join(", ", now.Nutrients.Where(n => n.HasFactor && n.Share < 0.995).Select(n => string.Create(CultureInfo.InvariantCulture, $"{n.Name} {100 * n.Share:0} %")))} kept");
    }

    // The alcohol goes first, by the minutes; then what the step states.
    private static (Blend? After, string? Bounds) Changed(Blend now, MethodStage stage, double alcoholKept)
    {
        double end = stage.After.Grams;
        double alcohol = (now.Composition.Alcohol ?? 0) * now.Grams / 100 * (1 - alcoholKept);
        StepChange change = stage.Change;
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
