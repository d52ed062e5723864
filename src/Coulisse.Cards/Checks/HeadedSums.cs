using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Checks;

/// <summary>A weight printed in the heading of a list ("## Dough, 650 g", "The base, 1,489.5 g:") against the sum of its lines.</summary>
internal static class HeadedSums
{
    private const double Slack = 0.02;

    public static IEnumerable<Remark> Of(Dish dish)
    {
        foreach (Component c in dish.Components)
        {
            IngredientLine[] lines = [.. c.Ingredients.Where(l => l.Kind == LineKind.Ingredient)];
            if (Told(c.Name, dish.Language) is { } whole && Sum(lines) is { } all && whole > all * (1 + Slack))
            {
                // Less than the lines may be what is left or what is needed of them.
                yield return Said(c.Span.Line, c.Name, all, whole);
            }

            foreach (IGrouping<string?, IngredientLine> group in lines.GroupBy(l => l.Group))
            {
                if (group.Key is { } name && name != c.Name && Told(name, dish.Language) is { } printed && Sum([.. group]) is { } sum && Math.Abs(printed - sum) > printed * Slack)
                {
                    yield return Said(group.First().Span.Line, name, sum, printed);
                }
            }
        }
    }

    private static Remark Said(int line, string name, double sum, double printed) =>
        new(line, "sum mismatch", System.FormattableString.Invariant($"“{name}”: its lines add up to {sum:0.##} g, the heading prints {printed:0.##} g."));

    private static double? Sum(IngredientLine[] lines)
    {
        double sum = 0;
        foreach (FoodAmount f in lines.SelectMany(l => l.Foods))
        {
            if (f.Grams is not { } g || f.GramsMax is not null)
            {
                return null;
            }

            sum += g;
        }

        return lines.Length > 1 ? sum : null;
    }

    /// <summary>A weight that ends a name behind a comma, a dash or in brackets.</summary>
    private static double? Told(string name, string lang)
    {
        int at = name.LastIndexOfAny([',', '(', '–', '—', ':']);
        // "The base, 1,489.5 g": a comma inside the figure parts no name
        at = at > 0 && at + 1 < name.Length && char.IsAsciiDigit(name[at + 1]) && char.IsAsciiDigit(name[at - 1]) ? name.LastIndexOfAny([',', '(', '–', '—', ':'], at - 1) : at;
        // Dashes of a heading are folded to this one before its name is kept.
        at = Math.Max(at, name.LastIndexOf(" - ", StringComparison.Ordinal) + 1);
        int from = at < 1 ? -1 : Words.Places.Skip(name, at + 1);
        return from > 0 && from < name.Length && char.IsAsciiDigit(name[from]) && Amounts.At(name, from, lang) is { Unit: { Kind: "mass", Base: { } b }, Number.Max: null } m && name[m.End..].Trim().TrimEnd(')', ':', '.').Length == 0 ? m.Number.Min * b : null;
    }
}
