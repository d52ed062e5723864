using System.Globalization;
using Coulisse.Cards.Words;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>A clock time where it stands.</summary>
/// <param name="Time">The time; null when no clock shows it.</param>
/// <param name="Start">First character.</param>
/// <param name="End">Behind the last.</param>
internal readonly record struct ClockTime(LocalTime? Time, int Start, int End);

/// <summary>Times of day as people write them: 14:00, 2 pm, 2.30 p.m., 2 to 4 pm, 14h00, 14.00 Uhr, 14 Uhr 30. A stretch of time ("1h30") is none.</summary>
internal static class ClockTimes
{
    private const int EarliestBareHour = 7; // "1h30" is a length, "9h30" a time
    private const int SurelyClock = 13;
    private static readonly string[] Behind = ["to", "on", "until", "till", "and", "for", "uhr"];

    /// <summary>Every time in order of the text.</summary>
    public static List<ClockTime> All(string s)
    {
        List<ClockTime> found = [];
        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !(char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '/' or ':' || (s[i - 1] is '.' or ',' && i > 1 && char.IsAsciiDigit(s[i - 2])))) && Sure(s, i) is { } t)
            {
                found.Add(t);
                i = t.End - 1;
            }
        }

        bool sure = found.Count > 0;
        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !(char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '/' or ':' or '.' or ',')) && !found.Any(f => f.Start <= i && i < f.End) && Likely(s, i, sure) is { } t)
            {
                found.Add(t);
                i = t.End - 1;
            }
        }

        return Together(s, found.OrderBy(f => f.Start));
    }

    /// <summary>14:00, 2 pm, 2.30 pm, 14 Uhr, 14.00 Uhr: nothing else is written like it.</summary>
    private static ClockTime? Sure(string s, int at)
    {
        int i = End(s, at);
        if (i - at > 2)
        {
            return null;
        }

        bool colon = i < s.Length && s[i] == ':' && Two(s, i + 1);
        bool dot = !colon && i < s.Length && s[i] == '.' && Two(s, i + 1) && !Goes(s, i + 3);
        int behind = colon || dot ? i + 3 : i;
        if (Meridiem(s, behind, out int end) is { } afternoon)
        {
            int hour = Number(s, at, i);
            hour = hour > 12 ? afternoon ? hour : -1 : (hour % 12) + (afternoon ? 12 : 0);
            return new ClockTime(At(hour, colon || dot ? Number(s, i + 1, i + 3) : 0), at, end);
        }

        int uhr = Places.Skip(s, behind);
        if (!colon && Places.WordAt(s, uhr, "Uhr"))
        {
            int minutes = Places.Skip(s, uhr + 3);
            bool late = !dot && Two(s, minutes) && !Goes(s, minutes + 2) && !(minutes + 2 < s.Length && char.IsLetterOrDigit(s[minutes + 2])) && Places.Skip(s, minutes + 2) is var next && (next == s.Length || !char.IsLetter(s[next]));
            return new ClockTime(At(Number(s, at, i), dot ? Number(s, i + 1, i + 3) : late ? Number(s, minutes, minutes + 2) : 0), at, late ? minutes + 2 : uhr + 3);
        }

        if (!colon)
        {
            return null;
        }

        // "1:60" is a ratio
        LocalTime? time = At(Number(s, at, i), Number(s, i + 1, i + 3));
        return time is null && i - at < 2 ? null : new ClockTime(time, at, behind);
    }

    /// <summary>14h00, 14h, 14.00: a length or a price is written so too, and so only what is surely an hour counts, the last only where nothing surer stands.</summary>
    private static ClockTime? Likely(string s, int at, bool sure)
    {
        int i = End(s, at);
        if (i - at > 2 || i >= s.Length)
        {
            return null;
        }

        int hour = Number(s, at, i);
        if (s[i] is 'h' or 'H')
        {
            bool minutes = Two(s, i + 1);
            int end = minutes ? i + 3 : i + 1;
            bool ends = end >= s.Length || !char.IsLetterOrDigit(s[end]);
            return ends && hour >= (sure || !minutes ? SurelyClock : EarliestBareHour) ? new ClockTime(At(hour, minutes ? Number(s, i + 1, i + 3) : 0), at, end) : null;
        }

        if (sure || s[i] != '.' || i - at != 2 || !Two(s, i + 1) || Goes(s, i + 3) || (at > 1 && s[at - 1] is not (' ' or '-' or '–' or '(')) || Number(s, i + 1, i + 3) % 5 != 0 || At(hour, Number(s, i + 1, i + 3)) is not { } time)
        {
            return null;
        }

        int next = Places.Skip(s, i + 3);
        return next >= s.Length || s[next] is ',' or ';' or ')' or '.' or '-' or '–' || Array.Exists(Behind, w => Places.WordAt(s, next, w)) || (char.IsAsciiDigit(s[next]) && next > i + 3) ? new ClockTime(time, at, i + 3) : null;
    }

    /// <summary>"2 to 4 pm", "2:30-4 pm": what stands before the afternoon's hour is of the same half of the day, if it then comes first.</summary>
    private static List<ClockTime> Together(string s, IEnumerable<ClockTime> found)
    {
        List<ClockTime> all = [];
        foreach (ClockTime t in found)
        {
            if (t.Time is { } to && Meridiem(s, Figures(s, t.Start), out _) is not null && Before(s, t.Start) is var (start, end) && start >= 0)
            {
                int i = End(s, start);
                int hour = Number(s, start, i);
                int minute = i < end ? Number(s, i + 1, end) : 0;
                if (hour is > 0 and <= 12 && At((hour % 12) + (to.Hour >= 12 ? 12 : 0), minute) is { } same && At(hour % 12, minute) is { } morning)
                {
                    all.RemoveAll(x => x.Start == start);
                    all.Add(new ClockTime(same < to ? same : morning, start, end));
                }
            }

            all.Add(t);
        }

        return all;
    }

    // end of the figures of a time
    private static int Figures(string s, int at) => End(s, at) is var i && i < s.Length && s[i] is ':' or '.' && Two(s, i + 1) ? i + 3 : i;

    // the time without a half of the day that a stretch to this place begins with
    private static (int Start, int End) Before(string s, int at)
    {
        string before = s[..at].TrimEnd();
        int cut = before.EndsWith('-') || before.EndsWith('–') ? 1 : before.EndsWith(" to", StringComparison.OrdinalIgnoreCase) ? 3 : 0;
        int end = before[..^cut].TrimEnd().Length;
        int start = end;
        while (start > 0 && (char.IsAsciiDigit(s[start - 1]) || s[start - 1] is ':' or '.'))
        {
            start--;
        }

        return cut > 0 && end > start && End(s, start) is var i && i - start is 1 or 2 && Figures(s, start) == end && (start == 0 || s[start - 1] == ' ') ? (start, end) : (-1, -1);
    }

    private static bool? Meridiem(string s, int at, out int end)
    {
        int i = Places.Skip(s, at);
        foreach ((string word, bool afternoon) in (ReadOnlySpan<(string, bool)>)[("pm", true), ("p.m.", true), ("p.m", true), ("am", false), ("a.m.", false), ("a.m", false)])
        {
            if (string.Compare(s, i, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0 && (i + word.Length >= s.Length || !char.IsLetterOrDigit(s[i + word.Length])))
            {
                end = i + word.Length;
                return afternoon;
            }
        }

        end = at;
        return null;
    }

    private static LocalTime? At(int hour, int minute) => hour is >= 0 and < 24 && minute is >= 0 and < 60 ? new LocalTime(hour, minute) : null;

    private static int End(string s, int i)
    {
        while (i < s.Length && char.IsAsciiDigit(s[i]))
        {
            i++;
        }

        return i;
    }

    private static bool Two(string s, int i) => i + 1 < s.Length && char.IsAsciiDigit(s[i]) && char.IsAsciiDigit(s[i + 1]) && (i + 2 == s.Length || !char.IsAsciiDigit(s[i + 2]));

    private static bool Goes(string s, int i) => i < s.Length && (char.IsAsciiDigit(s[i]) || (s[i] is '.' or '/' && i + 1 < s.Length && char.IsAsciiDigit(s[i + 1])));

    private static int Number(string s, int from, int to) => int.Parse(s.AsSpan(from, to - from), NumberStyles.None, CultureInfo.InvariantCulture);
}
