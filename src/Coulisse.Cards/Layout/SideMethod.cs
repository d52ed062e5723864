using System.Globalization;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A list and its method that a page set side by side ("INGREDIENTS        METHOD" over "50 g butter        gentle heat for 8 minutes."), copied as lines. Read as lines, half a step would hang on every food; read by the column under the second word, first the one comes and then the other.</summary>
internal static class SideMethod
{
    private const int FewestRows = 2;
    private const int LongestHead = 90;
    private const string Gap = "   ";

    /// <summary>The lines with the two columns one under the other; the same lines for any other card.</summary>
    public static List<RawLine> Off(List<RawLine> lines, string lang)
    {
        for (int i = 0; i + FewestRows < lines.Count; i++)
        {
            if (lines[i].Text.Length < LongestHead && lines[i].Text.Contains(Gap, StringComparison.Ordinal) && Heads(lines[i], lang) is { } heads)
            {
                return Parted(lines, i, heads, lang) ?? lines;
            }
        }

        return lines;
    }

    /// <summary>Where the right column begins, and which side is the method; null for a line that names no two such columns.</summary>
    private static (int Column, bool MethodRight)? Heads(RawLine line, string lang)
    {
        int gap = line.Text.IndexOf(Gap, StringComparison.Ordinal);
        string right = line.Text[gap..].TrimStart();
        string? left = Sections.Of(Folding.Line(line.Text.AsSpan(0, gap)), lang);
        string? other = right.Contains(Gap, StringComparison.Ordinal) ? null : Sections.Of(Folding.Line(right), lang);
        return (left, other) is ("ingredients", "method") or ("method", "ingredients") ? (line.Indent + line.Text.Length - right.Length, other == "method") : null;
    }

    private static List<RawLine>? Parted(List<RawLine> lines, int at, (int Column, bool MethodRight) heads, string lang)
    {
        List<RawLine> left = [];
        List<RawLine> right = [];
        (int both, int end, int lefts, int rights) = (0, at, 0, 0);
        for (int i = at; i < lines.Count; i++)
        {
            if (Cut(lines[i], heads.Column) is not { } halves)
            {
                break;
            }

            if (halves.Right is { } r && !(halves.Left is null && Furniture.Page(Folding.Line(r.Text))))
            {
                right.Add(r);
                both += halves.Left is null || i == at ? 0 : 1;
                (end, rights) = (i + 1, right.Count);
                lefts = left.Count + (halves.Left is null ? 0 : 1);
            }
            else if (halves.Left is null)
            {
                break;
            }

            if (halves.Left is { } l)
            {
                left.Add(l);
                if (end == i && lines[i].Block == lines[i - 1].Block)
                {
                    // The list may go on under the end of the method.
                    (end, lefts) = (i + 1, left.Count);
                }
            }
        }

        left = left[..lefts];
        right = right[..rights];
        List<RawLine> list = heads.MethodRight ? left : right;
        if (both < FewestRows || list.Skip(1).Count(l => Looks.Amounted(Marks.Strip(Folding.Line(l.Text)), lang)) < FewestRows)
        {
            return null;
        }

        int last = lines[end - 1].Block;
        List<RawLine> told = [.. lines.Take(at)];
        told.AddRange(heads.MethodRight ? left : Steps(left));
        told.AddRange((heads.MethodRight ? Steps(right) : right).Select(l => l with { Block = last + 1, Indent = 0 }));
        told.AddRange(lines.Skip(end).Select(l => l with { Block = l.Block + 2 }));
        return told;
    }

    /// <summary>What stands left and right of a column; null where words run across it.</summary>
    private static (RawLine? Left, RawLine? Right)? Cut(RawLine line, int column)
    {
        int cut = column - line.Indent;
        if (cut <= 2)
        {
            return (null, line);
        }

        if (line.Text.Length < cut)
        {
            return (line, null);
        }

        if (line.Text[cut - 1] != ' ' || line.Text[cut - 2] != ' ')
        {
            return null;
        }

        string left = line.Text[..cut].TrimEnd();
        string right = line.Text[cut..].TrimStart();
        int from = line.Text.Length - right.Length;
        return (line with { Text = left, Span = line.Span with { Length = left.Length } }, new RawLine(right, line.Span with { Start = line.Span.Start + from, Length = right.Length }, 0, line.Block));
    }

    /// <summary>The lines of the method put together: a step begins with the next number, and without numbers behind a stop.</summary>
    private static List<RawLine> Steps(List<RawLine> column)
    {
        List<RawLine> steps = [column[0]];
        int number = 0;
        bool numbered = column.Count > 1 && Number(column[1].Text, 1) > 0;
        foreach (RawLine line in column.Skip(1))
        {
            int rest = numbered ? Number(line.Text, number + 1) : 0;
            if (rest > 0)
            {
                number++;
                steps.Add(line with { Text = string.Create(CultureInfo.InvariantCulture, $"{number}. {line.Text[rest..].TrimStart()}") });
            }
            else if (steps.Count == 1 || !numbered && (steps[^1].Text[^1] is '.' or '!' or '。' || Looks.Bullet(line.Text)))
            {
                steps.Add(line);
            }
            else
            {
                string a = steps[^1].Text;
                bool parted = a[^1] == '-' && char.IsLetter(a[^2]) && char.IsLower(line.Text[0]);
                steps[^1] = steps[^1] with { Text = parted ? a[..^1] + line.Text : Places.IsJapanese(line.Text[0]) ? a + line.Text : $"{a} {line.Text}" };
            }
        }

        return steps;
    }

    /// <summary>Where the words begin behind the number that comes next ("2  Pour", "2. Pour"); 0 where another figure or none opens the line: "30 minutes" goes on with a step.</summary>
    private static int Number(string s, int next)
    {
        int digits = 0;
        while (digits < s.Length && digits < 3 && char.IsAsciiDigit(s[digits]))
        {
            digits++;
        }

        int behind = digits < s.Length && s[digits] is '.' or ')' ? digits + 1 : digits;
        return digits is 1 or 2 && behind < s.Length && s[behind] == ' ' && int.Parse(s.AsSpan(0, digits), CultureInfo.InvariantCulture) == next && s.AsSpan(behind).TrimStart() is [var first, ..] && (char.IsUpper(first) || behind > digits || Places.IsJapanese(first)) ? behind : 0;
    }
}
