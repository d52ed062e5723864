using System.Globalization;
using Coulisse.Kitchen.Needs;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>What comes on which day from whom: count, temperature, date and seal, item by item, and what to do when one is wrong.</summary>
public static class ReceivingPaper
{
    public const string Kind = "receiving";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Order is not { Lines.IsEmpty: false } order)
        {
            return null;
        }

        CultureInfo culture = bundle.Culture;
        LocalDate? arrives = bundle.Occasion?.Sheet.OrderArrives?.Date;
        List<Block> blocks =
        [
            new ParagraphBlock("Probe chilled goods between two packs as they come off the van, before anything else. Write the reading even when it is right."),
        ];
        var packs = order.Lines.SelectMany(l => l.Packs.Select(p => (Line: l, Pack: p, Day: p.ComesOn ?? arrives)));
        foreach (var delivery in packs.GroupBy(p => (p.Day, p.Pack.Row.Supplier)).OrderBy(g => g.Key.Day is null).ThenBy(g => g.Key.Day ?? default).ThenBy(g => g.Key.Supplier, StringComparer.Ordinal))
        {
            string supplier = delivery.Key.Supplier.Length > 0 ? delivery.Key.Supplier : "No supplier named";
            blocks.Add(new HeadingBlock(1, delivery.Key.Day is { } day ? $"{supplier}, {Days.Long(day, culture)}" : $"{supplier}, day not known"));
            blocks.Add(new TableBlock(
                [new("Item"), new("Packs", Side.Right, Strong: true), new("Of", Side.Right), new("Must be", Strong: true), new("°C", Pen: 14), new("Came", Side.Centre), new("Use by", Pen: 18), new("Whole, sealed, clean", Side.Centre), new("Sent back, why", Pen: 30)],
                [.. delivery.OrderBy(p => p.Line.Item, StringComparer.Ordinal).Select(p => new PaperRow(
                [
                    p.Line.Item + (p.Pack.Row.Note.Length > 0 ? $" ({p.Pack.Row.Note})" : ""), p.Pack.Count.ToString(culture), OrderPaper.Quantity(p.Pack.Row.PackSize, p.Pack.Row.Unit, culture), Limit(bundle, p.Line),
                    PaperCell.Blank, PaperCell.Tick, PaperCell.Blank, PaperCell.Tick, PaperCell.Blank,
                ]))]));
        }

        blocks.Add(new CalloutBlock("Warmer than it must be, torn, past its date, or another article than ordered", "It is not put away. Send it back or set it apart with a note, tell the chef, and have the allergens of anything that came instead looked up before it is used."));
        blocks.Add(new PenLinesBlock("Received by, at what hour, probe used", 1));
        return bundle.Sheet(Kind, "Receiving", [.. blocks]) with { Landscape = true, TextSize = 9.5 };
    }

    /// <summary>What its temperature must be: chilled limits by the code for what spoils, "frozen" where its name says so, else nothing.</summary>
    internal static string Limit(PaperBundle bundle, OrderLine line) => ReceivingLimits.For(line, bundle.Code) switch
    {
        { Frozen: true, Celsius: { } c } => $"frozen hard, {Web.Figures.Celsius(c, bundle.Culture)} or colder",
        { Celsius: { } c } => $"{Web.Figures.Celsius(c, bundle.Culture)} or colder",
        { Known: false } => "not known: as its label says",
        _ => "dry, whole",
    };
}
