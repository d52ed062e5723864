using Coulisse.Cards.Words;

namespace Coulisse.Cards.Writing;

/// <summary>Where the words of a question stand in the text as it was typed: the reader sees a line without its emphasis, with one kind of dash and fractions in figures.</summary>
internal static class AskedWords
{
    private const int MostFolded = 40;

    /// <summary>The characters of a line and of the few behind it; null when there is no such line.</summary>
    public static (int From, int To)? Range(string text, int line, int lines)
    {
        int from = 0;
        for (int n = 1; n < line; n++)
        {
            from = text.IndexOf('\n', from) + 1;
            if (from == 0)
            {
                return null;
            }
        }

        int to = from;
        for (int n = 0; n < lines && to < text.Length; n++)
        {
            to = text.IndexOf('\n', to) is var end and >= 0 ? end + 1 : text.Length;
        }

        return line < 1 ? null : (from, to);
    }

    /// <summary>End of the words when they begin here; null when they do not.</summary>
    public static int? EndAt(string text, int at, int to, string words)
    {
        if (char.IsWhiteSpace(text[at]) || Joined(words[0], at > 0 ? text[at - 1] : ' ') || (at > 1 && text[at - 1] is '.' or ',' && char.IsDigit(text[at]) && char.IsDigit(text[at - 2])))
        {
            return null;
        }

        return Alike(text, at, to, words) ?? Folded(text, at, to, words);
    }

    /// <summary>Sign by sign; a gap is a gap, a dash a dash, and marks of emphasis between are passed over.</summary>
    private static int? Alike(string text, int at, int to, string words)
    {
        int i = at;
        int w = 0;
        while (w < words.Length)
        {
            if (i >= to)
            {
                return null;
            }

            if (words[w] == ' ')
            {
                int gap = i;
                while (i < to && char.IsWhiteSpace(text[i]))
                {
                    i++;
                }

                if (gap == i)
                {
                    return null;
                }

                w++;
            }
            else if (text[i] == words[w] || (Dash(text[i]) && Dash(words[w])))
            {
                i++;
                w++;
            }
            else if (text[i] is '*' or '_' or '`' && w > 0)
            {
                i++;
            }
            else
            {
                return null;
            }
        }

        return Ends(text, i, to, words) ? i : null;
    }

    private static int? Folded(string text, int at, int to, string words)
    {
        if (words.Length > MostFolded || char.IsAsciiLetterOrDigit(text[at]) && text[at] != words[0])
        {
            return null;
        }

        for (int end = at + 1; end <= Math.Min(to, at + 2 * words.Length + 8) && text[end - 1] != '\n'; end++)
        {
            if (Ends(text, end, to, words) && Folding.Line(text.AsSpan(at, end - at)) is { Length: > 0 } seen && seen.Length == words.Length && seen == words && !char.IsWhiteSpace(text[end - 1]))
            {
                return end;
            }
        }

        return null;
    }

    private static bool Ends(string text, int end, int to, string words) => end >= to || !Joined(words[^1], text[end]);

    private static bool Joined(char one, char other) => char.IsLetterOrDigit(one) && char.IsLetterOrDigit(other) && !Places.IsJapanese(one) && !Places.IsJapanese(other);

    private static bool Dash(char c) => c is '-' or '−' or '–' or '—' or '‑' or '‐';
}
