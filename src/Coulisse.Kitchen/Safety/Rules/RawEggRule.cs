using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Egg that is neither pasteurised nor heated.</summary>
internal static class RawEggRule
{
    private const double Heated = 63;   // °C, eggs to order: FDA Food Code 3-401.11(A)(1)

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            WeighedLine[] raw = [.. FoodTraits.Lines(c, f => FoodTraits.IsEgg(f) && !FoodTraits.Says(f, "pasteuri") && !FoodTraits.Says(f, "boiled") && !FoodTraits.Says(f, "cooked"))];
            double hottest = FoodTraits.Hottest(dish, c);
            if (raw.Length > 0 && hottest < Heated)
            {
                yield return new Finding(vulnerable ? Severity.Stop : Severity.Warn, "SAF020", c.Component.Name, raw[0].Source.Span.Line, "Raw egg: nothing heats it enough and the line does not say pasteurised.", hottest > 0 ? FormattableString.Invariant($"{hottest:0.#} °C at most") : "not heated", "63 °C or pasteurised", "", "Use pasteurised egg and write it on the line, or heat the mixture, stirred, to 68 °C for 3.5 min, 70 °C for 2 min or 72 °C for 1 min.", "FDA Food Code 3-401.11(A); advice on liquid egg tested on custard creams, Jpn. J. Food Microbiol. 12 (1995) 181");
            }
        }
    }
}
