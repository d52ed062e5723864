using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Formats.In;

/// <summary>Reads what a probe or logger wrote: a table of times and temperatures under any head, after any lines of its own.</summary>
/// <remarks>
/// Cells between commas, semicolons, tabs or bars; decimal points or commas; °F where a head says so; humidity, battery and numbering columns are left out. Times by <see cref="ProbeClock"/>.
/// A cell that is no figure is a gap. Times that run back are refused, since nothing can be told from them.
/// </remarks>
public static class ProbeFile
{
    private const int MostRows = 2_000_000;
    private static readonly char[] Between = [';', '\t', '|', ','];
    private static readonly string[] Counting = ["no", "no.", "nr", "nr.", "#", "index", "record", "sample", "n", "id", "row", "line"];
    private static readonly string[] Other = ["%", "rh", "humid", "batt", "volt", "signal", "rssi", "pressure", "hpa", "status", "alarm"];

    /// <summary>Reads the whole text.</summary>
    public static Parsed<ProbeRun> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] lines = text.TrimStart('\uFEFF').Split('\n');
        if (lines.Length > MostRows)
        {
            return Refuse("PRB001", 0, "The file has more than two million lines.", "Cut it to the run that is asked about.");
        }

        Table? table = Between.Select(c => Table.Find(lines, c)).OfType<Table>().OrderByDescending(t => t.Rows.Count).ThenByDescending(t => t.Rows[0].Cells.Length).FirstOrDefault();
        if (table is null)
        {
            return Refuse("PRB001", 0, "No table of times and temperatures was found.", "Lines such as “14:03:00;54,3” under a head, with a time and at least one temperature.");
        }

        if (table.Between == ',' && table.Heads.Length > 0 && table.Heads.Length < table.Width)
        {
            return Refuse("PRB005", table.Rows[0].Line, FormattableString.Invariant($"The head has {table.Heads.Length} cells and this line {table.Width}: commas stand both between the cells and inside the figures."), "Save it with semicolons between the cells, or with decimal points.");
        }

        List<string> remarks = [];
        if (Times(table, remarks) is not { } times)
        {
            return Refuse("PRB002", table.Rows[0].Line, "No column can be read as a time.", "A date and time, a time of day, or minutes or seconds under a head that says so.");
        }

        for (int i = 1; i < times.Seconds.Length; i++)
        {
            if (times.Seconds[i] < times.Seconds[i - 1])
            {
                return Refuse("PRB004", table.Rows[i].Line, "The time runs back here.", "Sort the file by time, or cut it where the clock was set.");
            }
        }

        List<ProbeChannel> channels = [];
        for (int c = 0; c < table.Width; c++)
        {
            if (!times.Columns.Contains(c) && Channel(table, c, times.Seconds, remarks) is { } channel)
            {
                channels.Add(channel);
            }
        }

        return channels.Count == 0
            ? Refuse("PRB003", table.Rows[0].Line, "No column can be read as a temperature.", "Figures in °C, or in °F under a head that says so.")
            : new Parsed<ProbeRun>.Ok(new ProbeRun([.. channels], times.Began, [.. remarks]));
    }

    private static Parsed<ProbeRun>.Failed Refuse(string code, int line, string message, string hint) => new([new Problem(code, line, message, hint)]);

    private static ProbeChannel? Channel(Table table, int column, double[] seconds, List<string> remarks)
    {
        string head = column < table.Heads.Length ? table.Heads[column] : "";
        string low = head.ToLowerInvariant();
        double[] values = [.. table.Rows.Select(r => column < r.Cells.Length ? table.Number(r.Cells[column]) : double.NaN)];
        int figures = values.Count(double.IsFinite);
        bool counts = Counting.Contains(low) || (figures == values.Length && low.Length == 0 && values.Length > 2 && values.Zip(values.Skip(1)).All(p => p.Second - p.First == 1));
        bool other = Other.Any(o => o == "rh" ? low.Split(' ', '(', ')', '_').Contains(o) : low.Contains(o, StringComparison.Ordinal));
        if (figures < 2 || figures * 4 < values.Length || counts || other)
        {
            return null;
        }

        bool fahrenheit = low.Contains("°f", StringComparison.Ordinal) || low.Contains("(f)", StringComparison.Ordinal) || low.Contains("[f]", StringComparison.Ordinal) || low.EndsWith("_f", StringComparison.Ordinal) || low.Contains("fahrenheit", StringComparison.Ordinal) || low.Contains("deg f", StringComparison.Ordinal);
        string name = head.Length > 0 ? head : FormattableString.Invariant($"channel {column + 1}");
        ImmutableArray<(double Minute, Temperature At)>.Builder readings = ImmutableArray.CreateBuilder<(double, Temperature)>(figures);
        int gaps = 0;
        int same = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double t = fahrenheit ? (values[i] - 32) * 5 / 9 : values[i];
            if (t is not (>= -100 and <= 500))
            {
                gaps++;
                continue;
            }

            double minute = (seconds[i] - seconds[0]) / 60;
            if (readings.Count > 0 && minute <= readings[^1].Minute)
            {
                same++;
                continue;
            }

            readings.Add((minute, Temperature.FromCelsius(t)));
        }

        if (gaps > 0)
        {
            remarks.Add(FormattableString.Invariant($"{name}: {gaps} of {values.Length} cells hold no temperature and were left out."));
        }

        if (same > 0)
        {
            remarks.Add(FormattableString.Invariant($"{name}: {same} readings at a minute already read were left out."));
        }

        return readings.Count < 2 ? null : new ProbeChannel(name, readings.ToImmutable());
    }

    private static (double[] Seconds, int[] Columns, LocalDateTime? Began)? Times(Table table, List<string> remarks)
    {
        string Cell(int row, int column) => column < table.Rows[row].Cells.Length ? table.Rows[row].Cells[column] : "";
        for (int c = 0; c < table.Width; c++)
        {
            // date and time of day may stand in two columns
            bool two = c + 1 < table.Width && ProbeClock.Moment(Cell(0, c), false) is { Date: not null } && !Cell(0, c).Contains(':', StringComparison.Ordinal) && ProbeClock.Moment(Cell(0, c + 1), false) is { Date: null };
            string Text(int row) => two ? Cell(row, c) + " " + Cell(row, c + 1) : Cell(row, c);
            if (ProbeClock.Moment(Text(0), false) is null && ProbeClock.Moment(Text(0), true) is null)
            {
                continue;
            }

            int[] order = [.. Enumerable.Range(0, table.Rows.Count).Select(i => ProbeClock.Order(Text(i)))];
            bool monthFirst = order.Contains(1);
            if (Array.TrueForAll(order, o => o == 0) && ProbeClock.Moment(Text(0), true) is { Date: { } american } && ProbeClock.Moment(Text(0), false) is { Date: { } elsewhere } && american != elsewhere)
            {
                remarks.Add("The dates could be read day or month first; the day was taken first.");
            }

            (LocalDate? Date, double Seconds)?[] moments = [.. Enumerable.Range(0, table.Rows.Count).Select(i => ProbeClock.Moment(Text(i), monthFirst))];
            int unread = moments.Count(m => m is null);
            if (unread * 10 > moments.Length)
            {
                continue;
            }

            if (unread > 0)
            {
                remarks.Add(FormattableString.Invariant($"{unread} lines without a time that can be read were left out."));
                int at = 0;
                table.Rows.RemoveAll(_ => moments[at++] is null);
                return Times(table, remarks);
            }

            LocalDate? first = moments[0]!.Value.Date;
            double[] seconds = new double[moments.Length];
            double days = 0;
            for (int i = 0; i < moments.Length; i++)
            {
                (LocalDate? date, double s) = moments[i]!.Value;

                // a time of day alone that falls by more than half a day has passed midnight
                days += date is null && i > 0 && moments[i - 1]!.Value.Seconds - s > 43_200 ? 86_400 : 0;
                seconds[i] = s + (date is { } d && first is { } f ? Period.DaysBetween(f, d) * 86_400.0 : days);
            }

            LocalDateTime? began = first is { } day && moments[0]!.Value.Seconds < 86_400 ? day.AtMidnight().PlusSeconds((long)moments[0]!.Value.Seconds) : null;
            return (seconds, two ? [c, c + 1] : [c], began);
        }

        return Elapsed(table);
    }

    private static (double[] Seconds, int[] Columns, LocalDateTime? Began)? Elapsed(Table table)
    {
        for (int c = 0; c < table.Width; c++)
        {
            string head = c < table.Heads.Length ? table.Heads[c].ToLowerInvariant() : "";
            double[] v = [.. table.Rows.Select(r => c < r.Cells.Length ? table.Number(r.Cells[c]) : double.NaN)];
            if (v.Any(x => !double.IsFinite(x)))
            {
                continue;
            }

            // seconds or milliseconds since 1970: 2001 and later
            if (v[0] is > 1e9 and < 1e10 or > 1e12 and < 1e13)
            {
                double per = v[0] > 1e11 ? 1000 : 1;
                return ([.. v.Select(x => x / per)], [c], Instant.FromUnixTimeSeconds((long)(v[0] / per)).InUtc().LocalDateTime);
            }

            bool Says(params string[] words) => words.Any(w => head.Split(' ', '(', ')', '[', ']', '_', '/', '.', ',').Contains(w));
            double unit = Says("min", "mins", "minute", "minutes", "minuten") ? 60 : Says("s", "sec", "secs", "second", "seconds", "sekunden") ? 1 : Says("h", "hr", "hour", "hours", "stunden") ? 3600 : Says("ms") ? 0.001 : 0;
            if (unit > 0)
            {
                return ([.. v.Select(x => x * unit)], [c], null);
            }
        }

        return null;
    }

    /// <summary>The widest run of lines that look like data, with the head above it.</summary>
    private sealed record Table(string[] Heads, List<(int Line, string[] Cells)> Rows, int Width, char Between, bool DecimalComma)
    {
        public double Number(string cell)
        {
            string t = cell.Trim().Trim('"').Replace("°C", "", StringComparison.Ordinal).Replace("°F", "", StringComparison.Ordinal).Replace('−', '-').Trim();
            t = DecimalComma && !t.Contains('.', StringComparison.Ordinal) ? t.Replace(',', '.') : t;
            return t.Length <= 30 && double.TryParse(t, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double v) ? v : double.NaN;
        }

        public static Table? Find(string[] lines, char between)
        {
            List<(int Line, string[] Cells)> rows = [];
            int head = -1;
            for (int i = 0; i < lines.Length; i++)
            {
                string[] cells = Split(lines[i].TrimEnd('\r'), between);
                bool data = cells.Length >= 2 && cells.Length <= 256 && (rows.Count == 0 ? cells.Count(Figure) >= 2 : cells.Any(Figure) && cells.Length >= rows[0].Cells.Length - 1);
                if (data)
                {
                    head = rows.Count == 0 ? i - 1 : head;
                    rows.Add((i + 1, cells));
                }
            }

            if (rows.Count < 2)
            {
                return null;
            }

            string[] heads = head >= 0 ? Head(lines[head], between) : [];
            if (head >= 1 && Head(lines[head - 1], between) is { Length: >= 2 } above && above.Length == heads.Length && !above.Any(Figure))
            {
                // a line of names over a line of units
                heads = [.. above.Zip(heads, (name, unit) => (name + " " + unit).Trim())];
            }

            bool comma = between != ',' || rows[0].Cells.Any(c => c.Trim().StartsWith('"') && c.Contains(',', StringComparison.Ordinal));
            return new Table(heads.Length >= 2 ? heads : [], rows, rows.Max(r => r.Cells.Length), between, comma);
        }

        private static string[] Head(string line, char between) => [.. Split(line.TrimEnd('\r'), between).Select(h => h.Trim().Trim('"').Trim())];

        private static bool Figure(string cell)
        {
            string t = cell.Trim().Trim('"');
            return t.Length is > 0 and <= 40 && (char.IsAsciiDigit(t[0]) || (t.Length > 1 && t[0] is '-' or '−' or '+' && char.IsAsciiDigit(t[1])));
        }

        private static string[] Split(string line, char between)
        {
            if (!line.Contains('"', StringComparison.Ordinal))
            {
                return line.Split(between);
            }

            List<string> cells = [];
            int start = 0;
            bool quoted = false;
            for (int i = 0; i < line.Length; i++)
            {
                quoted ^= line[i] == '"';
                if (line[i] == between && !quoted)
                {
                    cells.Add(line[start..i]);
                    start = i + 1;
                }
            }

            cells.Add(line[start..]);
            return [.. cells];
        }
    }
}
