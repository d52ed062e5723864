using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>The weigh-out sheet: one table a part, each line with its tick and what the scale should read when all is in one bowl.</summary>
public static class BatchPaper
{
    public const string Kind = "batch";

    /// <summary>Sheet of what is weighed out for the stage besides the guests' batches.</summary>
    public const string ForStage = Kind + "-for-the-stage";

    // Half a step of a coarser scale is more than five parts in a hundred of so little.
    private const string Scales = "Under 10 g weigh apart on a scale that shows 0.1 g, under 1 g on one that shows 0.01 g.";

    // What no scale in a kitchen shows is taken by the fingers.
    private const double Pinch = 0.1;

    public static IEnumerable<Paper> Of(PaperBundle bundle) => bundle.Batches.Where(b => b.Components.Any(c => !c.Lines.IsEmpty)).Select(b => One(bundle, b)).Concat(Stage(bundle));

    // What the order counts for the stage is weighed out from a sheet of its own: other hands, another hour, other containers.
    private static IEnumerable<Paper> Stage(PaperBundle bundle)
    {
        CultureInfo culture = bundle.Culture;
        if (bundle.ForStage.IsEmpty)
        {
            yield break;
        }

        List<Block> blocks = [new ParagraphBlock("Weighed out besides the guests' batches, each into containers with its number; the order counts it. Each table is tared once. " + Scales)];
        foreach (TwinBatch twin in bundle.ForStage)
        {
            BatchComponent[] parts = [.. twin.Batch.Components.Where(c => !c.Lines.IsEmpty)];
            Twin t = twin.Need.Twin;
            blocks.Add(new HeadingBlock(1, $"{RunSheetPaper.Number(t.Number)} {t.Component}"));
            blocks.Add(new FactsBlock(
            [
                new("Weighs in", Figures.Grams(CardPaper.Total(parts), culture)),
                new("Batch", twin.Need.Beyond ? "together with the guests' batch, kept apart after it" : StageDates.Of(bundle, bundle.Plan?.Twins.FirstOrDefault(p => p.Number == t.Number) ?? t)?.Mark ?? ""),
            ]));
            foreach (BatchComponent c in parts)
            {
                blocks.AddRange(parts.Length > 1 ? [new HeadingBlock(2, CardPaper.Name(c, twin.Batch))] : []);
                blocks.Add(Table(c with { Batches = 1 }, culture));
            }
        }

        blocks.Add(new PenLinesBlock("Weighed by, on which scale, when", 1));
        yield return bundle.Sheet(Kind, "Weigh-out for the stage", [.. blocks]) with { Id = ForStage, TextSize = 12 };
    }

    private static Paper One(PaperBundle bundle, Batch batch)
    {
        CultureInfo culture = bundle.Culture;
        List<Block> blocks = [new ParagraphBlock($"{CardPaper.For(batch)}. The last column is the reading of one scale on which everything is weighed into the same bowl, tared once. {Scales}")];
        foreach (BatchComponent c in batch.Components.Where(c => !c.Lines.IsEmpty))
        {
            blocks.Add(new HeadingBlock(1, CardPaper.Name(c, batch)));
            blocks.Add(new FactsBlock([new("Factor", CardPaper.Factor(c.Factor, culture)), new("Batches", Figures.Number(c.Batches, culture)), new("Together", Figures.Grams(CardPaper.Total(c), culture)), new("Bowl empty weighs", "")]));
            blocks.Add(Table(c, culture));
            blocks.AddRange(Alone(bundle, batch, c));
        }

        blocks.Add(new PenLinesBlock("Weighed by, on which scale, when", 1));
        string title = bundle.TitleOf(batch);
        return bundle.Sheet(Kind, $"Weigh-out: {title}", [.. blocks]) with { Id = $"{Kind}-{Slug.Of(title)}", Dish = title, TextSize = 12 };
    }

    // A part that no batch here makes is mixed for it alone, beside the same part of another batch: the order buys it twice, so it is weighed twice.
    private static IEnumerable<Block> Alone(PaperBundle bundle, Batch batch, BatchComponent c)
    {
        WeighedDish whole = bundle.WholeOf(batch);
        foreach (BatchLine line in c.Lines.Where(l => l.Weighed.Food.FromComponent is { } from && !batch.Components.Any(x => x.Weighed.Component.Name.Equals(from, StringComparison.OrdinalIgnoreCase))))
        {
            WeighedComponent? source = whole.Components.Except(batch.Weighed.Components).FirstOrDefault(w => w.Component.Name.Equals(line.Weighed.Food.FromComponent, StringComparison.OrdinalIgnoreCase));
            if (source is { Grams: > 0 } && line.Grams > 0 && Scaling.Scale(new WeighedDish(whole.Dish with { Components = [source.Component] }, [source], whole.Measures), new ScaleTo.Factor(line.Grams / source.Grams)) is Parsed<Batch>.Ok({ Components: [var made, ..] }))
            {
                yield return new HeadingBlock(2, $"{source.Component.Name} for it, made alone");
                yield return Table(made with { Batches = 1 }, bundle.Culture);
            }
        }
    }

    private static TableBlock Table(BatchComponent c, CultureInfo culture)
    {
        bool several = c.Batches > 1;
        ImmutableArray<PaperRow>.Builder rows = ImmutableArray.CreateBuilder<PaperRow>();
        string? group = null;
        double running = 0;
        foreach (BatchLine l in c.Lines)
        {
            if (l.Weighed.Source.Group is { Length: > 0 } g && g != group)
            {
                rows.Add(PaperRow.Group(g));
                (group, running) = (g, 0);
            }

            running += CardPaper.Weighs(l) ? l.Rounded : 0;
            List<PaperCell> cells = [PaperCell.Tick, CardPaper.Ingredient(l) + (CardPaper.Weighs(l) && l.Rounded is > 0 and < Pinch ? ", a pinch: too little to weigh" : ""), new(CardPaper.Grams(l, culture), true)];
            if (several)
            {
                cells.Add(CardPaper.Weighs(l) ? Figures.Grams(l.Rounded / c.Batches, culture) : "");
            }

            cells.Add(CardPaper.Weighs(l) ? Figures.Grams(running, culture) : "");
            rows.Add(new PaperRow([.. cells]));
        }

        string total = Figures.Grams(CardPaper.Total(c), culture);
        rows.Add(several ? PaperRow.Total("", "Together", total, Figures.Grams(CardPaper.Total(c) / c.Batches, culture), "") : PaperRow.Total("", "Together", total, ""));
        ImmutableArray<PaperColumn> columns = several
            ? [new("In", Side.Centre), new("Ingredient"), new("Weigh", Side.Right), new("Each batch", Side.Right), new("Scale reads", Side.Right)]
            : [new("In", Side.Centre), new("Ingredient"), new("Weigh", Side.Right), new("Scale reads", Side.Right)];
        return new TableBlock(columns, rows.ToImmutable()) { Together = true };
    }
}
