using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>The standard recipe card: every part with its yield, keeping, ingredients by weight and numbered steps.</summary>
public static class CardPaper
{
    public const string Kind = "card";

    public static IEnumerable<Paper> Of(PaperBundle bundle) => bundle.Batches.Select((b, i) => One(bundle, b, i));

    private static Paper One(PaperBundle bundle, Batch batch, int index)
    {
        Dish dish = batch.Weighed.Dish;
        CultureInfo culture = bundle.Culture;
        List<Block> blocks = [new FactsBlock(Facts(batch, culture)), new CalloutBlock("Allergens", AllergenWords.Sentence(Allergens.Of(bundle.WholeOf(batch), AllergenNames.RegimeOf(bundle.Code)).Dish))];
        if (!dish.Plate.IsEmpty)
        {
            blocks.Add(new HeadingBlock(1, "One plate"));
            blocks.Add(new TableBlock([new("Part"), new("Pieces", Side.Right), new("Grams", Side.Right)],
                [.. dish.Plate.Select(p => PaperRow.Of(PartName(p), p.Pieces is { } n ? Figures.Number(n, culture) : "", p.Grams is { } g ? Figures.Grams(g, culture) : "")),
                 PaperRow.Total("Together", "", Figures.Grams(dish.Plate.Sum(p => p.Grams ?? 0), culture))]));
        }

        foreach (BatchComponent c in batch.Components)
        {
            blocks.AddRange(Component(c, batch, bundle));
        }

        blocks.AddRange(CardSettings.Of(batch, culture));
        // What a card notes of its whole tray is not true of the one piece made apart from it.
        if (!dish.Notes.IsEmpty && !(bundle.Occasion is { } o && index < o.Dishes.Length && MadeAlone.In(o.Dishes[index]) is not null))
        {
            blocks.Add(new HeadingBlock(1, "Notes"));
            blocks.AddRange(dish.Notes.Select(n => new ParagraphBlock(n.Text)));
        }

        if (index < bundle.Findings.Length)
        {
            blocks.AddRange(Findings(bundle.Findings[index]));
            if (!bundle.Findings[index].ControlPoints.IsEmpty)
            {
                blocks.Add(new HeadingBlock(1, "Control points"));
                blocks.Add(new TableBlock([new("Part"), new("Limit", Strong: true), new("How it is watched"), new("If it is missed")], [.. bundle.Findings[index].ControlPoints.Select(p => PaperRow.Of(p.Component, p.Limit, p.Monitoring, p.Action))]));
            }
        }

        blocks.Add(new HeadingBlock(1, "Tried"));
        blocks.Add(new TableBlock([new("Date", Pen: 24), new("By", Pen: 24), new("Kit", Pen: 40), new("Came out", Pen: 50)], [.. Enumerable.Range(0, 3).Select(_ => new PaperRow([PaperCell.Blank, PaperCell.Blank, PaperCell.Blank, PaperCell.Blank]))]));
        blocks.Add(new PenLinesBlock("Changed since the last version", 2));
        string title = bundle.TitleOf(batch);
        return bundle.Sheet(Kind, title, [.. blocks]) with { Id = $"{Kind}-{Slug.Of(title)}", Dish = title };
    }

    /// <summary>"Keeps 3 days" behind a label that says so already: "3 days".</summary>
    internal static string After(string label, string text) => text.StartsWith(label + " ", StringComparison.OrdinalIgnoreCase) ? text[(label.Length + 1)..] : text;

    internal static string PartName(PlatePart part) => part.Component is { Length: > 0 } c ? c : part.Text;

    internal static string Name(BatchComponent c, Batch batch) => c.Weighed.Component.Name is { Length: > 0 } name ? (c.Weighed.Component.Code is { Length: > 0 } code && !name.StartsWith(code, StringComparison.Ordinal) ? $"{code} {name}" : name) : batch.Weighed.Dish.Title;

