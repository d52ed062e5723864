using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Plating;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>Plating on one page: the plate to scale, each part with weight and count, the order as the card gives it; behind it plates for diets and the line.</summary>
public static partial class PlatingPaper
{
    public const string Kind = "plating";

    /// <summary>Allowed deviation of a part's weight when the card states none: a tenth, at least half a gram (common practice, no source).</summary>
    private const double Share = 0.1;

    public static IEnumerable<Paper> Of(PaperBundle bundle) => bundle.Batches.Where(b => !b.Weighed.Dish.Plate.IsEmpty).SelectMany(b => Both(bundle, b));

    // The guide is one page; what only some plates and the line need stands on a sheet of its own behind it.
    private static IEnumerable<Paper> Both(PaperBundle bundle, Batch batch)
    {
        Dish dish = batch.Weighed.Dish;
        CultureInfo culture = bundle.Culture;
        Component? assembly = dish.Components.FirstOrDefault(c => c.IsAssembly);
        PlateReading? reading = PlateDrawing.Flat(dish, assembly, bundle.Occasion?.Kit ?? []) is { } flat ? PlateReading.Of(dish, flat) : null;
        List<Block> blocks =
        [
            new FactsBlock([new("Photograph or sample plate", ""), new("Never like this", "")]),
            new TableBlock([new("Part"), new("Pieces", Side.Right), new("Grams", Side.Right, Strong: true), new("Give or take", Side.Right), new("O’clock", Side.Right), new("From the middle", Side.Right), new("Ahead or last", Pen: 18), new("Tool", Pen: 22), new("Seconds", Pen: 14)],
                [.. dish.Plate.Select(p => Row(p, dish, reading?.Parts.FirstOrDefault(r => r.Part == p), culture)),
                 PaperRow.Total("Together", "", Figures.Grams(dish.Plate.Sum(p => p.Grams ?? 0), culture), "", "", "", "", "", "")]),
        ];
        if (PlateDrawing.Of(dish, assembly, reading) is { } drawing)
        {
            string assumed = reading is null || reading.Guide.Parts.IsEmpty ? "" : string.Join("; ", reading.Assumed.Where(a => a.Length > 0));
            blocks.Add(new FigureBlock(drawing, drawing.Title + ". Twelve o’clock is away from the guest." + (assumed.Length > 0 ? " Assumed: " + assumed + "." : ""), Share: 0.3));
            blocks.AddRange(Clear(reading, culture));
        }

        if (assembly is not null)
        {
            blocks.Add(new HeadingBlock(1, "In this order"));
            blocks.Add(new ListBlock([.. assembly.Steps.Select((s, i) => new ListEntry((i + 1).ToString(CultureInfo.InvariantCulture), s.Text))]));
        }

        (GuestRow Row, GuestPlate Plate)[] diets = FirstPlates.Plates(bundle, batch);
        if (diets.Length > 0)
        {
            blocks.Add(new CalloutBlock($"Another plate: seats {string.Join(", ", diets.SelectMany(d => d.Row.Seats).Distinct().Order())}", $"What differs stands on the sheet behind this one. {(FirstPlates.Of(bundle, batch) is { } first ? first.Who + " plates them first" : "Plate them first")}, with clean tools."));
        }

        blocks.Add(new ParagraphBlock("Give or take is a tenth of the part, at least half a gram; what is counted and weighs hardly more than that is laid by count. Common practice, no source, unless the card says otherwise.", Small: true));
        string title = bundle.TitleOf(batch);
        yield return bundle.Sheet(Kind, $"Plating: {title}", [.. blocks]) with { Id = $"{Kind}-{Slug.Of(title)}", Dish = title, TextSize = 9.5 };
        List<Block> behind = [];
        if (PlateFridge.Of(bundle, batch) is { Length: > 0 } stand)
        {
            behind.Add(new FactsBlock([new("Plates stand in", stand)]));
        }

        if (diets.Length > 0)
        {
            behind.Add(new HeadingBlock(1, "Plates for diets" + (FirstPlates.Of(bundle, batch) is { } who ? $": {who.Who} plates them, first" : "")));
            behind.Add(new TableBlock([new("Seat", Strong: true), new("Declared"), new("This plate"), new("Laid", Side.Centre)],
                [.. diets.Select(d => new PaperRow([string.Join(", ", d.Row.Seats), d.Row.Declared, d.Plate.Text, PaperCell.Tick]))]) { Together = true });
        }

        behind.AddRange(PlatingLineBlocks.Of(bundle, batch));
        if (behind.Count > 0)
        {
            yield return bundle.Sheet(Kind, $"Plating, diets and line: {title}", [.. behind]) with { Id = $"{Kind}-line-{Slug.Of(title)}", Dish = title, TextSize = 12 };
        }
    }

