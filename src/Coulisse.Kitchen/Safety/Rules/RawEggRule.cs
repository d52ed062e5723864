using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Egg that is neither pasteurised nor heated enough; egg in a bath is <see cref="EggInBathRule"/>'s.</summary>
/// <remarks>The list of the Food Code for pooled egg is looked up, never interpolated. A boiled syrup run into egg is no heat of the egg: what it reaches depends on weights and speed.</remarks>
internal static class RawEggRule
{
    private const double Syrup = 105;   // °C: above it a figure is of sugar, not of egg
    private static readonly (double Celsius, double Minutes)[] Pooled = [(70, 0), (68, 17 / 60.0), (66, 1), (63, 3)];   // FDA Food Code 3-401.11(A)(2)

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => !EggInBathRule.Applies(c)))
        {
            WeighedLine[] raw = Raw(c);
            if (raw.Length == 0)
            {
                continue;
            }

            (double hottest, double? held) = Reached(dish, c);
            double? needed = hottest < 63 ? null : Pooled.First(p => hottest >= p.Celsius).Minutes;
            if (needed is { } minutes && (minutes == 0 || held >= minutes - 1e-9))
            {
                continue;
            }

            string value = hottest > 0 ? FormattableString.Invariant($"{hottest:0.#} °C at most{(held is { } h ? FormattableString.Invariant($", {h:0.#} min") : "")}") : "not heated";
            yield return new Finding(
                vulnerable ? Severity.Stop : Severity.Warn, "SAF020", c.Component.Name, raw[0].Source.Span.Line, needed is null ? "Raw egg: nothing heats it enough and the line does not say pasteurised." : "Raw egg: the card does not say that it is held at its temperature for long enough.",
                value, needed is { } n ? FormattableString.Invariant($"{hottest:0.#} °C for {(n >= 1 ? FormattableString.Invariant($"{n:0.#} min") : FormattableString.Invariant($"{n * 60:0} s"))}, or pasteurised") : "63 °C for 3 min or pasteurised", needed is { } m ? FormattableString.Invariant($"{m - (held ?? 0):0.#} min short") : "",
                "Use pasteurised egg and write it on the line, or heat the mixture, stirred, to 68 °C for 3.5 min, 70 °C for 2 min or 72 °C for 1 min. Raw it is never for guests at risk.", "FDA Food Code 3-401.11(A); advice on liquid egg tested on custard creams, Jpn. J. Food Microbiol. 12 (1995) 181");
        }
    }

    /// <summary>Lines of egg that do not say pasteurised or cooked.</summary>
    internal static WeighedLine[] Raw(WeighedComponent c) => [.. FoodTraits.Lines(c, f => FoodTraits.IsEgg(f) && !FoodTraits.Says(f, "pasteuri") && !FoodTraits.Says(f, "boiled") && !FoodTraits.Says(f, "cooked"))];

    private static (double Celsius, double? Minutes) Reached(WeighedDish dish, WeighedComponent c)
    {
        (double Celsius, double? Held) best = (0, null);
        foreach (Step s in c.Component.Steps)
        {
            foreach (StepTemperature t in s.Temperatures.Where(t => t.Bound != Bound.AtMost && t.Of is TemperatureOf.Food or TemperatureOf.Core or TemperatureOf.Pan && t.Celsius is > 40 and <= Syrup))
            {
                best = t.Celsius > best.Celsius ? (t.Celsius, t.HoldMinutes ?? s.Times.Where(x => x.Kind is TimeKind.Cook or TimeKind.Hands && x.Bound != Bound.AtMost).Max(x => x.MinutesMin)) : best;
            }
        }

        // Baked, boiled or fried, here or where another component takes it: cooked through.
        bool syrup = best.Celsius == 0 && c.Component.Steps.Any(s => s.Operations.Append(s.Operation).Contains("cook_syrup") || s.Temperatures.Any(t => t.Celsius > Syrup && t.Of is TemperatureOf.Food or TemperatureOf.Pan));
        bool cooked = c.Component.Steps.Any(s => s.Temperatures.Any(t => t.Of == TemperatureOf.Oven) || FoodTraits.Cooks(s) && s.Operation is not "cook_syrup" && !s.Temperatures.Any(t => t.Of is TemperatureOf.Food or TemperatureOf.Core or TemperatureOf.Pan && t.Bound != Bound.AtMost));
        double hottest = FoodTraits.Hottest(dish, c);
        return cooked ? (100, null) : best.Celsius > 0 || syrup ? best : (hottest, null);
    }
}