    internal static string Factor(double factor, CultureInfo culture) => "× " + factor.ToString("0.####", culture);

    private static ImmutableArray<Fact> Facts(Batch batch, CultureInfo culture)
    {
        List<Fact> facts = [];
        if (batch.Weighed.Dish.Yields.FirstOrDefault() is { } y)
        {
            facts.Add(new("As written", y.Text.Length > 0 ? y.Text : $"{Figures.Number(y.Amount, culture)} {y.Unit}"));
        }

        facts.Add(new("This sheet is for", For(batch)));
        string[] kit = [.. batch.Components.SelectMany(c => c.Steps).SelectMany(s => s.Step.Kit).Distinct().Order(StringComparer.Ordinal)];
        facts.Add(new("Kit", kit.Length > 0 ? string.Join(", ", kit) : ""));
        facts.Add(new("Category", ""));
        facts.Add(new("Number", ""));
        facts.Add(new("A portion", Portion(batch.Weighed.Dish, culture)));
        facts.Add(new("Portion tool", ""));
        facts.Add(new("Photograph", ""));
        facts.Add(new("Spoons and cups", batch.Weighed.Measures));
        facts.Add(new("All parts together", Figures.Grams(Total(batch.Components), culture)));
        return [.. facts];
    }

    // Only what the card states; worked out from the sum of parts it would be what went in, not what is served.
    private static string Portion(Dish dish, CultureInfo culture) => dish.Plate.Sum(p => p.Grams ?? 0) is > 0 and var plate ? Figures.Grams(plate, culture)
        : dish.Yields.Select(y => y.EachGrams).FirstOrDefault(g => g is not null) is { } each ? Figures.Grams(each, culture) : "";

    /// <summary>What the batch is for, in words.</summary>
    internal static string For(Batch batch) => !batch.For.StartsWith('×') ? "For " + batch.For : batch.Factor == 1 ? "As written" : batch.For + " of what is written";

    /// <summary>Sum of what can be weighed out; the same on every sheet.</summary>
    internal static double Total(IEnumerable<BatchComponent> components) => components.Sum(Total);

    internal static double Total(BatchComponent c) => c.Lines.Where(Weighs).Sum(l => l.Rounded);

    internal static bool Weighs(BatchLine line) => line.Weighed.Grade != WeightGrade.Unknown;

    private static IEnumerable<Block> Component(BatchComponent c, Batch batch, PaperBundle bundle)
    {
        CultureInfo culture = bundle.Culture;
        Component part = c.Weighed.Component;
        yield return new HeadingBlock(1, Name(c, batch));
        List<Fact> facts = [];
        facts.AddRange(part.Makes.Select(m => new Fact(m.Measured is null ? "Makes, as written" : "Makes", m.Text)));
        facts.AddRange(part.Keeps.Select(k => new Fact("Keeps", k.Text)));
        facts.AddRange(part.Vessels.Select(v => new Fact("In", v.Text)));
        facts.AddRange(Besides(c, batch, bundle));
        if (facts.Count > 0)
        {
            yield return new FactsBlock([.. facts.DistinctBy(f => f.Value)]);
        }

        if (!c.Lines.IsEmpty)
        {
            yield return new TableBlock([new("Ingredient"), new("As written", Side.Right), new("This batch", Side.Right, Strong: true), new("Today", Pen: 22)], [.. Rows(c, culture)]) { Together = true };
        }

        if (!c.Steps.IsEmpty)
        {
            yield return new ListBlock([.. c.Steps.Select((s, i) => new ListEntry((i + 1).ToString(CultureInfo.InvariantCulture), s.Step.Text + Minutes(s, culture) + (StepGrams.Of(s.Step, c, culture) is { Length: > 0 } grams ? $" [This batch: {grams}]" : "")))]);
        }

        foreach (Note note in part.Notes)
        {
            yield return new ParagraphBlock(note.Text, Small: true);
        }
    }

