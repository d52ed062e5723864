using System.Globalization;
using Coulisse.Cards.Words;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>Days and clock times of a sheet.</summary>
internal static class SheetTime
{
    private static readonly string[][] Days =
    [
        ["monday", "Montag", "lundi", "lunes", "lunedì"], ["tuesday", "Dienstag", "mardi", "martes", "martedì"], ["wednesday", "Mittwoch", "mercredi", "miércoles", "mercoledì"], ["thursday", "Donnerstag", "jeudi", "jueves", "giovedì"],
        ["friday", "Freitag", "vendredi", "viernes", "venerdì"], ["saturday", "Samstag", "Sonnabend", "samedi", "sábado", "sabato"], ["sunday", "Sonntag", "dimanche", "domingo", "domenica"],
    ];

    private static readonly string[][] Shortly = [["Mon"], ["Tue", "Tues"], ["Wed", "Weds"], ["Thu", "Thur", "Thurs"], ["Fri"], ["Sat"], ["Sun"]];

    /// <summary>A day of the week by name, 1 Monday to 7; 0 when none stands there.</summary>
    public static int DayOfWeek(string s, int at) => DayOfWeek(s, at, out _);

    /// <summary>A day of the week by name or, with a capital and before a figure or the end, shortened; 0 when none stands there.</summary>
    public static int DayOfWeek(string s, int at, out int end)
    {
        end = at;
        if (at >= s.Length || !char.IsLetter(s[at]) || (at > 0 && char.IsLetterOrDigit(s[at - 1])))
        {
            return 0;
        }

        for (int i = 0; i < Days.Length; i++)
        {
            foreach (string day in Days[i])
            {
                if (Places.WordAt(s, at, day))
                {
                    end = at + day.Length;
                    return i + 1;
                }
            }

            foreach (string day in Shortly[i])
            {
                if (s.AsSpan(at).StartsWith(day, StringComparison.Ordinal) && Places.WordAt(s, at, day))
                {
                    int behind = at + day.Length + (at + day.Length < s.Length && s[at + day.Length] == '.' ? 1 : 0);
                    int next = Places.Skip(s, behind);
                    if (next >= s.Length || (next > at + day.Length && char.IsAsciiDigit(s[next])) || s[next] == ',')
                    {
                        end = behind;
                        return i + 1;
                    }
                }
            }
        }

        return 0;
    }

    /// <summary>A date the calendar does not have ("31 November 2026"); null when there is none.</summary>
    public static string? Wrong(string s)
    {
        for (int m = 0; m < 12; m++)
        {
            int at = Places.FindWord(s, SheetDates.Months[m]);
            string[] before = at >= 2 ? s[..at].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries) : [];
            if (before.Length > 0 && int.TryParse(before[^1], NumberStyles.None, CultureInfo.InvariantCulture, out int day) && day is 0 or (> 28 and < 100))
            {
                string[] after = s[(at + SheetDates.Months[m].Length)..].Split([' ', ',', '.', ';'], StringSplitOptions.RemoveEmptyEntries);
                int year = after.Length > 0 && int.TryParse(after[0], NumberStyles.None, CultureInfo.InvariantCulture, out int y) && y is > 1900 and < 2200 ? y : 2000;
                if (day == 0 || day > CalendarSystem.Iso.GetDaysInMonth(year, m + 1))
                {
                    return s[(at - 1 - before[^1].Length)..(at + SheetDates.Months[m].Length)].Trim() + (year == 2000 ? "" : " " + after[0]);
                }
            }
        }

        return null;
    }

    /// <summary>Clock times in order of the text.</summary>
    public static List<LocalTime> Times(string s) => [.. ClockTimes.All(s).Where(t => t.Time is not null).Select(t => t.Time!.Value)];

    /// <summary>The date of a weekday at or before the occasion's day.</summary>
    public static LocalDate On(int weekday, LocalDate day)
    {
        int back = ((int)day.DayOfWeek - weekday + 7) % 7;
        return day.PlusDays(-back);
    }

    /// <summary>Windows of a sentence: "Thursday 8 October 13:00 to 16:30; Friday …".</summary>
    public static List<SheetWindow> Windows(string s, LocalDate day, int line)
    {
        List<SheetWindow> windows = [];
        LocalDate current = day;
        foreach (string piece in s.Split([';', ','], StringSplitOptions.TrimEntries))
        {
            for (int i = 0; i < piece.Length; i++)
            {
                if (DayOfWeek(piece, i) is var d and > 0)
                {
                    current = On(d, day);
                    break;
                }
            }

            List<LocalTime> times = Times(piece);
            if (times.Count >= 2 && times[1] > times[0])
            {
                windows.Add(new SheetWindow(current.At(times[0]), current.At(times[1]), line));
            }
        }

        return windows;
    }
}
