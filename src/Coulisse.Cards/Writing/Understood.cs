using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Writing;

/// <summary>What was understood of a card, part by part, with what was not as it is written: every word of the card stands somewhere in it.</summary>
public static class Understood
{
    /// <summary>The whole as text.</summary>
    /// <param name="card">The card as typed.</param>
    /// <param name="dish">What was read of it.</param>
    /// <param name="why">Token by token what became of each line, and what the figures of each step were taken from.</param>
    public static string Write(CardText card, Dish dish, bool why = false)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(dish);
        StringBuilder b = Body(dish, why);
        ImmutableArray<Note> rest = Beside(card.Text, b.ToString());
        if (rest.Length > 0)
        {
            b.Append("\nAlso on the card\n");
            Notes(b, rest);
        }

        return b.ToString();
    }

    /// <summary>Lines of the card that hold a word found in no part of the dish: headings of its form, web addresses, dress.</summary>
    /// <param name="card">The card as typed.</param>
    /// <param name="dish">What was read of it.</param>
    public static ImmutableArray<Note> Rest(CardText card, Dish dish)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(dish);
        return Beside(card.Text, Body(dish, false).ToString());
    }

    private static StringBuilder Body(Dish dish, bool why)
    {
        StringBuilder b = new();
        b.Append(CultureInfo.InvariantCulture, $"{dish.Title} ({dish.Language}; {dish.Measures.Because})\n");
        Yields(b, dish.Yields);
        Notes(b, dish.Notes);
        foreach (PlatePart p in dish.Plate)
        {
            b.Append("        on one plate: ").Append(p.Text).Append('\n');
        }

        foreach (Component c in dish.Components)
        {
            b.Append('\n').Append(c.Code is { } code && !c.Name.StartsWith(code, StringComparison.Ordinal) ? code + " " : "").Append(c.Name.Length > 0 ? c.Name : "(the dish)").Append('\n');
            Yields(b, c.Makes);
            Lines(b, c.Ingredients, why, dish.Language);
            foreach (Step s in c.Steps)
            {
                b.Append(CultureInfo.InvariantCulture, $"  {s.Span.Line,4}  [{s.Operation}] {string.Join(", ", s.Times.Select(t => t.Words))} {string.Join(", ", s.Temperatures.Select(t => t.Words))} | {s.Text}\n");
                foreach (ReadToken t in why ? CardReader.Why(s, dish.Language) : [])
                {
                    b.Append(CultureInfo.InvariantCulture, $"          “{t.Text}” {t.Role}: {t.Meaning}\n");
                }
            }

            Notes(b, c.Notes);
        }

        foreach (Variant v in dish.Variants)
        {
            b.Append(CultureInfo.InvariantCulture, $"\n{v.Name} (beside {(v.Component.Length > 0 ? v.Component : "the dish")}, never added to it)\n");
            Lines(b, v.Ingredients, why, dish.Language);
        }

        foreach (Remark r in dish.Remarks)
        {
            b.Append(CultureInfo.InvariantCulture, $"\nline {r.Line}: {r.Kind}. {r.What}\n");
        }

        foreach (Doubt d in dish.Doubts)
        {
            b.Append(CultureInfo.InvariantCulture, $"\nline {d.Line}: {d.Question} ({d.Moves})\n");
        }

        return b;
    }

    private static void Yields(StringBuilder b, ImmutableArray<CardYield> yields)
    {
        foreach (CardYield y in yields)
        {
            b.Append(CultureInfo.InvariantCulture, $"        makes {y.Amount}{(y.AmountMax is { } max ? $" to {max.ToString(CultureInfo.InvariantCulture)}" : "")} {y.Unit}: {y.Text}\n");
        }
    }

    private static void Lines(StringBuilder b, ImmutableArray<IngredientLine> lines, bool why, string language)
    {
        foreach (IngredientLine line in lines)
        {
            int from = b.Length;
            foreach (FoodAmount f in line.Foods)
            {
                b.Append(CultureInfo.InvariantCulture, $"  {line.Span.Line,4}  {f.Amount}{(f.AmountMax is { } m ? $" to {m.ToString(CultureInfo.InvariantCulture)}" : "")} {f.Unit} | {f.Food} | {f.Preparation}\n");
            }

            // what the parts leave out stands as it is written
            if (line.Foods.IsEmpty || Lacks(b.ToString(from, b.Length - from), line.Text))
            {
                b.Append(CultureInfo.InvariantCulture, $"{(line.Foods.IsEmpty ? $"  {line.Span.Line,4}" : "      ")}  “{line.Text}”\n");
            }

            foreach (ReadToken t in why ? CardReader.Why(line.Text, language) : [])
            {
                b.Append(CultureInfo.InvariantCulture, $"          “{t.Text}” {t.Role}: {t.Meaning}\n");
            }
        }
    }

    private static void Notes(StringBuilder b, ImmutableArray<Note> notes)
    {
        foreach (Note n in notes)
        {
            b.Append(CultureInfo.InvariantCulture, $"  {n.Span.Line,4}  note: {n.Text}\n");
        }
    }

    private static ImmutableArray<Note> Beside(string card, string body)
    {
        SpanTable<bool> seen = Seen(body);
        ImmutableArray<Note>.Builder rest = ImmutableArray.CreateBuilder<Note>();
        int number = 0;
        int at = 0;
        while (at < card.Length)
        {
            int end = card.AsSpan(at).IndexOfAny('\n', '\r', '\u2028');
            end = end < 0 ? card.Length : at + end;
            number++;
            // folding keeps the words of a link and lets its target go
            string line = card[at..end];
            bool target = line.Contains("](", StringComparison.Ordinal) || line.Contains('<');
            if (Missing(Numberless(Folding.Line(line.TrimStart(' ').StartsWith("o\t", StringComparison.Ordinal) ? line.TrimStart(' ')[2..] : line)), seen) || (target && Missing(line, seen)))
            {
                rest.Add(new Note(line.Trim(), new Span(at, end - at, number)));
            }

            at = end + (end + 1 < card.Length && card[end] == '\r' && card[end + 1] == '\n' ? 2 : 1);
        }

        return rest.ToImmutable();
    }

    // "9." before a step is its place in the list, and no word; nor is the ring of a word processor, a letter o and a tab
    private static string Numberless(string line)
    {
        int i = 0;
        while (i < line.Length && char.IsAsciiDigit(line[i]))
        {
            i++;
        }

        return i > 0 && i < line.Length && line[i] is '.' or ')' ? line[(i + 1)..] : line;
    }

    private static SpanTable<bool> Seen(string text)
    {
        SpanTable<bool> seen = new(anyCase: true, ofText: true);
        foreach (Range line in text.AsSpan().Split('\n'))
        {
            string folded = Folding.Line(text[line]);
            for (int i = 0; Next(folded, ref i, out int start);)
            {
                seen.At(folded.AsSpan(start, i - start)) = true;
            }
        }

        return seen;
    }

    private static bool Missing(string line, SpanTable<bool> seen)
    {
        for (int i = 0; Next(line, ref i, out int start);)
        {
            if (!seen.Contains(line.AsSpan(start, i - start)))
            {
                return true;
            }
        }

        return false;
    }

    // True when a line of a few words lacks one of another
    private static bool Lacks(string said, string line)
    {
        for (int i = 0; Next(line, ref i, out int start);)
        {
            ReadOnlySpan<char> word = line.AsSpan(start, i - start);
            int at = 0;
            while (true)
            {
                int next = said.AsSpan(at).IndexOf(word, StringComparison.OrdinalIgnoreCase);
                if (next < 0)
                {
                    return true;
                }

                at += next;
                if ((at == 0 || !Goes(said[at - 1], word[0])) && (at + word.Length == said.Length || !Goes(said[at + word.Length], word[^1])))
                {
                    break;
                }

                at++;
            }
        }

        return false;
    }

    private static bool Goes(char c, char word) => char.IsLetterOrDigit(c) && char.IsDigit(c) == char.IsDigit(word);

    // The next word: letters, or figures. Moves i behind it.
    private static bool Next(string s, ref int i, out int start)
    {
        while (i < s.Length && !char.IsLetterOrDigit(s[i]))
        {
            i++;
        }

        start = i;
        bool figures = i < s.Length && char.IsDigit(s[i]);
        while (i < s.Length && char.IsLetterOrDigit(s[i]) && char.IsDigit(s[i]) == figures)
        {
            i++;
        }

        return i > start;
    }
}
