using System.Globalization;
using Coulisse.Cards.Words;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>A date where it stands.</summary>
/// <param name="Date">The date.</param>
/// <param name="Start">First character.</param>
/// <param name="End">Behind the last.</param>
/// <param name="HasYear">A year is written; else it is the next such day.</param>
internal readonly record struct SheetDate(LocalDate Date, int Start, int End, bool HasYear);

/// <summary>Dates as people write them: 10 October 2026, 10th Oct, October 10, 2026-10-10, 10.10.2026, 13/10/2026. A day and a month that could be either are asked.</summary>
internal static class SheetDates
{
    /// <summary>The months by name, in small letters.</summary>
    public static readonly string[] Months = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    /// <summary>First date of a text, one with a year before one without; null when it has none, or only one that could be either of two.</summary>
    public static SheetDate? First(string s, LocalDate today) => Named(s, today) is { HasYear: true } named ? named : Iso(s) ?? Figures(s).Date ?? Named(s, today);

    /// <summary>A date in figures that could be either of two ("3/4/2026"); null when there is none. A weekday beside it decides.</summary>
    public static string? Either(string s) => Figures(s).Either;

    private static SheetDate? Named(string s, LocalDate today)
    {
        SheetDate? bare = null;
        for (int m = 0; m < 12; m++)
        {
            (int at, int end) = Month(s, m);
            if (at < 0)
            {
                continue;
            }

            int start = Day(s, at, out int day);
            int behind = end;
            if (start < 0 && DayBehind(s, end, out day) is var after and > 0)
            {
                (start, behind) = (at, after);
            }

            if (start < 0)
            {
                continue;
            }

            int y = behind;
            while (y < s.Length && s[y] is ' ' or ',' or '.')
            {
                y++;
            }

            bool year = y + 4 <= s.Length && int.TryParse(s.AsSpan(y, 4), NumberStyles.None, CultureInfo.InvariantCulture, out int written) && written is > 1900 and < 2200 && (y + 4 == s.Length || !(char.IsLetterOrDigit(s[y + 4]) || s[y + 4] == ':'));
            int of = year ? int.Parse(s.AsSpan(y, 4), CultureInfo.InvariantCulture) : today.Year;
            if (day < 1 || day > CalendarSystem.Iso.GetDaysInMonth(of, m + 1))
            {
                continue;
            }

            LocalDate date = new(of, m + 1, day);
            if (year)
            {
                return new SheetDate(date, start, y + 4, true);
            }

            bare ??= new SheetDate(date < today && day <= CalendarSystem.Iso.GetDaysInMonth(of + 1, m + 1) ? new LocalDate(of + 1, m + 1, day) : date, start, behind, false);
        }

        return bare;
    }

    // A month by its name, or by three letters of it with a capital: "may" alone is a word.
    private static (int At, int End) Month(string s, int m)
    {
        int at = Places.FindWord(s, Months[m]);
        if (at >= 0)
        {
            return (at, at + Months[m].Length);
        }

        string shortly = char.ToUpperInvariant(Months[m][0]) + Months[m][1..3];
        at = m == 8 && Places.FindWord(s, "Sept") is var four and >= 0 ? four : Places.FindWord(s, shortly);
        int length = m == 8 && at >= 0 && Places.WordAt(s, at, "Sept") ? 4 : 3;
        return at >= 0 && char.IsAsciiLetterUpper(s[at]) ? (at, at + length) : (-1, -1);
    }

    private static int Day(string s, int month, out int day)
    {
        day = 0;
        int end = month;
        while (end > 0 && s[end - 1] is ' ' or '.')
        {
            end--;
        }

        if (end > 2 && s.AsSpan(end - 2, 2).Equals("of", StringComparison.OrdinalIgnoreCase))
        {
            end = s.AsSpan(0, end - 2).TrimEnd().Length;
        }

        if (end > 2 && Ordinal(s, end - 2))
        {
            end -= 2;
        }

        int start = end;
        while (start > 0 && char.IsAsciiDigit(s[start - 1]))
        {
            start--;
        }

        return end - start is 1 or 2 && int.TryParse(s.AsSpan(start, end - start), NumberStyles.None, CultureInfo.InvariantCulture, out day) ? start : -1;
    }

