using System.Globalization;
using Coulisse.Cards.Words;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>Days and clock times of a sheet.</summary>
internal static class SheetTime
{
    private static readonly string[] Days = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];
    private static readonly string[] Months = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    /// <summary>A day of the week by name, 1 Monday to 7; 0 when none stands there.</summary>
    public static int DayOfWeek(string s, int at)
    {
        for (int i = 0; i < Days.Length; i++)
        {
            if (Places.WordAt(s, at, Days[i]))
            {
                return i + 1;
            }
        }

        return 0;
    }

    /// <summary>First date of a text ("Saturday 10 October 2026", "2026-10-10").</summary>
    public static LocalDate? Date(string s)
    {
        for (int m = 0; m < 12; m++)
        {
            int at = Places.FindWord(s, Months[m]);
            if (at < 2)
            {
                continue;
            }

            string[] before = s[..at].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
            string[] after = s[(at + Months[m].Length)..].Split([' ', ',', '.', ';'], StringSplitOptions.RemoveEmptyEntries);
            if (before.Length > 0 && after.Length > 0 && int.TryParse(before[^1], NumberStyles.None, CultureInfo.InvariantCulture, out int day) && int.TryParse(after[0], NumberStyles.None, CultureInfo.InvariantCulture, out int year)
                && year is > 1900 and < 2200 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, m + 1))
            {
                return new LocalDate(year, m + 1, day);
            }
        }

        for (int i = 0; i + 10 <= s.Length; i++)
        {
            if (s[i + 4] == '-' && s[i + 7] == '-' && NodaTime.Text.LocalDatePattern.Iso.Parse(s.Substring(i, 10)) is { Success: true } iso)
            {
                return iso.Value;
            }
        }

        return null;
    }

    /// <summary>A date the calendar does not have ("31 November 2026"); null when there is none.</summary>
    public static string? Wrong(string s)
    {
        for (int m = 0; m < 12; m++)
        {
            int at = Places.FindWord(s, Months[m]);
            string[] before = at >= 2 ? s[..at].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries) : [];
            if (before.Length > 0 && int.TryParse(before[^1], NumberStyles.None, CultureInfo.InvariantCulture, out int day) && day is 0 or (> 28 and < 100))
            {
                string[] after = s[(at + Months[m].Length)..].Split([' ', ',', '.', ';'], StringSplitOptions.RemoveEmptyEntries);
                int year = after.Length > 0 && int.TryParse(after[0], NumberStyles.None, CultureInfo.InvariantCulture, out int y) && y is > 1900 and < 2200 ? y : 2000;
                if (day == 0 || day > CalendarSystem.Iso.GetDaysInMonth(year, m + 1))
                {
                    return s[(at - 1 - before[^1].Length)..(at + Months[m].Length)].Trim() + (year == 2000 ? "" : " " + after[0]);
                }
            }
        }

        return null;
    }

    /// <summary>Clock times in order of the text.</summary>
    public static List<LocalTime> Times(string s)
    {
        List<LocalTime> found = [];
        for (int i = 1; i + 2 < s.Length; i++)
        {
            if (s[i] == ':' && char.IsAsciiDigit(s[i - 1]) && char.IsAsciiDigit(s[i + 1]) && char.IsAsciiDigit(s[i + 2]))
            {
                int start = i > 1 && char.IsAsciiDigit(s[i - 2]) ? i - 2 : i - 1;
                int hour = int.Parse(s.AsSpan(start, i - start), CultureInfo.InvariantCulture);
                int minute = int.Parse(s.AsSpan(i + 1, 2), CultureInfo.InvariantCulture);
                if (hour < 24 && minute < 60)
                {
                    found.Add(new LocalTime(hour, minute));
                }
            }
        }

        return found;
    }

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
