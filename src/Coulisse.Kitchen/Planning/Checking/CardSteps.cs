using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>A step of a card with the tasks of the plan that name its line.</summary>
/// <remarks>A card used for two dishes of the occasion is one card here: what is made for one serves the other.</remarks>
internal sealed record CardStep(Dish Card, Component Component, Step Step, PlannedTask[] Tasks)
{
    /// <summary>Tasks that carry the step; the short moments inside them only when there is nothing else.</summary>
    public PlannedTask[] Whole => Tasks.Any(t => t.Kind != TaskKind.Moment) ? [.. Tasks.Where(t => t.Kind != TaskKind.Moment)] : Tasks;

    public string Name => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{(Component.Name.Length > 0 ? Component.Name : Card.Title)}, step {Step.Anchor.Order}");

    /// <summary>Steps by component, in the order of the card.</summary>
    public static IEnumerable<CardStep[]> ByComponent(Occasion occasion, Plan plan)
    {
        foreach (IGrouping<string, OccasionDish> card in occasion.Dishes.GroupBy(d => d.CardPath))
        {
            Dish dish = card.First().Dish;
            HashSet<string> names = new(card.Select(d => d.Name).Append(dish.Title), StringComparer.OrdinalIgnoreCase);
            PlannedTask[] own = [.. plan.Tasks.Where(t => t.Dish is { } d ? names.Contains(d) : Find(dish, t.Component) is not null)];
            foreach (Component c in dish.Components)
            {
                yield return [.. c.Steps.OrderBy(s => s.Span.Line).Select(s => new CardStep(dish, c, s, [.. own.Where(t => t.Line == s.Span.Line)]))];
            }
        }
    }

    /// <summary>Component of a card by its name or its code.</summary>
    public static Component? Find(Dish dish, string? name) => name is null ? null
        : dish.Components.FirstOrDefault(c => Same(c.Name, name) || (c.Code is { } code && Same(code, name)));

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
