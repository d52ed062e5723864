using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning.Watch;

namespace Coulisse.Views.Papers;

/// <summary>Which fridge holds the plates that are plated ahead: the smallest that takes them all, else the largest first. Room for all that waits is judged over all fridges together; this names the door.</summary>
internal static class PlateFridge
{
    /// <summary>"F1 (back): 9 of its 12 slots"; empty when no plates wait or the kit does not say what a tray and a fridge hold.</summary>
    public static string Of(PaperBundle bundle, Batch batch)
    {
        int at = bundle.Batches.IndexOf(batch);
        if (bundle.Occasion is not { } occasion || at < 0 || at >= occasion.Dishes.Length || occasion.Dishes[at] is not { Unit: "plates" } dish || TrayRoom.Plates(occasion.Kit) is not { } each)
        {
            return "";
        }

        int left = (dish.Count - occasion.PlatedLive + each - 1) / each;
        SheetKit[] fridges = [.. occasion.Kit.Where(k => k.Type == "fridge" && k.Shelves is > 0 && k.Code.Length > 0).OrderBy(Room)];
        SheetKit[] use = fridges.FirstOrDefault(f => Room(f) >= left) is { } one ? [one] : [.. fridges.Reverse()];
        List<string> said = [];
        foreach (SheetKit f in use.TakeWhile(_ => left > 0))
        {
            int here = Math.Min(left, Room(f));
            left -= here;
            said.Add(string.Create(CultureInfo.InvariantCulture, $"{f.Code} ({f.Place}): {here} / {Room(f)}"));
        }

        return left > 0 ? "" : string.Join(", ", said);
    }

    private static int Room(SheetKit k) => k.Shelves!.Value * Math.Max(1, k.Number);
}
