using System.Globalization;
using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Writing;

/// <summary>Writes the minutes a step really takes into its card, in the words the reader takes for them: "(hands 12 min)".</summary>
public static class HandsOnCard
{
    /// <summary>The card with the minutes in the step; null when the step is not there or the card would then read as anything else.</summary>
    /// <param name="text">Card text, lines ended by a line feed.</param>
    /// <param name="line">Line on which the step begins.</param>
    /// <param name="minutes">Minutes of hands for the card's own amount, above 0.</param>
    public static string? Write(string text, int line, double minutes)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(minutes);
        if (Step(text, line) is not { } step || step.Span.Start + step.Span.Length > text.Length)
        {
            return null;
        }

        string said = string.Create(CultureInfo.InvariantCulture, $"{minutes:0.##} min)");
        string words = text.Substring(step.Span.Start, step.Span.Length);
        (int open, int close, string head) = Bracket(words);
        string corrected = open >= 0 ? words[..open] + "(" + head + said + words[(close + 1)..] : words.TrimEnd() + " (hands " + said + words[words.TrimEnd().Length..];
        string whole = text[..step.Span.Start] + corrected + text[(step.Span.Start + step.Span.Length)..];

        // Read back: the minutes are there, and nothing else of the step is another.
        return Step(whole, line) is { } after && Math.Abs((after.HandsMinutes ?? 0) - Math.Round(minutes, 2)) < 0.006 && after.People == step.People && after.Times.Length == step.Times.Length && after.Temperatures.Length == step.Temperatures.Length ? whole : null;
    }

    private static Step? Step(string text, int line)
        => CardReader.Read(new CardText(text)) is Parsed<Dish>.Ok(var dish) ? dish.Components.SelectMany(c => c.Steps).FirstOrDefault(s => s.Span.Line == line) : null;

    // "(hands 20 min)" gives way whole; of "(three people, 40 min for 52)" the people stay.
    private static (int Open, int Close, string Head) Bracket(string words)
    {
        for (int open = words.IndexOf('('); open >= 0; open = words.IndexOf('(', open + 1))
        {
            int close = words.IndexOf(')', open);
            if (close < 0)
            {
                break;
            }

            string inside = words[(open + 1)..close];
            if (inside.StartsWith("hands", StringComparison.OrdinalIgnoreCase))
            {
                return (open, close, inside[..5] + " ");
            }

            int comma = inside.IndexOf(',');
            if (inside.Contains("people", StringComparison.OrdinalIgnoreCase))
            {
                return (open, close, (comma > 0 ? inside[..comma] : inside) + ", ");
            }
        }

        return (-1, -1, "");
    }
}
