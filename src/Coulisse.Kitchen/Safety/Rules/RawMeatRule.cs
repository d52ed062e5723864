using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Meat that is served raw.</summary>
internal static class RawMeatRule
{
    private static readonly string[] Meats = ["beef", "veal", "lamb", "venison", "pork", "chicken", "duck breast", "turkey"];
    private static readonly string[] Ready = ["cooked", "cured", "ham", "bresaola", "smoked", "dried", "confit", "salami", "gelatine", "dripping", "jus", "bone", "stock", "broth", "fat", "sauce", "roast", "corned", "pâté", "pate"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => FoodTraits.Hottest(dish, c) < 50))
        {
            // A card without a method says nothing about heat.
            WeighedLine? meat = c.Component.Steps.IsEmpty ? null : FoodTraits.Lines(c, f => FoodTraits.IsFlesh(f) && Meats.Any(m => FoodTraits.Says(f, m)) && !Ready.Any(r => FoodTraits.Says(f, r))).FirstOrDefault();
            if (meat is not null)
            {
                bool bird = new[] { "chicken", "turkey", "duck", "pork" }.Any(m => FoodTraits.Says(meat.Food, m));
                yield return new Finding(vulnerable || bird ? Severity.Stop : Severity.Warn, "SAF035", c.Component.Name, meat.Source.Span.Line, "Raw meat: nothing heats it.", "not heated", "seared on all faces or cooked through", "", "Take whole muscle, sear and trim all faces, cut it cold to order; hold at 5 °C or less. Pork and poultry are cooked through. Not for guests at risk.", "FDA Food Code 3-401.11(D) and 3-603.11 (consumer advisory)");
            }
        }
    }
}
