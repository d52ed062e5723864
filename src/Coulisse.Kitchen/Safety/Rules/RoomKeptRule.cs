using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Kept out of the cold on the strength of acid or dryness that is neither stated nor shown.</summary>
internal static class RoomKeptRule
{
    private static readonly string[] Warm = ["room temperature", "cupboard", "pantry", "on the shelf"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => c.Grams > 0))
        {
            if (AmbientJarRule.Closed(c) || FoodTraits.Grams(c, FoodTraits.IsOil) >= 0.4 * c.Grams)
            {
                continue;   // closed jars and vegetables under oil have rules of their own
            }

            Keeping? warm = c.Component.Keeps.FirstOrDefault(k => !k.Quality && k.Where != "freezer" && (k.Where == "room" || k.Warmest > 15 || Warm.Any(w => k.Text.Contains(w, StringComparison.OrdinalIgnoreCase))) && (k.Hours is null || k.Hours > code.OutHours));
            if (warm is null)
            {
                continue;
            }

            Barrier barrier = Barrier.Of(dish, c);
            if (Perishable.Is(dish, c, barrier))
            {
                yield return new Finding(
                    Perishable.Sour(c) && barrier.Ph is null ? Severity.Warn : Severity.Stop, "SAF036", c.Component.Name, warm.Span.Line, "Kept out of the cold it cannot be shown safe by acid or dryness.", barrier.Words, "pH below 4.2, or water activity below 0.88", "",
                    barrier.Ph is null
                        ? FormattableString.Invariant($"Measure the pH of the finished food after a day and write it on the card; below 4.2 it stands. Else keep it at {code.Cold:0} °C or less.")
                        : FormattableString.Invariant($"Keep it at {code.Cold:0} °C or less, or bring it below pH 4.2 by a tested recipe."),
                    "FDA Food Code 1-201.10, table B");
            }
        }
    }
}
