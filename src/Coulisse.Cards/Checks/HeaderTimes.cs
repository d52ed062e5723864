using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>The time a card's head promises against the times its steps state. Said only when the steps of one part alone take longer: parts may be made beside each other, and hands are not timed.</summary>
internal static class HeaderTimes
{
    private const double Slack = 1.1;
    private static readonly string[] Whole = ["total time", "total", "in all", "ready in", "takes", "temps total", "durée totale", "gesamtzeit", "tiempo total", "tempo totale", "合計"];
    private static readonly string[] Parts = ["prep", "preparation", "cook", "cooking", "préparation", "cuisson", "zubereitung", "kochzeit", "preparación", "cocción", "preparazione", "cottura"];

    public static IEnumerable<Remark> Of(Dish dish)
    {
        int first = int.MaxValue;
        foreach (Component c in dish.Components)
        {
            foreach (IngredientLine l in c.Ingredients)
            {
                first = Math.Min(first, l.Span.Line);
            }

            foreach (Step s in c.Steps)
            {
                first = Math.Min(first, s.Span.Line);
            }
        }

        Note[] head = [.. dish.Notes.Where(n => n.Span.Line < first && n.Text.Length < 200)];
        if (Promised(head, dish.Language) is not ({ } minutes, { } note))
        {
            yield break;
        }

        double longest = dish.Components.Select(Stated).DefaultIfEmpty(0).Max();
        if (longest > minutes * Slack)
        {
            yield return new Remark(note.Span.Line, "time mismatch", System.FormattableString.Invariant($"“{note.Text}” promises {minutes:0.#} min; the times of the steps alone are {longest:0.#} min."));
        }
    }

    /// <summary>A total where one is told, else preparing and cooking together; nothing when only one of them is told.</summary>
    private static (double? Minutes, Note? Note) Promised(Note[] head, string lang)
    {
        foreach (Note n in head)
        {
            if (Behind(n.Text, Whole, lang) is { } total)
            {
                return (total, n);
            }

            // "4 personas · 50 minutos"
            string[] pieces = n.Text.Split(['·', '|'], StringSplitOptions.TrimEntries);
            if (pieces.Length > 1 && YieldWords.In(pieces[0], n.Span, lang) is not null && Clock.At(pieces[^1], 0, lang) is { } bare && bare.End >= pieces[^1].TrimEnd('.').Length)
            {
                return (bare.Max, n);
            }
        }

        double sum = 0;
        int told = 0;
        foreach (Note n in head)
        {
            foreach (string piece in n.Text.Split(['·', '|', ',', ';'], StringSplitOptions.TrimEntries))
            {
                if (Behind(piece, Parts, lang) is { } part)
                {
                    sum += part;
                    told++;
                }
            }
        }

        return told > 1 ? (sum, head[0]) : (null, null);
    }

    private static double? Behind(string s, string[] words, string lang)
    {
        foreach (string w in words)
        {
            int at = Places.FindWord(s, w);
            if (at is < 0 or > 3)
            {
                continue;
            }

            for (int i = at + w.Length; i < s.Length && i < at + w.Length + 12; i++)
            {
                if (char.IsAsciiDigit(s[i]))
                {
                    return Clock.At(s, i, lang)?.Max;
                }
            }
        }

        return null;
    }

    private static double Stated(Component c) => c.Steps.Where(s => !s.Meanwhile).SelectMany(s => s.Times).Where(t => t.Kind != TimeKind.Limit && t.Bound != Bound.AtMost).Sum(t => (t.MinutesMin ?? 0) * t.Repeats);
}
