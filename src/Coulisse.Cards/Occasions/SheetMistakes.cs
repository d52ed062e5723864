using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Words;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>What a person gets wrong on a sheet: each with its line and what would be right. A sheet that is merely odd is not refused.</summary>
internal static class SheetMistakes
{
    private static readonly string[] Days = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

    /// <summary>Days and clock times of one sentence or cell.</summary>
    /// <param name="s">The words.</param>
    /// <param name="line">Sheet line.</param>
    /// <param name="windows">True where "13:00 to 16:30" is a stretch of work, which must end after it starts.</param>
    /// <param name="problems">Where they go.</param>
    public static void OfTimes(string s, int line, bool windows, List<Problem> problems)
    {
        foreach (ClockTime t in ClockTimes.All(s).Where(t => t.Time is null))
        {
            problems.Add(new Problem("OCC011", line, $"“{s[t.Start..t.End]}” is no time of day.", "Write hours 00 to 23 and minutes 00 to 59, for example 14:25."));
        }

        if (!windows)
        {
            return;
        }

        foreach (string piece in s.Split([';', ',']))
        {
            List<LocalTime> times = SheetTime.Times(piece);
            bool stretch = times.Count == 2 && (Places.FindWord(piece, "to") > 0 || piece.Contains('-') || piece.Contains('–'));
            if (stretch && times[1] <= times[0])
            {
                problems.Add(new Problem("OCC009", line, string.Create(CultureInfo.InvariantCulture, $"“{piece.Trim()}” ends before it starts."), "Write the earlier time first; work past midnight is two stretches, one on each day."));
            }
        }
    }

    /// <summary>A date the calendar does not have, a weekday that is not the date's, a weekday misspelled.</summary>
    public static void OfDays(string s, int line, LocalDate today, bool yearless, List<Problem> problems)
    {
        if (SheetTime.Wrong(s) is { } none)
        {
            problems.Add(new Problem("OCC010", line, $"There is no {none}.", "Write a day the month has."));
        }

        if (SheetDates.First(s, today) is { Date: var date } found && (found.HasYear || yearless))
        {
            // Only a weekday right before the date speaks of it: "Saturday 10 October 2026".
            int at = found.Start;
            string[] before = at > 0 ? s[..at].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries) : [];
            if (before.Length > 0 && SheetTime.DayOfWeek(before[^1], 0) is var d and > 0 && d != (int)date.DayOfWeek)
            {
                problems.Add(new Problem("OCC010", line, string.Create(CultureInfo.InvariantCulture, $"{date:d MMMM uuuu} is a {date.DayOfWeek}, not a {before[^1]}."), string.Create(CultureInfo.InvariantCulture, $"Write {date.DayOfWeek} {date:d MMMM uuuu}, or the date meant.")));
            }
        }

        foreach (string w in s.Split([' ', ',', '.', ';', '(', ')'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Misspelt(w) is { } meant)
            {
                problems.Add(new Problem("OCC010", line, $"“{w}” is no day of the week.", $"Did you mean {meant}?"));
            }
        }
    }

    /// <summary>The weekday a word was meant to be. "Frida" is a name: a slip in the last letters is one only of the long names of days.</summary>
    private static string? Misspelt(string w) =>
        w.Length is >= 5 and <= 10 && char.IsUpper(w[0]) && !Days.Contains(w, StringComparer.Ordinal) ? Days.FirstOrDefault(d => Close(d, w) && (w.EndsWith("day", StringComparison.Ordinal) || d.Length > 7 && w[..3] == d[..3])) : null;

