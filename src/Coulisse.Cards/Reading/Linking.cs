using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Ties words to what they name: foods to components, steps to lines.</summary>
internal static class Linking
{
    /// <summary>Marks the foods of a component that are made by another ("140 g hot C1 base", "the 273 g of dough").</summary>
    public static Component Components(Component c, IReadOnlyList<Component> all) => c with
    {
        Ingredients = [.. c.Ingredients.Select(line => line with { Foods = [.. line.Foods.Select(f => f.FromComponent is null && From(f.Food, line.Text, c, all) is { } from ? f with { FromComponent = from } : f)] })],
    };

    /// <summary>Fills in what each step takes from the list of its component.</summary>
    public static Component Uses(Component c) => c with
    {
        Steps = [.. c.Steps.Select(step => step with { Uses = [.. Taken(step, c)] })],
    };

    /// <summary>The component a plate part comes from.</summary>
    public static string? ComponentFor(string part, ImmutableArray<Component> all)
    {
        (string? name, int best) = (null, 0);
        foreach (Component c in all)
        {
            if (c.IsAssembly)
            {
                continue;
            }

            int score = Key(c.Name).Count(w => part.Contains(w, StringComparison.OrdinalIgnoreCase));
            if (score > best)
            {
                (name, best) = (c.Name, score);
            }
        }

        return name;
    }

    private static string? From(string food, string line, Component own, IReadOnlyList<Component> all)
    {
        foreach (Component c in all)
        {
            if (ReferenceEquals(c, own) || c.Name == own.Name || c.Name.Length == 0)
            {
                continue;
            }

            if (c.Code is { } code && Places.FindWord(food, code) >= 0 || food.Equals(c.Name, StringComparison.OrdinalIgnoreCase))
            {
                return c.Name;
            }

            bool the = line.StartsWith("the ", StringComparison.OrdinalIgnoreCase) || line.Contains(" of the ", StringComparison.OrdinalIgnoreCase);
            if (the && Key(c.Name).Any(w => Places.FindWord(food, w) >= 0))
            {
                return c.Name;
            }
        }

        return null;
    }

    private static IEnumerable<StepUse> Taken(Step step, Component c)
    {
        bool everything = Places.HasAny(step.Text, "everything", "toss everything", "mix all", "the base");
        foreach (IngredientLine line in c.Ingredients)
        {
            foreach (FoodAmount f in line.Foods)
            {
                string[] words = f.Food.Split(' ', StringSplitOptions.RemoveEmptyEntries);
                string head = words.Length > 0 ? words[^1].TrimEnd('s') : "";
                if (everything || (head.Length > 2 && step.Text.Contains(head, StringComparison.OrdinalIgnoreCase)))
                {
                    yield return new StepUse(f.FromComponent is null ? line.Span.Line : 0, f.Food, null, f.FromComponent);
                }
            }
        }
    }

    private static IEnumerable<string> Key(string name) => name.Split([' ', '-', ','], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 3 && !Places.HasAny(w, "with", "layer", "fluid", "green", "filling"));
}
