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
        HashSet<Note> heads = Heading(dish, first);
        bool bare = !dish.Components.IsEmpty && dish.Components[0].Name.Length == 0;
        bool Above(Note n) => !heads.Contains(n) && (n.Span.Line < first ? !bare || !Label(n) || Yields(n, dish) : Yields(n, dish) && !(bare && Heads(n.Text, dish.Language)));
        foreach (Note n in dish.Notes.Where(Above).OrderBy(n => Label(n) && !Yields(n, dish)))
        {
            b.Append('\n').Append(n.Text).Append('\n');
        }

        foreach (Component c in dish.Components)
        {
            One(c, dish, b);
        }

        Note[] last = [.. dish.Notes.Where(n => !Above(n))];
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

        foreach (Note n in c.Notes.Where(n => !Label(n)))
        {
            b.Append('\n').Append(n.Text).Append('\n');
        }

        IngredientLine[] worked = c.Steps.IsEmpty ? Worked(c, dish) : [];
        IngredientLine[] listed = worked.Length > 0 ? [.. c.Ingredients.Except(worked)] : [.. c.Ingredients];
        b.Append(c.Name.Length > 0 && c.Steps.IsEmpty && worked.Length == 0 && listed.Any(l => Works(l, dish.Language)) ? "\n### Ingredients\n\n" : "\n");
        Lines(listed, b);
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

            Numbered(i, c.Steps[i].Text, b);
        }

        for (int i = 0; i < worked.Length; i++)
        {
            Numbered(i, Line(worked[i]), b);
        }

        foreach (Note n in c.Notes.Where(Label))
        {
            b.Append('\n').Append(n.Text).Append('\n');
        }
    }

    private static void Numbered(int i, string text, StringBuilder b) => b.Append(i == 0 ? "\n" : "").Append((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)).Append(". ").Append(text).Append('\n');

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
                b.Append(b.Length > 1 && b[^1] == '\n' && b[^2] == '\n' ? "" : "\n").Append(g).Append(":\n\n");
                group = g;
            }

            // "- 22 -" is a heading between strokes, "* 22 -" an item.
            string line = Line(l);
            b.Append(line.EndsWith('-') ? "* " : "- ").Append(line).Append('\n');
        }
    }

    /// <summary>The lines that would be read as steps whatever stands over them, for no step stands under their list: sentences of work, and work that tells a time. They are written as the steps they are.</summary>
    private static IngredientLine[] Worked(Component c, Dish dish)
    {
        HashSet<IngredientLine> worked = [.. c.Ingredients.Skip(ReferenceEquals(c, dish.Components[0]) ? 1 : 0).Where(l => Works(l, dish.Language) && (c.Name.Length == 0 || l.Text[^1] is '.' or '。') || Timed(l, dish.Language))];
        // The name of a group stands over a line that stays.
        HashSet<string?> groups = [.. c.Ingredients.Where(l => !worked.Contains(l)).Select(l => l.Group)];
        return [.. c.Ingredients.Where(l => worked.Contains(l) && (l.Group is null || groups.Contains(l.Group)))];
    }

    /// <summary>True for a line that is told like work: behind another item it is a step, unless steps with numbers or the word over the list say otherwise.</summary>
    private static bool Works(IngredientLine line, string lang) => line.Kind != LineKind.Heading && !Layout.Looks.Amounted(line.Text, lang) && Layout.Looks.Work(line.Text, lang);

    private static bool Timed(IngredientLine line, string lang) => line.Kind != LineKind.Heading && Reading.Amounts.At(line.Text, 0, lang) is null && Layout.Looks.Work(line.Text, lang) && Layout.Looks.Timed(line.Text, lang);

    /// <summary>"For the top:" with no line under it: over a list it would be the name of a group, so it stands where no list follows.</summary>
    private static bool Label(Note n) => n.Text.Length is > 1 and < 80 && n.Text[^1] == ':' && n.Text[0] != ':';

    /// <summary>The remarks that would head a list without a name when read again: they go to the others, at the end. With the last of them gone the one before it stands over the list.</summary>
    private static HashSet<Note> Heading(Dish dish, int first)
    {
        HashSet<Note> heads = new(ReferenceEqualityComparer.Instance);
        if (dish.Components.IsEmpty || dish.Components[0].Name.Length > 0)
        {
            return heads;
        }

        for (int i = dish.Notes.Length - 1; i >= 0; i--)
        {
            Note over = dish.Notes[i];
            if (over.Span.Line >= first || Label(over))
            {
                continue;
            }

            if (!Heads(over.Text, dish.Language) && !(heads.Count == 0 && dish.Variants.Any(v => v.Span.Line == over.Span.Line)))
            {
                break;
            }

            heads.Add(over);
        }

        return heads;
    }

    private static bool Heads(string text, string lang) => Layout.Looks.Heading(text.TrimEnd(':')) && !Layout.Looks.Statement(text, lang) && !Layout.Furniture.Is(text) && !Layout.Greetings.Opens(text);

    private static int First(Component c) =>
        Math.Min(c.Span.Line > 0 ? c.Span.Line : int.MaxValue, Math.Min(c.Ingredients.IsEmpty ? int.MaxValue : c.Ingredients[0].Span.Line, c.Steps.IsEmpty ? int.MaxValue : c.Steps[0].Span.Line));

    /// <summary>What tells how many the dish feeds stands over its parts, wherever it stood: under "Notes" it would be a remark.</summary>
    private static bool Yields(Note n, Dish dish) => dish.Yields.Any(y => y.Text.Length > 0 && n.Text.Contains(y.Text, StringComparison.Ordinal));
}
