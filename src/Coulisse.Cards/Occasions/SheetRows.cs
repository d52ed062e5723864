using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>One row of each table of a sheet.</summary>
internal static class SheetRows
{
    private const int MostSeats = 1000;

    public static SheetDish Dish(SheetTable t, int line, string[] c, List<Problem> problems)
    {
        string many = t.Cell(c, "How many");
        if (Numbers.Single(many, 0, "en") is not { } n || n.Min is < 1 or > 100_000)
        {
            problems.Add(new Problem("OCC007", line, $"“{many}” is no number of plates or pieces.", "Write a number and what it counts, for example 53 plates."));
            return new SheetDish(t.Cell(c, "Dish"), t.Cell(c, "Card"), 0, "", t.Cell(c, "For"), line);
        }

        return new SheetDish(t.Cell(c, "Dish"), t.Cell(c, "Card"), n.Count, many[n.End..].Trim(), t.Cell(c, "For"), line);
    }

    public static SheetPerson Person(SheetTable t, int line, string[] c, LocalDate day, List<Problem> problems)
    {
        ImmutableArray<SheetWindow>.Builder hours = ImmutableArray.CreateBuilder<SheetWindow>();
        for (int i = 0; i < t.Columns.Length && i < c.Length; i++)
        {
            if (SheetTime.DayOfWeek(t.Columns[i], 0) is var d and > 0 && SheetTime.Times(c[i]) is { Count: > 1 } times && times[1] > times[0])
            {
                LocalDate on = SheetTime.On(d, day);
                hours.Add(new SheetWindow(on.At(times[0]), on.At(times[1]), line));
            }
        }

        (ImmutableArray<SheetHours> week, string? noHours) = WeekHours.Read(t.Cell(c, "Hours"));
        if (noHours is not null)
        {
            problems.Add(new Problem("OCC018", line, $"The hours of {t.Cell(c, "Name")} cannot be read: {noHours}", "Write for example “Tuesday to Saturday 08:00 to 16:30; Sunday 10:00 to 14:00”."));
        }

        (double speed, string? noSpeed) = SheetPace.Read(t.Cell(c, "Speed"));
        if (noSpeed is not null)
        {
            problems.Add(new Problem("OCC019", line, $"The speed of {t.Cell(c, "Name")} cannot be read: {noSpeed}", "Write “usual”, “20 % slower” or “10 % faster”."));
        }

        string[] skills = [.. t.Cell(c, "Skills").Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        return new SheetPerson(
            t.Cell(c, "Name"), t.Cell(c, "Role"), t.Cell(c, "Place"), hours.ToImmutable(),
            [.. skills.Where(s => !s.StartsWith("no ", StringComparison.OrdinalIgnoreCase))], [.. skills.Where(s => s.StartsWith("no ", StringComparison.OrdinalIgnoreCase)).Select(s => s[3..])],
            [.. t.Cell(c, "Language").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)], t.Cell(c, "Notes"), line)
        {
            Week = week, Speed = speed,
        };
    }

    public static SheetKit Kit(SheetTable t, int line, string[] c, LocalDate day, List<Problem> problems)
    {
        string what = t.Cell(c, "What");
        string capacity = t.Cell(c, "Capacity");
        string temperatures = t.Cell(c, "Temperatures");
        double[] degrees = [.. Numbered(temperatures)];
        string? earlier = null;
        LocalDateTime? moves = null;
        int inThe = what.IndexOf("in the ", StringComparison.OrdinalIgnoreCase);
        int until = what.IndexOf(" until ", StringComparison.OrdinalIgnoreCase);
        if (inThe >= 0 && until >= inThe + 7 && SheetTime.Times(what) is { Count: > 0 } times && SheetTime.DayOfWeek(what, until + 7) is var d and > 0)
        {
            earlier = what[(inThe + 7)..until].Trim();
            moves = SheetTime.On(d, day).At(times[0]);
        }

        int? shelves = null;
        foreach (string w in (ReadOnlySpan<string>)["shelves", "slots", "trays of", "GN 1/1"])
        {
            if (shelves is null && Places.FindWord(capacity, w) >= 0 && Numbers.Single(capacity, 0, "en") is { } n)
            {
                shelves = n.Count;
            }
        }

        double? litres = Amounts.At(capacity, 0, "en") is { Unit.Unit: "l" } m ? m.Number.Min : null;
        int apart = capacity.IndexOf(" mm apart", StringComparison.Ordinal);
        double? pitch = apart > 0 ? Numbers.Single(capacity, capacity.LastIndexOf(' ', apart - 1) + 1, "en")?.Min : null;
        (double? up, double? down, string? noRate) = SheetRates.Read(t.Cell(c, "Heats"));
        if (noRate is not null)
        {
            problems.Add(new Problem("OCC026", line, $"How fast {t.Cell(c, "Code")} {what} heats and cools cannot be read: {noRate}", "Write what was measured, in °C a minute: “8 up, 3 down”."));
        }

        double? max = degrees.Length > 0 ? degrees.Max() : null;
        return new SheetKit(t.Cell(c, "Code"), what, Type(what), t.Cell(c, "Place"), Numbers.Single(t.Cell(c, "Number"), 0, "en") is { } count ? count.Count : 1, capacity, line)
        {
            Shelves = shelves, Litres = litres, CelsiusMin = degrees.Length > 1 || (degrees.Length == 1 && !temperatures.Contains("to ", StringComparison.Ordinal)) || temperatures.StartsWith("to ", StringComparison.Ordinal) && max < 20 ? degrees.Min() : null, CelsiusMax = max,
            Kilowatts = SheetFigures.Kilowatts(t.Cell(c, "Power"), $"{t.Cell(c, "Code")} {what}".Trim(), line, problems), Circuit = t.Cell(c, "Circuit") is { Length: > 0 } k ? k : null, EarlierPlace = earlier, MovesAt = moves,
            Millimetres = [.. Statements.Sizes(what, 0) is { Count: > 0 } own ? own : Statements.Sizes(capacity, 0)], PitchMillimetres = pitch, RisePerMinute = up, FallPerMinute = down,
        };
    }

