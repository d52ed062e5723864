using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Uncooked fish sealed without air and kept chilled where the code lets it be frozen only.</summary>
internal static class SealedFishRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
        => from c in dish.Components
           where code.Code == "us" && c.Component.Steps.Any(SealedRule.IsSealed) && FoodTraits.LinesThat(c, l => FoodTraits.Contains(l, "fish") && !FoodTraits.Says(l.Food, "sauce")).Any() && FoodTraits.Hottest(dish, c) < 60
           from k in c.Component.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is not < 0).Take(1)
           select new Finding(Severity.Stop, "SAF037", c.Component.Name, k.Span.Line, "Fish sealed without air is to stay frozen: in the cold C. botulinum type E grows unseen.", k.Text, "frozen before, while and after it is sealed", "", "Freeze it in its pouch and open the pouch before it thaws, or wrap it so that air reaches it.", "FDA Food Code 3-502.12(C)");
}
