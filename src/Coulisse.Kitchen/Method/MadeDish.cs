using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Method;

/// <summary>A whole dish once its methods are done: what was mixed, less what each component's steps drive off, drain, skim and trim, more what they take up.</summary>
/// <param name="MixedGrams">Weight of all its foods.</param>
/// <param name="Grams">Weight once made.</param>
/// <param name="Composition">Per 100 g once made; a part is null when a food or a step leaves it unknown.</param>
/// <param name="Changes">What was taken into account, by component and card line, in words.</param>
/// <param name="AsMixed">Components whose end is not known and that are taken as mixed, with why.</param>
/// <remarks>
/// A balance in grams: Σ foods + Σ over components (after − before), so a part that others take from is counted once and a part taken is as its own method leaves it.
/// Check: one component of 100 g water and 100 g sugar reduced to 150 g is 50 g water and 100 g sugar.
/// </remarks>
public sealed record MadeDish(double MixedGrams, double Grams, Composition Composition, ImmutableArray<string> Changes, ImmutableArray<string> AsMixed)
{
    /// <summary>True when a loss was taken from a range.</summary>
    public bool Ranged { get; init; }

    // A balance that ends further below nothing than rounding can is of a card that contradicts itself.
    private const double Rounding = 0.5;

    /// <summary>Faults that keep figures from being built: those of the card, and steps that would take more than there is.</summary>
    public static ImmutableArray<Problem> Faults(WeighedDish dish)
    {
        ArgumentNullException.ThrowIfNull(dish);
        return Parts(dish).Match(Faults, problems => problems);
    }

    /// <summary>Steps of these parts that would take more than there is.</summary>
    public static ImmutableArray<Problem> Faults(ImmutableArray<MadePart> parts) => [.. parts.SelectMany(p => p.Stages).Select(s => s.Fault).OfType<Problem>()];

    /// <summary>Each component as mixed and after its steps, where a part taken from another is as that one's method leaves it.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="unstated">Where a loss comes from that the card does not state; null takes none.</param>
    /// <param name="metres">Height above the sea, for boiled sugar.</param>
    public static Parsed<ImmutableArray<MadePart>> Parts(WeighedDish dish, UnstatedLoss? unstated = null, double metres = 0)
    {
        ArgumentNullException.ThrowIfNull(dish);

        // Each is folded once, however many take from it.
        Dictionary<Component, ImmutableArray<StageMixture>> folded = new(ReferenceEqualityComparer.Instance);
        ImmutableArray<StageMixture> Stages(WeighedComponent component, MixedComponent mixed)
        {
            if (!folded.TryGetValue(component.Component, out ImmutableArray<StageMixture> stages))
            {
                folded.Add(component.Component, stages = StageMixtures.Of(component, mixed, metres, unstated));
            }

            return stages;
        }

        return Blending.Of(dish, (component, mixed) => Stages(component, mixed).LastOrDefault()?.Composition).Match<Parsed<ImmutableArray<MadePart>>>(
            all => new Parsed<ImmutableArray<MadePart>>.Ok([.. dish.Components.Where(c => !c.Lines.IsEmpty).Zip(all, (c, m) => new MadePart(c, m, Stages(c, m)))]),
            problems => new Parsed<ImmutableArray<MadePart>>.Failed(problems));
    }

    /// <summary>Works it out.</summary>
    /// <param name="parts">Its components, without faults.</param>
    /// <param name="raw">All its foods together.</param>
    public static MadeDish Of(ImmutableArray<MadePart> parts, Blend raw)
    {
        ArgumentNullException.ThrowIfNull(raw);
        List<(MixedComponent Before, StageMixture After)> moved = [];
        List<string> changes = [], asMixed = [];
        bool ranged = false;
        foreach ((WeighedComponent component, MixedComponent mixed, ImmutableArray<StageMixture> stages) in parts)
        {
            ranged |= stages.Any(s => s.GramsRange.High - s.GramsRange.Low > 1e-9);
            if (stages.IsEmpty)
            {
                continue;
            }

            string name = component.Component.Name.Length > 0 ? component.Component.Name + ", " : "";
            StageMixture? unsure = stages.FirstOrDefault(s => s.Notes.Contains(StageMixtures.SeveralLists));
            if (mixed.Composition is null || stages[^1].Composition is null || unsure is not null)
            {
                StageMixture lost = stages.FirstOrDefault(s => s.Composition is null) ?? unsure!;
                asMixed.Add(string.Create(CultureInfo.InvariantCulture, $"{name}line {lost.Step.Span.Line}: {string.Join("; ", lost.Notes)}; taken as mixed"));
                continue;
            }

            moved.Add((mixed, stages[^1]));
            changes.AddRange(stages.Where(s => s.Moves).Select(s => string.Create(CultureInfo.InvariantCulture, $"{name}line {s.Step.Span.Line}: {string.Join("; ", s.Notes)}")));
        }

        double grams = raw.Grams + moved.Sum(m => m.After.Grams - m.Before.Grams);
        Composition made = raw.Composition.Each(of => Sum(of, raw, moved) / grams * 100);
        return grams <= 0 || made.Water * grams / 100 < -Rounding
            ? new MadeDish(raw.Grams, raw.Grams, raw.Composition, [], [.. asMixed, "its parts take more from one another than they make; taken as mixed"])
            : new MadeDish(raw.Grams, grams, made.Each(of => of(made) is { } x ? Math.Max(0, x) : null), [.. changes], [.. asMixed]) { Ranged = ranged };
    }

    private static double? Sum(Func<Composition, double?> of, Blend raw, List<(MixedComponent Before, StageMixture After)> moved)
    {
        double? sum = of(raw.Composition) * raw.Grams / 100;
        foreach ((MixedComponent before, StageMixture after) in moved)
        {
            double? was = of(before.Composition!) * before.Grams / 100;
            double? left = of(after.Composition!) * after.Grams / 100;

            // What a small component does not hold is no more known after its steps; where it weighs, the whole does not hold it either.
            sum += was is null && left is null ? 0 : left - was;
        }

        return sum;
    }
}

/// <summary>A component as mixed and after its steps.</summary>
/// <param name="Component">The component, weighed.</param>
/// <param name="Mixed">As mixed.</param>
/// <param name="Stages">After each step that changes it.</param>
public sealed record MadePart(WeighedComponent Component, MixedComponent Mixed, ImmutableArray<StageMixture> Stages);