    public static SheetCircuit Circuit(SheetTable t, int line, string[] c) => new(
        t.Cell(c, "Circuit"), Number(t.Cell(c, "Rating")), Number(t.Cell(c, "Volts")), Number(t.Cell(c, "Limit")), [.. t.Cell(c, "Kit").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)], line);

    public static SheetDiet Diet(SheetTable t, int line, string[] c, List<Problem> problems)
    {
        string cell = t.Cell(c, "Seat");
        List<int> seats = [];
        foreach (string piece in cell.Split([',', ';', '&'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).SelectMany(p => p.Split(" and ", StringSplitOptions.TrimEntries)))
        {
            string[] ends = piece.Split(["–", "-", " to "], StringSplitOptions.TrimEntries);
            int[] numbers = [.. ends.Select(e => int.TryParse(e, NumberStyles.None, CultureInfo.InvariantCulture, out int n) && n > 0 ? n : -1)];
            if (numbers.Contains(-1) || numbers.Length > 2 || numbers[^1] < numbers[0] || numbers[^1] - numbers[0] > MostSeats)
            {
                // a seat nobody understood is a guest nobody cooks for
                problems.Add(new Problem("OCC028", line, $"“{piece}” is no seat.", "Write seats as numbers: “4, 5” or “4 to 6”; leave the cell empty for a guest without a seat."));
                continue;
            }

            seats.AddRange(Enumerable.Range(numbers[0], numbers[^1] - numbers[0] + 1));
        }

        return new([.. seats.Distinct()], t.Cell(c, "Declared"), t.Columns.Select((name, i) => (name, i)).Where(x => x.i < c.Length && !x.name.StartsWith("Seat", StringComparison.OrdinalIgnoreCase) && !x.name.StartsWith("Declared", StringComparison.OrdinalIgnoreCase)).DistinctBy(x => x.name).ToImmutableDictionary(x => x.name, x => c[x.i]), line);
    }

    public static SheetShow Show(SheetTable t, int line, string[] c, List<Problem> problems)
    {
        if (!Enum.TryParse(t.Cell(c, "How"), true, out ShowKind how) || !Enum.IsDefined(how))
        {
            problems.Add(new Problem("OCC008", line, $"“{t.Cell(c, "How")}” is no way of showing.", "Write full, begin, finish or tell."));
        }

        return new SheetShow(t.Cell(c, "Component"), t.Cell(c, "Step"), how, SheetFigures.Weight(t.Cell(c, "Weight"), line, problems), line);
    }

    private static double Number(string s) => Numbers.Single(s, 0, "en")?.Min ?? 0;

    private static IEnumerable<double> Numbered(string s)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsAsciiDigit(s[i - 1])) && Numbers.Single(s, i, "en") is { } n)
            {
                yield return i > 0 && s[i - 1] is '-' or '−' && (i == 1 || s[i - 2] == ' ') ? -n.Min : n.Min;
                i = n.End;
            }
        }
    }

    private static string Type(string what)
    {
        foreach ((string word, string type) in (ReadOnlySpan<(string, string)>)[("oven", "oven"), ("ring", "hob"), ("hob", "hob"), ("water bath", "bath"), ("blender", "blender"), ("sealer", "sealer"), ("fridge", "fridge"), ("freezer", "freezer"), ("chiller", "chiller"), ("dehydrator", "dehydrator"), ("tin", "tin"), ("tray", "tray"), ("frame", "frame"), ("mould", "mould"), ("cloth", "cloth"), ("plate", "plate"), ("scale", "scale"), ("thermometer", "probe"), ("probe", "probe")])
        {
            if (Places.FindWord(what, word) >= 0)
            {
                return type;
            }
        }

        return "other";
    }
}
