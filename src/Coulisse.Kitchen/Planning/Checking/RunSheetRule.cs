using System.Globalization;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Segments follow without gap, sum to the slot to the second, leave a tenth droppable; every twin is used and ready, none is missing.</summary>
internal static class RunSheetRule
{
    public static IEnumerable<PlanFault> Check(Plan plan)
    {
        int at = 0;
        foreach (RunSegment s in plan.RunSheet)
        {
            string where = s.Number.ToString(CultureInfo.InvariantCulture);
            if (s.StartSecond != at)
            {
                yield return new("segment-not-contiguous", [], s.StartSecond - at, "s", $"Segment {where} does not start where the one before it ends.", where);
            }

            at = s.StartSecond + s.Seconds;
            foreach (int twin in s.Twins.Where(n => plan.Twins.All(t => t.Number != n)))
            {
                yield return new("twin-missing", [], 1, "twins", $"Segment {where} calls for twin {twin.ToString(CultureInfo.InvariantCulture)}, which nobody makes.", where);
            }
        }

        if (plan.RunSheet.IsEmpty)
        {
            yield break;
        }

        double slot = plan.SlotLength.TotalSeconds;
        double sum = plan.RunSheet.Sum(s => (double)s.Seconds);
        if (Math.Abs(sum - slot) > 0.5)
        {
            yield return new("run-sheet-sum", [], sum - slot, "s", "The segments do not sum to the slot.", "run sheet");
        }

        double droppable = plan.RunSheet.Sum(s => (double)s.DroppableSeconds);
        if (droppable < 0.1 * slot - 1e-6)
        {
            yield return new("too-little-droppable", [], 0.1 * slot - droppable, "s", "Less than a tenth of the slot can be dropped.", "run sheet");
        }

        foreach (Twin twin in plan.Twins)
        {
            string where = twin.Number.ToString(CultureInfo.InvariantCulture);
            if (plan.RunSheet.All(s => !s.Twins.Contains(twin.Number)))
            {
                yield return new("twin-unused", [], 1, "twins", $"No segment uses twin {where}.", where);
            }

            double late = Overlap.Between(plan.SlotStart.PlusSeconds(twin.CueSecond), twin.ReadyBy);
            if (late > 0)
            {
                yield return new("twin-late", [.. twin.MadeBy is { } id ? new[] { id } : []], late, "min", $"Twin {where} is ready after it comes in.", where);
            }

            foreach (PlanFault fault in SetOut(plan, twin, where))
            {
                yield return fault;
            }
        }
    }

    // Whoever puts a twin in its place is in the plan, does it once the twin is made and before its cue.
    private static IEnumerable<PlanFault> SetOut(Plan plan, Twin twin, string where)
    {
        if (twin.SetOutBy is not { } id)
        {
            yield break;
        }

        if (plan.Tasks.FirstOrDefault(t => t.Id == id) is not { } sets)
        {
            yield return new("twin-not-set-out", [id], 1, "twins", $"Twin {where} is put in its place by {id}, which is not in the plan.", where);
            yield break;
        }

        if (Overlap.Between(plan.SlotStart.PlusSeconds(twin.CueSecond), sets.End) is > 0 and var late)
        {
            yield return new("twin-not-set-out", [id], late, "min", $"Twin {where} is put in its place after it comes in.", where);
        }

        if (twin.MadeBy is { } made && made != id && plan.Tasks.FirstOrDefault(t => t.Id == made) is { } makes && Overlap.Between(sets.Start, makes.End) is > 0 and var early)
        {
            yield return new("twin-not-set-out", [made, id], early, "min", $"Twin {where} is carried before it is made.", where);
        }
    }
}
