using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Cuts a text into its lines.</summary>
internal static class CardLines
{
    /// <summary>The longest stretch read at once. Real steps stay under 2,000 characters; a longer line is read in stretches, each whole.</summary>
    public const int Longest = 2000;

    /// <summary>All lines that are not blank; a line longer than <see cref="Longest"/> comes as several of the same number.</summary>
    public static List<RawLine> Of(string text)
    {
        List<RawLine> lines = new(text.AsSpan().Count('\n') + 1);
        int start = 0;
        int number = 0;
        int block = 0;
        bool blank = false;
        while (start < text.Length)
        {
            int end = text.AsSpan(start).IndexOfAny('\n', '\r', '\u2028');
            end = end < 0 ? text.Length : start + end;
            number++;
            int from = start;
            int to = end;
            while (from < to && Blank(text[from]))
            {
                from++;
            }

            while (to > from && Blank(text[to - 1]))
            {
                to--;
            }

            if (to == from)
            {
                blank = true;
            }
            else
            {
                block += blank ? 1 : 0;
                blank = false;
                Cut(text, from, to, number, from - start, block, lines);
            }

            start = end + (end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n' ? 2 : 1);
        }

        return lines;
    }

    // a mark of direction or a null byte before a dash hides the dash
    private static bool Blank(char c) => char.IsWhiteSpace(c) || c == '\0' || Folding.IsDirection(c);

    private static void Cut(string text, int from, int to, int number, int indent, int block, List<RawLine> lines)
    {
        while (to - from > Longest)
        {
            int cut = text.AsSpan(from, Longest).LastIndexOf(". ") is var stop and > 200 ? stop + 1 : text.AsSpan(from, Longest).LastIndexOf(' ') is var space and > 200 ? space : Longest;
            lines.Add(new RawLine(text.Substring(from, cut), new Span(from, cut, number), indent, block));
            from += cut;
            while (from < to && char.IsWhiteSpace(text[from]))
            {
                from++;
            }
        }

        if (to > from)
        {
            lines.Add(new RawLine(text[from..to], new Span(from, to - from, number), indent, block));
        }
    }
}
