using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A numbered step that a page broke at its edge, also before a capital: "3. Sweat the onions 10 min," over "Bring to a boil, braise at 140 °C for 3½" over "hours.", "bei 175 °C 12-15" over "Minuten backen." Up to the next number all lines are one step, where one of them stops in the middle and the last one does not.</summary>
internal static class NumberedWraps
{
    private const int MostLines = 8;
    private const int Shortest = 14;
    private const int Longest = 1500;

    /// <summary>The lines with such steps put together.</summary>
    public static List<RawLine> Joined(List<RawLine> lines, string lang)
    {
        List<RawLine>? joined = null;
        for (int i = 0; i < lines.Count;)
        {
            int end = Numbered(lines[i].Text) ? End(lines, i, lang) : i + 1;
            if (end > i + 1 && joined is null)
            {
                joined = new List<RawLine>(lines.Count);
                joined.AddRange(lines.Take(i));
            }

            joined?.Add(end > i + 1 ? Whole(lines, i, end) : lines[i]);
            i = end;
        }

        return joined ?? lines;
    }

    private static bool Numbered(string s) => (char.IsAsciiDigit(s[0]) || s[0] == '(' || s[0] > '\u2000') && Marks.ListNumber(s, 0) > 0;

    /// <summary>Where the step that begins at a line ends; right behind it where it is no broken one.</summary>
    private static int End(List<RawLine> lines, int i, string lang)
    {
        if (lines[i].Text.Length < Shortest)
        {
            return i + 1;
        }

        int end = i + 1;
        int length = lines[i].Text.Length;
        while (end < lines.Count && end - i < MostLines && lines[end].Block == lines[i].Block && !Numbered(lines[end].Text) && length < Longest && Goes(lines[end], lines[i], lang))
        {
            length += lines[end].Text.Length;
            end++;
        }

        bool next = end < lines.Count && lines[end].Block == lines[i].Block && Numbered(lines[end].Text) && char.IsAsciiDigit(lines[end].Text[0]);
        if (!next)
        {
            // Behind the last number the step ends with its sentence.
            int last = i;
            while (last + 1 < end && !Stops(lines[last].Text))
            {
                last++;
            }

            end = last + 1;
        }

        return end > i + 1 && Stops(lines[end - 1].Text) && Broken(lines, i, end) && !Looks.Amounted(Marks.Strip(Folding.Line(lines[i].Text)), lang) ? end : i + 1;
    }

    /// <summary>True for a line that may go on: no bullet, no row, no name, no amount. "30 minutes." is none.</summary>
    private static bool Goes(RawLine line, RawLine first, string lang) =>
        line.Text is { Length: > 1 } s && s[^1] != ':' && s[0] is not ('#' or '*' or '|' or '[' or '>') && line.Indent >= first.Indent && !Looks.Bullet(s) && !Looks.Capitals(s) && !(Folding.Line(s) is var body && body.Length > 0 && Looks.Amounted(body, lang) && !Looks.Work(body, lang));

    /// <summary>One of the lines stops in the middle of a sentence.</summary>
    private static bool Broken(List<RawLine> lines, int from, int to)
    {
        for (int k = from; k < to - 1; k++)
        {
            if (!Stops(lines[k].Text))
            {
                return true;
            }
        }

        return false;
    }

    private static RawLine Whole(List<RawLine> lines, int from, int to)
    {
        RawLine whole = lines[from];
        for (int k = from + 1; k < to; k++)
        {
            RawLine line = lines[k];
            bool parted = whole.Text[^1] == '-' && char.IsLetter(whole.Text[^2]) && char.IsLower(line.Text[0]);
            bool glued = parted || whole.Text[^1] is '-' or '–' && char.IsAsciiDigit(line.Text[0]);
            whole = whole with { Text = (parted ? whole.Text[..^1] : whole.Text) + (glued || Places.IsJapanese(line.Text[0]) ? "" : " ") + line.Text, Span = whole.Span with { Length = line.Span.Start + line.Span.Length - whole.Span.Start } };
        }

        return whole;
    }

    private static bool Stops(string s) => s[^1] is '.' or '!' or '?' or '。' or ')' or ';';
}