    // What is piped into each piece, as the card's step says: of the part's grams those a plate has of it.
    private static string Piped(PlatePart p, Dish dish, CultureInfo culture)
    {
        if (p.Pieces is not { } pieces || p.Grams is not { } whole || dish.Components.FirstOrDefault(c => c.Name == p.Component) is not { } part)
        {
            return "";
        }

        double[] each = [.. part.Steps.Where(s => s.Operations.Append(s.Operation).Contains("pipe")).SelectMany(s => EachGrams().Matches(s.Text)).Select(m => double.Parse(m.Groups["g"].Value, CultureInfo.InvariantCulture)).Where(g => g * pieces < whole)];
        return each.Length == 1 ? $"\npiped in: {Figures.Grams(each[0], culture)} each, {Figures.Grams(each[0] * pieces, culture)} a plate" : "";
    }

    private const double Half = 0.5;

    // Two crisps of 0.6 g together are counted: no scale tells one too few of them from two.
    private static string Tolerance(PlatePart p, CultureInfo culture) => p.Grams is not { } grams ? ""
        : p.Pieces is > 0 && Half > grams / 2 ? "by count" : "±\u202F" + Figures.Grams(Math.Max(Half, Math.Round(grams * Share, 1)), culture);

    [GeneratedRegex(@"(?<![\d.,])(?<g>\d{1,2}(\.\d+)?) g\b", RegexOptions.ExplicitCapture)]
    private static partial Regex EachGrams();

    private static PaperRow Row(PlatePart p, Dish dish, ReadPart? read, CultureInfo culture) => new(
    [
        CardPaper.PartName(p) + Piped(p, dish, culture), p.Pieces is { } n ? Figures.Number(n, culture) : "", p.Grams is { } g ? Figures.Grams(g, culture) : "", Tolerance(p, culture),
        read is { Hours.IsEmpty: false } ? string.Join(", ", read.Hours.Select(h => Figures.Number(Math.Floor(h), culture) + (h % 1 > 0.4 ? ".30" : ""))) : "",
        read?.Placed is { } placed ? Figures.Number(Math.Round(placed.OutMillimetres), culture) + "\u202Fmm" : "",
        read is { Step: > 0 } ? read.AfterChill ? "last, after the chill" : "ahead" : PaperCell.Blank,
        read is { Tool.Length: > 0 } ? read.Tool : PaperCell.Blank, PaperCell.Blank,
    ]);

    // Whether the parts clear each other and the rim, as far as their shapes are known.
    private static IEnumerable<Block> Clear(PlateReading? reading, CultureInfo culture)
    {
        if (reading is null || reading.Guide.Parts.Length < 2)
        {
            yield break;
        }

        string[] wrong =
        [
            .. reading.Guide.OverRim.Select(o => $"{o.Part} reaches {Figures.Number(Math.Round(o.Millimetres, 1), culture)} mm over the flat"),
            .. reading.Guide.Overlaps.Select(o => $"{o.One} and {o.Other} overlap by {Figures.Number(Math.Round(o.Millimetres, 1), culture)} mm"),
        ];
        if (wrong.Length > 0)
        {
            yield return new CalloutBlock("Does not fit as drawn", string.Join("; ", wrong) + ".");
        }
    }
}
