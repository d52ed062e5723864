namespace Coulisse.Cards.Words;

/// <summary>Fractions as print and bad copies show them: "¹/₂" in raised and lowered figures, "'/2", "I/2" and "l/4" for 1/2 and 1/4.</summary>
internal static class PrintedFractions
{
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private const string Lowered = "₀₁₂₃₄₅₆₇₈₉";

    /// <summary>The fraction at a place; null when none begins there.</summary>
    public static Numeral? At(string s, int at)
    {
        if (at + 2 >= s.Length || s[at + 1] != '/')
        {
            return null;
        }

        int over = Raised.IndexOf(s[at]);
        int under = Figure(s[at + 2]);
        bool ends = at + 3 >= s.Length || !char.IsLetterOrDigit(s[at + 3]) || s[at + 3] is 't' or 'c';
        if (over > 0 && under > over && ends)
        {
            return new Numeral((double)over / under, null, at + 3);
        }

        // A mark or letter where the 1 stood, before a denominator of the kitchen only.
        return s[at] is '\'' or '!' or '|' or 'I' or 'l' or 'i' && under is 2 or 3 or 4 or 8 && ends && (at == 0 || s[at - 1] == ' ') ? new Numeral(1.0 / under, null, at + 3) { Repaired = true } : null;
    }

    /// <summary>Value of the fraction glued behind a whole number ("1¹/₂"); 0 when there is none.</summary>
    public static double Glued(string s, int at, out int end)
    {
        end = at;
        if (at < s.Length && Raised.Contains(s[at], StringComparison.Ordinal) && At(s, at) is { } n)
        {
            end = n.End;
            return n.Min;
        }

        return 0;
    }

    private static int Figure(char c) => char.IsAsciiDigit(c) ? c - '0' : Lowered.IndexOf(c);
}
