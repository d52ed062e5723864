using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Where in a line the words of an amount stand: what a question asks about, and what its answer takes the place of.</summary>
internal static class AmountWords
{
    /// <summary>The place of an amount that was read from the line; null when it is not told in one piece.</summary>
    public static (int From, int To)? In(string line, double? amount, string? unit, string lang, int from = 0)
    {
        for (int i = from; amount is { } a && i < line.Length; i++)
        {
            if ((i > 0 && char.IsLetterOrDigit(line[i - 1])) || !(char.IsLetterOrDigit(line[i]) || Numbers.Vulgar(line[i]) > 0))
            {
                continue;
            }

            if (Amounts.At(line, i, lang) is { } m && Math.Abs(m.Number.Min - a) < 1e-6 && (unit is null || unit == m.Unit?.Unit))
            {
                int end = m.End;
                while (end > i && line[end - 1] == ' ')
                {
                    end--;
                }

                return (i, end);
            }
        }

        return null;
    }

    /// <summary>The words themselves.</summary>
    public static string? Of(Draft d, string line, string lang) =>
        (In(line, d.Amount, d.Unit?.Unit, lang) ?? In(line, d.Amount, null, lang)) is var (from, to) ? line[from..to] : null;

    /// <summary>A figure with letters in it and the unit behind it ("1OO g", "I tbsp", "30 q").</summary>
    public static string? Garbled(Draft d, string line)
    {
        for (int i = 0; i < line.Length; i = Places.WordEnd(line, i))
        {
            i = Places.Skip(line, i);
            int end = i;
            while (end < line.Length && line[end] != ' ')
            {
                end++;
            }

            // "1 / 4 tsp": the pieces of a fraction
            while (end > i && Places.Skip(line, end) is var next && next < line.Length && (line[next] == '/' || (line[end - 1] == '/' && char.IsAsciiDigit(line[next]))))
            {
                end = line[next] == '/' ? next + 1 : Places.WordEnd(line, next);
            }

            if (end > i && (line.AsSpan(i, end - i).IndexOfAnyInRange('0', '9') >= 0 || line[i..end] is "I" or "l" or "O"))
            {
                bool apart = d.Unit is not null && (char.IsAsciiDigit(line[end - 1]) || line[end - 1] is 'O' or 'o' or 'I' or 'l' or 'S') && Places.Skip(line, end) < line.Length;
                int unit = Places.Skip(line, end);
                return line[i..(apart ? Places.WordEnd(line, unit) : end)].TrimmedEnd(",;");
            }

            if (end >= line.Length)
            {
                break;
            }
        }

        return null;
    }

    /// <summary>A question about the amount of a line. Where the amount is told in pieces the answer stands in front, and what stood there stays behind it.</summary>
    public static Doubt Ask(int number, string line, string question, string? asked, string food, string moves, double weight, params (string Says, string Words)[] answers) =>
        asked is null
            ? new Doubt(number, question, [.. answers.Select(a => new Candidate(a.Says, a.Words == line ? line : $"{a.Words} {food} (was: {line})"))], moves, weight) { Asked = line }
            : new Doubt(number, question, [.. answers.Select(a => new Candidate(a.Says, a.Words == line ? asked : a.Words))], moves, weight) { Asked = asked };
}
