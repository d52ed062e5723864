using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>A component keeps no longer than the oldest part in it, unless it is heated through again.</summary>
internal static class OldestPartRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        Dictionary<string, double> lives = dish.Components.Where(c => Life(c.Component) is not null).GroupBy(c => c.Component.Name, StringComparer.Ordinal).ToDictionary(g => g.Key, g => Life(g.First().Component)!.Value, StringComparer.Ordinal);
        foreach (WeighedComponent c in dish.Components.Where(c => FoodTraits.Hottest(dish, c) < 75))
        {
            foreach (WeighedLine line in FoodTraits.Lines(c, f => f.FromComponent is not null))
            {
                if (lives.TryGetValue(line.Food.FromComponent!, out double part) && Life(c.Component) is { } own && own > part)
                {
                    yield return new Finding(Severity.Warn, "SAF026", c.Component.Name, line.Source.Span.Line, $"It is to keep longer than {line.Food.FromComponent} in it.", FormattableString.Invariant($"{own / 24:0.#} days"), FormattableString.Invariant($"{part / 24:0.#} days"), FormattableString.Invariant($"{(own - part) / 24:0.#} days too long"), FormattableString.Invariant($"Date it by its oldest part: {part / 24:0.#} days, counted from when that part was made."), "common practice, no source");
                }
            }
        }
    }

    private static double? Life(Component c) => c.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is not < 0).Min(k => k.Hours);
}
