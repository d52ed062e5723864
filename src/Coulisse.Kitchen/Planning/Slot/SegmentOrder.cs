using System.Collections.Immutable;
using Coulisse.Cards.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Groups what is shown into segments and puts them in an order that a demonstrator would choose.</summary>
/// <remarks>
/// Opening; what goes into an oven first, so that it is over soonest; the plate's components, each with all its rows (in both the sheet's order decides); what is only told; the plate as a whole; the cut faces of what was begun; the close. Two segments that need the blender
/// do not follow each other when another can stand between them, since the jug is washed in between. Common practice, no source.
/// </remarks>
internal static class SegmentOrder
{
    public static ImmutableArray<SegmentDraft> Order(ImmutableArray<ShowItem> shown, int slotSeconds)
    {
        List<SegmentDraft> begun = [];
        List<SegmentDraft> parts = [];
        List<ShowItem> told = [];
        List<ShowItem> onPlate = [];
        List<ShowItem> faces = [];
        ShowItem[] plates = [.. shown.Where(i => i.WholePlate)];
        foreach (IGrouping<string, ShowItem> group in shown.Where(i => !i.WholePlate).GroupBy(i => i.Subject))
        {
            ShowItem[] live = [.. group.Where(i => i.Show.How is ShowKind.Begin or ShowKind.Full)];
            ShowItem[] finishes = [.. group.Where(i => i.Show.How == ShowKind.Finish)];
            told.AddRange(group.Where(i => i.Show.How == ShowKind.Tell));
            bool ofPlate = !group.First().Dish.Dish.Plate.IsEmpty;
            if (live.Length == 0)
            {
                // A finish of a plate part without its own step is a spoonful: it goes with the plate.
                (ofPlate && plates.Length > 0 && finishes.All(f => f.Step is null) ? onPlate : faces).AddRange(finishes);
            }
            else if (ofPlate)
            {
                parts.Add(Segment(SegmentKind.Show, [.. live, .. finishes]));
            }
            else
            {
                begun.Add(Segment(SegmentKind.Show, [.. live]));
                faces.AddRange(finishes);
            }
        }

        List<SegmentDraft> order = [new SegmentDraft(SegmentKind.Opening, [], Math.Min(45, slotSeconds / 20), Math.Min(90, slotSeconds / 15))];
        order.AddRange(begun.OrderBy(s => s.GoesOn is null).ThenBy(s => s.Items.Min(i => i.Show.Line)));
        order.AddRange(parts.OrderBy(s => s.Items.Min(i => i.Show.Line)));
        if (told.Count > 0)
        {
            order.Add(Segment(SegmentKind.Tell, [.. told.OrderBy(i => i.Show.Line)]));
        }

        if (plates.Length + onPlate.Count > 0)
        {
            order.Add(Segment(SegmentKind.Plate, [.. plates, .. onPlate]));
        }

        if (faces.Count > 0)
        {
            order.Add(Segment(SegmentKind.Show, [.. faces]));
        }

        order.Add(new SegmentDraft(SegmentKind.Close, [], Math.Min(60, slotSeconds / 20), Math.Min(105, slotSeconds / 12)));
        return [.. Apart(order)];
    }

    private static SegmentDraft Segment(SegmentKind kind, ImmutableArray<ShowItem> items)
        => new(kind, items, items.Sum(i => i.Seconds.Least), items.Sum(i => i.Seconds.Best));

    private static List<SegmentDraft> Apart(List<SegmentDraft> order)
    {
        for (int i = 1; i + 1 < order.Count; i++)
        {
            if (order[i].UsesBlender && order[i - 1].UsesBlender)
            {
                int other = order.FindIndex(i + 1, s => s.Kind == SegmentKind.Show && !s.UsesBlender && s.Items.All(x => x.Show.How != ShowKind.Finish || x.Step is not null));
                if (other > 0)
                {
                    SegmentDraft between = order[other];
                    order.RemoveAt(other);
                    order.Insert(i, between);
                }
            }
        }

        return order;
    }
}
