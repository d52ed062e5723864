using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Fish or bivalves that nothing heats: parasites by freezing, the rest by cold only.</summary>
internal static class RawFishRule
{
    // A hyphen before a figure may be read as a dash, so a freezing step's own words count too.
    private static readonly string[] Deep = ["-20", "−20", "–20", "-35", "−35", "–35"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            double hottest = FoodTraits.Hottest(dish, c);
            WeighedLine? fish = FoodTraits.Lines(c, f => FoodTraits.Contains(f, "fish") && f.FoodId is not ("salmon-smoked" or "anchovy" or "fish-sauce") && !FoodTraits.Says(f, "smoked") && !FoodTraits.Says(f, "sauce") && !FoodTraits.Says(f, "farmed") && !FoodTraits.Says(f, "cooked")).FirstOrDefault();
            if (fish is not null && hottest < 60 && !Frozen(c.Component, code))
            {
                yield return new Finding(vulnerable ? Severity.Stop : Severity.Warn, "SAF021", c.Component.Name, fish.Source.Span.Line, "Raw fish: the card does not say that it was frozen against parasites.", "no freezing stated", FormattableString.Invariant($"{code.FishCelsius:0} °C for {code.FishHours:0} h in all parts"), "", FormattableString.Invariant($"Freeze at {code.FishCelsius:0} °C or colder for {code.FishHours:0} h, counted from when the middle is there, and write it as a step; or buy it so, or farmed on safe feed, and write that on the line. Freezing kills no bacteria."), code.Parasites);
            }

            WeighedLine? shell = FoodTraits.Lines(c, f => FoodTraits.Contains(f, "mollusc") && !FoodTraits.Says(f, "squid") && !FoodTraits.Says(f, "octopus") && !FoodTraits.Says(f, "sauce")).FirstOrDefault()
                ?? FoodTraits.Lines(c, f => FoodTraits.Says(f, "oyster") && !FoodTraits.Says(f, "sauce") && !FoodTraits.Says(f, "mushroom")).FirstOrDefault();
            if (shell is not null && hottest < 90)
            {
                bool raw = hottest < 60;
                yield return new Finding(vulnerable && raw ? Severity.Stop : Severity.Warn, "SAF022", c.Component.Name, shell.Source.Span.Line, raw ? "Raw bivalves: vibrios, norovirus and hepatitis A have no kill step here." : FormattableString.Invariant($"Bivalves heated to {hottest:0.#} °C: viruses may live through it."), raw ? "not heated" : FormattableString.Invariant($"{hottest:0.#} °C"), "90 °C for 90 s in the flesh", "", "From class A waters only, held at 5 °C or less and opened to order; or heat the flesh to 90 °C for 90 s.", "Regulation (EC) 853/2004; EFSA Journal 13(12) 4332 (2015)");
            }
        }
    }

    private static bool Frozen(Component c, PracticeCode code) => c.Steps.Any(s =>
        (s.Temperatures.Any(t => t.Of == TemperatureOf.Freezer && t.Celsius <= code.FishCelsius) || (s.Operations.Append(s.Operation).Contains("freeze") && Deep.Any(d => s.Text.Contains(d, StringComparison.Ordinal))))
        && (s.Times.Where(t => t.Bound != Bound.AtMost && t.Kind != TimeKind.Limit).Max(t => t.MinutesMin) >= code.FishHours * 60 || s.Storage.Any(p => p.Days * 24 >= code.FishHours)));
}
