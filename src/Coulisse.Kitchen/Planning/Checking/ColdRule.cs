using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Watch;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>What waits in the cold finds a slot in the fridges and a tray to stand on, at every minute.</summary>
/// <remarks>
/// Only what is known to take so many is counted: plates, boxes and tins by size, parts by the number the card sets on a tray. A tub that would be assumed to take a slot shares one here, so that a fault is one in every kitchen.
/// All fridges are taken together (decision 0301).
/// </remarks>
internal static class ColdRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, IEnumerable<Batch> batches, Plan plan)
    {
        SheetKit[] fridges = [.. occasion.Kit.Where(k => k.Type == "fridge" && k.Shelves is > 0)];
        ColdWait[] waits = [.. ColdWaits.Of(occasion, batches, plan).Where(w => w.Known)];
        int slots = fridges.Sum(f => f.Shelves!.Value * Math.Max(1, f.Number));
        int trays = occasion.Kit.Where(k => k.Type == "tray").Sum(k => k.Number);
        string where = string.Join(", ", fridges.Select(f => f.Code));
        if (slots > 0 && Worst(waits, slots) is { } over)
        {
            yield return new("fridge-overfull", [.. over.Waits.Select(w => w.After)], over.Taken - slots, "slots", string.Create(CultureInfo.InvariantCulture, $"{where} have {slots} slots; from {over.From:ddd HH:mm} {over.Taken} are wanted: {string.Join("; ", over.Waits.Select(w => w.What))}. Borrow a fridge, or plate fewer ahead."), where);
        }

        if (trays > 0 && Worst([.. waits.Where(w => w.Trays)], trays) is { } short_)
        {
            yield return new("trays-short", [.. short_.Waits.Select(w => w.After)], short_.Taken - trays, "trays", string.Create(CultureInfo.InvariantCulture, $"There are {trays} trays; from {short_.From:ddd HH:mm} {short_.Taken} are wanted: {string.Join("; ", short_.Waits.Select(w => w.What))}."), "trays");
        }
    }

    // The most is always reached at the start of a wait.
    private static (int Taken, LocalDateTime From, ColdWait[] Waits)? Worst(ColdWait[] waits, int room)
    {
        (int Taken, LocalDateTime From, ColdWait[] Waits)? worst = null;
        foreach (LocalDateTime at in waits.Select(w => w.From).Distinct().Order())
        {
            ColdWait[] now = [.. waits.Where(w => w.From <= at && at < w.Until)];
            int taken = now.Sum(w => w.Slots);
            if (taken > room && taken > (worst?.Taken ?? 0))
            {
                worst = (taken, at, now);
            }
        }

        return worst;
    }
}
