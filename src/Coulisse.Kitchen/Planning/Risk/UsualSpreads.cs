using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Work;

namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>Spreads where no records are kept: the range of the work standard where the card gives no time, else by kind of task around the planned time.</summary>
/// <remarks>
/// A standard's range is of all kitchens and all cooks; a time the chef wrote down is of this one, so it spreads less. The spreads by kind
/// are assumed, common practice, no source. What is bound to the clock (meals, doors, the slot itself) takes what it is given.
/// </remarks>
public static class UsualSpreads
{
    /// <summary>Spreads for the tasks of a plan.</summary>
    /// <param name="occasion">The occasion, for its cards.</param>
    /// <param name="plan">The plan.</param>
    public static Func<PlannedTask, Spread> For(Occasion occasion, Plan plan)
    {
        Dictionary<string, Step> steps = [];
        foreach (CardStep step in CardStep.ByComponent(occasion, plan).SelectMany(c => c))
        {
            foreach (PlannedTask task in step.Tasks)
            {
                steps[task.Id] = step.Step;
            }
        }

        return task => steps.TryGetValue(task.Id, out Step? step) && Learnt(occasion, task, step) is { } recorded
            ? recorded
            : step is not null && task.Kind == TaskKind.Work && Unstated(step) && WorkStandards.Find(step.Operation) is { } standard
            ? Ranged(standard, Overlap.Between(task.Start, task.End))
            : ByKind(task);
    }

    /// <summary>By kind of task alone.</summary>
    /// <param name="task">Task of a plan.</param>
    public static Spread ByKind(PlannedTask task)
    {
        double minutes = Overlap.Between(task.Start, task.End);
        return task.Kind switch
        {
            TaskKind.Work or TaskKind.Plate => new Triangular(0.8 * minutes, minutes, 1.6 * minutes),
            TaskKind.Wash or TaskKind.Carry => new Triangular(0.7 * minutes, minutes, 1.5 * minutes),
            TaskKind.Preheat => new Triangular(0.9 * minutes, minutes, 1.3 * minutes),
            // An oven or bath is done by sign and probe, so it runs over more readily than it ends early.
            TaskKind.Unattended => new Triangular(0.97 * minutes, minutes, 1.1 * minutes),
            TaskKind.Moment => new Triangular(0.8 * minutes, minutes, 1.5 * minutes),
            _ => Spread.Exactly(minutes),
        };
    }

    /// <summary>The spread of what trials took, around the planned minutes; what runs by itself is never drawn shorter than planned, since heat that is cut short is no saving.</summary>
    private static Recorded? Learnt(Occasion occasion, PlannedTask task, Step step)
    {
        if (task.Kind is not (TaskKind.Work or TaskKind.Unattended) || LearntTime.Of(occasion.Learnt, step) is not { } learnt || learnt.Median <= 0)
        {
            return null;
        }

        double minutes = Overlap.Between(task.Start, task.End);
        return new Recorded([.. learnt.Minutes.Select(m => m / learnt.Median * minutes).Select(m => task.Kind == TaskKind.Unattended ? Math.Max(m, minutes) : m)]);
    }

    private static bool Unstated(Step step) => step.HandsMinutes is null && !step.Times.Any(t => t.MinutesMin > 0);

    /// <summary>The standard at the amount that makes its best figure the planned minutes.</summary>
    private static Triangular Ranged(WorkStandard standard, double minutes)
    {
        double amount = standard.Each.Best > 0 ? Math.Max(0, (minutes - standard.Fixed.Best) / standard.Each.Best) : 0;
        Minutes all = standard.Fixed + (amount * standard.Each);
        return all.Best > 0 ? Triangular.Holding(minutes * all.Low / all.Best, minutes, minutes * all.High / all.Best) : new Triangular(minutes, minutes, minutes);
    }
}
