using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Plating;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;
using NodaTime;

namespace Coulisse.Kitchen.Needs;

/// <summary>What waits in the cold between its last task and its use: fridge slots and trays by the minute, from the plan and the sizes of plates, boxes and trays.</summary>
/// <remarks>
/// A part takes the trays or cloths that the last step done names ("80 to a GN 1/1", "48 to a cloth"), else one slot (assumed: a tub, a bottle, a tray); between two of its steps only from half an hour. What keeps airtight or at room temperature takes none.
/// Plates and boxes stand on trays as the kit says or as they fit; a dish baked in tins takes a slot a tin until it is cut.
/// </remarks>
public static partial class WaitingLoads
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

        List<(LoadPiece Piece, bool Trays)> waiting = [.. occasion.Dishes.Zip(batches).SelectMany(d => OfDish(plan, occasion, d.First, d.Second))];
        LoadProfile cold = LoadProfile.Of($"Fridges {string.Join(", ", fridges.Select(f => f.Code))} (a part without a number takes one slot, assumed)", "slots", fridges.Sum(f => f.Shelves!.Value * Math.Max(1, f.Number)), waiting.Select(w => w.Piece));
        int owned = occasion.Kit.Where(k => k.Type == "tray").Sum(k => k.Number);
        return owned == 0 ? [cold] : [cold, LoadProfile.Of("Trays", "trays", owned, waiting.Where(w => w.Trays).Select(w => w.Piece))];
    }

    /// <summary>How many plates one tray holds: as the kit says, else as they fit; null when neither is known.</summary>
    public static int? PlatesOnTray(IEnumerable<SheetKit> kit)
    {
        SheetKit[] all = [.. kit];
        return PlatingTimes.TrayHolds(all) is { } said ? said
            : Tray(all) is var (along, across) && all.FirstOrDefault(k => k.Type == "plate" && k.Millimetres.Length > 0) is { } plate ? Positive(RoundsOnTray.Fit(along, across, Length.FromMillimetres(plate.Millimetres[0]), Length.FromMillimetres(0)).Count)
            : null;
    }

    /// <summary>How many boxes one tray holds, from the sizes the kit gives; null when it gives none.</summary>
    public static int? BoxesOnTray(IEnumerable<SheetKit> kit)
    {
        SheetKit[] all = [.. kit];
        return Tray(all) is var (along, across) && all.FirstOrDefault(k => k.What.StartsWith("box", StringComparison.OrdinalIgnoreCase) && k.Millimetres.Length > 1) is { } box
            ? Positive(Coulisse.Matter.Shapes.BoxesOnTray.Fit(along, across, Length.FromMillimetres(box.Millimetres[0]), Length.FromMillimetres(box.Millimetres[1])).PerTray)
            : null;
    }

    private static IEnumerable<(LoadPiece, bool)> OfDish(Plan plan, Occasion occasion, OccasionDish dish, Batch batch)
    {
        PlannedTask[] own = [.. plan.Tasks.Where(t => t.Within is null && (t.Dish == dish.Name || t.Dish == dish.Dish.Title))];
        string[] assembly = [.. batch.Weighed.Dish.Components.Where(c => c.IsAssembly).Select(c => c.Name)];
        PlannedTask[] laid = [.. own.Where(t => t.Kind == TaskKind.Plate || (t.Component is { } c && assembly.Contains(c)))];
        foreach (BatchComponent part in batch.Components.Where(c => !c.Weighed.Component.IsAssembly && !Dry(c.Weighed.Component)))
        {
            PlannedTask[] made = [.. own.Where(t => t.Component == part.Weighed.Component.Name && t.Kind is TaskKind.Work or TaskKind.Unattended).OrderBy(t => t.Start).ThenBy(t => t.End)];
            LocalDateTime last = laid.Length > 0 ? laid.Min(t => t.Start) : plan.SlotStart;
            for (int i = 0; i < made.Length && dish.Unit != "pieces"; i++)
            {
                LocalDateTime from = made[..(i + 1)].Max(t => t.End);
                LocalDateTime until = i + 1 < made.Length ? LocalDateTime.Min(made[i + 1].Start, last) : last;

                // between two steps of one part only what stands for half an hour or more is put away
                if (from < until && (i + 1 == made.Length || Period.Between(from, until, PeriodUnits.Minutes).Minutes >= 30))
                {
                    (int slots, string why, bool trays) = Slots(part, made[i].Line);
                    yield return (new LoadPiece(part.Weighed.Component.Name + why, slots, from, until), trays);
                }
            }
        }

        if (laid.Length > 0 && dish.Unit is "plates" or "portions" or "covers" && laid.Max(t => t.End) < plan.SlotStart && PlatesOnTray(occasion.Kit) is { } held)
        {
            int plates = dish.Count - occasion.PlatedLive;
            int trays = (plates + held - 1) / held;
            yield return (new LoadPiece(string.Create(CultureInfo.InvariantCulture, $"{plates} plates, {held} a tray"), trays, laid.Max(t => t.End), plan.SlotStart), true);
        }

        // a tin waits from the oven until it is cut; the pieces then wait in their boxes
        if (dish.Unit == "pieces" && own.Where(t => t.Kind == TaskKind.Unattended).OrderBy(t => t.End).LastOrDefault() is { } baked)
        {
            int tins = OccasionBatches.WholeVessels(dish.Dish, dish.Count, "pieces");
            PlannedTask? cut = own.Where(t => t.Start >= baked.End && (t.Text.Contains("cut", StringComparison.OrdinalIgnoreCase) || t.Text.Contains("box", StringComparison.OrdinalIgnoreCase))).MinBy(t => t.Start);
            LocalDateTime until = cut?.Start ?? plan.SlotStart;
            if (baked.End < until)
            {
                yield return (new LoadPiece(string.Create(CultureInfo.InvariantCulture, $"{tins} {(tins == 1 ? "tin" : "tins")}: {dish.Name}"), tins, baked.End, until), false);
            }

            if (cut is not null && cut.End < plan.SlotStart && BoxesOnTray(occasion.Kit) is { } boxes && dish.For.Contains("box", StringComparison.OrdinalIgnoreCase) && dish == occasion.Dishes.First(d => d.For == dish.For))
            {
                yield return (new LoadPiece(string.Create(CultureInfo.InvariantCulture, $"{dish.Count} boxes, {boxes} a tray"), (dish.Count + boxes - 1) / boxes, cut.End, plan.SlotStart), true);
            }
        }
    }

    // "80 to a GN 1/1", "48 to a cloth": as the last step done says, else one slot.
    private static (int Slots, string Why, bool Trays) Slots(BatchComponent part, int line)
    {
        double? made = part.Weighed.Component.Makes.FirstOrDefault(m => m.Unit != "g" && m.Amount > 0)?.Amount * part.Factor;
        Match last = part.Weighed.Component.Steps.Where(s => line == 0 || s.Span.Line <= line).Select(s => ToTray().Match(s.Text)).LastOrDefault(m => m.Success) ?? Match.Empty;
        return made is { } n && last.Success && int.Parse(last.Groups["n"].Value, CultureInfo.InvariantCulture) is > 0 and var each
            ? ((int)Math.Ceiling((n / each) - 1e-9), string.Create(CultureInfo.InvariantCulture, $": {n:0} at {each} a {(last.Groups["on"].Value.Equals("cloth", StringComparison.OrdinalIgnoreCase) ? "cloth" : "tray")}"), true)
            : (1, "", false);
    }

    private static bool Dry(Component c) => c.Keeps.Any(k => k.Where is "airtight" or "room" or "dry");

    private static (Length Along, Length Across)? Tray(SheetKit[] kit) => kit.FirstOrDefault(k => k.Type == "tray" && k.Millimetres.Length > 1) is { } tray ? (Length.FromMillimetres(tray.Millimetres[0]), Length.FromMillimetres(tray.Millimetres[1])) : null;

    private static int? Positive(int n) => n > 0 ? n : null;

    [GeneratedRegex(@"\b(?<n>\d{1,4}) to (a|each|one) (?<on>GN|tray|cloth)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex ToTray();
}
