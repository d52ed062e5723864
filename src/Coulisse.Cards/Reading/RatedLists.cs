using System.Collections.Immutable;

namespace Coulisse.Cards.Reading;

/// <summary>"Dry cure (per kg of duck)" over "18 g coarse salt": the rate stands once, over the whole list. Read flat, ten kilograms would be cured with the salt of one. A list that holds the kilogram itself ("1 kg duck, 18 g salt") is a batch and stays as written.</summary>
internal static class RatedLists
{
    private const double MostUnnamed = 300;
    private const string InAll = "in all";

    /// <summary>The dish with the weights of such lists as shares, and what stands apart below them in a part of its own.</summary>
    public static Dish Of(Dish dish)
    {
        if (!dish.Components.Any(c => Head(c.Name, dish.Language) is not null || c.Ingredients.Any(l => l.Group is { } g && Head(g, dish.Language) is not null)))
        {
            return dish;
        }

        List<Component> parts = [];
        foreach (Component c in dish.Components)
        {
            if (Head(c.Name, dish.Language) is not { } head)
            {
                parts.Add(c with { Ingredients = Grouped(c.Ingredients, dish.Language) });
                continue;
            }

            int end = End(c.Ingredients, 0, c.Span.Line);
            Component rated = c with { Ingredients = Shared([.. c.Ingredients.Take(end)], head) };
            if (end == c.Ingredients.Length)
            {
                parts.Add(rated);
                continue;
            }

            parts.Add(rated with { Steps = [], Notes = [], Keeps = [], Makes = [], Vessels = [] });
            Component rest = c with { Name = "", Code = null, Ingredients = [.. c.Ingredients.Skip(end)] };
            int above = parts.Count - 2;
            if (above >= 0 && parts[above] is { Name: "", Steps.IsEmpty: true } open)
            {
                parts[above] = open with { Ingredients = [.. open.Ingredients, .. rest.Ingredients], Steps = rest.Steps, Notes = [.. open.Notes, .. rest.Notes], Keeps = [.. open.Keeps, .. rest.Keeps], Makes = [.. open.Makes, .. rest.Makes], Vessels = [.. open.Vessels, .. rest.Vessels] };
            }
            else
            {
                parts.Add(rest);
            }
        }

        return dish with { Components = [.. parts] };
    }

    /// <summary>The rate of a line that stands under such a head; null for any other line.</summary>
    public static KiloRates.Rate? Line(IngredientLine line, Component c, string lang) =>
        line.Foods is [{ Percent: { } share, Amount: null }] && Head(line.Group ?? c.Name, lang) is { } head && Amounts.At(line.Text, 0, lang) is { Unit.Kind: "mass" } m ? new KiloRates.Rate(share * 10, 0, m.End, line.Text.Length, line.Text.Length, head.Base) : null;

    private static (string Base, double Grams, string? Of)? Head(string name, string lang) => name.Length is > 5 and < 80 ? KiloRates.Heading(name, lang) : null;

    /// <summary>Lists under a label inside a part, each for itself.</summary>
    private static ImmutableArray<IngredientLine> Grouped(ImmutableArray<IngredientLine> lines, string lang)
    {
        List<IngredientLine> all = [];
        for (int i = 0; i < lines.Length;)
        {
            int next = i + 1;
            while (next < lines.Length && lines[next].Group == lines[i].Group)
            {
                next++;
            }

            if (lines[i].Group is { } group && Head(group, lang) is { } head)
            {
                int end = Math.Min(End(lines, i, lines[i].Span.Line), next);
                all.AddRange(Shared([.. lines.Skip(i).Take(end - i)], head));
                all.AddRange(lines.Skip(end).Take(next - end));
            }
            else
            {
                all.AddRange(lines.Skip(i).Take(next - i));
            }

            i = next;
        }

        return [.. all];
    }

    /// <summary>Where the list ends: at a gap between its lines, at the end of the line it was told in, or before what weighs more than a kilogram.</summary>
    private static int End(ImmutableArray<IngredientLine> lines, int from, int head)
    {
        bool oneLine = from < lines.Length && lines[from].Span.Line == head && lines.Length > from + 1 && lines[from + 1].Span.Line == head;
        int i = from;
        int at = i < lines.Length ? lines[i].Span.Line : 0;
        while (i < lines.Length && (oneLine ? lines[i].Span.Line == head : lines[i].Span.Line - at <= 1) && !lines[i].Foods.Any(f => f.Grams > 1000))
        {
            at = lines[i++].Span.Line;
        }

        return i;
    }

    private static ImmutableArray<IngredientLine> Shared(ImmutableArray<IngredientLine> lines, (string Base, double Grams, string? Of) head)
    {
        double all = lines.Sum(l => l.Foods.Sum(f => f.Grams ?? 0));
        bool batch = lines.Any(l => l.Foods.Any(f => f.Grams == head.Grams || f is { Amount: 1, Unit: "l" } || f is { Amount: 1000, Unit: "ml" }));
        return batch || head.Of is null && all * 1000 / head.Grams > MostUnnamed ? lines : [.. lines.Select(l => l with { Foods = [.. l.Foods.Select(f => Share(f, head))] })];
    }

    private static FoodAmount Share(FoodAmount f, (string Base, double Grams, string? Of) head)
    {
        if (f.Amount is null || f.Preparation?.EndsWith(InAll, StringComparison.Ordinal) == true)
        {
            return f;
        }

        bool weighed = f is { Grams: { } g, GramsMax: null, Unit: "g" or "mg" or "kg" or "oz" } && g > 0;
        return weighed
            ? f with { Amount = null, AmountMax = null, Unit = null, Grams = null, SecondMeasure = null, Percent = Math.Round(f.Grams!.Value * 100 / head.Grams, 6), PercentOf = head.Of }
            : f with { Use = f.Use is { } use ? $"{use}; to each {head.Base}" : $"to each {head.Base}" };
    }
}
