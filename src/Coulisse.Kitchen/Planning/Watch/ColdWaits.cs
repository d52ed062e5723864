using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>What waits in the cold between its last task and its use, by the plan and the sizes of plates, boxes and trays.</summary>
/// <remarks>
/// A part takes the trays or cloths that the last step done names ("80 to a GN 1/1", "48 to a cloth"), else one slot (assumed: a tub, a bottle, a tray); between two of its steps only from half an hour. What keeps airtight or at room temperature takes none.
/// Plates and boxes stand on trays as the kit says or as they fit; a dish baked in tins takes a slot a tin until it is cut.
/// </remarks>
public static partial class ColdWaits
{
    /// <summary>Every wait of every dish.</summary>
    /// <param name="occasion">The occasion with its kit.</param>
    /// <param name="batches">Its batches, one a dish in the same order.</param>
    /// <param name="plan">The plan.</param>
    public static IEnumerable<ColdWait> Of(Occasion occasion, IEnumerable<Batch> batches, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        ArgumentNullException.ThrowIfNull(plan);
        return occasion.Dishes.Zip(batches).SelectMany(d => OfDish(plan, occasion, d.First, d.Second));
    }

    private static IEnumerable<ColdWait> OfDish(Plan plan, Occasion occasion, OccasionDish dish, Batch batch)
    {
        PlannedTask[] own = [.. plan.Tasks.Where(t => t.Within is null && (t.Dish == dish.Name || t.Dish == dish.Dish.Title))];
        string[] assembly = [.. batch.Weighed.Dish.Components.Where(c => c.IsAssembly).Select(c => c.Name)];
        PlannedTask[] laid = [.. own.Where(t => t.Kind == TaskKind.Plate || (t.Component is { } c && assembly.Contains(c)))];
        foreach (BatchComponent part in batch.Components.Where(c => !c.Weighed.Component.IsAssembly && !Dry(c.Weighed.Component)))
        {
            PlannedTask[] made = [.. own.Where(t => t.Component == part.Weighed.Component.Name && t.Kind is TaskKind.Work or TaskKind.Unattended).OrderBy(t => t.Start).ThenBy(t => t.End)];
            PlannedTask? taken = laid.MinBy(t => t.Start);
            LocalDateTime last = taken?.Start ?? plan.SlotStart;
            for (int i = 0; i < made.Length && dish.Unit != "pieces"; i++)
            {
                PlannedTask done = made[..(i + 1)].MaxBy(t => t.End)!;
                PlannedTask? next = i + 1 < made.Length && made[i + 1].Start < last ? made[i + 1] : taken;
                LocalDateTime until = next?.Start ?? last;

                // between two steps of one part only what stands for half an hour or more is put away
                if (done.End < until && (i + 1 == made.Length || Period.Between(done.End, until, PeriodUnits.Minutes).Minutes >= 30))
                {
                    (int slots, string why, bool trays) = Slots(part, made[i].Line);
                    yield return new ColdWait(part.Weighed.Component.Name + why, slots, done.End, until, trays, trays, done.Id, next?.Id);
                }
            }
        }

        if (laid.Length > 0 && dish.Unit is "plates" or "portions" or "covers" && laid.MaxBy(t => t.End) is { } plated && plated.End < plan.SlotStart && TrayRoom.Plates(occasion.Kit) is { } held)
        {
            int plates = dish.Count - occasion.PlatedLive;
            int trays = (plates + held - 1) / held;
            yield return new ColdWait(string.Create(CultureInfo.InvariantCulture, $"{plates} plates, {held} a tray"), trays, plated.End, plan.SlotStart, true, true, plated.Id, null);
        }

        // a tin waits from the oven until it is cut; the pieces then wait in their boxes
        if (dish.Unit == "pieces" && own.Where(t => t.Kind == TaskKind.Unattended).OrderBy(t => t.End).LastOrDefault() is { } baked)
        {
            int tins = OccasionBatches.WholeVessels(dish.Dish, dish.Count, "pieces");
            PlannedTask? cut = own.Where(t => t.Start >= baked.End && (t.Text.Contains("cut", StringComparison.OrdinalIgnoreCase) || t.Text.Contains("box", StringComparison.OrdinalIgnoreCase))).MinBy(t => t.Start);
            LocalDateTime until = cut?.Start ?? plan.SlotStart;
            if (baked.End < until)
            {
                yield return new ColdWait(string.Create(CultureInfo.InvariantCulture, $"{tins} {(tins == 1 ? "tin" : "tins")}: {dish.Name}"), tins, baked.End, until, false, true, baked.Id, cut?.Id);
            }

            if (cut is not null && cut.End < plan.SlotStart && TrayRoom.Boxes(occasion.Kit) is { } boxes && dish.For.Contains("box", StringComparison.OrdinalIgnoreCase) && dish == occasion.Dishes.First(d => d.For == dish.For))
            {
                yield return new ColdWait(string.Create(CultureInfo.InvariantCulture, $"{dish.Count} boxes, {boxes} a tray"), (dish.Count + boxes - 1) / boxes, cut.End, plan.SlotStart, true, true, cut.Id, null);
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

    [GeneratedRegex(@"\b(?<n>\d{1,4}) to (a|each|one) (?<on>GN|tray|cloth)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex ToTray();
}
