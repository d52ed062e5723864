using Coulisse.Kitchen.Planning.Edits;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>What a person fixed is so in the plan.</summary>
internal static class EditRule
{
    public static IEnumerable<PlanFault> Check(Plan plan)
    {
        foreach (Pin pin in plan.Edits.Pins)
        {
            PlannedTask? t = plan.Tasks.FirstOrDefault(x => x.Key == pin.Task);
            if (t is null)
            {
                yield return new("pinned-missing", [], 1, "tasks", $"{pin.Task} was pinned and is not in the plan.", pin.Task);
                continue;
            }

            if (pin.Start is { } at && at != t.Start)
            {
                yield return new("pin-not-kept", [t.Id], Math.Max(Overlap.Between(at, t.Start), Overlap.Between(t.Start, at)), "min", $"{t.Id} does not start when it was pinned to.", pin.Task);
            }

            if (pin.Person is { } who && !t.People.Contains(who))
            {
                yield return new("pin-not-kept", [t.Id], 1, "people", $"{t.Id} was pinned to {who}, who has no hands on it.", pin.Task);
            }

            if (pin.Kit is { } kit && !t.Kit.Contains(kit))
            {
                yield return new("pin-not-kept", [t.Id], 1, "pieces", $"{t.Id} was pinned to {kit} and is not on it.", pin.Task);
            }
        }

        foreach (Forbid no in plan.Edits.Forbids)
        {
            foreach (PlannedTask t in plan.Tasks.Where(x => x.Key == no.Task))
            {
                if (no is { From: { } from, To: { } to } && Overlap.Minutes(from, to, t.Start, t.End) is > 1e-6 and double within)
                {
                    yield return new("forbidden", [t.Id], within, "min", $"{t.Id} lies in a time it was forbidden.", no.Task);
                }

                if ((no.Person is { } who && t.People.Contains(who)) || (no.Kit is { } kit && t.Kit.Contains(kit)))
                {
                    yield return new("forbidden", [t.Id], 1, "pieces", $"{t.Id} has what it was forbidden: {no.Person ?? no.Kit}.", no.Task);
                }
            }
        }

        foreach (Sequence order in plan.Edits.Sequences)
        {
            if (plan.Tasks.FirstOrDefault(x => x.Key == order.First) is { } first && plan.Tasks.FirstOrDefault(x => x.Key == order.Then) is { } then && first.End > then.Start)
            {
                yield return new("order-not-kept", [first.Id, then.Id], Overlap.Between(then.Start, first.End), "min", $"{then.Id} begins before {first.Id} has ended, against the order that was set.", order.First);
            }
        }
    }
}
