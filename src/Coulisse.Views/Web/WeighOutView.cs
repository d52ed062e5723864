using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Plating;

namespace Coulisse.Views.Web;

/// <summary>A card at the scale: every weight of it, one after the other.</summary>
/// <param name="Id">Card.</param>
/// <param name="Version">Version of the card that is weighed out.</param>
/// <param name="Title">Title of the dish.</param>
/// <param name="For">What it is scaled to, as the sentence above the card says it; empty as written.</param>
/// <param name="Says">One sentence under the title.</param>
/// <param name="Faults">What was asked for and cannot be had, in words.</param>
/// <param name="Parts">Components with something to weigh, in order.</param>
public sealed record WeighOutView(string Id, int Version, string Title, string For, string Says, ImmutableArray<string> Faults, ImmutableArray<WeighPart> Parts)
{
    /// <summary>Lays a batch out for the scale.</summary>
    /// <param name="id">Card.</param>
    /// <param name="version">Its version.</param>
    /// <param name="batch">What is weighed.</param>
    /// <param name="scaledFor">Sentence it was scaled by; empty as written.</param>
    /// <param name="faults">What could not be had.</param>
    /// <param name="culture">Culture of the figures.</param>
    /// <param name="fine">Lines that no scale of the kitchen weighs within 2 %.</param>
    public static WeighOutView From(string id, int version, Batch batch, string scaledFor, ImmutableArray<string> faults, CultureInfo culture, ImmutableArray<ScaleFinding> fine = default)
    {
        ILookup<string, string> tooFine = (fine.IsDefault ? [] : fine).ToLookup(f => f.Component, f => TooFine(f, culture));
        ImmutableArray<WeighPart> parts = [.. batch.Components.Select((c, n) => Part(c, n, culture) with { TooFine = [.. tooFine[c.Weighed.Component.Name]] }).Where(p => !p.Lines.IsEmpty)];
        int lines = parts.Sum(p => p.Lines.Length);
        int unknown = parts.Sum(p => p.Lines.Count(l => !l.Known));
        string says = string.Create(culture, $"{(batch.For.Length > 0 && scaledFor.Length > 0 ? "For " + batch.For : "As written")}; {lines} {(lines == 1 ? "weight" : "weights")}, {Figures.Grams(parts.Sum(p => p.Lines.Sum(l => l.Grams)), culture)} in all{(unknown > 0 ? $"; {unknown} without a weight" : "")}.");
        return new WeighOutView(id, version, batch.Weighed.Dish.Title, scaledFor, says, faults, parts);
    }

    /// <summary>A line below the scales, with the mixture that makes it possible.</summary>
    private static string TooFine(ScaleFinding f, CultureInfo culture)
    {
        string Grams(double g) => g.ToString("0.##", culture) + "\u202Fg";
        return $"{Grams(f.Line.Grams)} {f.Line.Weighed.Food.Food}: half a division of the finest scale is {f.ErrorPercent.ToString("0.#", culture)}\u202F% of it. "
            + (f.Master is { } m ? $"Mix {Grams(m.AgentGrams)} of it into {Grams(m.CarrierGrams)} {m.Carrier}, take {Grams(m.TakeGrams)} of that, and add {Grams(m.CarrierLeftGrams)} more {m.Carrier}." : "The part holds nothing to mix it into: make more of it at once, or use a finer scale.");
    }

    private static WeighPart Part(BatchComponent component, int number, CultureInfo culture)
    {
        ImmutableArray<WeighLine> lines = [.. component.Lines.Where(l => l.Weighed.Source.Kind == LineKind.Ingredient).Select((l, i) => Line(l, string.Create(CultureInfo.InvariantCulture, $"{number}.{i}"), culture))];
        string name = component.Weighed.Component.Name;
        return new WeighPart(
            name, Figures.Grams(lines.Sum(l => l.Grams), culture),
            component.Batches > 1 ? string.Create(culture, $"made in {component.Batches} loads: weigh all of it, divide by {component.Batches}") : "", lines);
    }

    private static WeighLine Line(BatchLine line, string key, CultureInfo culture)
    {
        FoodAmount food = line.Weighed.Food;
        bool known = line.Weighed.Grade != WeightGrade.Unknown;
        string[] details = [food.Grade ?? "", food.State ?? "", food.Preparation ?? "", food.FromComponent is { } from ? "from " + from : "", food.Optional ? "may be left out" : ""];
        double range = known && line.Weighed.Grams > 0 ? line.Rounded / line.Weighed.Grams : 0;
        return new WeighLine(
            key, food.Food, string.Join(", ", details.Where(d => d.Length > 0)),
            known ? Figures.Number(line.Rounded, culture) : "?", known ? line.Rounded : 0, line.StepGrams, known,
            line.Weighed.Grade switch { WeightGrade.Converted => "worked out from a measure", WeightGrade.Estimated => "estimated", WeightGrade.Unknown => "no weight is known: weigh what you take and write it in", _ => "" },
            known && line.Weighed.High > line.Weighed.Low ? Figures.Range(line.Weighed.Low * range, line.Weighed.High * range, culture) : "",
            line.Weighed.Source.Text);
    }
}

/// <summary>A component at the scale.</summary>
/// <param name="Name">Name; empty for the single one of a plain recipe.</param>
/// <param name="Sum">Sum of its weights.</param>
/// <param name="Loads">In how many loads it is made, in words; empty for one.</param>
/// <param name="Lines">Its weights.</param>
public sealed record WeighPart(string Name, string Sum, string Loads, ImmutableArray<WeighLine> Lines)
{
    /// <summary>Lines that no scale of the kitchen weighs within 2 %, each with a way out.</summary>
    public ImmutableArray<string> TooFine { get; init; } = [];
}

/// <summary>One weight.</summary>
/// <param name="Key">Place in the card, stable for one version and one scale.</param>
/// <param name="Food">What is weighed.</param>
/// <param name="Detail">Grade, state, preparation.</param>
/// <param name="Figure">Grams as a figure without its unit.</param>
/// <param name="Grams">Grams; 0 when unknown.</param>
/// <param name="StepGrams">Step the figure was rounded to: what the scale must show.</param>
/// <param name="Known">False when no weight can be given.</param>
/// <param name="Sure">How sure, in words; empty for a stated weight.</param>
/// <param name="Range">Range of an unsure weight; empty for a stated one.</param>
/// <param name="Written">The line as the card says it.</param>
public sealed record WeighLine(string Key, string Food, string Detail, string Figure, double Grams, double StepGrams, bool Known, string Sure, string Range, string Written);
