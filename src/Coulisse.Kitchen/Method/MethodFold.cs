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
/// alcohol goes by the minutes of simmering and baking so far, as stirred in; water goes in where a soak or a boil ends heavier; fat where it is skimmed; nothing else is guessed.
/// What is drained or strained off takes more than water with it, so from there on the parts are not known here; bounds for the drained are given by <see cref="StageMixtures"/>.
/// </remarks>
public static class MethodFold
{
    private static readonly string[] Driving = ["reduce", "simmer", "bake", "dehydrate", "roast", "boil_food", "braise", "cook_syrup", "deglaze"];

    private static readonly string[] Flaming = ["flamb", "fiamm", "set alight", "set it alight", "ignite", "フランベ"];

    /// <summary>One stage for each step.</summary>
    /// <param name="component">The component, weighed.</param>
    /// <param name="unstated">Where a loss comes from that the card does not state; null takes none.</param>
    /// <param name="start">What is put together; null for the lines alone, where a part taken from another component is not known.</param>
    public static MethodRun Run(WeighedComponent component, UnstatedLoss? unstated = null, Mixture? start = null)
    {
        ArgumentNullException.ThrowIfNull(component);
        Mixture now = start ?? Mixing.Of(component);
        double mixed = now.Grams;
        double alcohol = now.Alcohol ?? 0;
        double? hot = null;
        List<MethodStage> stages = [];
        foreach (Step step in component.Component.Steps)
        {
            hot = HotMinutes(step) is { } more ? (hot ?? 0) + more : hot;
            double left = hot is { } minutes ? Math.Min(now.Alcohol ?? 0, alcohol * Spirit.LeftAfter(minutes).Best) : now.Alcohol ?? 0;
            left = Flamed(step) ? Math.Min(left, alcohol * Spirit.LeftBy("flamed")) : left;
            LossRange? range = unstated?.Of(component.Component, step);
            double? end = range is null ? null : (range.OfAll ? mixed : now.Grams - (now.Alcohol ?? 0) + left) * (1 - range.At(unstated!.End));
            (Mixture after, StepChange change, ImmutableArray<string> losses) = Leave(now, step, (now.Alcohol ?? 0) - left, range, end);
            stages.Add(new MethodStage(step, now, after, Duration(step), null, losses) { Change = change, Unstated = range is not null && end < now.Grams && change.Left == end ? range : null });
            now = after;
        }

        return new MethodRun(component.Component.Name, [.. stages]);
    }

    /// <summary>Steps that state an end below what can be driven off, where every food of the component is known: nothing may be built on them.</summary>
    public static ImmutableArray<Problem> Faults(WeighedComponent component)
    {
        return [.. Run(component).Stages.Select(Fault).OfType<Problem>()];
    }

    /// <summary>The fault of one stage; null where there is none.</summary>
    internal static Problem? Fault(MethodStage s) => s.Before.Unknown.IsEmpty && s.After.Unknown.IsEmpty && s.Losses.Any(l => l.Contains("nothing was taken off", StringComparison.Ordinal))
        ? new Problem("MIX002", s.Step.Span.Line, s.Losses.Last(), string.Create(CultureInfo.InvariantCulture, $"Between {s.Before.Grams - (s.Before.Water ?? 0):0.#} and {s.Before.Grams:0.#} g are left after it."))
        : null;

    private static (Mixture After, StepChange Change, ImmutableArray<string> Losses) Leave(Mixture whole, Step step, double alcoholGone, LossRange? range, double? unstatedEnd)
    {
        (Mixture before, ImmutableArray<string> first) = alcoholGone > 0.05
            ? (whole with { Grams = whole.Grams - alcoholGone, Alcohol = whole.Alcohol - alcoholGone }, ImmutableArray.Create(string.Create(CultureInfo.InvariantCulture, $"about {alcoholGone:0.#} g of {whole.Alcohol:0.#} g of alcohol gone with the steam; never a claim that none is left")))
            : (whole, []);
        StepChange change = StepChange.Of(step, before.Grams);
        if (change.Kind == StepChangeKind.None && range is not null && unstatedEnd is { } end && end < before.Grams)
        {
            return Unstated(before, range, end, first);
        }

        double lost = before.Grams - change.Left;
        (Mixture After, string? Said) = change.Kind switch
        {
            StepChangeKind.Strains => (new Mixture { Grams = change.Left, UnknownGrams = change.Left, Unknown = ["what stayed behind after straining"] }, Say($"{lost:0.#} g strained off; its parts are not known")),
            StepChangeKind.Drains => (Drained(before, change.Left), lost <= (before.Water ?? 0) + (before.Alcohol ?? 0) + (before.Sugars ?? 0)
                ? Say($"{lost:0.#} g of liquid drained off") : Say($"{lost:0.#} g drained off, more than the liquid known in it; its parts are not known")),
            StepChangeKind.TakesUp => (before with { Grams = change.Left, Water = before.Water - lost }, Say($"{-lost:0.#} g of water taken up")),
            StepChangeKind.Trims => (Cut(before, change.Left / before.Grams), Say($"{lost:0.#} g trimmed off, taken as of the same make")),
            StepChangeKind.Skims => lost <= before.Fat ? (before with { Grams = change.Left, Fat = before.Fat - lost }, Say($"{lost:0.#} g of fat skimmed off"))
                : (before, Say($"The end weight of {change.Left:0.#} g would take {lost:0.#} g of fat, more than the {before.Fat ?? 0:0.#} g known in it; nothing was taken off")),
            StepChangeKind.Evaporates => lost <= before.Water ? (before with { Grams = change.Left, Water = before.Water - lost }, Say($"{lost:0.#} g of water driven off"))
                : (before, Say($"The end weight of {change.Left:0.#} g would take {lost:0.#} g, more than the {before.Water ?? 0:0.#} g of water known in it; nothing was taken off")),
            StepChangeKind.Fries => Frying.Of(before, step, change.Left),
            _ => (before, (string?)null),
        };
        return (After, change, Said is null ? first : [.. first, Said]);
    }

