using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Shared kit that touches food is washed between a component with an allergen and one without it.</summary>
/// <remarks>Only allergens our table says a food always carries are followed; "depends on the brand" is the business of labels and would ask for a wash before everything.</remarks>
internal static class WashRule
{
    private static readonly ImmutableHashSet<string> Touching = ["blender", "mixer", "bowl", "processor", "sieve", "mincer", "slicer"];

    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        Dictionary<string, ImmutableSortedSet<string>?> known = [];
        foreach (SheetKit kit in occasion.Kit.Where(k => k.Code.Length > 0 && k.Number == 1 && (Touching.Contains(k.Type) || Touching.Any(w => k.What.Contains(w, StringComparison.OrdinalIgnoreCase)))))
        {
            ImmutableSortedSet<string> left = [];
            PlannedTask? leaver = null;
            foreach (PlannedTask task in plan.Tasks.Where(t => t.Kit.Contains(kit.Code)).OrderBy(t => t.Start).ThenBy(t => t.End))
            {
                if (task.Kind == TaskKind.Wash)
                {
                    left = task.Removes.IsEmpty ? [] : left.Except(task.Removes);
                    continue;
                }

                string key = task.Dish + "\n" + task.Component;
                if (!known.TryGetValue(key, out ImmutableSortedSet<string>? carries))
                {
                    known[key] = carries = Carried(occasion, task);
                }

                if (carries is null)
                {
                    continue;
                }

                ImmutableSortedSet<string> strange = left.Except(carries);
                if (!strange.IsEmpty)
                {
                    yield return new("not-washed", [leaver!.Id, task.Id], strange.Count, "allergens", $"{kit.Code} goes from {leaver.Id} to {task.Id} with {string.Join(", ", strange)} in it.", kit.Code);
                }

                left = left.Union(carries);
                leaver = task;
            }
        }
    }

    /// <summary>Allergens of a component, also through the components it takes; null when it is no component of a card.</summary>
    private static ImmutableSortedSet<string>? Carried(Occasion occasion, PlannedTask task)
    {
        foreach (OccasionDish dish in occasion.Dishes.Where(d => task.Dish is null || d.Name == task.Dish || d.Dish.Title == task.Dish))
        {
            if (CardStep.Find(dish.Dish, task.Component) is { } component)
            {
                SortedSet<string> found = [];
                Gather(dish.Dish, component, found, []);
                return [.. found];
            }
        }

        return null;
    }

    private static void Gather(Dish dish, Component component, SortedSet<string> found, HashSet<string> seen)
    {
        if (!seen.Add(component.Name))
        {
            return;
        }

        foreach (FoodAmount food in component.Ingredients.Where(l => l.Kind == LineKind.Ingredient).SelectMany(l => l.Foods))
        {
            if (CardStep.Find(dish, food.FromComponent) is { } source)
            {
                Gather(dish, source, found, seen);
            }
            else if (dish.Row(food) is { } row)
            {
                found.UnionWith(row.Contains);
            }
        }
    }
}
