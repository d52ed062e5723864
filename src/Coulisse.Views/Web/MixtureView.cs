using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;

namespace Coulisse.Views.Web;

/// <summary>A component as mixed and after each step that changes it, with what follows for set, freezing, keeping and balance.</summary>
/// <param name="Name">Component; "the dish" for the single one.</param>
/// <param name="Says">Weight and how sure it is.</param>
/// <param name="Stages">A row a stage, in the order of <see cref="Columns"/>.</param>
/// <param name="Notes">What the steps did, line by line.</param>
/// <param name="Follows">Water activity, freezing, density, flour and water, in words.</param>
/// <param name="Remarks">Setting agents, balance, cures.</param>
public sealed record MixtureView(string Name, string Says, ImmutableArray<ImmutableArray<string>> Stages, ImmutableArray<string> Notes, ImmutableArray<string> Follows, ImmutableArray<string> Remarks)
{
    // A serving cabinet, a display, a freezer.
    private static readonly double[] Cold = [-8, -12, -18];

    /// <summary>Heads of the table of stages.</summary>
    public static ImmutableArray<string> Columns { get; } = ["Stage", "Weight", "Water", "Fat", "Protein", "Sugars", "Salt", "Alcohol", "Vitamin C, mg"];

    /// <summary>All components with something in them.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="loss">Where a loss comes from that the card does not state.</param>
    /// <param name="metres">Height above the sea, for boiled sugar.</param>
    /// <param name="culture">Culture of the figures.</param>
    public static ImmutableArray<MixtureView> Of(WeighedDish dish, UnstatedLoss loss, double metres, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(dish);
        return [.. MadeDish.Parts(dish, loss, metres).Match(m => m, _ => []).Select(p => Part(dish, p, culture))];
    }

    private static MixtureView Part(WeighedDish dish, MadePart part, CultureInfo culture)
    {
        (WeighedComponent component, MixedComponent mixed, ImmutableArray<StageMixture> stages) = part;
        string grade = component.Grade switch { WeightGrade.Weighed => "weighed", WeightGrade.Converted => "worked out from measures", WeightGrade.Estimated => "partly estimated", _ => "some lines have no weight" };
        List<string> notes = [.. stages.Select(s => string.Create(culture, $"Line {s.Step.Span.Line}: {string.Join("; ", s.Notes)}."))];
        if (!mixed.Unknown.IsEmpty)
        {
            notes.Add($"Not worked out: {string.Join(", ", mixed.Unknown)} not in the food table.");
        }

        if (!mixed.LeftOut.IsEmpty)
        {
            notes.Add($"Left out, no weight: {string.Join(", ", mixed.LeftOut)}.");
        }

        return new MixtureView(mixed.Name.Length > 0 ? mixed.Name : "the dish", $"{Figures.Grams(mixed.Grams, culture)}, {grade}",
            [Row("as mixed", Figures.Grams(mixed.Grams, culture), mixed.Composition, culture), .. stages.Select(s => Row(string.Create(culture, $"after line {s.Step.Span.Line}"),
                s.GramsRange.High - s.GramsRange.Low > 0.5 ? $"{Figures.Grams(s.Grams, culture)} ({Figures.Range(s.GramsRange.Low, s.GramsRange.High, culture)})" : Figures.Grams(s.Grams, culture), s.Composition, culture))],
            [.. notes], [.. Consequences(dish, component, mixed, culture)],
            [.. mixed.Agents.Select(a => string.Create(culture, $"{a.FoodId}, {a.Percent:0.00} % of the batch: {a.Verdict} the usual levels{(a.Remarks.IsEmpty ? "" : " (" + string.Join("; ", a.Remarks) + ")")}.")), .. BalanceRules.Of(dish, component).Concat(CureRemarks.Of(component)).Select(r => char.ToUpperInvariant(r[0]) + r[1..] + ".")]);
    }

    private static ImmutableArray<string> Row(string stage, string weight, Composition? c, CultureInfo culture)
    {
        string Share(double? value, string format = "0.0") => value is { } v ? v.ToString(format, culture) : "not known";
        return [stage, weight, Share(c?.Water), Share(c?.Fat), Share(c?.Protein), Share(c?.Sugars), Share(c?.SodiumMilligrams * 2.5 / 1000, "0.00"), Share(c?.Alcohol), Share(c?.VitaminCMilligrams)];
    }

    private static IEnumerable<string> Consequences(WeighedDish dish, WeighedComponent component, MixedComponent m, CultureInfo culture)
    {
        if (m.Activity is { } a && m.Phase is { } phase)
        {
            MeterSalt salt = MeterSalt.Nearest(a.High);
            yield return string.Create(culture, $"Water activity {a.Low:0.000} to {a.High:0.000} as mixed ({string.Join(", ", a.Models.Where(x => x.Value is not null).Select(x => string.Create(culture, $"{x.Model} {x.Value:0.000}")))}). A meter is checked over saturated {salt.Salt}, {salt.Activity(20):0.000} at 20 °C.");
            yield return string.Create(culture, $"Soluble solids {phase.SolubleSolidsPercent:0.0} %, sugars alone {phase.Brix:0.0} Brix, salt in its water {phase.SaltInWaterPercent:0.00} %.");
            yield return m.FreezingPoint is { } f
                ? $"Freezes from {Figures.Celsius(Math.Round(f, 1), culture)}; of its water is ice {string.Join(", ", Cold.Select(t => string.Create(culture, $"{100 * m.IceShare(t):0} % at {Figures.Celsius(t, culture)}")))}."
                : "Freezes below −40 °C.";
        }

        if (m.Density is { } density)
        {
            yield return string.Create(culture, $"{density:0.00} g/mL without air, fat {m.FatByVolume:0} % by volume{(m.AlcoholByVolume > 0.05 ? string.Create(culture, $", alcohol {m.AlcoholByVolume:0.0} % by volume") : "")}.");
        }

        if (Percentages.Of(dish, component) is { Flour: > 0 } p)
        {
            yield return string.Create(culture, $"On {p.Flour:#,0.#} g of flour: {string.Join(", ", p.Lines.Select(l => string.Create(culture, $"{l.Line.Food.Food} {l.OfFlour:0.#}")))}{(p.Hydration is { } h ? string.Create(culture, $"; water {h:0.#} %") : "")}.");
        }
    }
}
