using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Foods that are left off the plates of pregnant, very young, old or ill guests however well they are kept: Listeria in what is eaten cold.</summary>
internal static class GuestsAtRiskRule
{
    private static readonly string[] Foods = ["smoked salmon", "smoked trout", "gravlax", "brie", "camembert", "gorgonzola", "roquefort", "blue cheese", "stilton", "pâté", "pate", "prosciutto", "salami", "bresaola", "jamón", "parma ham", "fish roe", "caviar", "trout roe", "salmon roe"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
        => from c in dish.Components
           where vulnerable && FoodTraits.Hottest(dish, c) < 70
           let line = FoodTraits.Lines(c, f => Foods.Any(w => FoodTraits.Says(f, w))).FirstOrDefault()
           where line is not null
           select new Finding(Severity.Stop, "SAF043", c.Component.Name, line.Source.Span.Line, $"{line.Food.Food}, eaten cold, is not for guests at risk: it may carry Listeria.", "not heated", "70 °C in the middle, or left out", "", "Serve them this part without it, or heat it through to 70 °C.", "Advice of food agencies to pregnant and immune-compromised people (from memory)");
}