    // What the stage takes on top of this batch is bought with it; its lines stand on the weigh-out for the stage.
    private static IEnumerable<Fact> Besides(BatchComponent c, Batch batch, PaperBundle bundle)
    {
        int dish = bundle.Batches.IndexOf(batch);
        string[] twins = [.. bundle.ForStage.Where(t => t.Dish == dish).SelectMany(t => t.Batch.Components.Where(x => x.Weighed.Component.Name == c.Weighed.Component.Name && !x.Lines.IsEmpty).Select(x => $"{RunSheetPaper.Number(t.Need.Twin.Number)} {Figures.Grams(Total(x), bundle.Culture)}"))];
        return twins.Length == 0 ? [] : [new Fact("Besides, for the stage", string.Join("; ", twins))];
    }

    private static IEnumerable<PaperRow> Rows(BatchComponent c, CultureInfo culture)
    {
        string? group = null;
        foreach (BatchLine l in c.Lines)
        {
            if (l.Weighed.Source.Group is { Length: > 0 } g && g != group)
            {
                yield return PaperRow.Group(g);
                group = g;
            }

            yield return new PaperRow([Ingredient(l), Written(l, culture), Grams(l, culture), PaperCell.Blank]);
        }

        yield return PaperRow.Total("Together", "", Figures.Grams(Total(c), culture), "");
    }

    /// <summary>Food with its preparation, as written; a weight that is not certain says so in words.</summary>
    internal static string Ingredient(BatchLine l)
    {
        FoodAmount f = l.Weighed.Food;
        string name = f.Food.Length > 0 ? f.Food : l.Weighed.Source.Text;
        string tail = CountsInWords.Behind(f, name, l.Weighed.Grams > 0 ? l.Grams / l.Weighed.Grams : 1);
        string sure = l.Weighed.Grade switch { WeightGrade.Converted => " (converted)", WeightGrade.Estimated => " (estimated)", _ => "" };
        return name + tail + (f.Optional ? ", may be left out" : "") + sure;
    }

    internal static string Grams(BatchLine l, CultureInfo culture) => Weighs(l) ? Figures.Grams(l.Rounded, culture) : "no weight";

    private static string Written(BatchLine l, CultureInfo culture)
    {
        FoodAmount f = l.Weighed.Food;
        return f.Amount is { } a
            ? Figures.Number(a, culture) + (f.AmountMax is { } b && b != a ? "–" + Figures.Number(b, culture) : "") + (f.Unit is { } u and not "piece" ? "\u202F" + u : "")
            : f.Percent is { } p ? Figures.Number(p, culture) + "\u202F%" : "";
    }

    private static string Minutes(BatchStep s, CultureInfo culture) => s.Minutes is { } m && s.MinutesAsWritten is { } w && Math.Abs(m - w) > 0.5
        ? $" [For this batch {Figures.Lasting(m * 60, culture)}, written {Figures.Lasting(w * 60, culture)}: {s.Why}]"
        : "";

    private static IEnumerable<Block> Findings(Coulisse.Kitchen.Safety.Findings findings)
    {
        yield return new HeadingBlock(1, $"What the code of practice says ({findings.Code})");
        foreach (Coulisse.Kitchen.Safety.Finding f in findings.All)
        {
            string word = f.Severity switch { Coulisse.Kitchen.Safety.Severity.Stop => "STOP", Coulisse.Kitchen.Safety.Severity.Warn => "Check", _ => "Note" };
            yield return new CalloutBlock($"{word}: {(f.Component.Length > 0 ? f.Component + ". " : "")}{f.What}", $"{(f.Value.Length > 0 ? $"Found {f.Value}. " : "")}Limit {f.Limit}. {f.Remedy}".Trim());
        }

        yield return new ParagraphBlock(Coulisse.Kitchen.Safety.Findings.Caution, Small: true);
    }
}
