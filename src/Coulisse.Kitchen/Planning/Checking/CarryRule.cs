using System.Globalization;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>What goes on in another place is carried there first: as many minutes lie between as the sheet says the way takes.</summary>
/// <remarks>Judged between two steps that follow each other on the card, each on kit that stands in one known place at that hour; a way the sheet gives no minutes for is not judged.</remarks>
internal static class CarryRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        if (occasion.Sheet.Ways.IsEmpty)
        {
            yield break;
        }

        foreach (CardStep[] steps in CardStep.ByComponent(occasion, plan).Where(s => s.Length > 0 && !s[0].Component.IsAssembly))
        {
            CardStep? before = null;
            foreach (CardStep step in steps.Where(s => s.Tasks.Length > 0 && !OrderRule.HeatsKit(s) && !OrderRule.Beside(s.Step)))
            {
                foreach (PlannedTask to in before is null ? [] : step.Whole)
                {
                    PlannedTask? from = before!.Whole.Where(t => t.End <= to.Start).MaxBy(t => t.End);
                    if (from is not null && Ways.Minutes(occasion, Place(occasion, from), Place(occasion, to)) is { } way && way - Overlap.Between(from.End, to.Start) is > 1e-6 and var lacking)
                    {
                        yield return new("carried-too-fast", [from.Id, to.Id], lacking, "min", string.Create(CultureInfo.InvariantCulture, $"{step.Name} is at {Place(occasion, to)}, {before.Name} at {Place(occasion, from)}: the way takes {way:0.#} min."), to.Id);
                    }
                }

                before = step;
            }
        }
    }

    private static string? Place(Occasion occasion, PlannedTask task)
    {
        string[] places = [.. occasion.Kit.Where(k => k.Code.Length > 0 && task.Kit.Contains(k.Code)).SelectMany(k => Ways.Stands(k, task.Start)).Distinct(StringComparer.OrdinalIgnoreCase)];
        return places.Length == 1 ? places[0] : null;
    }
}
