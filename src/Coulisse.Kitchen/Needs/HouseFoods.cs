using Coulisse.Kitchen.Occasions;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Needs;

/// <summary>The foods a whole occasion is reckoned with where no single dish is meant: those of the first of its dishes that lays own foods over those that ship.</summary>
internal static class HouseFoods
{
    public static FoodTable Of(Occasion occasion) => occasion.Dishes.Select(d => d.Dish.Foods).FirstOrDefault(f => !ReferenceEquals(f, FoodTable.Default)) ?? FoodTable.Default;
}
