using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>A step is begun only when the step before it on the card has been done at least once.</summary>
/// <remarks>
/// Steps the card itself puts side by side ("meanwhile", "as the bags go in") and kit that heats up bind nothing. A plan does not
/// say which batch a task belongs to, so of several batches the kindest pairing is taken: what is reported is wrong in every reading.
/// </remarks>
internal static class OrderRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (CardStep[] steps in CardStep.ByComponent(occasion, plan).Where(s => s.Length > 0 && !s[0].Component.IsAssembly))
        {
            CardStep? before = null;
            foreach (CardStep step in steps.Where(s => s.Tasks.Length > 0 && !HeatsKit(s) && !Beside(s.Step)))
            {
                if (before is not null)
                {
                    foreach ((PlannedTask task, double early) in Early(before, step))
                    {
                        yield return new("steps-out-of-order", [before.Whole.MinBy(t => t.End)!.Id, task.Id], early, "min", $"{step.Name} begins before {before.Name} is done.", task.Id);
                    }
                }

                before = step;
            }
        }
    }

    /// <summary>Kit brought to its set point by itself: nothing of the food is in it.</summary>
    public static bool HeatsKit(CardStep step) => step.Tasks.All(t => t.Kind == TaskKind.Preheat)
        || step.Step.Operation is "fill_bath" or "preheat_oven" or "preheat_fryer" or "line_tin";

    /// <summary>The card lets it run beside the step before.</summary>
    public static bool Beside(Step step) => step.Meanwhile
        || step.Text.StartsWith("As ", StringComparison.OrdinalIgnoreCase) || step.Text.StartsWith("While ", StringComparison.OrdinalIgnoreCase)
        || step.Text.StartsWith("Meanwhile", StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<(PlannedTask Task, double Minutes)> Early(CardStep before, CardStep step)
    {
        // A batch is done when its last part is: hands that put it on the hob are not the end of what simmers there.
        PlannedTask[] earlier = [.. before.Whole.Where(t => !before.Whole.Any(o => Follows(t, o))).OrderBy(t => t.End)];
        PlannedTask[] later = [.. step.Whole.Where(t => !GoesOn(t, step)).OrderBy(t => t.Start)];
        for (int i = 0; i < later.Length; i++)
        {
            // As many before as after: batch by batch; else the first batch done suffices.
            PlannedTask needed = earlier.Length == later.Length ? earlier[i] : earlier[0];
            double early = Overlap.Between(later[i].Start, needed.End);
            if (early > 1e-6)
            {
                yield return (later[i], early);
            }
        }
    }

    /// <summary>It goes on with a batch that hands of the same step began, so it is no batch of its own.</summary>
    private static bool GoesOn(PlannedTask task, CardStep step) => step.Whole.Any(o => Follows(o, task));

    private static bool Follows(PlannedTask hands, PlannedTask alone) => hands.Kind == TaskKind.Work && alone.Kind == TaskKind.Unattended && hands.End == alone.Start;
}
