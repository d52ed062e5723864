namespace Coulisse.Cards.Layout;

/// <summary>"[lamb] 60 g anchovies", "[lamb] Roast 7 hours": the part stands in square brackets before every line. Lines of one tag are one part.</summary>
internal static class Tags
{
    private const int Fewest = 3;
    private const int Longest = 30;

    /// <summary>The lines as parts with a heading each; as they were where the lines carry no tags.</summary>
    public static List<RawLine> Off(List<RawLine> lines, string lang)
    {
        int tagged = lines.Count(l => Tag(l.Text) > 0);
        if (tagged < Fewest || tagged * 3 < lines.Count * 2)
        {
            return lines;
        }

        int first = lines.FindIndex(l => Tag(l.Text) > 0);
        List<RawLine> parts = new(lines.Count + 8);
        parts.AddRange(lines.Take(first));
        foreach (IGrouping<string, RawLine> part in lines.Where(l => Tag(l.Text) > 0).GroupBy(l => l.Text[1..(Tag(l.Text) - 1)].Trim(), StringComparer.OrdinalIgnoreCase))
        {
            parts.Add(part.First() with { Text = "## " + part.Key });
            int step = 0;
            foreach (RawLine line in part)
            {
                string body = line.Text[Tag(line.Text)..].Trim();
                bool work = body.Length > 0 && Looks.Work(body, lang) && !(char.IsAsciiDigit(body[0]) && Looks.Amounted(body, lang));
                parts.Add(line with { Text = work ? System.FormattableString.Invariant($"{++step}. {body}") : "- " + body });
            }
        }

        parts.AddRange(lines.Skip(first).Where(l => Tag(l.Text) == 0));
        return parts;
    }

    /// <summary>End of a tag at the front; 0 when none stands there. "[ ] 200 g flour" is a box to tick.</summary>
    private static int Tag(string s)
    {
        int close = s.Length > 4 && s[0] == '[' ? s.IndexOf(']') : -1;
        return close is > 2 and < Longest && close + 2 < s.Length && s[close + 1] == ' ' && char.IsLetter(s[1]) && s.AsSpan(1, close - 1).IndexOfAny('(', '[', ':') < 0 ? close + 1 : 0;
    }
}
