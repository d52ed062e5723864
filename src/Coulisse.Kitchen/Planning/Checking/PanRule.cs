using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>A pan on a ring does not boil on while everybody is at the meal.</summary>
/// <remarks>Ovens, baths, chillers and dryers hold themselves and are left alone; a ring does not (common practice, no source).</remarks>
internal static class PanRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        string[] rings = [.. occasion.Kit.Where(k => k.Type == "hob").Select(k => k.Code)];
        foreach (PlannedTask pan in plan.Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Kit.Any(rings.Contains)))
        {
            foreach (SheetWindow meal in occasion.Meals)
            {
                double alone = Overlap.Minutes(pan.Start, pan.End, meal.Start, meal.End);
                if (alone > 0)
                {
                    yield return new("pan-alone", [pan.Id], alone, "min", $"{pan.Id} stands on a ring while everybody is at the meal.", pan.Id);
                }
            }
        }
    }
}
