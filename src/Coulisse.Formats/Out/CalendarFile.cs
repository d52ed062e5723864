using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Formats.Out;

/// <summary>A plan as a calendar (iCalendar, RFC 5545): tasks, segments and cues, each with an alarm. Times are the kitchen's own clock: the plan knows no time zone.</summary>
public static class CalendarFile
{
    private const int LineOctets = 75;

    /// <summary>The calendar of one person, or of everything.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="person">Whose; null for all tasks.</param>
    /// <param name="stamp">When it was made.</param>
    /// <param name="alarmMinutes">Minutes before a task at which it reminds; 0 for none.</param>
    public static string Write(Plan plan, string? person, Instant stamp, int alarmMinutes = 10)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(alarmMinutes);
        StringBuilder b = new();
        Line(b, "BEGIN:VCALENDAR");
        Line(b, "VERSION:2.0");
        Line(b, "PRODID:-//Coulisse//Plan//EN");
        Line(b, "CALSCALE:GREGORIAN");
        Line(b, "X-WR-CALNAME:" + Escape(person is null ? plan.Title : $"{plan.Title}: {person}"));
        foreach (PlannedTask t in plan.Tasks.Where(t => person is null || t.People.Contains(person)))
        {
            string with = string.Join(", ", t.People.Where(p => p != person));
            Event(b, $"{t.Id}", stamp, t.Start, t.End, t.Text, t.Place ?? "", $"{(t.Component is { } c ? c + ". " : "")}{(t.Kit.IsEmpty ? "" : "Kit: " + string.Join(", ", t.Kit) + ". ")}{(t.Celsius is { } d ? string.Create(CultureInfo.InvariantCulture, $"{d:0.#} °C. ") : "")}{(with.Length > 0 ? (person is null ? "Hands: " : "With: ") + with + "." : "")}".Trim(), alarmMinutes);
        }

        foreach (RunSegment s in plan.RunSheet.Where(s => person is null || s.Who.ContainsKey(person)))
        {
            LocalDateTime start = plan.SlotStart.PlusSeconds(s.StartSecond);
            Event(b, string.Create(CultureInfo.InvariantCulture, $"segment-{s.Number}"), stamp, start, start.PlusSeconds(s.Seconds), s.Show, "", person is null ? string.Join("; ", s.Who.Select(w => $"{w.Key}: {w.Value}")) : s.Who[person], 0);
        }

        foreach (Twin t in plan.Twins.Where(t => !t.Stands && (person is null || t.BroughtBy == person)))
        {
            LocalDateTime cue = plan.SlotStart.PlusSeconds(t.CueSecond);
            Event(b, string.Create(CultureInfo.InvariantCulture, $"twin-{t.Number}"), stamp, cue, cue.PlusSeconds(30), string.Create(CultureInfo.InvariantCulture, $"Bring No. {t.Number}: {t.Component}, {t.State}"), t.Place, t.Afterwards, 1);
        }

        Line(b, "END:VCALENDAR");
        return b.ToString();
    }

    private static void Event(StringBuilder b, string id, Instant stamp, LocalDateTime start, LocalDateTime end, string summary, string place, string description, int alarm)
    {
        Line(b, "BEGIN:VEVENT");
        Line(b, "UID:" + Escape(id) + "-" + Local(start) + "@coulisse.invalid");
        Line(b, "DTSTAMP:" + stamp.InUtc().LocalDateTime.ToString("uuuuMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture));
        Line(b, "DTSTART:" + Local(start));
        if (end > start)
        {
            Line(b, "DTEND:" + Local(end));
        }

        Line(b, "SUMMARY:" + Escape(summary));
        if (place.Length > 0)
        {
            Line(b, "LOCATION:" + Escape(place));
        }

        if (description.Length > 0)
        {
            Line(b, "DESCRIPTION:" + Escape(description));
        }

        if (alarm > 0)
        {
            Line(b, "BEGIN:VALARM");
            Line(b, "ACTION:DISPLAY");
            Line(b, string.Create(CultureInfo.InvariantCulture, $"TRIGGER:-PT{alarm}M"));
            Line(b, "DESCRIPTION:" + Escape(summary));
            Line(b, "END:VALARM");
        }

        Line(b, "END:VEVENT");
    }

    private static string Local(LocalDateTime t) => t.ToString("uuuuMMdd'T'HHmmss", CultureInfo.InvariantCulture);

    private static string Escape(string text) => text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace(";", "\\;", StringComparison.Ordinal).Replace(",", "\\,", StringComparison.Ordinal).Replace("\r\n", "\\n", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal);

    // RFC 5545, 3.1: no line longer than 75 octets; a fold never cuts a sign.
    private static void Line(StringBuilder b, string text)
    {
        int octets = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LineOctets)
            {
                b.Append("\r\n ");
                octets = 1;
            }

            b.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        b.Append("\r\n");
    }
}
