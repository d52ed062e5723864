using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Trials;

/// <summary>What trials teach the next plan: minutes of steps, and of a standardised card what its parts weigh, how fast they boil down and how fast heat goes in.</summary>
public static class TrialLearning
{
    private static readonly string[] Reducing = ["reduce", "cook_syrup", "candy_fruit"];

    // Whatever else takes weight away would be counted as boiled off.
    private static readonly string[] Taking = ["strain", "sieve_fine", "drain", "hang_drain", "simmer", "bake", "blind_bake", "dehydrate", "roast", "boil_food", "braise", "deglaze", "deep_fry", "fry", "sweat", "make_stock", "skim"];

    /// <summary>Minutes by step, brought to the card's amount; steps that the card no longer has are left out.</summary>
    /// <param name="dish">The card as it is now.</param>
    /// <param name="trials">Trials of any version of it.</param>
    public static ImmutableArray<LearntTime> Times(Dish dish, IReadOnlyList<Trial> trials)
        => [.. Steps(dish).Select(s => new LearntTime(s.Step.Anchor.Component, s.Step.Anchor.Fingerprint,
            [.. trials.SelectMany(t => t.Times.Where(m => m.Minutes > 0 && Same(m.Part, s.Component.Name) && Same(m.Step, s.Step.Text)).Select(m => m.Minutes / t.Factor))])).Where(l => !l.Minutes.IsEmpty)];

    /// <summary>What the good runs of a standardised card came to; null when it is not standardised: then nothing but minutes is learnt.</summary>
    /// <param name="dish">The card as it is now.</param>
    /// <param name="trials">Trials of one version of it, or of versions with the same lists and steps.</param>
    public static LearntCard? Card(Dish dish, IReadOnlyList<Trial> trials)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ArgumentNullException.ThrowIfNull(trials);
        if (!TrialSummary.Of(trials).Standardised)
        {
            return null;
        }

        Trial[] good = [.. trials.Where(t => t.Good == true)];
        LearntPart[] parts = [.. dish.Components.Select(c => (Component: c, Grams: Of([.. good.Select(t => Yield(t, dish, c) is { } y ? (y.OutGrams / t.Factor, (double?)null, (double?)null) : ((double, double?, double?)?)null)])))
            .Where(p => p.Grams is not null).Select(p => new LearntPart(p.Component.Name, p.Grams!))];
        LearntStep[] steps = [.. Steps(dish).Select(s => Step(dish, s.Component, s.Step, good)).Where(s => s.BoiledOffPerMinute is not null || s.LeftShare is not null || s.SurfaceWatts is not null)];
        return new LearntCard(dish.Title, good.Length, [.. parts], [.. steps]);
    }

    /// <summary>True when two versions of a card are the same thing to make: the same parts, lists and steps, word for word but for spacing, case and punctuation. A note that was added unteaches nothing.</summary>
    public static bool SameMake(Dish a, Dish b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        // amounts by their figures, not by their words: "1.5 kg" and "15 kg" differ by a point only
        static string[] Said(Component c) => [Plain(c.Name), .. c.Ingredients.Select(i => string.Join(' ', i.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))), .. c.Steps.Select(s => s.Anchor.Fingerprint)];
        return a.Components.SelectMany(Said).SequenceEqual(b.Components.SelectMany(Said), StringComparer.Ordinal);
    }

    private static LearntStep Step(Dish dish, Component component, Step step, Trial[] good)
    {
        (Measured? pace, Measured? left) = Alone(component, step) ? Reduced(dish, component, step, good) : (null, null);
        Measured? surface = Of([.. good.Select(t => t.Cores.FirstOrDefault(c => c.Watts > 0 && Same(c.Part, component.Name) && Same(c.Step, step.Text)) is { Watts: { } h } core
            ? (h, core.WattsLeast, core.WattsMost) : ((double, double?, double?)?)null)]);
        return new LearntStep(step.Anchor.Component, step.Anchor.Fingerprint, pace, left, surface);
    }

    // Water that went, by the scale before and after: what sticks to the pan is no steam.
    private static (Measured? Pace, Measured? Left) Reduced(Dish dish, Component component, Step step, Trial[] good)
    {
        (double Gone, double Share, double? Minutes)?[] runs = [.. good.Select(t =>
            Yield(t, dish, component) is { InGrams: > 0 and var went } y && went - y.OutGrams - (y.LeftGrams ?? 0) is > 0 and var gone
                ? (gone, 1 - (gone / went), t.Times.Where(m => m.Minutes > 0 && Same(m.Part, component.Name) && Same(m.Step, step.Text)).Select(m => (double?)m.Minutes).FirstOrDefault())
                : ((double, double, double?)?)null)];
        return (Of([.. runs.Select(r => r is { Minutes: { } minutes } x ? (x.Gone / minutes, (double?)null, (double?)null) : ((double, double?, double?)?)null)]),
            Of([.. runs.Select(r => r is { } x ? (x.Share, (double?)null, (double?)null) : ((double, double?, double?)?)null)]));
    }

    // The part's one step that drives water off, and no other that heats or takes away.
    private static bool Alone(Component component, Step step) => Does(step, Reducing) && component.Steps.All(s => s == step
        || !(Does(s, Reducing) || Does(s, Taking) || s.Operations.Append(s.Operation).Any(o => o?.StartsWith("trim_", StringComparison.Ordinal) == true) || s.Temperatures.Any(t => t.Of is TemperatureOf.Oven or TemperatureOf.Dryer or TemperatureOf.Pan)));

    private static bool Does(Step step, string[] what) => step.Operations.Append(step.Operation).Any(o => o is not null && what.Contains(o));

    private static TrialYield? Yield(Trial trial, Dish dish, Component component)
        => trial.Yields.FirstOrDefault(y => Same(y.Part, component.Name.Length > 0 ? component.Name : dish.Title) || (dish.Components.Length == 1 && Same(y.Part, dish.Title)));

    /// <summary>Mean and spread; null when fewer than three runs measured it.</summary>
    private static Measured? Of((double Value, double? Low, double? High)?[] runs)
    {
        (double Value, double? Low, double? High)[] measured = [.. runs.OfType<(double Value, double? Low, double? High)>()];
        if (measured.Length < Measured.LeastRuns)
        {
            return null;
        }

        Repeated all = Repeated.Of("", "", [.. measured.Select(m => m.Value)]);
        return new Measured(all.Count, all.Mean, all.Deviation ?? 0, measured.Min(m => m.Low is { } l ? Math.Min(l, m.Value) : m.Value), measured.Max(m => m.High is { } h ? Math.Max(h, m.Value) : m.Value));
    }

    private static IEnumerable<(Component Component, Step Step)> Steps(Dish dish) => dish.Components.SelectMany(c => c.Steps.Select(s => (c, s)));

    private static bool Same(string a, string b) => string.Equals(Plain(a), Plain(b), StringComparison.Ordinal);

    private static string Plain(string text) => string.Concat(text.ReplaceLineEndings(" ").Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
