using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>A plan is well formed: ids once, time forward, set points as the card has them, plates done before the slot and none after it.</summary>
internal static class FormRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (IGrouping<string, PlannedTask> same in plan.Tasks.GroupBy(t => t.Id).Where(g => g.Count() > 1))
        {
            yield return new("id-twice", [same.Key], same.Count() - 1, "tasks", $"{same.Count()} tasks are called {same.Key}.", same.Key);
        }

        LocalDateTime end = plan.SlotEnd;
        foreach (PlannedTask task in plan.Tasks)
        {
            if (task.End < task.Start)
            {
                yield return new("task-backwards", [task.Id], Overlap.Between(task.End, task.Start), "min", $"{task.Id} ends before it starts.", task.Id);
            }

            // Plating begun before the slot is done before it; plating of the slot is done with it.
            LocalDateTime due = task.Start < plan.SlotStart ? plan.SlotStart : end;
            if (task.Kind == TaskKind.Plate && task.End > due)
            {
                yield return new("plated-late", [task.Id], Overlap.Between(due, task.End), "min", $"The plates of {task.Id} are not ready in time.", task.Id);
            }
        }

        foreach (CardStep step in CardStep.ByComponent(occasion, plan).SelectMany(c => c))
        {
            double[] stated = [.. step.Step.Temperatures.Where(t => t.Of is Cards.TemperatureOf.Oven or Cards.TemperatureOf.Bath or Cards.TemperatureOf.Dryer).Select(t => t.Celsius)];
            foreach (PlannedTask task in step.Tasks.Where(t => stated.Length > 0 && t.Celsius is not null))
            {
                double off = stated.Min(c => Math.Abs(c - task.Celsius!.Value));
                if (off > 0.5)
                {
                    yield return new("other-set-point", [task.Id], off, "K", $"{task.Id} runs at another set point than {step.Name} states.", task.Id);
                }
            }
        }
    }
}
