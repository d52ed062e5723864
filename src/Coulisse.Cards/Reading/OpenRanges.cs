using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"at least 2 hours and up to 2 days", "30 minutes, höchstens 1 Stunde": a low end and, right behind it, the high end of the same wait. Read as two waits one would follow the other, and the plan would wait for both.</summary>
internal static class OpenRanges
{
    private const int Near = 40;
    private static readonly string[] Joints = ["and", "or", "but", "et", "ou", "mais", "und", "oder", "aber", "y", "o", "pero", "e", "ma", "for"];

    /// <summary>The time before with its high end, where the time told at a place is that and no other.</summary>
    /// <param name="s">The step.</param>
    /// <param name="last">The time before.</param>
    /// <param name="at">Where the upper end begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="minutes">The upper end.</param>
    /// <param name="most">True where its own words say that it is one ("24 hours at most").</param>
    public static StepTime? Closed(string s, StepTime last, int at, int end, double minutes, bool most)
    {
        if (last is not { MinutesMin: { } low, Words.Length: > 0 } || last.Kind == TimeKind.Limit || minutes <= low || last.MinutesMax is { } high && high != low)
        {
            return null;
        }

        int told = at > 0 ? s.LastIndexOf(last.Words, at - 1, Math.Min(at, last.Words.Length + Near), StringComparison.Ordinal) : -1;
        if (told < 0 || told + last.Words.Length > at)
        {
            return null;
        }

        // Nothing but the words of the bound and one that joins: "2 hours, rest for up to 1 hour" are two.
        string between = s[(told + last.Words.Length)..at].Trimmed(" ,-(");
        bool lower = false;
        foreach (string least in Lowers)
        {
            if (Places.WordAt(between, 0, least))
            {
                (lower, between) = (true, between[least.Length..].Trimmed(" ,.;-("));
                break;
            }
        }

        foreach (string joint in Joints)
        {
            between = Places.WordAt(between, 0, joint) ? between[joint.Length..].TrimStart() : between;
        }

        bool closes = Array.Exists(Uppers, u => between.Equals(u, StringComparison.OrdinalIgnoreCase)) || most && lower && between.Length == 0;
        return closes ? last with { MinutesMax = minutes, Bound = Bound.At, Words = s[told..end] } : null;
    }

    /// <summary>"At least 2 hours or up to 2 days" is a range; in "30 minutes (or up to 2 days)" the first is the time, and the words keep what else it bears.</summary>
    /// <param name="s">The step.</param>
    /// <param name="last">The time before.</param>
    /// <param name="at">Where the longer time begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="minutes">The longer time.</param>
    /// <param name="before">What stands before it, lower case.</param>
    public static StepTime? OrLonger(string s, StepTime last, int at, int end, double minutes, string before)
    {
        if (!BareHeat.Ends(before, "or up to") || last.Words.Length == 0)
        {
            return null;
        }

        if (last.Bound == Bound.AtLeast)
        {
            return Closed(s, last, at, end, minutes, most: true);
        }

        int told = s.LastIndexOf(last.Words, at - 1, Math.Min(at, last.Words.Length + Near), StringComparison.Ordinal);
        return told >= 0 && told + last.Words.Length <= at && s[(told + last.Words.Length)..at].Trimmed(" ,-(").Equals("or up to", StringComparison.OrdinalIgnoreCase) ? last with { Words = s[told..(end < s.Length && s[end] == ')' ? end + 1 : end)] } : null;
    }

    /// <summary>True where the word behind a time bounds the next one: "min 6 h max 24 h".</summary>
    /// <param name="tail">What stands behind the time, lower case.</param>
    public static bool OfNext(string tail)
    {
        if (!tail.StartsWith("max", StringComparison.Ordinal))
        {
            return false;
        }

        int end = Places.WordEnd(tail, 0);
        end = Places.Skip(tail, end < tail.Length && tail[end] is '.' or ':' ? end + 1 : end);
        return end < tail.Length && char.IsAsciiDigit(tail[end]);
    }

    // "2 hours minimum, 24 hours maximum": the word of the low end stands between the two.
    private static readonly string[] Lowers = ["minimum", "min.", "min", "mini", "mind.", "mindestens", "at least", "at the least", "au moins", "au minimum", "al menos", "como mínimo", "mínimo", "almeno", "minimo", "al minimo"];
    private static readonly string[] Uppers = ["から", "から最大", "以上", "up to", "no more than", "not more than", "no longer than", "at most", "at the most", "a maximum of", "maximum", "max.", "max", "jusqu'à", "au plus", "au maximum", "maximum", "bis zu", "höchstens", "maximal", "hasta", "como máximo", "máximo", "fino a", "al massimo", "massimo"];
}
