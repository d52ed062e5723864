using System.Text;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Writing;

/// <summary>Prints a dish as a tidy card. Reading that card again gives the same dish: the same components, lines, steps and statements; only the places in the text differ.</summary>
public static class CardWriter
{
    /// <summary>The card text.</summary>
    /// <param name="dish">Any dish.</param>
    public static string Write(Dish dish)
    {
        StringBuilder b = new();
        b.Append("# ").Append(dish.Title).Append('\n');
        int first = dish.Components.IsEmpty ? int.MaxValue : dish.Components.Min(c => First(c));
        // A remark over a list without a name would head it when read again: it goes to the others, at the end.
        bool bare = !dish.Components.IsEmpty && dish.Components[0].Name.Length == 0;
        Note? head = bare ? dish.Notes.LastOrDefault(n => n.Span.Line < first) is { } over && (Heads(over.Text, dish.Language) || dish.Variants.Any(v => v.Span.Line == over.Span.Line)) ? over : null : null;
        foreach (Note n in dish.Notes.Where(n => n != head && (n.Span.Line < first || Yields(n, dish))))
        {
            b.Append('\n').Append(n.Text).Append('\n');
        }

        foreach (Component c in dish.Components)
        {
            One(c, dish, b);
        }

        Note[] last = [.. dish.Notes.Where(n => n == head || n.Span.Line >= first && !Yields(n, dish))];
        if (last.Length > 0)
        {
            b.Append("\n## Notes\n");
            foreach (Note n in last)
            {
                b.Append('\n').Append(n.Text).Append('\n');
            }
        }

        return b.ToString();
    }

    private static void One(Component c, Dish dish, StringBuilder b)
    {
        if (c.Name.Length > 0)
        {
            b.Append("\n## ").Append(c.Name).Append('\n');
        }

        foreach (Note n in c.Notes)
        {
            b.Append('\n').Append(n.Text).Append('\n');
        }

        b.Append('\n');
        Lines(c.Ingredients, b);
        foreach (Variant v in dish.Variants.Where(v => v.Component == c.Name && ReferenceEquals(c, dish.Components.Last(k => k.Name == c.Name))))
        {
            b.Append('\n').Append(v.Name.StartsWith("The same for", StringComparison.OrdinalIgnoreCase) ? "" : "The same for ").Append(v.Name).Append("\n\n");
            Lines(v.Ingredients, b);
        }

        string? under = null;
        for (int i = 0; i < c.Steps.Length; i++)
        {
            if (c.Steps[i].Under is { } day && day != under)
            {
                b.Append("\n### ").Append(day).Append("\n\n");
                under = day;
            }

            b.Append(i == 0 ? "\n" : "").Append((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)).Append(". ").Append(c.Steps[i].Text).Append('\n');
        }
    }

    /// <summary>A line as it is printed: what only a footnote said stands in it from here on.</summary>
    public static string Line(IngredientLine line) => line.Text + string.Concat(line.Foods.Select(f => f.Alternative is { Length: > 0 } other && !line.Text.Contains(other[(other.TrimEnd().LastIndexOf(' ') + 1)..].Trim(), StringComparison.OrdinalIgnoreCase) ? $" (or {other})" : ""));

    private static void Lines(IEnumerable<IngredientLine> lines, StringBuilder b)
    {
        string? group = null;
        foreach (IngredientLine l in lines)
        {
            if (l.Kind == LineKind.Heading)
            {
                group = l.Text.TrimmedEnd(": ");
            }
            else if (l.Group is { } g && g != group)
            {
                b.Append('\n').Append(g).Append(":\n\n");
                group = g;
            }

            b.Append("- ").Append(Line(l)).Append('\n');
        }
    }

    private static bool Heads(string text, string lang) => Layout.Looks.Heading(text.TrimEnd(':')) && !Layout.Looks.Statement(text, lang) && !Layout.Furniture.Is(text) && !Layout.Greetings.Opens(text);

    private static int First(Component c) =>
        Math.Min(c.Span.Line > 0 ? c.Span.Line : int.MaxValue, Math.Min(c.Ingredients.IsEmpty ? int.MaxValue : c.Ingredients[0].Span.Line, c.Steps.IsEmpty ? int.MaxValue : c.Steps[0].Span.Line));

    /// <summary>What tells how many the dish feeds stands over its parts, wherever it stood: under "Notes" it would be a remark.</summary>
    private static bool Yields(Note n, Dish dish) => dish.Yields.Any(y => y.Text.Length > 0 && n.Text.Contains(y.Text, StringComparison.Ordinal));
}
