using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety;

/// <summary>What the rules ask of a component: which foods are in it and whether heat reaches them.</summary>
internal static class FoodTraits
{
    private static readonly string[] HeatWork =
    [
        "boil_food", "simmer", "make_stock", "reduce", "sweat", "brown_onions", "sear", "saute", "roast", "braise", "poach", "poach_eggs", "steam", "deep_fry", "grill_bars", "griddle", "gratinate", "cook_custard", "make_roux_sauce",
        "cook_syrup", "confit", "cook_rice", "cook_pasta", "stir_risotto", "scald_milk", "boil_agar", "bake", "blind_bake", "heat_through", "reheat", "water_bath", "cook_unsaid", "candy_fruit", "blanch_refresh",
    ];

    private static readonly string[] Garden = ["garlic", "shallot", "onion", "spring-onion", "basil", "thyme", "rosemary", "dill", "parsley", "chives", "mint", "coriander-leaf", "red-pepper", "chilli", "mushroom", "shiitake", "chanterelle", "tomato", "aubergine"];
    private static readonly string[] Ice = ["frozen", "surgelé", "congelé", "tiefgekühlt", "gefroren", "tiefkühl", "congelad", "surgelat", "congelat", "冷凍"];
    private static readonly string[] NoIce = ["thaw", "defrost", "previously", "dried", "décongel", "aufgetaut", "descongel", "scongel", "decongel", "解凍"];
    private static readonly string[] Sour = ["lemon-juice", "lime-juice", "cider-vinegar", "white-wine-vinegar", "white-vinegar", "red-wine-vinegar", "balsamic", "citric-acid"];
    private static readonly string[] Flesh = ["chicken", "duck", "turkey", "goose", "beef", "veal", "lamb", "mutton", "pork", "venison", "rabbit", "steak", "brisket", "salmon", "cod", "trout", "fish", "octopus", "prawn", "lobster", "short rib", "sirloin", "fillet of", "loin"];

    /// <summary>Highest temperature that reaches the component, °C; an operation of cooking without a figure counts as 100.</summary>
    /// <remarks>Heat in a later component counts when that component names this one: a dough is baked where the topping is.</remarks>
    public static double Hottest(WeighedDish dish, WeighedComponent component)
    {
        double own = Own(component.Component);
        string[] names = [.. component.Component.Name.Split(' ', '-').Where(w => w.Length >= 4).Select(w => w.ToLowerInvariant())];
        foreach (Component other in dish.Components.Select(c => c.Component).Where(c => c != component.Component))
        {
            bool takes = other.Ingredients.SelectMany(i => i.Foods).Any(f => f.FromComponent == component.Component.Name)
                || other.Steps.Any(s => names.Any(n => s.Text.Contains(n, StringComparison.OrdinalIgnoreCase)));
            own = takes ? Math.Max(own, Own(other)) : own;
        }

        return own;
    }

    /// <summary>The step is one of cooking.</summary>
    public static bool Cooks(Cards.Step step) => step.Operations.Append(step.Operation).Any(o => HeatWork.Contains(o));

    /// <summary>Lines of a food that answers to a test.</summary>
    public static IEnumerable<WeighedLine> Lines(WeighedComponent component, Func<FoodAmount, bool> test) => component.Lines.Where(l => l.Source.Kind == LineKind.Ingredient && test(l.Food));

    /// <summary>An allergen code the food always carries.</summary>
    public static bool Contains(WeighedLine line, string code) => line.Known?.Contains.Contains(code) == true;

    /// <summary>Lines that answer to a test of the line and its food's row.</summary>
    public static IEnumerable<WeighedLine> LinesThat(WeighedComponent component, Func<WeighedLine, bool> test) => component.Lines.Where(l => l.Source.Kind == LineKind.Ingredient && test(l));

    /// <summary>An ingredient's words.</summary>
    public static bool Says(FoodAmount food, string word) => $"{food.Grade} {food.Food} {food.State} {food.Preparation}".Contains(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Egg of any kind, raw in the shell or out of it.</summary>
    public static bool IsEgg(FoodAmount food) => food.FoodId is "egg" or "egg-yolk" or "egg-white" or "quail-egg" || (food.FoodId is null && (Says(food, "egg yolk") || Says(food, "egg white") || Says(food, "whole egg")));

    /// <summary>Bought or kept frozen, and the line does not say that it was thawed.</summary>
    public static bool IsFrozen(FoodAmount food) => (food.FoodId?.EndsWith("-frozen", StringComparison.Ordinal) == true || Ice.Any(w => Says(food, w))) && !NoIce.Any(w => Says(food, w));

    /// <summary>Vegetable, herb or mushroom that brings spores from the ground.</summary>
    public static bool IsGarden(FoodAmount food) => food.FoodId is { } id && Garden.Contains(id);

    /// <summary>Acid by itself.</summary>
    public static bool IsSour(FoodAmount food) => food.FoodId is { } id && Sour.Contains(id);

    /// <summary>Meat, poultry, fish.</summary>
    public static bool IsFlesh(FoodAmount food) => Flesh.Any(w => Says(food, w)) && !Says(food, "stock") && !Says(food, "fat") && !Says(food, "sauce");

    /// <summary>Oil.</summary>
    public static bool IsOil(FoodAmount food) => food.FoodId?.EndsWith("-oil", StringComparison.Ordinal) == true;

    /// <summary>Grams of the lines that pass.</summary>
    public static double Grams(WeighedComponent component, Func<FoodAmount, bool> test) => Lines(component, test).Sum(l => l.Grams);

    private static double Own(Component c) => c.Steps.Select(s => s.Temperatures.Where(t => t.Bound != Bound.AtMost && t.Of is TemperatureOf.Oven or TemperatureOf.Bath or TemperatureOf.Core or TemperatureOf.Food or TemperatureOf.Pan)
        .Select(t => t.Celsius).DefaultIfEmpty(s.Operations.Append(s.Operation).Any(o => HeatWork.Contains(o)) ? 100 : 0).Max()).DefaultIfEmpty(0).Max();
}
