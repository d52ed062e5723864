using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Moist food kept at room temperature in a closed jar or bottle without acid or sugar enough: sealing hot is not canning.</summary>
internal static class AmbientJarRule
{
    private static readonly string[] Closed = ["jar", "bottle", "preserving", "sterilis", "hot-fill", "hot fill"];
    private static readonly string[] Warm = ["room temperature", "cupboard", "pantry", "on the shelf"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => c.Grams > 0 && c.Component.Steps.Any(s => Closed.Any(w => s.Text.Contains(w, StringComparison.OrdinalIgnoreCase)))))
        {
            // Barriers: two thirds of sugar in sugar and water (water activity near 0.85), or a tenth of acid by itself.
            Mixture m = MethodFold.Run(c).Stages is [.., var last] ? last.After : Mixing.Of(c);
            bool sweet = m.Sugars is { } sugars && m.Water is { } water && sugars > 0.65 * (sugars + water);
            bool sour = FoodTraits.Grams(c, FoodTraits.IsSour) > 0.1 * c.Grams;
            bool dry = m.Unknown.IsEmpty && m.Water < 0.15 * m.Grams;
            bool oil = FoodTraits.Grams(c, FoodTraits.IsOil) >= 0.4 * c.Grams;   // vegetables under oil have their own rule
            if (sweet || sour || dry || oil)
            {
                continue;
            }

            foreach ((string says, int line) in c.Component.Keeps.Where(k => !k.Quality && k.Where is "room" or "dry" && k.Hours is null or > 24).Select(k => (k.Text, k.Span.Line))
                .Concat(c.Component.Notes.Where(n => n.Text.Contains("keep", StringComparison.OrdinalIgnoreCase) && Warm.Any(w => n.Text.Contains(w, StringComparison.OrdinalIgnoreCase))).Select(n => (n.Text, n.Span.Line))).Take(1))
            {
                yield return new Finding(Severity.Stop, "SAF031", c.Component.Name, line, "A closed jar of moist food without acid or sugar enough is not safe at room temperature, however hot it was filled.", says, "pH 4.6 or less, or water activity 0.85 or less", "", FormattableString.Invariant($"Keep it at {code.Cold:0} °C or less and use it within days, freeze it, or take a tested recipe with acid and check the pH after a day."), "FDA 21 CFR 113 and 114 (limits pH 4.6 and water activity 0.85)");
            }
        }
    }
}
