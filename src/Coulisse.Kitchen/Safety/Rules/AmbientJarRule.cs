using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Moist food kept at room temperature in a closed jar or bottle without acid or sugar enough: sealing hot is not canning.</summary>
internal static class AmbientJarRule
{
    private static readonly string[] Vessels = ["jar", "bottle", "preserving", "sterilis", "hot-fill", "hot fill"];
    private static readonly string[] Warm = ["room temperature", "cupboard", "pantry", "on the shelf"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => c.Grams > 0 && Closed(c)))
        {
            Barrier barrier = Barrier.Of(dish, c);
            Mixture m = MethodFold.Run(c).Stages is [.., var last] ? last.After : Mixing.Of(c);
            bool oil = FoodTraits.Grams(c, FoodTraits.IsOil) >= 0.4 * c.Grams;   // vegetables under oil have their own rule
            bool sweet = m.Sugars is { } sugars && m.Water is { } water && sugars > 0.65 * (sugars + water);   // two thirds of sugar in sugar and water: what of it is not known is not counted
            bool sealedFlat = c.Component.Steps.Any(SealedRule.IsSealed);
            if (oil || barrier.Holds(packed: !sealedFlat) || (sweet && !sealedFlat))
            {
                continue;
            }

            bool ask = Perishable.Sour(c) && barrier.Ph is null;
            foreach ((string says, int line) in c.Component.Keeps.Where(k => !k.Quality && k.Where is "room" or "dry" && k.Hours is null or > 24).Select(k => (k.Text, k.Span.Line))
                .Concat(c.Component.Notes.Where(n => n.Text.Contains("keep", StringComparison.OrdinalIgnoreCase) && Warm.Any(w => n.Text.Contains(w, StringComparison.OrdinalIgnoreCase))).Select(n => (n.Text, n.Span.Line))).Take(1))
            {
                yield return new Finding(
                    ask ? Severity.Warn : Severity.Stop, "SAF031", c.Component.Name, line,
                    ask ? "A closed jar that lives by its acid cannot be shown safe at room temperature: its pH is not stated." : "A closed jar or pouch of moist food without acid or sugar enough is not safe at room temperature, however hot it was filled.",
                    FormattableString.Invariant($"{says.TrimEnd('.')}; {barrier.Words}"), "pH 4.6 or less, or water activity 0.92 or less", barrier.Ph is { } ph ? FormattableString.Invariant($"pH {ph - 4.6:0.0#} too high") : "",
                    ask ? FormattableString.Invariant($"Measure the pH of solids and liquor together after a day and write it on the card: 4.6 or less. Else keep it at {code.Cold:0} °C or less and use it within days.")
                        : FormattableString.Invariant($"Keep it at {code.Cold:0} °C or less and use it within days, freeze it, or take a tested recipe with acid and check the pH after a day."),
                    "FDA 21 CFR 113 and 114 (pH 4.6); FDA Food Code 1-201.10, table A");
            }
        }
    }

    /// <summary>It goes into a vessel that is closed, or is sealed without air.</summary>
    internal static bool Closed(WeighedComponent c) => c.Component.Steps.Any(s => SealedRule.IsSealed(s) || Vessels.Any(w => s.Text.Contains(w, StringComparison.OrdinalIgnoreCase)));
}