    /// <summary>Rows that cannot stand beside each other: the same code, seat, dish or name twice; circuits and kit that do not know each other; more shown than there is.</summary>
    public static void OfRows(OccasionSheet sheet, List<Problem> problems)
    {
        Twice(sheet.Kit.Where(k => k.Code.Length > 0).Select(k => (k.Code, k.Line)), "OCC012", "pieces of kit have the code", "Give each its own code.", problems);
        Twice(sheet.Circuits.Select(c => (c.Code, c.Line)), "OCC012", "circuits have the code", "Give each its own code.", problems);
        Twice(sheet.Dishes.Select(d => (d.Name, d.Line)), "OCC013", "rows are called", "Put them into one row, or name what tells them apart.", problems);
        Twice(sheet.Diets.SelectMany(d => d.Seats.Select(s => (s.ToString(CultureInfo.InvariantCulture), d.Line))), "OCC014", "rows speak of seat", "Put all a guest declared into one row.", problems);
        int most = (sheet.Guests ?? int.MaxValue / 2) + (sheet.Over ?? 0);
        foreach (SheetDiet d in sheet.Diets)
        {
            foreach (int seat in d.Seats.Where(s => s > most))
            {
                problems.Add(new Problem("OCC014", d.Line, string.Create(CultureInfo.InvariantCulture, $"Seat {seat} is declared for, but there are {most} covers."), "Correct the seat or the number of guests."));
            }
        }

        foreach (SheetKit k in sheet.Kit)
        {
            if (sheet.Circuits.Length > 0 && k.Circuit is { } on && !sheet.Circuits.Any(c => c.Code.Equals(on, StringComparison.OrdinalIgnoreCase)))
            {
                problems.Add(new Problem("OCC015", k.Line, $"{k.Code} {k.What} hangs on circuit {on}, which no row of Circuits has.", "Add the circuit with its limit, or correct the code."));
            }
        }

        foreach (SheetCircuit c in sheet.Circuits.Where(c => !(c.LimitKilowatts > 0)))
        {
            problems.Add(new Problem("OCC015", c.Line, $"Circuit {c.Code} has no limit above nothing.", "Write its limit in kW, for example 3.68."));
        }

        // A code is capitals and figures; "camera, screen" are words and stay words.
        foreach (SheetCircuit c in sheet.Circuits)
        {
            foreach (string code in c.Kit.Where(k => k.Length is > 1 and < 6 && k.Any(char.IsAsciiDigit) && k.All(x => char.IsAsciiLetterUpper(x) || char.IsAsciiDigit(x)) && !sheet.Kit.Any(x => x.Code == k)))
            {
                problems.Add(new Problem("OCC015", c.Line, $"Circuit {c.Code} carries {code}, which no row of Kit has.", "Add it to Kit, or correct the code."));
            }
        }

        if (sheet.PlatedLive is { } live && live > most)
        {
            problems.Add(new Problem("OCC016", 0, string.Create(CultureInfo.InvariantCulture, $"{live} plates are made live, but there are {most} covers."), "Plates made live are part of the covers."));
        }
    }

    private static void Twice(IEnumerable<(string Key, int Line)> rows, string code, string words, string hint, List<Problem> problems)
    {
        foreach (IGrouping<string, (string Key, int Line)> same in rows.Where(r => r.Key.Length > 0).GroupBy(r => r.Key, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
        {
            problems.Add(new Problem(code, same.ElementAt(1).Line, string.Create(CultureInfo.InvariantCulture, $"{(same.Count() == 2 ? "Two" : same.Count().ToString(CultureInfo.InvariantCulture))} {words} {same.First().Key} (lines {string.Join(", ", same.Select(s => s.Line))})."), hint));
        }
    }

    /// <summary>One letter too many, too few, changed, or two swapped.</summary>
    internal static bool Close(string right, string typed)
    {
        if (Math.Abs(right.Length - typed.Length) > 1)
        {
            return false;
        }

        int front = 0;
        while (front < Math.Min(right.Length, typed.Length) && right[front] == typed[front])
        {
            front++;
        }

        int back = 0;
        while (back < Math.Min(right.Length, typed.Length) - front && right[^(back + 1)] == typed[^(back + 1)])
        {
            back++;
        }

        int a = right.Length - front - back;
        int b = typed.Length - front - back;
        return Math.Max(a, b) <= 1 || (a == 2 && b == 2 && right[front] == typed[front + 1] && right[front + 1] == typed[front]);
    }
}
