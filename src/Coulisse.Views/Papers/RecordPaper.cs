using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>Production and service record: planned figures printed, the rest for the pen.</summary>
public static class RecordPaper
{
    public const string Kind = "record";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Batches.IsEmpty)
        {
            return null;
        }

        ImmutableArray<PaperRow>.Builder rows = ImmutableArray.CreateBuilder<PaperRow>();
        foreach (Batch b in bundle.Batches)
        {
            rows.Add(PaperRow.Group($"{bundle.TitleOf(b)}. {CardPaper.For(b)}"));
            foreach (BatchComponent c in b.Components.Where(c => !c.Lines.IsEmpty))
            {
                rows.Add(new PaperRow([CardPaper.Name(c, b), new PaperCell(Figures.Grams(CardPaper.Total(c), bundle.Culture), true), .. Enumerable.Repeat(PaperCell.Blank, 5)]));
            }
        }

        return bundle.Sheet(Kind, "Production and service record",
            new FactsBlock([new("Covers planned", bundle.Occasion is { } o ? Figures.Number(o.Covers, bundle.Culture) : ""), new("Covers served", ""), new("Began on the minute", ""), new("Ended", "")]),
            new TableBlock([new("Part"), new("Planned", Side.Right), new("Made", Pen: 20), new("Served", Pen: 20), new("Left over", Pen: 20), new("Minutes taken", Pen: 20), new("°C at service", Pen: 18)], rows.ToImmutable()),
            new PenLinesBlock("Put in place of something else (what, for what, allergens looked at by)", 2),
            new PenLinesBlock("For the next version", 4));
    }
}
