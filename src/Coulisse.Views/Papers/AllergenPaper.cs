using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;

namespace Coulisse.Views.Papers;

/// <summary>Allergens by dish and part, then guest by guest, then the reason of each. A food that is not known makes every empty cell of its row a question.</summary>
public static class AllergenPaper
{
    public const string Kind = "allergens";

    private const string Legend = "YES: it is in a food of the list. may: it depends on maker or make, read the label. ask: a food of this part is not known, so nothing can be said. –: our table knows of none in these foods; that is no promise, and nothing here is “free from”.";

    private sealed record Group(string Head, ImmutableArray<(string Code, string Kind)> Codes);

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Batches.IsEmpty)
        {
            return null;
        }

        AllergenRegime regime = AllergenNames.RegimeOf(bundle.Code);
        ImmutableArray<Group> groups = Groups(regime);
        AllergenSheet[] sheets = [.. bundle.Batches.Select(b => Allergens.Of(bundle.WholeOf(b), regime))];
        ImmutableArray<PaperRow>.Builder rows = ImmutableArray.CreateBuilder<PaperRow>();
        for (int i = 0; i < sheets.Length; i++)
        {
            Batch b = bundle.Batches[i];
            rows.Add(PaperRow.Group(bundle.TitleOf(b)));
            rows.AddRange(sheets[i].Parts.Zip(b.Components).Where(p => !p.Second.Lines.IsEmpty || p.First.Lines.Length > 0).Select(p => Row(CardPaper.Name(p.Second, b), p.First.Lines, groups, false)));
            rows.Add(Row("The whole dish", sheets[i].Dish, groups, true));
        }

        List<Block> blocks =
        [
            new FactsBlock([new("Names and list of", CodeName(bundle.Code)), new("Looked through by", ""), new("On", ""), new("Labels compared by", "")]),
            new ParagraphBlock(Legend, Small: true),
            new TableBlock([new("Part"), .. groups.Select(g => new PaperColumn(g.Head, Side.Centre)), new("Not known")], rows.ToImmutable()),
        ];
        blocks.AddRange(GuestTable(bundle, regime));
        PaperRow[] reasons = [.. Reasons(bundle, sheets)];
        if (reasons.Length > 0)
        {
            blocks.Add(new HeadingBlock(1, "Why"));
            blocks.Add(new TableBlock([new("Dish and part"), new("Allergen"), new("Because")], [.. reasons]));
        }

        blocks.Add(new CalloutBlock("When anything is put in place of anything else", "This sheet is then wrong. Stop, have the allergens of the new food looked up, print the sheet anew."));
        return bundle.Sheet(Kind, "Allergens", [.. blocks]) with { Landscape = true, TextSize = 9 };
    }

    /// <summary>What a guest row says of one plate.</summary>
    internal static string Found(GuestPlate p) => p.Found.IsEmpty ? "" : string.Join("; ", p.Found.Select(f => f.Status switch
    {
        AllergenStatus.Contains => $"STILL IN IT: {f.Name}",
        AllergenStatus.May => $"check label: {f.Name}",
        _ => $"not known: {f.Name}",
    }));

    private static IEnumerable<Block> GuestTable(PaperBundle bundle, AllergenRegime regime)
    {
        if (bundle.Occasion is not { Diets.IsEmpty: false } occasion)
        {
            yield break;
        }

        yield return new HeadingBlock(1, "Guest by guest");
        ImmutableArray<PaperRow>.Builder rows = ImmutableArray.CreateBuilder<PaperRow>();
        foreach (GuestRow g in Guests.Of(occasion, regime))
        {
            rows.Add(PaperRow.Group($"Seat {string.Join(", ", g.Seats)}: {g.Declared}{(g.Codes.IsEmpty ? "" : " (" + string.Join(", ", g.Codes) + ")")}"));
            foreach (GuestPlate p in g.Plates)
            {
                string gets = !p.Served ? "gets none of it" : string.Join("; ", new[] { p.Without.IsEmpty ? "" : "without " + string.Join(", ", p.Without), p.Instead.IsEmpty ? "" : "instead: " + string.Join(", ", p.Instead) }.Where(s => s.Length > 0)) is { Length: > 0 } said ? said : "as the others";
                rows.Add(new PaperRow([p.Dish, gets, new PaperCell(Found(p), true), string.Join("; ", p.CrossContact.Concat(p.Minds.Where(m => !m.Equals("as the others", StringComparison.OrdinalIgnoreCase)))), p.Served ? AllergenWords.Sentence(p.All) : "", PaperCell.Tick]));
            }
        }

        yield return new TableBlock([new("Dish"), new("Gets"), new("Of what was declared"), new("Watch out"), new("All on this plate"), new("Handed over", Side.Centre)], rows.ToImmutable()) { Together = true };
    }

    private static IEnumerable<PaperRow> Reasons(PaperBundle bundle, AllergenSheet[] sheets)
    {
        for (int i = 0; i < sheets.Length; i++)
        {
            if (sheets[i].Dish.IsEmpty)
            {
                continue;
            }

            yield return PaperRow.Group(bundle.TitleOf(bundle.Batches[i]));
            foreach (AllergenLine line in sheets[i].Dish)
            {
                foreach (AllergenReason r in line.Because)
                {
                    yield return PaperRow.Of(r.Component, $"{line.Name} ({Word(r.Status)})", string.Create(CultureInfo.InvariantCulture, $"{r.Because}{(r.Line > 0 ? $" (card line {r.Line})" : "")}"));
                }
            }
        }
    }

    private static string Word(AllergenStatus s) => s switch { AllergenStatus.Contains => "in it", AllergenStatus.May => "may", _ => "not known" };

    private static PaperRow Row(string name, ImmutableArray<AllergenLine> lines, ImmutableArray<Group> groups, bool whole)
    {
        string unknown = string.Join(", ", lines.Where(l => l.Code is null).Select(l => l.Name).Distinct());
        return new PaperRow(
        [
            new PaperCell(name, whole),
            .. groups.Select(g =>
            {
                (AllergenLine Line, string Kind)[] own = [.. lines.SelectMany(l => g.Codes.Where(c => c.Code == l.Code).Select(c => (l, c.Kind)))];
                AllergenLine[] sure = [.. own.Where(l => l.Line.Status == AllergenStatus.Contains).Select(l => l.Line)];
                string kinds = g.Codes.Length > 1 ? string.Join(", ", own.Select(l => l.Line.Status == (sure.Length > 0 ? AllergenStatus.Contains : AllergenStatus.May) ? l.Kind : "may " + l.Kind).Distinct()) : "";
                string word = sure.Length > 0 ? "YES" : own.Length > 0 ? "may" : unknown.Length > 0 ? "ask" : "–";
                return new PaperCell(kinds.Length > 0 ? $"{word} {kinds}" : word, sure.Length > 0);
            }),
            unknown,
        ], whole ? RowKind.Total : RowKind.Body);
    }

    private static ImmutableArray<Group> Groups(AllergenRegime regime) =>
    [
        .. AllergenNames.Codes.Where(c => AllergenNames.Name(c, regime) is not null)
            .GroupBy(c => AllergenNames.Name(c, AllergenRegime.Eu) is { } eu && eu.Contains(": ", StringComparison.Ordinal) ? eu.Split(": ")[0] : c == "pinenut" ? "nuts" : c, StringComparer.Ordinal)
            .Select(g => new Group(g.Count() > 1 ? (g.Key.StartsWith("cereals", StringComparison.Ordinal) ? "gluten cereals" : g.Key) : AllergenNames.Name(g.First(), regime)!, [.. g.Select(c => (c, KindOf(c, regime)))])),
    ];

    private static string KindOf(string code, AllergenRegime regime) => AllergenNames.Name(code, regime)!.Split(": ")[^1];

    private static string CodeName(string code) => code switch { "au" => "Australia", "nz" => "New Zealand", "uk" => "United Kingdom", "eu" => "European Union", _ => "United States" };
}
