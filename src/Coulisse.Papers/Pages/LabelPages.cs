using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Pages;

/// <summary>Lays labels out on a parted sheet. The letters shrink until a label holds its text, never under <see cref="Least"/>; what is longer goes on to a further label.</summary>
internal static class LabelPages
{
    /// <summary>Smallest letters: an x-height of 1.2 mm (Regulation (EU) 1169/2011, article 13) needs 7 pt in this face.</summary>
    public const double Least = 7;

    private const double Most = 11;
    private const double Small = 6;

    private sealed record Line(string Text, double Size, bool Strong, double Before, bool Pen = false);

    public static PagePlan Of(Paper paper, LabelSheet sheet)
    {
        double mm = PageFormat.Millimetre;
        (LabelBlock Label, ImmutableArray<Line> Lines, string Part)[] labels = [.. paper.Blocks.OfType<LabelBlock>().SelectMany(l => Parts(l, sheet, mm))];
        int each = sheet.Across * sheet.Down;
        int pages = Math.Max(1, (labels.Length + each - 1) / each);
        string mark = PagePlan.Mark(paper);
        return new PagePlan(paper, sheet.Format, [.. Enumerable.Range(0, pages).Select(p => new LaidPage(
            sheet.Format.Width, sheet.Format.Height,
            [.. labels.Skip(p * each).Take(each).Select((l, i) => new Laid((sheet.Left + (i % sheet.Across * (sheet.Width + sheet.Gap))) * mm, (sheet.Top + (i / sheet.Across * sheet.Height)) * mm, Set(paper, sheet, l.Label, l.Lines, l.Part, mm)))],
            Foot(paper, mark, sheet, p + 1, pages)))]);
    }

    private static double Pad(LabelSheet sheet) => sheet.Height < 50 ? 2.5 : 4;

    private static double Code(LabelBlock label, LabelSheet sheet) => label.Code.Length == 0 ? 0 : Math.Min(22, sheet.Height * 0.36);

    private static IEnumerable<(LabelBlock, ImmutableArray<Line>, string)> Parts(LabelBlock label, LabelSheet sheet, double mm)
    {
        double room = ((sheet.Height - (2 * Pad(sheet))) * mm) - (Small * 1.4);
        for (double size = Most; size >= Least - 0.01; size -= 0.5)
        {
            ImmutableArray<Line> lines = [.. Lines(label, sheet, mm, size)];
            if (lines.Sum(l => l.Before + (l.Size * 1.2)) <= room)
            {
                return [(label, lines, "")];
            }
        }

        List<List<Line>> parts = [[]];
        double y = 0;
        foreach (Line line in Lines(label, sheet, mm, Least))
        {
            double height = line.Before + (line.Size * 1.2);
            if (y + height > room && parts[^1].Count > 0)
            {
                parts.Add([new Line(PagePlan.Fit(label.Name, (sheet.Width - (2 * Pad(sheet)) - Code(label, sheet)) * mm, Least * 1.2, true), Least * 1.2, true, 0)]);
                y = Least * 1.44;
            }

            parts[^1].Add(line);
            y += height;
        }

        return parts.Select((p, i) => (label, p.ToImmutableArray(), string.Create(CultureInfo.InvariantCulture, $"label {i + 1} of {parts.Count} · ")));
    }

