using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Sprouted seeds that nothing heats: the warm damp that grows them grows bacteria.</summary>
internal static class SproutRule
{
    private const double Heated = 70;

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => FoodTraits.Hottest(dish, c) < Heated))
        {
            WeighedLine? sprouts = FoodTraits.Lines(c, f => f.FoodId is "alfalfa-sprouts" or "mung-sprouts" || (f.FoodId is null && FoodTraits.Says(f, "sprout") && !FoodTraits.Says(f, "brussels"))).FirstOrDefault();
            if (sprouts is not null)
            {
                yield return new Finding(vulnerable ? Severity.Stop : Severity.Warn, "SAF030", c.Component.Name, sprouts.Source.Span.Line, "Raw sprouted seeds have carried Salmonella and E. coli; washing does not help.", "not heated", FormattableString.Invariant($"{Heated:0} °C, or left out"), "", "Blanch them through, or take cress or young leaves. Never raw for guests at risk.", "Regulation (EU) 208/2013 on sprouts and advice of food agencies (from memory)");
            }
        }
    }
}
