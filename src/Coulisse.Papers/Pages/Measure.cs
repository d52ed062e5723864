using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Papers.Fonts;

namespace Coulisse.Papers.Pages;

/// <summary>Widths and line ends of text, from the faces alone.</summary>
public static class Measure
{
    /// <summary>Width of the box that stands for a sign no face has, in ems.</summary>
    public const double BoxEm = 0.62;

    // Not at the head of a Japanese line (JIS X 4051, the common ones).
    private const string NotFirst = "、。，．・：；？！）」』】〉》〕々ー";

    /// <summary>Width of a text in one line.</summary>
    public static double Width(string text, double size, bool strong)
    {
        FontChain chain = strong ? FontChain.Bold : FontChain.Regular;
        double width = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            width += Advance(chain, rune, size);
        }

        return width;
    }

    /// <summary>Width of one sign.</summary>
    public static double Width(Rune rune, double size, bool strong) => Advance(strong ? FontChain.Bold : FontChain.Regular, rune, size);

    /// <summary>Makes a text fit to be set: no control signs, tabs as blanks; line ends stay.</summary>
    public static string Clean(string text)
    {
        StringBuilder b = new(text.Length);
        foreach (char c in text.Replace("\r\n", "\n", StringComparison.Ordinal))
        {
            b.Append(c is '\n' ? c : c is '\t' or '\r' or '\u2028' or '\u2029' ? ' ' : char.IsControl(c) ? '\uFFFD' : c);
        }

        return b.ToString();
    }

    /// <summary>Breaks a text into lines no wider than given; every sign of it is in one of them, but blanks at line ends.</summary>
    public static ImmutableArray<string> Wrap(string text, double width, double size, bool strong)
    {
        ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
        foreach (string hard in Clean(text).Split('\n'))
        {
            StringBuilder line = new();
            double at = 0;
            foreach (string word in Words(hard).SelectMany(w => Width(w.TrimEnd(' '), size, strong) > width ? Words(w, parted: true) : [w]))
            {
                string shown = word.TrimEnd(' ');
                double need = Width(shown, size, strong);
                if (line.Length > 0 && at + need > width + 0.001)
                {
                    lines.Add(line.ToString().TrimEnd(' '));
                    line.Clear();
                    at = 0;
                }

                if (need > width)
                {
                    // Longer than a line by itself: cut where the line is full.
                    foreach (Rune rune in word.EnumerateRunes())
                    {
                        double w = Advance(strong ? FontChain.Bold : FontChain.Regular, rune, size);
                        if (line.Length > 0 && at + w > width && rune.Value != ' ')
                        {
                            lines.Add(line.ToString());
                            line.Clear();
                            at = 0;
                        }

                        line.Append(rune.ToString());
                        at += w;
                    }
                }
                else
                {
                    line.Append(word);
                    at += Width(word, size, strong);
                }
            }

            lines.Add(line.ToString().TrimEnd(' '));
        }

        return lines.ToImmutable();
    }

    /// <summary>Width of the widest piece that ought not to be cut.</summary>
    public static double Widest(string text, double size, bool strong) => Words(Clean(text).Replace('\n', ' ')).Select(w => Width(w.TrimEnd(' '), size, strong)).DefaultIfEmpty(0).Max();

    /// <summary>Width without any line end but its own.</summary>
    public static double Natural(string text, double size, bool strong) => Clean(text).Split('\n').Max(l => Width(l, size, strong));

    private static double Advance(FontChain chain, Rune rune, double size) => chain.Width(rune, size) ?? (Mark(rune) ? 0 : BoxEm * size);

    /// <summary>True for signs that only change the sign before them and have no box of their own.</summary>
    internal static bool Mark(Rune rune) => Rune.GetUnicodeCategory(rune) is UnicodeCategory.Format or UnicodeCategory.NonSpacingMark;

    // A figure stays with its unit, unless both together are too long for a line: then they are parted at the blank rather than inside a word.
    private static IEnumerable<string> Words(string text, bool parted = false)
    {
        int start = 0;
        for (int i = 1; i < text.Length; i++)
        {
            bool afterBlank = text[i - 1] == ' ' && text[i] != ' ' && (parted || !Units.OneThing(text, i));
            bool afterStroke = text[i - 1] is '-' or '/' or '–' && !char.IsAsciiDigit(text[i]) && i - start > 2;
            bool wide = (Wide(text[i]) || Wide(text[i - 1])) && text[i] != ' ' && !NotFirst.Contains(text[i], StringComparison.Ordinal);
            if (afterBlank || afterStroke || wide)
            {
                yield return text[start..i];
                start = i;
            }
        }

        if (start < text.Length)
        {
            yield return text[start..];
        }
    }

    private static bool Wide(char c) => c is >= '\u3040' and <= '\u30FF' or >= '\u3400' and <= '\u9FFF';
}
