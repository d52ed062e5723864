using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Labels;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Allergens a component leaves on kit: those its foods always carry, through the components it takes.</summary>
internal static class ComponentAllergens
{
    public static ImmutableArray<string> Of(Dish dish, Component component) => [.. Collect(dish, component, []).Order(StringComparer.Ordinal)];

    private static HashSet<string> Collect(Dish dish, Component component, HashSet<string> seen)
    {
        HashSet<string> found = new(StringComparer.Ordinal);
        if (!seen.Add(component.Name))
        {
            return found;
        }

        foreach (FoodAmount food in component.Ingredients.SelectMany(l => l.Foods))
        {
            if (food.FromComponent is { } from)
            {
                if (dish.Components.FirstOrDefault(c => c.Name == from || c.Code == from) is { } other)
                {
                    found.UnionWith(Collect(dish, other, seen));
                }
            }
            else
            {
                found.UnionWith(dish.Row(food)?.Contains ?? []);
                found.UnionWith(MadeOf.In(food, dish.Language, FoodTable.Default).Where(m => !m.Either).SelectMany(m => m.Food.Contains));
            }
        }

        return found;
    }
}
