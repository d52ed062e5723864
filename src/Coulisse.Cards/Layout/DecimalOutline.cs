namespace Coulisse.Cards.Layout;

/// <summary>The numbers of an outline ("4.7.1 Batter", "4.7.3.2 Rest 12 hours"), as a manual prints them: they order the page and belong to no name, no amount and no step.</summary>
internal static class DecimalOutline
{
    private const int Fewest = 2;
    private const int Most = 99;

    /// <summary>The lines without their numbers, where at least two numbers of three figures and more follow one another; else the lines as they are.</summary>
    public static List<RawLine> Cleared(List<RawLine> lines, string lang)
    {
        HashSet<string> seen = [];
        int follow = 0;
        foreach (RawLine line in lines)
        {
            if (Number(line.Text) is var end and > 0 && line.Text[..end].TrimEnd('.') is var number && number.Count(c => c == '.') > 1)
            {
                int dot = number.LastIndexOf('.');
                int last = int.Parse(number[(dot + 1)..], System.Globalization.CultureInfo.InvariantCulture);
                follow += last > 1 && seen.Contains(System.FormattableString.Invariant($"{number[..dot]}.{last - 1}")) ? 1 : 0;
                seen.Add(number);
            }
        }

        // A date has three figures too, and no next one under the same first two.
        if (follow == 0 || seen.Count < Fewest)
        {
            return lines;
        }

        // "4.7" over "4.7.1" is of the outline; "1.5 kg flour" under it is an amount all the same.
        HashSet<string> over = [.. seen.Select(n => n[..n.LastIndexOf('.')]).Where(n => n.Contains('.'))];
        return [.. lines.Select(l => Number(l.Text) is var end and > 0 && l.Text[..end].TrimEnd('.') is var number && (seen.Contains(number) || over.Contains(number) && Reading.Amounts.At(l.Text, 0, lang) is not { Unit: not null }) ? l with { Text = l.Text[end..].TrimStart() } : l)];
    }

    /// <summary>End of a number of two figures and more that opens a line over words; 0 for any other line.</summary>
    private static int Number(string s)
    {
        int i = 0;
        int figures = 0;
        while (i < s.Length && char.IsAsciiDigit(s[i]))
        {
            int from = i;
            while (i < s.Length && char.IsAsciiDigit(s[i]))
            {
                i++;
            }

            if (i - from > 2 || int.Parse(s.AsSpan(from, i - from), System.Globalization.CultureInfo.InvariantCulture) is < 1 or > Most)
            {
                return 0;
            }

            figures++;
            if (i + 1 < s.Length && s[i] == '.')
            {
                i++;
            }
        }

        return figures > 1 && i + 1 < s.Length && s[i] is ' ' or '\t' or '　' ? i : 0;
    }
}
