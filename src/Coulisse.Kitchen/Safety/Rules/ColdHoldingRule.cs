using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Kept chilled, but warmer than the cold limit.</summary>
internal static class ColdHoldingRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
        => from c in dish.Components
           from k in c.Component.Keeps
           where !k.Quality && k.Warmest > code.Cold && k.Celsius <= 15 && (k.Hours is null or > 4)
           select new Finding(Severity.Stop, "SAF011", c.Component.Name, k.Span.Line, "Kept chilled, but warmer than the code allows.", FormattableString.Invariant($"{k.Warmest:0.#} °C"), FormattableString.Invariant($"{code.Cold:0} °C or less"), FormattableString.Invariant($"{k.Warmest - code.Cold:0.#} °C too warm"), FormattableString.Invariant($"Keep it at {code.Cold:0} °C or less."), code.Holding);
}
