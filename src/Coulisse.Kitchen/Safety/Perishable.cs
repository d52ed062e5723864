using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety;

/// <summary>Whether a component is food that needs cold or heat to stay safe ("potentially hazardous" in FSANZ 3.2.2, "time and temperature control" in the FDA Food Code).</summary>
/// <remarks>
/// Moist, something in it that bacteria live on, and no barrier shown. What is not known counts as moist and alive. Bread, cakes and biscuits that carry no wet layer, fats, syrups and plain fruit are named safe at room temperature by both codes' guidance.
/// </remarks>
internal static class Perishable
{
    private const double Nourishing = 0.5;   // g of protein in 100 g; plain fruit and syrups have less
    private static readonly string[] Crumbs = ["flour", "bread", "oats", "almond"];

    /// <summary>By itself, before anything else is put to it.</summary>
    public static bool Is(WeighedDish dish, WeighedComponent c) => Is(dish, c, Barrier.Of(dish, c));

    /// <summary>The same with its barrier at hand.</summary>
    public static bool Is(WeighedDish dish, WeighedComponent c, Barrier barrier)
    {
        if (barrier.Holds(packed: false) || Dried(c) || Crust(dish, c))
        {
            return false;
        }

        bool lives = FoodTraits.LinesThat(c, l => FoodTraits.IsEgg(l.Food) || FoodTraits.IsFlesh(l.Food) || FoodTraits.Contains(l, "milk") || FoodTraits.Contains(l, "fish") || FoodTraits.Contains(l, "mollusc") || FoodTraits.Contains(l, "crustacean")).Any();
        if (barrier.End is not { Water: { } water, Protein: { } protein } end)
        {
            return true;
        }

        bool fat = end.Fat > 70 && !FoodTraits.Lines(c, FoodTraits.IsEgg).Any();
        return !fat && water >= 15 && (lives || protein >= Nourishing);
    }

    /// <summary>A whole card made as one piece that is bread, cake or biscuit, and that it keeps out of the fridge itself.</summary>
    public static bool Crust(WeighedDish dish)
    {
        double all = dish.Components.Sum(c => c.Grams);
        bool cold = dish.Components.SelectMany(c => c.Component.Keeps).Any(k => !k.Quality && (k.Celsius is >= -2 and <= 10 || k.Where == "fridge"));
        return !cold && all > 0 && dish.Dish.Components.Any(o => o.Steps.Any(s => s.Temperatures.Any(t => t.Of == TemperatureOf.Oven))) && dish.Components.Sum(c => Grain(c) * c.Grams) >= 0.2 * all;
    }

    /// <summary>Acid enough by weight that its pH is worth asking for rather than doubting.</summary>
    public static bool Sour(WeighedComponent c) => FoodTraits.Grams(c, FoodTraits.IsSour) > 0.1 * c.Grams;

    /// <summary>Share of flour, bread, oats or ground nuts.</summary>
    public static double Grain(WeighedComponent c) => c.Grams <= 0 ? 0 : FoodTraits.Grams(c, f => Crumbs.Any(w => FoodTraits.Says(f, w))) / c.Grams;

    // Dried in warm air until it is crisp: what is left of its water is the card's end weight, where it states one.
    private static bool Dried(WeighedComponent c) => c.Component.Steps.Any(s => s.Temperatures.Any(t => t.Of == TemperatureOf.Dryer) && (s.EndGrams is not null || s.Until is not null));

    // Flour, a fifth or more, baked here, and the card itself keeps it out of the fridge.
    private static bool Crust(WeighedDish dish, WeighedComponent c)
    {
        bool baked = c.Component.Steps.Any(s => s.Temperatures.Any(t => t.Of == TemperatureOf.Oven)) || dish.Dish.Plate.IsEmpty && dish.Dish.Components.Any(o => o.Steps.Any(s => s.Temperatures.Any(t => t.Of == TemperatureOf.Oven)));
        bool cold = c.Component.Keeps.Any(k => !k.Quality && k.Celsius is >= -2 and <= 10);
        return baked && !cold && Grain(c) >= 0.2;
    }
}