    private static int DayBehind(string s, int month, out int day)
    {
        day = 0;
        int start = month < s.Length && s[month] == '.' ? Places.Skip(s, month + 1) : Places.Skip(s, month);
        int end = start;
        while (end < s.Length && char.IsAsciiDigit(s[end]))
        {
            end++;
        }

        bool clock = end < s.Length && s[end] is ':' or 'h' or '.' && end + 1 < s.Length && char.IsAsciiDigit(s[end + 1]);
        return start == month || clock || end - start is not (1 or 2) || !int.TryParse(s.AsSpan(start, end - start), NumberStyles.None, CultureInfo.InvariantCulture, out day) ? -1 : end < s.Length - 1 && Ordinal(s, end) ? end + 2 : end == s.Length || !char.IsLetter(s[end]) ? end : -1;
    }

    private static bool Ordinal(string s, int i) => i + 2 <= s.Length && s.AsSpan(i, 2) is "st" or "nd" or "rd" or "th" && i > 0 && char.IsAsciiDigit(s[i - 1]);

    private static SheetDate? Iso(string s)
    {
        for (int i = 0; i + 10 <= s.Length; i++)
        {
            if (s[i + 4] == '-' && s[i + 7] == '-' && NodaTime.Text.LocalDatePattern.Iso.Parse(s.Substring(i, 10)) is { Success: true } iso)
            {
                return new SheetDate(iso.Value, i, i + 10, true);
            }
        }

        return null;
    }

    /// <summary>Day, month and year in figures. With stops the day comes first; with strokes either may, unless one is no month, both are the same, or the weekday beside it is of one of them.</summary>
    private static (SheetDate? Date, string? Either) Figures(string s)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || (i > 0 && (char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or '/' or ':')) || Part(s, i, 2) is not { } first || first.End >= s.Length || s[first.End] is not ('/' or '.')
                || Part(s, first.End + 1, 2) is not { } second || second.End >= s.Length || s[second.End] != s[first.End] || Part(s, second.End + 1, 4) is not { } third || third.End - second.End is not (3 or 5))
            {
                continue;
            }

            int year = third.Value + (third.End - second.End == 3 ? 2000 : 0);
            LocalDate? day = At(year, second.Value, first.Value);
            LocalDate? month = s[first.End] == '.' ? null : At(year, first.Value, second.Value);
            if (day is not null && month is not null && day != month)
            {
                int[] weekdays = [.. Enumerable.Range(0, s.Length).Select(k => SheetTime.DayOfWeek(s, k)).Where(d => d > 0).Distinct()];
                bool one = weekdays.Length == 1 && (int)day.Value.DayOfWeek == weekdays[0] != ((int)month.Value.DayOfWeek == weekdays[0]);
                if (!one)
                {
                    return (null, s[i..third.End]);
                }

                day = (int)day.Value.DayOfWeek == weekdays[0] ? day : month;
            }

            if ((day ?? month) is { } date)
            {
                return (new SheetDate(date, i, third.End, true), null);
            }
        }

        return (null, null);
    }

    private static (int Value, int End)? Part(string s, int at, int most)
    {
        int i = at;
        while (i < s.Length && char.IsAsciiDigit(s[i]))
        {
            i++;
        }

        return i > at && i - at <= most ? (int.Parse(s.AsSpan(at, i - at), CultureInfo.InvariantCulture), i) : null;
    }

    private static LocalDate? At(int year, int month, int day) => year is > 1900 and < 2200 && month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month) ? new LocalDate(year, month, day) : null;
}
