using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"14/16 min", "3/4 minuti", "2/3 ore", "2/3 jours": from one to the other, where the stroke looks like a fraction and nobody counts such parts of a minute or a day. "3/4 h" and "2/3 hour" are parts of an hour, "1/2 min" is half of one.</summary>
internal static class SlashTimes
{
    private const double Hour = 60;
    private const double Day = 1440;

    /// <summary>The two figures of such a stretch, in its unit; null for a fraction and for any other number.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="n">The number as read.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="word">Where its word begins.</param>
    /// <param name="end">Where its word ends.</param>
    /// <param name="unit">Minutes of the word.</param>
    public static (double Low, double High)? Of(string s, Numeral n, int at, int word, int end, double unit)
    {
        if (n is not { Max: null, InWords: false, Min: > 0 and < 1 } || s.AsSpan(at..n.End) is var told && told.IndexOf('/') is var stroke && stroke < 1
            || !int.TryParse(told[..stroke], NumberStyles.None, CultureInfo.InvariantCulture, out int low) || !int.TryParse(told[(stroke + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out int high) || low < 2)
        {
            return null;
        }

        bool part = low is 2 && high is 3 || low is 3 && high is 4;
        bool one = part && Single(s.AsSpan(word..end));
        // Whoever means a part of an hour says three quarters; two thirds of one nobody says.
        bool range = !part || !one && (unit != Hour || low is 2 || s.AsSpan(word..end).Equals("ore", StringComparison.OrdinalIgnoreCase));
        return range && unit <= 30 * Day ? (low, high) : null;
    }

    private static bool Single(ReadOnlySpan<char> word)
    {
        foreach (string one in Ones)
        {
            if (word.Equals(one, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private static readonly string[] Ones = ["minute", "hour", "day", "week", "heure", "jour", "semaine", "stunde", "tag", "woche", "hora", "día", "dia", "semana", "ora", "giorno", "settimana"];
}