    private static List<Line> Lines(LabelBlock label, LabelSheet sheet, double mm, double size)
    {
        // Lines beside the code are shorter; on every label of a long text, so that they fit wherever they come to stand.
        double wide = (sheet.Width - (2 * Pad(sheet))) * mm;
        double code = Code(label, sheet) * mm;
        double narrow = wide - code - (code > 0 ? 4 : 0);
        double y = 0;
        List<Line> lines = [];
        void Add(string text, double s, bool strong, double before, bool pen = false)
        {
            foreach (string part in Measure.Wrap(text, y + before < code ? narrow : wide, s, strong))
            {
                lines.Add(new Line(part, s, strong, before, pen));
                y += before + (s * 1.2);
                before = 0;
            }
        }

        Add(label.Name, size * 1.35, true, 0);
        foreach (Fact f in label.Facts)
        {
            Add(f.Value.Length > 0 ? $"{f.Label}: {f.Value}" : f.Label + ":", size, f.Label.StartsWith("Use by", StringComparison.Ordinal), size * 0.12, f.Value.Length == 0);
        }

        foreach (string text in label.Texts)
        {
            Add(text, size, false, size * 0.3);
        }

        return lines;
    }

    private static Slab Set(Paper paper, LabelSheet sheet, LabelBlock label, ImmutableArray<Line> lines, string part, double mm)
    {
        double pad = Pad(sheet) * mm;
        double wide = (sheet.Width * mm) - (2 * pad);
        double y = pad;
        ImmutableArray<Op>.Builder ops = ImmutableArray.CreateBuilder<Op>();
        foreach (Line line in lines)
        {
            y += line.Before;
            ops.Add(new TextOp(pad, y + (line.Size * 0.95), line.Text, line.Size, line.Strong));
            if (line.Pen)
            {
                double from = pad + Measure.Width(line.Text, line.Size, line.Strong) + 4;
                ops.Add(new RuleOp(from, y + (line.Size * 1.1), Math.Max(from + 10, pad + (wide * 0.6)), y + (line.Size * 1.1), 0.5, 0.25, Dashed: true));
            }

            y += line.Size * 1.2;
        }

        List<Piece> pieces = [new Piece(PieceTag.Paragraph, ops.ToImmutable())];
        if (label.Code.Length > 0)
        {
            double side = Code(label, sheet) * mm;
            double x = (sheet.Width * mm) - pad - side;
            pieces.Add(new Piece(PieceTag.Figure, [.. SquareCode.Runs(label.Code).Select(r => (Op)new BoxOp(x + (r.X * side), (pad * 0.6) + (r.Y * side), r.Width * side, r.Height * side, 0, 0))], "Code of the batch: " + label.Code));
        }

        string foot = $"{part}{paper.Occasion} · version {paper.Mark.Version}";
        pieces.Add(new Piece(PieceTag.Paragraph, [new TextOp(pad, (sheet.Height * mm) - pad, PagePlan.Fit(foot.Trim(' ', '·'), wide, Small, false), Small, false)]));
        if (sheet.Cut)
        {
            double w = sheet.Width * mm;
            double h = sheet.Height * mm;
            pieces.Add(new Piece(PieceTag.Artifact, [new PathOp([(0, 0), (w, 0), (w, h), (0, h)], true, 0.3, Dashed: true)]));
        }

        return new Slab { Height = sheet.Height * mm, Pieces = [.. pieces] };
    }

    private static Piece Foot(Paper paper, string mark, LabelSheet sheet, int page, int of)
    {
        double left = Math.Max(sheet.Left, 6) * PageFormat.Millimetre;
        double right = sheet.Format.Width - left;
        double y = sheet.Format.Height - (sheet.Format.Width < 320 ? 3.5 : 6) * PageFormat.Millimetre;
        string pages = string.Create(CultureInfo.InvariantCulture, $"page {page} of {of}");
        string what = $"{paper.Dish} · {paper.Occasion}".Trim(' ', '·');
        double room = right - left - Measure.Width(pages, Small, true) - Measure.Width(mark, Small, false) - 14;
        return new Piece(PieceTag.Artifact,
        [
            new TextOp(left, y, PagePlan.Fit(what, Math.Max(20, room), Small, false), Small, false),
            new TextOp(right - Measure.Width(pages, Small, true) - 6 - Measure.Width(mark, Small, false), y, mark, Small, false),
            new TextOp(right - Measure.Width(pages, Small, true), y, pages, Small, true),
        ]);
    }
}
