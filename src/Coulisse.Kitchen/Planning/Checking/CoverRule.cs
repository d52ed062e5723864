using System.Globalization;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Every step of every card is somebody's task or is plated; a task names a line its card has.</summary>
internal static class CoverRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (CardStep step in CardStep.ByComponent(occasion, plan).SelectMany(c => c))
        {
            // Putting the plate together is planned as plating, not step by step.
            bool plated = step.Component.IsAssembly && plan.Tasks.Any(t => t.Kind == TaskKind.Plate);
            if (step.Tasks.Length == 0 && !plated)
            {
                yield return new("step-not-planned", [], 1, "steps", $"Nobody does {step.Name}: \"{step.Step.Text}\".", Line(step.Step.Span.Line));
            }
        }

        foreach (PlannedTask task in plan.Tasks.Where(t => t.Line > 0 && t.Dish is not null))
        {
            OccasionDish? dish = occasion.Dishes.FirstOrDefault(d => d.Name == task.Dish || d.Dish.Title == task.Dish);
            if (dish is not null && !dish.Dish.Components.Any(c => c.Steps.Any(s => s.Span.Line == task.Line)))
            {
                yield return new("line-unknown", [task.Id], 1, "tasks", $"{task.Id} names line {Line(task.Line)} of {dish.Name}, which is no step.", task.Id);
            }
        }
    }

    private static string Line(int line) => "line " + line.ToString(CultureInfo.InvariantCulture);
}
