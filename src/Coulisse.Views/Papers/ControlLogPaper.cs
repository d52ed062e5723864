using Coulisse.Kitchen.Safety;

namespace Coulisse.Views.Papers;

/// <summary>The control log: limits printed, readings left to the hand.</summary>
public static class ControlLogPaper
{
    public const string Kind = "control-log";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Findings.All(f => f.ControlPoints.IsEmpty))
        {
            return null;
        }

        List<Block> blocks = [new CalloutBlock("Before anything else", Findings.Caution)];
        for (int i = 0; i < bundle.Findings.Length; i++)
        {
            Findings f = bundle.Findings[i];
            if (f.ControlPoints.IsEmpty)
            {
                continue;
            }

            string dish = i < bundle.Batches.Length ? bundle.TitleOf(bundle.Batches[i]) : "";
            blocks.Add(new HeadingBlock(1, $"{dish} ({f.Code})"));
            blocks.Add(new TableBlock([new("Part"), new("What may go wrong"), new("Limit", Strong: true), new("How it is watched"), new("If it is missed"), new("Written down")],
                [.. f.ControlPoints.Select(p => PaperRow.Of(p.Component, p.Hazard, p.Limit, p.Monitoring, p.Action + (p.WhenLow.IsEmpty ? "" : ". " + TaskLimits.Low(p, BriefPhrases.For("en"))), p.Record))]));
            blocks.Add(new TableBlock([new("Part"), new("Limit", Strong: true), new("Batch", Pen: 18), new("Hour", Pen: 15), new("°C", Pen: 15), new("Hour", Pen: 15), new("°C", Pen: 15), new("Done about it", Pen: 40), new("Initials", Pen: 14)],
                [.. f.ControlPoints.SelectMany(p => Enumerable.Range(0, 2).Select(n => new PaperRow([n == 0 ? p.Component : "", n == 0 ? p.Limit : "", .. Enumerable.Repeat(PaperCell.Blank, 7)])))]));
            blocks.AddRange(f.Again.Select(a => new ParagraphBlock("Judged again. " + a.Words, Small: true)));
        }

        blocks.Add(new HeadingBlock(1, "Cold and hot places"));
        blocks.Add(new TableBlock([new("Place", Pen: 40), new("Limit", Pen: 25), new("Hour", Pen: 15), new("°C", Pen: 15), new("Hour", Pen: 15), new("°C", Pen: 15), new("Hour", Pen: 15), new("°C", Pen: 15), new("Initials", Pen: 14)],
            [.. Enumerable.Range(0, 6).Select(_ => new PaperRow([.. Enumerable.Repeat(PaperCell.Blank, 9)]))]));
        blocks.Add(new PenLinesBlock("Verified: log looked through, by whom, when, what was found", 1));
        blocks.Add(new PenLinesBlock("Probe tested in melting ice and in boiling water: readings, by whom, when", 1));
        return bundle.Sheet(Kind, "Control points and log", [.. blocks]) with { Landscape = true, TextSize = 9.5 };
    }
}
