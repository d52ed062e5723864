using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Held hot below the hot limit, or without a figure.</summary>
internal static class HotHoldingRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            foreach (Step s in c.Component.Steps.Where(s => s.Operations.Append(s.Operation).Any(o => o is "hold_hot" or "bain_marie_hold")))
            {
                StepTemperature? at = s.Temperatures.Where(t => t.Celsius > 20 && t.Of is TemperatureOf.Food or TemperatureOf.Core or TemperatureOf.Bath).MaxBy(t => t.Celsius);
                double? minutes = s.Times.Max(t => t.MinutesMax ?? t.MinutesMin);
                if (at is not null && at.Celsius < code.Hot && minutes is null or > 120)
                {
                    yield return new Finding(minutes is > 240 or null ? Severity.Stop : Severity.Warn, "SAF010", c.Component.Name, s.Span.Line, "Held warm, not hot: bacteria grow.", FormattableString.Invariant($"{at.Celsius:0.#} °C"), FormattableString.Invariant($"{code.Hot:0} °C or more, or 2 h in all"), FormattableString.Invariant($"{code.Hot - at.Celsius:0.#} °C too cool"), FormattableString.Invariant($"Hold at {code.Hot:0} °C or more, or count it as time out: use within 2 h, throw away after 4 h."), code.Holding);
                }
            }
        }
    }
}
