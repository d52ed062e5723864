using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Occasions;

/// <summary>A stretch of a usual week.</summary>
/// <param name="Day">Day of the week.</param>
/// <param name="From">From.</param>
/// <param name="To">To, later than <paramref name="From"/>.</param>
public readonly record struct SheetHours(IsoDayOfWeek Day, LocalTime From, LocalTime To);

/// <summary>Reads the hours of a usual week ("Tuesday to Saturday 08:00 to 16:30; Sunday off") and lays them on the days of an occasion.</summary>
public static class WeekHours
{
    private const int LeastLetters = 2;
    private static readonly string[] Off = ["off", "free", "closed", "none"];

    /// <summary>The stretches, or what cannot be read.</summary>
    /// <param name="text">As written; empty for no usual hours.</param>
    /// <returns>Stretches by day and hour; and in words what is wrong, null when nothing is.</returns>
    public static (ImmutableArray<SheetHours> Hours, string? Wrong) Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<SheetHours> hours = [];
        HashSet<IsoDayOfWeek> off = [];
        IsoDayOfWeek[] days = [.. Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None)];
        List<IsoDayOfWeek> waiting = []; // "Mon, Wed 08:00 to 12:00": the days before the comma wait for the hours
        foreach (string piece in text.Split([';', ',', '\n'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string[] words = piece.Replace("–", " to ", StringComparison.Ordinal).Replace("-", " to ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
            int n = 0;
            List<IsoDayOfWeek> named = [];
            for (; n < words.Length && !char.IsAsciiDigit(words[n][0]) && !Off.Contains(words[n].TrimEnd('.'), StringComparer.OrdinalIgnoreCase); n++)
            {
                if (words[n] is "and" or "&" or "to" or "from" or "on" or "every")
                {
                    continue;
                }

                if (Many(words[n]) is { Length: > 0 } many)
                {
                    named.AddRange(many);
                    continue;
                }

                if (Day(words[n]) is not { } day)
                {
                    return ([], $"“{words[n]}” is no day of the week.");
                }

                bool through = named.Count > 0 && words[n - 1] == "to";
                for (IsoDayOfWeek d = through ? Next(named[^1]) : day; through && d != day; d = Next(d))
                {
                    named.Add(d);
                }

                named.Add(day);
            }

            string[] rest = [.. words.Skip(n).Where(w => w is not ("to" or "till" or "until"))];
            waiting.AddRange(named);
            if (rest.Length == 0)
            {
                continue;
            }

            if (rest.Length == 1 && Off.Contains(rest[0].TrimEnd('.'), StringComparer.OrdinalIgnoreCase))
            {
                off.UnionWith(waiting.Count > 0 ? waiting : [.. days]);
                waiting = [];
                continue;
            }

            if (rest.Length != 2 || Time(rest[0]) is not { } from || Time(rest[1]) is not { } to)
            {
                return ([], $"“{piece}” is no stretch of a day.");
            }

            if (to <= from)
            {
                return ([], $"“{piece}” ends before it starts; work past midnight is two stretches, one on each day.");
            }

            // a second stretch without a day is of the days before it
            days = waiting.Count > 0 ? [.. waiting] : days;
            hours.AddRange(days.Distinct().Select(d => new SheetHours(d, from, to)));
            waiting = [];
        }

        return waiting.Count > 0
            ? ([], $"no hours stand behind {waiting[^1]}.")
            : ([.. hours.Where(h => !off.Contains(h.Day)).Distinct().OrderBy(h => h.Day).ThenBy(h => h.From)], null);
    }

    /// <summary>The stretches on the days of some windows, those that meet one of them.</summary>
    /// <param name="week">A usual week.</param>
    /// <param name="windows">Windows and the slot.</param>
    /// <param name="line">Sheet line that the stretches are noted with.</param>
    public static ImmutableArray<SheetWindow> On(ImmutableArray<SheetHours> week, ImmutableArray<SheetWindow> windows, int line)
        => [.. windows.SelectMany(w => new[] { w.Start.Date, w.End.Date }).Distinct().Order()
            .SelectMany(date => week.Where(h => h.Day == date.DayOfWeek).Select(h => new SheetWindow(date.At(h.From), date.At(h.To), line)))
            .Where(h => windows.Any(w => w.Start < h.End && h.Start < w.End))];

    /// <summary>The week in words: "Tue to Sat 08:00 to 16:30".</summary>
    public static string Words(ImmutableArray<SheetHours> week)
        => string.Join("; ", week.GroupBy(h => (h.From, h.To)).Select(g => $"{DayWords([.. g.Select(h => h.Day).Order()])} {g.Key.From.ToString("HH:mm", CultureInfo.InvariantCulture)} to {g.Key.To.ToString("HH:mm", CultureInfo.InvariantCulture)}"));

    private static string DayWords(IsoDayOfWeek[] days)
    {
        List<string> runs = [];
        for (int i = 0; i < days.Length;)
        {
            int j = i;
            while (j + 1 < days.Length && days[j + 1] == days[j] + 1)
            {
                j++;
            }

            runs.Add(j == i ? Short(days[i]) : j == i + 1 ? $"{Short(days[i])}, {Short(days[j])}" : $"{Short(days[i])} to {Short(days[j])}");
            i = j + 1;
        }

        return days.Length == 7 ? "every day" : string.Join(", ", runs);
    }

    private static string Short(IsoDayOfWeek day) => day.ToString()[..3];

    private static IsoDayOfWeek[] Many(string word) => word.ToLowerInvariant() switch
    {
        "daily" or "day" => [.. Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None)],
        "weekdays" => [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday],
        _ => [],
    };

    private static IsoDayOfWeek Next(IsoDayOfWeek day) => day == IsoDayOfWeek.Sunday ? IsoDayOfWeek.Monday : day + 1;

    private static IsoDayOfWeek? Day(string word)
    {
        string w = word.TrimmedEnd(".:").TrimEnd('s');
        IsoDayOfWeek[] fit = w.Length < LeastLetters ? [] : [.. Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None && d.ToString().StartsWith(w, StringComparison.OrdinalIgnoreCase))];
        return fit.Length == 1 ? fit[0] : null;
    }

    private static LocalTime? Time(string word)
    {
        string[] parts = word.TrimmedEnd(".h").Split([':', '.']);
        bool read = parts.Length is 1 or 2 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out _) && (parts.Length == 1 || (parts[1].Length == 2 && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out _)));
        if (!read)
        {
            return null;
        }

        int hour = int.Parse(parts[0], CultureInfo.InvariantCulture);
        int minute = parts.Length == 2 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
        return hour is >= 0 and < 24 && minute is >= 0 and < 60 ? new LocalTime(hour, minute) : hour == 24 && minute == 0 ? new LocalTime(23, 59) : null;
    }
}
