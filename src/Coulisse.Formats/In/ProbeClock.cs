using System.Globalization;
using System.Text;
using NodaTime;

namespace Coulisse.Formats.In;

/// <summary>How one column of a probe file counts time, and what its cells mean.</summary>
/// <remarks>
/// Date and time in one cell or two (2026-10-10T14:03:00, 2026/10/10 14:03, 10.10.2026 14:03:00, 10/10/26 2:03 PM, 10-Oct-2026 14:03), time of day alone (past midnight it goes on), seconds since 1970,
/// or elapsed: a plain number in the unit its head names, or h:mm:ss.
/// </remarks>
internal static class ProbeClock
{
    private static readonly string[] Months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    /// <summary>A moment as the cells give it; day and month in the order asked for. Null when the text is no moment.</summary>
    /// <param name="text">One cell, or date and time with a blank between.</param>
    /// <param name="monthFirst">10/11 is the eleventh of October.</param>
    public static (LocalDate? Date, double Seconds)? Moment(string text, bool monthFirst)
    {
        string t = text.Trim().Trim('"');
        if (t.Length is 0 or > 40)
        {
            return null;
        }

        string[] words = Words(t);
        int colon = Array.FindIndex(words, w => w.Contains(':', StringComparison.Ordinal));
        double? time = null;
        if (colon >= 0)
        {
            string half = colon + 1 < words.Length ? words[colon + 1].ToLowerInvariant().Replace(".", "", StringComparison.Ordinal) : "";
            time = TimeOfDay(words[colon], half);
            if (time is null)
            {
                return null;
            }
        }

        string day = string.Join(' ', colon < 0 ? words : words[..colon]);
        if (day.Length == 0)
        {
            return time is { } only ? (null, only) : null;
        }

        return Date(day, monthFirst) is { } date ? (date, time ?? 0) : null;
    }

    /// <summary>Whether a date of figures in this text can only be read one way round: +1 the day is second, −1 the day is first, 0 either.</summary>
    public static int Order(string text)
    {
        string[] parts = Words(text.Trim().Trim('"')) is [var day, ..] ? day.Split('/', '.', '-') : [];
        return parts.Length == 3 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int a) && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int b) && a <= 31
            ? b > 12 ? 1 : a > 12 ? -1 : 0
            : 0;
    }

    private static string[] Words(string text)
    {
        StringBuilder b = new(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            // the T of 2026-10-10T14:03 and commas between date and time are blanks
            bool between = text[i] == 'T' && i > 0 && char.IsAsciiDigit(text[i - 1]) && i + 1 < text.Length && char.IsAsciiDigit(text[i + 1]);
            b.Append(between || text[i] == ',' ? ' ' : text[i]);
        }

        string[] words = b.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. words.SelectMany(w => w.Length > 2 && char.IsAsciiDigit(w[0]) && w[^1] is 'M' or 'm' && w[^2] is 'A' or 'a' or 'P' or 'p' && w.Contains(':', StringComparison.Ordinal) ? new[] { w[..^2], w[^2..] } : [w])];
    }

    private static double? TimeOfDay(string text, string half)
    {
        // a zone at the end says nothing about how long things took
        int zone = text.IndexOfAny(['Z', 'z', '+'], 1);
        zone = zone < 0 ? text.IndexOf('-', 1) : zone;
        string[] parts = (zone > 0 ? text[..zone] : text).Split(':');
        if (parts.Length is not (2 or 3) || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int h) || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int m) || m > 59 || h > 9999)
        {
            return null;
        }

        double s = 0;
        if (parts.Length == 3 && (!double.TryParse(parts[2].Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out s) || s is not (>= 0 and < 61)))
        {
            return null;
        }

        h = half switch { "pm" when h < 12 => h + 12, "am" when h == 12 => 0, _ => h };
        return (h * 3600.0) + (m * 60) + s;
    }

    private static LocalDate? Date(string text, bool monthFirst)
    {
        string[] parts = text.Split(['/', '.', '-', ' '], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 3)
        {
            return null;
        }

        int named = Array.FindIndex(parts, p => p.Length >= 3 && Array.Exists(Months, m => p.StartsWith(m, StringComparison.OrdinalIgnoreCase)));
        int[] n = [.. parts.Select((p, i) => i == named ? Array.FindIndex(Months, m => p.StartsWith(m, StringComparison.OrdinalIgnoreCase)) + 1 : int.TryParse(p, NumberStyles.None, CultureInfo.InvariantCulture, out int v) ? v : -1)];
        (int year, int month, int day) = parts[0].Length == 4 ? (n[0], n[1], n[2])
            : named == 0 ? (n[2], n[0], n[1])
            : named == 1 || !monthFirst ? (n[2], n[1], n[0])
            : (n[2], n[0], n[1]);
        year = year is >= 0 and < 100 ? 2000 + year : year;
        return year is >= 1970 and <= 2200 && month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month) ? new LocalDate(year, month, day) : null;
    }
}
