using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Sentences that a page broke at its edge: a block that opens with a capital, ends with a stop and goes on from line to line in small letters or behind a comma or a word that hangs. Its lines are put together where a sentence goes on; where one line of the block begins anew without a stop before it, the block is a list and stays.</summary>
internal static class WrappedProse
{
    private const int Widest = 120;
    private const int Narrowest = 40;
    private const int Longest = 1500;
    private const int FewestWords = 5;

    /// <summary>The lines with the sentences put together.</summary>
    public static List<RawLine> Joined(List<RawLine> lines, string lang)
    {
        List<RawLine>? joined = null;
        for (int i = 0; i < lines.Count;)
        {
            int end = i + 1;
            while (end < lines.Count && lines[end].Block == lines[i].Block)
            {
                end++;
            }

            bool prose = end - i > 1 && Is(lines, i, end, lang);
            if (prose && joined is null)
            {
                joined = new List<RawLine>(lines.Count);
                joined.AddRange(lines.Take(i));
            }

            if (prose)
            {
                Put(lines, i, end, joined!);
            }
            else
            {
                joined?.AddRange(lines.Skip(i).Take(end - i));
            }

            i = end;
        }

        return joined ?? lines;
    }

    private static void Put(List<RawLine> lines, int from, int to, List<RawLine> into)
    {
        int first = into.Count;
        for (int k = from; k < to; k++)
        {
            if (into.Count > first && into[^1] is { Text: { } a } last && !Stops(a) && a.Length < Longest)
            {
                bool parted = a[^1] == '-' && a.Length > 1 && char.IsLetter(a[^2]) && char.IsLower(lines[k].Text[0]) && !PartedWords.Both(lines[k].Text);
                into[^1] = last with { Text = parted ? a[..^1] + lines[k].Text : a + " " + lines[k].Text, Span = last.Span with { Length = lines[k].Span.Start + lines[k].Span.Length - last.Span.Start } };
            }
            else
            {
                into.Add(lines[k]);
            }
        }
    }

    private static bool Is(List<RawLine> lines, int from, int to, string lang)
    {
        string opens = lines[from].Text;
        if (!char.IsUpper(opens[0]) || opens.AsSpan().Count(' ') < FewestWords - 1 || lines[to - 1].Text[^1] is not ('.' or '!') || Amounts.At(opens, 0, lang) is not null)
        {
            return false;
        }

        bool even = lang == "de" && Even(lines, from, to);
        bool broken = false;
        for (int k = from; k < to; k++)
        {
            string s = lines[k].Text;
            if (s.Length > Widest || s[^1] is ':' || s.Contains('|') || Looks.Bullet(s) || Marks.ListNumber(s, 0) > 0)
            {
                return false;
            }

            bool ends = Stops(s);
            broken |= !ends && k + 1 < to;
            if (k + 1 < to && !ends && !(even && char.IsUpper(lines[k + 1].Text[0])) && !BrokenLines.Hangs(s, lines[k + 1].Text))
            {
                return false;
            }
        }

        return broken && Amounted(lines, from, to, lang) * 3 < (to - from) * 2;
    }

    /// <summary>How many lines carry an amount: "Strong white bread flour 500 g," over "water 350 g," is a list with commas. Asked last, as it reads every line.</summary>
    private static int Amounted(List<RawLine> lines, int from, int to, string lang)
    {
        int amounted = 0;
        for (int k = from; k < to; k++)
        {
            amounted += Looks.Amounted(Folding.Line(lines[k].Text), lang) ? 1 : 0;
        }

        return amounted;
    }

    /// <summary>Three lines or more of nearly one width, and a stop inside one: German nouns open a line in capitals in the middle of a sentence.</summary>
    private static bool Even(List<RawLine> lines, int from, int to)
    {
        int widest = 0;
        bool stop = false;
        for (int k = from; k < to; k++)
        {
            widest = Math.Max(widest, lines[k].Text.Length);
            stop |= lines[k].Text.Contains(". ", StringComparison.Ordinal);
        }

        bool even = to - from > 2 && widest >= Narrowest && stop;
        for (int k = from; k < to - 1; k++)
        {
            even &= lines[k].Text.Length * 4 >= widest * 3;
        }

        return even;
    }

    private static bool Stops(string s) => s[^1] is '.' or '!' or '?' or '。';
}
