using System.Text;

namespace Coulisse.Papers.Pdf;

/// <summary>Order in which the signs of a line are set: stretches of Hebrew and Arabic run to the left, figures within them to the right.</summary>
/// <remarks>The part of the Unicode bidirectional rules (UAX #9) that names and short lines inside left-to-right text need; no embedding levels.</remarks>
internal static class RightToLeft
{
    public static string Visual(string text)
    {
        if (!text.Any(Right))
        {
            return text;
        }

        StringBuilder result = new(text.Length);
        int at = 0;
        while (at < text.Length)
        {
            if (!Right(text[at]))
            {
                result.Append(text[at]);
                at++;
                continue;
            }

            int last = at;
            for (int i = at; i < text.Length && (Right(text[i]) || Neutral(text[i]) || char.IsDigit(text[i])); i++)
            {
                last = Right(text[i]) ? i : last;
            }

            result.Append(Reversed(text[at..(last + 1)]));
            at = last + 1;
        }

        return result.ToString();
    }

    private static bool Right(char c) => c is >= '\u0590' and <= '\u08FF' or >= '\uFB1D' and <= '\uFDFF' or >= '\uFE70' and <= '\uFEFC';

    private static bool Neutral(char c) => c is ' ' or '-' or '\'' or '"' or '.' or ',';

    private static string Reversed(string run)
    {
        StringBuilder b = new(run.Length);
        int end = run.Length;
        while (end > 0)
        {
            int start = end - 1;
            while (start > 0 && char.IsDigit(run[start]) && char.IsDigit(run[start - 1]))
            {
                start--;
            }

            b.Append(run, start, end - start);
            end = start;
        }

        return b.ToString();
    }
}
