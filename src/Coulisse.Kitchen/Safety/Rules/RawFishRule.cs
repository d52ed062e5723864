using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Fish that nothing heats: parasites by freezing, the rest by cold only.</summary>
internal static class RawFishRule
{
    // A hyphen before a figure may be read as a dash, so a freezing step's own words count too.
    private static readonly string[] Deep = ["-20", "−20", "–20", "-35", "−35", "–35"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            double hottest = FoodTraits.Hottest(dish, c);
            WeighedLine? fish = FoodTraits.LinesThat(c, l => FoodTraits.Contains(l, "fish") && l.Food.FoodId is not ("salmon-smoked" or "anchovy" or "fish-sauce") && !FoodTraits.Says(l.Food, "smoked") && !FoodTraits.Says(l.Food, "sauce") && !FoodTraits.Says(l.Food, "farmed") && !FoodTraits.Says(l.Food, "cooked")).FirstOrDefault();
            if (fish is not null && hottest < 60 && !Frozen(c.Component, code))
            {
                yield return new Finding(vulnerable ? Severity.Stop : Severity.Warn, "SAF021", c.Component.Name, fish.Source.Span.Line, "Raw fish: the card does not say that it was frozen against parasites.", "no freezing stated", FormattableString.Invariant($"{code.FishCelsius:0} °C for {code.FishHours:0} h in all parts"), "", FormattableString.Invariant($"Freeze at {code.FishCelsius:0} °C or colder for {code.FishHours:0} h, counted from when the middle is there, and write it as a step; or buy it so, or farmed on safe feed, and write that on the line. Freezing kills no bacteria: never raw for guests at risk."), code.Parasites);
            }
        }
    }

    private static bool Frozen(Component c, PracticeCode code) => c.Steps.Any(s =>
        (s.Temperatures.Any(t => t.Of == TemperatureOf.Freezer && t.Celsius <= code.FishCelsius) || (s.Operations.Append(s.Operation).Contains("freeze") && Deep.Any(d => s.Text.Contains(d, StringComparison.Ordinal))))
        && (s.Times.Where(t => t.Bound != Bound.AtMost && t.Kind != TimeKind.Limit).Max(t => t.MinutesMin) >= code.FishHours * 60 || s.Storage.Any(p => p.Days * 24 >= code.FishHours)));
}
