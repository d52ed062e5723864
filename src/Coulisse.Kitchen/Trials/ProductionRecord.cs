using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Kitchen.Trials;

/// <summary>What became of an occasion's food: planned, prepared, served, left, wasted.</summary>
/// <param name="Occasion">Title of the occasion.</param>
/// <param name="Day">The day; null when the sheet does not say.</param>
/// <param name="CoversPlanned">Covers planned; null when not written.</param>
/// <param name="CoversServed">Covers served; null when not written.</param>
/// <param name="Parts">A row a part.</param>
/// <param name="Notes">As written.</param>
public sealed partial record ProductionRecord(string Occasion, LocalDate? Day, int? CoversPlanned, int? CoversServed, ImmutableArray<RecordedPart> Parts, string Notes)
{
    private static readonly string[] Grams = ["g", "grams", "gram"];

    /// <summary>A sheet to fill in.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">Its batches, for what is planned.</param>
    public static string Blank(Occasion occasion, IEnumerable<Batch> batches)
    {
        StringBuilder b = new();
        b.Append(CultureInfo.InvariantCulture, $"# Record of {occasion.Title}\n\n{LocalDatePattern.Iso.Format(occasion.SlotStart.Date)}. {occasion.Covers} covers planned.\n\n## Food\n| Dish | Part | Planned, g | Prepared, g | Served, g | Left, g | Waste, g |\n|---|---|---|---|---|---|---|\n");
        foreach (Batch batch in batches)
        {
            foreach (BatchComponent c in batch.Components.Where(c => !c.Lines.IsEmpty))
            {
                b.Append(CultureInfo.InvariantCulture, $"| {Cell(batch.Weighed.Dish.Title)} | {Cell(c.Weighed.Component.Name)} | {Math.Round(c.Grams)} | | | | |\n");
            }
        }

        return b.Append("\n## Notes\n").ToString();
    }

    /// <summary>Reads a filled sheet; an empty cell was not weighed.</summary>
    /// <param name="text">The sheet.</param>
    public static Parsed<ProductionRecord> Read(string text)
    {
        PlainSheet sheet = PlainSheet.Read(text);
        List<Problem> problems = [];
        string title = sheet.Title.StartsWith("Record of ", StringComparison.OrdinalIgnoreCase) ? sheet.Title["Record of ".Length..].Trim() : "";
        if (title.Length == 0)
        {
            problems.Add(new Problem("REC001", 1, "The sheet does not say which occasion it records.", "Begin it with “# Record of ” and the occasion's title; coulisse record sheet OCCASION prints one to fill in."));
        }

        double? Figure(SheetRow row, string column) => row.Figure(column, Grams, cell => problems.Add(new Problem("REC002", row.Line, $"“{cell}” under {column} is no figure.", "Write grams, or leave the cell empty when it was not weighed.")));
        RecordedPart[] parts = [.. sheet.Under("Food").Select(r => new RecordedPart(r.Cell("Dish"), r.Cell("Part"), Figure(r, "Planned"), Figure(r, "Prepared"), Figure(r, "Served"), Figure(r, "Left"), Figure(r, "Waste"), r.Line))];
        foreach (RecordedPart p in parts.Where(p => p.Prepared is { } made && (p.Served ?? 0) + (p.Left ?? 0) + (p.Waste ?? 0) > made * 1.05 + 5))
        {
            problems.Add(new Problem("REC003", p.Line, string.Create(CultureInfo.InvariantCulture, $"More of {p.Part} was served, left and wasted than the {p.Prepared:0.#} g prepared."), "Look at the figures of this row again."));
        }

        string said = string.Join(' ', sheet.Lines.Where(l => l.Heading.Length == 0).Select(l => l.Text));
        int? Covers(string word) => Regex.Match(said, @"(\d{1,6}) covers " + word, RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1)) is { Success: true } m ? int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) : null;
        LocalDate? day = Day2().Match(said) is { Success: true } d && LocalDatePattern.Iso.Parse(d.Value) is { Success: true, Value: var date } ? date : null;
        return problems.Count > 0
            ? new Parsed<ProductionRecord>.Failed([.. problems])
            : new Parsed<ProductionRecord>.Ok(new ProductionRecord(title, day, Covers("planned"), Covers("served"), [.. parts], string.Join('\n', sheet.Lines.Where(l => l.Heading.Equals("Notes", StringComparison.OrdinalIgnoreCase)).Select(l => l.Text))));
    }

    private static string Cell(string text) => text.ReplaceLineEndings(" ").Replace('|', '/').Trim();

    [GeneratedRegex(@"\b\d{4}-\d{2}-\d{2}\b")]
    private static partial Regex Day2();
}

/// <summary>A part's figures, grams; null was not weighed.</summary>
public sealed record RecordedPart(string Dish, string Part, double? Planned, double? Prepared, double? Served, double? Left, double? Waste, int Line)
{
    /// <summary>What was neither served, left nor thrown away of what was prepared: tasted, spilt or not weighed; null when a figure is missing.</summary>
    public double? Unaccounted => Prepared is { } p && Served is { } s && Left is { } l && Waste is { } w ? p - s - l - w : null;
}
