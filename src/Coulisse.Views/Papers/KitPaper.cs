using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>Kit and packing: two ticks by two people, the second without seeing the first's list made.</summary>
public static class KitPaper
{
    public const string Kind = "kit";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Occasion is not { Kit.IsEmpty: false } occasion)
        {
            return null;
        }

        CultureInfo culture = bundle.Culture;
        List<Block> blocks =
        [
            new ParagraphBlock("One person loads and ticks; another, who did not load, opens every box and ticks again. The third box is for the way home."),
            new TableBlock(
            [
                new("Code", Strong: true), new("What"), new("How many", Side.Right), new("Room"), new("Power", Side.Right), new("Circuit"), new("From"), new("Stands"), new("In use"), new("Spare", Pen: 11), new("Whose", Pen: 14), new("In box", Pen: 13), new("Loaded", Side.Centre), new("Checked", Side.Centre), new("Back", Side.Centre),
            ],
            [.. occasion.Kit.Select(k => Row(k, bundle, culture))]),
        ];
        if (!occasion.Circuits.IsEmpty)
        {
            blocks.Add(new HeadingBlock(1, "Circuits"));
            blocks.Add(new TableBlock([new("Circuit"), new("Carries", Side.Right), new("Kit on it"), new("Together", Side.Right), new("Tested", Side.Centre)], [.. occasion.Circuits.Select(c => Circuit(c, occasion, culture))]));
        }

        if (bundle.Plan is { Twins.IsEmpty: false } plan)
        {
            blocks.Add(new HeadingBlock(1, "Made ahead, to be carried"));
            blocks.Add(new TableBlock([new("No."), new("What"), new("How many", Side.Right), new("Held"), new("Goes to"), new("In box", Pen: 18), new("Loaded", Side.Centre), new("Checked", Side.Centre)],
                [.. plan.Twins.OrderBy(t => t.Number).Select(t => new PaperRow([new PaperCell(RunSheetPaper.Number(t.Number), true), $"{t.Component}, {t.State}", Figures.Number(t.Count, culture), t.Holds, t.Place, PaperCell.Blank, PaperCell.Tick, PaperCell.Tick]))]));
        }

        blocks.Add(new PenLinesBlock("Forgotten last time, so looked for today", 2));
        return bundle.Sheet(Kind, "Kit and packing", [.. blocks]) with { Landscape = true, TextSize = 9 };
    }

    private static PaperRow Row(SheetKit k, PaperBundle bundle, CultureInfo culture) => new(
    [
        k.Code, k.What, k.Number.ToString(culture), k.CapacityText, k.Kilowatts is { } kw ? Figures.Number(kw, culture) + "\u202FkW" : "", k.Circuit ?? "",
        k.EarlierPlace ?? "", k.Place, Used(k, bundle), PaperCell.Blank, PaperCell.Blank, PaperCell.Blank, PaperCell.Tick, PaperCell.Tick, PaperCell.Tick,
    ]);

    private static string Used(SheetKit k, PaperBundle bundle)
    {
        (LocalDateTime Start, LocalDateTime End)[] uses = bundle.Plan is { } plan && k.Code.Length > 0 ? [.. plan.Tasks.Where(t => t.Kit.Contains(k.Code)).Select(t => (t.Start, t.End)), .. LoadProfile.InSlot(plan, k.Code)] : [];
        return uses.Length == 0 ? "" : $"{Days.Moment(uses.Min(u => u.Start), bundle.Culture)} to {Days.Moment(uses.Max(u => u.End), bundle.Culture)}";
    }

    private static PaperRow Circuit(SheetCircuit c, Occasion occasion, CultureInfo culture)
    {
        double together = occasion.Kit.Where(k => c.Kit.Contains(k.Code) || k.Circuit == c.Code).Sum(k => k.Kilowatts ?? 0);
        bool over = together > c.LimitKilowatts;
        return new([new PaperCell(c.Code, true), Figures.Number(c.LimitKilowatts, culture) + "\u202FkW", string.Join(", ", c.Kit), new PaperCell(Figures.Number(together, culture) + "\u202FkW" + (over ? " NEVER ALL AT ONCE" : ""), over), PaperCell.Tick]);
    }
}
