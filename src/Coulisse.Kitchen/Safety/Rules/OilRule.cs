using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Garlic, herbs, mushrooms or vegetables under oil: no air, no acid, spores from the ground.</summary>
internal static class OilRule
{
    private static readonly string[] Warm = ["room temperature", "cupboard", "pantry", "on the shelf"];
    private static readonly string[] Grown = ["garlic", "truffle", "mushroom", "pepper, roast", "roasted pepper", "herb", "chilli", "artichoke", "aubergine"];
    private const double Hours = 96;   // 4 days, the long end of 2 to 4

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            if (!Applies(c) || Barrier.Of(dish, c).Ph <= 4.6)
            {
                continue;
            }

            // Sour by weight: cold is enough; out of the cold its pH must be known.
            WeighedLine spores = FoodTraits.Lines(c, IsGrown).First();
            bool sour = Perishable.Sour(c);

            // "Keeps for weeks at room temperature" may be kept as a sentence without figures.
            foreach (Note n in c.Component.Notes.Concat(dish.Dish.Unread).Concat(dish.Dish.Notes).Where(n => n.Text.Contains("keep", StringComparison.OrdinalIgnoreCase) && Warm.Any(w => n.Text.Contains(w, StringComparison.OrdinalIgnoreCase))))
            {
                yield return Found(c, code, spores.Food.Food, n.Span.Line, n.Text, sour);
            }

            foreach (Keeping k in c.Component.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is not < 0))
            {
                bool warm = k.Where is "room" or "airtight" or "dry" || k.Warmest > code.Cold;
                if (warm || (!sour && (k.Hours > Hours || k.Hours is null)))
                {
                    yield return Found(c, code, spores.Food.Food, k.Span.Line, k.Text, sour);
                }
            }
        }
    }

    /// <summary>Garden produce under two fifths of oil or more.</summary>
    internal static bool Applies(WeighedComponent c) => c.Grams > 0 && FoodTraits.Lines(c, IsGrown).Any() && FoodTraits.Grams(c, FoodTraits.IsOil) >= 0.4 * c.Grams;

    private static bool IsGrown(FoodAmount f) => FoodTraits.IsGarden(f) || (f.FoodId is null && Grown.Any(w => FoodTraits.Says(f, w)) && !FoodTraits.Says(f, "dried") && !FoodTraits.Says(f, "powder"));

    private static Finding Found(WeighedComponent c, PracticeCode code, string food, int line, string says, bool sour) => new(
        sour ? Severity.Warn : Severity.Stop, "SAF024", c.Component.Name, line, sour ? $"{food} under oil with acid cannot be shown safe out of the cold: its pH is not stated." : $"{food} under oil may carry Clostridium botulinum; nothing but cold and few days holds it.", says, FormattableString.Invariant($"{code.Cold:0} °C or less, 4 days"), "",
        FormattableString.Invariant($"Keep at {code.Cold:0} °C or less and use within 4 days, or freeze. Room temperature needs a tested recipe with acid, its pH measured and written on the card (4.6 or less)."), "US extension services (Oklahoma, Penn State): 2 to 4 days chilled");
}
