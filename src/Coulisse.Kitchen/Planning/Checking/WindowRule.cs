using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Hands work in the windows of the sheet or in the slot; what runs by itself may run on.</summary>
internal static class WindowRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        if (occasion.Windows.IsEmpty)
        {
            yield break;
        }

        List<(LocalDateTime Start, LocalDateTime End)> open = [];
        foreach ((LocalDateTime start, LocalDateTime end) in occasion.Windows.Select(w => (w.Start, w.End)).Append((plan.SlotStart, plan.SlotEnd)).Order())
        {
            if (open.Count > 0 && start <= open[^1].End)
            {
                open[^1] = (open[^1].Start, end > open[^1].End ? end : open[^1].End);
            }
            else
            {
                open.Add((start, end));
            }
        }

        foreach (PlannedTask task in plan.Tasks.Where(t => !t.People.IsEmpty && t.Kind != TaskKind.Meal))
        {
            double outside = Overlap.Between(task.Start, task.End) - open.Sum(w => Overlap.Minutes(task.Start, task.End, w.Start, w.End));
            if (outside > 1e-6)
            {
                yield return new("outside-windows", [task.Id], outside, "min", $"{task.Id} is worked outside the windows of the sheet.", task.Id);
            }
        }
    }
}
