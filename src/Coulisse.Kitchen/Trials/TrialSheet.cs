using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using NodaTime.Text;

namespace Coulisse.Kitchen.Trials;

/// <summary>Reads a trial's sheet.</summary>
public static partial class TrialSheet
{
    private static readonly string[] Grams = ["g", "grams", "gram"];
    private static readonly string[] Minutes = ["minutes", "min"];

    /// <summary>The trial, or every problem of the sheet.</summary>
    /// <param name="text">The sheet, as <see cref="BlankTrial"/> lays it out; empty cells are what was not measured.</param>
    public static Parsed<Trial> Read(string text)
    {
        PlainSheet sheet = PlainSheet.Read(text);
        List<Problem> problems = [];
        string title = sheet.Title.StartsWith("Trial of ", StringComparison.OrdinalIgnoreCase) ? sheet.Title["Trial of ".Length..].Trim() : "";
        if (title.Length == 0)
        {
            problems.Add(new Problem("TRI001", 1, "The sheet does not say which card was tried.", "Begin it with “# Trial of ” and the card's title; coulisse trial sheet CARD prints one to fill in."));
        }

        void Figures(SheetRow row, string column, string cell) => problems.Add(new Problem("TRI002", row.Line, $"“{cell}” under {column} is no figure.", "Write a number, or leave the cell empty when it was not measured."));
        Trial trial = Said(new Trial { Card = title }, sheet, problems);
        trial = trial with
        {
            Weights = [.. sheet.Under("Weighed").Select(r => (Row: r, Grams: r.Figure("Weighed", Grams, c => Figures(r, "Weighed", c)), Card: r.Figure("Card", Grams, c => Figures(r, "Card", c)))).Where(r => r.Grams is not null).Select(r => new TrialWeight(r.Row.Cell("What"), r.Card, r.Grams!.Value, r.Row.Line))],
            Times = [.. sheet.Under("Times").Select(r => (Row: r, Minutes: r.Figure("Minutes", Minutes, c => Figures(r, "Minutes", c)))).Where(r => r.Minutes is not null).Select(r => new TrialTime(r.Row.Cell("Part"), r.Row.Cell("Step"), r.Minutes!.Value, r.Row.Line))],
            Yields = [.. sheet.Under("Came out").Select(r => (Row: r, In: r.Figure("In", Grams, c => Figures(r, "In", c)), Out: r.Figure("Out", Grams, c => Figures(r, "Out", c)), Left: r.Figure("Left", Grams, c => Figures(r, "Left", c)))).Where(r => r.Out is not null).Select(r => new TrialYield(r.Row.Cell("Part"), r.In, r.Out!.Value, r.Left, r.Row.Line))],
            Cores = [.. sheet.Under("Core").Where(r => r.Cell("File").Length > 0 || r.Cell("h").Length > 0).Select(r => Core(r, problems, cell => Figures(r, "h", cell)))],
            Tastings = [.. sheet.Under("Tasting").Where(r => r.Cell("Taster").Length > 0).Select(r => Tasted(r, problems))],
            Notes = string.Join('\n', sheet.Lines.Where(l => l.Heading.Equals("Notes", StringComparison.OrdinalIgnoreCase)).Select(l => l.Text)),
        };
        foreach (TrialYield y in trial.Yields.Where(y => y.InGrams is { } went && y.OutGrams + (y.LeftGrams ?? 0) > went * 1.05 + 5))
        {
            // a little more than went in is a scale's error or water taken up; much more is a slip of the pen
            problems.Add(new Problem("TRI003", y.Line, string.Create(CultureInfo.InvariantCulture, $"Of {y.Part} {y.OutGrams + (y.LeftGrams ?? 0):0.#} g came out but {y.InGrams:0.#} g went in."), "Look at the three figures again, or leave “In” empty when water was taken up."));
        }

        return problems.Count > 0 ? new Parsed<Trial>.Failed([.. problems]) : new Parsed<Trial>.Ok(trial);
    }

