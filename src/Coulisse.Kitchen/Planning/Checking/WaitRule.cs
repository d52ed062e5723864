using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>The waits and limits a card states between its steps, read from the card again and not from whatever planned them.</summary>
internal static class WaitRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (CardStep[] all in CardStep.ByComponent(occasion, plan))
        {
            CardStep[] steps = [.. all.Where(s => s.Tasks.Length > 0)];
            for (int i = 0; i < steps.Length; i++)
            {
                CardStep step = steps[i];
                double least = step.Step.Times.Where(t => IsWait(t) && !WithinHands(step.Step, t)).Select(Least).DefaultIfEmpty().Max();
                CardStep? next = steps.Skip(i + 1).FirstOrDefault(s => !OrderRule.Beside(s.Step));
                if (least > 0 && next is not null && Shortest(step, next) is { } between && between.Minutes < least - 1e-6)
                {
                    yield return new("wait-too-short", [between.From.Id, between.To.Id], least - between.Minutes, "min", $"{next.Name} begins before the wait of {step.Name} is over.", between.To.Id);
                }

                double cook = step.Step.Times.Where(t => t.Kind is TimeKind.Oven or TimeKind.Cook && t.Bound != Bound.AtMost).Select(Least).DefaultIfEmpty().Max();
                foreach (PlannedTask task in step.Whole.Where(t => t.Kind == TaskKind.Unattended && !OrderRule.HeatsKit(step) && Overlap.Between(t.Start, t.End) < cook - 1e-6))
                {
                    yield return new("cooked-too-short", [task.Id], cook - Overlap.Between(task.Start, task.End), "min", $"{task.Id} is shorter than {step.Name} states.", task.Id);
                }

                foreach (PlanFault late in Late(step, steps[..i]))
                {
                    yield return late;
                }
            }
        }
    }

    private static bool IsWait(StepTime t) => t.Kind is TimeKind.Chill or TimeKind.Rest && t.Bound != Bound.AtMost;

    /// <summary>"Stir over ice, about 15 min (hands 25 min)": part of the work, which grows and shrinks with the batch, and no wait after it.</summary>
    private static bool WithinHands(Step step, StepTime t) => t.Bound == Bound.At && step.HandsMinutes >= Least(t);

    private static double Least(StepTime t) => (t.MinutesMin ?? 0) * t.Repeats;

    /// <summary>From the start of a step to the start of the next: for each later task the kindest earlier one; the worst of these.</summary>
    private static (PlannedTask From, PlannedTask To, double Minutes)? Shortest(CardStep step, CardStep next)
    {
        (PlannedTask, PlannedTask, double)? worst = null;
        foreach (PlannedTask to in next.Whole)
        {
            PlannedTask from = step.Whole.MinBy(t => t.Start)!;
            double minutes = Overlap.Between(from.Start, to.Start);
            worst = worst is { } w && w.Item3 <= minutes ? w : (from, to, minutes);
        }

        return worst;
    }

    /// <summary>"Within 90 min": from the end of the step before, or of the heat when the card says so, to the start at the latest.</summary>
    private static IEnumerable<PlanFault> Late(CardStep step, CardStep[] before)
    {
        StepTime? limit = step.Step.Times.Where(t => t.Kind == TimeKind.Limit && t.Bound != Bound.AtLeast && (t.MinutesMax ?? t.MinutesMin) > 0).MinBy(t => t.MinutesMax ?? t.MinutesMin);
        bool fromHeat = step.Step.Text.Contains("leaving the bath", StringComparison.OrdinalIgnoreCase) || step.Step.Text.Contains("leaving the oven", StringComparison.OrdinalIgnoreCase);
        CardStep? from = fromHeat
            ? before.LastOrDefault(s => s.Step.Times.Any(t => t.Kind is TimeKind.Cook or TimeKind.Oven))
            : before.LastOrDefault(s => !OrderRule.Beside(s.Step));
        if (limit is null || from is null)
        {
            yield break;
        }

        double most = (limit.MinutesMax ?? limit.MinutesMin)!.Value;
        foreach (PlannedTask task in step.Whole)
        {
            PlannedTask? last = from.Whole.Where(t => t.End <= task.Start).MaxBy(t => t.End);
            double over = last is null ? 0 : Overlap.Between(last.End, task.Start) - most;
            if (over > 1e-6)
            {
                yield return new("wait-too-long", [last!.Id, task.Id], over, "min", $"{step.Name} comes later after {from.Name} than the card allows.", task.Id);
            }
        }
    }
}
