using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Formulas;

/// <summary>A component as mixed: its composition and what follows from it.</summary>
/// <param name="Name">Component.</param>
/// <param name="Grams">Weight of its weighed lines.</param>
/// <param name="Composition">Per 100 g; null when a weighed food is not known.</param>
/// <param name="Unknown">Weighed foods whose composition is not held, as written.</param>
/// <param name="LeftOut">Foods without a weight, as written.</param>
/// <param name="Phase">Its water and what is dissolved; null without water or when sugars are not held.</param>
/// <param name="Agents">Setting agents with their verdicts.</param>
public sealed record MixedComponent(string Name, double Grams, Composition? Composition, ImmutableArray<string> Unknown, ImmutableArray<string> LeftOut, Solution? Phase, ImmutableArray<AgentVerdict> Agents)
{
    /// <summary>Water activity as a band; null when there is no water phase, or hardly any: the models are of solutions.</summary>
    public WaterActivity? Activity => Phase is { Water: > 0 } p && Composition!.Water > 5 ? WaterActivity.Of(p) : null;

    /// <summary>Start of freezing, °C; null without a water phase or below −40 °C.</summary>
    public double? FreezingPoint => Phase is { Water: > 0 } p && Composition!.Water > 5 ? Freezing.Point(p) : null;

    /// <summary>Share of the water that is ice at a temperature, 0 to 1; null as the freezing point, and colder than −40 °C.</summary>
    public double? IceShare(double celsius) => celsius >= -40 && FreezingPoint is not null ? Freezing.IceShare(Phase!, celsius) : null;

    /// <summary>Fat by volume of all of it without air, percent: above 74 droplets are squeezed against each other, and an emulsion of fat in water is close to its limit.</summary>
    public double? FatByVolume => Composition is { Fat: { } fat } c && MixVolume.Millilitres(c) is > 0 and var all ? 100 * fat / MixVolume.FatDensity / all : null;

    /// <summary>Density without air, g/mL; null when a main part is not held.</summary>
    public double? Density => Composition is { } c ? MixVolume.Density(c) : null;

    /// <summary>Alcohol, percent by volume; null as the density.</summary>
    public double? AlcoholByVolume => Composition is { } c ? MixVolume.PercentVolume(c) : null;
}

/// <summary>Mixes the lines of each component by weight, before any step: what is poured off, soaked up or boiled away is the method's matter.</summary>
public static class Blending
{
    /// <summary>Mixes each component; a line that takes from another component has that component's composition.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="made">What a component that others take from is once made, from how it is mixed; null, or a null answer, takes it as mixed.</param>
    public static Parsed<ImmutableArray<MixedComponent>> Of(WeighedDish dish, Func<WeighedComponent, MixedComponent, Composition?>? made = null)
    {
        ArgumentNullException.ThrowIfNull(dish);
        return Soundness.Of(dish) is { IsEmpty: false } faults
            ? new Parsed<ImmutableArray<MixedComponent>>.Failed(faults)
            : new Parsed<ImmutableArray<MixedComponent>>.Ok([.. dish.Components.Where(c => !c.Lines.IsEmpty).Select(c => Mix(dish, c, made))]);
    }

    private static MixedComponent Mix(WeighedDish dish, WeighedComponent component, Func<WeighedComponent, MixedComponent, Composition?>? made)
    {
        WeighedLine[] weighed = [.. component.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        List<(string Name, double Grams, Composition Composition)> parts = [];
        List<string> unknown = [];
        foreach (WeighedLine line in weighed)
        {
            if (CompositionOf(dish, line, made) is { } c)
            {
                parts.Add((line.Food.Food, line.Grams, c));
            }
            else
            {
                unknown.Add(line.Food.Food);
            }
        }

        Blend? blend = unknown.Count == 0 && parts.Count > 0 ? Blend.Of(parts) : null;
        double grams = weighed.Sum(l => l.Grams);
        Solution? phase = blend is null ? null : Solution.Of(blend.Composition, grams);
        ImmutableArray<AgentVerdict> agents = AgentJudging.Of(dish.Dish, component, weighed, blend?.Composition, phase);
        return new MixedComponent(component.Component.Name, grams, blend?.Composition, [.. unknown.Distinct()], [.. component.Lines.Where(l => l.Grade == WeightGrade.Unknown).Select(l => l.Food.Food)],
            phase, agents);
    }

    internal static Composition? CompositionOf(WeighedDish dish, WeighedLine line, Func<WeighedComponent, MixedComponent, Composition?>? made = null)
    {
        if (line.Food.FromComponent is not { } words)
        {
            return LineComposition.Of(line);
        }

        if (Takes.Find(dish.Dish, words) is not { } taken || dish.Components.FirstOrDefault(c => ReferenceEquals(c.Component, taken) && !c.Lines.Contains(line)) is not { } source)
        {
            return null;
        }

        // A sub-list ("the hot base") is taken as mixed: the method is of the whole.
        if (Takes.Group(taken, line.Source.Text) is { } group)
        {
            return Mix(dish, source with { Lines = [.. source.Lines.Where(l => l.Source.Group == group)] }, made).Composition;
        }

        MixedComponent mixed = Mix(dish, source, made);
        return made?.Invoke(source, mixed) ?? mixed.Composition;
    }
}
