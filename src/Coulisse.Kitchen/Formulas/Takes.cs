using Coulisse.Cards;

namespace Coulisse.Kitchen.Formulas;

/// <summary>Which component takes from which: "140 g hot C1 base" is a part of C1.</summary>
public static class Takes
{
    /// <summary>The component a line's words mean: its code, its whole name, then a name that holds the words; null when none or several fit.</summary>
    public static Component? Find(Dish dish, string words)
    {
        string w = words.Trim();
        if (w.Length == 0)
        {
            return null;
        }

        Component[] exact = [.. dish.Components.Where(c => string.Equals(c.Code, w, StringComparison.OrdinalIgnoreCase) || string.Equals(c.Name, w, StringComparison.OrdinalIgnoreCase))];
        if (exact.Length > 0)
        {
            return exact[0];
        }

        Component[] near = [.. dish.Components.Where(c => c.Name.Length > 0 && c.Name.Contains(w, StringComparison.OrdinalIgnoreCase))];
        return near.Length == 1 ? near[0] : null;
    }

    /// <summary>The sub-list of a component that a line takes from, when its words name exactly one ("the hot base": "The base, 1,489.5 g"); null for the whole.</summary>
    public static string? Group(Component taken, string words)
    {
        string[] said = Words(words);
        string[] groups = [.. taken.Ingredients.Select(i => i.Group).OfType<string>().Distinct().Where(g => Words(g).Any(w => Array.IndexOf(said, w) >= 0))];
        return groups.Length == 1 ? groups[0] : null;
    }

    /// <summary>The first circle in a dish (a takes from b, b from a); null when there is none.</summary>
    public static Problem? Circle(Dish dish)
    {
        foreach (Component start in dish.Components)
        {
            if (Walk(dish, start, start, []) is { } line)
            {
                return new Problem("WGH007", line, $"“{start.Name}” takes from a component that takes from “{start.Name}” itself.", "Take one of the two from somewhere else; nothing can be worked out for a circle.");
            }
        }

        return null;
    }

    private static string[] Words(string text) => [.. text.ToLowerInvariant().Split([' ', ',', '.', ':', '(', ')'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 3 && w.All(char.IsLetter))];

    private static int? Walk(Dish dish, Component start, Component at, HashSet<Component> seen)
    {
        foreach (IngredientLine line in at.Ingredients)
        {
            foreach (string from in line.Foods.Select(f => f.FromComponent).OfType<string>())
            {
                // A component that names itself in its own list ("the rest of the base") is no circle.
                if (Find(dish, from) is not { } next || ReferenceEquals(next, at))
                {
                    continue;
                }

                if (ReferenceEquals(next, start))
                {
                    return line.Span.Line;
                }

                if (seen.Add(next) && Walk(dish, start, next, seen) is { } deep)
                {
                    return deep;
                }
            }
        }

        return null;
    }
}
