using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Held hot below the hot limit, reheated below the reheating limit, or kept chilled above the cold limit.</summary>
internal static class HoldingRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            foreach (Step s in c.Component.Steps)
            {
                bool hold = s.Operations.Append(s.Operation).Any(o => o is "hold_hot" or "bain_marie_hold");
                bool reheat = s.Operations.Append(s.Operation).Any(o => o == "reheat");
                StepTemperature? at = s.Temperatures.Where(t => t.Celsius > 20 && t.Of is TemperatureOf.Food or TemperatureOf.Core or TemperatureOf.Bath).MaxBy(t => t.Celsius);
                double? minutes = s.Times.Max(t => t.MinutesMax ?? t.MinutesMin);
                if (hold && at is not null && at.Celsius < code.Hot && minutes is null or > 120)
                {
                    yield return new Finding(minutes is > 240 or null ? Severity.Stop : Severity.Warn, "SAF010", c.Component.Name, s.Span.Line, "Held warm, not hot: bacteria grow.", FormattableString.Invariant($"{at.Celsius:0.#} °C"), FormattableString.Invariant($"{code.Hot:0} °C or more, or 2 h in all"), FormattableString.Invariant($"{code.Hot - at.Celsius:0.#} °C too cool"), FormattableString.Invariant($"Hold at {code.Hot:0} °C or more, or count it as time out: use within 2 h, throw away after 4 h."), code.Holding);
                }

                if (reheat && at is not null && at.Celsius < code.Reheat)
                {
                    yield return new Finding(Severity.Stop, "SAF013", c.Component.Name, s.Span.Line, "Reheated to less than the code asks.", FormattableString.Invariant($"{at.Celsius:0.#} °C"), FormattableString.Invariant($"{code.Reheat:0} °C"), FormattableString.Invariant($"{code.Reheat - at.Celsius:0.#} °C too cool"), FormattableString.Invariant($"Reheat the middle to {code.Reheat:0} °C or more within 2 h."), code.Code == "us" ? "FDA Food Code 3-403.11" : code.Holding);
                }
            }

            foreach (Keeping k in c.Component.Keeps.Where(k => !k.Quality && k.Celsius > code.Cold && k.Celsius <= 15 && (k.Hours is null or > 4)))
            {
                yield return new Finding(Severity.Stop, "SAF011", c.Component.Name, k.Span.Line, "Kept chilled, but warmer than the code allows.", FormattableString.Invariant($"{k.Celsius:0.#} °C"), FormattableString.Invariant($"{code.Cold:0} °C or less"), FormattableString.Invariant($"{k.Celsius - code.Cold:0.#} °C too warm"), FormattableString.Invariant($"Keep it at {code.Cold:0} °C or less."), code.Holding);
            }
        }
    }
}
