using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Ready to eat and kept chilled for more days than Listeria is given without a barrier.</summary>
internal static class ChilledLifeRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => c.Grams > 0 && !c.Component.Steps.Any(SealedRule.IsSealed)))
        {
            // Sealed packs have their own rule; a dough is baked after its keep.
            Keeping? cold = c.Component.Keeps.Where(k => !k.Quality && !k.SameDay && k.Where is not ("freezer" or "room" or "dry" or "airtight") && k.Celsius is null or (>= 0 and <= 15)).MaxBy(k => k.Hours ?? 0);
            if (cold?.Hours is not { } hours || hours / 24 <= code.LifeDays || c.Component.Steps.IsEmpty || Perishable.Grain(c) >= 0.3)
            {
                continue;
            }

            Barrier barrier = Barrier.Of(dish, c);
            if (Perishable.Is(dish, c, barrier) && !barrier.HoldsListeria && !OilRule.Applies(c))
            {
                // Sour by weight: most likely right, so it is asked, not doubted.
                bool ask = Perishable.Sour(c) && barrier.Ph is null;
                yield return new Finding(
                    ask && !vulnerable ? Severity.Note : Severity.Warn, "SAF039", c.Component.Name, cold.Span.Line, ask ? "So many days in the cold rest on its acid, and the card does not state its pH." : "Listeria grows in the cold: so many days are not shown safe without a barrier.", FormattableString.Invariant($"{hours / 24:0.#} days; {barrier.Words}"),
                    FormattableString.Invariant($"{code.LifeDays:0} days, or pH 4.4 or less, or water activity 0.92 or less, or both pH 5.0 and 0.94"), FormattableString.Invariant($"{(hours / 24) - code.LifeDays:0.#} days too long"),
                    ask
                        ? FormattableString.Invariant($"Measure its pH and write it on the card: 4.4 or less. Else keep it {code.LifeDays:0} days.")
                        : FormattableString.Invariant($"Keep it {code.LifeDays:0} days, the day it is made being the first, or freeze it in portions; or measure its pH and write it on the card."), code.Chilled);
            }
        }
    }
}
