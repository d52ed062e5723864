using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Ties words to what they name: foods to components, steps to lines.</summary>
internal static class Linking
{
    private const int MostPairs = 100_000;
    private static readonly string[] Everything = ["everything", "toss everything", "mix all", "the base"];

    /// <summary>Marks the foods of a component that are made by another ("140 g hot C1 base", "the 273 g of dough").</summary>
    public static Component Components(Component c, ComponentIndex index)
    {
        ImmutableArray<IngredientLine>.Builder? changed = null;
        for (int i = 0; i < c.Ingredients.Length; i++)
        {
            IngredientLine line = c.Ingredients[i];
            foreach (FoodAmount f in line.Foods)
            {
                if (f.FromComponent is null && index.From(f.Food, line.Text, c) is { } from)
                {
                    // A part of another component is no food of the table.
                    changed ??= c.Ingredients.ToBuilder();
                    changed[i] = changed[i] with { Foods = changed[i].Foods.Replace(f, f with { FromComponent = from, FoodId = null, FoodConfidence = 0 }) };
                }
            }
        }

        return changed is null ? c : c with { Ingredients = changed.ToImmutable() };
    }

    /// <summary>Names the component each plate part comes from.</summary>
    public static ImmutableArray<PlatePart> Plate(IReadOnlyList<PlatePart> plate, ImmutableArray<Component> all) =>
        // A text with thousands of plate parts and components is no plate: the parts stay as written, so that time stays linear.
        (long)plate.Count * all.Length > MostPairs ? [.. plate] : [.. plate.Select(p => p with { Component = ComponentFor(p.Text, all) })];

    /// <summary>Fills in what each step takes from the list of its component.</summary>
    public static Component Uses(Component c)
    {
        if (c.Steps.IsEmpty)
        {
            return c;
        }

        ImmutableArray<Step>.Builder? changed = null;
        List<StepUse> taken = [];
        string[] heads = [.. c.Ingredients.SelectMany(l => l.Foods).Select(f => Head(f.Food))];
        for (int i = 0; i < c.Steps.Length; i++)
        {
            taken.Clear();
            Taken(c.Steps[i], c, heads, taken);
            if (taken.Count > 0 || c.Steps[i].Uses.Length > 0)
            {
                changed ??= c.Steps.ToBuilder();
                changed[i] = changed[i] with { Uses = [.. taken] };
            }
        }

        return changed is null ? c : c with { Steps = changed.DrainToImmutable() };
    }

    private static string? ComponentFor(string part, ImmutableArray<Component> all)
    {
        (string? name, int best) = (null, 0);
        foreach (Component c in all)
        {
            if (c.IsAssembly)
            {
                continue;
            }

            int score = ComponentIndex.Words(c.Name).Count(w => part.Contains(w, StringComparison.OrdinalIgnoreCase));
            if (score > best)
            {
                (name, best) = (c.Name, score);
            }
        }

        return name;
    }

    private static void Taken(Step step, Component c, string[] heads, List<StepUse> into)
    {
        bool everything = heads.Length > 0 && Places.HasAny(step.Text, Everything);
        int next = 0;
        foreach (IngredientLine line in c.Ingredients)
        {
            foreach (FoodAmount f in line.Foods)
            {
                string head = heads[next++];
                if (everything || (head.Length > 2 && step.Text.Contains(head, StringComparison.OrdinalIgnoreCase)))
                {
                    into.Add(new StepUse(f.FromComponent is null ? line.Span.Line : 0, f.Food, null, f.FromComponent));
                }
            }
        }
    }

    /// <summary>The last word of a name, which a step says of it.</summary>
    private static string Head(string food)
    {
        string name = food.TrimEnd(' ');
        return name[(name.LastIndexOf(' ') + 1)..].TrimEnd('s');
    }
}
