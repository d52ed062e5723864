using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Watch;

namespace Coulisse.Kitchen.Needs;

/// <summary>Fridge slots and trays by the minute, from what waits by the plan (<see cref="ColdWaits"/>).</summary>
public static class WaitingLoads
{
    /// <summary>Slots of all fridges together and trays, each against what there is; empty when the kit lists no fridge with shelves.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="occasion">The occasion with its kit.</param>
    /// <param name="batches">Its batches, one a dish in the same order.</param>
    public static ImmutableArray<LoadProfile> Of(Plan plan, Occasion occasion, ImmutableArray<Batch> batches)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(occasion);
        SheetKit[] fridges = [.. occasion.Kit.Where(k => k.Type == "fridge" && k.Shelves is > 0)];
        if (fridges.Length == 0)
        {
            return [];
        }

        ColdWait[] waiting = [.. ColdWaits.Of(occasion, batches, plan)];
        LoadProfile cold = LoadProfile.Of($"Fridges {string.Join(", ", fridges.Select(f => f.Code))} (a part without a number takes one slot, assumed)", "slots", fridges.Sum(f => f.Shelves!.Value * Math.Max(1, f.Number)), waiting.Select(Piece));
        int owned = occasion.Kit.Where(k => k.Type == "tray").Sum(k => k.Number);
        return owned == 0 ? [cold] : [cold, LoadProfile.Of("Trays", "trays", owned, waiting.Where(w => w.Trays).Select(Piece))];
    }

    private static LoadPiece Piece(ColdWait w) => new(w.What, w.Slots, w.From, w.Until);
}
