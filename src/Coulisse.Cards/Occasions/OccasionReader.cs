using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>Reads an occasion sheet, or the one sentence that is enough to begin.</summary>
public static class OccasionReader
{
    private const double LongestSlot = 7 * 24 * 60;
    private static readonly string[] Known = ["dishes", "hands", "people", "kit", "circuits", "guests' diets", "diets", "what is shown", "shown", "notes"];

    /// <summary>The sheet, or every problem found.</summary>
    /// <param name="text">Sheet or sentence.</param>
    /// <param name="today">Day from which a weekday without a date is counted.</param>
    public static Parsed<OccasionSheet> Read(string text, LocalDate today)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return Fail([new Problem("OCC001", 0, "The occasion sheet is empty.", "Write a day, a time, covers and dishes.")]);
        }

        if (text.Length > CardText.MostCharacters)
        {
            return Fail([new Problem("OCC002", 0, "The occasion sheet is longer than 5 MB.", "A sheet is a few pages.")]);
        }

        if (text.AsSpan(0, Math.Min(4096, text.Length)).Contains('\0'))
        {
            return Fail([new Problem("OCC003", 0, "This is a binary file, not a sheet.", "Save it as text or Markdown.")]);
        }

        List<Problem> problems = [];
        if (Brief(text) is { } brief)
        {
            Days(brief, 1, today, true, problems);
            SheetMistakes.OfTimes(brief, 1, true, problems);
            OccasionSheet told = Past(OneSentence.Read(brief, today, problems), today);
            return problems.Count > 0 ? Fail([.. problems]) : new Parsed<OccasionSheet>.Ok(told);
        }

        (string title, List<(int Line, string Text)> sentences, List<SheetTable> tables) = Lay(text, problems);
        OccasionSheet sheet = Sentences(new OccasionSheet { Title = title }, sentences, today, problems);
        foreach ((int line, string s) in sentences)
        {
            Days(s, line, today, false, problems);
            SheetMistakes.OfTimes(s, line, true, problems);
        }

        sheet = Past(sheet, today);
        sheet = Tables(sheet, tables, (sheet.SlotStart ?? today.AtMidnight()).Date, problems);
        SheetMistakes.OfRows(sheet, problems);
        SheetFigures.Of(sheet, problems);
        sheet = SheetFigures.Covers(SheetFigures.Eaten(sheet));
        sheet = Outside(sheet, problems);
        return problems.Count > 0 ? Fail([.. problems]) : new Parsed<OccasionSheet>.Ok(sheet);
    }

    /// <summary>The one line that is all there is, when it is no heading, table or window of work; null for a sheet.</summary>
    private static string? Brief(string text)
    {
        string line = text.Trim();
        return line.Contains('\n') || line[0] is '#' or '|' || Places.HasAny(line, "prep windows", "prep window", "clear-down") ? null : Folding.Line(line);
    }

    private static void Days(string s, int line, LocalDate today, bool yearless, List<Problem> problems)
    {
        SheetMistakes.OfDays(s, line, today, false, problems);
        if (SheetDates.First(s, today) is null && SheetDates.Either(s) is { } either)
        {
            problems.Add(new Problem("OCC029", line, $"“{either}” could be either of two days.", "Write the month as a word, for example 3 April 2026, or the year first: 2026-04-03."));
        }
    }

    /// <summary>A day that is over may be meant (a plan looked at again): said, not refused.</summary>
    private static OccasionSheet Past(OccasionSheet sheet, LocalDate today) => sheet.SlotStart is { } start && start.Date < today
        ? sheet with { Remarks = [.. sheet.Remarks, new Remark(1, "date past", string.Create(CultureInfo.InvariantCulture, $"{start.Date:d MMMM uuuu} is past. Write another day if this is to be cooked."))] }
        : sheet;

    private static Parsed<OccasionSheet> Fail(ImmutableArray<Problem> problems) => new Parsed<OccasionSheet>.Failed(problems);

    private static (string Title, List<(int, string)> Sentences, List<SheetTable> Tables) Lay(string text, List<Problem> problems)
    {
        string title = "";
        string heading = "";
        List<(int, string)> sentences = [];
        List<SheetTable> tables = [];
        SheetTable? open = null;
        int number = 0;
        foreach (string raw in text.Split('\n'))
        {
            number++;
            string line = raw.Trim();
            if (line.StartsWith('|'))
            {
                string[] cells = SheetTable.Cells(line);
                if (open is null)
                {
                    open = new SheetTable(heading, number, cells, []);
                    tables.Add(open);
                    if (heading.Length == 0)
                    {
                        problems.Add(new Problem("OCC017", number, "This table stands under no heading, so nobody knows what it lists.", "Put ## Dishes, ## Hands, ## Kit, ## Circuits, ## Guests' diets or ## What is shown above it."));
                    }
                }
                else if (!line.Contains("---", StringComparison.Ordinal))
                {
                    open.Rows.Add((number, cells));
                }

                continue;
            }

            open = null;
            if (line.StartsWith("# ", StringComparison.Ordinal))
            {
                title = line[2..].Trim();
            }
            else if (line.StartsWith('#'))
            {
                heading = line.TrimmedStart("# ");
                if (!Known.Contains(heading.ToLowerInvariant(), StringComparer.Ordinal))
                {
                    problems.Add(new Problem("OCC004", number, $"“{heading}” is no heading of a sheet.", "Use Dishes, Hands, Kit, Circuits, Guests' diets, What is shown or Notes."));
                }
            }
            else if (line.Length > 0)
            {
                sentences.AddRange(Statements.Sentences(Folding.Line(line)).SelectMany(s => new[] { (number, s) }));
            }
        }

        return (title, sentences, tables);
    }

    private static OccasionSheet Sentences(OccasionSheet sheet, List<(int Line, string Text)> sentences, LocalDate today, List<Problem> problems)
    {
        List<string> assumed = [];
        SheetDate?[] dates = [.. sentences.Select(s => SheetDates.First(s.Text, today)).Where(d => d is not null)];
        LocalDate? date = (dates.FirstOrDefault(d => d!.Value.HasYear) ?? dates.FirstOrDefault())?.Date;
        if (date is null)
        {
            int weekday = sentences.SelectMany(s => Enumerable.Range(0, s.Text.Length).Select(i => SheetTime.DayOfWeek(s.Text, i))).FirstOrDefault(d => d > 0);
            date = weekday == 0 ? today : today.PlusDays((weekday - (int)today.DayOfWeek + 7) % 7);
            assumed.Add(FormattableString.Invariant($"day: {date:yyyy-MM-dd}, as no date is written"));
        }

        LocalDate day = date.Value;
        List<SheetWindow> windows = [];
        List<SheetWindow> meals = [];
        List<Note> notes = [];
        bool prep = false;
        foreach ((int line, string s) in sentences)
        {
            bool isPrep = Places.HasAny(s, "prep windows", "prep window");
            bool isMeal = Places.HasAny(s, "meals", "meal", "lunch");
            prep = isPrep || (prep && !isMeal && SheetTime.DayOfWeek(s, 0) > 0);
            List<LocalTime> times = SheetTime.Times(s);
            if (isMeal)
            {
                meals.AddRange(SheetTime.Windows(s, day, line));
            }
            else if (prep || Places.HasAny(s, "clear-down"))
            {
                windows.AddRange(SheetTime.Windows(s, day, line));
            }
            else if (SheetWays.Of(s, line) is { } way)
            {
                sheet = sheet with { Ways = sheet.Ways.Add(way) };
            }
            else if (Places.HasAny(s, "order comes", "order arrives", "delivery") && times.Count > 0)
            {
                int weekday = Enumerable.Range(0, s.Length).Select(i => SheetTime.DayOfWeek(s, i)).FirstOrDefault(d => d > 0);
                sheet = sheet with { OrderArrives = (weekday > 0 ? SheetTime.On(weekday, day) : day).At(times[0]) };
            }
            else
            {
                sheet = Plain(sheet, s, line, (day, today), times, assumed, problems);
                notes.Add(new Note(s, new Span(0, s.Length, line)));
            }

            sheet = Prices(sheet, s);
        }

        if (sheet.SlotStart is null)
        {
            assumed.Add("service: no start time is written");
        }

        return sheet with { Windows = [.. windows], Meals = [.. meals], Notes = [.. notes], Assumed = [.. assumed], Title = sheet.Title.Length > 0 ? sheet.Title : "Untitled occasion" };
    }

    private static OccasionSheet Prices(OccasionSheet sheet, string s)
    {
        if (!s.Contains("rices", StringComparison.Ordinal))
        {
            return sheet;
        }

        string? file = s.Split([' ', ',', '`']).FirstOrDefault(w => w.EndsWith(".csv", StringComparison.OrdinalIgnoreCase));
        int at = s.LastIndexOf(", in ", StringComparison.Ordinal);
        return sheet with { PricesFile = file ?? sheet.PricesFile, Currency = at > 0 ? s[(at + 5)..].Trimmed(" .") : sheet.Currency };
    }

    private static OccasionSheet Plain(OccasionSheet sheet, string s, int line, (LocalDate Slot, LocalDate Today) day, List<LocalTime> times, List<string> assumed, List<Problem> problems)
    {
        if (sheet.SlotStart is null && times.Count > 0 && (Places.HasAny(s, "live", "service") || SheetDates.First(s, day.Today) is not null || Enumerable.Range(0, s.Length).Any(i => SheetTime.DayOfWeek(s, i) > 0)))
        {
            int on = Math.Max(s.IndexOf(" on ", StringComparison.OrdinalIgnoreCase), -1);
            string? place = on > 0 ? s[(on + 4)..].Split([',', '.', ' ', ';'], StringSplitOptions.RemoveEmptyEntries).FirstOrDefault() : null;
            sheet = sheet with { SlotStart = day.Slot.At(times[0]), SlotPlace = place, SlotLength = times.Count > 1 && times[1] > times[0] ? Period.Between(times[0], times[1]).ToDuration() : Stretch(s) };
            if (sheet.SlotLength is null && Places.HasAny(s, "live"))
            {
                assumed.Add("slot: no length is written, so nothing is made before the guests");
            }
        }

        Counted many = SheetCounts.Of(s, line, problems);
        bool plates = many.Guests is null && many.Plates is not null && sheet.Guests is null && sheet.Over is null;
        assumed.AddRange(many.Assumed);
        return sheet with { Guests = sheet.Guests ?? many.Guests ?? (plates ? many.Plates : null), Over = many.Over ?? (plates ? 0 : sheet.Over), PlatedLive = many.Live ?? sheet.PlatedLive };
    }

    private static Duration? Stretch(string s)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || s[i - 1] == ' ') && Clock.At(s, i, "en") is { Min: < LongestSlot } t)
            {
                return Duration.FromMinutes(t.Min);
            }
        }

        return null;
    }

    private static OccasionSheet Tables(OccasionSheet sheet, List<SheetTable> tables, LocalDate day, List<Problem> problems)
    {
        foreach (SheetTable t in tables)
        {
            string h = t.Heading.ToLowerInvariant();
            string[] needs = h switch { "dishes" => ["Dish", "Card", "How many"], "hands" or "people" => ["Name"], "kit" => ["What", "Place", "Number"], "circuits" => ["Circuit", "Limit"], "guests' diets" or "diets" => ["Seat", "Declared"], "what is shown" or "shown" => ["Component", "Step", "How"], _ => [] };
            string[] missing = [.. needs.Where(n => !t.Has(n))];
            if (missing.Length > 0)
            {
                problems.Add(new Problem("OCC005", t.Line, $"The table under “{t.Heading}” has no column {string.Join(", ", missing)}.", $"It needs {string.Join(", ", needs)}."));
                continue;
            }

            if (h is "hands" or "people")
            {
                foreach ((int line, string[] cells) in t.Rows)
                {
                    for (int i = 0; i < cells.Length; i++)
                    {
                        // the hours of a usual week say themselves what is wrong with them
                        if (i >= t.Columns.Length || !t.Columns[i].StartsWith("Hours", StringComparison.OrdinalIgnoreCase))
                        {
                            SheetMistakes.OfTimes(cells[i], line, true, problems);
                        }
                    }
                }
            }

            sheet = h switch
            {
                "dishes" => sheet with { Dishes = [.. t.Rows.Select(r => SheetRows.Dish(t, r.Line, r.Cells, problems))] },
                "hands" or "people" => sheet with { People = [.. t.Rows.Select(r => SheetRows.Person(t, r.Line, r.Cells, day, problems))] },
                "kit" => sheet with { Kit = [.. t.Rows.Select(r => SheetRows.Kit(t, r.Line, r.Cells, day, problems))] },
                "circuits" => sheet with { Circuits = [.. t.Rows.Select(r => SheetRows.Circuit(t, r.Line, r.Cells))] },
                "guests' diets" or "diets" => sheet with { Diets = [.. t.Rows.Select(r => SheetRows.Diet(t, r.Line, r.Cells, problems))] },
                "what is shown" or "shown" => sheet with { Shows = [.. t.Rows.Select(r => SheetRows.Show(t, r.Line, r.Cells, problems))] },
                _ => sheet,
            };
        }

        return sheet;
    }

    /// <summary>Nobody is booked outside every window of the sheet.</summary>
    private static OccasionSheet Outside(OccasionSheet sheet, List<Problem> problems)
    {
        if (sheet.Windows.Length == 0)
        {
            return sheet;
        }

        foreach (SheetPerson p in sheet.People)
        {
            foreach (SheetWindow w in p.Hours)
            {
                bool meets = sheet.Windows.Any(x => x.Start < w.End && w.Start < x.End) || (sheet.SlotStart is { } s && w.Start <= s && s < w.End);
                if (!meets)
                {
                    problems.Add(new Problem("OCC006", w.Line, string.Create(CultureInfo.InvariantCulture, $"{p.Name} is booked {w.Start:uuuu-MM-dd HH:mm} to {w.End:HH:mm}, outside any prep window."), "Change the hours, or add a prep window."));
                }
            }
        }

        return sheet;
    }
}
