namespace Coulisse.Cards.Layout;

/// <summary>
/// Pages of a wiki: headings between equal signs that tell their depth ("== Carrot cake ==", "=== Frosting ==="), "''slanted''" and "'''bold'''" words, and steps behind a hash ("# Whisk the eggs").
/// Where no heading of that kind stands, a hash opens a title and an apostrophe is an apostrophe; and one depth alone may be strokes around a name as a typist draws them, which are read as such.
/// </summary>
internal static class WikiMarks
{
    private const int Longest = 100;

    /// <summary>The same lines with the marks of a card.</summary>
    public static List<RawLine> Off(List<RawLine> lines)
    {
        (int least, int most, int first, int alike) = (int.MaxValue, 0, -1, 0);
        bool hashes = false;
        for (int i = 0; i < lines.Count; i++)
        {
            string s = lines[i].Text;
            if (Depth(s) is > 0 and var depth)
            {
                alike = depth < least ? 1 : depth == least ? alike + 1 : alike;
                least = Math.Min(least, depth);
                most = Math.Max(most, depth);
                first = first < 0 ? i : first;
            }
            else
            {
                // a hash over the first heading is a title, and the equal signs are strokes
                hashes |= s.StartsWith("##", StringComparison.Ordinal) && s.TrimStart('#') is [' ', ..] || first < 0 && Step(s);
            }
        }

        // headings of the other kind, or one depth and no steps behind hashes
        if (most == 0 || hashes || least == most && !lines.Exists(l => Step(l.Text)))
        {
            return lines;
        }

        // One heading over all others is the name; else the name stands over the page and these are its parts.
        bool titled = least < most && alike == 1 && first == 0 && Depth(lines[0].Text) == least;
        List<RawLine> changed = new(lines.Count);
        int step = 0;
        foreach (RawLine line in lines)
        {
            string s = line.Text;
            int depth = Depth(s);
            step = Step(s) ? step + 1 : 0;
            changed.Add(line with
            {
                Text = depth > 0 ? $"{(depth == least && titled ? "#" : "##")} {s[depth..^depth].Trim()}"
                    : step > 0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{step}. {Plain(s[1..].Trim())}") : Plain(s),
            });
        }

        return changed;
    }

    /// <summary>How many equal signs stand on both sides of a name; 0 for any other line.</summary>
    private static int Depth(string s)
    {
        if (s.Length is < 5 or > Longest || s[0] != '=' || s[^1] != '=')
        {
            return 0;
        }

        int front = s.AsSpan().IndexOfAnyExcept('=');
        int back = s.Length - 1 - s.AsSpan().LastIndexOfAnyExcept('=');
        return front is > 1 and < 7 && front == back && s.AsSpan(front, s.Length - front - back).Trim() is { Length: > 1 } name && !name.Contains('=') ? front : 0;
    }

    private static bool Step(string s) => s.Length > 3 && s[0] == '#' && (s[1] == ' ' || char.IsLetter(s[1]));

    /// <summary>Without the marks of slanted and bold letters; what is bold as a whole stays so.</summary>
    private static string Plain(string s)
    {
        if (!s.Contains("''", StringComparison.Ordinal))
        {
            return s;
        }

        bool whole = s.Length > 8 && s.StartsWith("'''", StringComparison.Ordinal) && s.EndsWith("'''", StringComparison.Ordinal);
        string bare = s.Replace("'''", "", StringComparison.Ordinal).Replace("''", "", StringComparison.Ordinal);
        return whole ? $"**{bare}**" : bare.Length > 0 ? bare : s;
    }
}
