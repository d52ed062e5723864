using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Sealed without air and kept chilled for longer than the code allows without a further hurdle.</summary>
internal static class SealedRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => c.Component.Steps.Any(IsSealed)))
        {
            // 90 °C for 10 min in the middle deals with the spores that grow in the cold.
            bool spores = c.Component.Steps.SelectMany(s => s.Temperatures).Any(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost && t.Celsius >= 90 && t.HoldMinutes >= 10);
            Barrier barrier = Barrier.Of(dish, c);
            foreach (Keeping k in c.Component.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is not < 0))
            {
                bool cold = k.Warmest is <= 3;
                double days = code.Code is "uk" or "eu" && cold ? double.PositiveInfinity : Hurdle(code, barrier) ?? code.SealedDays;
                if (!spores && k.Hours / 24 > days)
                {
                    yield return new Finding(Severity.Stop, "SAF025", c.Component.Name, k.Span.Line, "Sealed without air, spores that grow in the cold have more time than the code allows.", FormattableString.Invariant($"{k.Hours / 24:0.#} days; {barrier.Words}"), FormattableString.Invariant($"{days:0} days"), FormattableString.Invariant($"{(k.Hours / 24) - days:0.#} days too long"), FormattableString.Invariant($"Keep it {days:0} days or less, freeze it, or heat the middle to 90 °C for 10 min.{(code.Code is "uk" or "eu" ? " Or show pH 5.0 or less." : "")}"), code.Packing);
                }
            }
        }
    }

    // A hurdle that the code counts: pH 5.0, water activity 0.97, salt 3.5 % in the water (UK guidance); pH 4.6 or 0.91 for thirty days (FDA Food Code 3-502.12(B)). Neither FSANZ nor Victoria's supplement counts one.
    private static double? Hurdle(PracticeCode code, Barrier b) => code.Code switch
    {
        "uk" or "eu" when b.Ph <= 5.0 || b.Activity <= 0.97 || b.SaltInWater >= 3.5 => double.PositiveInfinity,
        "us" when b.Ph <= 4.6 || b.Activity <= 0.91 => 30,
        _ => null,
    };

    internal static bool IsSealed(Step s) => s.Operations.Append(s.Operation).Any(o => o is "vacuum_seal" or "vacuum_fill") || s.Text.Contains("vacuum pouch", StringComparison.OrdinalIgnoreCase) || s.Text.Contains("vacuum bag", StringComparison.OrdinalIgnoreCase);
}
