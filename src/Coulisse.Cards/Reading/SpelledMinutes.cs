using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"An hour and twenty", "una hora y veinte", "un'ora e dieci minuti", "une heure vingt": minutes in words behind an hour. "An hour and ten eggs" are no minutes.</summary>
internal static class SpelledMinutes
{
    private static readonly string[] Until = ["in", "at", "until", "till", "or", "à", "dans", "ou", "bei", "oder", "im", "a", "en", "o", "hasta", "in", "fino", "al", "with", "on", "over", "under", "from", "per", "for"];

    /// <summary>The minutes whose words begin at a place, and the place behind them.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="at">Where the words begin.</param>
    /// <param name="joined">True where "and" stands before them; without it only the hour of a Frenchman or a German goes on.</param>
    /// <param name="lang">Language.</param>
    public static (double Minutes, int End)? Behind(string s, int at, bool joined, string lang)
    {
        if (!joined && lang is not ("fr" or "de") || Numbers.Single(s, at, lang) is not { InWords: true } n || n.Min is < 5 or > 55 || n.Min != Math.Floor(n.Min))
        {
            return null;
        }

        int last = s[n.End - 1] == '.' ? n.End - 1 : n.End;
        int next = Places.Skip(s, last);
        if (TimeWords.Unit(s, next, out int end) is { } unit)
        {
            return unit == 1 ? (n.Min, end) : null;
        }

        bool stops = next >= s.Length || s[next] is '.' or ',' or ';' or ')' or '(' or ':' || Places.Behind(s, next, Until) > 0;
        return stops && n.Min % 5 == 0 ? (n.Min, last) : null;
    }
}
