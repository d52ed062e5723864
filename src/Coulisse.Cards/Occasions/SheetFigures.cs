using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Occasions;

/// <summary>Figures of a sheet that are no slip of taste but of the pen: an oven to 25 °C, 2900 kW, weight 9, a place no other row knows, a dish eaten before it is served.</summary>
internal static class SheetFigures
{
    private const double MostKilowatts = 60; // common practice, no source: a large combi oven on three phases draws less
    private const int LeastPlace = 4;
    private const int MostWeight = 5;

    // Common practice, no source: what the hottest setting of each kind can be, °C.
    private static readonly Dictionary<string, (double Least, double Most)> Hottest = new(StringComparer.Ordinal) { ["oven"] = (80, 600), ["bath"] = (40, 100), ["fridge"] = (-5, 20), ["freezer"] = (-90, -1), ["dehydrator"] = (30, 120) };

    /// <summary>Kilowatts of a cell: "2.9", "2.9 kW", "2900 W"; null for none.</summary>
    public static double? Kilowatts(string cell, string what, int line, List<Problem> problems)
    {
        if (Numbers.Single(cell, 0, "en") is not { } n)
        {
            return null;
        }

        double kilowatts = Places.WordAt(cell, Places.Skip(cell, n.End), "W") || Places.WordAt(cell, Places.Skip(cell, n.End), "watts") || Places.WordAt(cell, Places.Skip(cell, n.End), "watt") ? n.Min / 1000 : n.Min;
        if (kilowatts > MostKilowatts)
        {
            problems.Add(new Problem("OCC035", line, string.Create(CultureInfo.InvariantCulture, $"{what} draws {kilowatts:0.###} kW: more than any kit of a kitchen."), string.Create(CultureInfo.InvariantCulture, $"Did you mean {kilowatts / 1000:0.###} kW ({kilowatts:0.###} W)?")));
        }

        return kilowatts;
    }

    /// <summary>The weight of what is shown, 1 to 5; 3 when none is written.</summary>
    public static int Weight(string cell, int line, List<Problem> problems)
    {
        if (cell.Length == 0)
        {
            return 3;
        }

        if (Numbers.Single(cell, 0, "en") is not { } n || n.Min is < 1 or > MostWeight || n.Min != Math.Floor(n.Min))
        {
            problems.Add(new Problem("OCC032", line, $"“{cell}” is no weight.", "Write 5 for what must be seen down to 1 for what may go first."));
            return 3;
        }

        return n.Count;
    }

    /// <summary>Places, temperatures and eating times that contradict the rest of the sheet.</summary>
    public static void Of(OccasionSheet sheet, List<Problem> problems)
    {
        (string Place, int Line)[] places = [.. sheet.People.Select(p => (p.Place, p.Line)).Concat(sheet.Kit.Select(k => (k.Place, k.Line))).Where(p => p.Place.Length > 0)];
        Dictionary<string, int> often = places.GroupBy(p => p.Place, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.Count(), StringComparer.OrdinalIgnoreCase);
        if (sheet.SlotPlace is { Length: > 0 } slot)
        {
            often[slot] = often.GetValueOrDefault(slot) + 1;
        }

        foreach ((string place, int line) in places.Where(p => often[p.Place] == 1 && !p.Place.Any(char.IsDigit)))
        {
            // the first letter is seldom wrong: "rack" is no "back"
            if (often.Where(o => o.Value > 1 && o.Key.Length >= LeastPlace && char.ToLowerInvariant(o.Key[0]) == char.ToLowerInvariant(place[0]) && !(o.Key + "s").Equals(place, StringComparison.OrdinalIgnoreCase) && SheetMistakes.Close(o.Key, place)).Select(o => o.Key).FirstOrDefault() is { } meant)
            {
                problems.Add(new Problem("OCC033", line, $"No other row knows the place “{place}”.", $"Did you mean {meant}?"));
            }
        }

        foreach (SheetKit k in sheet.Kit)
        {
            if (k.CelsiusMax is { } max && Hottest.TryGetValue(k.Type, out (double Least, double Most) usual) && (max < usual.Least || max > usual.Most))
            {
                problems.Add(new Problem("OCC034", k.Line, string.Create(CultureInfo.InvariantCulture, $"{k.Code} {k.What} reaches {max:0.#} °C: no {k.Type} is set so."), string.Create(CultureInfo.InvariantCulture, $"Correct the figure; {usual.Least:0} to {usual.Most:0} °C is taken.")));
            }
        }
    }

    /// <summary>What is eaten before the food is served or shown may be meant (a bite beforehand): said, not refused.</summary>
    public static OccasionSheet Eaten(OccasionSheet sheet)
    {
        if (sheet.SlotStart is not { } start)
        {
            return sheet;
        }

        foreach ((string said, int line) in sheet.Dishes.Select(d => (d.For, d.Line)).Concat(sheet.Notes.Select(n => (n.Text, n.Span.Line))))
        {
            int at = Places.FindWord(said, "eaten");
            if (at >= 0 && ClockTimes.All(said).FirstOrDefault(t => t.Start > at && t.Time is not null) is { Time: { } time } && time < start.TimeOfDay && Enumerable.Range(0, said.Length).All(i => SheetTime.DayOfWeek(said, i) == 0))
            {
                sheet = sheet with { Remarks = [.. sheet.Remarks, new Remark(line, "eaten before", string.Create(CultureInfo.InvariantCulture, $"Line {line}: “{said.Trim()}” is before the service of {start:HH:mm}."))] };
            }
        }

        return sheet;
    }

    /// <summary>Plates of a dish that are more than the guests and what is over: the larger is planned, and said.</summary>
    public static OccasionSheet Covers(OccasionSheet sheet)
    {
        int said = (sheet.Guests ?? 0) + (sheet.Over ?? 0);
        SheetDish? most = sheet.Dishes.Where(d => d.Unit is "plates" or "plate" or "portions" or "covers").MaxBy(d => d.Count);
        return sheet.Guests is null || most is null || most.Count <= said ? sheet
            : sheet with { Remarks = [.. sheet.Remarks, new Remark(most.Line, "plates over covers", string.Create(CultureInfo.InvariantCulture, $"Line {most.Line}: {most.Count} plates of {most.Name} are written, but only {said} covers are said; {most.Count} were planned."))] };
    }
}
