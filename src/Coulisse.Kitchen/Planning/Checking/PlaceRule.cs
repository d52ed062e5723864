using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Kit is used where it stands at that hour, not while it is moved, and no task needs kit of two places at once.</summary>
internal static class PlaceRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (PlannedTask task in plan.Tasks.Where(t => t.Kind != TaskKind.Carry))
        {
            SheetKit[] kit = [.. occasion.Kit.Where(k => k.Code.Length > 0 && task.Kit.Contains(k.Code))];
            foreach (SheetKit k in kit)
            {
                if (k.MovesAt is { } moves && task.Kind != TaskKind.House && task.Start < moves && moves < task.End)
                {
                    yield return new("kit-while-moved", [task.Id], Overlap.Between(moves, task.End), "min", $"{k.Code} is moved while {task.Id} holds it.", k.Code);
                }
                else if (task.Place is { Length: > 0 } place && !At(k, task.Start, place))
                {
                    yield return new("kit-elsewhere", [task.Id], 1, "pieces", $"{task.Id} is at {place}; {k.Code} is at {Place(k, task.Start)}.", k.Code);
                }
            }

            string[] places = [.. occasion.Kit.Select(k => k.Place).Where(p => p.Length > 0).Distinct()];
            if (kit.Length > 1 && places.Length > 1 && !places.Any(p => kit.All(k => At(k, task.Start, p))))
            {
                yield return new("kit-two-places", [task.Id], kit.Length, "pieces", $"{task.Id} needs {string.Join(" and ", kit.Select(k => k.Code))}, which stand in different places.", task.Id);
            }
        }
    }

    private static string Place(SheetKit kit, LocalDateTime at) => kit.MovesAt is { } moves && at < moves && kit.EarlierPlace is { } earlier ? earlier : kit.Place;

    /// <summary>Kit without a place can be anywhere; "shared with the back" is at both.</summary>
    private static bool At(SheetKit kit, LocalDateTime at, string place) => Place(kit, at) is var stands
        && (stands.Length == 0 || string.Equals(stands, place, StringComparison.OrdinalIgnoreCase)
            || (kit.What.Contains("shared", StringComparison.OrdinalIgnoreCase) && kit.What.Contains(place, StringComparison.OrdinalIgnoreCase)));
}
