using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>Plating on one page: the plate to scale, each part with weight and count, the order as the card gives it.</summary>
public static class PlatingPaper
{
    public const string Kind = "plating";

    /// <summary>Allowed deviation of a part's weight when the card states none: a tenth, at least half a gram (common practice, no source).</summary>
    private const double Share = 0.1;

    public static IEnumerable<Paper> Of(PaperBundle bundle) => bundle.Batches.Where(b => !b.Weighed.Dish.Plate.IsEmpty).Select(b => One(bundle, b));

    private static Paper One(PaperBundle bundle, Batch batch)
    {
        Dish dish = batch.Weighed.Dish;
        CultureInfo culture = bundle.Culture;
        Component? assembly = dish.Components.FirstOrDefault(c => c.IsAssembly);
        List<Block> blocks =
        [
            new FactsBlock([new("Photograph or sample plate", ""), new("Never like this", "")]),
            new TableBlock([new("Part"), new("Pieces", Side.Right), new("Grams", Side.Right, Strong: true), new("Give or take", Side.Right), new("Tool", Pen: 26), new("Ahead or last", Pen: 18), new("Seconds", Pen: 14)],
                [.. dish.Plate.Select(p => new PaperRow([CardPaper.PartName(p), p.Pieces is { } n ? Figures.Number(n, culture) : "", p.Grams is { } g ? Figures.Grams(g, culture) : "", p.Grams is { } w ? "±\u202F" + Figures.Grams(Math.Max(0.5, Math.Round(w * Share, 1)), culture) : "", PaperCell.Blank, PaperCell.Blank, PaperCell.Blank])),
                 PaperRow.Total("Together", "", Figures.Grams(dish.Plate.Sum(p => p.Grams ?? 0), culture), "", "", "", "")]),
        ];
        if (assembly is not null)
        {
            blocks.Add(new HeadingBlock(1, "In this order"));
            blocks.Add(new ListBlock([.. assembly.Steps.Select((s, i) => new ListEntry((i + 1).ToString(CultureInfo.InvariantCulture), s.Text))]));
        }

        blocks.AddRange(PlatingLineBlocks.Of(bundle, batch));
        if (PlateDrawing.Of(dish, assembly) is { } drawing)
        {
            blocks.Add(new FigureBlock(drawing, drawing.Title + ". Twelve o’clock is away from the guest.", Share: 0.27));
        }

        blocks.Add(new ParagraphBlock("Give or take is a tenth of the part, at least half a gram: common practice, no source, unless the card says otherwise.", Small: true));
        string title = bundle.TitleOf(batch);
        return bundle.Sheet(Kind, $"Plating: {title}", [.. blocks]) with { Id = $"{Kind}-{Slug.Of(title)}", Dish = title, TextSize = 9.5 };
    }
}
