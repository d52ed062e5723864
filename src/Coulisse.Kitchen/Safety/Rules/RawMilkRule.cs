using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Unpasteurised milk or cream that nothing heats.</summary>
internal static class RawMilkRule
{
    private const double Heated = 72;

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => FoodTraits.Hottest(dish, c) < Heated))
        {
            WeighedLine? milk = FoodTraits.Lines(c, f => (FoodTraits.Says(f, "unpasteuri") || FoodTraits.Says(f, "raw milk")) && !FoodTraits.IsEgg(f)).FirstOrDefault();
            if (milk is not null)
            {
                yield return new Finding(vulnerable ? Severity.Stop : Severity.Warn, "SAF034", c.Component.Name, milk.Source.Span.Line, "Unpasteurised milk that nothing heats may carry Listeria, E. coli or Campylobacter.", "not heated", FormattableString.Invariant($"{Heated:0} °C for 15 s, or pasteurised"), "", "Use pasteurised milk, or heat it through to 72 °C for 15 s. Never raw for guests at risk.", "Regulation (EC) 853/2004 annex III and the pasteurisation of 21 CFR 1240.61 (from memory)");
            }
        }
    }
}
