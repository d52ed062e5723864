using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Ovens with shelves are not filled beyond them, and all the tins a dish is made in find a shelf.</summary>
/// <remarks>
/// A task takes the shelves it says, else as many as its kit list repeats the code, at least one. How many tins a dish needs is reckoned here from the pieces wanted and the pieces a tin makes;
/// a plan made elsewhere that says no shelves is not held to it.
/// </remarks>
internal static class ShelfRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (SheetKit kit in occasion.Kit.Where(k => k.Type == "oven" && k.Shelves is > 1))
        {
            int room = kit.Shelves!.Value * Math.Max(1, kit.Number);
            PlannedTask[] tasks = [.. plan.Tasks.Where(t => t.Within is null && t.Kind != TaskKind.Preheat && t.Kit.Contains(kit.Code))];
            HashSet<string> reported = [];
            foreach (PlannedTask at in tasks)
            {
                PlannedTask[] now = [.. tasks.Where(t => t.Start <= at.Start && at.Start < t.End)];
                int taken = now.Sum(t => Taken(t, kit.Code));
                if (taken > room && reported.Add(string.Join(' ', now.Select(t => t.Id))))
                {
                    yield return new("shelves-overfull", [.. now.Select(t => t.Id)], taken - room, "shelves", string.Create(CultureInfo.InvariantCulture, $"{kit.Code} has {room} shelves; {taken} are wanted at once."), kit.Code);
                }
            }
        }

        foreach (OccasionDish dish in occasion.Dishes.Where(d => d.Unit == "pieces"))
        {
            int tins = OccasionBatches.WholeVessels(dish.Dish, dish.Count, dish.Unit);
            foreach (IGrouping<int, PlannedTask> step in plan.Tasks.Where(t => t.Shelves > 0 && t.Dish == dish.Name && t.Kind == TaskKind.Unattended && t.Line > 0 && !t.ForStage).GroupBy(t => t.Line))
            {
                int given = step.Sum(t => t.Shelves);
                if (given < tins)
                {
                    yield return new("tins-without-shelf", [.. step.Select(t => t.Id)], tins - given, "tins", string.Create(CultureInfo.InvariantCulture, $"{dish.Name} is made in {tins} tins; {given} find a shelf."), dish.Name);
                }
            }
        }
    }

    private static int Taken(PlannedTask task, string code) => Math.Max(task.Shelves, task.Kit.Count(k => k == code));
}
