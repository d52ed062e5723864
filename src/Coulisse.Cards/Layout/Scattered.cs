using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"150", "g" and "self-raising flour" on a line each: a page's cells that were pasted one under the other.</summary>
internal static class Scattered
{
    private const int Fewest = 2;
    private const int Longest = 60;

    /// <summary>The lines with such cells put together.</summary>
    public static List<RawLine> Joined(List<RawLine> lines, string lang)
    {
        int triples = 0;
        for (int i = 0; i + 2 < lines.Count; i++)
        {
            triples += Triple(lines, i, lang) ? 1 : 0;
        }

        if (triples < Fewest)
        {
            return lines;
        }

        List<RawLine> joined = new(lines.Count);
        for (int i = 0; i < lines.Count; i++)
        {
            int cells = Triple(lines, i, lang) ? 3 : i > 0 && i + 1 < lines.Count && Figure(lines[i].Text, lang) && Name(lines[i + 1].Text) ? 2 : 1;
            RawLine last = lines[i + cells - 1];
            joined.Add(cells == 1 ? lines[i] : lines[i] with { Text = string.Join(' ', lines.Skip(i).Take(cells).Select(l => l.Text)), Span = lines[i].Span with { Length = last.Span.Start + last.Span.Length - lines[i].Span.Start } });
            i += cells - 1;
        }

        return joined;
    }

    private static bool Triple(List<RawLine> lines, int i, string lang) => i + 2 < lines.Count && Figure(lines[i].Text, lang) && Unit(lines[i + 1].Text, lang) && Name(lines[i + 2].Text);

    private static bool Figure(string s, string lang) => s.Length < 8 && (char.IsAsciiDigit(s[0]) || Numbers.Vulgar(s[0]) > 0) && Numbers.Range(s, 0, lang) is { } n && n.End >= s.Length;

    private static bool Unit(string s, string lang) => s.Length < 14 && char.IsLetter(s[0]) && Lexicon.LongestUnit(s, 0, lang, out int end) is not null && end >= s.TrimEnd('.').Length;

    private static bool Name(string s) => s.Length is > 1 and < Longest && char.IsLetter(s[0]);
}
