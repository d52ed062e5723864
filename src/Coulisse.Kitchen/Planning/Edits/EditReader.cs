using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Kitchen.Planning.Edits;

/// <summary>Reads what a person fixes in one line each: "curd-34 = Sat 09:30", "curd-34 = Ada", "curd-34 = Sat 09:00 to 11:00", "curd-34 = tart-12".</summary>
public static class EditReader
{
    private static readonly string[] Forms = ["uuuu-MM-dd'T'HH:mm:ss", "uuuu-MM-dd'T'HH:mm", "uuuu-MM-dd HH:mm"];

    /// <summary>A pin: task = moment, person or kit code.</summary>
    /// <param name="text">The line.</param>
    /// <param name="occasion">The occasion, for its days, people and kit.</param>
    public static Parsed<Pin> Pin(string text, Occasion occasion)
    {
        if (Split(text) is not { } at)
        {
            return new Parsed<Pin>.Failed([Shape(text)]);
        }

        return Moment(at.Right, occasion) is { } start ? new Parsed<Pin>.Ok(new Pin(at.Left, start))
            : Person(at.Right, occasion) is { } who ? new Parsed<Pin>.Ok(new Pin(at.Left, null, who))
            : Kit(at.Right, occasion) is { } kit ? new Parsed<Pin>.Ok(new Pin(at.Left, null, null, kit))
            : new Parsed<Pin>.Failed([Nothing(at.Right, occasion)]);
    }

    /// <summary>A ban: task = stretch ("Sat 09:00 to 11:00"), person or kit code.</summary>
    /// <param name="text">The line.</param>
    /// <param name="occasion">The occasion, for its days, people and kit.</param>
    public static Parsed<Forbid> Forbid(string text, Occasion occasion)
    {
        if (Split(text) is not { } at)
        {
            return new Parsed<Forbid>.Failed([Shape(text)]);
        }

        string[] ends = at.Right.Split([" to ", "–", ".."], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (ends.Length == 2 && Moment(ends[0], occasion) is { } from && (Moment(ends[1], occasion) ?? Clock(ends[1], from)) is { } to)
        {
            return to > from ? new Parsed<Forbid>.Ok(new Forbid(at.Left, from, to))
                : new Parsed<Forbid>.Failed([new Problem("PLN012", 0, $"“{at.Right}” ends before it begins.", "Write the earlier moment first.")]);
        }

        return Person(at.Right, occasion) is { } who ? new Parsed<Forbid>.Ok(new Forbid(at.Left, null, null, who))
            : Kit(at.Right, occasion) is { } kit ? new Parsed<Forbid>.Ok(new Forbid(at.Left, null, null, null, kit))
            : new Parsed<Forbid>.Failed([Nothing(at.Right, occasion)]);
    }

    /// <summary>An order: the first task = the one that comes after it.</summary>
    /// <param name="text">The line.</param>
    public static Parsed<Sequence> Sequence(string text)
        => Split(text) is { } at ? new Parsed<Sequence>.Ok(new Sequence(at.Left, at.Right)) : new Parsed<Sequence>.Failed([Shape(text)]);

    private static (string Left, string Right)? Split(string text)
    {
        int at = text.IndexOf('=', StringComparison.Ordinal);
        string left = at > 0 ? text[..at].Trim() : "";
        string right = at > 0 ? text[(at + 1)..].Trim() : "";
        return left.Length > 0 && right.Length > 0 ? (left, right) : null;
    }

    // A day by its short or long name is the one of the occasion; without a day it is the day of the slot.
    private static LocalDateTime? Moment(string text, Occasion occasion)
    {
        foreach (string form in Forms)
        {
            if (LocalDateTimePattern.CreateWithInvariantCulture(form).Parse(text).TryGetValue(default, out LocalDateTime at))
            {
                return at;
            }
        }

        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        LocalDate[] days = [.. occasion.Windows.Select(w => w.Start.Date).Append(occasion.SlotStart.Date).Distinct().OrderDescending()];
        LocalDate? day = words.Length == 1 ? occasion.SlotStart.Date
            : words.Length == 2 && words[0].Length >= 2 ? days.Where(d => d.ToString("dddd", CultureInfo.InvariantCulture).StartsWith(words[0].TrimEnd('.'), StringComparison.OrdinalIgnoreCase)).Select(d => (LocalDate?)d).FirstOrDefault()
            : null;
        return day is { } date ? Clock(words[^1], date.AtMidnight()) : null;
    }

    private static LocalDateTime? Clock(string text, LocalDateTime day)
        => LocalTimePattern.CreateWithInvariantCulture("H:mm").Parse(text).TryGetValue(default, out LocalTime time) ? day.Date.At(time) : null;

    private static string? Person(string text, Occasion occasion) => occasion.People.Select(p => p.Name).FirstOrDefault(n => n.Equals(text, StringComparison.OrdinalIgnoreCase));

    private static string? Kit(string text, Occasion occasion) => occasion.Kit.Select(k => k.Code).FirstOrDefault(c => c.Length > 0 && c.Equals(text, StringComparison.OrdinalIgnoreCase));

    private static Problem Shape(string text) => new("PLN011", 0, $"“{text}” is not of the form TASK=WHAT.", "Name the task by its key as plan prints it, an equals sign, then what is fixed: \"curd-34=Sat 09:30\".");

    private static Problem Nothing(string text, Occasion occasion) => new("PLN012", 0, $"“{text}” is no moment of this occasion, nobody in it and no kit of it.",
        $"Write a moment (\"{occasion.SlotStart.ToString("ddd", CultureInfo.InvariantCulture)} 09:30\"), one of {string.Join(", ", occasion.People.Select(p => p.Name))}, or one of {string.Join(", ", occasion.Kit.Select(k => k.Code).Where(c => c.Length > 0))}.");
}
