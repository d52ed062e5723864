using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Method;

/// <summary>Folds a component's method over its mixture: what each step leaves.</summary>
/// <remarks>
/// All lines are taken as put together from the first step on. Water goes where a step that heats or dries states an end weight or a loss;
/// alcohol goes by the minutes of simmering and baking so far, as stirred in; nothing else is guessed. What is drained or strained off takes more than water with it, so from there on the parts are not known.
/// </remarks>
public static class MethodFold
{
    private static readonly string[] Parting = ["strain", "sieve_fine", "hang_drain", "drain"];
    private static readonly string[] Driving = ["reduce", "simmer", "bake", "dehydrate", "roast", "boil_food", "braise", "cook_syrup", "deglaze"];

    /// <summary>One stage for each step.</summary>
    public static MethodRun Run(WeighedComponent component)
    {
        ArgumentNullException.ThrowIfNull(component);
        Mixture now = Mixing.Of(component);
        double alcohol = now.Alcohol ?? 0;
        double? hot = null;
        List<MethodStage> stages = [];
        foreach (Step step in component.Component.Steps)
        {
            hot = HotMinutes(step) is { } more ? (hot ?? 0) + more : hot;
            double left = hot is { } minutes ? Math.Min(now.Alcohol ?? 0, alcohol * Spirit.LeftAfter(minutes).Best) : now.Alcohol ?? 0;
            (Mixture after, ImmutableArray<string> losses) = Leave(now, step, (now.Alcohol ?? 0) - left);
            stages.Add(new MethodStage(step, now, after, Duration(step), null, losses));
            now = after;
        }

        return new MethodRun(component.Component.Name, [.. stages]);
    }

    /// <summary>Steps that state an end below what can be driven off, where every food of the component is known: nothing may be built on them.</summary>
    public static ImmutableArray<Problem> Faults(WeighedComponent component)
    {
        MethodRun run = Run(component);
        return [.. run.Stages.Where(s => s.Before.Unknown.IsEmpty && s.After.Unknown.IsEmpty && s.Losses.Any(l => l.Contains("nothing was taken off", StringComparison.Ordinal)))
            .Select(s => new Problem("MIX002", s.Step.Span.Line, s.Losses.Last(), string.Create(CultureInfo.InvariantCulture, $"Between {s.Before.Grams - (s.Before.Water ?? 0):0.#} and {s.Before.Grams:0.#} g are left after it.")))];
    }

    private static (Mixture After, ImmutableArray<string> Losses) Leave(Mixture whole, Step step, double alcoholGone)
    {
        (Mixture before, ImmutableArray<string> first) = alcoholGone > 0.05
            ? (whole with { Grams = whole.Grams - alcoholGone, Alcohol = whole.Alcohol - alcoholGone }, ImmutableArray.Create(string.Create(CultureInfo.InvariantCulture, $"about {alcoholGone:0.#} g of {whole.Alcohol:0.#} g of alcohol gone with the steam; never a claim that none is left")))
            : (whole, []);
        double? end = step.EndGrams ?? (step.LossPercent is { } percent and > 0 and < 100 ? before.Grams * (1 - (percent / 100)) : null);
        if (end is not { } left || left >= before.Grams || left <= 0)
        {
            return (before, first);
        }

        double lost = before.Grams - left;
        bool parted = step.Operations.Append(step.Operation).Any(o => Parting.Contains(o)) || step.Text.Contains("drain", StringComparison.OrdinalIgnoreCase);
        if (parted)
        {
            return (new Mixture { Grams = left, UnknownGrams = left, Unknown = ["what stayed behind after draining"] }, [.. first, string.Create(CultureInfo.InvariantCulture, $"{lost:0.#} g drained or strained off; its parts are not known")]);
        }

        bool drives = step.Temperatures.Any(t => t.Of is TemperatureOf.Oven or TemperatureOf.Dryer or TemperatureOf.Pan || t.Celsius >= 60) || step.Operations.Append(step.Operation).Any(o => o is "reduce" or "simmer" or "bake" or "dehydrate" or "roast" or "boil_food");
        if (!drives)
        {
            // Only a part of it is spoken of ("press 485 g of it into the tin"), or a loss of another kind.
            return (before, first);
        }

        return lost <= before.Water
            ? (before with { Grams = left, Water = before.Water - lost }, [.. first, string.Create(CultureInfo.InvariantCulture, $"{lost:0.#} g of water driven off")])
            : (before, [.. first, string.Create(CultureInfo.InvariantCulture, $"The end weight of {left:0.#} g would take {lost:0.#} g, more than the {before.Water ?? 0:0.#} g of water known in it; nothing was taken off")]);
    }

    // Minutes of simmering or baking a step states; 0 for one that heats and states none; null for one that does not.
    private static double? HotMinutes(Step step)
    {
        bool hot = step.Operations.Append(step.Operation).Any(o => Driving.Contains(o) && o != "dehydrate") || step.Times.Any(t => t.Kind is TimeKind.Oven);
        return !hot ? null : step.Times.Where(t => t.Kind is TimeKind.Oven or TimeKind.Cook && t.MinutesMin is not null).Sum(t => (t.MinutesMin!.Value + (t.MinutesMax ?? t.MinutesMin.Value)) / 2 * t.Repeats);
    }

    private static Estimate<double>? Duration(Step step)
    {
        StepTime[] times = [.. step.Times.Where(t => t.Kind != TimeKind.Limit && t.MinutesMin is not null)];
        if (times.Length == 0)
        {
            return null;
        }

        double low = times.Sum(t => t.MinutesMin!.Value * t.Repeats);
        double high = times.Sum(t => (t.MinutesMax ?? t.MinutesMin!.Value) * t.Repeats);
        return new Estimate<double>((low + high) / 2, Math.Min(low, high), Math.Max(low, high), Origin.Typed("The card states the time."));
    }
}
