using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Heat;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Cooked rice kept too long: the toxin of Bacillus cereus stands any reheating.</summary>
internal static class RiceRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        CoolingRule cooling = CoolingRule.Of(code.Code);
        foreach (WeighedComponent c in dish.Components.Where(c => FoodTraits.Lines(c, f => f.FoodId is "rice-long" or "rice-short").Any() && FoodTraits.Hottest(dish, c) >= 60))
        {
            foreach (Keeping k in c.Component.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is not < 0 && (k.Hours > 24 || (k.Hours > 4 && (k.Where == "room" || (k.Warmest > code.Cold && k.Celsius < code.Hot))))))
            {
                yield return new Finding(Severity.Stop, "SAF023", c.Component.Name, k.Span.Line, "Cooked rice kept so long or so warm may hold a toxin that reheating does not destroy.", k.Text, FormattableString.Invariant($"24 h at {code.Cold:0} °C or less, or {code.Hot:0} °C and above"), "", FormattableString.Invariant($"Cool it fast ({Cooled.Layers(cooling)}), keep it at most 24 h at {code.Cold:0} °C or less, reheat once."), "Advice of the UK Food Standards Agency (from memory); growth: Juneja and others 2018");
            }
        }
    }
}
