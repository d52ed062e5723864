using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Writing;

/// <summary>Writes the answer to a question into the card. It takes the place of the words that were asked about and of nothing else: what stands before and behind them stays as it was typed.</summary>
public static class AnswerOnCard
{
    // A question is about one line or step; one that a copy broke goes on in the lines below.
    private const int MostLines = 12;

    /// <summary>The new text; null when the words are no longer there.</summary>
    /// <param name="text">Card text.</param>
    /// <param name="line">Line on which what was asked about begins, from 1.</param>
    /// <param name="asked">The words asked about (<see cref="Doubt.Asked"/>).</param>
    /// <param name="plain">What takes their place.</param>
    public static string? Write(string text, int line, string asked, string plain)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(plain);
        if (AskedWords.Range(text, line, MostLines) is not var (from, to) || asked.Length == 0 || plain.AsSpan().IndexOfAny('\n', '\r') >= 0)
        {
            return null;
        }

        string? first = null;
        Dish? before = null;
        for (int i = from; i < to; i++)
        {
            if (AskedWords.EndAt(text, i, to, asked) is not { } end)
            {
                continue;
            }

            if (plain == asked)
            {
                // left as it stands
                return text;
            }

            string written = string.Concat(text.AsSpan(0, i), plain, text.AsSpan(end));

            // Words that stand twice ("180 g … at 180"): the place is meant at which the answer settles the question.
            first ??= written;
            before ??= Read(text);
            if (before is null || !before.Doubts.Any(d => d.Line == line && d.Asked == asked))
            {
                return first;
            }

            if (Read(written) is { } after && Settled(before, after, line, asked))
            {
                return written;
            }
        }

        return first;
    }

    /// <summary>A sentence about the whole card: under its title, and where that would part what belongs together, at its end.</summary>
    public static string WriteSentence(string text, string sentence)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<string> lines = [.. text.Split('\n')];
        lines.InsertRange(Math.Max(0, lines.FindIndex(l => l.Trim().Length > 0)) + 1, ["", sentence]);
        string under = string.Join('\n', lines);
        return Read(text) is not { } before ? under
            : new[] { under, $"{text.TrimEnd()}\n\n{sentence}\n", $"{text.TrimEnd()}\n\n## Notes\n\n{sentence}\n" }.FirstOrDefault(t => Read(t) is { } after && Same(before, after) && after.Notes.Concat(after.Components.SelectMany(c => c.Notes)).Any(n => n.Text == sentence)) ?? under;
    }

    private static Dish? Read(string text) => CardReader.Read(new CardText(text)) is Parsed<Dish>.Ok(var dish) ? dish : null;

    private static bool Settled(Dish before, Dish after, int line, string asked)
        => Same(before, after) && (after.Doubts.Count(d => d.Line == line) < before.Doubts.Count(d => d.Line == line) || !after.Doubts.Any(d => d.Line == line && d.Asked == asked));

    /// <summary>As many parts, lines and steps as before: nothing fell out of its place.</summary>
    private static bool Same(Dish a, Dish b)
        => a.Title == b.Title && a.Components.Length == b.Components.Length && a.Components.Zip(b.Components).All(p => p.First.Ingredients.Length == p.Second.Ingredients.Length && p.First.Steps.Length == p.Second.Steps.Length);
}