    private static Trial Said(Trial trial, PlainSheet sheet, List<Problem> problems)
    {
        foreach (SheetLine line in sheet.Lines.Where(l => l.Heading.Length == 0))
        {
            if (Day().Match(line.Text) is { Success: true } day)
            {
                trial = LocalDatePattern.Iso.Parse(day.Value) is { Success: true, Value: var date }
                    ? trial with { Made = date }
                    : Bad(trial, new Problem("TRI004", line.Line, $"{day.Value} is no day of the calendar.", "Write the day as 2026-03-01."), problems);
            }

            if (Maker().Match(line.Text) is { Success: true } by)
            {
                trial = trial with { By = by.Groups[1].Value.Trim() };
            }

            if (Version().Match(line.Text) is { Success: true } version)
            {
                trial = trial with { CardVersion = int.Parse(version.Groups["n"].Value, CultureInfo.InvariantCulture) };
            }

            if (Times().Match(line.Text) is { Success: true } times && double.TryParse(times.Groups["n"].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double factor) && factor > 0)
            {
                trial = trial with { Factor = factor };
            }

            // the blank sheet asks; an answer has no question mark
            trial = line.Text.Contains("good run?", StringComparison.OrdinalIgnoreCase) ? trial
                : line.Text.Contains("not a good run", StringComparison.OrdinalIgnoreCase) ? trial with { Good = false }
                : line.Text.Contains("good run", StringComparison.OrdinalIgnoreCase) ? trial with { Good = true } : trial;
        }

        return trial;
    }

    private static Trial Bad(Trial trial, Problem problem, List<Problem> problems)
    {
        problems.Add(problem);
        return trial;
    }

    private static TrialCore Core(SheetRow row, List<Problem> problems, Action<string> fails)
    {
        double? watts = row.Figure("h", ["W/(m²·K)", "W/m²K"], fails);
        if (watts is { } h && h is not (>= 3 and <= 3000))
        {
            problems.Add(new Problem("TRI009", row.Line, string.Create(CultureInfo.InvariantCulture, $"h of {h:0.#} W/(m²·K) is outside 3 to 3000."), "Still air gives about 5, a stirred bath about 100; leave it empty and name the probe's file to have it fitted."));
        }

        string[] sizes = row.Cell("Size").Replace("mm", "", StringComparison.OrdinalIgnoreCase).Split(['x', '×', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        double?[] mm = [.. sizes.Select(x => double.TryParse(x.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double d) && d is >= 1 and <= 1000 ? d : (double?)null)];
        string shape = row.Cell("Shape").ToLowerInvariant();
        bool fits = watts is null;
        if (fits && (mm.Contains(null) || mm.Length != shape switch { "slab" or "sphere" => 1, "cylinder" => 2, "brick" => 3, _ => -1 }))
        {
            problems.Add(new Problem("TRI010", row.Line, $"“{row.Cell("Shape")}” of “{row.Cell("Size")}” is no piece that can be laid over a curve.", "Write slab or sphere with one size in millimetres, cylinder with diameter × length, brick with three; or write h itself."));
        }

        return new TrialCore(row.Cell("Part"), row.Cell("Step"), row.Cell("File"), shape, [.. mm.OfType<double>()], row.Cell("Medium").Replace("°C", "", StringComparison.Ordinal).Trim(), watts, row.Line);
    }

    private static Tasting Tasted(SheetRow row, List<Problem> problems)
    {
        ImmutableSortedDictionary<string, int>.Builder marks = ImmutableSortedDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        foreach (string scale in Tasting.Scales)
        {
            string cell = row.Cell(scale);
            if (cell.Length == 0)
            {
                continue;
            }

            if (int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out int mark) && mark is >= 1 and <= 5)
            {
                marks[scale] = mark;
            }
            else
            {
                problems.Add(new Problem("TRI005", row.Line, $"“{cell}” under {scale} is no mark.", "Marks are whole numbers from 1 (not as wanted) to 5 (as wanted); leave empty what was not judged."));
            }
        }

        return new Tasting(row.Cell("Taster"), marks.ToImmutable(), row.Line);
    }

    [GeneratedRegex(@"\b\d{4}-\d{2}-\d{2}\b")]
    private static partial Regex Day();

    [GeneratedRegex(@"\bby ([^.]+)\.")]
    private static partial Regex Maker();

    [GeneratedRegex(@"\bversion (?<n>\d{1,6})\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Version();

    [GeneratedRegex(@"\b(?<n>\d{1,4}([.,]\d{1,3})?) times the card\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Times();
}
