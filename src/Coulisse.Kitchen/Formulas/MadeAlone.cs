using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Formulas;

/// <summary>A part that is a dish of its own ("one ramekin"), with all that it takes from parts that its own batch does not hold.</summary>
public static class MadeAlone
{
    /// <summary>The component that an occasion's dish asks for by name; null when it asks for the dish.</summary>
    public static Component? In(OccasionDish dish)
    {
        ArgumentNullException.ThrowIfNull(dish);
        return dish.Unit.Length > 3 ? dish.Dish.Components.FirstOrDefault(c => c.Name.Length > 0 && c.Name.Contains(dish.Unit, StringComparison.OrdinalIgnoreCase)) : null;
    }

    /// <summary>The weighed dish of a batch, completed with the parts of the whole card that its lines take from, each at the weight taken.</summary>
    /// <param name="only">What the batch holds.</param>
    /// <param name="card">The whole card.</param>
    /// <remarks>Without it the foods of such a part would be missing from allergens and ingredients. A line whose part is nowhere keeps its own weight and stays unknown.</remarks>
    public static WeighedDish Complete(WeighedDish only, Dish card)
    {
        ArgumentNullException.ThrowIfNull(only);
        ArgumentNullException.ThrowIfNull(card);
        WeighedDish? whole = null;
        ImmutableArray<WeighedComponent>.Builder added = ImmutableArray.CreateBuilder<WeighedComponent>();
        HashSet<string> held = [.. only.Components.Select(c => c.Component.Name)];
        Queue<(WeighedLine Line, double Share)> open = new(only.Components.SelectMany(c => c.Lines).Select(l => (l, 1.0)));
        while (open.TryDequeue(out (WeighedLine Line, double Share) next))
        {
            if (next.Line.Food.FromComponent is not { } from || Takes.Find(card, from) is not { } part || !held.Add(part.Name))
            {
                continue;
            }

            whole ??= Weighing.Weigh(card, only.Measures);
            WeighedComponent source = whole.Components.First(c => c.Component.Name == part.Name);
            double grams = next.Line.Food.Grams ?? next.Line.Grams;
            double share = source.Grams > 0 && grams > 0 ? grams * next.Share / source.Grams : 1;
            added.Add(source with { Lines = [.. source.Lines.Select(l => l with { Grams = l.Grams * share, Low = l.Low * share, High = l.High * share })] });
            foreach (WeighedLine inner in source.Lines)
            {
                open.Enqueue((inner, share));
            }
        }

        return added.Count == 0 ? only : only with { Components = only.Components.AddRange(added), Dish = only.Dish with { Components = only.Dish.Components.AddRange(added.Select(a => a.Component)) } };
    }
}
