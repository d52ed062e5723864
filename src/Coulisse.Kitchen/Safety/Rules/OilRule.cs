using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Garlic, herbs, mushrooms or vegetables under oil: no air, no acid, spores from the ground.</summary>
internal static class OilRule
{
    private static readonly string[] Warm = ["room temperature", "cupboard", "pantry", "on the shelf"];
    private const double Hours = 96;   // 4 days, the long end of 2 to 4

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            WeighedLine? spores = FoodTraits.Lines(c, FoodTraits.IsGarden).FirstOrDefault();
            if (spores is null || c.Grams <= 0 || FoodTraits.Grams(c, FoodTraits.IsOil) < 0.4 * c.Grams || FoodTraits.Grams(c, FoodTraits.IsSour) > 0.1 * c.Grams)
            {
                continue;
            }

            // "Keeps for weeks at room temperature" may be kept as a sentence without figures.
            foreach (Note n in c.Component.Notes.Concat(dish.Dish.Unread).Concat(dish.Dish.Notes).Where(n => n.Text.Contains("keep", StringComparison.OrdinalIgnoreCase) && Warm.Any(w => n.Text.Contains(w, StringComparison.OrdinalIgnoreCase))))
            {
                yield return Found(c, code, spores.Food.Food, n.Span.Line, n.Text);
            }

            foreach (Keeping k in c.Component.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is not < 0))
            {
                bool warm = k.Where is "room" or "airtight" or "dry" || k.Celsius > code.Cold;
                if (warm || k.Hours > Hours || k.Hours is null)
                {
                    yield return Found(c, code, spores.Food.Food, k.Span.Line, k.Text);
                }
            }
        }
    }

    private static Finding Found(WeighedComponent c, PracticeCode code, string food, int line, string says) => new(
        Severity.Stop, "SAF024", c.Component.Name, line, $"{food} under oil may carry Clostridium botulinum; nothing but cold and few days holds it.", says, FormattableString.Invariant($"{code.Cold:0} °C or less, 4 days"), "",
        FormattableString.Invariant($"Keep at {code.Cold:0} °C or less and use within 4 days, or freeze. Room temperature needs a tested recipe with acid."), "US extension services (Oklahoma, Penn State): 2 to 4 days chilled");
}
