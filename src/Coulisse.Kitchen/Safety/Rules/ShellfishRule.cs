using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Bivalves raw or heated too little for viruses.</summary>
internal static class ShellfishRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            double hottest = FoodTraits.Hottest(dish, c);
            WeighedLine? shell = FoodTraits.LinesThat(c, l => FoodTraits.Contains(l, "mollusc") && !FoodTraits.Says(l.Food, "squid") && !FoodTraits.Says(l.Food, "octopus") && !FoodTraits.Says(l.Food, "sauce")).FirstOrDefault()
                ?? FoodTraits.Lines(c, f => FoodTraits.Says(f, "oyster") && !FoodTraits.Says(f, "sauce") && !FoodTraits.Says(f, "mushroom")).FirstOrDefault();
            if (shell is not null && hottest < 90)
            {
                bool raw = hottest < 60;
                yield return new Finding(vulnerable && raw ? Severity.Stop : Severity.Warn, "SAF022", c.Component.Name, shell.Source.Span.Line, raw ? "Raw bivalves: vibrios, norovirus and hepatitis A have no kill step here." : FormattableString.Invariant($"Bivalves heated to {hottest:0.#} °C: viruses may live through it."), raw ? "not heated" : FormattableString.Invariant($"{hottest:0.#} °C"), "90 °C for 90 s in the flesh", "", "From class A waters only, held at 5 °C or less and opened to order; or heat the flesh to 90 °C for 90 s. Never raw for guests at risk.", "Regulation (EC) 853/2004; EFSA Journal 13(12) 4332 (2015)");
            }
        }
    }
}
