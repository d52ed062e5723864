using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Decides the live slot: what fits of what should be shown, in which order and seconds, by whom, with which twins.</summary>
/// <remarks>The loop of shown steps, twins and batches is cut here: the slot first (seconds), then the twins that follow from it, then the prep days.</remarks>
public static class LiveSlot
{
    /// <summary>Share of the slot that can be dropped when it runs late. Common practice, no source.</summary>
    public const double DroppableShare = 0.10;

    /// <summary>What the level "shown" counts: the weights that the sheet gives to what is shown, added up.</summary>
    private const string Worth = "points by the sheet's weights";

    /// <summary>Decides the slot of an occasion.</summary>
    /// <param name="occasion">The occasion, with at least one person; a slot of no length shows nothing.</param>
    public static SlotPlan Decide(Occasion occasion)
    {
        int slot = (int)occasion.SlotLength.TotalSeconds;
        if (slot <= 0)
        {
            // A service without a live slot: nothing is shown and nothing stands in for it.
            return new SlotPlan { NotShown = occasion.Shows, Level = new ObjectiveLevel("shown", 0, 0, Worth) };
        }

        List<string> said = [];
        List<SheetShow> unmatched = [];
        ImmutableArray<SheetShow> asked = occasion.Shows;
        if (asked.IsEmpty)
        {
            asked = Usual(occasion);
            said.Add("Nothing says what is to be shown: the plate as a whole, and of each part its last piece of work, were assumed.");
        }

        ImmutableArray<ShowItem> items = ShowMatching.Match(occasion, asked, unmatched);
        said.AddRange(unmatched.Select(u => $"Line {u.Line.ToString(CultureInfo.InvariantCulture)} of the sheet, “{u.Component}”, fits no card: it is not shown."));

        int frame = Math.Min(45, slot / 20) + Math.Min(60, slot / 20);
        ImmutableArray<ShowItem> chosen = ShowChoice.Choose(items, (int)(slot * (1 - DroppableShare)) - frame);
        ImmutableArray<SegmentDraft> drafts = SegmentOrder.Order(chosen, slot);
        ImmutableArray<int> seconds = SegmentLengths.Share(drafts, slot);
        ImmutableArray<int> starts = Starts(seconds);
        SlotCrew crew = SlotCrew.Of(occasion);
        ImmutableDictionary<int, KitNeed> kit = SlotKit.Assign(occasion, drafts, seconds, said);
        ImmutableArray<(int Segment, TwinNeed Need)> twins = new TwinDerivation(occasion, crew, drafts, starts, seconds, kit).Derive();
        ImmutableArray<RunSegment> segments = SlotSheet.Write(occasion, crew, drafts, starts, seconds, kit, twins);
        if (crew.Allergies is { } round && !occasion.Diets.IsEmpty)
        {
            said.Add($"{round.Name} goes round to the guests with diets after the welcome, {SlotSheet.RoundSeconds.ToString(CultureInfo.InvariantCulture)} s a seat (common practice, no source).");
        }

        if (chosen.Length > 0)
        {
            said.Add("Seconds of a showing are assumed by the way it is shown (common practice, no source) unless the sheet or card states them; a rehearsal replaces them.");
        }

        return new SlotPlan
        {
            Segments = segments,
            Twins = [.. twins.Select(t => t.Need)],
            Kit = [.. kit.OrderBy(k => k.Key).Select(k => k.Value)],
            Shown = [.. chosen.Select(c => c.Show)],
            NotShown = [.. items.Except(chosen).Select(c => c.Show).Concat(unmatched).OrderBy(s => s.Weight)],
            // The choice is exact over the shortest seconds, so the value is also the bound.
            Level = new ObjectiveLevel("shown", chosen.Sum(c => c.Show.Weight), chosen.Length == items.Length ? chosen.Sum(c => c.Show.Weight) : Bound(items, chosen), Worth),
            Assumed = [.. said],
            Fallbacks = SlotSheet.Fallbacks(drafts, twins, kit),
        };
    }

    private static double Bound(ImmutableArray<ShowItem> items, ImmutableArray<ShowItem> chosen)
        => chosen.Sum(c => c.Show.Weight) is int value && items.Length > chosen.Length ? value : 0;

    private static ImmutableArray<int> Starts(ImmutableArray<int> seconds)
    {
        int at = 0;
        return [.. seconds.Select(s => (at += s) - s)];
    }

    // For a card without a list of what is shown: the plate, and each component's last work with hands.
    private static ImmutableArray<SheetShow> Usual(Occasion occasion)
    {
        ImmutableArray<SheetShow>.Builder shows = ImmutableArray.CreateBuilder<SheetShow>();
        foreach (OccasionDish dish in occasion.Dishes)
        {
            foreach (Component c in dish.Dish.Components.Where(c => !c.IsAssembly && c.Steps.Length > 0))
            {
                Step last = c.Steps.LastOrDefault(s => s.Tending == Tending.All) ?? c.Steps[^1];
                shows.Add(new SheetShow(c.Name.Length == 0 ? dish.Name : c.Name, TwinStage.Clause(last.Text), ShowKind.Finish, 3, 0));
                if (c.Steps.FirstOrDefault(s => s.Times.Any(t => t.MinutesMin >= 20 && t.Kind != TimeKind.Limit)) is { } wait && wait != last)
                {
                    shows.Add(new SheetShow(c.Name.Length == 0 ? dish.Name : c.Name, TwinStage.Clause(wait.Text), ShowKind.Begin, 2, 0));
                }
            }

            if (dish.Dish.Plate.Length > 0 || dish.Dish.Components.Any(c => c.IsAssembly))
            {
                shows.Add(new SheetShow("whole plate", "one plate, part by part", ShowKind.Full, 5, 0));
            }
        }

        return shows.ToImmutable();
    }
}