    // The card is silent, so a figure that cannot be is no fault of the card: nothing is taken, and that is said.
    private static (Mixture After, StepChange Change, ImmutableArray<string> Losses) Unstated(Mixture before, LossRange range, double end, ImmutableArray<string> first)
    {
        double lost = before.Grams - end;
        string share = Say($"{100 * range.Best:0.#} % ({100 * range.Least:0.#} to {100 * range.Most:0.#} %)");
        return lost <= before.Water
            ? (before with { Grams = end, Water = before.Water - lost }, new StepChange(StepChangeKind.Evaporates, end), [.. first, Say($"loses about {share}, {range.Source}: {lost:0.#} g of water driven off")])
            : (before, new StepChange(StepChangeKind.None, before.Grams), [.. first, Say($"would lose {share}, {range.Source}; its known water is {before.Water ?? 0:0.#} g, so no loss is taken")]);
    }

    // The middle of the two bounds (half of what dissolves is in the liquid), kept as unknown: nothing that must be safe is judged on it.
    private static Mixture Drained(Mixture m, double left)
    {
        double dissolved = ((m.Sugars ?? 0) + (2.542 * (m.SodiumMilligrams ?? 0) / 1000)) / 2;
        double there = (m.Water ?? 0) + (m.Alcohol ?? 0) + dissolved;
        string[] unknown = ["what stayed behind after draining"];
        if (m.Grams - left > there || there <= 0)
        {
            return new Mixture { Grams = left, UnknownGrams = left, Unknown = [.. unknown] };
        }

        double f = (m.Grams - left) / there;
        double s = 1 - (f / 2);
        return m with
        {
            Grams = left, Water = m.Water * (1 - f), Alcohol = m.Alcohol * (1 - f), Carbohydrate = m.Carbohydrate - (m.Sugars * (1 - s)), Sugars = m.Sugars * s,
            Ash = m.Ash - (2.542 * m.SodiumMilligrams / 1000 * (1 - s)), SodiumMilligrams = m.SodiumMilligrams * s, UnknownGrams = left, Unknown = [.. unknown],
        };
    }

    private static Mixture Cut(Mixture m, double k) => m with
    {
        Grams = m.Grams * k, Water = m.Water * k, Protein = m.Protein * k, Fat = m.Fat * k, Carbohydrate = m.Carbohydrate * k, Sugars = m.Sugars * k, Fibre = m.Fibre * k, Ash = m.Ash * k, Alcohol = m.Alcohol * k,
        SodiumMilligrams = m.SodiumMilligrams * k, UnknownGrams = m.UnknownGrams * k,
    };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    // Minutes of simmering or baking a step states; 0 for one that heats and states none; null for one that does not.
    private static double? HotMinutes(Step step)
    {
        bool hot = step.Operations.Append(step.Operation).Any(o => Driving.Contains(o) && o != "dehydrate") || step.Times.Any(t => t.Kind is TimeKind.Oven);
        return !hot ? null : step.Times.Where(t => t.Kind is TimeKind.Oven or TimeKind.Cook && t.MinutesMin is not null).Sum(t => (t.MinutesMin!.Value + (t.MinutesMax ?? t.MinutesMin.Value)) / 2 * t.Repeats);
    }

    // Burning spirit off leaves most of it: three quarters by the table.
    private static bool Flamed(Step step) => Flaming.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase));

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
