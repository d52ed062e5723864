using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Meat or fish held warm below 54.4 °C: growth need not stop.</summary>
internal static class LowTemperatureRule
{
    private const double Sure = 54.4;
    private const double Minutes = 240;

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => FoodTraits.Lines(c, FoodTraits.IsFlesh).Any()))
        {
            foreach (Step s in c.Component.Steps)
            {
                StepTemperature? warm = s.Temperatures.Where(t => t.Of is TemperatureOf.Bath or TemperatureOf.Oven && t.Celsius > 20).MaxBy(t => t.Celsius);
                double? minutes = s.Times.Where(t => t.Kind is not (TimeKind.Limit or TimeKind.Chill)).Max(t => t.MinutesMax ?? t.MinutesMin);
                if (warm is null || warm.Celsius >= 57)
                {
                    continue;
                }

                if (warm.Celsius < Sure && (minutes is null || minutes > Minutes))
                {
                    yield return new Finding(Severity.Stop, "SAF012", c.Component.Name, s.Span.Line, FormattableString.Invariant($"At {warm.Celsius:0.#} °C bacteria may grow for as long as it lies there, and Salmonella is not shown to die."), minutes is { } m ? FormattableString.Invariant($"{m / 60:0.#} h") : "no time stated", "4 h in all below 54.4 °C", minutes is { } over ? FormattableString.Invariant($"{(over - Minutes) / 60:0.#} h too long") : "", "Set 57 °C or more, or come up, finish and serve within 4 h.", "Baldwin's guide (4 h below 54.4 °C); NSW Food Authority 2012 (bath above 55 °C, at most 6 h below 54.5 °C)");
                }
                else if (warm.Celsius >= Sure && (minutes is null || minutes > 360))
                {
                    yield return new Finding(Severity.Warn, "SAF012", c.Component.Name, s.Span.Line, FormattableString.Invariant($"{warm.Celsius:0.#} °C lies in the range where the published reduction is least certain."), minutes is { } m ? FormattableString.Invariant($"{m / 60:0.#} h") : "no time stated", "6 h between 55 and 60 °C", "", "Prefer 57 °C and up, with the time counted from when the core is there.", "McMinn and others 2018 (abstract) on FSIS Appendix A at 54.4 °C; Victoria's sous vide supplement (6 h)");
                }
                else if (warm.Celsius >= Sure)
                {
                    yield return new Finding(Severity.Note, "SAF012", c.Component.Name, s.Span.Line, FormattableString.Invariant($"{warm.Celsius:0.#} °C is where the published reduction is least certain: leave it in longer than the table says."), minutes is { } t ? FormattableString.Invariant($"{t:0.#} min") : "", "57 °C and up", "", "Prefer 57 °C and up, with the time counted from when the core is there.", "McMinn and others 2018 (abstract) on FSIS Appendix A at 54.4 °C");
                }
            }
        }
    }
}
