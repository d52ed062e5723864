namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>A moment lies in its long task, or touches its start (loading) or its end (unloading), and on its kit.</summary>
internal static class MomentRule
{
    public static IEnumerable<PlanFault> Check(Plan plan)
    {
        foreach (PlannedTask moment in plan.Tasks.Where(t => t.Within is not null && t.Kind == TaskKind.Moment))
        {
            PlannedTask? task = plan.Tasks.FirstOrDefault(t => t.Id == moment.Within);
            if (task is null)
            {
                yield return new("moment-of-nothing", [moment.Id], 1, "tasks", $"{moment.Id} lies in {moment.Within}, which is not in the plan.", moment.Id);
                continue;
            }

            if (moment.End != task.Start && moment.Start != task.End)
            {
                double outside = Overlap.Between(moment.Start, moment.End) - Overlap.Minutes(moment.Start, moment.End, task.Start, task.End);
                if (outside > 1e-6)
                {
                    yield return new("moment-outside", [moment.Id, task.Id], outside, "min", $"{moment.Id} is not inside {task.Id}.", moment.Id);
                }
            }

            if (moment.Kit.Any(k => !task.Kit.Contains(k)))
            {
                yield return new("moment-other-kit", [moment.Id, task.Id], moment.Kit.Count(k => !task.Kit.Contains(k)), "pieces", $"{moment.Id} holds kit that {task.Id} does not.", moment.Id);
            }
        }
    }
}
